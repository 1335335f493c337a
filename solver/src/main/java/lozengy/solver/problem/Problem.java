package lozengy.solver.problem;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.score.LeewayMeasure;

/**
 * A blanket frozen to ints: what the search reads in its loop. The cost of an assignment is what
 * its score's objective loses against 100, in units of {@link #unitsPerPoint()}, plus penalties for
 * broken rules; compiled once, immutable by convention, shared by all walkers.
 *
 * @param blanket where it comes from
 * @param earlier sequences that the part keep looks back to
 * @param yarns how many yarns
 * @param slots the slots
 * @param domains what slots may take
 * @param pairs costs between pieces
 * @param innerCost cost of two adjacent rounds of one piece by their yarns, symmetric
 * @param clashes pairs of slots that may not have some yarns together, at {@code hardCost} each
 * @param constantCost cost of repeats between images of one piece, which nothing can change
 * @param unaryCost cost of a slot's yarn by itself, slot x yarns + yarn; null where there is none
 * @param targets wanted count by layer x yarns + yarn
 * @param balanceCost cost of one too many or too few, by layer
 * @param needs millimetres by slot class and yarn
 * @param slotClass class of each slot; slots of a class have the same needs and layer
 * @param stock millimetres of each yarn at hand
 * @param usable millimetres of each yarn that may be used
 * @param fixedUse millimetres that joining and edging take
 * @param leewayCost cost of a yarn that has nothing left
 * @param copyCost cost of each piece whose sequence an earlier piece has
 * @param copies how many pieces may share a sequence; {@link Integer#MAX_VALUE} for any number
 * @param hardCost penalty of a broken rule
 * @param overdrawCost penalty of a millimetre overdrawn
 * @param stepCost cost of the lightest repeat: the scale of a small step
 * @param unitsPerPoint units that make a point of the total
 * @param pile the finished pieces that have no place yet
 * @param counts how many pieces are to show a yarn; null where nothing is asked
 * @param order what the order of borders costs; null where none is asked for
 * @param keepCost cost of a round that has another yarn than in the earlier sequences; 0 where
 *     there are none. It is part of {@code unaryCost}
 */
public record Problem(
    Blanket blanket,
    Optional<Sequences> earlier,
    int yarns,
    Slots slots,
    Domains domains,
    PairCosts pairs,
    int[] innerCost,
    Clashes clashes,
    long constantCost,
    int[] unaryCost,
    int[] targets,
    long[] balanceCost,
    long[][] needs,
    int[] slotClass,
    long[] stock,
    long[] usable,
    long[] fixedUse,
    double leewayCost,
    long copyCost,
    int copies,
    int hardCost,
    double overdrawCost,
    int stepCost,
    double unitsPerPoint,
    PilePlaces pile,
    PieceCounts counts,
    OrderCosts order,
    int keepCost) {

  /** More than any gain; such penalties of all yarns still add up to a long. */
  private static final double MOST_OVERDRAW = 1L << 48;

  /**
   * {@return this problem with other pair costs}
   *
   * @param other what stands in their place
   */
  public Problem withPairs(PairCosts other) {
    return new Problem(
        blanket,
        earlier,
        yarns,
        slots,
        domains,
        other,
        innerCost,
        clashes,
        constantCost,
        unaryCost,
        targets,
        balanceCost,
        needs,
        slotClass,
        stock,
        usable,
        fixedUse,
        leewayCost,
        copyCost,
        copies,
        hardCost,
        overdrawCost,
        stepCost,
        unitsPerPoint,
        pile,
        counts,
        order,
        keepCost);
  }

  /**
   * {@return this problem with other costs of single rounds}
   *
   * @param other what stands in their place
   */
  public Problem withUnaryCost(int[] other) {
    return new Problem(
        blanket,
        earlier,
        yarns,
        slots,
        domains,
        pairs,
        innerCost,
        clashes,
        constantCost,
        other,
        targets,
        balanceCost,
        needs,
        slotClass,
        stock,
        usable,
        fixedUse,
        leewayCost,
        copyCost,
        copies,
        hardCost,
        overdrawCost,
        stepCost,
        unitsPerPoint,
        pile,
        counts,
        order,
        keepCost);
  }

  /**
   * {@return this problem with other clashes}
   *
   * @param other what stands in their place
   */
  public Problem withClashes(Clashes other) {
    return new Problem(
        blanket,
        earlier,
        yarns,
        slots,
        domains,
        pairs,
        innerCost,
        other,
        constantCost,
        unaryCost,
        targets,
        balanceCost,
        needs,
        slotClass,
        stock,
        usable,
        fixedUse,
        leewayCost,
        copyCost,
        copies,
        hardCost,
        overdrawCost,
        stepCost,
        unitsPerPoint,
        pile,
        counts,
        order,
        keepCost);
  }

  /**
   * {@return millimetres that a slot takes in a yarn}
   *
   * @param slot the slot's index, from 0
   * @param yarn the yarn's index, from 0
   */
  public long need(int slot, int yarn) {
    return needs[slotClass[slot]][yarn];
  }

  /**
   * {@return what leeway loses for a yarn, from its use: 0 with 10 % of the use left over}
   *
   * @param yarn the yarn's index, from 0
   * @param used millimetres of the yarn in use
   */
  public long leewayLoss(int yarn, long used) {
    return (long) (leewayCost * LeewayMeasure.loss(stock[yarn], used));
  }

  /**
   * {@return the penalty of a yarn's use beyond what is usable}
   *
   * @param yarn the yarn's index, from 0
   * @param used millimetres of the yarn in use
   */
  public long overdrawLoss(int yarn, long used) {
    long over = used - usable[yarn];
    return over <= 0 ? 0 : hardCost / 16 + (long) Math.min(MOST_OVERDRAW, overdrawCost * over);
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
