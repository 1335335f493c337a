package lozengy.solver.problem;

/**
 * What rounds cost by their yarns, one at a time and two together.
 *
 * @param pairs costs between pieces
 * @param inner cost of two adjacent rounds of one piece by their yarns, symmetric
 * @param unary cost of a slot's yarn by itself, slot x yarns + yarn; null where there is none
 * @param constant cost of repeats between images of one piece, which nothing can change
 */
public record RoundCosts(PairCosts pairs, int[] inner, int[] unary, long constant) {

  /**
   * {@return these costs with others of single rounds}
   *
   * @param other what stands in their place
   */
  public RoundCosts withUnary(int[] other) {
    return new RoundCosts(pairs, inner, other, constant);
  }

  /**
   * {@return these costs with others between pieces}
   *
   * @param other what stands in their place
   */
  public RoundCosts withPairs(PairCosts other) {
    return new RoundCosts(other, inner, unary, constant);
  }
}
