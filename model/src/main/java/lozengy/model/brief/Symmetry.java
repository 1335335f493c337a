package lozengy.model.brief;

/** How a blanket may be the same as its own image. */
public enum Symmetry {
  /** No image is asked for. */
  NONE("none"),
  /** The right half is the mirror image of the left. */
  LEFT_RIGHT("left-right"),
  /** The lower half is the mirror image of the upper. */
  TOP_BOTTOM("top-bottom"),
  /** Both mirrors, and so the half turn too. */
  BOTH("both"),
  /** Turned upside down it looks the same. */
  HALF_TURN("half-turn");

  private final String word;

  Symmetry(String word) {
    this.word = word;
  }

  /** {@return the word used in files} */
  public String word() {
    return word;
  }
}
