package lozengy.cli.command;

import java.util.List;
import java.util.Optional;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;

/**
 * The value of an option of the form {@code LEFT=RIGHT}.
 *
 * @param place the option as it was written, for messages
 * @param left what stands before the first equals sign, not empty
 * @param right what stands after it, not empty
 */
record Assigned(String place, String left, String right) {

  /**
   * Reads it.
   *
   * @param option the option's name
   * @param text its value
   * @param remedy what would be right
   * @param mistakes takes the mistake if it has not the form
   */
  static Optional<Assigned> read(
      String option, String text, String remedy, List<Mistake> mistakes) {
    String place = option + " " + text;
    int sign = text.indexOf('=');
    String left = sign < 0 ? text : text.substring(0, sign).strip();
    String right = sign < 0 ? "" : text.substring(sign + 1).strip();
    if (left.isEmpty() || right.isEmpty()) {
      String found =
          sign < 0
              ? "There is no ="
              : left.isEmpty() ? "Nothing stands before =" : "Nothing stands after =";
      mistakes.add(Mistake.ofWish(place, MistakeCode.MALFORMED.about(text), found, remedy));
      return Optional.empty();
    }
    return Optional.of(new Assigned(place, left, right));
  }
}
