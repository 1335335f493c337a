package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class ScorerTest {

  private static BlanketBuilder row(int squares, int rounds) {
    return BlanketBuilder.straight(squares, 1).motif(PieceKind.SQUARE, rounds);
  }

  private static Score score(Blanket blanket, String sequences) {
    return Scorer.score(blanket, BlanketBuilder.sequences(blanket, sequences), Optional.empty());
  }

  private static double part(Part part, BlanketBuilder builder, String sequences) {
    return score(builder.build(), sequences).parts().get(part);
  }

  @Test
  void balanceWeighsTheBorderTwice() {
    BlanketBuilder builder = row(4, 2).yarn("A", "A", "#2c2a29").yarn("B", "B", "#b9b57a");
    assertEquals(100, part(Part.BALANCE, builder, "A,B A,B B,A B,A"));
    // border 3 and 1 for 2 and 2: 75; centres as wanted
    assertEquals((2 * 75 + 100) / 3.0, part(Part.BALANCE, builder, "A,B A,B B,B B,A"), 1e-9);
    assertEquals((2 * 100 + 50) / 3.0, part(Part.BALANCE, builder, "A,B A,B A,A A,A"), 1e-9);
  }

  @Test
  void contrastAveragesSeamsAndAdjacentRounds() {
    BlanketBuilder builder =
        row(3, 2).yarn("A", "A", "#000000").yarn("B", "B", "#ffffff").yarn("C", "C", "#f4f4f4");
    Blanket blanket = builder.build();
    double low = blanket.yarns().difference(1, 2) / 40;
    assertTrue(low > 0.02 && low < 0.1, "white beside nearly white: " + low);
    assertEquals(100, part(Part.CONTRAST, builder, "A,B B,A A,B"));
    assertEquals(0, part(Part.CONTRAST, builder, "A,A A,A A,A"));
    // seams: B-C low, C-A full; rounds: full, low, none
    double wanted = 100 * ((low + 1) / 2 + (1 + low + 0) / 3) / 2;
    assertEquals(wanted, part(Part.CONTRAST, builder, "A,B B,C A,A"), 1e-9);
  }

  @Test
  void contrastTakesTheOneMeanWhereTheOtherHasNoPairs() {
    BlanketBuilder noSteps = row(3, 1).yarn("A", "A", "#000000").yarn("B", "B", "#ffffff");
    assertEquals(50, part(Part.CONTRAST, noSteps, "A B B"), 1e-9);
    BlanketBuilder noSeams = row(1, 3).yarn("A", "A", "#000000").yarn("B", "B", "#ffffff");
    assertEquals(50, part(Part.CONTRAST, noSeams, "A,B,B"), 1e-9);
    BlanketBuilder neither = row(1, 1).yarn("A", "A", "#000000");
    assertEquals(100, part(Part.CONTRAST, neither, "A"));
  }

  @Test
  void varietyCountsDistinctSequences() {
    BlanketBuilder builder = row(4, 2).yarn("A", "A", "#000000").yarn("B", "B", "#ffffff");
    assertEquals(100, part(Part.VARIETY, builder, "A,A A,B B,A B,B"));
    assertEquals(50, part(Part.VARIETY, builder, "A,B A,B B,A A,B"));
    assertEquals(25, part(Part.VARIETY, builder, "A,B A,B A,B A,B"));
  }

  @Test
  void leewayIsWhatEachYarnLacksOfAnEleventhOfItsStock() {
    // four rounds of 1 m: an eleventh of 4.4 m is 10 % of 4 m; the other yarn has its half in full
    assertEquals(100, part(Part.LEEWAY, stock(4_400), "A A A A"), 1e-9);
    assertEquals(100, part(Part.LEEWAY, stock(9_000), "A A A A"), 1e-9);
    assertEquals(HALF, part(Part.LEEWAY, stock(4_190), "A A A A"), 1e-9);
    assertEquals(50, part(Part.LEEWAY, stock(4_000), "A A A A"), 1e-9);
    assertEquals(50, part(Part.LEEWAY, stock(3_000), "A A A A"), 1e-9);
    assertEquals(50, part(Part.LEEWAY, stock(0), "A A A A"), 1e-9);
    assertEquals(100, part(Part.LEEWAY, stock(0), "B B B B"), 1e-9);
  }

  /** One yarn that must run low hides no other: the rest is better the more even it is. */
  @Test
  void whereOneYarnIsDownToItsLastTheOthersStillCount() {
    BlanketBuilder stash =
        row(6, 1)
            .yarn("A", "Light", "#ffffff", 2_010, 1)
            .yarn("B", "Navy", "#000080", 2_300, 1)
            .yarn("C", "Brown", "#553311", 2_300, 1);
    double even = part(Part.LEEWAY, stash, "A A B B C C");
    double uneven = part(Part.LEEWAY, stash.joining("C", 0.5), "A A B B C C");
    // 0.25 m of seams come off brown: it keeps 0.05 m
    assertEquals(100 * (1 - lack(10, 2_010) / 3), even, 1e-9);
    assertEquals(100 * (1 - (lack(10, 2_010) + lack(50, 2_300)) / 3), uneven, 1e-9);
  }

  private static double lack(double left, double stock) {
    return Math.pow(1 - 11 * left / stock, 2);
  }

  @Test
  void leewayCountsJoiningAndIgnoresWhatIsKeptBack() {
    // 0.3 m of seams at 10 m a metre: 3 m beside 1 m of round
    assertEquals(HALF, part(Part.LEEWAY, stock(4_190).joining("A", 10), "A B B B"), 1e-9);
    BlanketBuilder keepingBack =
        stock(4_190).rules(0, lozengy.model.brief.Rules.WithinPiece.FREE, OptionalInt.empty(), 5);
    assertEquals(HALF, part(Part.LEEWAY, keepingBack, "A A A A"), 1e-9);
  }

  /** With 4.19 m, 4 m leave about half of an eleventh. */
  private static final double HALF = 100 - 50 * lack(190, 4_190);

  private static BlanketBuilder stock(long millimetresOfA) {
    return row(4, 1).yarn("A", "A", "#000000", millimetresOfA, 1).yarn("B", "B", "#ffffff");
  }

  @Test
  void keepCountsRoundsThatWereFreeToChange() {
    Blanket blanket =
        row(3, 2)
            .yarn("A", "A", "#000000")
            .yarn("B", "B", "#ffffff")
            .piece("r1c1", PieceState.MADE, "A", "B")
            .piece("r1c2", PieceState.PLANNED, "A", null)
            .build();
    Sequences now = BlanketBuilder.sequences(blanket, "A,B A,A B,A");
    assertEquals(100, keep(blanket, now, now));
    // free: the border of r1c2 and both rounds of r1c3; one of the three differs and one was open
    assertEquals(50, keep(blanket, now, BlanketBuilder.sequences(blanket, "B,A B,B B,~")), 1e-9);
    Score score = Scorer.score(blanket, now, Optional.empty());
    assertFalse(score.parts().containsKey(Part.KEEP));
  }

  @Test
  void keepIsFullWhereNothingIsFree() {
    Blanket blanket =
        row(1, 1).yarn("A", "A", "#000000").piece("r1c1", PieceState.JOINED, "A").build();
    Sequences now = BlanketBuilder.sequences(blanket, "A");
    assertEquals(100, keep(blanket, now, blanket.open()));
  }

  /** The total says the same of an arrangement whatever it was solved from. */
  @Test
  void keepStandsBesideTheTotal() {
    Blanket blanket = row(3, 2).yarn("A", "A", "#000000").yarn("B", "B", "#ffffff").build();
    Sequences now = BlanketBuilder.sequences(blanket, "A,B B,A A,A");
    Sequences earlier = BlanketBuilder.sequences(blanket, "A,B B,A B,B");
    Score afresh = Scorer.score(blanket, now, Optional.empty());
    Score again = Scorer.score(blanket, now, Optional.of(earlier));
    assertEquals(afresh.total(), again.total());
    assertEquals(afresh.total(), afresh.objective());
    // keep weighs 3 beside the 9 of the others
    assertEquals(
        (9 * afresh.total() + 3 * again.parts().get(Part.KEEP)) / 12, again.objective(), 1e-9);
    assertEquals(
        WeakSpots.of(blanket, now, 99).stream().mapToDouble(WeakSpot::points).sum(),
        100 - again.total(),
        1e-9);
  }

  private static double keep(Blanket blanket, Sequences now, Sequences earlier) {
    return Scorer.score(blanket, now, Optional.of(earlier)).parts().get(Part.KEEP);
  }

  @Test
  void totalIsTheWeightedMeanOfThePartsAskedFor() {
    Map<Part, Double> parts =
        Map.of(
            Part.BALANCE, 90.0,
            Part.SPREAD, 60.0,
            Part.CONTRAST, 50.0,
            Part.VARIETY, 100.0,
            Part.LEEWAY, 20.0);
    BlanketBuilder builder = row(2, 1).yarn("A", "A", "#000000");
    assertEquals((3 * 90 + 3 * 60 + 50 + 100 + 20) / 9.0, total(parts, builder), 1e-9);
    assertEquals(
        (3 * 90 + 2.5 * 60 + 50 + 20) / 7.5,
        total(parts, builder.prefer(Map.of(Part.SPREAD, 2.5, Part.VARIETY, 0.0))),
        1e-9);
    Map<Part, Double> none =
        Map.of(
            Part.BALANCE, 0.0,
            Part.SPREAD, 0.0,
            Part.CONTRAST, 0.0,
            Part.VARIETY, 0.0,
            Part.LEEWAY, 0.0);
    // keep still weighs 3, but there is no earlier arrangement
    assertEquals(100, total(parts, builder.prefer(none)));
  }

  private static double total(Map<Part, Double> parts, BlanketBuilder builder) {
    return Score.of(parts, builder.build().brief().prefer()).total();
  }

  @Test
  void refusesOpenRoundsAndOtherShapes() {
    Blanket blanket = row(2, 2).yarn("A", "A", "#000000").build();
    assertEquals(
        "r1c2: round 1 has no yarn",
        assertThrows(IllegalArgumentException.class, () -> score(blanket, "A,A ~,A")).getMessage());
    Sequences whole = BlanketBuilder.sequences(blanket, "A,A A,A");
    Optional<Sequences> other = Optional.of(new Sequences(new int[] {2}));
    assertThrows(IllegalArgumentException.class, () -> Scorer.score(blanket, whole, other));
    assertThrows(IllegalArgumentException.class, () -> Scorer.layers(blanket, blanket.open()));
  }
}
