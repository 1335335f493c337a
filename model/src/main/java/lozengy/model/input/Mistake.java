package lozengy.model.input;

/**
 * One mistake of an input.
 *
 * @param path place of the value, such as {@code yarns[3].colour}; what was asked for itself, such
 *     as an option, where it stands in no file; empty for the file as a whole
 * @param line line of the file, from 1; 0 where it is not known
 * @param found what was found, in words or as a quoted value
 * @param remedy what would be right
 */
public record Mistake(BriefPath path, int line, String found, String remedy) {

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
