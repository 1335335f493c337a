package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.input.Mistake;
import lozengy.model.reading.BriefJudge;
import org.junit.jupiter.api.Test;

/** Centres that differ on a seam, yarns kept apart as rounds of a piece, and dye lots. */
class ClashRulesTest extends RuleTest {

  private static Blanket centres(Blanket blanket) {
    Brief brief = blanket.brief();
    return Blanket.ofUnjudged(brief.withRules(brief.rules().withCentresDiffer(true)));
  }

  private static Blanket apart(Blanket blanket, Look.Meeting on) {
    Brief brief = blanket.brief();
    List<Look.Pair> pairs = List.of(new Look.Pair("MUD", "REE", on));
    return Blanket.ofUnjudged(brief.withLook(brief.look().withApart(pairs)));
  }

  @Test
  void centresMayMatchWhereABriefDoesNotAskOtherwise() {
    expect(new NeighbourCentresRule(), fiveSquares(2).build(), "MUD,REE ~,~ MUD,SND ~,~ ~,~");
  }

  @Test
  void centresOnASeamDifferAndOthersNeedNot() {
    expect(
        new NeighbourCentresRule(),
        centres(fiveSquares(2).build()),
        "MUD,REE MUD,REE MUD,SAM ~,MUD SND,REE",
        "r1c1 and r2c1 are joined along a side and both have the centre Tidal mud (MUD)",
        "r1c2 and r2c1 are joined along a side and both have the centre Tidal mud (MUD)");
  }

  @Test
  void twoJoinedPiecesAreAFact() {
    Blanket joined =
        fiveSquares(2)
            .piece("r1c1", PieceState.JOINED, "MUD", "REE")
            .piece("r2c1", PieceState.JOINED, "MUD", "SAM")
            .build();
    expect(
        new NeighbourCentresRule(),
        centres(joined),
        "MUD,REE MUD,REE MUD,SAM ~,~ ~,~",
        "r1c2 and r2c1 are joined along a side and both have the centre Tidal mud (MUD)");
  }

  @Test
  void locksThatBreakItAreToldWithWhatWouldHelp() {
    Brief brief =
        centres(
                fiveSquares(2)
                    .piece("r1c1", PieceState.PLANNED, "MUD", null)
                    .piece("r2c1", PieceState.PLANNED, "MUD", null)
                    .build())
            .brief();
    List<Mistake> mistakes = BriefJudge.mistakes(brief);
    assertEquals(1, mistakes.size());
    assertEquals(
        "r1c1 and r2c1 are joined along a side and both have the centre Tidal mud (MUD)",
        mistakes.get(0).found());
    assertEquals("Hold another yarn there, or change neighbour-centres", mistakes.get(0).remedy());
  }

  @Test
  void yarnsAreKeptApartWhereTheBriefSays() {
    String sequences = "MUD,REE MUD,SAM MUD,REE ~,~ ~,REE";
    Blanket blanket = fiveSquares(2).build();
    expect(new ApartRule(), apart(blanket, Look.Meeting.SEAMS), sequences);
    expect(
        new ApartRule(),
        apart(blanket, Look.Meeting.ROUNDS),
        sequences,
        "r1c1: rounds 1 and 2 have Tidal mud (MUD) and Reed (REE), which are to be kept apart",
        "r2c1: rounds 1 and 2 have Tidal mud (MUD) and Reed (REE), which are to be kept apart");
    expect(
        new ApartRule(),
        apart(blanket, Look.Meeting.BOTH),
        "SND,MUD ~,~ SND,REE ~,~ REE,MUD",
        "r1c1 and r2c1 are joined along a side, and their borders Tidal mud (MUD) and Reed (REE)"
            + " are to be kept apart",
        "r2c1 and r3c2 are joined along a side, and their borders Reed (REE) and Tidal mud (MUD)"
            + " are to be kept apart",
        "r3c2: rounds 1 and 2 have Reed (REE) and Tidal mud (MUD), which are to be kept apart");
  }

  @Test
  void dyeLotsOfOneShadeDoNotMeet() {
    String sequences = "SND,BAR BAR,MUD MUD,BAR MUD,BAR REE,SND";
    Blanket plain = fiveSquares(2).build();
    expect(new LotsRule(), plain, sequences);
    expect(new LotsRule(), lots(plain, false, "BAR", "SND"), sequences);
    expect(
        new LotsRule(),
        lots(plain, true, "BAR", "SND"),
        sequences,
        "r2c1 and r3c2 are joined along a side, and their borders Barley (BAR) and Sand (SND) are"
            + " dye lots of one shade",
        "r1c1: rounds 1 and 2 have Sand (SND) and Barley (BAR), which are dye lots of one shade");
  }

  @Test
  void lotsThatAreTiedOverAnotherAreOfOneShade() {
    Blanket chain = lots(lots(fiveSquares(2).build(), true, "BAR", "SND"), true, "SND", "HEA");
    expect(
        new LotsRule(),
        chain,
        "HEA,BAR ~,~ ~,HEA MUD,~ ~,~",
        "r1c1 and r2c1 are joined along a side, and their borders Barley (BAR) and Heather (HEA)"
            + " are dye lots of one shade",
        "r1c1: rounds 1 and 2 have Heather (HEA) and Barley (BAR), which are dye lots of one"
            + " shade");
  }

  @Test
  void lotsInWhatIsWorkedAreAFact() {
    Blanket worked =
        fiveSquares(2)
            .piece("r1c1", PieceState.JOINED, "SND", "BAR")
            .piece("r2c1", PieceState.JOINED, "MUD", "SND")
            .piece("r1c2", PieceState.MADE, "SND", "BAR")
            .build();
    expect(
        new LotsRule(),
        lots(worked, true, "BAR", "SND"),
        "SND,BAR SND,BAR MUD,SND ~,~ ~,~",
        "r1c2 and r2c1 are joined along a side, and their borders Barley (BAR) and Sand (SND) are"
            + " dye lots of one shade");
  }

  private static Blanket lots(Blanket blanket, boolean apart, String lot, String shade) {
    Brief brief = blanket.brief();
    List<Yarn> yarns =
        brief.yarns().stream()
            .map(yarn -> yarn.code().equals(lot) ? yarn.withLotOf(Optional.of(shade)) : yarn)
            .toList();
    return Blanket.ofUnjudged(brief.withYarns(yarns).withRules(brief.rules().withLotsApart(apart)));
  }
}
