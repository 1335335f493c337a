package lozengy.model.colour;

/** How dark or light a yarn is among the others, as a motif's rounds ask for it. */
public enum Tone {
  DARK,
  MID,
  LIGHT;

  /** The word used in files and on the terminal. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
