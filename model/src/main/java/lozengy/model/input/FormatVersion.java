package lozengy.model.input;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The version of a file's form, such as {@code lozengy-brief/1}. Fields may come within a version;
 * a file that has some says so by a second number, {@code lozengy-brief/1.2}.
 */
public final class FormatVersion {

  private static final Pattern SECOND = Pattern.compile("\\.([1-9]\\d{0,5})");

  private FormatVersion() {}

  /**
   * {@return the second number of a form, 0 where it has none; empty where it is another form}
   *
   * @param format the form, such as {@code lozengy-brief/1}
   * @param text what a file states
   */
  public static OptionalInt second(String format, String text) {
    if (text.equals(format)) {
      return OptionalInt.of(0);
    }
    if (!text.startsWith(format)) {
      return OptionalInt.empty();
    }
    Matcher second = SECOND.matcher(text.substring(format.length()));
    return second.matches()
        ? OptionalInt.of(Integer.parseInt(second.group(1)))
        : OptionalInt.empty();
  }

  /**
   * {@return the form with a second number}
   *
   * @param format the form, such as {@code lozengy-brief/1}
   * @param second the second number, 0 for none
   */
  public static String text(String format, int second) {
    return second == 0 ? format : format + "." + second;
  }
}
