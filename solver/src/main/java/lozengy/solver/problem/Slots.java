package lozengy.solver.problem;

/**
 * The rounds of all pieces as one row of slots: piece by piece, centre first. Pieces that a
 * symmetry makes each other's images are one piece here, in which each slot weighs as often as the
 * blanket has it.
 *
 * @param count how many slots
 * @param pieceStart first slot of each piece, and the count at the end
 * @param piece piece of each slot
 * @param layer layer of each slot, 0 the border
 * @param free slots whose yarn may change, ascending
 * @param fixedYarn yarn of a slot that may not change, or -1
 * @param members the blanket's pieces that each piece stands for, at least one
 * @param lead the one of them whose lock and state count
 * @param tied whether any piece stands for several
 */
public record Slots(
    int count,
    int[] pieceStart,
    int[] piece,
    int[] layer,
    int[] free,
    int[] fixedYarn,
    int[][] members,
    int[] lead,
    boolean tied) {

  /** How many of the blanket's pieces a piece stands for. */
  public int weight(int ofPiece) {
    return members[ofPiece].length;
  }

  /** How many pieces. */
  public int pieces() {
    return pieceStart.length - 1;
  }

  /** The border slot of a piece. */
  public int border(int piece) {
    return pieceStart[piece + 1] - 1;
  }

  /** How many rounds a piece has. */
  public int rounds(int piece) {
    return pieceStart[piece + 1] - pieceStart[piece];
  }
}
