package lozengy.report;

/**
 * What the terminal that a person looks at shows.
 *
 * @param colours which colours standard output shows
 * @param columns how many characters fit on a line, 1 or more
 * @param watched whether standard output is a terminal at all
 */
public record Screen(Colours colours, int columns, boolean watched) {

  /** What a terminal has that does not say: the width that most are opened with. */
  public static final int USUAL_COLUMNS = 80;

  /** No colours, and the usual width. */
  public static final Screen PLAIN = new Screen(Colours.NONE, USUAL_COLUMNS, false);

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

  /** Makes the screen of a terminal. */
  public Screen(Colours colours, int columns) {
    this(colours, columns, true);
  }
}
