package lozengy.model.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.PieceKind;
import lozengy.model.score.Nearness;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScoreCardTest {

  private static final int SHUFFLES = 4000;

  private static Blanket blanket() {
    return BlanketBuilder.filled(3, 4)
        .saltmarsh()
        .motif(PieceKind.SQUARE, 3)
        .motif(PieceKind.SIDE_TRIANGLE, 2)
        .motif(PieceKind.CORNER_TRIANGLE, 1)
        .rules(0, WithinPiece.FREE, OptionalInt.empty(), 0)
        .prefer(
            Map.of(Part.COLOUR_VISION, 1.0, Part.CONTRAST_BETWEEN, 1.0, Part.CONTRAST_WITHIN, 1.0))
        .build();
  }

  private static Sequences sequences(Blanket blanket, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        // the first yarns more often than the last
        sequences.set(piece, round, Math.min(random.nextInt(6), random.nextInt(6)));
      }
    }
    return sequences;
  }

  /** Spread is compared before it is cut off at 0, for a mean of cut figures is another. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void closedFormsAgreeWithSeededShuffles(long seed) {
    Blanket blanket = blanket();
    Sequences sequences = sequences(blanket, seed);
    Optional<Sequences> earlier = Optional.of(sequences(blanket, seed + 100));
    Map<Part, Double> figures = Scorer.score(blanket, sequences, earlier).parts();
    List<LayerCard> layers = ScoreCard.layers(blanket, sequences);
    Map<Part, Chance> exact = Expectations.of(blanket, layers, figures, earlier);
    Map<Part, Chance> drawn =
        new EnumMap<>(Shuffles.scores(blanket, sequences, earlier, seed, SHUFFLES).parts());
    drawn.put(Part.SPREAD, uncutSpread(blanket, sequences, seed));
    assertEquals(7, exact.size());
    exact.forEach(
        (part, chance) -> {
          Chance mean = drawn.get(part);
          assertTrue(chance.exact() && !mean.exact());
          double apart = Math.abs(chance.mean() - mean.mean());
          assertTrue(
              apart <= 4 * mean.standardError() + 1e-9, part + ": " + chance + " against " + mean);
        });
  }

  private static Chance uncutSpread(Blanket blanket, Sequences sequences, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < SHUFFLES; i++) {
      Sequences shuffled = Shuffles.shuffled(blanket, sequences, random);
      double repeats = ScoreCard.repeats(blanket, ScoreCard.layers(blanket, shuffled)).observed();
      double figure = 100 * (1 - repeats / Scorer.expectedRepeats(blanket));
      sum += figure;
      squares += figure * figure;
    }
    double mean = sum / SHUFFLES;
    double variance = squares / SHUFFLES - mean * mean;
    return new Chance(mean, Math.sqrt(variance / SHUFFLES), SHUFFLES);
  }

  @Test
  void statisticsOfLayersAgreeWithSeededShuffles() {
    Blanket blanket = blanket();
    Sequences sequences = sequences(blanket, 4);
    List<LayerCard> layers = ScoreCard.layers(blanket, sequences);
    Statistic stated = ScoreCard.repeats(blanket, layers);
    SplittableRandom random = new SplittableRandom(9);
    double[] sum = new double[3];
    double[] squares = new double[3];
    for (int i = 0; i < SHUFFLES; i++) {
      List<LayerCard> shuffled =
          ScoreCard.layers(blanket, Shuffles.shuffled(blanket, sequences, random));
      double[] observed = {
        ScoreCard.repeats(blanket, shuffled).observed(),
        shuffled.get(0).joins().get(Nearness.SEAM).observed(),
        shuffled.get(1).lightness().observed()
      };
      for (int k = 0; k < 3; k++) {
        sum[k] += observed[k];
        squares[k] += observed[k] * observed[k];
      }
    }
    Statistic[] all = {stated, layers.get(0).joins().get(Nearness.SEAM), layers.get(1).lightness()};
    for (int k = 0; k < 3; k++) {
      double mean = sum[k] / SHUFFLES;
      double variance = squares[k] / SHUFFLES - mean * mean;
      assertEquals(all[k].expected(), mean, 4 * Math.sqrt(all[k].variance() / SHUFFLES));
      assertEquals(1, variance / all[k].variance(), 0.1);
    }
  }

  @Test
  void repeatsAndSpreadTellTheSame() {
    Blanket blanket = blanket();
    Sequences sequences = sequences(blanket, 5);
    ScoreCard card = ScoreCard.of(blanket, sequences, Optional.empty());
    double spread =
        Math.max(0, 100 * (1 - card.repeats().observed() / Scorer.expectedRepeats(blanket)));
    assertEquals(card.score().parts().get(Part.SPREAD), spread, 1e-9);
  }

  @Test
  void aShuffleKeepsCountsAndMovesYarns() {
    Blanket blanket = blanket();
    Sequences sequences = sequences(blanket, 6);
    Sequences shuffled = Shuffles.shuffled(blanket, sequences, new SplittableRandom(1));
    assertNotEquals(sequences, shuffled);
    List<LayerCard> before = ScoreCard.layers(blanket, sequences);
    List<LayerCard> after = ScoreCard.layers(blanket, shuffled);
    for (int layer = 0; layer < before.size(); layer++) {
      org.junit.jupiter.api.Assertions.assertArrayEquals(
          before.get(layer).counts(), after.get(layer).counts());
    }
  }

  @Test
  void tellsTheClosestSeamAndWhatIsHardToTellApart() {
    Blanket blanket =
        BlanketBuilder.straight(3, 1)
            .yarn("RED", "Rust", "#8b4513")
            .yarn("OLI", "Olive", "#556b2f")
            .yarn("WHI", "White", "#ffffff")
            .motif(PieceKind.SQUARE, 1)
            .build();
    Sequences sequences = BlanketBuilder.sequences(blanket, "WHI RED OLI");
    ScoreCard card = ScoreCard.of(blanket, sequences, Optional.empty());
    ClosestSeam closest = card.closest().orElseThrow();
    assertEquals(1, closest.first());
    assertEquals(2, closest.second());
    assertEquals(32.8645, closest.difference(), 1e-4);
    // 8.0 apart with a red-type deficiency, 5.5 with a green-type one: all can be told apart
    assertEquals(List.of(), card.alike());
    Blanket closer =
        BlanketBuilder.straight(2, 1)
            .yarn("PIN", "Pink", "#ffc0cb")
            .yarn("GRE", "Grey", "#d3d3d3")
            .motif(PieceKind.SQUARE, 1)
            .build();
    List<AlikeSeams> alike =
        ScoreCard.of(closer, BlanketBuilder.sequences(closer, "PIN GRE"), Optional.empty()).alike();
    assertEquals(1, alike.size());
    assertEquals("red-type", alike.get(0).deficiency().word());
    assertEquals(1, alike.get(0).seams());
    assertEquals(2.4228, alike.get(0).closest().difference(), 1e-4);
  }

  @Test
  void aSinglePieceHasACard() {
    Blanket blanket = BlanketBuilder.straight(1, 1).saltmarsh().motif(PieceKind.SQUARE, 1).build();
    ScoreCard card =
        ScoreCard.of(blanket, BlanketBuilder.sequences(blanket, "MUD"), Optional.empty());
    assertTrue(card.closest().isEmpty());
    assertEquals(0, card.repeats().z());
    assertEquals(100, card.chance().get(Part.CONTRAST).mean());
  }
}
