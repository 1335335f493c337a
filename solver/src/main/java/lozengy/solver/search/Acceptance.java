package lozengy.solver.search;

/**
 * The step that all operators share: whether a neighbour's delta is accepted, by Metropolis' rule,
 * and what is kept of a move that was made. With assertions on, deltas are held against the truth.
 */
final class Acceptance {

  private final State state;
  private final Draws draws;
  private final Audit audit;
  private final boolean drawsFirst;

  /**
   * Makes the step of a walk.
   *
   * @param audit told of every move; null for real work
   */
  Acceptance(State state, Draws draws, Audit audit) {
    this(state, draws, audit, false);
  }

  private Acceptance(State state, Draws draws, Audit audit, boolean drawsFirst) {
    this.state = state;
    this.draws = draws;
    this.audit = audit;
    this.drawsFirst = drawsFirst;
  }

  /** The step of a walk that draws what it accepts before it weighs a neighbour. */
  static Acceptance drawingFirst(State state, Draws draws) {
    return new Acceptance(state, draws, null, true);
  }

  /**
   * No delta above this is accepted for the next neighbour, so nobody need know it to the end. To
   * be asked once for each.
   */
  long most(double temperature) {
    return (long) (temperature * (drawsFirst ? draws.exponential() : Draws.MOST));
  }

  /** Whether neighbours are to be tried out before they are decided on. */
  boolean triesOut() {
    return audit != null && audit.full();
  }

  /** Tries a neighbour out: its delta must be true, and undoing it restore the state. */
  void tryOut(String operator, long delta, Runnable make, Runnable undo, int... slots) {
    audit.tried(operator, delta, make, undo, slots);
  }

  /**
   * Whether to go to a neighbour.
   *
   * @param most what {@link #most} told of it
   */
  boolean accepts(long delta, long most, double temperature) {
    return delta <= most && (drawsFirst || draws.accept(delta, temperature));
  }

  /** Keeps the cost of a move that was just made. */
  void made(String operator, long delta, int slotA, int slotB) {
    state.addCost(delta);
    if (audit != null) {
      audit.made(operator, slotA, slotB);
    }
  }
}
