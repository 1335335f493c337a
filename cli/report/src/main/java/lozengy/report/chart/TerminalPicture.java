package lozengy.report.chart;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Srgb;
import lozengy.report.Colours;
import lozengy.report.Screen;

/**
 * A small picture of the blanket for a terminal: half blocks, each two dots one above the other,
 * which are about square.
 */
public final class TerminalPicture {

  private static final int MOST_COLUMNS = 72;
  private static final int MOST_LINES = 36;

  /** More dots than this to a step of the layout make no better picture. */
  private static final int MOST_DOTS = 4;

  private static final char UPPER_HALF = '\u2580';
  private static final char LOWER_HALF = '\u2584';
  private static final String ESCAPE = "\u001b[";

  private final Srgb[][] dots;
  private final Colours colours;
  private final Map<Srgb, Integer> numbers = new HashMap<>();

  private TerminalPicture(Srgb[][] dots, Colours colours) {
    this.dots = dots;
    this.colours = colours;
  }

  /**
   * Draws an arrangement.
   *
   * @param arrangement the arrangement
   * @param screen what is shown; without colours there is no picture, and none is wider than it
   * @return lines, each with a line break and the terminal's own colours at its end; may be empty
   */
  public static String text(Arrangement arrangement, Screen screen) {
    if (screen.colours() == Colours.NONE) {
      return "";
    }
    int columns = Math.min(MOST_COLUMNS, screen.columns());
    return new TerminalPicture(dots(arrangement, columns), screen.colours()).write();
  }

  /** Colours by row and column; null where there is no blanket. */
  private static Srgb[][] dots(Arrangement arrangement, int mostColumns) {
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    double unitCm = drawing.widthCm() / (2.0 * arrangement.blanket().layout().size().across());
    double fitting =
        Math.min(
            mostColumns / (drawing.widthCm() / unitCm),
            2 * MOST_LINES / (drawing.heightCm() / unitCm));
    // Whole dots to a step, where there is room for one, draw all pieces alike.
    double perUnit = fitting >= 1 ? Math.min(MOST_DOTS, Math.floor(fitting)) : fitting;
    double dotCm = unitCm / perUnit;
    int columns = (int) Math.max(1, Math.round(drawing.widthCm() / dotCm));
    int rows = (int) Math.max(1, Math.round(drawing.heightCm() / dotCm));
    Srgb[][] dots = new Srgb[rows][columns];
    for (PieceDrawing piece : drawing.pieces()) {
      paint(arrangement, piece, dotCm, dots);
    }
    return dots;
  }

  private static void paint(
      Arrangement arrangement, PieceDrawing piece, double dotCm, Srgb[][] dots) {
    double left = Double.MAX_VALUE;
    double right = 0;
    double top = Double.MAX_VALUE;
    double bottom = 0;
    for (Point corner : piece.outline().corners()) {
      left = Math.min(left, corner.x());
      right = Math.max(right, corner.x());
      top = Math.min(top, corner.y());
      bottom = Math.max(bottom, corner.y());
    }
    int lastRow = Math.min(dots.length, (int) Math.ceil(bottom / dotCm));
    int lastColumn = Math.min(dots[0].length, (int) Math.ceil(right / dotCm));
    for (int row = (int) (top / dotCm); row < lastRow; row++) {
      for (int column = (int) (left / dotCm); column < lastColumn; column++) {
        Point middle = new Point((column + 0.5) * dotCm, (row + 0.5) * dotCm);
        Optional<Integer> yarn = yarnAt(piece, middle);
        if (yarn.isPresent()) {
          dots[row][column] = colour(arrangement, yarn.get());
        }
      }
    }
  }

  private static Optional<Integer> yarnAt(PieceDrawing piece, Point point) {
    for (int round = 0; round < piece.rounds().size(); round++) {
      if (piece.rounds().get(round).contains(point)) {
        return Optional.of(piece.yarns().get(round));
      }
    }
    return Optional.empty();
  }

  private static Srgb colour(Arrangement arrangement, int yarn) {
    return yarn == Sequences.OPEN
        ? Srgb.parse(Ink.LIGHT)
        : arrangement.blanket().yarn(yarn).colour();
  }

  private String write() {
    StringBuilder text = new StringBuilder();
    for (int row = 0; row < dots.length; row += 2) {
      StringBuilder line = new StringBuilder();
      String last = "";
      for (int column = 0; column < dots[row].length; column++) {
        Srgb upper = dots[row][column];
        Srgb lower = row + 1 < dots.length ? dots[row + 1][column] : null;
        String code = code(upper, lower);
        line.append(code.equals(last) ? "" : code).append(block(upper, lower));
        last = code;
      }
      text.append(line).append(ESCAPE).append("0m\n");
    }
    return text.toString();
  }

  private static char block(Srgb upper, Srgb lower) {
    if (upper == null) {
      return lower == null ? ' ' : LOWER_HALF;
    }
    return UPPER_HALF;
  }

  /** Begins afresh, then colours the block and what is behind it. */
  private String code(Srgb upper, Srgb lower) {
    String code = ESCAPE + "0";
    Srgb front = upper == null ? lower : upper;
    if (front != null) {
      code += ";38;" + number(front);
    }
    if (upper != null && lower != null) {
      code += ";48;" + number(lower);
    }
    return code + "m";
  }

  private String number(Srgb colour) {
    return colours == Colours.ALL
        ? "2;" + colour.red() + ";" + colour.green() + ";" + colour.blue()
        : "5;" + numbers.computeIfAbsent(colour, Palette::nearest);
  }
}
