package lozengy.report.chart;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.report.Markup;

/**
 * The relief of a worked piece: the ridge and the groove of every round, the gaps between its
 * stitches, and the spaces in its corners, from which stitches fan out. It lies over the rounds as
 * light and shade alone, so that every yarn keeps its colour. Pieces of one shape have the same.
 */
final class StitchRelief {

  /** Width of a stitch as a part of its round's: about that of a treble. */
  private static final double STITCH = 0.42;

  /** No stitch is wider than that, in cm. */
  private static final double WIDEST_STITCH_CM = 0.5;

  /** Where on a band the gap between two stitches begins and ends, from within. */
  private static final double GAP_FROM = 0.16;

  private static final double GAP_TO = 0.76;

  /** Where on a band its ridge lies, and how wide that is. */
  private static final double RIDGE = 0.87;

  private static final double RIDGE_WIDTH = 0.15;
  private static final double GROOVE_WIDTH = 0.12;

  /** Where on the way between the corners of two rounds the space lies. */
  private static final double SPACE_FROM = 0.4;

  private static final double SPACE_TO = 0.46;
  private static final double SPACE_WIDTH = 0.15;

  /** The light on a stitch, and the gap beside it, as parts of the stitch's width. */
  private static final double LIGHT_WIDTH = 0.42;

  private static final double GAP_WIDTH = 0.2;

  /** Where the gaps of a fan begin, which would else run into each other, and their distance. */
  private static final double FAN_FROM = 0.42;

  private static final double FAN = 1.25;

  /** Narrower stitches on the page, in mm, are not drawn. */
  private static final double LEAST_STITCH = 0.28;

  private final ChartPage page;
  private final Form form;
  private final int rounds;
  private final double band;
  private final double stitch;
  private final PathData gaps = new PathData();
  private final PathData lights = new PathData();
  private final PathData spaces = new PathData();

  /**
   * The form of a piece, which pieces have in common that are but turned.
   *
   * @param key the same for the same form
   * @param quarters by how many right angles, clockwise, the piece is turned against it
   * @param corners its corners seen from its centre, in cm
   */
  record Form(String key, int quarters, List<Point> corners) {

    static Form of(PieceDrawing piece) {
      List<Point> corners =
          piece.outline().corners().stream().map(each -> each.from(piece.centre())).toList();
      Form least = null;
      for (int quarters = 0; quarters < 4; quarters++) {
        String key =
            corners.stream()
                .map(each -> Math.round(each.x() * 1e4) + " " + Math.round(each.y() * 1e4))
                .sorted()
                .collect(Collectors.joining(" ", piece.rounds().size() + ": ", ""));
        if (least == null || key.compareTo(least.key) < 0) {
          least = new Form(key, quarters, corners);
        }
        // back by a right angle, so that the piece is one more ahead of it
        corners = corners.stream().map(each -> new Point(each.y(), -each.x())).toList();
      }
      return least;
    }
  }

  StitchRelief(ChartPage page, PieceDrawing piece, Form form) {
    this.page = page;
    this.form = form;
    this.rounds = piece.rounds().size();
    this.band = page.onPage(piece.bandCm());
    this.stitch = Math.min(STITCH * band, page.onPage(WIDEST_STITCH_CM));
  }

  /** Writes the relief of the first rounds about the origin, as a group with an id. */
  void write(Markup svg, String id, int worked) {
    PathData ridges = new PathData();
    PathData grooves = new PathData();
    boolean stitches = stitch >= LEAST_STITCH;
    for (int round = 0; round < worked; round++) {
      ring(ridges, round + RIDGE);
      if (round > 0) {
        ring(grooves, round + GROOVE_WIDTH / 4);
      }
      if (stitches) {
        stitches(round);
      }
    }
    svg.open("g", "id", id, "fill", "none");
    if (!grooves.isEmpty()) {
      line(svg, grooves, "#000", 0.34, GROOVE_WIDTH * band);
    }
    line(svg, ridges, "#fff", 0.2, RIDGE_WIDTH * band);
    if (stitches) {
      line(svg, lights, "#fff", 0.13, LIGHT_WIDTH * stitch, "stroke-linecap", "round");
      line(svg, gaps, "#000", 0.24, GAP_WIDTH * stitch, "stroke-linecap", "round");
      line(svg, spaces, "#000", 0.24, SPACE_WIDTH * band, "stroke-linecap", "round");
    }
    svg.close();
  }

  private static void line(
      Markup svg, PathData path, String colour, double opacity, double width, Object... more) {
    svg.empty(
        "path",
        Markup.with(
            new Object[] {
              "stroke", colour, "stroke-opacity", opacity, "stroke-width", width, "d", path
            },
            more));
  }

  /** A corner of the ring so many rounds out, seen from the centre, in mm. */
  private Point corner(int index, double out) {
    double part = out / rounds;
    Point corner = form.corners.get(index % form.corners.size());
    return new Point(page.onPage(corner.x()) * part, page.onPage(corner.y()) * part);
  }

  private void ring(PathData path, double out) {
    path.ring(IntStream.range(0, form.corners.size()).mapToObj(i -> corner(i, out)).toList());
  }

  private void stitches(int round) {
    for (int i = 0; i < form.corners.size(); i++) {
      Point from = corner(i, round);
      Point to = corner(i + 1, round);
      Point outerFrom = corner(i, round + 1);
      Point outerTo = corner(i + 1, round + 1);
      if (round > 0) {
        along(from, to, outerFrom, outerTo);
      }
      fan(from, outerFrom, to, outerTo, round == 0);
      Point space = outerFrom.towards(from, SPACE_FROM);
      Point end = outerFrom.towards(from, SPACE_TO);
      spaces.move(space.x(), space.y()).line(end.x(), end.y());
    }
  }

  /** Upright stitches along the side of the round before. */
  private void along(Point from, Point to, Point outerFrom, Point outerTo) {
    double length = from.distance(to);
    double outerLength = outerFrom.distance(outerTo);
    double left = foot(from, outerFrom, outerTo);
    int count = (int) Math.max(1, Math.round(length / stitch));
    for (int i = 0; i <= 2 * count; i++) {
      double part = i / (2.0 * count);
      Point head = outerTo.towards(outerFrom, (left + part * length) / outerLength);
      across(i % 2 == 0 ? gaps : lights, to.towards(from, part), head, GAP_FROM);
    }
  }

  /** How far along the outer side the foot of an inner corner lies. */
  private static double foot(Point inner, Point outerFrom, Point outerTo) {
    return ((inner.x() - outerFrom.x()) * (outerTo.x() - outerFrom.x())
            + (inner.y() - outerFrom.y()) * (outerTo.y() - outerFrom.y()))
        / outerFrom.distance(outerTo);
  }

  /** Stitches that come out of the corners at both ends of a side; in the centre all of them. */
  private void fan(Point from, Point outerFrom, Point to, Point outerTo, boolean centre) {
    double length = outerFrom.distance(outerTo);
    fan(from, outerFrom, outerTo, centre ? 0.5 : foot(from, outerFrom, outerTo) / length);
    fan(to, outerTo, outerFrom, centre ? 0.5 : foot(to, outerTo, outerFrom) / length);
  }

  /** Stitches out of an inner corner towards a part of the outer side, from its corner on. */
  private void fan(Point inner, Point corner, Point far, double part) {
    double width = part * corner.distance(far);
    int count = (int) Math.max(1, Math.round(width / (stitch * FAN)));
    for (int i = 1; i < 2 * count; i++) {
      Point head = far.towards(corner, part * i / (2.0 * count));
      across(i % 2 == 0 ? gaps : lights, inner, head, FAN_FROM);
    }
  }

  private static void across(PathData path, Point foot, Point head, double begin) {
    Point from = head.towards(foot, begin);
    Point to = head.towards(foot, GAP_TO);
    path.move(from.x(), from.y()).line(to.x(), to.y());
  }
}
