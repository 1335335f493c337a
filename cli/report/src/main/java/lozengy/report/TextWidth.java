package lozengy.report;

/**
 * Estimates how wide a text in a common sans-serif font is. No font is asked, so that the result is
 * the same on every machine; the classes lean to the wide side.
 */
public final class TextWidth {

  private static final String NARROW = "ijlI.,:;'!|()[]-/ ftr";
  private static final String BROAD = "mwMW@%";

  private static final int ELLIPSIS = 0x2026;

  private TextWidth() {}

  /** Width as a multiple of the font's size. */
  public static double ems(String text) {
    return text.codePoints().mapToDouble(TextWidth::ems).sum();
  }

  private static double ems(int codePoint) {
    if (codePoint > 0x2e80) {
      return 1.05;
    }
    if (NARROW.indexOf(codePoint) >= 0) {
      return 0.36;
    }
    if (BROAD.indexOf(codePoint) >= 0) {
      return 0.95;
    }
    return Character.isUpperCase(codePoint) ? 0.74 : 0.58;
  }

  /** The text, cut with an ellipsis where it is wider than {@code ems}. */
  public static String fit(String text, double ems) {
    double room = ems - ems(ELLIPSIS);
    double width = 0;
    int fitting = 0;
    for (int end = 0; end < text.length(); ) {
      int codePoint = text.codePointAt(end);
      width += ems(codePoint);
      end += Character.charCount(codePoint);
      fitting = width <= room ? end : fitting;
      if (width > ems) {
        return text.substring(0, fitting).strip() + Character.toString(ELLIPSIS);
      }
    }
    return text;
  }

  /** The text, cut at its beginning with an ellipsis where it is wider than {@code ems}. */
  public static String fitEnd(String text, double ems) {
    if (ems(text) <= ems) {
      return text;
    }
    double width = ems(ELLIPSIS);
    int start = text.length();
    while (start > 0) {
      int codePoint = text.codePointBefore(start);
      width += ems(codePoint);
      if (width > ems) {
        break;
      }
      start -= Character.charCount(codePoint);
    }
    return Character.toString(ELLIPSIS) + text.substring(start).strip();
  }
}
