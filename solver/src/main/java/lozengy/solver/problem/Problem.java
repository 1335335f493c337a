package lozengy.solver.problem;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * A blanket frozen to ints: what the search reads in its loop. The cost of an assignment is what
 * its score's objective loses against 100, in units of {@link Prices#unitsPerPoint()}, plus
 * penalties for broken rules; compiled once, immutable by convention, shared by all walkers.
 *
 * @param blanket where it comes from
 * @param earlier sequences that the part keep looks back to
 * @param yarns how many yarns
 * @param slots the slots
 * @param domains what slots may take
 * @param costs costs of rounds by their yarns
 * @param clashes pairs of slots that may not have some yarns together, at the price of a broken
 *     rule each
 * @param balance what balance costs
 * @param supply what yarn there is
 * @param copies how many pieces may share a sequence; {@link Integer#MAX_VALUE} for any number
 * @param prices costs of single steps
 * @param pile the finished pieces that have no place yet
 * @param counts how many pieces are to show a yarn; null where nothing is asked
 * @param order what the order of borders costs; null where none is asked for
 */
public record Problem(
    Blanket blanket,
    Optional<Sequences> earlier,
    int yarns,
    Slots slots,
    Domains domains,
    RoundCosts costs,
    Clashes clashes,
    Balance balance,
    YarnSupply supply,
    int copies,
    Prices prices,
    PilePlaces pile,
    PieceCounts counts,
    OrderCosts order) {

  /**
   * {@return this problem with other costs of rounds}
   *
   * @param other what stands in their place
   */
  public Problem withCosts(RoundCosts other) {
    return new Problem(
        blanket, earlier, yarns, slots, domains, other, clashes, balance, supply, copies, prices,
        pile, counts, order);
  }

  /**
   * {@return this problem with other clashes}
   *
   * @param other what stands in their place
   */
  public Problem withClashes(Clashes other) {
    return new Problem(
        blanket, earlier, yarns, slots, domains, costs, other, balance, supply, copies, prices,
        pile, counts, order);
  }

  /**
   * Turns an assignment of slots into sequences.
   *
   * @param assignment the yarn of every slot
   * @return the sequences
   */
  public Sequences sequences(int[] assignment) {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < slots.orbits(); piece++) {
      int start = slots.orbitStart()[piece];
      for (int round = 0; round < slots.rounds(piece); round++) {
        for (int member : slots.members()[piece]) {
          sequences.set(member, round, assignment[start + round]);
        }
      }
    }
    return sequences;
  }

  /**
   * Turns sequences into an assignment of slots.
   *
   * @param sequences the yarns of its pieces' rounds
   * @return the yarn of every slot
   */
  public int[] assignment(Sequences sequences) {
    int[] assignment = new int[slots.count()];
    for (int piece = 0; piece < slots.orbits(); piece++) {
      int start = slots.orbitStart()[piece];
      for (int round = 0; round < slots.rounds(piece); round++) {
        assignment[start + round] = sequences.yarn(slots.lead()[piece], round);
      }
    }
    return assignment;
  }
}
