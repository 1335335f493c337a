package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Part;
import lozengy.model.brief.Round;
import lozengy.model.check.Check;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.model.score.Scorer;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The facade: what comes out is valid, scored from scratch, and fixed by seed and moves. */
class SolverTest {

  @Test
  void everyArrangementIsValidAndScoredFromScratch() {
    int found = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Optional<Blanket> blanket = blanket(seed, 4);
      if (blanket.isEmpty()) {
        continue;
      }
      SolveResult result = Solver.solve(blanket.get(), Optional.empty(), moves(seed, 60_000, 1));
      if (result instanceof SolveResult.Found one) {
        Arrangement arrangement = one.arrangement();
        assertEquals(List.of(), Check.faults(blanket.get(), arrangement.sequences()));
        assertEquals(
            Scorer.score(blanket.get(), arrangement.sequences(), Optional.empty()),
            arrangement.score(),
            "seed " + seed);
        found++;
      }
    }
    assertTrue(found > 20, "only " + found + " briefs were solved");
  }

  @Test
  void seedAndMovesFixTheResultWhateverTheThreads() {
    Blanket blanket = solvable();
    Arrangement one = solved(blanket, moves(11, 400_001, 1));
    Arrangement two = solved(blanket, moves(11, 400_001, 2));
    Arrangement many = solved(blanket, moves(11, 400_001, 16));
    assertEquals(one.sequences(), two.sequences());
    assertEquals(one.sequences(), many.sequences());
    assertEquals(one.solved(), two.solved());
  }

  @Test
  void movesAreSpentAndNotOverspent() {
    Blanket blanket = solvable();
    long spent = solved(blanket, moves(3, 300_000, 2)).solved().orElseThrow().moves();
    assertTrue(spent <= 300_000, "spent " + spent);
    assertTrue(spent > 299_000, "spent " + spent);
  }

  /** A blanket that is built unjudged may hold rounds beyond all reason. */
  @ParameterizedTest
  @ValueSource(longs = {265_285_714, 3_000_000_000L})
  void roundsOfManyKilometresAreSolvedAndNothingFalseIsProved(long millimetres) {
    Blanket blanket =
        BlanketBuilder.straight(3, 3)
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(millimetres),
                BlanketBuilder.round(millimetres + 1))
            .yarns(5, Tone.MID, 19 * millimetres)
            .build();
    double best = 0;
    for (int seed = 1; seed <= 6; seed++) {
      best = Math.max(best, solved(blanket, moves(seed, 100_000, 1)).score().total());
    }
    for (int seed = 1; seed <= 6; seed++) {
      Arrangement few = solved(blanket, moves(seed, 1, 1));
      assertEquals(List.of(), Check.faults(blanket, few.sequences()));
      double bound = few.bound().orElseThrow().total();
      assertTrue(bound >= best, "bound " + bound + ", and " + best + " is reached");
    }
  }

  /** Lights must run down to their last metre; brown need not run out with them. */
  @Test
  void whereOneToneIsDownToItsLastMetreTheOthersKeepTheirLeeway() {
    Blanket blanket =
        BlanketBuilder.straight(6, 4)
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(6_000, Tone.DARK),
                BlanketBuilder.round(5_000, Tone.LIGHT))
            .yarns(4, Tone.LIGHT, 30_250)
            .yarn(Tone.DARK, new Srgb(0, 0, 90), 271_000)
            .yarn(Tone.DARK, new Srgb(80, 50, 20), 72_300)
            .build();
    long[] used = blanket.usedMillimetres(solved(blanket, moves(1, 300_000, 1)).sequences());
    long brown = 72_300 - used[5];
    assertTrue(brown >= 6_300, "brown keeps " + brown + " mm, navy " + (271_000 - used[4]));
    assertTrue(brown < 20_000, "no more is taken off brown's share than it needs: " + brown);
  }

  @Test
  void anotherSeedGivesAnotherArrangement() {
    Blanket blanket = solvable();
    assertFalse(
        solved(blanket, moves(1, 200_000, 1))
            .sequences()
            .equals(solved(blanket, moves(2, 200_000, 1)).sequences()));
  }

  @Test
  void stopEndsTheSearchWithTheBestSoFar() {
    Blanket blanket = solvable();
    AtomicBoolean enough = new AtomicBoolean();
    SolveOptions options =
        SolveOptions.defaults()
            .withMoves(Long.MAX_VALUE)
            .withThreads(2)
            .withStop(enough::get)
            .withListener(progress -> enough.compareAndSet(false, !Double.isNaN(progress.score())));
    Arrangement arrangement = solved(blanket, options);
    assertEquals(List.of(), Check.faults(blanket, arrangement.sequences()));
  }

  @Test
  void progressIsToldInOrderAndNeverGetsWorse() {
    List<ProgressListener.Progress> told = new ArrayList<>();
    SolveOptions options =
        SolveOptions.defaults().withMoves(2_000_000).withThreads(2).withListener(told::add);
    Arrangement arrangement = solved(solvable(), options);
    assertTrue(told.size() > 3, "told " + told.size() + " times");
    double best = 0;
    long moves = 0;
    for (ProgressListener.Progress progress : told) {
      assertTrue(progress.moves() > moves);
      moves = progress.moves();
      if (!Double.isNaN(progress.score())) {
        assertTrue(progress.score() >= best);
        best = progress.score();
      }
    }
    assertEquals(arrangement.score().total(), best, 0.05);
  }

  @Test
  void solvingFromAnEarlierArrangementKeepsWorkedPiecesAndScoresWhatIsKept() {
    Blanket blanket = solvable();
    Sequences earlier = solved(blanket, moves(1, 200_000, 1)).sequences();
    SolveResult result = Solver.solve(blanket, Optional.of(earlier), moves(9, 200_000, 1));
    Arrangement again = assertInstanceOf(SolveResult.Found.class, result).arrangement();
    assertEquals(Optional.of(earlier), again.earlier());
    assertTrue(again.score().parts().get(Part.KEEP) > 30, again.score().toString());
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (!blanket.free(piece, round)) {
          assertEquals(blanket.locked(piece, round), again.sequences().yarn(piece, round));
        }
      }
    }
  }

  private static Arrangement solved(Blanket blanket, SolveOptions options) {
    SolveResult result = Solver.solve(blanket, Optional.empty(), options);
    return assertInstanceOf(SolveResult.Found.class, result).arrangement();
  }

  private static SolveOptions moves(long seed, long moves, int threads) {
    return SolveOptions.defaults().withSeed(seed).withMoves(moves).withThreads(threads);
  }

  @Test
  void aLargeBlanketMayHaveALimitInSeconds() {
    Round any = BlanketBuilder.round(1000);
    Blanket blanket =
        BlanketBuilder.straight(90, 80)
            .motif(PieceKind.SQUARE, any, any, any)
            .yarns(9, Tone.MID, 1_000_000_000)
            .build();
    SolveOptions options = SolveOptions.defaults().withSeconds(0.2).withThreads(1);

    SolveResult result = Solver.solve(blanket, Optional.empty(), options);

    assertFalse(result instanceof SolveResult.Impossible, "proved that nothing fits");
  }

  private static Optional<Blanket> blanket(long seed, int most) {
    Brief brief = RandomBriefs.of(seed, most, 10);
    return BriefJudge.mistakes(brief).isEmpty() ? Optional.of(Blanket.of(brief)) : Optional.empty();
  }

  /** A brief of some size, with parts to weigh, that has an arrangement. */
  private static Blanket solvable() {
    for (long seed = 1; ; seed++) {
      Optional<Blanket> blanket = blanket(seed, 5);
      boolean rich =
          blanket.isPresent()
              && blanket.get().pieceCount() > 20
              && blanket.get().layerCount() > 2
              && blanket.get().brief().prefer().weight(Part.SPREAD) > 0
              && blanket.get().brief().prefer().weight(Part.KEEP) > 0;
      if (rich
          && Solver.solve(blanket.get(), Optional.empty(), moves(1, 100_000, 1))
              instanceof SolveResult.Found) {
        return blanket.get();
      }
    }
  }
}
