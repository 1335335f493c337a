package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongFunction;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Check;
import lozengy.model.reading.BriefJudge;
import lozengy.model.score.Scorer;
import lozengy.solver.bound.BoundLimits;
import lozengy.solver.bound.Bounds;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Optimum;
import lozengy.solver.constraint.Proof;
import lozengy.solver.explain.conflict.Root;
import org.junit.jupiter.api.Test;

/** Looks on tiny blankets: brute force, constraint model, search and bound against each other. */
class LooksTest {

  private static final long MOST_TRIED = 1_000;
  private static final Limits AMPLE = Limits.of(10_000_000, 10_000_000);

  @Test
  void searchModelAndBruteForceAgree() {
    agree(300, seed -> RandomLooks.of(seed, RandomBriefs.of(seed, 2, 4)));
  }

  @Test
  void searchModelAndBruteForceAgreeOnCounts() {
    agree(200, seed -> RandomLooks.counted(seed, RandomBriefs.of(seed, 2, 4)));
  }

  @Test
  void searchModelAndBruteForceAgreeWhereImagesAreWorked() {
    agree(350, seed -> RandomLooks.symmetricWorked(seed, RandomBriefs.of(seed, 2, 4)));
  }

  /**
   * Marking images of each other as made, as they were planned, changes no figure and no answer.
   */
  @Test
  void aMarkThatChangesNoYarnChangesNothing() {
    int marked = 0;
    for (long seed = 1; seed <= 100; seed++) {
      Brief brief =
          RandomLooks.symmetricWorked(seed, RandomBriefs.of(seed, 2, 4)).withPieces(List.of());
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket planned = Blanket.of(brief);
      SolveResult result = Solver.solve(planned, Optional.empty(), moves());
      if (!(result instanceof SolveResult.Found found) || !planned.orbits().any()) {
        continue;
      }
      Sequences sequences = found.arrangement().sequences();
      Blanket made = Blanket.of(brief.withPieces(made(planned, sequences, seed)));
      String told = "seed " + seed + ", " + brief.look();
      assertEquals(List.of(), Check.faults(made, sequences), told);
      assertEquals(
          found.arrangement().score(), Scorer.score(made, sequences, Optional.empty()), told);
      assertEquals(List.of(), Root.arguments(made), told);
      SolveResult again = Solver.solve(made, Optional.of(sequences), moves());
      assertTrue(again instanceof SolveResult.Found, told + again);
      double bound = Bounds.of(made, new BoundLimits(1), () -> false).total();
      assertTrue(bound >= found.arrangement().score().total() - 1e-9, told + ": bound " + bound);
      marked++;
    }
    assertTrue(marked > 20, "marked: " + marked);
  }

  /** Notes that every other orbit is made as it was planned. */
  private static List<PieceNote> made(Blanket blanket, Sequences sequences, long seed) {
    List<PieceNote> notes = new ArrayList<>();
    for (int lead : blanket.orbits().leads()) {
      if ((lead + seed) % 2 == 0) {
        List<String> at =
            Arrays.stream(blanket.orbits().members(lead))
                .mapToObj(piece -> blanket.place(piece).name())
                .toList();
        List<Optional<String>> rounds =
            Arrays.stream(sequences.of(lead))
                .mapToObj(yarn -> Optional.of(blanket.yarn(yarn).code()))
                .toList();
        notes.add(new PieceNote(at, rounds, PieceState.MADE, Set.of()));
      }
    }
    return notes;
  }

  private static void agree(long seeds, LongFunction<Brief> briefs) {
    int settled = 0;
    int feasible = 0;
    for (long seed = 1; seed <= seeds; seed++) {
      Brief brief = briefs.apply(seed);
      if (brief.look().equals(Look.NONE) || !BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      if (blanket.pieceCount() > 6) {
        continue;
      }
      double[] best = {Double.NEGATIVE_INFINITY};
      long count =
          BruteForce.count(
              blanket,
              MOST_TRIED,
              each ->
                  best[0] =
                      Math.max(best[0], Scorer.score(blanket, each, Optional.empty()).total()));
      String told = "seed " + seed + ", " + brief.look();
      Proof.Count counted = Proof.count(ConstraintModel.of(blanket), MOST_TRIED, AMPLE);
      assertEquals(new Proof.Count(count, count < MOST_TRIED), counted, told);
      if (count > 0) {
        assertEquals(List.of(), Root.arguments(blanket), told);
      }
      if (count == MOST_TRIED) {
        continue;
      }
      settled++;
      SolveResult result = Solver.solve(blanket, Optional.empty(), moves());
      assertEquals(count > 0, result instanceof SolveResult.Found, told + result);
      if (result instanceof SolveResult.Found found) {
        feasible++;
        assertEquals(List.of(), Check.faults(blanket, found.arrangement().sequences()), told);
        assertFalse(found.arrangement().score().total() > best[0] + 1e-9, told);
        double bound = Bounds.of(blanket, new BoundLimits(1), () -> false).total();
        assertTrue(bound >= best[0] - 1e-9, told + ": bound " + bound + " below " + best[0]);
        if (settled % 4 == 0) {
          Optimum.Result optimum =
              Optimum.maximise(blanket, Optional.empty(), Optional.empty(), seed, AMPLE);
          assertEquals(best[0], optimum.objective(), 1e-9, told);
        }
      }
    }
    assertTrue(settled > 40, "settled: " + settled);
    assertTrue(feasible > settled / 5 && feasible < settled, feasible + " of " + settled);
  }

  private static SolveOptions moves() {
    return SolveOptions.defaults().withMoves(20_000).withThreads(1);
  }
}
