package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** Zones, given borders, symmetry and counts, and the pile with what it makes of other rules. */
class LookRulesTest extends RuleTest {

  private static Blanket looking(BlanketBuilder builder, UnaryOperator<Look> change) {
    Blanket plain = builder.build();
    return Blanket.ofUnjudged(plain.brief().withLook(change.apply(plain.brief().look())));
  }

  private static Blanket piled(Blanket blanket, PileEntry... pile) {
    return Blanket.ofUnjudged(blanket.brief().withPile(List.of(pile)));
  }

  private static PileEntry pile(int count, String... codes) {
    return new PileEntry(PieceKind.SQUARE, List.of(codes), count, Set.of());
  }

  private static Look.Zone zone(String at, int round, String... only) {
    return new Look.Zone(new Where(List.of(at), List.of(round)), List.of(only));
  }

  @Test
  void aZoneTakesItsYarnsAlone() {
    Blanket blanket =
        looking(
            fiveSquares(2)
                .piece("r3c1", PieceState.MADE, "MUD", "REE")
                .begun("r3c2", 1, "REE", null),
            look -> look.withZones(List.of(zone("all", 1, "MUD", "SAM"), zone("r1c2", 0, "HEA"))));
    expect(new ZonesRule(), blanket, "MUD,REE SAM,HEA ~,~ MUD,REE REE,REE");
    List<Fault> faults =
        expect(
            new ZonesRule(),
            blanket,
            "REE,REE ~,SAM HEA,~ SND,REE SND,REE",
            "r1c1: round 1 has Reed (REE), but its zone takes only MUD and SAM",
            "r2c1: round 1 has Heather (HEA), but its zone takes only MUD and SAM",
            "r1c2: the border has Samphire (SAM), but its zone takes only HEA");
    assertEquals(new Fault.Zoned(List.of("MUD", "SAM")), faults.get(0).detail());
    assertEquals(List.of(0), faults.get(0).rounds());
    assertEquals(List.of(1), faults.get(2).rounds());
  }

  @Test
  void bordersAreThoseThatTheLookGives() {
    Blanket blanket =
        looking(
            fiveSquares(2).piece("r3c1", PieceState.MADE, "MUD", "SND"),
            look -> look.withBorders("MUD", "REE"));
    // rows 1 and 3 take the first, row 2 between them the second
    expect(new BordersRule(), blanket, "SND,MUD SND,~ SND,REE MUD,SND SND,MUD");
    List<Fault> faults =
        expect(
            new BordersRule(),
            blanket,
            "SND,REE ~,MUD ~,MUD MUD,SND ~,MUD",
            "r1c1: the border has Reed (REE), but the look gives it Tidal mud (MUD)",
            "r2c1: the border has Tidal mud (MUD), but the look gives it Reed (REE)");
    assertEquals(List.of(1), faults.get(0).rounds());
    expect(new BordersRule(), fiveSquares(2).build(), "SND,REE ~,MUD");
  }

  @Test
  void imagesHaveTheSameYarns() {
    Blanket blanket = looking(fiveSquares(2), look -> look.withSymmetry(Symmetry.LEFT_RIGHT));
    expect(new SymmetryRule(), blanket, "MUD,REE MUD,REE SAM,HEA ~,SND BAR,SND");
    List<Fault> faults =
        expect(
            new SymmetryRule(),
            blanket,
            "MUD,REE SAM,REE SAM,HEA MUD,SND ~,BAR",
            "r1c1 and r1c2 are each other's images (left-right), but round 1 is Tidal mud (MUD) in the one and Samphire (SAM) in the other",
            "r3c1 and r3c2 are each other's images (left-right), but the border is Sand (SND) in the one and Barley (BAR) in the other");
    assertEquals(List.of(0, 1), faults.get(0).pieces());
    assertEquals(List.of(1), faults.get(1).rounds());
    expect(new SymmetryRule(), fiveSquares(2).build(), "MUD,REE SAM,REE");
    Blanket worked =
        looking(
            fiveSquares(2)
                .piece("r1c1", PieceState.MADE, "MUD", "REE")
                .piece("r1c2", PieceState.JOINED, "MUD", "REE"),
            look -> look.withSymmetry(Symmetry.LEFT_RIGHT));
    // sequences that are not what is worked: another rule's business
    expect(new SymmetryRule(), worked, "MUD,REE SAM,REE");
  }

  @Test
  void ofFourImagesEachIsHeldAgainstTheFirstThatIsKnown() {
    Blanket blanket =
        looking(
            BlanketBuilder.straight(2, 2).saltmarsh().motif(PieceKind.SQUARE, 1),
            look -> look.withSymmetry(Symmetry.BOTH));
    expect(
        new SymmetryRule(),
        blanket,
        "~ MUD REE MUD",
        "r1c2 and r2c1 are each other's images (both), but the border is Tidal mud (MUD) in the one and Reed (REE) in the other");
  }

  private static Look.Count count(int least, OptionalInt most) {
    return new Look.Count("MUD", Where.BORDERS, least, most);
  }

  @Test
  void asManyPiecesShowAYarnAsTheLookAsks() {
    Blanket few =
        looking(fiveSquares(2), look -> look.withCounts(List.of(count(2, OptionalInt.of(3)))));
    expect(new CountsRule(), few, "SND,MUD SND,MUD MUD,REE SND,MUD MUD,~");
    expect(new CountsRule(), few, "SND,MUD MUD,REE MUD,REE MUD,REE MUD,~");
    List<Fault> tooFew =
        expect(
            new CountsRule(),
            few,
            "SND,MUD MUD,REE MUD,REE MUD,REE MUD,REE",
            "1 of all pieces has Tidal mud (MUD) in the border, and at least 2 are asked for");
    assertEquals(List.of(0), tooFew.get(0).pieces());
    assertEquals("counts-too-few", tooFew.get(0).code());
    List<Fault> tooMany =
        expect(
            new CountsRule(),
            few,
            "SND,MUD MUD,MUD MUD,MUD MUD,MUD MUD,REE",
            "4 of all pieces have Tidal mud (MUD) in the border, and at most 3 are asked for");
    assertEquals("counts-too-many", tooMany.get(0).code());
    assertEquals(
        new Fault.Counted(count(2, OptionalInt.of(3)), OptionalInt.empty(), OptionalInt.of(3)),
        tooMany.get(0).detail());
    assertEquals(OptionalInt.of(2), ((Fault.Counted) tooFew.get(0).detail()).least());
  }

  @Test
  void whatWorkedPiecesShowBeyondACountIsAFact() {
    BlanketBuilder two =
        fiveSquares(2)
            .piece("r1c1", PieceState.MADE, "SND", "MUD")
            .piece("r1c2", PieceState.MADE, "SND", "MUD");
    Blanket most = looking(two, look -> look.withCounts(List.of(count(0, OptionalInt.of(1)))));
    expect(new CountsRule(), most, "SND,MUD SND,MUD SND,REE SND,REE SND,REE");
    expect(
        new CountsRule(),
        most,
        "SND,MUD SND,MUD SND,MUD SND,REE SND,REE",
        "3 of all pieces have Tidal mud (MUD) in the border, and at most 1 are asked for");
    Look.Count ofWorked =
        new Look.Count(
            "REE", new Where(List.of("r1c1", "r1c2"), List.of()), 1, OptionalInt.empty());
    expect(
        new CountsRule(),
        looking(two, look -> look.withCounts(List.of(ofWorked))),
        "SND,MUD SND,MUD");
  }

  @Test
  void everyPieceOfThePileHasAPlace() {
    Blanket blanket = piled(fiveSquares(2).build(), pile(2, "MUD", "REE"), pile(1, "SND", "BAR"));
    expect(new PileRule(), blanket, "MUD,REE MUD,REE SND,BAR SAM,HEA SAM,HEA");
    expect(new PileRule(), blanket, "MUD,~ ~,REE ~,~ SAM,HEA SAM,HEA");
    List<Fault> faults =
        expect(
            new PileRule(),
            blanket,
            "MUD,REE ~,BAR SAM,~ ~,HEA SAM,HEA",
            "1 finished square in Tidal mud (MUD), Reed (REE): on the pile, and has no place");
    assertEquals(new Fault.Unplaced(PieceKind.SQUARE, List.of(0, 3), 1), faults.get(0).detail());
    assertEquals(List.of(0, 3), faults.get(0).yarns());
    // a place that is made or begun takes none, nor one of another kind
    Blanket begun =
        piled(
            BlanketBuilder.filled(1, 1)
                .saltmarsh()
                .motif(PieceKind.SQUARE, 2)
                .motif(PieceKind.CORNER_TRIANGLE, 2)
                .begun("r1c1", 1, "MUD", null)
                .build(),
            pile(1, "MUD", "REE"));
    assertEquals(1, new PileRule().faults(begun, sequences(begun, "MUD,~ ~,~ MUD,REE")).size());
  }

  /** Rules about what is still to be worked find no fault with a piece from the pile. */
  @Test
  void aPieceFromThePileIsAFact() {
    Blanket plain =
        looking(
            fiveSquares(2)
                .rules(0, WithinPiece.ADJACENT_DIFFER, OptionalInt.of(1), 0)
                .ban("r1c1", "MUD"),
            look ->
                look.withZones(List.of(zone("r1c1", 1, "SND")))
                    .withApart(List.of(new Look.Pair("MUD", "REE", Look.Meeting.BOTH))));
    Blanket piled = piled(plain, pile(1, "MUD", "MUD"), pile(1, "MUD", "REE"));
    String laid = "MUD,MUD MUD,REE";
    for (Rule rule :
        List.of(new ZonesRule(), new BansRule(), new WithinPieceRule(), new ApartRule())) {
      assertEquals(List.of(), rule.faults(piled, sequences(piled, laid)), rule.id().word());
      int without = rule.faults(plain, sequences(plain, laid)).size();
      assertEquals(rule.id() == RuleId.BANS ? 2 : 1, without, rule.id().word());
    }
    // what may yet come to be a piece of the pile is none either
    assertEquals(List.of(), new BansRule().faults(piled, sequences(piled, "MUD,~")));
    assertEquals(List.of(), new BansRule().faults(piled, sequences(piled, "~,SND MUD,REE")));
    assertEquals(1, new BansRule().faults(plain, sequences(plain, "MUD,~")).size());
    // the pile has one of each
    Blanket two = piled(plain, pile(2, "MUD", "MUD"), pile(1, "MUD", "REE"));
    assertEquals(List.of(), new CopiesRule().faults(two, sequences(two, "MUD,MUD MUD,MUD")));
    assertEquals(1, new CopiesRule().faults(piled, sequences(piled, "MUD,MUD MUD,MUD")).size());
  }
}
