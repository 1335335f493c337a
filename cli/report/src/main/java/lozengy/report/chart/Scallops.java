package lozengy.report.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The edging to scale: a plain round along the outline, and on it shells, each an arc, as many to a
 * side as fit at a width near twice their height; around an outer corner goes one more.
 */
final class Scallops {

  /** The part of the edging that is the plain round below the shells. */
  private static final double PLAIN = 0.4;

  /** Width of a shell as a multiple of the edging's. */
  private static final double SHELL = 1.7;

  /** A cubic whose handles stand so much higher than an arc's top has that height. */
  private static final double HANDLE = 4.0 / 3;

  private static final int RAYS = 5;

  private final ChartPage page;
  private final double edging;
  private final PathData path = new PathData();
  private final PathData rays = new PathData();
  private final PathData foot = new PathData();

  Scallops(ChartPage page, double edgingCm) {
    this.page = page;
    this.edging = page.onPage(edgingCm);
  }

  /** Adds what goes around a closed line. */
  void around(Polyline outline) {
    List<Point> corners = outline.corners().stream().map(page::onPage).toList();
    Polyline line = new Polyline(corners);
    for (int i = 0; i < corners.size(); i++) {
      side(line, i);
    }
    path.close();
    foot.close();
    // the other way round, so that the blanket itself stays free
    List<Point> back = new ArrayList<>(corners);
    Collections.reverse(back);
    path.ring(back);
  }

  private void side(Polyline line, int i) {
    Point from = line.corner(i);
    Point to = line.corner(i + 1);
    double length = from.distance(to);
    Point out = new Point((to.y() - from.y()) / length, (from.x() - to.x()) / length);
    double plain = PLAIN * edging;
    double start = shorter(line.turn(i), plain);
    double end = shorter(line.turn(i + 1), plain);
    Point first = to.towards(from, start / length).plus(out, plain);
    Point last = from.towards(to, end / length).plus(out, plain);
    if (i == 0) {
      path.move(first.x(), first.y());
      foot.move(first.x(), first.y());
    } else {
      foot.line(first.x(), first.y());
    }
    foot.line(last.x(), last.y());
    int count = (int) Math.max(1, Math.round(first.distance(last) / (SHELL * edging)));
    for (int shell = 0; shell < count; shell++) {
      Point left = last.towards(first, (double) shell / count);
      Point right = last.towards(first, (shell + 1.0) / count);
      shell(left, right, out, out);
    }
    if (line.turn(i + 1) > 0) {
      Point next = line.corner(i + 2);
      double nextLength = to.distance(next);
      Point nextOut = new Point((next.y() - to.y()) / nextLength, (to.x() - next.x()) / nextLength);
      shell(last, to.plus(nextOut, plain), out, nextOut);
    }
  }

  /** By how much the plain round is shorter than the side at a corner that turns inwards. */
  private static double shorter(double turn, double width) {
    return turn >= 0 ? 0 : width * Math.tan(-turn / 2);
  }

  private void shell(Point left, Point right, Point leftOut, Point rightOut) {
    double high = (1 - PLAIN) * edging * HANDLE;
    Point first = left.plus(leftOut, high);
    Point second = right.plus(rightOut, high);
    path.curve(first, second, right);
    Point root = left.middle(right);
    for (int ray = 1; ray < RAYS; ray++) {
      double t = (double) ray / RAYS;
      double u = 1 - t;
      Point top =
          new Point(
              u * u * u * left.x()
                  + 3 * u * u * t * first.x()
                  + 3 * u * t * t * second.x()
                  + t * t * t * right.x(),
              u * u * u * left.y()
                  + 3 * u * u * t * first.y()
                  + 3 * u * t * t * second.y()
                  + t * t * t * right.y());
      Point to = top.towards(root, 0.86);
      Point from = top.towards(root, 0.2);
      rays.move(from.x(), from.y()).line(to.x(), to.y());
    }
  }

  /** The area. */
  String path() {
    return path.toString();
  }

  /** The gaps between the stitches of the shells. */
  String rays() {
    return rays.toString();
  }

  /** Where the shells stand on the plain round. */
  String foot() {
    return foot.toString();
  }
}
