package lozengy.cli.command;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.model.input.Quantity;

/**
 * How wide a picture is to be.
 *
 * @param number above 0
 * @param unit the unit
 */
record PictureWidth(double number, Unit unit) {

  /** What PNG takes if nothing is said. */
  static final PictureWidth USUAL = new PictureWidth(2000, Unit.PX);

  /** A dot of print: common practice, no source. */
  private static final double PIXELS_PER_INCH = 300;

  /** A pixel of CSS Values 4, by definition. */
  private static final double CSS_PIXELS_PER_INCH = 96;

  private static final double MM_PER_INCH = 25.4;

  /** Larger ones take more than a gigabyte. */
  private static final int MOST_PIXELS = 16_000;

  private static final int LEAST_PIXELS = 16;
  private static final Pattern FORM =
      Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?) ?(px|mm|cm|in)");

  /** A unit of width. */
  enum Unit {
    PX(MM_PER_INCH / CSS_PIXELS_PER_INCH),
    MM(1),
    CM(10),
    IN(MM_PER_INCH);

    private final double millimetres;

    Unit(double millimetres) {
      this.millimetres = millimetres;
    }
  }

  /**
   * Checks the range.
   *
   * @throws IllegalArgumentException in words if it is too small or too large
   */
  PictureWidth {
    double pixels =
        unit == Unit.PX ? number : number * unit.millimetres / MM_PER_INCH * PIXELS_PER_INCH;
    if (!(pixels >= LEAST_PIXELS && pixels <= MOST_PIXELS)) {
      throw new IllegalArgumentException(
          "is not from " + LEAST_PIXELS + " to " + MOST_PIXELS + " dots at 300 an inch");
    }
  }

  /**
   * Reads a width such as {@code 1600px}, {@code 40cm} or {@code 12in}.
   *
   * @throws IllegalArgumentException in words if it is none
   */
  static PictureWidth parse(String text) {
    Matcher matcher = FORM.matcher(text.toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "is not a width, such as 1600px, 40cm or 12in"
              + Quantity.pointForComma(text).map(remedy -> ". " + remedy).orElse(""));
    }
    Unit unit = Unit.valueOf(matcher.group(2).toUpperCase(Locale.ROOT));
    return new PictureWidth(Double.parseDouble(matcher.group(1)), unit);
  }

  /** In dots: as many as were said, or 300 an inch. */
  int pixels() {
    return (int)
        Math.round(
            unit == Unit.PX ? number : number * unit.millimetres / MM_PER_INCH * PIXELS_PER_INCH);
  }

  /** In mm: as long as was said, or 96 pixels an inch. */
  double millimetres() {
    return number * unit.millimetres;
  }
}
