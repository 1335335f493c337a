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

  /** Lines that a common screen holds with some words below. */
  private static final int MOST_LINES = 50;

  /** More dots than this to a round make no better picture. */
  private static final int MOST_DOTS = 2;

  /** Points a side of which a dot takes the mean where it is wider than a round. */
  private static final int SAMPLES = 5;

  /**
   * Where in a dot it is looked: near the middle, but not on the lines that run through the middles
   * of dots, seams and the edges of rounds, where it would be chance which of two is seen.
   */
  private static final double HALF_RIGHT = 0.3;

  private static final double HALF_DOWN = 0.4;

  private static final char UPPER_HALF = '\u2580';
  private static final char LOWER_HALF = '\u2584';
  private static final String ESCAPE = "\u001b[";

  private final Srgb[][] dots;
  private final Colours colours;
  private final Map<Srgb, String> numbers = new HashMap<>();

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
    return new TerminalPicture(dots(arrangement, screen.columns()), screen.colours()).write();
  }

  /** Colours by row and column; null where there is no blanket. */
  private static Srgb[][] dots(Arrangement arrangement, int mostColumns) {
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    double unitCm = drawing.widthCm() / (2.0 * arrangement.blanket().layout().size().across());
    double fitting =
        Math.min(
            mostColumns / (drawing.widthCm() / unitCm),
            2 * MOST_LINES / (drawing.heightCm() / unitCm));
    int rounds = drawing.pieces().stream().mapToInt(piece -> piece.rounds().size()).max().orElse(1);
    // Whole dots to a step, where there is room for one, draw all pieces alike.
    double perUnit = fitting >= 1 ? Math.min(MOST_DOTS * rounds, Math.floor(fitting)) : fitting;
    double dotCm = unitCm / perUnit;
    // Where dots are wider than rounds, each shows the mean of what it covers, so that none is
    // lost.
    int samples = perUnit >= rounds ? 1 : SAMPLES;
    int columns = (int) Math.max(1, Math.min(mostColumns, Math.round(drawing.widthCm() / dotCm)));
    int rows = (int) Math.max(1, Math.round(drawing.heightCm() / dotCm));
    Mean[][] means = new Mean[rows][columns];
    for (PieceDrawing piece : drawing.pieces()) {
      paint(arrangement, piece, dotCm, samples, means);
    }
    Srgb[][] dots = new Srgb[rows][columns];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        dots[row][column] = means[row][column] == null ? null : means[row][column].colour();
      }
    }
    return dots;
  }

  /**
   * The mean of colours, as light mixes: of the squares of their channels, which is near enough.
   */
  private static final class Mean {
    private double red;
    private double green;
    private double blue;
    private int count;

    void add(Srgb colour) {
      red += colour.red() * colour.red();
      green += colour.green() * colour.green();
      blue += colour.blue() * colour.blue();
      count++;
    }

    Srgb colour() {
      return new Srgb(root(red), root(green), root(blue));
    }

    private int root(double squares) {
      return (int) Math.round(Math.sqrt(squares / count));
    }
  }

  private static void paint(
      Arrangement arrangement, PieceDrawing piece, double dotCm, int samples, Mean[][] means) {
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
    double step = dotCm / samples;
    int lastRow = Math.min(means.length * samples, (int) Math.ceil(bottom / step));
    int lastColumn = Math.min(means[0].length * samples, (int) Math.ceil(right / step));
    for (int row = (int) (top / step); row < lastRow; row++) {
      for (int column = (int) (left / step); column < lastColumn; column++) {
        Point middle = new Point((column + HALF_RIGHT) * step, (row + HALF_DOWN) * step);
        Optional<Integer> yarn = yarnAt(piece, middle);
        if (yarn.isPresent()) {
          mean(means, row / samples, column / samples).add(colour(arrangement, yarn.get()));
        }
      }
    }
  }

  private static Mean mean(Mean[][] means, int row, int column) {
    if (means[row][column] == null) {
      means[row][column] = new Mean();
    }
    return means[row][column];
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
    return numbers.computeIfAbsent(colour, colours::code);
  }
}
