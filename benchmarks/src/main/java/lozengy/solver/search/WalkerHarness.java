package lozengy.solver.search;

import lozengy.solver.problem.Problem;

/**
 * Lets a benchmark drive one walker of the search, which is not public: its moves alone, without
 * the meetings and restarts around them.
 */
public final class WalkerHarness {

  private final Problem problem;
  private final Walker walker;

  /**
   * Makes a walker and deals it a start.
   *
   * @param problem the problem
   * @param seed seed of its random source
   */
  public WalkerHarness(Problem problem, long seed) {
    this.problem = problem;
    this.walker = new Walker(problem, seed, Assertions.OFF);
    walker.deal(300, false);
  }

  /**
   * Begins a leg at one temperature.
   *
   * @param steps the temperature, in steps of the lightest repeat
   * @param moves how many moves it will have at most
   */
  public void hold(double steps, long moves) {
    double temperature = steps * problem.prices().step();
    walker.beginLeg(temperature, temperature, moves);
  }

  /** Makes so many moves. */
  public void walk(long moves) {
    walker.walk(moves);
  }

  /** Cost of the best valid assignment met. */
  public long bestCost() {
    return walker.bestCost();
  }
}
