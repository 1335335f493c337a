package lozengy.report.chart;

/**
 * A point of the drawing; x runs right and y runs down from the blanket's top left.
 *
 * @param x in cm
 * @param y in cm
 */
public record Point(double x, double y) {

  /** The point at {@code factor} of the way from {@code centre} to this one. */
  Point towards(Point centre, double factor) {
    return new Point(centre.x + (x - centre.x) * factor, centre.y + (y - centre.y) * factor);
  }

  /** The distance to another point in cm. */
  double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** The point half way to another. */
  Point middle(Point other) {
    return new Point((x + other.x) / 2, (y + other.y) / 2);
  }

  /** This point as seen from another. */
  Point from(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  /** The point a distance away from this one in a direction of length 1. */
  Point plus(Point direction, double distance) {
    return new Point(x + direction.x * distance, y + direction.y * distance);
  }
}
