package lozengy.solver.problem;

import lozengy.model.blanket.RoundIndex;

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

  /**
   * {@return how many of the blanket's pieces a piece stands for}
   *
   * @param ofPiece the piece's index, from 0
   */
  public int weight(int ofPiece) {
    return members[ofPiece].length;
  }

  /**
   * {@return the slot of each of the blanket's rounds, by its number}
   *
   * @param index the blanket's numbers of rounds
   */
  int[] numbers(RoundIndex index) {
    int[] slotOf = new int[index.count()];
    for (int of = 0; of < members.length; of++) {
      for (int member : members[of]) {
        for (int round = 0; round < rounds(of); round++) {
          slotOf[index.number(member, round)] = pieceStart[of] + round;
        }
      }
    }
    return slotOf;
  }

  /** {@return how many pieces} */
  public int pieces() {
    return pieceStart.length - 1;
  }

  /**
   * {@return the border slot of a piece}
   *
   * @param piece the piece's index, from 0
   */
  public int border(int piece) {
    return pieceStart[piece + 1] - 1;
  }

  /**
   * {@return how many rounds a piece has}
   *
   * @param piece the piece's index, from 0
   */
  public int rounds(int piece) {
    return pieceStart[piece + 1] - pieceStart[piece];
  }
}
