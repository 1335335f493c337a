package lozengy.report.chart;

import java.util.List;

/**
 * A convex polygon.
 *
 * @param corners its corners in order, clockwise as seen on the drawing, at least three
 */
public record Polygon(List<Point> corners) {

  /** Slack in cm when asking whether a point lies inside. */
  private static final double SLACK_CM = 1e-9;

  /** Copies the corners. */
  public Polygon {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("a polygon needs at least three corners");
    }
  }

  /** A corner; indices wrap around. */
  Point corner(int index) {
    return corners.get(Math.floorMod(index, corners.size()));
  }

  /** The area in cm2. */
  public double areaCm2() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      twice += corner(i).x() * corner(i + 1).y() - corner(i + 1).x() * corner(i).y();
    }
    return twice / 2;
  }

  /** The length around in cm. */
  public double perimeterCm() {
    double length = 0;
    for (int i = 0; i < corners.size(); i++) {
      length += corner(i).distance(corner(i + 1));
    }
    return length;
  }

  /** The similar polygon that is {@code factor} times the size about a point. */
  Polygon scaled(Point centre, double factor) {
    return new Polygon(corners.stream().map(corner -> corner.towards(centre, factor)).toList());
  }

  /** Whether a point lies inside or on the edge. */
  public boolean contains(Point point) {
    for (int i = 0; i < corners.size(); i++) {
      if (beyond(i, point, SLACK_CM)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a point lies outside of a side, or on it. */
  boolean beyond(int side, Point point) {
    return beyond(side, point, -SLACK_CM);
  }

  private boolean beyond(int side, Point point, double cm) {
    Point from = corner(side);
    Point to = corner(side + 1);
    double area =
        (to.x() - from.x()) * (point.y() - from.y()) - (to.y() - from.y()) * (point.x() - from.x());
    return area < -cm * from.distance(to);
  }

  /**
   * The centre of the largest circle inside, of a triangle or of a polygon that has a circle
   * touching all its sides.
   */
  Point incentre() {
    // Triangle: corners weighted by the opposite sides. A square's centre is the mean of its
    // corners.
    if (corners.size() > 3) {
      double x = corners.stream().mapToDouble(Point::x).average().orElseThrow();
      double y = corners.stream().mapToDouble(Point::y).average().orElseThrow();
      return new Point(x, y);
    }
    double x = 0;
    double y = 0;
    for (int i = 0; i < 3; i++) {
      double opposite = corner(i + 1).distance(corner(i + 2));
      x += opposite * corner(i).x();
      y += opposite * corner(i).y();
    }
    return new Point(x / perimeterCm(), y / perimeterCm());
  }

  /** The radius in cm of the circle that touches all sides. */
  double inradiusCm() {
    return 2 * areaCm2() / perimeterCm();
  }
}
