package lozengy.solver.constraint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import lozengy.solver.JoinedInBorders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Branch and bound against the best that brute force finds, on tiny random blankets. */
class OptimumTest {

  private static final int SEEDS = 60;
  private static final long MOST_TRIED = 600;
  private static final Limits AMPLE = Limits.of(1_000_000, 1_000_000);

  @Test
  void provesTheBestThatBruteForceFinds() {
    int settled = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket tiny = TinyBlankets.of(seed);
      Blanket blanket = seed % 3 == 0 ? JoinedInBorders.of(tiny, seed) : tiny;
      Optional<Sequences> earlier =
          seed % 2 == 0 ? Optional.of(random(blanket, seed)) : Optional.empty();
      double[] best = {Double.NEGATIVE_INFINITY};
      long count =
          BruteForce.count(
              blanket,
              MOST_TRIED,
              each ->
                  best[0] = Math.max(best[0], Scorer.score(blanket, each, earlier).objective()));
      if (count == 0 || count == MOST_TRIED) {
        continue;
      }
      settled++;
      Optimum.Result result = Optimum.maximise(blanket, earlier, Optional.empty(), seed, AMPLE);
      assertEquals(best[0], result.objective(), 1e-9, "seed " + seed);
      assertEquals(result.objective(), result.bound(), 0, "seed " + seed);
      Sequences found = result.best().orElseThrow();
      assertEquals(List.of(), Check.faults(blanket, found), "seed " + seed);
      assertEquals(
          result.objective(), Scorer.score(blanket, found, earlier).objective(), 0, "seed " + seed);
    }
    assertTrue(settled > 8, "settled: " + settled);
  }

  @Test
  void aBoundCutShortIsStillABound() {
    int cutShort = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      Optimum.Result narrow =
          Optimum.maximise(blanket, Optional.empty(), Optional.empty(), seed, Limits.of(30, 30));
      BruteForce.count(
          blanket,
          MOST_TRIED,
          each -> {
            double total = Scorer.score(blanket, each, Optional.empty()).total();
            assertTrue(total <= narrow.bound() + 1e-9, "exceeds the bound");
          });
      cutShort += narrow.bound() > narrow.objective() ? 1 : 0;
    }
    assertTrue(cutShort > 0, "never cut short");
  }

  /** The model does not state an order, so nothing may be proved of it. */
  @Test
  void nothingIsProvedWhereAnOrderIsMeasured() {
    Blanket blanket =
        Blanket.of(
            BriefReader.read(
                SourceText.of(
                    "b.yaml",
                    """
                    format: lozengy-brief/1
                    title: Ordered
                    layout: { setting: straight, across: 6, down: 6 }
                    motifs: { square: { side: 9 cm, rounds: [ { metres: 1 } ] } }
                    yarns:
                      - { code: A, colour: "#202020", left: 100 m }
                      - { code: B, colour: "#888888", left: 100 m }
                    look: { order: ordered }
                    """)));
    Optimum.Result result = Optimum.maximise(blanket, Optional.empty(), Optional.empty(), 1, AMPLE);
    assertEquals(Optional.empty(), result.best());
    assertEquals(100, result.bound());
  }

  /** Nothing may be proved where a yarn's use in all does not fit an int. */
  @ParameterizedTest
  @ValueSource(longs = {265_285_714, 600_000_000, 3_000_000_000L})
  void nothingIsProvedOfRoundsTooLongToBeCounted(long millimetres) {
    Blanket blanket =
        BlanketBuilder.straight(2, 2)
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(millimetres),
                BlanketBuilder.round(millimetres + 1),
                BlanketBuilder.round(millimetres + 2))
            .yarns(3, Tone.MID, 13 * millimetres)
            .build();
    double[] best = {0};
    List<Sequences> first = new ArrayList<>();
    BruteForce.count(
        blanket,
        Long.MAX_VALUE,
        each -> {
          if (first.isEmpty()) {
            first.add(each.copy());
          }
          double total = Scorer.score(blanket, each, Optional.empty()).total();
          best[0] = Math.max(best[0], total);
        });
    Optimum.Result result =
        Optimum.maximise(blanket, Optional.empty(), Optional.of(first.get(0)), 1, AMPLE);
    assertTrue(
        result.bound() >= best[0], result.bound() + " is told and " + best[0] + " is reached");
  }

  @Test
  void aKnownBestIsKeptAndProved() {
    Optional<Sequences> none = Optional.empty();
    int kept = 0;
    for (long seed = 0; seed < 20; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      Optimum.Result first = Optimum.maximise(blanket, none, none, 1, AMPLE);
      if (first.best().isPresent()) {
        kept++;
        assertEquals(first, Optimum.maximise(blanket, none, first.best(), 2, AMPLE));
      }
    }
    assertTrue(kept > 3, "kept: " + kept);
  }

  private static Sequences random(Blanket blanket, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        // some rounds had no yarn before, as after a change of size
        int yarn = random.nextInt(blanket.yarnCount());
        sequences.set(piece, round, random.nextInt(4) == 0 ? Sequences.OPEN : yarn);
      }
    }
    return sequences;
  }
}
