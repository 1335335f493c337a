package lozengy.report.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.report.TextWidth;

/**
 * Places names and codes on a piece. A code lies within its round's band, along the side that is
 * nearest to level; a name lies across the middle, or towards the opposite side where the middle is
 * taken by codes.
 */
final class Labels {

  private static final double LINE_HEIGHT = 1.15;

  /** The part of a band's width that a capital letter may take. */
  private static final double BAND_FILL = 0.7;

  /** The part of the border's width that a name may take. */
  private static final double BORDER_FILL = 0.82;

  /** The part of a side's length that a text may take. */
  private static final double SIDE_FILL = 0.92;

  /** How far a name gives way to codes, as a part of the way from a side to the middle. */
  private static final double NAME_SHIFT = 0.45;

  /** How much farther a name on two lines gives way. */
  private static final double BROKEN_NAME_SHIFT = 1.25;

  private static final double SHRINK = 0.95;

  /** Places tried from the middle outwards. */
  private static final int PLACES = 24;

  private final double largestNameCm;
  private final double largestCodeCm;

  /** Labels whose font is never larger than these. */
  Labels(double largestNameCm, double largestCodeCm) {
    this.largestNameCm = largestNameCm;
    this.largestCodeCm = largestCodeCm;
  }

  /** The piece's name, broken at its hyphen; as large as fits. */
  List<Label> name(PieceDrawing piece, boolean middleTaken) {
    List<String> lines = List.of(piece.place().name().split("(?<=-)"));
    Point at = piece.centre();
    if (middleTaken) {
      Point side = middleOfSide(piece.outline(), mostLevelSide(piece.outline()));
      at = side.towards(at, -NAME_SHIFT * (lines.size() == 1 ? 1 : BROKEN_NAME_SHIFT));
    }
    return fitted(lines, at, piece.outline(), largestNameCm);
  }

  /**
   * The piece's name along a side within its border, so that it hides no round; none if it were
   * smaller than {@code leastCm}. It stands on the most level side that is free, the lower of two.
   */
  Optional<Label> nameOnBorder(PieceDrawing piece, List<Box> taken, double seamCm, double leastCm) {
    String name = piece.place().name();
    Polygon outline = piece.outline();
    double room = piece.bandCm() - seamCm / 2;
    double size = Math.min(largestNameCm, BORDER_FILL * room / Label.CAP_HEIGHT);
    double width = size * TextWidth.ems(name) / SIDE_FILL;
    double in = seamCm / 2 + room / 2;
    return size < leastCm
        ? Optional.empty()
        : IntStream.range(0, outline.corners().size())
            .boxed()
            .sorted(byLevelThenLowest(outline))
            .flatMap(side -> alongSide(piece, side, in, width, size))
            .filter(label -> clear(label, width, taken))
            .findFirst();
  }

  private static Comparator<Integer> byLevelThenLowest(Polygon polygon) {
    return Comparator.<Integer>comparingLong(i -> Math.round(Math.abs(degrees(polygon, i)) * 1e6))
        .thenComparingLong(i -> -Math.round(middleOfSide(polygon, i).y() * 1e6))
        .thenComparingLong(i -> Math.round(middleOfSide(polygon, i).x() * 1e6));
  }

  /** Places along a side, the middle first. */
  private static Stream<Label> alongSide(
      PieceDrawing piece, int side, double in, double width, double size) {
    Polygon line = piece.outline().scaled(piece.centre(), 1 - in / piece.outline().inradiusCm());
    Point from = line.corner(side);
    Point to = line.corner(side + 1);
    double room = 1 - width / from.distance(to);
    return room < 0
        ? Stream.empty()
        : DoubleStream.of(0.5, 0.25, 0.75, 0, 1)
            .mapToObj(
                part ->
                    new Label(
                        piece.place().name(),
                        to.towards(from, width / 2 / from.distance(to) + part * room),
                        size,
                        degrees(piece.outline(), side)));
  }

  /** Whether small boxes along a text are clear of what stands there already. */
  private static boolean clear(Label label, double width, List<Box> taken) {
    double turn = Math.toRadians(label.degrees());
    double high = Label.CAP_HEIGHT * label.sizeCm();
    int parts = (int) Math.max(2, Math.ceil(width / high));
    return IntStream.rangeClosed(0, parts)
        .mapToDouble(part -> (part / (double) parts - 0.5) * width)
        .mapToObj(
            at ->
                new Point(
                    label.centre().x() + at * Math.cos(turn),
                    label.centre().y() + at * Math.sin(turn)))
        .map(at -> new Box(at, high, high))
        .allMatch(box -> taken.stream().allMatch(box::clearOf));
  }

  /** The piece's name where it can be largest, clear of what else stands on the piece. */
  List<Label> name(PieceDrawing piece, List<Box> taken) {
    List<String> lines = List.of(piece.place().name().split("(?<=-)"));
    double ems = lines.stream().mapToDouble(TextWidth::ems).max().orElseThrow() / SIDE_FILL;
    double lineEms = ((lines.size() - 1) * LINE_HEIGHT + Label.CAP_HEIGHT) / SIDE_FILL;
    List<Point> places = places(piece.outline());
    for (double size = largestNameCm; ; size *= SHRINK) {
      for (Point at : places) {
        Box box = new Box(at, size * ems, size * lineEms);
        if (box.within(piece.outline()) && taken.stream().allMatch(box::clearOf)) {
          return lines(lines, at, size);
        }
      }
    }
  }

  /** Points all over a polygon, those nearest to its centre first. */
  private static List<Point> places(Polygon polygon) {
    Point centre = polygon.incentre();
    List<Point> places = new ArrayList<>();
    for (Point corner : polygon.corners()) {
      for (Point other : polygon.corners()) {
        for (int step = 1; step < PLACES; step++) {
          places.add(corner.middle(other).towards(centre, (double) step / PLACES));
        }
      }
    }
    // Rounded, so that the last bits do not decide; of equally near ones the lowest, which keeps
    // names in one line across a row.
    places.sort(
        Comparator.<Point>comparingLong(at -> Math.round(at.distance(centre) * 1e6))
            .thenComparingLong(at -> -Math.round(at.y() * 1e6))
            .thenComparingLong(at -> Math.round(at.x() * 1e6)));
    return places;
  }

  /** The code of one round. */
  Label code(PieceDrawing piece, int round, String code) {
    Polygon outer = piece.rounds().get(round);
    if (round == 0) {
      return fitted(List.of(code), piece.centre(), outer, largestCodeCm).get(0);
    }
    Polygon inner = piece.rounds().get(round - 1);
    int side = mostLevelSide(outer);
    double length = inner.corner(side).distance(inner.corner(side + 1));
    double size =
        Math.min(
            largestCodeCm,
            Math.min(
                BAND_FILL * piece.bandCm() / Label.CAP_HEIGHT,
                SIDE_FILL * length / TextWidth.ems(code)));
    Point centre = middleOfSide(outer, side).middle(middleOfSide(inner, side));
    return new Label(code, centre, size, degrees(outer, side));
  }

  /** Level lines of text about a point, as large as the polygon holds. */
  private static List<Label> fitted(
      List<String> lines, Point centre, Polygon within, double largestCm) {
    double ems = lines.stream().mapToDouble(TextWidth::ems).max().orElseThrow();
    double height = (lines.size() - 1) * LINE_HEIGHT + Label.CAP_HEIGHT;
    double size = largestCm;
    // Ends at the latest when the text is a speck: some 200 steps from the largest size.
    while (size > largestCm * 1e-4
        && !holds(within, centre, ems * size / SIDE_FILL, height * size / SIDE_FILL)) {
      size *= SHRINK;
    }
    return lines(lines, centre, size);
  }

  private static List<Label> lines(List<String> lines, Point centre, double size) {
    List<Label> labels = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double down = (i - (lines.size() - 1) / 2.0) * LINE_HEIGHT * size;
      labels.add(new Label(lines.get(i), new Point(centre.x(), centre.y() + down), size, 0));
    }
    return labels;
  }

  private static boolean holds(Polygon polygon, Point centre, double width, double height) {
    return IntStream.range(0, 4)
        .mapToObj(
            i ->
                new Point(
                    centre.x() + (i % 2 == 0 ? -width : width) / 2,
                    centre.y() + (i < 2 ? -height : height) / 2))
        .allMatch(polygon::contains);
  }

  /** The side nearest to level; of several the uppermost, then the leftmost. */
  private static int mostLevelSide(Polygon polygon) {
    // Rounded, so that sides which are equal but for the last bits stay equal.
    Comparator<Integer> order =
        Comparator.<Integer>comparingLong(i -> Math.round(Math.abs(degrees(polygon, i)) * 1e6))
            .thenComparingLong(i -> Math.round(middleOfSide(polygon, i).y() * 1e6))
            .thenComparingLong(i -> Math.round(middleOfSide(polygon, i).x() * 1e6));
    return IntStream.range(0, polygon.corners().size()).boxed().min(order).orElseThrow();
  }

  private static Point middleOfSide(Polygon polygon, int side) {
    return polygon.corner(side).middle(polygon.corner(side + 1));
  }

  private static double degrees(Polygon polygon, int side) {
    Point from = polygon.corner(side);
    Point to = polygon.corner(side + 1);
    double degrees = Math.toDegrees(Math.atan2(to.y() - from.y(), to.x() - from.x()));
    if (degrees > 90) {
      return degrees - 180;
    }
    return degrees <= -90 ? degrees + 180 : degrees;
  }
}
