package lozengy.model.blanket;

/** Guards against sequences that are not a blanket's: O(pieces x rounds). */
public final class Shape {

  private Shape() {}

  /**
   * Makes sure that sequences have a blanket's pieces and rounds, and name its yarns or none.
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   * @throws IllegalArgumentException naming the first place where they do not
   */
  public static void require(Blanket blanket, Sequences sequences) {
    if (sequences.pieces() != blanket.pieceCount()) {
      throw new IllegalArgumentException(
          "sequences of %d pieces for a blanket of %d"
              .formatted(sequences.pieces(), blanket.pieceCount()));
    }
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      if (sequences.rounds(piece) != blanket.roundCount(piece)) {
        throw new IllegalArgumentException(
            "%s: %d rounds given, its motif has %d"
                .formatted(
                    blanket.place(piece).name(),
                    sequences.rounds(piece),
                    blanket.roundCount(piece)));
      }
      for (int round = 0; round < sequences.rounds(piece); round++) {
        requireYarn(blanket, piece, round, sequences.yarn(piece, round));
      }
    }
  }

  /**
   * Makes sure of the shape, and that no round is open.
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   * @throws IllegalArgumentException naming the first place where it is not so
   */
  public static void requireComplete(Blanket blanket, Sequences sequences) {
    require(blanket, sequences);
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (sequences.yarn(piece, round) == Sequences.OPEN) {
          throw new IllegalArgumentException(
              "%s: round %d has no yarn".formatted(blanket.place(piece).name(), round + 1));
        }
      }
    }
  }

  private static void requireYarn(Blanket blanket, int piece, int round, int yarn) {
    if (yarn != Sequences.OPEN && (yarn < 0 || yarn >= blanket.yarnCount())) {
      throw new IllegalArgumentException(
          "%s: round %d has yarn index %d, the brief has %d yarns"
              .formatted(blanket.place(piece).name(), round + 1, yarn, blanket.yarnCount()));
    }
  }
}
