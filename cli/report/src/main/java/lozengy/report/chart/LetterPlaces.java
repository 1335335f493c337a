package lozengy.report.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lozengy.report.TextWidth;

/**
 * Where letters stand on a piece's rounds: level, in a row from the centre to a corner or to the
 * middle of a side, whichever lets them be largest. Pieces of one shape get the same places, which
 * are looked for once.
 */
final class LetterPlaces {

  /** How much wider bold letters are. */
  private static final double BOLD = 1.07;

  /** The part of a band that a letter may take. */
  private static final double FILL = 0.86;

  private static final double SHRINK = 0.95;

  /** Places tried across a band. */
  private static final int PLACES = 17;

  private final double largestCm;
  private final double ems;
  private final double seamCm;
  private final Map<String, Row> known = new HashMap<>();
  private final Map<PieceDrawing, Row> ofPieces = new IdentityHashMap<>();

  /**
   * Letters of one piece.
   *
   * @param sizeCm font size
   * @param centres of the letters, centre round first, seen from the piece's centre
   */
  private record Row(double sizeCm, List<Point> centres) {}

  /**
   * Places for letters.
   *
   * @param largestCm largest font size
   * @param letters all letters that are to be placed
   * @param seamCm width of a seam, half of which lies on the border
   */
  LetterPlaces(double largestCm, List<String> letters, double seamCm) {
    this.largestCm = largestCm;
    this.ems = letters.stream().mapToDouble(TextWidth::ems).max().orElse(1) * BOLD;
    this.seamCm = seamCm;
  }

  /** Font size of a piece's letters, in cm. */
  double sizeCm(PieceDrawing piece) {
    return row(piece).sizeCm;
  }

  /** The letter of a round. */
  Label letter(PieceDrawing piece, int round, String letter) {
    Row row = row(piece);
    Point at = row.centres.get(round);
    Point centre = new Point(piece.centre().x() + at.x(), piece.centre().y() + at.y());
    return new Label(letter, centre, row.sizeCm, 0);
  }

  /** What the letters of a piece cover. */
  List<Box> boxes(PieceDrawing piece) {
    Row row = row(piece);
    return row.centres.stream()
        .map(at -> new Point(piece.centre().x() + at.x(), piece.centre().y() + at.y()))
        .map(at -> box(at, row.sizeCm / FILL))
        .toList();
  }

  private Row row(PieceDrawing piece) {
    return ofPieces.computeIfAbsent(piece, this::ofShape);
  }

  private Row ofShape(PieceDrawing piece) {
    String shape =
        piece.outline().corners().stream()
            .map(corner -> from(piece.centre(), corner))
            .map(each -> Math.round(each.x() * 1e6) + " " + Math.round(each.y() * 1e6))
            .collect(Collectors.joining(" ", piece.rounds().size() + ": ", ""));
    return known.computeIfAbsent(shape, key -> best(piece));
  }

  private static Point from(Point centre, Point point) {
    return new Point(point.x() - centre.x(), point.y() - centre.y());
  }

  /** The row with the largest letters; of equal ones the uppermost, then the leftmost. */
  private Row best(PieceDrawing piece) {
    List<Point> ends = new ArrayList<>(piece.outline().corners());
    for (int side = 0; side < piece.outline().corners().size(); side++) {
      ends.add(piece.outline().corner(side).middle(piece.outline().corner(side + 1)));
    }
    Row best = null;
    for (Point end : ends) {
      Row row = towards(piece, end, best == null ? 0 : best.sizeCm);
      if (row != null && (best == null || order(row, best) > 0)) {
        best = row;
      }
    }
    return best;
  }

  private static int order(Row one, Row other) {
    // Rounded, so that rows which are equal but for the last bits stay equal.
    int bySize = Long.compare(Math.round(one.sizeCm * 1e6), Math.round(other.sizeCm * 1e6));
    if (bySize != 0) {
      return bySize;
    }
    Point last = one.centres.get(one.centres.size() - 1);
    Point otherLast = other.centres.get(other.centres.size() - 1);
    int byHeight = Long.compare(Math.round(otherLast.y() * 1e6), Math.round(last.y() * 1e6));
    return byHeight != 0
        ? byHeight
        : Long.compare(Math.round(otherLast.x() * 1e6), Math.round(last.x() * 1e6));
  }

  /** The largest letters towards an end, or null if they are smaller than the least. */
  private Row towards(PieceDrawing piece, Point end, double leastCm) {
    double size = largestCm;
    List<Point> centres = new ArrayList<>();
    while (centres.size() < piece.rounds().size()) {
      Point at = place(piece, end, centres.size(), size);
      if (at == null) {
        // All letters of a piece have one size.
        size *= SHRINK;
        centres.clear();
        if (size < leastCm) {
          return null;
        }
      } else {
        centres.add(at);
      }
    }
    return new Row(size, centres.stream().map(at -> from(piece.centre(), at)).toList());
  }

  /** A place for a round's letter on the way to an end, or null if it is too large. */
  private Point place(PieceDrawing piece, Point end, int round, double size) {
    Polygon outer = piece.withoutSeam(round, seamCm);
    double rounds = piece.rounds().size();
    for (int i = 0; i < PLACES; i++) {
      double way = (round + (round == 0 ? 0 : i / (PLACES - 1.0))) / rounds;
      Point at = end.towards(piece.centre(), way);
      Box box = box(at, size / FILL);
      if (box.within(outer) && (round == 0 || box.clearOf(piece.rounds().get(round - 1)))) {
        return at;
      }
    }
    return null;
  }

  private Box box(Point centre, double size) {
    return new Box(centre, size * ems, size * Label.CAP_HEIGHT);
  }
}
