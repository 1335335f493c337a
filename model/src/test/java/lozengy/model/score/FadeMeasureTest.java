package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.brief.Where;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** What rounds lose of a fade, reckoned by hand. */
class FadeMeasureTest {

  private static Blanket fading(BlanketBuilder builder, Fade fade) {
    Blanket plain = builder.prefer(Map.of(Part.FADE, 1.0)).build();
    return Blanket.ofUnjudged(plain.brief().withLook(Look.NONE.withFade(fade)));
  }

  private static Fade fade(Fade.Towards towards, Fade.Order order, Where where) {
    return new Fade(towards, order, List.of(), where);
  }

  private static Fade darkToTheLeft() {
    return fade(Fade.Towards.RIGHT, Fade.Order.DARK_TO_LIGHT, Where.EVERYWHERE);
  }

  private static FadeMeasure measure(Blanket blanket) {
    return FadeMeasure.of(blanket).orElseThrow();
  }

  /** Dark and light, told in the other order. */
  private static BlanketBuilder two(BlanketBuilder builder) {
    return builder.yarn("LIG", "Light", "#ffffff").yarn("DAR", "Dark", "#000000");
  }

  private static double figure(Blanket blanket, String sequences) {
    return Scorer.score(blanket, BlanketBuilder.sequences(blanket, sequences), Optional.empty())
        .parts()
        .get(Part.FADE);
  }

  /** Ranks of a row of four lie at 1, 3, 5 and 7 eighths; the yarns' middles at 2 and 6 eighths. */
  @Test
  void aRoundLosesByTheSquareOfItsDistance() {
    BlanketBuilder row = two(BlanketBuilder.straight(4, 1)).motif(PieceKind.SQUARE, 1);
    FadeMeasure measure = measure(fading(row, darkToTheLeft()));
    double unit = 300 / 4.0 / 64;
    assertEquals(4, measure.rounds());
    for (int piece = 0; piece < 4; piece++) {
      assertEquals(unit * Math.pow(2 * piece + 1 - 2, 2), measure.points(piece, 0, 1), 1e-12);
      assertEquals(unit * Math.pow(2 * piece + 1 - 6, 2), measure.points(piece, 0, 0), 1e-12);
    }
    assertEquals(100 - 4 * unit, figure(fading(row, darkToTheLeft()), "DAR DAR LIG LIG"), 1e-9);
    assertEquals(
        100 - (25 + 9 + 9 + 25) * unit,
        figure(fading(row, darkToTheLeft()), "LIG LIG DAR DAR"),
        1e-9);
    Fade lightFirst = fade(Fade.Towards.RIGHT, Fade.Order.LIGHT_TO_DARK, Where.EVERYWHERE);
    assertEquals(unit, measure(fading(row, lightFirst)).points(0, 0, 0), 1e-12);
    assertEquals(25 * unit, measure(fading(row, lightFirst)).points(0, 0, 1), 1e-12);
  }

  /** Of six, those of a column share a rank: 1, 3 and 5 sixths; down the rows 1 and 3 quarters. */
  @Test
  void placesThatLieEquallyFarShareTheirMeanRank() {
    BlanketBuilder block = two(BlanketBuilder.straight(3, 2)).motif(PieceKind.SQUARE, 1);
    FadeMeasure right = measure(fading(block, darkToTheLeft()));
    // the yarns' middles lie at a quarter and at three
    for (int piece : new int[] {0, 3}) {
      assertEquals(50 * Math.pow(1 / 6.0 - 0.25, 2), right.points(piece, 0, 1), 1e-12);
      assertEquals(50 * Math.pow(3 / 6.0 - 0.25, 2), right.points(piece + 1, 0, 1), 1e-12);
      assertEquals(50 * Math.pow(5 / 6.0 - 0.75, 2), right.points(piece + 2, 0, 0), 1e-12);
    }
    FadeMeasure down =
        measure(
            fading(block, fade(Fade.Towards.BOTTOM, Fade.Order.DARK_TO_LIGHT, Where.EVERYWHERE)));
    for (int piece = 0; piece < 6; piece++) {
      assertEquals(0, down.points(piece, 0, piece < 3 ? 1 : 0), 1e-12);
      assertEquals(12.5, down.points(piece, 0, piece < 3 ? 0 : 1), 1e-12);
    }
  }

  /**
   * On a lattice of 4 by 2 the corner-to-corner way weighs both directions by the other's length.
   */
  @Test
  void aDiagonalRunsFromCornerToCorner() {
    BlanketBuilder block = two(BlanketBuilder.straight(2, 1)).motif(PieceKind.SQUARE, 1);
    FadeMeasure measure =
        measure(
            fading(
                block, fade(Fade.Towards.BOTTOM_LEFT, Fade.Order.DARK_TO_LIGHT, Where.EVERYWHERE)));
    assertEquals(0, measure.points(1, 0, 1), 1e-12);
    assertEquals(0, measure.points(0, 0, 0), 1e-12);
    BlanketBuilder wide = two(BlanketBuilder.straight(4, 2)).motif(PieceKind.SQUARE, 1);
    FadeMeasure across =
        measure(
            fading(
                wide, fade(Fade.Towards.BOTTOM_RIGHT, Fade.Order.DARK_TO_LIGHT, Where.EVERYWHERE)));
    // a row further down weighs as two columns: r1c3 and r2c1 share the ranks 3 and 4 of 8
    assertEquals(across.points(2, 0, 1), across.points(4, 0, 1), 1e-12);
    assertEquals(300 / 8.0 * Math.pow(3 / 8.0 - 0.25, 2), across.points(2, 0, 1), 1e-12);
  }

  @Test
  void onlyTheRoundsThatFadeLose() {
    BlanketBuilder row = two(BlanketBuilder.straight(4, 1)).motif(PieceKind.SQUARE, 3);
    Where some = new Where(List.of("r1c1", "r1c2", "r1c4"), List.of(Where.BORDER, 1));
    FadeMeasure measure =
        measure(fading(row, fade(Fade.Towards.RIGHT, Fade.Order.DARK_TO_LIGHT, some)));
    assertEquals(6, measure.rounds());
    assertEquals(0, measure.points(2, 2, 0));
    assertEquals(0, measure.points(0, 1, 0));
    // ranks 1, 3 and 5 sixths of the three that fade
    assertEquals(50 * Math.pow(1 / 6.0 - 0.75, 2), measure.points(0, 2, 0), 1e-12);
    assertEquals(50 * Math.pow(5 / 6.0 - 0.25, 2), measure.points(3, 0, 1), 1e-12);
  }

  @Test
  void layersFadeByThemselvesOnPiecesOfOtherDepth() {
    BlanketBuilder builder =
        two(BlanketBuilder.filled(1, 1))
            .motif(PieceKind.SQUARE, 2)
            .motif(PieceKind.CORNER_TRIANGLE, 1);
    FadeMeasure measure = measure(fading(builder, darkToTheLeft()));
    assertEquals(6, measure.rounds());
    // alone in its layer, in the middle of its ranks; the only round's target is DAR, of equal
    // shares the earlier by code
    assertEquals(0, measure.points(0, 0, 1), 1e-12);
    // in the border it has the rank 5 tenths; the middles of DAR, 3 of 5, and LIG are 3 and 8
    // tenths
    assertEquals(50 * 0.3 * 0.3, measure.points(0, 1, 0), 1e-12);
    assertEquals(50 * 0.2 * 0.2, measure.points(0, 1, 1), 1e-12);
  }

  @Test
  void aStatedOrderLeavesOtherYarnsAtWhatARandomPlaceLoses() {
    BlanketBuilder row =
        BlanketBuilder.straight(4, 1)
            .yarn("A", "A", "#101010")
            .yarn("B", "B", "#808080")
            .yarn("C", "C", "#f0f0f0")
            .yarn("D", "D", "#ffffff")
            .motif(PieceKind.SQUARE, 1);
    Fade stated =
        new Fade(Fade.Towards.RIGHT, Fade.Order.STATED, List.of("C", "A"), Where.EVERYWHERE);
    FadeMeasure measure = measure(fading(row, stated));
    assertEquals(75 / 6.0, measure.points(0, 0, 1), 1e-12);
    assertEquals(75 * Math.pow(0.125 - 0.25, 2), measure.points(0, 0, 2), 1e-12);
    assertEquals(75 * Math.pow(0.125 - 0.75, 2), measure.points(0, 0, 0), 1e-12);
  }

  @Test
  void yarnsWithoutATargetLieEvenlyAlongTheWay() {
    BlanketBuilder row =
        BlanketBuilder.straight(4, 1)
            .yarn("A", "A", "#101010", 1_000_000, 0)
            .yarn("B", "B", "#808080")
            .yarn("C", "C", "#f0f0f0", 1_000_000, 0)
            .motif(PieceKind.SQUARE, 1);
    Fade stated =
        new Fade(Fade.Towards.RIGHT, Fade.Order.STATED, List.of("C", "A"), Where.EVERYWHERE);
    FadeMeasure measure = measure(fading(row, stated));
    assertEquals(75 * Math.pow(0.125 - 0.25, 2), measure.points(0, 0, 2), 1e-12);
    assertEquals(75 * Math.pow(0.125 - 0.75, 2), measure.points(0, 0, 0), 1e-12);
  }

  @Test
  void yarnsOfOneLightnessComeByCode() {
    BlanketBuilder row =
        BlanketBuilder.straight(2, 1)
            .yarn("B", "B", "#808080")
            .yarn("A", "A", "#808080")
            .motif(PieceKind.SQUARE, 1);
    for (Fade.Order order : List.of(Fade.Order.DARK_TO_LIGHT, Fade.Order.LIGHT_TO_DARK)) {
      FadeMeasure measure = measure(fading(row, fade(Fade.Towards.RIGHT, order, Where.EVERYWHERE)));
      assertEquals(0, measure.points(0, 0, 1), 1e-12);
      assertEquals(0, measure.points(1, 0, 0), 1e-12);
    }
  }

  /** Four yarns once each: D D A A lie 6, 4, 4 and 6 eighths off, which is more than there is. */
  @Test
  void placesTogetherCostNoMoreThanThePart() {
    BlanketBuilder row =
        BlanketBuilder.straight(4, 1)
            .yarn("A", "Black", "#000000")
            .yarn("B", "Grey", "#606060")
            .yarn("C", "Pearl", "#b0b0b0")
            .yarn("D", "White", "#ffffff")
            .motif(PieceKind.SQUARE, 1);
    Blanket blanket = fading(row, darkToTheLeft());
    assertEquals(0, figure(blanket, "D D A A"));
    Sequences sequences = BlanketBuilder.sequences(blanket, "D D A A");
    List<Loss> losses = new FadePart(blanket, sequences).losses();
    double all = 36 + 16 + 16 + 36;
    assertArrayEquals(
        new double[] {36 * 100 / all, 16 * 100 / all, 16 * 100 / all, 36 * 100 / all},
        losses.stream().mapToDouble(Loss::points).toArray(),
        1e-9);
    assertEquals(
        "White lies far from its place in the fade: the border of r1c1",
        losses.get(0).words().get());
    assertEquals(List.of(3), losses.get(3).pieces());
    assertTrue(
        new FadePart(blanket, BlanketBuilder.sequences(blanket, "A B C D")).losses().isEmpty());
    assertEquals(100, figure(blanket, "A B C D"));
  }
}
