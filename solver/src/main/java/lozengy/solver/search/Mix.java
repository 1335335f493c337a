package lozengy.solver.search;

/** Operators with weights: each move is an operator's, drawn by weight. */
final class Mix {

  /**
   * An operator of a mix.
   *
   * @param weight how often it is drawn, out of the sum of all weights; at least 1
   * @param operator the operator
   */
  record Weighted(int weight, Operator operator) {}

  private final Draws draws;
  private final Operator[] wheel;

  private Mix(Draws draws, Operator[] wheel) {
    this.draws = draws;
    this.wheel = wheel;
  }

  /** A mix of operators. */
  static Mix of(Draws draws, Weighted... operators) {
    int sum = 0;
    for (Weighted weighted : operators) {
      sum += weighted.weight();
    }
    Operator[] wheel = new Operator[sum];
    int at = 0;
    for (Weighted weighted : operators) {
      for (int i = 0; i < weighted.weight(); i++) {
        wheel[at++] = weighted.operator();
      }
    }
    return new Mix(draws, wheel);
  }

  /** Makes one attempt with an operator of the mix. */
  void attempt(double temperature) {
    wheel[draws.below(wheel.length)].attempt(temperature);
  }
}
