package lozengy.solver.search;

/** Operators with weights: each move is an operator's, drawn by weight. */
enum Mix {
  /** All operators, in the measure in which they serve a state far from any plan. */
  ANY(
      new Weighted(24, Operator.CHANGE),
      new Weighted(28, Operator.EXCHANGE_IN_LAYER),
      new Weighted(4, Operator.EXCHANGE_ACROSS),
      new Weighted(3, Operator.EXCHANGE_WITHIN),
      new Weighted(4, Operator.EXCHANGE_SEQUENCES),
      new Weighted(1, Operator.CHAIN)),
  /** Mostly operators that keep counts: a plan of counts is good, and few changes better it. */
  COUNTS_KEPT(
      new Weighted(40, Operator.EXCHANGE_ALIKE),
      new Weighted(4, Operator.CHANGE),
      new Weighted(8, Operator.EXCHANGE_IN_LAYER),
      new Weighted(4, Operator.EXCHANGE_ACROSS),
      new Weighted(3, Operator.EXCHANGE_WITHIN),
      new Weighted(4, Operator.EXCHANGE_SEQUENCES),
      new Weighted(1, Operator.CHAIN)),
  /**
   * What is left of {@link #COUNTS_KEPT} where parts of the board make the exchanges of like
   * rounds.
   */
  BESIDE_PARTS(
      new Weighted(4, Operator.CHANGE),
      new Weighted(8, Operator.EXCHANGE_IN_LAYER),
      new Weighted(4, Operator.EXCHANGE_ACROSS),
      new Weighted(3, Operator.EXCHANGE_WITHIN),
      new Weighted(1, Operator.CHAIN)),
  /** Operators of borders alone. */
  BORDERS(new Weighted(1, Operator.CHAIN), new Weighted(7, Operator.BORDER));

  /**
   * An operator of a mix.
   *
   * @param weight how often it is drawn, out of the sum of all weights; at least 1
   * @param operator the operator
   */
  private record Weighted(int weight, Operator operator) {}

  private final Operator[] wheel;

  Mix(Weighted... operators) {
    int sum = 0;
    for (Weighted weighted : operators) {
      sum += weighted.weight();
    }
    wheel = new Operator[sum];
    int at = 0;
    for (Weighted weighted : operators) {
      for (int i = 0; i < weighted.weight(); i++) {
        wheel[at++] = weighted.operator();
      }
    }
  }

  /** Draws an operator by its weight. */
  Operator draw(Draws draws) {
    return wheel[draws.below(wheel.length)];
  }
}
