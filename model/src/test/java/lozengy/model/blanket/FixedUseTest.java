package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Tone;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/**
 * What counts and the pile make of yarn totals, reckoned by hand on a row of four squares of 10 cm:
 * rounds of 1 m and 2 m, three seams of 350 mm in MUD, an outline of 1 m that takes 2 m of REE.
 */
class FixedUseTest {

  private static BlanketBuilder row() {
    return BlanketBuilder.straight(4, 1)
        .yarn("MUD", "Tidal mud", "#2c2a29", 20_000, 1)
        .yarn("REE", "Reed", "#b9b57a", 9_000, 1)
        .motif(
            PieceKind.SQUARE,
            BlanketBuilder.round(1000, Tone.values()),
            BlanketBuilder.round(2000, Tone.values()))
        .joining("MUD", 3.5);
  }

  private static BlanketBuilder worked() {
    return row()
        .piece("r1c1", PieceState.JOINED, "MUD", "REE")
        .piece("r1c2", PieceState.JOINED, "REE", "MUD")
        .piece("r1c3", PieceState.MADE, "MUD", "MUD")
        .begun("r1c4", 1, "MUD", null);
  }

  private static Blanket with(BlanketBuilder builder, UnaryOperator<Brief> change) {
    Brief edged = builder.build().brief().withEdging(List.of(new YarnUse("REE", 2)));
    return Blanket.ofUnjudged(change.apply(edged));
  }

  private static Brief change(Brief brief, int yarn, UnaryOperator<Yarn> change) {
    List<Yarn> yarns = new ArrayList<>(brief.yarns());
    yarns.set(yarn, change.apply(yarns.get(yarn)));
    return brief.withYarns(yarns);
  }

  private static Brief counted(Brief brief, int yarn, Counted counted) {
    return change(brief, yarn, each -> each.withCount(Optional.of(counted)));
  }

  private static Counted count(
      List<String> made, List<String> joined, List<PartWorked> part, double edgedPercent) {
    return new Counted(new YarnAmount.Length(5_000), made, joined, part, edgedPercent);
  }

  private static void expectFixed(Blanket blanket, long mud, long ree) {
    assertEquals(mud, blanket.fixedUse().millimetres(0));
    assertEquals(ree, blanket.fixedUse().millimetres(1));
  }

  @Test
  void withoutACountJoiningAndEdgingAreAllThereIs() {
    Blanket blanket = with(worked(), brief -> brief);
    assertEquals(1050, blanket.fixedUse().joiningMillimetres());
    assertEquals(2000, blanket.fixedUse().edgingMillimetres());
    assertEquals(2000, blanket.fixedUse().wholeEdgingMillimetres(1));
    assertEquals(700, blanket.fixedUse().joiningMillimetres(2));
    assertEquals(0, blanket.fixedUse().joiningMillimetres(0));
    expectFixed(blanket, 1050, 2000);
    assertEquals(0, blanket.fixedUse().settledRounds(0, 0));
    Sequences sequences = BlanketBuilder.sequences(blanket, "MUD,REE REE,MUD MUD,MUD MUD,~");
    assertArrayEquals(
        new long[] {1050 + 1000 + 2000 + 3000 + 1000, 2000 + 2000 + 1000},
        blanket.usedMillimetres(sequences));
    Blanket bare = BlanketBuilder.straight(1, 1).saltmarsh().motif(PieceKind.SQUARE, 1).build();
    assertEquals(
        0, bare.fixedUse().joiningMillimetres(3) + bare.fixedUse().wholeEdgingMillimetres(0));
    assertEquals(0, bare.fixedUse().edgingMillimetres() + bare.fixedUse().joiningMillimetres());
  }

  /** Counted when r1c1 and r1c2 were joined and a round of r1c4 was worked, r1c3 not yet. */
  @Test
  void whatWasWorkedWhenAYarnWasCountedIsSettled() {
    Counted mud =
        count(List.of(), List.of("r1c1", "r1c2"), List.of(new PartWorked(1, List.of("r1c4"))), 0);
    Blanket blanket = with(worked(), brief -> counted(brief, 0, mud));
    // 1 m of r1c1, 2 m of r1c2, 1 m of r1c4, and the seam between the two
    assertEquals(4000, blanket.fixedUse().settledMillimetres(0));
    assertEquals(0, blanket.fixedUse().settledMillimetres(1));
    assertEquals(700, blanket.fixedUse().joiningMillimetres());
    expectFixed(blanket, 700 - 4000, 2000);
    int[] settled = {2, 2, 0, 1};
    for (int piece = 0; piece < 4; piece++) {
      assertEquals(settled[piece], blanket.fixedUse().settledRounds(0, piece));
      assertEquals(0, blanket.fixedUse().settledRounds(1, piece));
    }
    assertEquals(5_000, blanket.yarn(0).stockMillimetres());
  }

  @Test
  void whatWasGivenUpSinceIsSettledNoMore() {
    // counted as made and joined all over; only what is worked now counts
    Counted all = count(List.of("r1c3", "r1c4"), List.of("r1c1", "r1c2"), List.of(), 0);
    Blanket fresh = with(row(), brief -> counted(brief, 0, all));
    assertEquals(0, fresh.fixedUse().settledMillimetres(0));
    assertEquals(1050, fresh.fixedUse().joiningMillimetres());
    Blanket now = with(worked(), brief -> counted(brief, 0, all));
    assertEquals(1000 + 2000 + 3000 + 1000, now.fixedUse().settledMillimetres(0));
    Counted more =
        count(
            List.of(),
            List.of("r1c1", "r1c2", "r1c3"),
            List.of(new PartWorked(2, List.of("r1c4")), new PartWorked(1, List.of("r1c4"))),
            0);
    // r1c3 is made, not joined: one seam
    Blanket begun = with(worked(), brief -> counted(brief, 0, more));
    assertEquals(700, begun.fixedUse().joiningMillimetres());
    assertEquals(1, begun.fixedUse().settledRounds(0, 3));
  }

  @Test
  void seamsBetweenJoinedPiecesAloneAreSettled() {
    Counted three = count(List.of(), List.of("r1c1..r1c3"), List.of(), 0);
    BlanketBuilder joined =
        row()
            .piece("r1c1", PieceState.JOINED, "MUD", "REE")
            .piece("r1c2", PieceState.JOINED, "REE", "MUD")
            .piece("r1c3", PieceState.JOINED, "MUD", "REE");
    assertEquals(
        350, with(joined, brief -> counted(brief, 0, three)).fixedUse().joiningMillimetres());
  }

  @Test
  void theEdgedPartIsSettled() {
    Counted ree = count(List.of(), List.of(), List.of(), 30);
    Blanket blanket = with(worked(), brief -> counted(brief, 1, ree));
    assertEquals(1400, blanket.fixedUse().edgingMillimetres());
    assertEquals(2000, blanket.fixedUse().wholeEdgingMillimetres(1));
    expectFixed(blanket, 1050, 1400);
    Blanket ofOther = with(worked(), brief -> counted(brief, 0, ree));
    assertEquals(2000, ofOther.fixedUse().edgingMillimetres());
  }

  @Test
  void allThatIsWorkedInAYarnThatIsGoneIsSettled() {
    Blanket blanket = with(worked(), brief -> change(brief, 0, yarn -> yarn.withGone(true)));
    assertEquals(1000 + 2000 + 3000 + 1000, blanket.fixedUse().settledMillimetres(0));
    assertEquals(700, blanket.fixedUse().joiningMillimetres());
    Counted ree = count(List.of(), List.of(), List.of(), 25);
    Blanket edged =
        with(worked(), brief -> change(counted(brief, 1, ree), 1, yarn -> yarn.withGone(true)));
    assertEquals(1500, edged.fixedUse().edgingMillimetres());
    assertEquals(2000 + 1000, edged.fixedUse().settledMillimetres(1));
    Blanket gone = with(worked(), brief -> change(brief, 1, yarn -> yarn.withGone(true)));
    assertEquals(2000, gone.fixedUse().edgingMillimetres());
  }

  private static PileEntry pile(int count, int out, Set<String> counted, String... codes) {
    return new PileEntry(PieceKind.SQUARE, List.of(codes), count, counted, out);
  }

  @Test
  void whatStaysOutIsUsedAndWhatIsBeyondTheStockIsNot() {
    // five pieces hold 10 m of REE, of which there are 9; two of them stay out, with 1 m of MUD
    // each
    Blanket blanket =
        with(row(), brief -> brief.withPile(List.of(pile(5, 2, Set.of(), "MUD", "REE"))));
    assertEquals(1000, blanket.fixedUse().pileBeyondMillimetres(1));
    assertEquals(0, blanket.fixedUse().pileBeyondMillimetres(0));
    assertEquals(4000, blanket.fixedUse().pileOutMillimetres(1));
    assertEquals(2000, blanket.fixedUse().pileOutMillimetres(0));
    expectFixed(blanket, 1050 + 2000, 2000 + 4000 - 1000);
    assertEquals(0, blanket.fixedUse().settledMillimetres(0));
  }

  @Test
  void whatThePileHoldsOfAYarnCountedSinceIsSettled() {
    Blanket blanket =
        with(
            row(),
            brief ->
                brief.withPile(
                    List.of(
                        pile(3, 0, Set.of("REE"), "MUD", "REE"),
                        pile(1, 0, Set.of(), "REE", "REE"))));
    assertEquals(6000, blanket.fixedUse().settledMillimetres(1));
    assertEquals(0, blanket.fixedUse().settledMillimetres(0));
    assertEquals(0, blanket.fixedUse().pileBeyondMillimetres(1));
    expectFixed(blanket, 1050, 2000 - 6000);
    Blanket gone =
        with(
            row(),
            brief ->
                change(
                    brief.withPile(List.of(pile(3, 0, Set.of(), "MUD", "REE"))),
                    0,
                    yarn -> yarn.withGone(true)));
    assertEquals(3000, gone.fixedUse().settledMillimetres(0));
  }

  /**
   * Squares of twice 20 stitches that take 2 m: with two tails of 15 cm a round, 700 mm for 37
   * loops. A round that goes on uncut spares its tails and the loop that joins it.
   */
  @Test
  void allAmountsAreInTheMakersHand() {
    Brief brief =
        BriefReader.read(
            SourceText.of(
                "brief.yaml",
                """
                format: lozengy-brief/1
                title: Two squares
                layout: { setting: straight, across: 2, down: 1 }
                stitches: { samples: [ { of: square, takes: 2 m } ] }
                motifs:
                  square:
                    side: 10 cm
                    rounds: [ { stitches: { sc: 20 } }, { stitches: { sc: 20 } } ]
                joining: { yarn: MUD, metres-per-metre: 3.5 }
                yarns: [ { code: MUD, colour: "#2c2a29", left: 100 m } ]
                """));
    Blanket reckoned = Blanket.of(brief);
    assertEquals(1000, reckoned.motifs().needMillimetres(PieceKind.SQUARE, 0, 0));
    assertEquals(0, reckoned.motifs().uncutMillimetres(PieceKind.SQUARE, 0));
    assertEquals(318, reckoned.motifs().uncutMillimetres(PieceKind.SQUARE, 1));
    assertEquals(350, reckoned.fixedUse().joiningMillimetres());
    Blanket loose =
        Blanket.of(brief.withStitching(brief.stitching().withHand(new BigDecimal(150))));
    assertEquals(1500, loose.motifs().needMillimetres(PieceKind.SQUARE, 0, 0));
    assertEquals(478, loose.motifs().uncutMillimetres(PieceKind.SQUARE, 1), "318.9 by half more");
    assertEquals(525, loose.fixedUse().joiningMillimetres());
  }
}
