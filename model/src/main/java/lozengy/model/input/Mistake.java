package lozengy.model.input;

/**
 * One mistake of an input.
 *
 * @param path path of the field, such as {@code yarns[3].colour}; empty for the file as a whole
 * @param line line of the file, from 1; 0 where it is not known
 * @param found what was found, in words or as a quoted value
 * @param remedy what would be right
 */
public record Mistake(String path, int line, String found, String remedy) {

  private static final int MOST_PATH_CHARACTERS = 200;

  /** {@return the mistake in one line of words, without characters that a terminal would obey} */
  public String words() {
    StringBuilder words = new StringBuilder();
    if (line > 0) {
      words.append("line ").append(line).append(", ");
    }
    if (!path.isEmpty()) {
      words.append(Words.cut(path, MOST_PATH_CHARACTERS)).append(": ");
    }
    return Words.visible(words.append(found).append(". ").append(remedy).toString());
  }
}
