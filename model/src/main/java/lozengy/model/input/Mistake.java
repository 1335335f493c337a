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
   * @param code the sort
   * @param data what it is about, by name
   */
  public record Sort(MistakeCode code, Map<String, String> data) {

    /**
     * Copies the data.
     *
     * @param code the sort
     * @param data what it is about, by name
     */
    public Sort {
      data = Map.copyOf(data);
    }
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

  /**
   * {@return a mistake of something that is asked for, and stands in no file}
   *
   * @param wish what messages call it, such as an option as it was written
   * @param sort what sort of mistake it is
   * @param found what was found, in words or as a quoted value
   * @param remedy what would be right
   */
  public static Mistake ofWish(String wish, Sort sort, String found, String remedy) {
    return new Mistake(BriefPath.of(wish), 0, sort, found, remedy);
  }

  /**
   * {@return a mistake of an input as a whole}
   *
   * @param sort what sort of mistake it is
   * @param found what was found, in words or as a quoted value
   * @param remedy what would be right
   */
  public static Mistake ofWhole(Sort sort, String found, String remedy) {
    return new Mistake(BriefPath.ROOT, 0, sort, found, remedy);
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
