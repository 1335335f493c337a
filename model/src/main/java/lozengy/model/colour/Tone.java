package lozengy.model.colour;

/** How dark or light a yarn is among the others, as a motif's rounds ask for it. */
public enum Tone {
  /** Below the lightness where dark ends. */
  DARK,
  /** Neither dark nor light. */
  MID,
  /** From the lightness where light begins. */
  LIGHT;

  /** {@return the word used in files and on the terminal} */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
