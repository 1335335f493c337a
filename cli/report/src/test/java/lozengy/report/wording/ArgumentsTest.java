package lozengy.report.wording;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.explain.conflict.Root;
import org.junit.jupiter.api.Test;

/** What each direct argument says, word for word. */
class ArgumentsTest {

  private static final long PLENTY = 1_000_000;

  private static BlanketBuilder twoByTwo() {
    return BlanketBuilder.straight(2, 2)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(2000, Tone.DARK));
  }

  private static List<String> said(Blanket blanket) {
    Wording wording = new Wording(blanket);
    return Root.arguments(blanket).stream().map(wording::of).toList();
  }

  private static void assertSays(Blanket blanket, String... reasons) {
    assertEquals(List.of(reasons), said(blanket));
  }

  @Test
  void nothingWhereABriefFits() {
    assertSays(twoByTwo().yarns(2, Tone.LIGHT, PLENTY).yarns(2, Tone.DARK, PLENTY).build());
  }

  @Test
  void noYarnOfATone() {
    assertSays(
        twoByTwo().yarns(2, Tone.DARK, PLENTY).build(),
        "Round 1 of 4 squares must be light, and no yarn is");
  }

  @Test
  void aLockThatBreaksATone() {
    assertSays(
        twoByTwo()
            .yarns(2, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r1c1", PieceState.PLANNED, "A", null)
            .build(),
        "Round 1 of r1c1 is locked to A, but must be light");
  }

  @Test
  void bansThatLeaveNothing() {
    assertSays(
        twoByTwo()
            .yarns(2, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .ban("r2c2", "A", "B")
            .build(),
        "The border of r2c2 must be dark, but A and B are banned from the piece");
  }

  @Test
  void imagesSideBySide() {
    Brief brief =
        twoByTwo().yarns(2, Tone.DARK, PLENTY).yarns(2, Tone.LIGHT, PLENTY).build().brief();
    assertSays(
        Blanket.of(brief.withLook(Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT))),
        "r1c1 and r1c2 are joined along a side across the middle and are each other's images"
            + " (left-right), so both would have the same border",
        "r2c1 and r2c2 are joined along a side across the middle and are each other's images"
            + " (left-right), so both would have the same border");
    assertSays(Blanket.of(brief.withLook(Look.NONE.withSymmetry(Symmetry.HALF_TURN))));
  }

  @Test
  void imagesThatShareNoYarn() {
    assertSays(
        Blanket.ofUnjudged(
            twoByTwo()
                .yarns(2, Tone.DARK, PLENTY)
                .yarns(2, Tone.LIGHT, PLENTY)
                .ban("r1c1", "A")
                .ban("r2c2", "B")
                .build()
                .brief()
                .withLook(Look.NONE.withSymmetry(Symmetry.HALF_TURN))),
        "r1c1 and r2c2 are each other's images (half-turn), and no yarn may be the border of both");
  }

  @Test
  void aZoneThatLeavesNothing() {
    Where first = new Where(List.of("r1c1"), List.of(Where.BORDER));
    assertSays(
        Blanket.of(
            twoByTwo()
                .yarns(2, Tone.DARK, PLENTY)
                .yarns(2, Tone.LIGHT, PLENTY)
                .build()
                .brief()
                .withLook(Look.NONE.withZones(List.of(new Look.Zone(first, List.of("C")))))),
        "The border of r1c1 must be dark, but A and B are kept out by its zones and bans");
  }

  @Test
  void aLockThatIsBanned() {
    assertSays(
        twoByTwo()
            .yarns(2, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r1c2", PieceState.PLANNED, null, "B")
            .ban("r1c2", "B")
            .build(),
        "The border of r1c2 is locked to B, but that yarn is banned from the piece");
  }

  @Test
  void neighboursLockedToOneBorder() {
    assertSays(
        twoByTwo()
            .yarns(2, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r1c1", PieceState.PLANNED, null, "B")
            .note("r2c1", PieceState.MADE, "C", "B")
            .build(),
        "r1c1 and r2c1 are joined along a side, and the border of both can only be B");
  }

  @Test
  void joinedNeighboursMayShareABorder() {
    assertSays(
        twoByTwo()
            .yarns(3, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r1c1", PieceState.JOINED, "D", "B")
            .note("r2c1", PieceState.JOINED, "E", "B")
            .build());
  }

  @Test
  void bordersThatLookAlike() {
    assertSays(
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.DARK, new Srgb(20, 20, 20), PLENTY)
            .yarn(Tone.DARK, new Srgb(22, 20, 20), PLENTY)
            .minContrast(10)
            .build(),
        "r1c1 and r1c2 are joined along a side, and the border of both can only be A or B,"
            + " less than 10 apart in colour");
  }

  @Test
  void roundsThatMustAllDiffer() {
    assertSays(
        BlanketBuilder.straight(2, 2)
            .motif(PieceKind.SQUARE, round(1, Tone.DARK), round(1, Tone.LIGHT), round(1, Tone.DARK))
            .yarns(1, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .within(WithinPiece.ALL_DIFFER)
            .build(),
        "Rounds 1 and 3 of 4 squares must differ (all-differ), and can only be A",
        "row1 and row2 are joined along 4 sides, and the border of all can only be A");
  }

  @Test
  void joiningThatTakesMoreThanThereIs() {
    // four seams of 10 cm at 30 m a metre
    assertSays(
        twoByTwo()
            .yarn(Tone.DARK, 10_000)
            .yarns(2, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .joining("A", 30)
            .build(),
        "A: joining takes 12.00 m; 10.00 m are there to use: 2.00 m short");
  }

  @Test
  void roundsLongerThanWhatIsLeft() {
    assertSays(
        twoByTwo().yarns(5, Tone.DARK, 1_999).yarns(2, Tone.LIGHT, PLENTY).build(),
        "Round 2 of 4 squares takes at least 2.00 m, and none of A, B, C, D and E has so much"
            + " left");
  }

  @Test
  void darksThatFallShort() {
    assertSays(
        twoByTwo().yarns(2, Tone.DARK, 3_900).yarns(2, Tone.LIGHT, PLENTY).build(),
        "Round 2 of 4 squares: 8.00 m needed; only A and B (7.80 m in all) can serve: 0.20 m"
            + " short");
  }

  @Test
  void onlyTheYarnsThatAreShortAreNamed() {
    assertSays(
        twoByTwo()
            .yarns(2, Tone.DARK, 3_900)
            .yarns(2, Tone.LIGHT, 1_500)
            .yarns(1, Tone.MID, PLENTY)
            .build(),
        "Round 1 of 4 squares: 4.00 m needed; only C and D (3.00 m in all) can serve: 1.00 m short",
        "Round 2 of 4 squares: 8.00 m needed; only A and B (7.80 m in all) can serve: 0.20 m"
            + " short");
  }

  @Test
  void remaindersThatNoWholeRoundCanUse() {
    assertSays(
        twoByTwo()
            .yarns(2, Tone.DARK, 5_900)
            .yarns(2, Tone.LIGHT, PLENTY)
            .ban("r1c1", "A")
            .build());
    assertSays(
        twoByTwo()
            .yarn(Tone.DARK, 5_900)
            .yarn(Tone.DARK, 3_900)
            .yarns(2, Tone.LIGHT, PLENTY)
            .build(),
        "Round 2 of 4 squares: 8.00 m needed; only A and B (in whole rounds at most 6.00 m) can"
            + " serve: 2.00 m short");
  }

  @Test
  void bordersThatOneYarnCannotGiveBecauseSeamsDiffer() {
    // A could be on half of the eight borders at most, B has yarn for three
    assertSays(
        BlanketBuilder.straight(4, 2)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.DARK, PLENTY)
            .yarn(Tone.DARK, 3_000)
            .build(),
        "Round 1 of 8 squares: 8.00 m needed; only B (in whole rounds at most 3.00 m) and A (at"
            + " most 4.00 m as borders, for borders on a seam differ) can serve: 1.00 m short");
  }

  @Test
  void moreSquaresThanSequences() {
    assertSays(
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(1), round(1))
            .yarns(3, Tone.DARK, PLENTY)
            .copies(1)
            .build(),
        "9 squares may share no sequence, and their rounds leave room for only 6 of them");
  }

  /** Rounds by weight: 10 g are 20 m of A (100 m a ball) and 22 m of B (110 m a ball). */
  private static BlanketBuilder weighed() {
    return BlanketBuilder.straight(2, 2)
        .motif(PieceKind.SQUARE, new Round(Set.of(Tone.DARK), new YarnAmount.Weight(10_000)));
  }

  @Test
  void weighedRoundsThatFit() {
    assertSays(weighed().yarn(Tone.DARK, 40_000).yarn(Tone.DARK, 44_000).build());
  }

  @Test
  void weighedRoundsThatFallShortByTheirWeight() {
    // 40 g needed; 24.99 g of A and 10 g of B are there
    assertSays(
        weighed().yarn(Tone.DARK, 49_980).yarn(Tone.DARK, 22_000).build(),
        "Round 1 of 4 squares: only A and B can serve, and at least 114.32 % of what they can give"
            + " would be needed");
  }

  @Test
  void manySentencesOfOneSortAreSummedUp() {
    List<String> reasons =
        said(
            BlanketBuilder.straight(7, 1)
                .motif(PieceKind.SQUARE, round(1, Tone.LIGHT))
                .yarns(2, Tone.DARK, PLENTY)
                .yarns(2, Tone.LIGHT, PLENTY)
                .note("r1c1", PieceState.PLANNED, "A")
                .note("r1c2", PieceState.PLANNED, "B")
                .note("r1c3", PieceState.PLANNED, "A")
                .note("r1c4", PieceState.PLANNED, "B")
                .note("r1c5", PieceState.PLANNED, "A")
                .note("r1c6", PieceState.PLANNED, "B")
                .note("r1c7", PieceState.PLANNED, "A")
                .build());
    assertEquals(5, reasons.size());
    assertEquals(
        "The border of r1c5 is locked to A, but must be light; and 2 more like it", reasons.get(4));
  }

  private static Blanket counted(long stock, Look.Count... counts) {
    BlanketBuilder builder = BlanketBuilder.straight(3, 3).motif(PieceKind.SQUARE, round(1000));
    builder.yarn(Tone.DARK, new Srgb(0, 0, 0), stock).yarns(3, Tone.LIGHT, PLENTY);
    Brief brief = builder.build().brief();
    return Blanket.of(brief.withLook(Look.NONE.withCounts(List.of(counts))));
  }

  private static Look.Count count(String yarn, String at, int least, int most) {
    Where where = new Where(List.of(at), List.of(Where.BORDER));
    return new Look.Count(yarn, where, least, OptionalInt.of(most));
  }

  @Test
  void countsThatCannotBeKept() {
    assertSays(counted(PLENTY, count("A", "all", 5, 5), count("B", "all", 4, 9)));
    assertSays(
        counted(PLENTY, count("A", "all", 6, 9)),
        "At least 6 of all pieces are to have A in the border, and only 5 can, for borders on a"
            + " seam differ");
    assertSays(
        counted(3_900, count("A", "all", 4, 9)),
        "At least 4 of all pieces are to have A in the border, and its 3.90 m suffice for only 3");
    assertSays(
        counted(PLENTY, count("A", "all", 5, 9), count("B", "all", 5, 9)),
        "Of 9 (all pieces) at least 5 with A and 5 with B are asked for in the border: 1 too"
            + " many");
    Brief fixed = counted(PLENTY, count("A", "row1", 0, 1), count("B", "row2", 3, 3)).brief();
    Look.Zone zone = new Look.Zone(new Where(List.of("r1c1", "r1c3"), List.of()), List.of("A"));
    Look.Zone other = new Look.Zone(new Where(List.of("r2c2"), List.of()), List.of("C"));
    assertSays(
        Blanket.of(fixed.withLook(fixed.look().withZones(List.of(zone, other)))),
        "At most 1 of row1 are to have A in the border, and 2 can have nothing else there",
        "At least 3 of row2 are to have B in the border, and only 2 can");
  }

  @Test
  void countsThatASymmetryRulesOut() {
    Look both = Look.NONE.withSymmetry(Symmetry.BOTH);
    Brief brief = counted(PLENTY).brief();
    Look.Count corners =
        new Look.Count("A", new Where(List.of("r1c1..r1c3"), List.of()), 1, OptionalInt.of(1));
    assertSays(Blanket.of(brief.withLook(both.withCounts(List.of(corners)))));
    assertSays(Blanket.of(brief.withLook(both.withCounts(List.of(count("A", "all", 3, 3))))));
    Look.Count pair =
        new Look.Count("A", new Where(List.of("r1c1", "r1c3"), List.of()), 1, OptionalInt.of(1));
    assertSays(
        Blanket.of(brief.withLook(both.withCounts(List.of(pair)))),
        "Just 1 of r1c1, r1c3 are to have A in some round, and pieces that are each other's images"
            + " come together: 0 or 2 can");
  }

  @Test
  void aPileThatBreaksACount() {
    Brief brief = counted(PLENTY, count("A", "row1..row2", 0, 1)).brief();
    assertSays(Blanket.of(brief.withPile(List.of(pile(4)))));
    assertSays(
        Blanket.of(brief.withPile(List.of(pile(5)))),
        "At most 1 of row1..row2 are to have A in the border, and at least 2 pieces of the pile"
            + " with it must lie there");
  }

  private static PileEntry pile(int pieces) {
    return new PileEntry(PieceKind.SQUARE, List.of("A"), pieces, Set.of());
  }
}
