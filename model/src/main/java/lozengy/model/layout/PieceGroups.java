package lozengy.model.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds the pieces that a selector stands for. A selector is
 *
 * <ul>
 *   <li>a piece's name: {@code r3c2}, {@code top1}, {@code top-left};
 *   <li>a row of squares: {@code row3}; a strip with the triangles in it: {@code strip2};
 *   <li>a kind: {@code squares}, {@code triangles} (those of the sides), {@code corners};
 *   <li>an edge: {@code top}, {@code right}, {@code bottom}, {@code left}: the pieces with a side
 *       on that edge of the outline, the corners at both its ends among them; {@code outline}: all
 *       four;
 *   <li>{@code all};
 *   <li>a range of the same: {@code r3c1..r3c6} in one row, {@code top1..top4} along one side,
 *       {@code row3..row5}, {@code strip1..strip4}.
 * </ul>
 */
final class PieceGroups {

  /** How far from the outline the centre of a square with a side on it lies. */
  private static final int INSET = 1;

  private static final Pattern NUMBERED =
      Pattern.compile("(row|strip|top|right|bottom|left)(\\d+)");
  private static final Pattern SQUARE = Pattern.compile("(r\\d{1,7}c)(\\d{1,7})");
  private static final int MOST_DIGITS = 7;

  private final Layout layout;
  private final Map<String, Predicate<Place>> words;
  private List<Strip> strips;

  PieceGroups(Layout layout) {
    this.layout = layout;
    this.words =
        Map.of(
            "all", place -> true,
            "squares", place -> place.kind() == PieceKind.SQUARE,
            "triangles", place -> place.kind() == PieceKind.SIDE_TRIANGLE,
            "corners", place -> place.kind() == PieceKind.CORNER_TRIANGLE,
            "top", place -> onEdge(place, 0, -1),
            "right", place -> onEdge(place, 1, 0),
            "bottom", place -> onEdge(place, 0, 1),
            "left", place -> onEdge(place, -1, 0),
            "outline",
                place ->
                    onEdge(place, 0, -1)
                        || onEdge(place, 1, 0)
                        || onEdge(place, 0, 1)
                        || onEdge(place, -1, 0));
  }

  /**
   * The pieces of a selector, in the layout's order; empty if it stands for none. A name takes O(1)
   * time, a word O(pieces).
   */
  List<Place> find(String selector) {
    Optional<Place> place = layout.find(selector);
    if (place.isPresent()) {
      return List.of(place.get());
    }
    Predicate<Place> word = words.get(selector);
    if (word != null) {
      return layout.places().stream().filter(word).toList();
    }
    int dots = selector.indexOf("..");
    if (dots >= 0) {
      return range(selector.substring(0, dots), selector.substring(dots + 2));
    }
    Matcher numbered = NUMBERED.matcher(selector);
    return numbered.matches() && number(numbered.group(2)) > 0
        ? numbered(numbered.group(1), number(numbered.group(2)))
        : List.of();
  }

  private List<Place> range(String from, String to) {
    Matcher first = member(from);
    Matcher last = member(to);
    if (first == null || last == null || !first.group(1).equals(last.group(1))) {
      return List.of();
    }
    String family = first.group(1);
    int start = number(first.group(2));
    int end = number(last.group(2));
    boolean bothThere =
        start > 0
            && start <= end
            && !numbered(family, start).isEmpty()
            && !numbered(family, end).isEmpty();
    if (!bothThere) {
      return List.of();
    }
    List<Place> found = new ArrayList<>();
    for (int i = start; i <= end; i++) {
      found.addAll(numbered(family, i));
    }
    return List.copyOf(found);
  }

  private static Matcher member(String name) {
    return Stream.of(SQUARE, NUMBERED)
        .map(pattern -> pattern.matcher(name))
        .filter(Matcher::matches)
        .findFirst()
        .orElse(null);
  }

  private static int number(String digits) {
    return digits.length() > MOST_DIGITS ? 0 : Integer.parseInt(digits);
  }

  /** The pieces of a family's number: a row, a strip, or one piece. */
  private List<Place> numbered(String family, int number) {
    return switch (family) {
      case "row" -> row(number);
      case "strip" -> strip(number);
      default -> layout.find(family + number).map(List::of).orElse(List.of());
    };
  }

  private List<Place> row(int number) {
    List<Place> row = new ArrayList<>();
    Optional<Place> place = layout.find("r" + number + "c1");
    while (place.isPresent()) {
      row.add(place.get());
      place = layout.find("r" + number + "c" + (row.size() + 1));
    }
    return row;
  }

  private List<Place> strip(int number) {
    if (strips == null) {
      strips = Strips.of(layout);
    }
    return number > strips.size() ? List.of() : strips.get(number - 1).pieces();
  }

  /** How many strips there are. */
  int stripCount() {
    strip(1);
    return strips.size();
  }

  /** Whether a piece has a side on the edge that lies in a direction. */
  private boolean onEdge(Place place, int toX, int toY) {
    LayoutSize size = layout.size();
    int depth = depth(place, toX, toY);
    if (place.kind() != PieceKind.SQUARE) {
      return depth == 0;
    }
    if (depth != INSET) {
      return false;
    }
    if (size.setting() == Setting.STRAIGHT || !size.sideTriangles() && !size.cornerTriangles()) {
      return true;
    }
    // on point, one of the square's two sides towards the edge must have no triangle on it
    return open(place, toX == 0 ? -1 : toX, toY == 0 ? -1 : toY)
        || open(place, toX == 0 ? 1 : toX, toY == 0 ? 1 : toY);
  }

  /** How far a piece's lattice point lies from the edge in a direction. */
  private int depth(Place place, int toX, int toY) {
    LayoutSize size = layout.size();
    if (toX != 0) {
      return toX < 0 ? place.x() : 2 * size.across() - place.x();
    }
    return toY < 0 ? place.y() : 2 * size.down() - place.y();
  }

  /** Whether no triangle lies on the side of a square of the outer ring that faces so. */
  private boolean open(Place square, int toX, int toY) {
    LayoutSize size = layout.size();
    int x = square.x() + toX;
    int y = square.y() + toY;
    boolean atX = x == 0 || x == 2 * size.across();
    boolean atY = y == 0 || y == 2 * size.down();
    return atX && atY ? !size.cornerTriangles() : (atX || atY) && !size.sideTriangles();
  }
}
