package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.Look;
import lozengy.model.brief.Where;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** Targets where the look counts, reckoned by hand on rows of squares of one round. */
class CountedDealTest {

  private static final String ALL = "all";

  private static Blanket row(int squares, int yarns, Look.Count... counts) {
    BlanketBuilder builder = BlanketBuilder.straight(squares, 1).motif(PieceKind.SQUARE, 1);
    for (int yarn = 0; yarn < yarns; yarn++) {
      String code = "ABCD".substring(yarn, yarn + 1);
      builder.yarn(code, code, "#808080");
    }
    return Blanket.ofUnjudged(
        builder.build().brief().withLook(Look.NONE.withCounts(List.of(counts))));
  }

  private static Look.Count least(String yarn, int least, String... at) {
    return new Look.Count(yarn, where(at), least, OptionalInt.empty());
  }

  private static Look.Count most(String yarn, int most, String... at) {
    return new Look.Count(yarn, where(at), 0, OptionalInt.of(most));
  }

  private static Where where(String... at) {
    return new Where(Arrays.asList(at), List.of());
  }

  private static void expect(Blanket blanket, int... counts) {
    assertArrayEquals(counts, Targets.of(blanket).counts()[0]);
  }

  private static List<List<Integer>> groups(Blanket blanket) {
    return Targets.dealt(blanket).stream()
        .map(dealt -> Arrays.stream(dealt.counts()).boxed().toList())
        .toList();
  }

  @Test
  void aCountTakesFromItsYarnOrAddsToItAndTheRestIsDealtByShare() {
    expect(row(10, 2), 5, 5);
    expect(row(10, 2, most("A", 2, ALL)), 2, 8);
    expect(row(10, 2, least("A", 8, ALL)), 8, 2);
    expect(row(9, 3, most("A", 1, ALL)), 1, 4, 4);
    expect(row(9, 3, least("C", 6, ALL)), 2, 1, 6);
    expect(row(10, 2, most("A", 0, ALL)), 0, 10);
  }

  @Test
  void aDealThatKeepsToItStays() {
    expect(row(10, 2, most("A", 5, ALL)), 5, 5);
    expect(row(10, 2, least("A", 5, ALL)), 5, 5);
    expect(row(10, 2, new Look.Count("A", where(ALL), 4, OptionalInt.of(6))), 5, 5);
  }

  @Test
  void aCountOfSomePiecesMovesTheirRoundsAlone() {
    Blanket blanket = row(10, 2, least("A", 4, "r1c1..r1c4"));
    assertEquals(List.of(List.of(4, 0), List.of(3, 3)), groups(blanket));
    expect(blanket, 7, 3);
  }

  @Test
  void theCountOfFewerRoundsIsMendedFirstAndStaysWhole() {
    Blanket blanket = row(10, 2, most("A", 2, ALL), least("A", 2, "r1c1..r1c2"));
    assertEquals(List.of(List.of(2, 0), List.of(0, 8)), groups(blanket));
  }

  @Test
  void aRoundIsTakenWhereTheYarnHasTheLargestPartAndAddedWhereItHasTheSmallest() {
    // groups of 3 and 5: A has 2 of 3 and 3 of 5 by its code
    Look.Count marks = most("B", 3, "r1c1..r1c3");
    assertEquals(
        List.of(List.of(2, 1), List.of(3, 2)), groups(row(8, 2, marks)), "as dealt by share");
    assertEquals(
        List.of(List.of(1, 2), List.of(3, 2)), groups(row(8, 2, marks, most("A", 4, ALL))));
    assertEquals(
        List.of(List.of(2, 1), List.of(4, 1)), groups(row(8, 2, marks, least("A", 6, ALL))));
    // of equal parts the first
    Look.Count halves = most("B", 4, "r1c1..r1c4");
    assertEquals(
        List.of(List.of(1, 3), List.of(2, 2)), groups(row(8, 2, halves, most("A", 3, ALL))));
    assertEquals(
        List.of(List.of(3, 1), List.of(2, 2)), groups(row(8, 2, halves, least("A", 5, ALL))));
  }

  @Test
  void whatCannotBeKeptIsKeptAsFarAsCanBe() {
    expect(row(3, 2, least("A", 5, ALL)), 3, 0);
    // the four hold: only the others yield
    Blanket torn = row(8, 2, most("A", 2, ALL), least("A", 4, "r1c1..r1c4"));
    assertEquals(List.of(List.of(4, 0), List.of(0, 4)), groups(torn));
    // a later count makes the one that is torn no worse; one that holds by then is torn no more
    assertEquals(List.of(List.of(4, 0), List.of(0, 4)), groups(thirdCount(7)));
    assertEquals(List.of(List.of(4, 0), List.of(2, 2)), groups(thirdCount(6)));
  }

  private static Blanket thirdCount(int least) {
    return row(
        8, 2, most("A", 2, ALL), least("A", 4, "r1c1..r1c4"), least("A", least, "r1c1..r1c8"));
  }

  @Test
  void aYarnThatAZoneKeepsOutGetsNoRound() {
    Blanket plain = row(6, 2, least("A", 4, ALL));
    Look.Zone zone = new Look.Zone(where("r1c1..r1c4"), List.of("B"));
    Blanket zoned =
        Blanket.ofUnjudged(plain.brief().withLook(plain.brief().look().withZones(List.of(zone))));
    assertEquals(List.of(List.of(0, 4), List.of(2, 0)), groups(zoned));
  }

  @Test
  void countsOfTwoYarnsLeaveEachOtherWhatTheyHave() {
    // A gets 3 of 4, which leaves B the last
    expect(row(4, 3, least("A", 3, ALL), least("B", 3, ALL)), 3, 1, 0);
    // where there is room both are kept
    expect(row(8, 3, least("A", 4, ALL), least("B", 4, ALL)), 4, 4, 0);
    expect(row(9, 3, most("A", 2, ALL), most("B", 2, ALL)), 2, 2, 5);
  }

  @Test
  void roundsOfAPieceThatACountDoesNotLookAtAreDealtByShare() {
    BlanketBuilder builder =
        BlanketBuilder.straight(4, 1)
            .yarn("A", "A", "#808080")
            .yarn("B", "B", "#808080")
            .motif(PieceKind.SQUARE, 2);
    Look.Count borders = new Look.Count("A", Where.BORDERS, 0, OptionalInt.of(1));
    Blanket blanket =
        Blanket.ofUnjudged(
            builder.build().brief().withLook(Look.NONE.withCounts(List.of(borders))));
    assertArrayEquals(new int[] {1, 3}, Targets.of(blanket).counts()[0]);
    assertArrayEquals(new int[] {2, 2}, Targets.of(blanket).counts()[1]);
  }

  @Test
  void whatIsDealtTellsItsKindsAndLayer() {
    BlanketBuilder builder =
        BlanketBuilder.filled(1, 1)
            .yarn("A", "A", "#808080")
            .yarn("B", "B", "#808080")
            .motif(PieceKind.SQUARE, 2)
            .motif(PieceKind.CORNER_TRIANGLE, 1);
    List<Targets.Dealt> dealt = Targets.dealt(builder.build());
    assertEquals(List.of(0, 1), dealt.stream().map(Targets.Dealt::layer).toList());
    assertArrayEquals(new int[] {3, 2}, dealt.get(0).counts());
    assertArrayEquals(new int[] {1, 0}, dealt.get(1).counts());
    int[] kinds = new int[PieceKind.values().length];
    kinds[PieceKind.SQUARE.ordinal()] = 1;
    assertArrayEquals(kinds, dealt.get(1).kinds());
    kinds[PieceKind.CORNER_TRIANGLE.ordinal()] = 4;
    assertArrayEquals(kinds, dealt.get(0).kinds());
  }

  @Test
  void givenBordersAreTheTarget() {
    Blanket blanket =
        Blanket.ofUnjudged(row(5, 3).brief().withLook(Look.NONE.withBorders("C", "B")));
    expect(blanket, 0, 2, 3);
  }

  /** Groups of four and four, of which each yarn has two; of equal parts the first yields. */
  @Test
  void aCountThatHoldsIsNotBrokenForAnother() {
    Look.Count fewer = most("A", 3, ALL);
    assertEquals(
        List.of(List.of(2, 2), List.of(1, 3)),
        groups(row(8, 2, least("A", 2, "r1c1..r1c4"), fewer)),
        "the first has none to spare");
    assertEquals(
        List.of(List.of(1, 3), List.of(2, 2)),
        groups(row(8, 2, least("A", 1, "r1c1..r1c4"), fewer)),
        "one to spare");
    Look.Count more = least("A", 5, ALL);
    assertEquals(
        List.of(List.of(2, 2), List.of(3, 1)),
        groups(row(8, 2, most("A", 2, "r1c1..r1c4"), more)),
        "the first has no room");
    assertEquals(
        List.of(List.of(3, 1), List.of(2, 2)),
        groups(row(8, 2, most("A", 3, "r1c1..r1c4"), more)),
        "room for one");
    assertEquals(
        List.of(List.of(3, 1), List.of(2, 2)),
        groups(row(8, 2, most("B", 2, "r1c1..r1c4"), more)),
        "a count of another yarn has no say");
  }

  @Test
  void whatACountFixesLeavesTheRoundsOfOtherYarnsCountsFree() {
    Blanket blanket = row(8, 2, least("A", 3, "r1c1..r1c3"), least("B", 4, "r1c4..r1c8"));
    assertEquals(List.of(List.of(3, 0), List.of(1, 4)), groups(blanket));
  }
}
