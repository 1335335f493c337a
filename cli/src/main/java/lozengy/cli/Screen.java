package lozengy.cli;

/**
 * What the terminal that a person looks at shows.
 *
 * @param colours which colours standard output shows
 * @param columns how many characters fit on a line, 1 or more
 */
public record Screen(Colours colours, int columns) {

  /** What a terminal has that does not say: the width that most are opened with. */
  private static final int USUAL_COLUMNS = 80;

  /** No colours, and the usual width. */
  public static final Screen PLAIN = new Screen(Colours.NONE, USUAL_COLUMNS);

  /**
   * Makes a screen.
   *
   * @throws IllegalArgumentException if it has no column
   */
  public Screen {
    if (columns < 1) {
      throw new IllegalArgumentException("columns: " + columns);
    }
  }

  /** The process's own, as the launcher and the environment tell of it. */
  static Screen ofProcess() {
    int columns = Integer.getInteger("lozengy.columns", USUAL_COLUMNS);
    return new Screen(
        Colours.of(Boolean.getBoolean("lozengy.terminal"), System.getenv()),
        columns < 1 ? USUAL_COLUMNS : columns);
  }
}
