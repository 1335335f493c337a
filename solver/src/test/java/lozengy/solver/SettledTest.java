package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.bound.Exhaustive;
import lozengy.solver.constraint.TinyBlankets;
import org.junit.jupiter.api.Test;

/**
 * The facade against brute force: never a wrong yes or no, never above the best, nearly always it
 * and said to be it.
 */
class SettledTest {

  private static final double MOST_WAYS = 30_000;

  @Test
  void tinyBlanketsAreSolvedAsBruteForceSaysTheyCanBe() {
    int possible = 0;
    int best = 0;
    int settled = 0;
    int impossible = 0;
    for (long seed = 1; seed <= 150; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      if (Exhaustive.ways(blanket) > MOST_WAYS) {
        continue;
      }
      OptionalDouble optimum = Exhaustive.best(blanket);
      SolveOptions options =
          SolveOptions.defaults().withSeed(seed).withMoves(20_000).withThreads(1);
      SolveResult result = Solver.solve(blanket, Optional.empty(), options);
      if (optimum.isEmpty()) {
        assertTrue(result instanceof SolveResult.Impossible, "seed " + seed + ": " + result);
        impossible++;
        continue;
      }
      assertFalse(result instanceof SolveResult.Impossible, "seed " + seed + ": " + result);
      possible++;
      if (result instanceof SolveResult.Found found) {
        Arrangement arrangement = found.arrangement();
        double total = arrangement.score().total();
        double most = optimum.getAsDouble();
        assertTrue(total <= most + 1e-9, "seed " + seed + ": " + total + " above " + most);
        assertTrue(
            arrangement.bound().orElseThrow().total() >= most - 1e-9,
            "seed " + seed + ": bound " + arrangement.bound() + " below " + most);
        if (arrangement.solved().orElseThrow().proof().equals("optimal")) {
          assertEquals(most, total, 1e-6, "seed " + seed);
          assertEquals(total, arrangement.bound().orElseThrow().total(), 2e-6, "seed " + seed);
          settled++;
        }
        best += total >= most - 1e-6 ? 1 : 0;
      }
    }
    assertTrue(possible > 40, possible + " possible");
    assertTrue(impossible > 6, impossible + " impossible");
    assertTrue(best >= 0.98 * possible, best + " of " + possible + " at their best");
    assertTrue(settled >= 0.95 * possible, settled + " of " + possible + " proved to be the best");
  }

  /** Of what was planned again, 'optimal' speaks of what is maximised, the bound of the total. */
  @Test
  void tinyBlanketsArePlannedAgainAsBruteForceSaysTheyCanBe() {
    int settled = 0;
    int apart = 0;
    for (long seed = 1; seed <= 200; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      if (Exhaustive.ways(blanket) > MOST_WAYS / 3) {
        continue;
      }
      Optional<Sequences> earlier = Optional.of(drawn(blanket, seed));
      OptionalDouble optimum = Exhaustive.bestObjective(blanket, earlier);
      SolveOptions options =
          SolveOptions.defaults().withSeed(seed).withMoves(20_000).withThreads(1);
      if (optimum.isPresent()
          && Solver.solve(blanket, earlier, options) instanceof SolveResult.Found found) {
        Arrangement arrangement = found.arrangement();
        Arrangement.Bound bound = arrangement.bound().orElseThrow();
        double most = optimum.getAsDouble();
        double objective = arrangement.score().objective();
        assertTrue(objective <= most + 1e-9, "seed " + seed);
        assertTrue(bound.objective().orElseThrow() >= most - 1e-9, "seed " + seed);
        double mostTotal = Exhaustive.best(blanket).orElseThrow();
        assertTrue(bound.total() >= mostTotal - 1e-9, "seed " + seed);
        apart += mostTotal > arrangement.score().total() + 1e-6 ? 1 : 0;
        if (arrangement.solved().orElseThrow().proof().equals("optimal")) {
          assertEquals(most, objective, 2e-6, "seed " + seed);
          settled++;
        }
      }
    }
    assertTrue(settled > 40, settled + " settled");
    assertTrue(apart > 5, "keep cost the total something in " + apart);
  }

  private static Sequences drawn(Blanket blanket, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        sequences.set(piece, round, random.nextInt(blanket.yarnCount()));
      }
    }
    return sequences;
  }
}
