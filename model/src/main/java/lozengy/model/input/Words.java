package lozengy.model.input;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** Puts values into the words of a message. */
public final class Words {

  private static final int MOST_SHOWN = 40;

  /** Zero-width non-joiner. */
  private static final int NON_JOINER = 0x200c;

  /** Zero-width joiner. */
  private static final int JOINER = 0x200d;

  private Words() {}

  /**
   * {@return a text in quotes, cut where it is long, without characters that a terminal would obey}
   *
   * @param text the text
   */
  public static String quoted(String text) {
    return '"' + visible(cut(text, MOST_SHOWN)) + '"';
  }

  /** A text, cut where it has more code points than that. */
  static String cut(String text, int most) {
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most)) + "…";
  }

  /** A text with characters that a terminal would obey, or not show, as their numbers. */
  static String visible(String text) {
    if (printable(text)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (printable(c)) {
                shown.appendCodePoint(c);
              } else {
                shown.append(String.format(Locale.ROOT, "\\u%04x", c));
              }
            });
    return shown.toString();
  }

  /** Whether a text holds only characters that are fit for a name or title. */
  static boolean printable(String text) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (!printable(text.codePointAt(i))) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether a character is fit for a name or title: neither a control nor a formatting one. The
   * joiners are fit: several scripts and composed emoji are written with them.
   */
  private static boolean printable(int codePoint) {
    if (codePoint == NON_JOINER || codePoint == JOINER) {
      return true;
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }

  /**
   * {@return a whole number with its thousands apart, such as {@code 1,000,000}}
   *
   * @param number the number
   */
  public static String number(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }

  /**
   * {@return a number and what it counts, such as {@code 1 piece} or {@code 2 pieces}}
   *
   * @param number the number
   * @param what what it counts, in the singular
   */
  public static String count(long number, String what) {
    return number(number) + " " + plural(number, what);
  }

  /**
   * {@return what is counted, in the singular of 1 and else in the plural}
   *
   * @param number the number
   * @param what what it counts, in the singular
   */
  public static String plural(double number, String what) {
    return number == 1 ? what : what + "s";
  }

  /**
   * {@return a choice, such as {@code a, b or c}}
   *
   * @param words the words to choose from, at least one
   */
  public static String or(Collection<String> words) {
    List<String> list = List.copyOf(words);
    int last = list.size() - 1;
    return last < 1
        ? String.join("", list)
        : String.join(", ", list.subList(0, last)) + " or " + list.get(last);
  }

  /**
   * Values by their words, in their own order.
   *
   * @param values the values
   * @param word tells a value's word
   * @param <T> what the words mean
   * @return the values by word
   */
  public static <T> Map<String, T> meanings(T[] values, Function<T, String> word) {
    Map<String, T> meanings = new LinkedHashMap<>();
    for (T value : values) {
      meanings.put(word.apply(value), value);
    }
    return Collections.unmodifiableMap(meanings);
  }
}
