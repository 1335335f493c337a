package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.RoundLengths.Basis;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Stitches become yarn. The set of a square and a side triangle is one of the trade: the triangle's
 * four rounds have 9, 14, 14 and 26 stitches, corner chains not counted, nine of them from corner
 * to corner in the last; worked with a 3.5 mm hook, its square has a side of 9 cm (common practice,
 * no source). Which stitches they are, the square's and all weights are our own.
 */
class RoundLengthsTest {

  private static final String SET =
      """
      format: lozengy-brief/1
      title: A set
      layout: { setting: on-point, across: 2, down: 2, corners: open }
      stitches:
        terms: US
      HAND
      motifs:
        square:
          side: 9 cm
          rounds:
            - stitches: { dc: 12, ch: 8 }
            - stitches: { dc: 24, ch: 8 }
            - stitches: { dc: 36, ch: 8 }
            - stitches: { sc: 48, ch: 8 }
        triangle:
          rounds:
            - stitches: { dc: 9 }
            - stitches: { dc: 14 }
            - stitches: { dc: 14 }
            - stitches: { dc: 26 }
      yarns:
        - { code: MUD, colour: "#2c2a29", balls: 20, ball: { grams: 50, metres: 120 } }
        - { code: FOA, colour: "#f1eee3", balls: 20, ball: { grams: 25, metres: 60 } }
        - { code: REE, colour: "#b39b5c", balls: 20, ball: { grams: 100, metres: 200 } }
      """;

  /** The set with what is said of the hand, its fields one after the other. */
  private static Brief with(String... fields) {
    String hand = "  " + String.join("\n  ", fields);
    return BriefReader.read(SourceText.of("set.yaml", SET.replace("HAND", hand)));
  }

  private static double millimetres(Brief brief, PieceKind kind, int round) {
    YarnAmount amount = RoundLengths.of(brief).amount(kind, round);
    return ((YarnAmount.Length) amount).millimetres().doubleValue();
  }

  /** Grams of a whole piece in a yarn, by what the blanket reckons with. */
  private static double grams(Brief brief, PieceKind kind, int first, int last, int yarn) {
    Blanket blanket = Blanket.of(brief);
    Ball ball = brief.yarns().get(yarn).ball().orElseThrow();
    double grams = 0;
    for (int round = first; round <= last; round++) {
      grams +=
          blanket.motifs().needMillimetres(kind, round, yarn)
              * ball.grams().doubleValue()
              / ball.millimetres().doubleValue();
    }
    return grams;
  }

  @Test
  void withoutASampleStartingValuesCountAndTwoTails() {
    Brief brief = with("yarn-weight: light", "hook: 3.5 mm");

    // pi x (3.5 + 2.1) mm a loop; 3.3 a double, one for the slip stitch that joins; 30 cm of tails
    double loop = Math.PI * 5.6;
    assertAll(
        () ->
            assertEquals(
                (9 * 3.3 + 1) * loop + 300, millimetres(brief, PieceKind.SIDE_TRIANGLE, 0), 1e-5),
        () ->
            assertEquals(
                (26 * 3.3 + 1) * loop + 300, millimetres(brief, PieceKind.SIDE_TRIANGLE, 3), 1e-5),
        () ->
            assertEquals(Basis.STARTING, RoundLengths.of(brief).basis(PieceKind.SIDE_TRIANGLE, 3)));
  }

  @ParameterizedTest
  @CsvSource({"4, 26.4 g, 26.4", "1, 0.3 oz, 8.5", "3, '[7.1 g, 6.2 g, 6.5 g]', 6.6"})
  void aWeighedSampleReproducesItsOwnWeight(int count, String takes, double grams) {
    int pieces = takes.startsWith("[") ? 1 : count;
    Brief brief =
        with(
            "samples: [ { of: square, count: %d, takes: %s, yarn: [MUD, FOA, MUD, FOA] } ]"
                .formatted(pieces, takes));

    assertEquals(grams, pieces * grams(brief, PieceKind.SQUARE, 0, 3, 0), 0.05);
  }

  @Test
  void aRoundByItselfAndTheWholePieceBothComeOutAsWeighed() {
    Brief brief =
        with(
            "samples:",
            "  - { of: square, count: 4, takes: 26.4 g, yarn: [MUD, FOA, MUD, FOA] }",
            "  - { of: square, rounds: 4, count: 2, before: 50 g, after: 46.4 g, yarn: MUD }");

    assertAll(
        () -> assertEquals(1.8, grams(brief, PieceKind.SQUARE, 3, 3, 0), 0.01),
        () -> assertEquals(6.6, grams(brief, PieceKind.SQUARE, 0, 3, 0), 0.01),
        () -> assertEquals(Basis.SAMPLE, RoundLengths.of(brief).basis(PieceKind.SQUARE, 0)),
        () ->
            assertEquals(
                Basis.OTHER_KINDS, RoundLengths.of(brief).basis(PieceKind.SIDE_TRIANGLE, 0)));
  }

  /**
   * A round in another put-up weighs more to the metre; both put-ups count, each for its rounds.
   */
  @Test
  void everyRoundOfASampleIsWeighedInItsOwnYarn() {
    Brief brief =
        with("samples: [ { of: triangle, takes: 5 g, yarn: [MUD, REE, REE, MUD] } ]", "tail: 0 cm");

    // loops: 30.7, 47.2 + 46.2 in REE (the second is not joined anew), 86.8; 2.4 and 2 m to the
    // gram
    double factor = 5000 / ((30.7 + 86.8) / 2.4 + (47.2 + 46.2) / 2);
    assertEquals(86.8 * factor, millimetres(brief, PieceKind.SIDE_TRIANGLE, 3), 1e-3);
  }

  @Test
  void aSampleInOneYarnHasTwoTailsInAll() {
    Brief cut = with("samples: [ { of: triangle, takes: 10 m } ]");
    Brief whole = with("samples: [ { of: triangle, takes: 10 m, yarn: MUD } ]");

    // loops of all rounds with and without joins
    double each = 63 * 3.3;
    assertAll(
        () ->
            assertEquals(
                (10_000 - 8 * 150) / (each + 4) * (9 * 3.3 + 1) + 300,
                millimetres(cut, PieceKind.SIDE_TRIANGLE, 0),
                1e-5),
        () ->
            assertEquals(
                (10_000 - 2 * 150) / (each + 1) * (9 * 3.3 + 1) + 300,
                millimetres(whole, PieceKind.SIDE_TRIANGLE, 0),
                1e-5));
  }

  @Test
  void wholeRoundsGoOnWithoutTailsAndJoinWhereTheYarnDoes() {
    Brief brief = with("samples: [ { of: triangle, takes: 10 m, yarn: MUD } ]");
    RoundLengths lengths = RoundLengths.of(brief);
    BigDecimal total = BigDecimal.ZERO;
    for (int round = 0; round < 4; round++) {
      YarnAmount.Length length = (YarnAmount.Length) lengths.amount(PieceKind.SIDE_TRIANGLE, round);
      total =
          total
              .add(length.millimetres())
              .subtract(lengths.savedUncut(PieceKind.SIDE_TRIANGLE, round));
    }

    assertEquals(10_000, total.doubleValue(), 1e-5);
  }

  /** What scales all stitches alike drops out once a sample is weighed. */
  @Test
  void aSampleCountsMoreThanHookAndYarn() {
    String sample = "samples: [ { of: square, count: 4, takes: 60 m } ]";
    Brief thin = with("yarn-weight: 1", "hook: 2.25 mm", sample);
    Brief thick = with("yarn-weight: bulky", "hook: 9 mm", sample);

    for (PieceKind kind : new PieceKind[] {PieceKind.SQUARE, PieceKind.SIDE_TRIANGLE}) {
      for (int round = 0; round < 4; round++) {
        assertEquals(millimetres(thin, kind, round), millimetres(thick, kind, round), 1e-5);
      }
    }
  }

  @Test
  void otherRoundsOfAKindFollowThoseOfItsSamples() {
    Brief brief =
        with(
            "samples:",
            "  - { of: square, takes: 200 m }",
            "  - { of: triangle, rounds: [2, 3], takes: 4 m }");
    RoundLengths lengths = RoundLengths.of(brief);

    // both rounds have 14 stitches: the fourth has 26
    double each = (4000 - 4 * 150) / 2.0 / (14 * 3.3 + 1);
    assertAll(
        () -> assertEquals(Basis.SAME_KIND, lengths.basis(PieceKind.SIDE_TRIANGLE, 3)),
        () ->
            assertEquals(
                each * (26 * 3.3 + 1) + 300, millimetres(brief, PieceKind.SIDE_TRIANGLE, 3), 1e-5));
  }

  @Test
  void unitsAreExact() {
    Brief brief = with("samples: [ { of: triangle, rounds: 1, takes: 2 yd } ]", "tail: 6 in");

    assertEquals(1828.8, millimetres(brief, PieceKind.SIDE_TRIANGLE, 0), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(strings = {"US", "UK"})
  void theSameWordsInOtherTermsAreOtherStitches(String terms) {
    String text = SET.replace("terms: US", "terms: " + terms).replace("sc: 48", "dc: 48");
    Brief brief =
        BriefReader.read(
            SourceText.of(
                "set.yaml", text.replace("HAND", "  yarn-weight: light\n  hook: 3.5 mm")));

    double loops = terms.equals("US") ? 3.3 : 1.8;
    assertEquals(
        (9 * loops + 1) * Math.PI * 5.6 + 300,
        millimetres(brief, PieceKind.SIDE_TRIANGLE, 0),
        1e-5);
  }

  @Test
  void samplesAreHeldAgainstWhatIsReckoned() {
    Brief brief = with("samples: [ { of: square, takes: [20 m, 21 m, 22 m] } ]");

    double[] ratios =
        RoundLengths.of(brief).held().stream().mapToDouble(RoundLengths.Held::ratio).toArray();
    assertArrayEquals(new double[] {20 / 21.0, 1, 22 / 21.0}, ratios, 1e-9);
  }
}
