package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.check.Check;
import lozengy.model.progress.Upset;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.RandomBriefs;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/**
 * A plan is repaired with as few changes as were made to it, and moves can be kept to some slots.
 */
class RepairTest {

  /** Valid plans of which a few rounds were spoilt: no more than these need to change. */
  @Test
  void whatWasSpoiltIsMendedWithNoMoreChanges() {
    int repaired = 0;
    int asFew = 0;
    for (long seed = 1; seed <= 80; seed++) {
      Optional<Problem> problem = problem(seed);
      Optional<int[]> valid = problem.flatMap(each -> valid(each, 1));
      if (valid.isEmpty()) {
        continue;
      }
      Blanket blanket = problem.get().blanket();
      Sequences plan = problem.get().sequences(valid.get());
      Draws draws = new Draws(seed);
      Sequences spoilt = plan.copy();
      for (int i = 0; i < 3; i++) {
        int slot = problem.get().slots().free()[draws.below(problem.get().slots().free().length)];
        int piece = problem.get().slots().orbit()[slot];
        int round = slot - problem.get().slots().orbitStart()[piece];
        spoilt.set(problem.get().slots().lead()[piece], round, draws.below(blanket.yarnCount()));
      }
      int most = Upset.of(blanket, spoilt, plan).changedRounds();
      Problem again = ProblemCompiler.compile(blanket, Optional.of(spoilt));
      Optional<Sequences> found = Repair.of(again, seed);
      assertTrue(found.isPresent(), "seed " + seed);
      assertEquals(0, Check.faults(blanket, found.get()).size(), "seed " + seed);
      asFew += Upset.of(blanket, spoilt, found.get()).changedRounds() <= most ? 1 : 0;
      repaired++;
    }
    assertTrue(repaired > 30, "only " + repaired + " plans");
    assertTrue(asFew >= repaired - repaired / 10, asFew + " of " + repaired);
  }

  @Test
  void movesKeptToSomeSlotsChangeNoOther() {
    int walked = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Optional<Problem> problem = problem(seed);
      if (problem.isEmpty()) {
        continue;
      }
      int[] free = problem.get().slots().free();
      int[] some = Arrays.copyOf(free, (free.length + 1) / 2);
      Walker walker = new Walker(problem.get(), seed, Assertions.FULL);
      int[] start = new CountPlan(problem.get(), new Draws(seed)).deal(100).clone();
      walker.restart(start.clone());
      walker.changeOnly(some);
      double step = problem.get().prices().step();
      walker.beginLeg(step * 20, step, 600);
      walker.walk(600);
      int[] now = walker.state().yarn;
      int changed = 0;
      for (int slot = 0; slot < now.length; slot++) {
        boolean mine = Arrays.binarySearch(some, slot) >= 0;
        assertTrue(mine || now[slot] == start[slot], "seed " + seed + ", slot " + slot);
        changed += now[slot] == start[slot] ? 0 : 1;
      }
      walked += changed > 0 ? 1 : 0;
    }
    assertTrue(walked > 25, "only " + walked + " changed anything");
  }

  private static Optional<int[]> valid(Problem problem, long seed) {
    Walker walker = new Walker(problem, seed, Assertions.OFF);
    walker.deal(300, false);
    double step = problem.prices().step();
    walker.beginLeg(step, step / 10, 40_000);
    walker.walk(40_000);
    walker.look();
    boolean found = walker.bestCost() < Long.MAX_VALUE;
    return found && Check.faults(problem.blanket(), problem.sequences(walker.best())).isEmpty()
        ? Optional.of(walker.best())
        : Optional.empty();
  }

  private static Optional<Problem> problem(long seed) {
    Brief brief = RandomBriefs.of(seed, 4, 9);
    if (!BriefJudge.mistakes(brief).isEmpty()) {
      return Optional.empty();
    }
    Problem problem = ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
    boolean any = problem.slots().free().length > 0 && !problem.domains().anyEmpty();
    return any ? Optional.of(problem) : Optional.empty();
  }
}
