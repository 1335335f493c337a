package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class SpreadPartTest {

  private static BlanketBuilder threeYarns(BlanketBuilder builder) {
    return builder
        .yarn("MUD", "Tidal mud", "#2c2a29")
        .yarn("REE", "Reed", "#b9b57a")
        .yarn("SAM", "Samphire", "#5f7f4a");
  }

  /** Two squares of two rounds, two side and four corner triangles of one. */
  private static Blanket twoSquares() {
    return threeYarns(BlanketBuilder.filled(1, 2))
        .motif(PieceKind.SQUARE, 2)
        .motif(PieceKind.SIDE_TRIANGLE, 1)
        .motif(PieceKind.CORNER_TRIANGLE, 1)
        .build();
  }

  private static double spread(Blanket blanket, String sequences) {
    return Scorer.score(blanket, BlanketBuilder.sequences(blanket, sequences), Optional.empty())
        .parts()
        .get(Part.SPREAD);
  }

  @Test
  void expectsTheAverageOverEveryShuffleOfAllLayers() {
    Blanket blanket = twoSquares();
    assertEquals(8, blanket.pieceCount());
    // the border's eight pieces by 3, 3, 2; the layer inside it has the two squares by 1, 1, 0
    Moments border = new Moments();
    Shuffles.each(
        new int[] {0, 0, 0, 1, 1, 1, 2, 2},
        borders -> border.add(new NaiveScore(blanket, sequences(blanket, borders)).repeats()));
    assertEquals(560, border.count());
    assertEquals(border.mean(), Scorer.expectedRepeats(blanket), 1e-9);

    Blanket deeper = threeYarns(BlanketBuilder.onPoint(2, 2)).motif(PieceKind.SQUARE, 2).build();
    Moments both = new Moments();
    int[] counts = {0, 0, 1, 1, 2};
    Shuffles.each(
        counts,
        borders ->
            Shuffles.each(
                counts,
                centres -> {
                  Sequences sequences = deeper.open();
                  for (int piece = 0; piece < borders.length; piece++) {
                    sequences.set(piece, 0, centres[piece]);
                    sequences.set(piece, 1, borders[piece]);
                  }
                  both.add(new NaiveScore(deeper, sequences).repeats());
                }));
    assertEquals(900, both.count());
    assertEquals(both.mean(), Scorer.expectedRepeats(deeper), 1e-9);
  }

  /** Borders as given; the centres of the squares differ. */
  private static Sequences sequences(Blanket blanket, int[] borders) {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < borders.length; piece++) {
      if (sequences.rounds(piece) == 2) {
        sequences.set(piece, 0, piece);
      }
      sequences.set(piece, sequences.rounds(piece) - 1, borders[piece]);
    }
    return sequences;
  }

  @Test
  void weighsSeamsTouchesAndNearPairs() {
    // a row of six squares: 1 to 2 a seam, 1 to 3 near, 1 to 4 out of reach
    Blanket row = threeYarns(BlanketBuilder.straight(6, 1)).motif(PieceKind.SQUARE, 1).build();
    // weight 5 seams x 4 + 4 near pairs = 24; three yarns twice each: 24 x 3 x 2 / 30, border x 2
    assertEquals(9.6, Scorer.expectedRepeats(row), 1e-12);
    assertEquals(100, spread(row, "MUD REE SAM MUD REE SAM"));
    assertEquals(100 * (1 - 2 * 2 / 9.6), spread(row, "MUD REE MUD SAM REE SAM"), 1e-9);
    assertEquals(100 * (1 - 2 * 4 / 9.6), spread(row, "MUD MUD REE SAM MUD REE"), 1e-9);
    assertEquals(0, spread(row, "MUD MUD REE REE SAM SAM"));
    Blanket square = threeYarns(BlanketBuilder.straight(2, 2)).motif(PieceKind.SQUARE, 1).build();
    // 4 seams x 4 + 2 touches x 2 = 20; targets 2, 1, 1
    assertEquals(2 * 20 * 2 / 12.0, Scorer.expectedRepeats(square), 1e-12);
    assertEquals(100 * (1 - 2 * 2 / (80 / 12.0)), spread(square, "MUD REE SAM MUD"), 1e-9);
  }

  @Test
  void isFullWhereNothingCanRepeat() {
    Blanket three = threeYarns(BlanketBuilder.straight(3, 1)).motif(PieceKind.SQUARE, 1).build();
    assertEquals(0, Scorer.expectedRepeats(three));
    assertEquals(100, spread(three, "MUD REE SAM"));
  }

  @Test
  void tellsEachLayerForAScoreCard() {
    Blanket blanket = twoSquares();
    List<LayerDetail> layers =
        Scorer.layers(
            blanket, BlanketBuilder.sequences(blanket, "MUD,REE MUD,SAM REE MUD SAM SAM MUD REE"));
    assertEquals(List.of(2, 1), layers.stream().map(LayerDetail::weight).toList());
    assertEquals(List.of(8, 2), layers.stream().map(LayerDetail::pieces).toList());
    assertEquals(List.of(2, 3, 3), list(layers.get(0).counts()));
    assertEquals(List.of(3, 3, 2), list(sorted(layers.get(0).targets())));
    assertEquals(List.of(2, 0, 0), list(layers.get(1).counts()));
    // the two squares touch
    assertEquals(2, layers.get(1).repeats());
    assertEquals(0, layers.get(1).expectedRepeats());
    Moments border = new Moments();
    Shuffles.each(
        new int[] {0, 0, 0, 1, 1, 1, 2, 2},
        borders -> border.add(new NaiveScore(blanket, sequences(blanket, borders)).repeats() / 2));
    assertEquals(border.mean(), layers.get(0).expectedRepeats(), 1e-9);
    assertEquals(Math.sqrt(border.variance()), layers.get(0).deviation(), 1e-9);
  }

  private static List<Integer> list(int[] numbers) {
    return IntStream.of(numbers).boxed().toList();
  }

  private static int[] sorted(int[] numbers) {
    int[] sorted = numbers.clone();
    Arrays.sort(sorted);
    return IntStream.range(0, sorted.length).map(i -> sorted[sorted.length - 1 - i]).toArray();
  }

  @Test
  void whereNoRepeatIsExpectedNoneIsALoss() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .yarn("MUD", "Tidal mud", "#2c2a29")
            .yarn("REE", "Reed", "#b9b57a")
            .motif(PieceKind.SQUARE, 1)
            .build();
    Sequences repeated = BlanketBuilder.sequences(blanket, "REE REE");
    SpreadPart part = new SpreadPart(blanket, repeated, Targets.of(blanket));
    assertEquals(1, Targets.of(blanket).counts()[0][0]);
    assertEquals(100, part.score());
    assertEquals(List.of(), part.losses());
  }

  @Test
  void repeatsOfGivenBordersAreNoLoss() {
    Blanket plain = threeYarns(BlanketBuilder.straight(6, 1)).motif(PieceKind.SQUARE, 2).build();
    Blanket given = Blanket.ofUnjudged(plain.brief().withLook(Look.NONE.withBorders("MUD")));
    Sequences sequences =
        BlanketBuilder.sequences(given, "REE,MUD REE,MUD REE,MUD REE,MUD SAM,MUD REE,MUD");
    List<Loss> losses = new SpreadPart(given, sequences, Targets.of(given)).losses();
    assertFalse(losses.isEmpty());
    losses.forEach(loss -> assertTrue(loss.points() > 0));
  }
}
