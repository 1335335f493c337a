package lozengy.solver.explain.remedy;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.check.Subject;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** The steps of each remedy, their points of upset as the table of them says, and what they do. */
class RungsTest {

  private static final long PLENTY = 1_000_000;

  private static BlanketBuilder twoByThree() {
    return BlanketBuilder.straight(2, 3)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(2000, Tone.DARK))
        .yarns(2, Tone.DARK, PLENTY)
        .yarns(2, Tone.LIGHT, PLENTY);
  }

  private static BriefLine line(Blanket blanket, String path, RuleId rule) {
    return RuleBook.lines(blanket).stream()
        .filter(line -> line.path().toString().equals(path) && line.rule() == rule)
        .findFirst()
        .orElseThrow();
  }

  private static List<Move> moves(Relaxing relaxing, Blanket blanket, String path, RuleId rule) {
    return relaxing.ladders(blanket, line(blanket, path, rule)).stream()
        .flatMap(ladder -> ladder.rungs().stream())
        .toList();
  }

  /** Upset, change, and where and what it is in the brief. */
  private static List<String> rungs(Relaxing relaxing, Blanket blanket, String path, RuleId rule) {
    List<String> rungs = new ArrayList<>();
    for (Move move : moves(relaxing, blanket, path, rule)) {
      Remedy.Step step = move.step();
      rungs.add(
          "%d %s %s=%s"
              .formatted(move.upset(), step.change(), step.path(), step.value().orElse("nothing")));
    }
    return rungs;
  }

  private static Brief changed(
      Relaxing relaxing, Blanket blanket, String path, RuleId rule, int rung) {
    return moves(relaxing, blanket, path, rule).get(rung).change().apply(blanket.brief());
  }

  @Test
  void copiesCostThreeAndOneForEachPiece() {
    Blanket blanket = twoByThree().copies(2).build();
    assertEquals(
        List.of(
            "4 RaiseCopies[copies=OptionalInt[3]] rules.copies=3",
            "5 RaiseCopies[copies=OptionalInt[4]] rules.copies=4",
            "6 RaiseCopies[copies=OptionalInt[5]] rules.copies=5",
            "10 RaiseCopies[copies=OptionalInt.empty] rules.copies=free"),
        rungs(new RuleRelaxing(), blanket, "rules.copies", RuleId.COPIES));
    Brief free = changed(new RuleRelaxing(), blanket, "rules.copies", RuleId.COPIES, 3);
    assertEquals(OptionalInt.empty(), free.rules().copies());
    Brief three = changed(new RuleRelaxing(), blanket, "rules.copies", RuleId.COPIES, 0);
    assertEquals(OptionalInt.of(3), three.rules().copies());
    Blanket large =
        BlanketBuilder.straight(4, 4)
            .motif(PieceKind.SQUARE, round(1))
            .yarns(2, Tone.DARK, PLENTY)
            .copies(1)
            .build();
    List<Move> moves = moves(new RuleRelaxing(), large, "rules.copies", RuleId.COPIES);
    assertEquals(10, moves.get(13).upset(), "never more than giving the rule up");
    assertEquals(15, moves.size());
  }

  @Test
  void withinPieceCostsSixForEachStep() {
    Blanket blanket = twoByThree().within(WithinPiece.ALL_DIFFER).build();
    String path = "rules.within-piece";
    assertEquals(
        List.of(
            "6 LetRoundsMatch[within=ADJACENT_DIFFER] rules.within-piece=adjacent-differ",
            "12 LetRoundsMatch[within=FREE] rules.within-piece=free"),
        rungs(new RuleRelaxing(), blanket, path, RuleId.WITHIN_PIECE));
    assertEquals(
        List.of("6 LetRoundsMatch[within=FREE] rules.within-piece=free"),
        rungs(new RuleRelaxing(), twoByThree().build(), path, RuleId.WITHIN_PIECE));
    assertEquals(
        WithinPiece.FREE,
        changed(new RuleRelaxing(), blanket, path, RuleId.WITHIN_PIECE, 1).rules().withinPiece());
  }

  @Test
  void keepingLessBackCostsOneAndOneForEachFivePercent() {
    Blanket blanket = twoByThree().keepBack(6.5).build();
    assertEquals(
        List.of(
            "2 KeepLessBack[percent=6.0] rules.keep-back=6 %",
            "2 KeepLessBack[percent=5.0] rules.keep-back=5 %",
            "2 KeepLessBack[percent=4.0] rules.keep-back=4 %",
            "2 KeepLessBack[percent=3.0] rules.keep-back=3 %",
            "2 KeepLessBack[percent=2.0] rules.keep-back=2 %",
            "3 KeepLessBack[percent=1.0] rules.keep-back=1 %",
            "3 KeepLessBack[percent=0.0] rules.keep-back=0 %"),
        rungs(new RuleRelaxing(), blanket, "rules.keep-back", RuleId.YARN_TOTALS));
    assertEquals(
        4,
        changed(new RuleRelaxing(), blanket, "rules.keep-back", RuleId.YARN_TOTALS, 2)
            .rules()
            .keepBackPercent());
  }

  /** To what pairs of yarns differ by, rounded down to a tenth, and to 0. */
  @Test
  void lowerContrastCostsThreeAndOneForEachFive() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.DARK, new Srgb(0, 0, 0), PLENTY)
            .yarn(Tone.DARK, new Srgb(60, 60, 60), PLENTY)
            .yarn(Tone.DARK, new Srgb(255, 255, 255), PLENTY)
            .minContrast(25)
            .build();
    double near = Math.floor(blanket.yarns().difference(0, 1) * 10) / 10;
    assertTrue(near > 15 && near < 20, "difference " + near);
    String path = "rules.min-contrast";
    assertEquals(
        List.of(
            "5 LowerContrast[minContrast=%s] rules.min-contrast=%s".formatted(near, near),
            "8 LowerContrast[minContrast=0.0] rules.min-contrast=0"),
        rungs(new RuleRelaxing(), blanket, path, RuleId.NEIGHBOUR_BORDERS));
    Brief changed = changed(new RuleRelaxing(), blanket, path, RuleId.NEIGHBOUR_BORDERS, 0);
    assertEquals(near, changed.rules().minContrast());
  }

  @Test
  void aBallCostsTwo() {
    Blanket blanket = twoByThree().build();
    StockRelaxing relaxing = new StockRelaxing();
    List<String> rungs = rungs(relaxing, blanket, "yarns[1]", RuleId.YARN_TOTALS);
    assertEquals(40, rungs.size());
    assertEquals("2 BuyBalls[yarn=1, balls=1] yarns[1].balls=1", rungs.get(0));
    assertEquals("80 BuyBalls[yarn=1, balls=40] yarns[1].balls=40", rungs.get(39));
    Brief three = changed(relaxing, blanket, "yarns[1]", RuleId.YARN_TOTALS, 2);
    // 110 m a ball
    assertEquals(PLENTY + 330_000, three.yarns().get(1).stockMillimetres());
    assertEquals(PLENTY, three.yarns().get(0).stockMillimetres());
    List<Yarn> yarns = new ArrayList<>(blanket.brief().yarns());
    yarns.set(0, yarns.get(0).withBall(Optional.empty()));
    yarns.set(1, yarns.get(1).withGone(true));
    Blanket other = Blanket.ofUnjudged(blanket.brief().withYarns(yarns));
    assertEquals(List.of(), rungs(relaxing, other, "yarns[1]", RuleId.YARN_TOTALS));
    assertEquals(
        "4 BuyLength[yarn=0, millimetres=20000] yarns[0].left=1020 m",
        rungs(relaxing, other, "yarns[0]", RuleId.YARN_TOTALS).get(1));
    Brief longer = changed(relaxing, other, "yarns[0]", RuleId.YARN_TOTALS, 1);
    assertEquals(PLENTY + 20_000, longer.yarns().get(0).stockMillimetres());
    Blanket bought = StockRelaxing.with(blanket, new int[] {0, 2, 0, 1});
    assertEquals(
        List.of(PLENTY, PLENTY + 220_000, PLENTY, PLENTY + 130_000),
        IntStream.range(0, 4).mapToObj(yarn -> bought.yarn(yarn).stockMillimetres()).toList());
    assertEquals(other.brief(), StockRelaxing.with(other, new int[4]).brief());
  }

  /** What was left when a yarn was counted grows by what is bought. */
  @Test
  void ballsOfACountedYarn() {
    Blanket blanket = twoByThree().build();
    List<Yarn> yarns = new ArrayList<>(blanket.brief().yarns());
    Counted counted = new Counted(new YarnAmount.Length(5_500), List.of(), List.of(), List.of(), 0);
    yarns.set(1, yarns.get(1).withCount(Optional.of(counted)));
    Blanket other = Blanket.ofUnjudged(blanket.brief().withYarns(yarns));
    StockRelaxing relaxing = new StockRelaxing();
    assertEquals(
        "4 BuyBalls[yarn=1, balls=2] yarns[1].counted.left=225.5 m",
        rungs(relaxing, other, "yarns[1]", RuleId.YARN_TOTALS).get(1));
    Brief two = changed(relaxing, other, "yarns[1]", RuleId.YARN_TOTALS, 1);
    assertEquals(225_500, two.yarns().get(1).stockMillimetres());
  }

  @Test
  void whatIsBoughtAndHowManyRowsAreNoChangesOfALine() {
    Blanket blanket = twoByThree().copies(5).build();
    BriefLine stock = line(blanket, "yarns[0]", RuleId.YARN_TOTALS);
    assertEquals(List.of(), Relaxing.ofLine(blanket, stock));
    assertEquals(2, Relaxing.all(blanket, stock).size());
    BriefLine copies = line(blanket, "rules.copies", RuleId.COPIES);
    List<Ladder> ladders = Relaxing.ofLine(blanket, copies);
    assertEquals(1, ladders.size());
    assertEquals("rules.copies", ladders.get(0).rungs().get(0).step().path().toString());
  }

  /**
   * Of a note about several pieces the one that is freed keeps what is worked and what is banned.
   */
  @Test
  void whatIsWorkedAndBannedStaysWhereALockGoes() {
    NoteRelaxing relaxing = new NoteRelaxing();
    Blanket begun = twoByThree().begun("row1", 1, "C", "A").build();
    String path = "pieces[0] r1c1";
    assertEquals(
        List.of("2 FreePieces[pieces=[0], whole=false, bans=false] pieces[0]=nothing"),
        rungs(relaxing, begun, path, RuleId.LOCKS));
    Blanket freed = Blanket.ofUnjudged(changed(relaxing, begun, path, RuleId.LOCKS, 0));
    assertEquals(List.of(2, -1), List.of(freed.locked(0, 0), freed.locked(0, 1)));
    assertEquals(1, freed.roundsWorked(0));
    assertEquals(List.of(2, 0), List.of(freed.locked(1, 0), freed.locked(1, 1)));
    assertEquals(1, freed.roundsWorked(1));
    Blanket alone = twoByThree().begun("r1c1", 1, "C", "A").build();
    Blanket bare = Blanket.ofUnjudged(changed(relaxing, alone, path, RuleId.LOCKS, 0));
    assertEquals(List.of(2, -1), List.of(bare.locked(0, 0), bare.locked(0, 1)));
    assertEquals(1, bare.roundsWorked(0));
    // where no more is locked than is worked, it is to be worked anew
    Blanket worked = twoByThree().begun("row1", 1, "C", null).build();
    Blanket anew = Blanket.ofUnjudged(changed(relaxing, worked, path, RuleId.LOCKS, 0));
    assertEquals(List.of(-1, 2), List.of(anew.locked(0, 0), anew.locked(1, 0)));
    assertEquals(0, anew.roundsWorked(0));
    PieceNote note =
        new PieceNote(
            List.of("row1"),
            List.of(Optional.empty(), Optional.of("A")),
            PieceState.PLANNED,
            Set.of("B"));
    Blanket banned = Blanket.ofUnjudged(twoByThree().build().brief().withPieces(List.of(note)));
    assertEquals(
        List.of("2 FreePieces[pieces=[0], whole=false, bans=true] pieces[0]=nothing"),
        rungs(relaxing, banned, path, RuleId.LOCKS));
    Blanket open = Blanket.ofUnjudged(changed(relaxing, banned, path, RuleId.LOCKS, 0));
    assertEquals(List.of(-1, 0), List.of(open.locked(0, 1), open.locked(1, 1)));
    assertTrue(open.banned(0, 1) && open.banned(1, 1));
  }

  @Test
  void aRowLessCostsTwelve() {
    SizeRelaxing relaxing = new SizeRelaxing();
    Blanket blanket =
        BlanketBuilder.straight(2, 6)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(2, Tone.DARK, 6_000)
            .build();
    assertEquals(
        List.of(
            "12 WorkFewerRows[rows=1, down=5] layout.down=5",
            "24 WorkFewerRows[rows=2, down=4] layout.down=4"),
        rungs(relaxing, blanket, "yarns[0]", RuleId.YARN_TOTALS));
    assertEquals(4, changed(relaxing, blanket, "yarns[0]", RuleId.YARN_TOTALS, 1).layout().down());
    // what has its place stays where it is
    Blanket held = twoByThree().note("r1c1", PieceState.PLANNED, "C", "A").build();
    assertEquals(List.of(), rungs(relaxing, held, "yarns[0]", RuleId.YARN_TOTALS));
    Blanket banned = twoByThree().ban("r3c1", "A").build();
    assertEquals(List.of(), rungs(relaxing, banned, "yarns[0]", RuleId.YARN_TOTALS));
    Blanket above = twoByThree().ban("r1c1", "A").build();
    assertEquals(
        List.of("12 WorkFewerRows[rows=1, down=2] layout.down=2"),
        rungs(relaxing, above, "yarns[0]", RuleId.YARN_TOTALS));
  }

  @Test
  void anotherToneCostsFive() {
    Blanket blanket = twoByThree().build();
    String path = "motifs.square.rounds[0].tone";
    assertEquals(
        List.of(
            "5 AllowTone[kind=SQUARE, round=0, tone=DARK] motifs.square.rounds[0].tone=[dark,"
                + " light]"),
        rungs(new ToneRelaxing(), blanket, path, RuleId.TONES));
    assertEquals(
        EnumSet.of(Tone.LIGHT, Tone.DARK),
        EnumSet.copyOf(
            changed(new ToneRelaxing(), blanket, path, RuleId.TONES, 0)
                .motifs()
                .get(PieceKind.SQUARE)
                .rounds()
                .get(0)
                .tones()));
  }

  @Test
  void locksAndBansCostTwoWorkEightOrFourteen() {
    NoteRelaxing relaxing = new NoteRelaxing();
    Blanket blanket =
        twoByThree()
            .note("r1c1", PieceState.PLANNED, null, "A")
            .note("r1c2", PieceState.MADE, "C", "B")
            .note("r2c1", PieceState.JOINED, "D", "B")
            .ban("r2c2", "A")
            .begun("r3c1", 1, "C", null)
            .build();
    assertEquals(
        List.of("2 FreePieces[pieces=[0], whole=true, bans=false] pieces[0]=nothing"),
        rungs(relaxing, blanket, "pieces[0] r1c1", RuleId.LOCKS));
    assertEquals(
        List.of("8 WorkAnew[piece=1, state=MADE, whole=true, bans=false] pieces[1]=nothing"),
        rungs(relaxing, blanket, "pieces[1] r1c2", RuleId.LOCKS));
    assertEquals(
        List.of("14 WorkAnew[piece=2, state=JOINED, whole=true, bans=false] pieces[2]=nothing"),
        rungs(relaxing, blanket, "pieces[2] r2c1", RuleId.LOCKS));
    assertEquals(
        List.of("2 LiftBan[codes=[A], at=r2c2, whole=true] pieces[3].not=nothing"),
        rungs(relaxing, blanket, "pieces[3].not r2c2", RuleId.BANS));
    assertEquals(
        List.of("8 WorkAnew[piece=4, state=PLANNED, whole=true, bans=false] pieces[4]=nothing"),
        rungs(relaxing, blanket, "pieces[4] r3c1", RuleId.LOCKS));
    Brief anew = changed(relaxing, blanket, "pieces[1] r1c2", RuleId.LOCKS, 0);
    Blanket after = Blanket.ofUnjudged(anew);
    assertEquals(PieceState.PLANNED, after.state(1));
    assertEquals(-1, after.locked(1, 0));
    assertEquals(PieceState.JOINED, after.state(2));
    Blanket lifted =
        Blanket.ofUnjudged(changed(relaxing, blanket, "pieces[3].not r2c2", RuleId.BANS, 0));
    assertTrue(blanket.banned(3, 0) && !lifted.banned(3, 0));
    assertEquals(1, lifted.locked(2, 1), "the others stay");
  }

  @Test
  void aPieceOfThePileCostsEight() {
    PileEntry entry = new PileEntry(PieceKind.SQUARE, List.of("C", "A"), 3, Set.of());
    PileEntry one = new PileEntry(PieceKind.SQUARE, List.of("C", "B"), 1, Set.of());
    Blanket blanket =
        Blanket.ofUnjudged(twoByThree().build().brief().withPile(List.of(one, entry)));
    String left = "LeavePieces[entry=" + entry + ", fewer=";
    assertEquals(
        List.of("8 " + left + "1] pile[1].count=2", "16 " + left + "2] pile[1].count=1"),
        rungs(new PileRelaxing(), blanket, "pile[1]", RuleId.PILE));
    assertEquals(List.of(), rungs(new PileRelaxing(), blanket, "pile[0]", RuleId.PILE));
    assertEquals(
        List.of(one, entry.withCount(1)),
        changed(new PileRelaxing(), blanket, "pile[1]", RuleId.PILE, 1).pile());
  }

  /** The yarns of which there is most come first. */
  @Test
  void joiningAndEdgingInAnotherYarn() {
    Blanket blanket =
        Blanket.ofUnjudged(
            BlanketBuilder.straight(2, 2)
                .motif(PieceKind.SQUARE, round(1000))
                .yarn(Tone.DARK, 1_000)
                .yarn(Tone.DARK, 2_000)
                .yarn(Tone.DARK, 4_000)
                .yarn(Tone.DARK, 3_000)
                .joining("C", 1)
                .build()
                .brief()
                .withEdging(List.of(new YarnUse("A", 2))));
    FinishRelaxing relaxing = new FinishRelaxing();
    assertEquals(
        List.of("4 JoinIn[yarn=3] joining.yarn=D", "4 JoinIn[yarn=1] joining.yarn=B"),
        rungs(relaxing, blanket, "joining", RuleId.YARN_TOTALS));
    assertEquals(
        List.of(
            "3 EdgeIn[yarn=2] edging.yarn=C",
            "3 EdgeIn[yarn=3] edging.yarn=D",
            "6 DropEdging[] edging=nothing"),
        rungs(relaxing, blanket, "edging", RuleId.YARN_TOTALS));
    Brief edged = changed(relaxing, blanket, "edging", RuleId.YARN_TOTALS, 1);
    assertEquals("D", edged.edging().get(0).yarn());
    assertEquals("C", ((YarnUse) edged.joining().orElseThrow()).yarn());
    Brief joined = changed(relaxing, blanket, "joining", RuleId.YARN_TOTALS, 1);
    assertEquals("B", ((YarnUse) joined.joining().orElseThrow()).yarn());
    assertEquals("A", joined.edging().get(0).yarn());
    assertEquals(List.of(), changed(relaxing, blanket, "edging", RuleId.YARN_TOTALS, 2).edging());
  }

  private static Blanket looked(Look look) {
    return Blanket.ofUnjudged(twoByThree().build().brief().withLook(look));
  }

  @Test
  void whatTheLookAsksFor() {
    LookRelaxing relaxing = new LookRelaxing();
    Look.Zone first = new Look.Zone(new Where(List.of("row1"), List.of()), List.of("A", "C"));
    Look.Zone second = new Look.Zone(new Where(List.of("row2"), List.of()), List.of("B", "D"));
    Blanket zones = looked(Look.NONE.withZones(List.of(first, second)));
    assertEquals(
        List.of("4 DropZone[codes=[B, D]] look.zones[1]=nothing"),
        rungs(relaxing, zones, "look.zones[1]", RuleId.ZONES));
    assertEquals(
        List.of(first), changed(relaxing, zones, "look.zones[1]", RuleId.ZONES, 0).look().zones());
    Blanket symmetric = looked(Look.NONE.withSymmetry(Symmetry.HALF_TURN));
    assertEquals(
        List.of("8 DropSymmetry[] look.symmetry=nothing"),
        rungs(relaxing, symmetric, "look.symmetry", RuleId.SYMMETRY));
    assertEquals(
        Symmetry.NONE,
        changed(relaxing, symmetric, "look.symmetry", RuleId.SYMMETRY, 0).look().symmetry());
    Blanket given = looked(Look.NONE.withBorders("A"));
    assertEquals(
        List.of("8 FreeBorders[] look.borders=nothing"),
        rungs(relaxing, given, "look.borders", RuleId.BORDERS));
    assertEquals(
        List.of(), changed(relaxing, given, "look.borders", RuleId.BORDERS, 0).look().borders());
    Look.Pair pair = new Look.Pair("A", "B");
    Blanket apart = looked(Look.NONE.withApart(List.of(pair)));
    assertEquals(
        List.of("3 LetMeet[first=A, second=B] look.apart[0]=nothing"),
        rungs(relaxing, apart, "look.apart[0]", RuleId.APART));
    assertEquals(
        List.of(), changed(relaxing, apart, "look.apart[0]", RuleId.APART, 0).look().apart());
  }

  @Test
  void countsCostOneAndOneForEachPiece() {
    LookRelaxing relaxing = new LookRelaxing();
    Where all = new Where(List.of("all"), List.of());
    Look.Count both = new Look.Count("A", all, 2, OptionalInt.of(3));
    Look.Count least = new Look.Count("B", all, 6, OptionalInt.empty());
    Blanket blanket = looked(Look.NONE.withCounts(List.of(both, least)));
    String fewer = "AskForFewer[count=" + both + ", atLeast=";
    assertEquals(
        List.of(
            "2 " + fewer + "OptionalInt[1]] look.counts[0].at-least=1",
            "3 " + fewer + "OptionalInt.empty] look.counts[0].at-least=nothing"),
        rungs(relaxing, blanket, "look.counts[0].at-least", RuleId.COUNTS));
    String more = "AllowMore[count=" + both + ", atMost=";
    assertEquals(
        List.of(
            "2 " + more + "OptionalInt[4]] look.counts[0].at-most=4",
            "3 " + more + "OptionalInt[5]] look.counts[0].at-most=5",
            "4 " + more + "OptionalInt.empty] look.counts[0].at-most=nothing"),
        rungs(relaxing, blanket, "look.counts[0].at-most", RuleId.COUNTS));
    List<String> alone = rungs(relaxing, blanket, "look.counts[1].at-least", RuleId.COUNTS);
    assertEquals(
        "5 AskForFewer[count=" + least + ", atLeast=OptionalInt.empty] look.counts[1]=nothing",
        alone.get(5));
    assertEquals(
        List.of("2", "3", "4", "5", "5", "5"), alone.stream().map(s -> s.substring(0, 1)).toList());
    assertEquals(
        List.of(new Look.Count("A", all, 1, OptionalInt.of(3)), least),
        changed(relaxing, blanket, "look.counts[0].at-least", RuleId.COUNTS, 0).look().counts());
    assertEquals(
        List.of(new Look.Count("A", all, 2, OptionalInt.of(5)), least),
        changed(relaxing, blanket, "look.counts[0].at-most", RuleId.COUNTS, 1).look().counts());
    assertEquals(
        List.of(new Look.Count("A", all, 2, OptionalInt.empty()), least),
        changed(relaxing, blanket, "look.counts[0].at-most", RuleId.COUNTS, 2).look().counts());
  }

  @Test
  void piecesOfOneNoteAreFreedTogether() {
    Blanket blanket = twoByThree().note("row1", PieceState.PLANNED, null, "A").build();
    NoteRelaxing relaxing = new NoteRelaxing();
    Remedy.Step one = moves(relaxing, blanket, "pieces[0] r1c1", RuleId.LOCKS).get(0).step();
    Remedy.Step other = moves(relaxing, blanket, "pieces[0] r1c2", RuleId.LOCKS).get(0).step();
    assertEquals(new Relaxation.FreePieces(List.of(0), false, false), one.change());
    assertEquals(
        List.of(
            new Remedy.Step(
                new Relaxation.FreePieces(List.of(0, 1), false, false),
                one.path(),
                Optional.empty())),
        FreedTogether.of(List.of(one, other)));
    Remedy.Step last =
        new Remedy.Step(
            new Relaxation.FreePieces(List.of(1), true, true), one.path(), Optional.empty());
    Remedy.Step copies =
        new Remedy.Step(
            new Relaxation.RaiseCopies(OptionalInt.of(2)), one.path(), Optional.of("2"));
    assertEquals(
        List.of(
            new Remedy.Step(
                new Relaxation.FreePieces(List.of(0, 1), true, true), one.path(), Optional.empty()),
            copies),
        FreedTogether.of(List.of(one, copies, last)));
    Brief freed = changed(relaxing, blanket, "pieces[0] r1c1", RuleId.LOCKS, 0);
    assertEquals(-1, Blanket.ofUnjudged(freed).locked(0, 1));
    assertEquals(0, Blanket.ofUnjudged(freed).locked(1, 1));
  }

  @Test
  void eachChangeHasACodeAndACaseOfItsOwn() {
    Where all = new Where(List.of("all"), List.of());
    Look.Count count = new Look.Count("A", all, 2, OptionalInt.of(3));
    Subject subject = line(twoByThree().copies(2).build(), "rules.copies", RuleId.COPIES).subject();
    List<Relaxation> changes =
        List.of(
            new Relaxation.BuyBalls(1, 2),
            new Relaxation.BuyLength(1, 2),
            new Relaxation.FreePieces(List.of(1), true, true),
            new Relaxation.WorkAnew(1, PieceState.MADE, true, true),
            new Relaxation.LiftBan(List.of("A"), "r1c1", true),
            new Relaxation.GiveUp(subject),
            new Relaxation.DropSymmetry(),
            new Relaxation.FreeBorders(),
            new Relaxation.DropZone(List.of("A")),
            new Relaxation.LetMeet("A", "B"),
            new Relaxation.AskForFewer(count, OptionalInt.of(1)),
            new Relaxation.AllowMore(count, OptionalInt.of(1)),
            new Relaxation.AllowTone(PieceKind.SQUARE, 1, Tone.DARK),
            new Relaxation.EdgeIn(1),
            new Relaxation.JoinIn(1),
            new Relaxation.DropEdging(),
            new Relaxation.LeavePieces(
                new PileEntry(PieceKind.SQUARE, List.of("A"), 2, Set.of()), 1),
            new Relaxation.WorkFewerRows(1, 2),
            new Relaxation.LowerContrast(2),
            new Relaxation.RaiseCopies(OptionalInt.of(2)),
            new Relaxation.LetRoundsMatch(WithinPiece.FREE),
            new Relaxation.KeepLessBack(3));
    Relaxation.Cases<?> called =
        (Relaxation.Cases<?>)
            Proxy.newProxyInstance(
                Relaxation.Cases.class.getClassLoader(),
                new Class<?>[] {Relaxation.Cases.class},
                (proxy, method, arguments) -> List.of(method.getName(), arguments[0]));
    for (Relaxation change : changes) {
      String name = change.getClass().getSimpleName();
      String words = name.replaceAll("(?<=.)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
      boolean gives = change instanceof Relaxation.GiveUp;
      assertEquals(gives ? words + "-" + subject.code() : words, change.code());
      String method = name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
      assertEquals(List.of(method, change), change.in(called));
    }
    assertEquals(
        Stream.of(Relaxation.class.getPermittedSubclasses()).collect(Collectors.toSet()),
        changes.stream().map(Object::getClass).collect(Collectors.toSet()));
  }
}
