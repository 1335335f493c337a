package lozengy.model.layout;

/** What a piece is. */
public enum PieceKind {
  SQUARE("square"),
  /** Half a square, its long edge on the outline. */
  SIDE_TRIANGLE("triangle"),
  /** A quarter of a square, its long edge joined to the corner square. */
  CORNER_TRIANGLE("corner");

  private final String word;

  PieceKind(String word) {
    this.word = word;
  }

  /** The word used in files, the same as its motif's. */
  public String word() {
    return word;
  }
}
