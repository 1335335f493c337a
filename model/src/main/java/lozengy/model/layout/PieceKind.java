package lozengy.model.layout;

/** What a piece is. */
public enum PieceKind {
  /** A whole square. */
  SQUARE("square", 4),
  /** Half a square, its long edge on the outline. */
  SIDE_TRIANGLE("triangle", 2),
  /** A quarter of a square, its long edge joined to the corner square. */
  CORNER_TRIANGLE("corner", 1);

  private final String word;
  private final int quarterSquares;

  PieceKind(String word, int quarterSquares) {
    this.word = word;
    this.quarterSquares = quarterSquares;
  }

  /** {@return the word used in files, the same as its motif's} */
  public String word() {
    return word;
  }

  /** Its area, in quarters of a square. */
  int quarterSquares() {
    return quarterSquares;
  }
}
