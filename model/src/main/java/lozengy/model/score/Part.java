package lozengy.model.score;

/** A part of the score; each runs from 0 to 100. */
public enum Part {
  BALANCE,
  SPREAD,
  CONTRAST,
  VARIETY,
  LEEWAY,
  KEEP;

  /** The word used in files and on the terminal. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
