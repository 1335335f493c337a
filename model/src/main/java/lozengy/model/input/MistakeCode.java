package lozengy.model.input;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What sorts of mistakes there are, for programs: a stable word each, and the names of the data
 * that may come with it. Data is text; several values in one are apart by blanks.
 */
public enum MistakeCode {
  /** A list, fields or nothing where something else must stand. */
  WRONG_TYPE("value"),
  /** A text without a character that shows. */
  EMPTY_TEXT("value"),
  /** A text of more characters than allowed. */
  TEXT_TOO_LONG("value", "most"),
  /** A text with a character that a terminal would obey. */
  CONTROL_CHARACTER("value"),
  /** None of the words that are known there. */
  UNKNOWN_WORD("value", "allowed"),
  /** No number. */
  NOT_A_NUMBER("value"),
  /** A number in quotes. */
  QUOTED_NUMBER("value"),
  /** No number with a unit. */
  NOT_A_QUANTITY("value"),
  /** A number that lacks its unit. */
  NO_UNIT("value"),
  /** A unit that is not known there. */
  UNKNOWN_UNIT("value", "allowed"),
  /** A number too small or too large; {@code above} is a least that is not itself allowed. */
  OUT_OF_RANGE("value", "least", "most", "unit", "above"),
  /** Not of the form that such a value has. */
  MALFORMED("value"),
  /** Too few or too many of what {@code of} says. */
  WRONG_COUNT("of", "found", "least", "most", "piece"),
  /** A field or column that must be there. */
  FIELD_MISSING("field"),
  /** A field that must hold something. */
  FIELD_EMPTY("field"),
  /** A field that is not known there. */
  FIELD_UNKNOWN("field"),
  /** A field that is given twice. */
  FIELD_TWICE("field"),
  /** Exactly one of some fields must be given. */
  ONE_OF("fields", "given"),
  /** Named, listed or counted twice. */
  NAMED_TWICE("value", "with"),
  /** No yarn has the code. */
  UNKNOWN_YARN("yarn"),
  /** No stitch has the name, in the brief's terms. */
  UNKNOWN_STITCH("stitch"),
  /** A stitch's name that means two things, where the terms are not said. */
  AMBIGUOUS_STITCH("stitch", "us", "uk"),
  /** Neither a sample nor a starting value tells how much yarn stitches take. */
  NO_STARTING_VALUE("stitches"),
  /** A sample that leaves nothing for its stitches once its tails are taken off. */
  LIGHTER_THAN_TAILS("value", "tails"),
  /** No piece or group of pieces has the name. */
  UNKNOWN_PIECE("piece"),
  /** A yarn that was not counted. */
  NOT_COUNTED("yarn"),
  /** What cannot hold together with something else that is asked for. */
  CONTRADICTS("value", "with", "piece", "round"),
  /** What an arrangement states is not what its brief says. */
  DIFFERS_FROM_BRIEF("value", "brief", "piece", "round"),
  /** A round without a yarn where there must be one. */
  ROUND_OPEN("piece", "round"),
  /** What the brief holds of pieces breaks a rule. */
  BREAKS_RULE("rule", "fault", "pieces", "rounds", "yarns"),
  /** Pieces that are worked, and so cannot be changed like this. */
  ALREADY_WORKED("pieces"),
  /** What is asked for changes nothing. */
  NOTHING_TO_CHANGE("value"),
  /** A finished size that no layout comes near; width and height of the nearest, in cm. */
  NO_SIZE_NEAR("value", "width", "height"),
  /** A format that is not read there. */
  WRONG_FORMAT("value", "allowed"),
  /** The text is not of its language. */
  SYNTAX("language"),
  /** The text uses something of its language that is not read. */
  UNSUPPORTED("feature"),
  /** There is nothing in the input. */
  EMPTY_INPUT(),
  /** The input is not UTF-8 text. */
  NOT_TEXT("found"),
  /** More than is read or planned. */
  TOO_LARGE("of", "most", "found"),
  /** There is no such file or folder. */
  NO_SUCH_FILE("file"),
  /** A file is there already. */
  FILE_EXISTS("file"),
  /** What cannot be read. */
  UNREADABLE("reason"),
  /** What cannot be written. */
  UNWRITABLE("reason"),
  /** Another has changed the file since it was read. */
  OVERTAKEN("file"),
  /** Another process is writing the file. */
  BUSY("file"),
  /** How many mistakes there are beside those that are listed. */
  FURTHER_MISTAKES("count"),
  /** A command, option or argument that is not known, or one that is missing. */
  WRONG_CALL("value"),
  /** An option that another one needs. */
  OPTION_MISSING("option"),
  /** The memory does not suffice. */
  OUT_OF_MEMORY(),
  /** A fault of the program itself. */
  PROGRAM_FAULT("failure");

  private final List<String> names;

  MistakeCode(String... names) {
    this.names = List.of(names);
  }

  /** {@return the stable word} */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** {@return names of the data that may come with it} */
  public List<String> names() {
    return names;
  }

  /**
   * {@return a mistake's sort with its data}
   *
   * @param values the data, in the order of {@link #names}; what is null, empty or left out at the
   *     end is not told, the values of a collection are put into one text
   * @throws IllegalArgumentException if there are more values than names
   */
  public Mistake.Sort about(Object... values) {
    if (values.length > names.size()) {
      throw new IllegalArgumentException(word() + " tells of nothing but " + names);
    }
    Map<String, String> data = new TreeMap<>();
    for (int i = 0; i < values.length; i++) {
      String text = text(values[i]);
      if (!text.isEmpty()) {
        data.put(names.get(i), text);
      }
    }
    return new Mistake.Sort(this, data);
  }

  private static String text(Object value) {
    return value instanceof Collection<?> several
        ? several.stream().map(Object::toString).collect(Collectors.joining(" "))
        : Objects.toString(value, "");
  }
}
