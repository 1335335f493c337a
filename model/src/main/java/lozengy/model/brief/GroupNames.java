package lozengy.model.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Nearest;
import lozengy.model.input.Words;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;

/** Says which pieces and groups of pieces there are, to someone who named one that is not. */
public final class GroupNames {

  private static final List<String> WORDS =
      List.of(
          "all",
          "squares",
          PieceKind.SIDE_TRIANGLE.word() + "s",
          PieceKind.CORNER_TRIANGLE.word() + "s",
          "top",
          "right",
          "bottom",
          "left",
          "outline");
  private static final Pattern FAMILY = Pattern.compile("(row|strip)s?[ -]?(\\d*)");
  private static final Pattern MEMBER =
      Pattern.compile("(r\\d{1,7}c|row|strip|top|right|bottom|left)(\\d{1,7})");

  private GroupNames() {}

  /**
   * {@return whether a selector is a word for a kind of pieces or for an edge}
   *
   * @param selector the selector
   */
  public static boolean isWord(String selector) {
    return WORDS.contains(selector);
  }

  /**
   * {@return the mistake of a selector that stands for no piece}
   *
   * @param selector the selector
   * @param path where it stands
   * @param layout the layout in which it stands for none
   */
  public static Mistake unknown(String selector, BriefPath path, Layout layout) {
    return new Mistake(
        path,
        0,
        MistakeCode.UNKNOWN_PIECE.about(selector),
        "There is no piece " + Words.quoted(selector),
        remedy(selector, layout));
  }

  private static String remedy(String selector, Layout layout) {
    int dots = selector.indexOf("..");
    if (dots >= 0) {
      return range(selector.substring(0, dots), selector.substring(dots + 2), layout);
    }
    if (WORDS.contains(selector)) {
      return empty(selector, layout.size());
    }
    Matcher family = FAMILY.matcher(selector);
    if (family.matches()) {
      return family(family.group(1), family.group(2), layout);
    }
    List<String> words = new ArrayList<>(WORDS);
    words.addAll(List.of("top-left", "top-right", "bottom-right", "bottom-left"));
    return Nearest.to(selector, words)
        .filter(word -> !layout.select(word).isEmpty())
        .filter(word -> !MEMBER.matcher(selector).matches())
        .map(word -> "Maybe " + word + " is meant")
        .orElseGet(() -> PieceNames.remedy(selector, layout.size()));
  }

  private static String range(String from, String to, Layout layout) {
    for (String end : List.of(from, to)) {
      if (layout.select(end).isEmpty()) {
        return (end.isEmpty() ? "One end is missing. " : "There is no " + end + ". ")
            + "A range is such as r3c1..r3c6, row3..row5 or strip1..strip4";
      }
    }
    Matcher first = MEMBER.matcher(from);
    Matcher last = MEMBER.matcher(to);
    if (!first.matches() || !last.matches() || !first.group(1).equals(last.group(1))) {
      return "A range stays in one row or along one side, such as r3c1..r3c6; whole rows are such"
          + " as row3..row5";
    }
    return "It runs backwards: write " + to + ".." + from;
  }

  private static String empty(String word, LayoutSize size) {
    return switch (word) {
      case "triangles" -> "This layout has no side triangles";
      case "corners" -> "This layout has no corner triangles";
      default -> "This layout has no such pieces";
    };
  }

  private static String family(String word, String number, Layout layout) {
    boolean onPoint = layout.size().setting() == Setting.ON_POINT;
    int down = layout.size().down();
    int last = word.equals("strip") ? layout.stripCount() : onPoint ? 2 * down - 1 : down;
    if (number.matches("[1-9]\\d{0,6}") && Integer.parseInt(number) <= last) {
      return layout.select(word + number).isEmpty()
          ? "Row " + number + " holds no square"
          : "Write " + word + number;
    }
    return last == 1
        ? "There is " + word + "1 only"
        : "The " + word + "s are " + word + "1 to " + word + last;
  }
}
