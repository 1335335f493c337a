package lozengy.report.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed line, clockwise as seen on the drawing.
 *
 * @param corners its corners in order
 */
record Polyline(List<Point> corners) {

  private static final double STRAIGHT = 1e-6;

  Polyline {
    corners = List.copyOf(corners);
  }

  static Polyline withoutStraightCorners(List<Point> ring) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point before = ring.get(Math.floorMod(i - 1, ring.size()));
      Point after = ring.get((i + 1) % ring.size());
      if (Math.abs(turn(before, ring.get(i), after)) > STRAIGHT) {
        corners.add(ring.get(i));
      }
    }
    return new Polyline(corners);
  }

  /** How far the way turns at a point, in radians, above 0 to the right as seen on the drawing. */
  static double turn(Point before, Point at, Point after) {
    double first = Math.atan2(at.y() - before.y(), at.x() - before.x());
    double turn = Math.atan2(after.y() - at.y(), after.x() - at.x()) - first;
    return turn > Math.PI ? turn - 2 * Math.PI : turn <= -Math.PI ? turn + 2 * Math.PI : turn;
  }

  /** A corner; indices wrap around. */
  Point corner(int index) {
    return corners.get(Math.floorMod(index, corners.size()));
  }

  double turn(int corner) {
    return turn(corner(corner - 1), corner(corner), corner(corner + 1));
  }
}
