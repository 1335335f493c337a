package lozengy.model.layout;

/** How the squares stand. */
public enum Setting {
  /** Squares standing on a corner, joined in diagonal strips. */
  ON_POINT("on-point"),
  /** Squares standing on a side, joined in rows. */
  STRAIGHT("straight");

  private final String word;

  Setting(String word) {
    this.word = word;
  }

  /** {@return the word used in files} */
  public String word() {
    return word;
  }
}
