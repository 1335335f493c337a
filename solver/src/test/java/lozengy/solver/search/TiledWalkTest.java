package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Look;
import lozengy.model.check.Check;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.solver.SolveOptions;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/**
 * Tiles change side by side without touching anything in common, what they change is what it is
 * from scratch, and the outcome is the same for any number of threads.
 */
class TiledWalkTest {

  private static final int TILE = 100;

  private static final int MOVES = 20_000;

  private static Problem problem(long seed) {
    Blanket blanket = Blanket.of(FewBorderBriefs.of(seed, 300));
    Look look = blanket.brief().look();
    assertTrue(look.counts().isEmpty() && look.order().isEmpty());
    return ProblemCompiler.compile(blanket, Optional.empty());
  }

  @Test
  void tilesOfAPhaseReachNothingInCommonAndEachGridHasEveryPieceOnce() {
    int together = 0;
    for (long seed = 1; seed <= 20; seed++) {
      Problem problem = problem(seed);
      int[] often = new int[problem.slots().orbits()];
      for (List<int[]> phase : Tiles.of(problem, TILE).phases()) {
        BitSet reached = new BitSet();
        for (int[] tile : phase) {
          BitSet within = reach(problem, tile);
          assertFalse(within.intersects(reached), "seed " + seed);
          reached.or(within);
          Arrays.stream(tile).forEach(piece -> often[piece]++);
        }
        together += phase.size() - 1;
      }
      assertTrue(IntStream.of(often).allMatch(times -> times == Tiles.GRIDS), "seed " + seed);
    }
    assertTrue(together > 50, "hardly any tiles change at once");
  }

  /** Pieces of a tile, and those that a pair or a clash ties to them. */
  private static BitSet reach(Problem problem, int[] tile) {
    BitSet reach = new BitSet();
    int[] orbit = problem.slots().orbit();
    for (int piece : tile) {
      reach.set(piece);
      for (int slot = problem.slots().orbitStart()[piece];
          slot < problem.slots().orbitStart()[piece + 1];
          slot++) {
        int[] light = problem.costs().pairs().lightStart();
        int[] seam = problem.costs().pairs().seamStart();
        int[] clash = problem.clashes().start();
        for (int i = light[slot]; i < light[slot + 1]; i++) {
          reach.set(orbit[problem.costs().pairs().lightSlot()[i]]);
        }
        for (int i = seam[slot]; i < seam[slot + 1]; i++) {
          reach.set(orbit[problem.costs().pairs().seamSlot()[i]]);
        }
        for (int i = clash[slot]; i < clash[slot + 1]; i++) {
          reach.set(orbit[problem.clashes().slot()[i]]);
        }
      }
    }
    return reach;
  }

  @Test
  void whatTilesChangeIsWhatItIsFromScratchAndKeepsTheStock() {
    int parted = 0;
    for (long seed = 1; seed <= 8; seed++) {
      Problem problem = problem(seed);
      int[] once = null;
      for (int threads = 1; threads <= 3; threads += 2) {
        Walker walker = new Walker(problem, seed, Assertions.OFF);
        walker.deal(300, true);
        walker.barOverdrawing(true);
        walker.beginLeg(problem.prices().step(), problem.prices().step() / 10.0, MOVES);
        boolean within = walker.state().stock.overdrawn() == 0;
        try (Lockstep lockstep = new Lockstep(threads)) {
          TiledWalk tiled = new TiledWalk(walker, Tiles.of(problem, TILE), lockstep, seed);
          for (long done = 0; done < MOVES; ) {
            parted += walker.canPart() ? 1 : 0;
            long made = tiled.walk(MOVES - done);
            assertTrue(made > 0);
            done += made;
            assertTrue(!within || walker.state().stock.overdrawn() == 0, "seed " + seed);
          }
        }
        State state = walker.state();
        Cost fresh = Cost.of(problem, state.yarn, state.stock.pressure());
        assertEquals(fresh.total(), state.cost(), "seed " + seed);
        assertEquals(fresh.hard(), state.hard(), "seed " + seed);
        assertNull(state.firstWrongEntry(), "seed " + seed);
        State recounted = new State(problem);
        recounted.reset(state.yarn);
        assertArrayEquals(recounted.stock.used(), state.stock.used(), "seed " + seed);
        assertEquals(
            recounted.copies.sequences.distinct(),
            state.copies.sequences.distinct(),
            "seed " + seed);
        assertEquals(
            recounted.copies.sequences.surplus(), state.copies.sequences.surplus(), "seed " + seed);
        once = once == null ? state.yarn.clone() : once;
        assertArrayEquals(once, state.yarn, "seed " + seed + ", threads " + threads);
      }
    }
    assertTrue(parted > 20, "hardly any phases of tiles: " + parted);
  }

  /** Eight moves for each round of the phase's tiles, and eight in a hundred of these anywhere. */
  @Test
  void aPhaseMakesItsMovesWithinItsTilesAndSomeAnywhere() {
    int parted = 0;
    for (long seed = 1; seed <= 12; seed++) {
      Problem problem = problem(seed);
      Walker walker = new Walker(problem, seed, Assertions.OFF);
      walker.deal(300, true);
      walker.barOverdrawing(true);
      if (!walker.canPart() || !problem.pile().isEmpty()) {
        continue;
      }
      double step = problem.prices().step();
      walker.beginLeg(step, step / 10, MOVES);
      Tiles tiles = Tiles.of(problem, TILE);
      boolean[] within = new boolean[problem.slots().orbits()];
      tiles.phases().get(0).forEach(tile -> Arrays.stream(tile).forEach(p -> within[p] = true));
      int[] orbit = problem.slots().orbit();
      long slots = IntStream.of(problem.slots().free()).filter(s -> within[orbit[s]]).count();
      int[] before = walker.state().yarn.clone();
      try (Lockstep lockstep = new Lockstep(1)) {
        TiledWalk tiled = new TiledWalk(walker, tiles, lockstep, seed);
        long made = tiled.walk(MOVES);
        assertEquals((long) (slots * 8 * 1.08), made, "seed " + seed);
        double cooled = step * Math.pow(0.1, made / (double) MOVES);
        assertEquals(cooled, walker.temperatureAfter(0), 1e-6 * step);
        int[] after = walker.state().yarn;
        assertEquals(
            Cost.of(problem, after, walker.state().stock.pressure()).total(),
            walker.state().cost());
        long changed =
            IntStream.range(0, after.length)
                .filter(slot -> within[orbit[slot]] && after[slot] != before[slot])
                .count();
        assertTrue(4 * changed > slots, changed + " of " + slots + " changed, seed " + seed);
        // for a phase to begin there must be two moves a round; else moves go anywhere
        assertEquals(5, tiled.walk(5));
      }
      parted++;
    }
    assertTrue(parted > 3, parted + " parted");
  }

  /** 3,660 pieces of six rounds; mirrored, with locked pieces, made pieces and a pile. */
  private static Blanket large(String more) {
    StringBuilder yarns = new StringBuilder();
    for (int i = 0; i < 12; i++) {
      String colour =
          i < 6 ? "#%02x2030".formatted(16 + 8 * i) : "#f0%02xd0".formatted(160 + 8 * i);
      yarns.append(
          "  - {code: Y%d, name: Yarn %d, colour: '%s', balls: 0, left: 3080 m}%n"
              .formatted(i, i, colour));
    }
    return Blanket.of(
        BriefReader.read(
            SourceText.of(
                "large.yaml",
                """
                format: lozengy-brief/1
                title: Large
                layout: {setting: straight, across: 61, down: 60}
                motifs:
                  square:
                    side: 8 cm
                    rounds:
                      - {tone: light, metres: 0.5}
                      - {tone: light, metres: 0.75}
                      - {tone: light, metres: 1}
                      - {tone: light, metres: 1.25}
                      - {tone: light, metres: 1.5}
                      - {tone: dark, metres: 2}
                yarns:
                """
                    + yarns
                    + more)));
  }

  private static int[] searched(Problem problem, long moves, int threads) {
    Budget budget = new Budget(OptionalLong.of(moves), OptionalDouble.empty(), () -> false);
    try (Search search =
        new Search(
            problem, 1, 1, threads, budget, () -> Long.MIN_VALUE, () -> {}, Assertions.OFF)) {
      assertTrue(search.start());
      search.improve();
      assertEquals(moves, budget.spent());
      return search.best();
    }
  }

  private static void assertSameForAllThreads(Blanket blanket) {
    assertEquals(1, SolveOptions.defaultWalkers(blanket));
    Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
    int[] one = searched(problem, 200_000, 1);
    assertEquals(List.of(), Check.faults(blanket, problem.sequences(one)));
    assertArrayEquals(one, searched(problem, 200_000, 2));
    assertArrayEquals(one, searched(problem, 200_000, 3));
  }

  @Test
  void aLargeBlanketIsTheSameForAnyNumberOfThreads() {
    assertSameForAllThreads(
        large(
            """
            pieces:
              - {at: [r1c1, r30c30], rounds: [Y6, Y7, Y8, Y9, Y10, Y0]}
              - {at: [r2c1, r4c1], state: made, rounds: [Y8, Y9, Y10, Y11, Y6, Y1]}
            pile:
              - {kind: square, rounds: [Y9, Y8, Y7, Y6, Y11, Y2], count: 40}
            """));
  }

  @Test
  void soIsAMirroredOne() {
    assertSameForAllThreads(large("look: {symmetry: left-right}\nrules: {copies: 8}\n"));
  }

  @Test
  void aWishForOrderOrCountsKeepsTwoWalkers() {
    assertEquals(2, SolveOptions.defaultWalkers(large("look: {order: ordered}\n")));
  }
}
