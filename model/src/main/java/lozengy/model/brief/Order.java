package lozengy.model.brief;

/** How borders are to come again over the blanket, where a look asks for it. */
public enum Order {
  /** No border comes again at the same distance and in the same direction more than by chance. */
  SCATTERED("scattered"),
  /** Borders come again at equal distances, like a woven or tiled pattern. */
  ORDERED("ordered");

  private final String word;

  Order(String word) {
    this.word = word;
  }

  /** {@return the word used in files} */
  public String word() {
    return word;
  }
}
