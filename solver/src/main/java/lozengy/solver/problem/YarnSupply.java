package lozengy.solver.problem;

import lozengy.model.score.LeewayMeasure;

/**
 * How much yarn there is, what rounds take of it, and what it costs to use it up.
 *
 * @param needs millimetres by slot class and yarn
 * @param slotClass class of each slot; slots of a class have the same needs and layer
 * @param stock millimetres of each yarn at hand
 * @param usable millimetres of each yarn that may be used
 * @param fixedUse millimetres that joining and edging take
 * @param leewayCost cost of a yarn that has nothing left
 * @param overdrawBase penalty of a yarn that is overdrawn at all
 * @param overdrawCost penalty of a millimetre overdrawn
 */
public record YarnSupply(
    long[][] needs,
    int[] slotClass,
    long[] stock,
    long[] usable,
    long[] fixedUse,
    double leewayCost,
    long overdrawBase,
    double overdrawCost) {

  /** More than any gain; such penalties of all yarns still add up to a long. */
  private static final double MOST_OVERDRAW = 1L << 48;

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
    return over <= 0 ? 0 : overdrawBase + (long) Math.min(MOST_OVERDRAW, overdrawCost * over);
  }
}
