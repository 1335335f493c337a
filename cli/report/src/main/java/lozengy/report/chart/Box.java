package lozengy.report.chart;

import java.util.List;

/** A level rectangle about a centre, in cm. */
record Box(Point centre, double width, double height) {

  private List<Point> corners() {
    return List.of(corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1));
  }

  private Point corner(int right, int down) {
    return new Point(centre.x() + right * width / 2, centre.y() + down * height / 2);
  }

  /** Whether it lies within a polygon. */
  boolean within(Polygon polygon) {
    for (Point corner : corners()) {
      if (!polygon.contains(corner)) {
        return false;
      }
    }
    return true;
  }

  /** Whether it and another have no point in common. */
  boolean clearOf(Box other) {
    return Math.abs(centre.x() - other.centre.x()) >= (width + other.width) / 2
        || Math.abs(centre.y() - other.centre.y()) >= (height + other.height) / 2;
  }

  /** Whether it and a polygon have no point in common: one of their sides lies between them. */
  boolean clearOf(Polygon polygon) {
    Polygon box = new Polygon(corners());
    return parts(box, polygon.corners()) || parts(polygon, corners());
  }

  /** Whether a side of a polygon has all of the points beyond it. */
  private static boolean parts(Polygon polygon, List<Point> points) {
    for (int side = 0; side < polygon.corners().size(); side++) {
      int beyond = 0;
      while (beyond < points.size() && polygon.beyond(side, points.get(beyond))) {
        beyond++;
      }
      if (beyond == points.size()) {
        return true;
      }
    }
    return false;
  }
}
