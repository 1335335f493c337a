package lozengy.model.score;

/** A part of the score; each runs from 0 to 100. */
public enum Part {
  BALANCE,
  SPREAD,
  CONTRAST,
  VARIETY,
  LEEWAY,
  KEEP,
  COLOUR_VISION;

  /** Whether the part is scored only where a brief gives it a weight above 0. */
  public boolean onlyIfAsked() {
    return this == COLOUR_VISION;
  }

  /** The word used in files and on the terminal. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
