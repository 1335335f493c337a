package lozengy.model.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece as a polygon in lattice units: a second way to geometry, from corner points alone.
 *
 * @param corners in order along the outline
 */
record Polygon(List<Point> corners) {

  record Point(int x, int y) {
    double distance(Point other) {
      return Math.hypot(x - other.x, y - other.y);
    }
  }

  /** The polygon of a place: a square, cut off at the layout's outline. */
  static Polygon of(LayoutSize size, Place place) {
    int x = place.x();
    int y = place.y();
    if (size.setting() == Setting.STRAIGHT) {
      return new Polygon(
          List.of(
              new Point(x - 1, y - 1),
              new Point(x + 1, y - 1),
              new Point(x + 1, y + 1),
              new Point(x - 1, y + 1)));
    }
    List<Point> inside = new ArrayList<>();
    for (Point point :
        List.of(
            new Point(x, y - 1), new Point(x + 1, y), new Point(x, y + 1), new Point(x - 1, y))) {
      if (point.x >= 0
          && point.y >= 0
          && point.x <= 2 * size.across()
          && point.y <= 2 * size.down()) {
        inside.add(point);
      }
    }
    if (inside.size() == 2) {
      inside.add(new Point(x, y));
    }
    return new Polygon(inside);
  }

  static List<Polygon> of(Layout layout) {
    return layout.places().stream().map(place -> of(layout.size(), place)).toList();
  }

  /** The side of a square in lattice units. */
  static double side(Setting setting) {
    return setting == Setting.ON_POINT ? Math.sqrt(2) : 2;
  }

  long shared(Polygon other) {
    return corners.stream().filter(other.corners::contains).count();
  }

  double perimeter() {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += corners.get(i).distance(corners.get((i + 1) % corners.size()));
    }
    return sum;
  }

  double area() {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point here = corners.get(i);
      Point next = corners.get((i + 1) % corners.size());
      sum += here.x * next.y - next.x * here.y;
    }
    return Math.abs(sum) / 2;
  }
}
