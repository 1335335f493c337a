package lozengy.model.layout;

import java.util.ArrayList;
import java.util.List;

/** Names and places the pieces of a layout, in the order that {@link Layout} promises. */
final class Places {

  private final List<Place> places = new ArrayList<>();

  private Places() {}

  static List<Place> of(LayoutSize size) {
    Places made = new Places();
    if (size.setting() == Setting.STRAIGHT) {
      made.straight(size);
    } else {
      made.onPoint(size);
    }
    return made.places;
  }

  private void straight(LayoutSize size) {
    for (int row = 1; row <= size.down(); row++) {
      for (int place = 1; place <= size.across(); place++) {
        square(row, place, 2 * place - 1, 2 * row - 1);
      }
    }
  }

  private void onPoint(LayoutSize size) {
    int width = 2 * size.across();
    int height = 2 * size.down();
    for (int row = 1; row < height; row++) {
      boolean outer = row % 2 == 1;
      int count = outer ? size.across() : size.across() - 1;
      for (int place = 1; place <= count; place++) {
        square(row, place, outer ? 2 * place - 1 : 2 * place, row);
      }
    }
    if (size.sideTriangles()) {
      for (int i = 1; i < size.across(); i++) {
        add("top" + i, PieceKind.SIDE_TRIANGLE, 2 * i, 0);
      }
      for (int i = 1; i < size.down(); i++) {
        add("right" + i, PieceKind.SIDE_TRIANGLE, width, 2 * i);
      }
      for (int i = 1; i < size.across(); i++) {
        add("bottom" + i, PieceKind.SIDE_TRIANGLE, 2 * i, height);
      }
      for (int i = 1; i < size.down(); i++) {
        add("left" + i, PieceKind.SIDE_TRIANGLE, 0, 2 * i);
      }
    }
    if (size.cornerTriangles()) {
      add("top-left", PieceKind.CORNER_TRIANGLE, 0, 0);
      add("top-right", PieceKind.CORNER_TRIANGLE, width, 0);
      add("bottom-right", PieceKind.CORNER_TRIANGLE, width, height);
      add("bottom-left", PieceKind.CORNER_TRIANGLE, 0, height);
    }
  }

  private void square(int row, int place, int x, int y) {
    add("r" + row + "c" + place, PieceKind.SQUARE, x, y);
  }

  private void add(String name, PieceKind kind, int x, int y) {
    places.add(new Place(places.size(), name, kind, x, y));
  }
}
