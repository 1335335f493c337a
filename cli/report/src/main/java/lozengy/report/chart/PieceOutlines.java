package lozengy.report.chart;

import java.util.List;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;

/** Gives every piece its outline in cm. */
final class PieceOutlines {

  private final boolean onPoint;
  private final double unitCm;
  private final int width;
  private final int height;

  /**
   * @param size the layout's size
   * @param sideCm side of a square
   */
  PieceOutlines(LayoutSize size, double sideCm) {
    this.onPoint = size.setting() == Setting.ON_POINT;
    this.unitCm = onPoint ? sideCm / Math.sqrt(2) : sideCm / 2;
    this.width = 2 * size.across();
    this.height = 2 * size.down();
  }

  double widthCm() {
    return width * unitCm;
  }

  double heightCm() {
    return height * unitCm;
  }

  Polygon of(Place place) {
    return switch (place.kind()) {
      case SQUARE -> onPoint ? standing(place) : lying(place);
      case SIDE_TRIANGLE -> side(place);
      case CORNER_TRIANGLE -> corner(place);
    };
  }

  private Polygon standing(Place at) {
    return polygon(at, 0, -1, 1, 0, 0, 1, -1, 0);
  }

  private Polygon lying(Place at) {
    return polygon(at, -1, -1, 1, -1, 1, 1, -1, 1);
  }

  private Polygon side(Place at) {
    if (at.y() == 0) {
      return polygon(at, -1, 0, 1, 0, 0, 1);
    }
    if (at.x() == width) {
      return polygon(at, 0, -1, 0, 1, -1, 0);
    }
    if (at.y() == height) {
      return polygon(at, 1, 0, -1, 0, 0, -1);
    }
    return polygon(at, 0, 1, 0, -1, 1, 0);
  }

  private Polygon corner(Place at) {
    boolean left = at.x() == 0;
    if (at.y() == 0) {
      return left ? polygon(at, 0, 0, 1, 0, 0, 1) : polygon(at, 0, 0, 0, 1, -1, 0);
    }
    return left ? polygon(at, 0, 0, 0, -1, 1, 0) : polygon(at, 0, 0, -1, 0, 0, -1);
  }

  /** A polygon from offsets to a place's lattice point. */
  private Polygon polygon(Place at, int... offsets) {
    Point[] corners = new Point[offsets.length / 2];
    for (int i = 0; i < corners.length; i++) {
      corners[i] =
          new Point((at.x() + offsets[2 * i]) * unitCm, (at.y() + offsets[2 * i + 1]) * unitCm);
    }
    return new Polygon(List.of(corners));
  }
}
