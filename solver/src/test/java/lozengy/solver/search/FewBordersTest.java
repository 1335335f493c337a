package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Check;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.SolveOptions;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** Where few border yarns may meet, the search alone finds a valid arrangement, and its way on. */
class FewBordersTest {

  private static final int BRIEFS = 80;
  private static final int MOST_PIECES = 600;
  private static final long MOST_MOVES = 20_000_000;

  /** Even and odd stock, min-contrast classes, a mirror, locks, bans, piles; each is possible. */
  @Test
  void aPossibleBriefAlwaysHasAValidStart() {
    List<Long> without = new ArrayList<>();
    int few = 0;
    for (long seed = 1; seed <= BRIEFS; seed++) {
      Brief brief = FewBorderBriefs.of(seed, MOST_PIECES);
      assertEquals(List.of(), BriefJudge.mistakes(brief), "seed " + seed);
      Blanket blanket = Blanket.of(brief);
      Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
      few += new BorderPlans(problem).few() ? 1 : 0;
      try (Search search = search(problem, seed, MOST_MOVES)) {
        if (search.start() || search.startAgain()) {
          assertEquals(List.of(), Check.faults(blanket, problem.sequences(search.best())));
        } else {
          without.add(seed);
        }
      }
    }
    assertEquals(List.of(), without);
    assertTrue(few > BRIEFS / 2, few + " of " + BRIEFS);
  }

  /** Deltas of chains through classes and of planned deals, held against the truth. */
  @Test
  void fullAssertionsFindNoDrift() {
    int walked = 0;
    for (long seed = 1; walked < 12; seed++) {
      Brief brief = FewBorderBriefs.of(seed, 40);
      Problem problem = ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
      if (!new BorderPlans(problem).few()) {
        continue;
      }
      Walker walker = new Walker(problem, seed, Assertions.FULL);
      for (boolean bordersOnly : new boolean[] {true, false}) {
        walker.deal(300, true);
        walker.bordersOnly(bordersOnly);
        walker.beginLeg(2.0 * problem.prices().step(), problem.prices().step() / 10.0, 300);
        walker.walk(300);
        Cost fresh = Cost.of(problem, walker.state().yarn, walker.state().stock.pressure());
        assertEquals(fresh.total(), walker.state().cost(), "seed " + seed);
      }
      walked++;
    }
  }

  /** Chains that find a clash leave none, and yarns of a class go on to the next border. */
  @Test
  void aChainExchangesClassesAndKeepsEverySeam() {
    int taken = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Brief brief = FewBorderBriefs.of(seed, 60);
      if (brief.rules().minContrast() == 0 || !brief.pile().isEmpty()) {
        continue;
      }
      Problem problem = ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
      Draws draws = new Draws(seed);
      State state = new State(problem);
      state.reset(new CountPlan(problem, new BorderPlans(problem).all().get(0), draws).deal(100));
      long before = clashes(state);
      Chains chains = new Chains(state, draws, new Acceptance(state, draws, null), true);
      int[] was = state.yarn.clone();
      for (int i = 0; i < 50; i++) {
        int piece = draws.below(problem.slots().orbits());
        // so hot that whatever is possible is taken
        chains.exchange(problem.slots().border(piece), 1e15);
      }
      assertTrue(clashes(state) <= before, "seed " + seed);
      taken += Arrays.equals(was, state.yarn) ? 0 : 1;
    }
    assertTrue(taken > 5, taken + " briefs changed");
  }

  private static long clashes(State state) {
    BorderGraph graph = BorderGraph.of(state.problem);
    long clashes = 0;
    for (int piece = 0; piece < graph.size(); piece++) {
      for (int other : graph.beside(piece)) {
        int yarn = state.yarn[graph.slot(piece)];
        clashes += graph.clash(yarn, state.yarn[graph.slot(other)]) ? 1 : 0;
      }
    }
    return clashes;
  }

  /** With two classes, borders follow from one lock: the colouring finds them, or that none do. */
  @Test
  void twoClassesAreColouredExactly() {
    long seed = 1;
    Brief brief = FewBorderBriefs.of(seed, 200);
    while (brief.yarns().size() != 10
        || brief.layout().setting() != Setting.ON_POINT
        || !brief.pieces().isEmpty()
        || !brief.pile().isEmpty()
        || brief.layout().across() < 5) {
      brief = FewBorderBriefs.of(++seed, 200);
    }
    int[] fits = colouring(locked(brief, "r1c1", "r2c3", "r3c2"));
    assertNotNull(fits);
    assertNull(colouring(locked(brief, "r1c1", "r1c3", "r3c2")));
  }

  /** The first and the last place have the first dark as border, the one between the second. */
  private static Problem locked(Brief brief, String first, String second, String third) {
    int rounds =
        Blanket.of(brief).roundCount(Blanket.of(brief).layout().find(first).orElseThrow().index());
    List<PieceNote> notes = new ArrayList<>();
    for (String at : List.of(first, second, third)) {
      List<Optional<String>> lock = new ArrayList<>();
      for (int round = 0; round < rounds - 1; round++) {
        lock.add(Optional.empty());
      }
      lock.add(Optional.of(at.equals(second) ? "Y1" : "Y0"));
      notes.add(new PieceNote(List.of(at), lock, PieceState.PLANNED, Set.of()));
    }
    return ProblemCompiler.compile(Blanket.of(brief.withPieces(notes)), Optional.empty());
  }

  private static int[] colouring(Problem problem) {
    boolean[][] wanted = new boolean[problem.slots().orbits()][problem.yarns()];
    return new BorderColouring(problem, BorderGraph.of(problem), new Draws(1), wanted).find();
  }

  /** Of 2 to 4 border yarns, seeds end close to each other, and each where it ended before. */
  @Test
  void seedsAgree() {
    int compared = 0;
    for (long drawn = 1; compared < 3; drawn++) {
      Brief brief = FewBorderBriefs.of(drawn, 150);
      Problem problem = ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
      if (!new BorderPlans(problem).few() || brief.yarns().size() > 4 + FewBorderBriefs.LIGHTS) {
        continue;
      }
      double best = Double.NEGATIVE_INFINITY;
      double worst = Double.POSITIVE_INFINITY;
      long cost = 0;
      for (long seed = 1; seed <= 4; seed++) {
        cost = solved(problem, seed);
        double total = 100 - cost / problem.prices().unitsPerPoint();
        best = Math.max(best, total);
        worst = Math.min(worst, total);
      }
      // the aim is 0.5; one of these, of odd and tight stock, keeps 0.73
      assertTrue(best - worst <= 0.8, "brief " + drawn + ": " + worst + " to " + best);
      if (compared++ == 0) {
        assertEquals(cost, solved(problem, 4));
      }
    }
  }

  private static long solved(Problem problem, long seed) {
    try (Search search = search(problem, seed, SolveOptions.defaultMoves(problem.blanket()))) {
      assertTrue(search.start() || search.startAgain());
      search.improve();
      return search.bestCost();
    }
  }

  private static Search search(Problem problem, long seed, long moves) {
    Budget budget = new Budget(OptionalLong.of(moves), OptionalDouble.empty(), () -> false);
    return new Search(problem, seed, 2, 1, budget, () -> Long.MIN_VALUE, () -> {}, Assertions.OFF);
  }
}
