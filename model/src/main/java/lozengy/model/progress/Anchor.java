package lozengy.model.progress;

/** The corner of a blanket that stays where it is when its size changes. */
public enum Anchor {
  /** Where the first strip begins. */
  TOP_LEFT("top-left", false, false),
  /** The end of the first row. */
  TOP_RIGHT("top-right", true, false),
  /** The begin of the last row. */
  BOTTOM_LEFT("bottom-left", false, true),
  /** Where the last strip ends. */
  BOTTOM_RIGHT("bottom-right", true, true);

  private final String word;
  private final boolean right;
  private final boolean bottom;

  Anchor(String word, boolean right, boolean bottom) {
    this.word = word;
    this.right = right;
    this.bottom = bottom;
  }

  /** {@return the word used on the command line} */
  public String word() {
    return word;
  }

  /** Whether columns are counted from the right. */
  boolean right() {
    return right;
  }

  /** Whether rows are counted from the bottom. */
  boolean bottom() {
    return bottom;
  }
}
