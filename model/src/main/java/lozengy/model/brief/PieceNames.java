package lozengy.model.brief;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.model.input.Nearest;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Setting;

/** Says which pieces there are, to someone who named one that is not. */
public final class PieceNames {

  private static final Pattern SQUARE = Pattern.compile("r(\\d{1,7})c(\\d{1,7})");
  private static final Pattern SIDE = Pattern.compile("(top|right|bottom|left)\\d{1,7}");
  private static final List<String> CORNERS =
      List.of("top-left", "top-right", "bottom-right", "bottom-left");

  private PieceNames() {}

  /**
   * {@return which pieces of the family of an unknown name there are, as a remedy}
   *
   * @param name a name that no piece has
   * @param size the layout's size
   */
  public static String remedy(String name, LayoutSize size) {
    Matcher square = SQUARE.matcher(name);
    Matcher side = SIDE.matcher(name);
    if (square.matches()) {
      return squares(Integer.parseInt(square.group(1)), size);
    }
    if (side.matches()) {
      return sides(side.group(1), size);
    }
    if (CORNERS.contains(name)) {
      return "This layout has no corner triangles";
    }
    return Nearest.to(name, CORNERS)
        .filter(corner -> size.cornerTriangles())
        .map(corner -> "Maybe " + corner + " is meant")
        .orElse(
            "Squares are named by row and place, such as r3c2, triangles by side, such as top1");
  }

  private static String squares(int row, LayoutSize size) {
    boolean onPoint = size.setting() == Setting.ON_POINT;
    int rows = onPoint ? 2 * size.down() - 1 : size.down();
    if (row < 1 || row > rows) {
      return "The rows are 1 to " + rows;
    }
    int places = onPoint && row % 2 == 0 ? size.across() - 1 : size.across();
    if (places == 0) {
      return "Row " + row + " holds no square";
    }
    return "Row " + row + " holds " + range("place", places);
  }

  private static String sides(String side, LayoutSize size) {
    if (!size.sideTriangles()) {
      return "This layout has no side triangles";
    }
    boolean along = side.equals("top") || side.equals("bottom");
    int triangles = (along ? size.across() : size.down()) - 1;
    if (triangles == 0) {
      return "The " + side + " has no triangles";
    }
    return "The " + side + " has " + range("triangle", triangles);
  }

  private static String range(String what, int most) {
    return most == 1 ? what + " 1 only" : what + "s 1 to " + most;
  }
}
