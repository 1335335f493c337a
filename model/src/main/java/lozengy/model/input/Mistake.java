package lozengy.model.input;

import java.util.Map;

/**
 * One mistake of an input.
 *
 * @param path place of the value, such as {@code yarns[3].colour}; what was asked for itself, such
 *     as an option, where it stands in no file; empty for the file as a whole
 * @param line line of the file, from 1; 0 where it is not known
 * @param sort what sort of mistake it is, with its data
 * @param found what was found, in words or as a quoted value
 * @param remedy what would be right
 */
public record Mistake(BriefPath path, int line, Sort sort, String found, String remedy) {

  /**
   * What sort of mistake it is, for programs.
   *
   * @param code a stable word
   * @param data what it is about, by name
   */
  public record Sort(String code, Map<String, String> data) {

    /** One that has no word of its own. */
    public static final Sort OTHER = new Sort("other", Map.of());

    /**
     * Copies the data.
     *
     * @param code a stable word
     * @param data what it is about, by name
     */
    public Sort {
      data = Map.copyOf(data);
    }

    /**
     * {@return a sort that is about nothing but its place}
     *
     * @param code a stable word
     */
    public static Sort of(String code) {
      return new Sort(code, Map.of());
    }

    /**
     * {@return a sort that is about one thing}
     *
     * @param code a stable word
     * @param name what that is
     * @param value its value
     */
    public static Sort of(String code, String name, String value) {
      return new Sort(code, Map.of(name, value));
    }
  }

  /**
   * A mistake that has no word of its own.
   *
   * @param path place of the value
   * @param line line of the file, from 1; 0 where it is not known
   * @param found what was found, in words or as a quoted value
   * @param remedy what would be right
   */
  public Mistake(BriefPath path, int line, String found, String remedy) {
    this(path, line, Sort.OTHER, found, remedy);
  }

  /**
   * {@return the same mistake told of another place}
   *
   * @param other that place
   * @param itsLine its line of the file, from 1; 0 where it is not known
   */
  public Mistake at(BriefPath other, int itsLine) {
    return new Mistake(other, itsLine, sort, found, remedy);
  }

  /** {@return what it is whatever its place: two mistakes that say the same are one matter} */
  public Object matter() {
    return sort.equals(Sort.OTHER) ? found : sort;
  }

  /**
   * {@return a mistake of something that is asked for, and stands in no file}
   *
   * @param wish what messages call it, such as an option as it was written
   * @param found what was found, in words or as a quoted value
   * @param remedy what would be right
   */
  public static Mistake ofWish(String wish, String found, String remedy) {
    return new Mistake(BriefPath.of(wish), 0, found, remedy);
  }

  /**
   * {@return a mistake of an input as a whole}
   *
   * @param found what was found, in words or as a quoted value
   * @param remedy what would be right
   */
  public static Mistake ofWhole(String found, String remedy) {
    return new Mistake(BriefPath.ROOT, 0, found, remedy);
  }

  private static final int MOST_PATH_CHARACTERS = 200;

  /** {@return the mistake in one line of words, without characters that a terminal would obey} */
  public String words() {
    StringBuilder words = new StringBuilder();
    if (line > 0) {
      words.append("line ").append(line).append(", ");
    }
    if (!path.steps().isEmpty()) {
      words.append(Words.cut(path.toString(), MOST_PATH_CHARACTERS)).append(": ");
    }
    return Words.visible(words.append(found).append(". ").append(remedy).toString());
  }
}
