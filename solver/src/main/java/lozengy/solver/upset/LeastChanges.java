package lozengy.solver.upset;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.progress.LeastUpset;
import lozengy.model.progress.Upset;
import lozengy.solver.bound.ChangeFloor;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.FewChanges;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Start;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.Repair;

/**
 * How many rounds of a plan must change at least. A floor is proved by counts ({@link
 * ChangeFloor}); a plan repaired with few changes shows how few suffice; where the two differ and
 * few rounds are free, the constraint model settles what lies between. The same input gives the
 * same answer.
 */
public final class LeastChanges {

  /** Most free rounds for which the constraint model is asked. */
  private static final int MOST_FREE = 80;

  private static final long NODES = 2_000;
  private static final long FAILS = 1_000;

  private final Blanket blanket;
  private final Sequences before;
  private final int free;
  private final BooleanSupplier stop;
  private int floor;
  private int known;

  private LeastChanges(Blanket blanket, Sequences before, Sequences answer, BooleanSupplier stop) {
    this.stop = stop;
    this.blanket = blanket;
    this.before = before;
    this.free = Upset.of(blanket, before, answer).freeRounds();
    this.known = changed(answer);
  }

  /**
   * Proves how many rounds of a plan must change.
   *
   * @param blanket what is asked for now
   * @param before the plan before; rounds may be open
   * @param answer a valid arrangement of the blanket
   * @param stop asked now and then; once true, what is proved so far counts
   * @return how many of the rounds that are free to change and had a yarn must change at least
   */
  public static LeastUpset of(
      Blanket blanket, Sequences before, Sequences answer, BooleanSupplier stop) {
    return new LeastChanges(blanket, before, answer, stop).prove();
  }

  private LeastUpset prove() {
    if (known > 0) {
      Problem problem = ProblemCompiler.compile(blanket, Optional.of(before));
      floor = Math.min(known, ChangeFloor.of(problem, stop));
      if (floor < known && !stop.getAsBoolean()) {
        Repair.of(problem, 1).ifPresent(this::know);
      }
      settle();
    }
    return new LeastUpset(floor, floor == known);
  }

  private void know(Sequences arrangement) {
    if (Check.faults(blanket, arrangement).isEmpty()) {
      known = Math.min(known, changed(arrangement));
    }
  }

  private int changed(Sequences arrangement) {
    return Upset.of(blanket, before, arrangement).changedRounds();
  }

  private void settle() {
    Limits limits = new Limits(NODES, FAILS, stop);
    boolean small = free <= MOST_FREE && ConstraintModel.fits(blanket);
    while (small && floor < known) {
      int was = known;
      Start.Outcome outcome = FewChanges.find(blanket, before, known - 1, 1, limits);
      if (outcome instanceof Start.None) {
        floor = known;
      } else if (outcome instanceof Start.Solution found) {
        know(found.sequences());
      }
      small = known < was;
    }
  }
}
