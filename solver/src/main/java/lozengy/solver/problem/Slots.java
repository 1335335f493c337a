package lozengy.solver.problem;

import lozengy.model.blanket.RoundIndex;

/**
 * The rounds of all pieces as one row of slots: orbit by orbit, centre first. An orbit is a piece
 * with its images by the symmetry that is asked for, or one piece alone; each of its slots weighs
 * as often as the blanket has it. Orbits have numbers of their own: one is never a piece's index in
 * the blanket, which {@link #members} and {@link #lead} give.
 *
 * @param count how many slots
 * @param orbitStart first slot of each orbit, and the count at the end
 * @param orbit orbit of each slot
 * @param layer layer of each slot, 0 the border
 * @param free slots whose yarn may change, ascending
 * @param fixedYarn yarn of a slot that may not change, or -1
 * @param members the blanket's pieces in each orbit, at least one
 * @param lead the one of them whose lock and state count
 * @param tied whether any orbit has several pieces
 */
public record Slots(
    int count,
    int[] orbitStart,
    int[] orbit,
    int[] layer,
    int[] free,
    int[] fixedYarn,
    int[][] members,
    int[] lead,
    boolean tied) {

  /**
   * {@return how many of the blanket's pieces an orbit holds}
   *
   * @param ofOrbit the orbit's index, from 0
   */
  public int weight(int ofOrbit) {
    return members[ofOrbit].length;
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
          slotOf[index.number(member, round)] = orbitStart[of] + round;
        }
      }
    }
    return slotOf;
  }

  /** {@return how many orbits} */
  public int orbits() {
    return orbitStart.length - 1;
  }

  /**
   * {@return the border slot of an orbit}
   *
   * @param ofOrbit the orbit's index, from 0
   */
  public int border(int ofOrbit) {
    return orbitStart[ofOrbit + 1] - 1;
  }

  /**
   * {@return how many rounds an orbit has}
   *
   * @param ofOrbit the orbit's index, from 0
   */
  public int rounds(int ofOrbit) {
    return orbitStart[ofOrbit + 1] - orbitStart[ofOrbit];
  }
}
