package lozengy.solver.search;

/** A way to draw a neighbour of the state, which is gone to if its delta is accepted. */
@FunctionalInterface
interface Operator {

  /**
   * Draws one neighbour and goes there, or stays. Nothing is allocated.
   *
   * @param temperature in units of cost
   */
  void attempt(double temperature);
}
