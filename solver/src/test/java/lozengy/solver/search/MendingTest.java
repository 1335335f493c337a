package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lozengy.solver.RandomBriefs;
import lozengy.solver.problem.Problem;
import org.junit.jupiter.api.Test;

/** Mending finds what is at fault, keeps the state's books, and leaves little to the walk. */
class MendingTest {

  @Test
  void mendsMostFaultsOfRandomDeals() {
    long before = 0;
    long after = 0;
    int mended = 0;
    for (long seed = 1; seed <= 200; seed++) {
      Problem problem = RandomDraws.problem(RandomBriefs.of(seed, 4, 9)).orElse(null);
      if (problem == null) {
        continue;
      }
      Draws draws = new Draws(seed);
      State state = new State(problem);
      Acceptance acceptance = new Acceptance(state, draws, new Audit(Assertions.FULL, state, seed));
      Neighbourhood all = new Neighbourhood(problem, draws, problem.slots().free());
      Moves moves = new Moves(state, draws, acceptance, all, null);
      state.reset(new CountPlan(problem, draws).deal(300));
      assertEquals(state.hard() > state.stock.overdrawn(), anyAtFault(state), "seed " + seed);
      before += state.hard();
      new Mending(state, moves).mend();
      after += state.hard();
      Cost fresh = Cost.of(problem, state.yarn, state.stock.pressure());
      assertEquals(fresh.hard(), state.hard(), "seed " + seed);
      assertEquals(fresh.total(), state.cost(), "seed " + seed);
      mended++;
    }
    assertTrue(mended > 80, "only " + mended + " deals");
    assertTrue(after * 3 < before, before + " faults before, " + after + " after");
  }

  private static boolean anyAtFault(State state) {
    for (int slot : state.problem.slots().free()) {
      if (state.atFault(slot)) {
        return true;
      }
    }
    return false;
  }
}
