package lozengy.report;

import java.util.stream.Collectors;

/** Makes text from a file safe to show: on one line, without characters that steer a display. */
public final class PlainText {

  private static final String REPLACEMENT = "?";

  /** Zero-width joiner and non-joiner: several scripts need them, and they steer nothing. */
  private static final int NON_JOINER = 0x200c;

  private static final int JOINER = 0x200d;

  private PlainText() {}

  /**
   * The text on one line. Line breaks and tabs become spaces; other control characters, direction
   * overrides and halves of surrogate pairs, which could steer a terminal, turn the text around or
   * break XML, become question marks.
   */
  public static String oneLine(String text) {
    return text.codePoints().mapToObj(PlainText::shown).collect(Collectors.joining()).strip();
  }

  private static String shown(int codePoint) {
    if (Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint)) {
      return " ";
    }
    if (joins(codePoint)) {
      return Character.toString(codePoint);
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED ->
          REPLACEMENT;
      default -> Character.toString(codePoint);
    };
  }

  /** Columns that a text takes on a terminal: wide for ideographs, none for marks over a letter. */
  public static int columns(String text) {
    return text.codePoints().map(PlainText::columns).sum();
  }

  /** Columns that a character takes. */
  static int columns(int codePoint) {
    int type = Character.getType(codePoint);
    if (joins(codePoint)
        || type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    return wide(codePoint) ? 2 : 1;
  }

  private static boolean joins(int codePoint) {
    return codePoint == JOINER || codePoint == NON_JOINER;
  }

  private static boolean wide(int codePoint) {
    return switch (Character.UnicodeScript.of(codePoint)) {
      case HAN, HIRAGANA, KATAKANA, HANGUL -> true;
      default -> codePoint >= 0x1f300 && codePoint < 0x1fb00;
    };
  }
}
