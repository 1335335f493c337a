package lozengy.report.print;

import java.util.Locale;

/** A size of paper. Sizes: ISO 216 and ANSI/ASME Y14.1, from memory. */
public enum Paper {
  /** 210 by 297 mm. */
  A4(210, 297),
  /** 8 1/2 by 11 in. */
  LETTER(215.9, 279.4);

  private final double widthMm;
  private final double heightMm;

  Paper(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** The word on the command line, and in CSS. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  double widthMm() {
    return widthMm;
  }

  double heightMm() {
    return heightMm;
  }
}
