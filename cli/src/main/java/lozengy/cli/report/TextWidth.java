package lozengy.cli.report;

/**
 * Estimates how wide a text in a common sans-serif font is. No font is asked, so that the result is
 * the same on every machine; the classes lean to the wide side.
 */
final class TextWidth {

  private static final String NARROW = "ijlI.,:;'!|()[]-/ ftr";
  private static final String BROAD = "mwMW@%";

  private TextWidth() {}

  /** Width as a multiple of the font's size. */
  static double ems(String text) {
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
  static String fit(String text, double ems) {
    if (ems(text) <= ems) {
      return text;
    }
    int end = text.length();
    while (end > 0 && ems(text.substring(0, end)) + ems(0x2026) > ems) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).strip() + "\u2026";
  }
}
