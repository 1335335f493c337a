package lozengy.solver.explain.argument;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.brief.Yarn;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.check.Subject.SeamPart;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.JoinedInBorders;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.constraint.TinyPiles;
import lozengy.solver.explain.argument.CountReason.Lack;
import lozengy.solver.explain.argument.Finding.Slot;
import lozengy.solver.explain.argument.RoundReason.Bar;
import lozengy.solver.explain.argument.SeamReason.Clash;
import org.junit.jupiter.api.Test;

/** What each direct argument finds on small blankets, reckoned by hand. Pieces go by rows. */
class FindingsTest {

  private static final long PLENTY = 1_000_000;
  private static final Set<Tone> DARK = Set.of(Tone.DARK);
  private static final Set<Tone> LIGHT = Set.of(Tone.LIGHT);
  private static final int A = 0;
  private static final int B = 1;
  private static final int C = 2;
  private static final int D = 3;

  /** Four squares of a light round of 1 m and a dark border of 2 m. */
  private static BlanketBuilder twoByTwo() {
    return BlanketBuilder.straight(2, 2)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(2000, Tone.DARK));
  }

  /** The same with plenty of two darks, A and B, and two lights, C and D. */
  private static BlanketBuilder ample() {
    return twoByTwo().yarns(2, Tone.DARK, PLENTY).yarns(2, Tone.LIGHT, PLENTY);
  }

  private static List<Finding> found(Argument argument, Blanket blanket) {
    return argument.findings(Requirements.all(blanket));
  }

  private static List<Reason> reasons(Argument argument, Blanket blanket) {
    return found(argument, blanket).stream().map(Finding::reason).toList();
  }

  private static void assertFinds(Argument argument, Blanket blanket, Reason... reasons) {
    assertEquals(List.of(reasons), reasons(argument, blanket));
  }

  /** What a brief asks for beside a rule. */
  private static Requirements without(Blanket blanket, RuleId rule) {
    return Requirements.of(
        blanket, RuleBook.lines(blanket).stream().filter(line -> line.rule() != rule).toList());
  }

  private static Set<Slot> slots(int round, int... pieces) {
    Set<Slot> slots = new LinkedHashSet<>();
    IntStream.of(pieces).forEach(piece -> slots.add(new Slot(piece, round)));
    return slots;
  }

  private static BitSet set(int... yarns) {
    BitSet set = new BitSet();
    IntStream.of(yarns).forEach(set::set);
    return set;
  }

  private static Blanket looked(BlanketBuilder builder, Look look) {
    return Blanket.ofUnjudged(builder.build().brief().withLook(look));
  }

  @Test
  void nothingIsFoundWhereABriefFits() {
    for (List<Argument> turn : Arguments.TURNS) {
      turn.forEach(argument -> assertFinds(argument, ample().build()));
    }
  }

  @Test
  void roundsThatNothingIsLeftFor() {
    EmptyRounds argument = new EmptyRounds();
    Blanket toneless = twoByTwo().yarns(2, Tone.DARK, PLENTY).build();
    assertFinds(argument, toneless, new RoundReason.NoSuchTone(List.of(0, 1, 2, 3), 0, LIGHT));
    Finding finding = found(argument, toneless).get(0);
    assertEquals(slots(0, 0, 1, 2, 3), finding.slots());
    assertEquals(4, argument.fewestOpen(toneless, finding));
    assertFinds(
        argument,
        ample().note("r1c1", PieceState.PLANNED, "A", null).build(),
        new RoundReason.LockBarred(0, 0, A, Bar.TONE, LIGHT, OptionalInt.empty()));
    assertFinds(
        argument,
        ample().note("r1c2", PieceState.PLANNED, null, "B").ban("r1c2", "B").build(),
        new RoundReason.LockBarred(1, 1, B, Bar.BAN, DARK, OptionalInt.empty()));
    assertFinds(
        argument,
        ample().ban("r2c2", "A", "B").build(),
        new RoundReason.NothingLeft(3, 1, DARK, List.of(A, B), Bar.BAN));
    Where first = new Where(List.of("r1c1"), List.of(Where.BORDER));
    Look zone = Look.NONE.withZones(List.of(new Look.Zone(first, List.of("C"))));
    assertFinds(
        argument,
        looked(ample(), zone),
        new RoundReason.NothingLeft(0, 1, DARK, List.of(A, B), Bar.ZONE));
    assertFinds(
        argument,
        looked(ample().note("r1c1", PieceState.PLANNED, null, "B"), zone),
        new RoundReason.LockBarred(0, 1, B, Bar.ZONE, DARK, OptionalInt.empty()));
    Look none =
        Look.NONE.withCounts(
            List.of(
                new Look.Count("B", first, 0, OptionalInt.of(0)),
                new Look.Count("A", first, 0, OptionalInt.of(0))));
    assertFinds(
        argument,
        looked(ample(), none),
        new RoundReason.NothingLeft(0, 1, DARK, List.of(A, B), Bar.COUNT));
    assertFinds(
        argument,
        looked(
            ample().note("r1c1", PieceState.PLANNED, null, "B"),
            Look.NONE.withCounts(List.of(new Look.Count("B", first, 0, OptionalInt.of(0))))),
        new RoundReason.LockBarred(0, 1, B, Bar.COUNT, DARK, OptionalInt.empty()));
    assertFinds(
        argument,
        looked(ample().note("r1c1", PieceState.PLANNED, null, "B"), Look.NONE.withBorders("A")),
        new RoundReason.LockBarred(0, 1, B, Bar.LOOK_BORDER, DARK, OptionalInt.of(A)));
    // counts of other pieces and other yarns rule nothing out here
    assertFinds(
        argument,
        looked(
            ample().note("r1c2", PieceState.PLANNED, null, "C"),
            Look.NONE.withCounts(List.of(new Look.Count("C", first, 0, OptionalInt.of(0))))),
        new RoundReason.LockBarred(1, 1, C, Bar.TONE, DARK, OptionalInt.empty()));
  }

  @Test
  void roundsThatMustDiffer() {
    StuckPieces argument = new StuckPieces();
    Blanket blanket =
        BlanketBuilder.straight(2, 2)
            .motif(PieceKind.SQUARE, round(1, Tone.DARK), round(1, Tone.LIGHT), round(1, Tone.DARK))
            .yarns(1, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .within(WithinPiece.ALL_DIFFER)
            .note("r1c2", PieceState.MADE, "A", "B", "A")
            .build();
    assertFinds(
        argument,
        blanket,
        new RoundReason.RoundsAlike(
            List.of(0, 2, 3), List.of(0, 2), WithinPiece.ALL_DIFFER, false, List.of(A)));
    Finding finding = found(argument, blanket).get(0);
    Set<Slot> slots = new HashSet<>(slots(0, 0, 2, 3));
    slots.addAll(slots(2, 0, 2, 3));
    assertEquals(slots, finding.slots());
    assertEquals(EnumSet.of(RuleId.WITHIN_PIECE), finding.rules());
    assertEquals(3, argument.fewestOpen(blanket, finding));
  }

  /** Three rounds and two yarns that may be any of them: no two of the rounds are stuck alone. */
  @Test
  void moreRoundsThatMustDifferThanYarns() {
    BlanketBuilder builder =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1), round(1), round(1), round(1))
            .yarns(3, Tone.DARK, PLENTY)
            .ban("r1c1", "C");
    assertFinds(new StuckPieces(), builder.build());
    assertFinds(
        new StuckPieces(),
        builder.within(WithinPiece.ALL_DIFFER).build(),
        new RoundReason.RoundsAlike(
            List.of(0), List.of(0, 1, 2), WithinPiece.ALL_DIFFER, false, List.of(A, B)),
        new RoundReason.RoundsAlike(
            List.of(1), List.of(0, 1, 2, 3), WithinPiece.ALL_DIFFER, false, List.of(A, B, C)));
    assertFinds(new StuckPieces(), builder.within(WithinPiece.FREE).build());
  }

  /** Of two yarns that are kept apart within pieces, next to each other in every way. */
  @Test
  void roundsWhoseYarnsAreKeptApart() {
    Look look = Look.NONE.withApart(List.of(new Look.Pair("A", "C", Look.Meeting.ROUNDS)));
    Blanket blanket =
        looked(twoByTwo().yarn(Tone.DARK, PLENTY).yarn(Tone.MID, 1).yarn(Tone.LIGHT, PLENTY), look);
    assertFinds(
        new StuckPieces(),
        blanket,
        new RoundReason.RoundsAlike(
            List.of(0, 1, 2, 3), List.of(0, 1), WithinPiece.ADJACENT_DIFFER, true, List.of(A, C)));
  }

  /** The smaller of two sets of rounds that have too few yarns is told, of many rounds too. */
  @Test
  void theSmallestSetOfRoundsIsTold() {
    BlanketBuilder builder =
        BlanketBuilder.straight(1, 1)
            .motif(
                PieceKind.SQUARE,
                round(1, Tone.DARK),
                round(1, Tone.DARK),
                round(1, Tone.DARK),
                round(1, Tone.DARK),
                round(1, Tone.LIGHT),
                round(1, Tone.LIGHT),
                round(1, Tone.LIGHT))
            .yarns(3, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .within(WithinPiece.ALL_DIFFER);
    assertFinds(
        new StuckPieces(),
        builder.build(),
        new RoundReason.RoundsAlike(
            List.of(0), List.of(4, 5, 6), WithinPiece.ALL_DIFFER, false, List.of(3, 4)));
    Round[] thirteen = new Round[13];
    Arrays.fill(thirteen, round(1));
    assertFinds(
        new StuckPieces(),
        BlanketBuilder.straight(1, 1)
            .motif(PieceKind.SQUARE, thirteen)
            .yarns(13, Tone.DARK, PLENTY)
            .within(WithinPiece.ALL_DIFFER)
            .build());
  }

  @Test
  void roundsThatMayMatchOrLieFinishedAreNotStuck() {
    BlanketBuilder free =
        BlanketBuilder.straight(1, 1)
            .motif(PieceKind.SQUARE, round(1, Tone.DARK), round(1, Tone.DARK))
            .yarn(Tone.DARK, PLENTY)
            .yarn(Tone.LIGHT, PLENTY)
            .within(WithinPiece.FREE);
    Look apart = Look.NONE.withApart(List.of(new Look.Pair("A", "B", Look.Meeting.ROUNDS)));
    assertFinds(new StuckPieces(), looked(free, apart));
    BlanketBuilder stuck =
        BlanketBuilder.straight(1, 1)
            .motif(PieceKind.SQUARE, round(1, Tone.DARK), round(1, Tone.DARK))
            .yarns(1, Tone.DARK, PLENTY);
    assertEquals(1, found(new StuckPieces(), stuck.build()).size());
    assertFinds(new StuckPieces(), piled(stuck, entry(1, "A", "A")));
  }

  @Test
  void neighboursOfOneBorder() {
    StuckSeams argument = new StuckSeams();
    Blanket blanket =
        ample()
            .note("r1c1", PieceState.PLANNED, null, "B")
            .note("r2c1", PieceState.MADE, "C", "B")
            .build();
    Clash clash = new Clash(SeamPart.BORDERS, List.of(B), List.of(B), false, false);
    assertFinds(argument, blanket, new SeamReason.SeamStuck(List.of(0, 2), 1, clash));
    Finding finding = found(argument, blanket).get(0);
    assertEquals(slots(1, 0, 2), finding.slots());
    assertTrue(finding.rules().contains(RuleId.NEIGHBOUR_BORDERS));
    assertEquals(1, argument.fewestOpen(blanket, finding));
    assertFinds(
        argument,
        ample()
            .note("r1c1", PieceState.JOINED, "C", "B")
            .note("r2c1", PieceState.JOINED, "D", "B")
            .build());
  }

  @Test
  void neighboursThatLookAlikeOrAreKeptApart() {
    BlanketBuilder greys =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.DARK, new Srgb(20, 20, 20), PLENTY)
            .yarn(Tone.DARK, new Srgb(22, 20, 20), PLENTY);
    List<Integer> both = List.of(A, B);
    SeamReason.SeamStuck alike =
        new SeamReason.SeamStuck(
            List.of(0, 1), 1, new Clash(SeamPart.BORDERS, both, both, true, false));
    assertFinds(new StuckSeams(), greys.build());
    Look apart = Look.NONE.withApart(List.of(new Look.Pair("A", "B", Look.Meeting.SEAMS)));
    assertFinds(
        new StuckSeams(),
        looked(greys, apart),
        new SeamReason.SeamStuck(
            List.of(0, 1), 1, new Clash(SeamPart.BORDERS, both, both, false, true)));
    assertFinds(new StuckSeams(), greys.minContrast(10).build(), alike);
    // told together, the pieces of all and the number of seams
    StuckSeams argument = new StuckSeams();
    SeamReason.SeamStuck other = new SeamReason.SeamStuck(List.of(1, 2), 1, alike.clash());
    assertEquals(argument.sort(alike), argument.sort(other));
    assertEquals(alike.clash(), argument.sort(alike));
    assertEquals(
        new SeamReason.SeamStuck(List.of(0, 1, 2), 2, alike.clash()),
        argument.together(List.of(other, alike)));
  }

  @Test
  void centresThatMustDiffer() {
    Brief brief =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(1000, Tone.DARK))
            .yarns(2, Tone.DARK, PLENTY)
            .yarn(Tone.LIGHT, PLENTY)
            .build()
            .brief();
    Blanket blanket = Blanket.of(brief.withRules(brief.rules().withCentresDiffer(true)));
    assertFinds(
        new StuckSeams(),
        blanket,
        new SeamReason.SeamStuck(
            List.of(0, 1), 1, new Clash(SeamPart.CENTRES, List.of(C), List.of(C), false, false)));
    assertEquals(slots(0, 0, 1), found(new StuckSeams(), blanket).get(0).slots());
    Blanket symmetric =
        Blanket.ofUnjudged(blanket.brief().withLook(Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT)));
    assertFinds(
        new StuckImages(),
        symmetric,
        new SeamReason.ImagesJoined(List.of(0, 1), Symmetry.LEFT_RIGHT, SeamPart.CENTRES),
        new SeamReason.ImagesJoined(List.of(0, 1), Symmetry.LEFT_RIGHT, SeamPart.BORDERS));
  }

  @Test
  void imagesThatCannotBeAlike() {
    StuckImages argument = new StuckImages();
    Blanket mirrored = looked(ample(), Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT));
    assertFinds(
        argument,
        mirrored,
        new SeamReason.ImagesJoined(List.of(0, 1), Symmetry.LEFT_RIGHT, SeamPart.BORDERS),
        new SeamReason.ImagesJoined(List.of(2, 3), Symmetry.LEFT_RIGHT, SeamPart.BORDERS));
    assertEquals(
        EnumSet.of(RuleId.SYMMETRY, RuleId.NEIGHBOUR_BORDERS),
        found(argument, mirrored).get(0).rules());
    assertEquals(List.of(), argument.findings(without(mirrored, RuleId.SYMMETRY)));
    Look turned = Look.NONE.withSymmetry(Symmetry.HALF_TURN);
    assertFinds(argument, looked(ample(), turned));
    assertFinds(argument, looked(ample().ban("r1c1", "A"), turned));
    Blanket shareNone = looked(ample().ban("r1c1", "A").ban("r2c2", "B"), turned);
    assertFinds(
        argument, shareNone, new RoundReason.ImagesShareNone(List.of(0, 3), 1, Symmetry.HALF_TURN));
    assertEquals(slots(1, 0, 3), found(argument, shareNone).get(0).slots());
    assertFinds(argument, looked(ample().ban("r1c1", "A", "B"), turned));
    // pieces that are joined both have what they have
    assertFinds(
        argument,
        looked(
            ample()
                .note("r1c1", PieceState.JOINED, "C", "A")
                .note("r1c2", PieceState.JOINED, "C", "A")
                .note("r2c1", PieceState.JOINED, "C", "B")
                .note("r2c2", PieceState.JOINED, "C", "B"),
            Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT)));
  }

  /** Joining four seams of 10 cm at 30 m a metre takes 12 m; a lock takes 2 m of it more. */
  @Test
  void yarnsThatAreOverdrawn() {
    OverdrawnYarns argument = new OverdrawnYarns();
    BlanketBuilder builder =
        twoByTwo()
            .yarn(Tone.DARK, 13_000)
            .yarns(2, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .joining("A", 30);
    assertFinds(argument, builder.build());
    Blanket blanket = builder.note("r1c2", PieceState.PLANNED, null, "A").build();
    assertFinds(
        argument, blanket, new StockReason.YarnOverdrawn(A, 12_000, 1, 2_000, 0, 13_000, 1_000));
    Finding finding = found(argument, blanket).get(0);
    assertEquals(slots(1, 1), finding.slots());
    assertEquals(set(A), finding.yarns());
    // a ball of A holds 100 m
    assertEquals(Optional.of(new Shortfall(1_000, Map.of(A, 100_001L))), finding.shortfall());
    assertEquals(1, argument.fewestOpen(blanket, finding));
  }

  @Test
  void shortfallsByHand() {
    Blanket blanket = ample().keepBack(10).build();
    // balls of 100 m and 110 m, a tenth kept back
    assertEquals(90_001, Shortfall.ballMillimetres(blanket, A));
    assertEquals(99_001, Shortfall.ballMillimetres(blanket, B));
    List<Yarn> yarns = new ArrayList<>(blanket.brief().yarns());
    yarns.set(A, yarns.get(A).withGone(true));
    yarns.set(B, yarns.get(B).withBall(Optional.empty()));
    Blanket gone = Blanket.ofUnjudged(blanket.brief().withYarns(yarns));
    assertEquals(0, Shortfall.ballMillimetres(gone, A));
    assertEquals(10_000, Shortfall.ballMillimetres(gone.yarn(B)));
    assertEquals(1, new Shortfall(10, Map.of(A, 10L, B, 3L)).fewestBalls());
    assertEquals(2, new Shortfall(11, Map.of(A, 10L, B, 3L)).fewestBalls());
    assertEquals(1_000_000, new Shortfall(1L << 50, Map.of(A, 1L)).fewestBalls());
    assertEquals(Integer.MAX_VALUE, new Shortfall(1, Map.of(A, 0L)).fewestBalls());
    assertEquals(Integer.MAX_VALUE, new Shortfall(1, Map.of()).fewestBalls());
    // rounds of 1 m and of 2 m, the long ones first
    Set<Slot> slots = new LinkedHashSet<>(slots(0, 0, 1));
    slots.addAll(slots(1, 0, 1));
    Finding finding = Finding.of(new StockReason.AllKeptBack(1), slots).withYarns(set(A));
    assertEquals(0, Shortfall.fewestOpen(blanket, finding));
    int[] wanted = {1, 1, 2, 2, 3, 4, 4};
    for (int i = 0; i < wanted.length; i++) {
      Shortfall missing = new Shortfall(1_000L * (i + 1), Map.of());
      assertEquals(wanted[i], Shortfall.fewestOpen(blanket, finding.withShortfall(missing)));
    }
  }

  @Test
  void roundsLongerThanWhatIsLeft() {
    LongRounds argument = new LongRounds();
    Blanket blanket = twoByTwo().yarns(2, Tone.DARK, 1_999).yarns(2, Tone.LIGHT, PLENTY).build();
    assertFinds(
        argument,
        blanket,
        new StockReason.RoundTooLong(List.of(0, 1, 2, 3), 1, List.of(A, B), 2_000));
    Finding finding = found(argument, blanket).get(0);
    assertEquals(slots(1, 0, 1, 2, 3), finding.slots());
    assertEquals(set(A, B), finding.yarns());
    assertFinds(
        argument, twoByTwo().yarns(2, Tone.DARK, 2_000).yarns(2, Tone.LIGHT, PLENTY).build());
    assertFinds(
        argument,
        twoByTwo().yarns(2, Tone.DARK, 1_999).yarns(2, Tone.LIGHT, PLENTY).ban("r1c1", "A").build(),
        new StockReason.RoundTooLong(List.of(1, 2, 3), 1, List.of(A, B), 2_000));
  }

  @Test
  void allThatIsKeptBack() {
    KeptBack argument = new KeptBack();
    assertFinds(argument, ample().keepBack(99).build());
    Blanket blanket = ample().keepBack(100).note("r1c2", PieceState.MADE, "C", "A").build();
    assertFinds(argument, blanket, new StockReason.AllKeptBack(100));
    assertEquals(List.of(), argument.findings(without(blanket, RuleId.YARN_TOTALS)));
    Finding finding = found(argument, blanket).get(0);
    Set<Slot> slots = new HashSet<>(slots(0, 0, 2, 3));
    slots.addAll(slots(1, 0, 2, 3));
    assertEquals(slots, finding.slots());
    assertEquals(set(A, B, C, D), finding.yarns());
    // a round that takes nothing can be worked; joining a yarn leaves less of it
    BlanketBuilder nothing =
        BlanketBuilder.straight(1, 1)
            .motif(PieceKind.SQUARE, round(0, Tone.LIGHT), round(2000, Tone.DARK))
            .yarns(2, Tone.LIGHT, PLENTY)
            .keepBack(100);
    assertEquals(slots(1, 0), found(argument, nothing.build()).get(0).slots());
    BlanketBuilder made = ample().keepBack(100);
    for (String piece : List.of("r1c1", "r1c2", "r2c1", "r2c2")) {
      made.note(piece, PieceState.MADE, "C", "A");
    }
    assertFinds(argument, made.build());
  }

  /** Two rounds of three yarns, no two alike: six sequences for nine squares. */
  @Test
  void moreSquaresThanSequences() {
    FewSequences argument = new FewSequences();
    BlanketBuilder builder =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(1), round(1))
            .yarns(3, Tone.DARK, PLENTY);
    List<Integer> all = IntStream.range(0, 9).boxed().toList();
    assertFinds(argument, builder.build());
    assertFinds(argument, builder.copies(2).build());
    Blanket blanket = builder.copies(1).build();
    assertFinds(argument, blanket, new CountReason.TooFewSequences(all, 1, 6, false));
    Finding finding = found(argument, blanket).get(0);
    assertEquals(18, finding.slots().size());
    assertEquals(EnumSet.of(RuleId.COPIES, RuleId.WITHIN_PIECE), finding.rules());
    // a made one takes a sequence, and those that may not have C have two
    builder.note("r1c1", PieceState.MADE, "A", "B").ban("r1c2", "C").ban("r3c3", "C");
    List<Finding> found = found(argument, builder.build());
    assertEquals(
        Set.of(
            new CountReason.TooFewSequences(all.subList(1, 9), 1, 5, true),
            new CountReason.TooFewSequences(List.of(1, 8), 1, 1, true)),
        found.stream().map(Finding::reason).collect(Collectors.toSet()));
    Set<Slot> slots = new HashSet<>(slots(0, 0, 1, 8));
    slots.addAll(slots(1, 0, 1, 8));
    Finding narrow = found.stream().filter(f -> f.reason().pieces().size() == 2).toList().get(0);
    assertEquals(slots, narrow.slots());
  }

  /** Rounds that may take nothing, and places that a finished piece may fill, are left aside. */
  @Test
  void sequencesAreCountedOfWhatIsToBeWorked() {
    FewSequences argument = new FewSequences();
    BlanketBuilder builder =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(1), round(1))
            .yarns(3, Tone.DARK, PLENTY)
            .ban("r1c1", "A", "B", "C");
    assertFinds(argument, builder.copies(2).build());
    assertFinds(argument, piled(builder.copies(1), entry(1, "A", "B")));
  }

  private static BlanketBuilder nine(long stock) {
    return BlanketBuilder.straight(3, 3)
        .motif(PieceKind.SQUARE, round(1000))
        .yarn(Tone.DARK, new Srgb(0, 0, 0), stock)
        .yarns(3, Tone.LIGHT, PLENTY);
  }

  private static Look.Count count(String yarn, String at, int least, int most) {
    Where where = new Where(List.of(at), List.of(Where.BORDER));
    return new Look.Count(yarn, where, least, OptionalInt.of(most));
  }

  private static Look counts(Look.Count... counts) {
    return Look.NONE.withCounts(List.of(counts));
  }

  /** Five of nine squares are apart; 3.9 m are for three borders. */
  @Test
  void fewerThanAreToShowAYarn() {
    StuckCounts argument = new StuckCounts();
    Look.Count five = count("A", "all", 5, 9);
    Look.Count six = count("A", "all", 6, 9);
    assertFinds(argument, looked(nine(PLENTY), counts(five)));
    Blanket apart = looked(nine(PLENTY), counts(six));
    assertFinds(argument, apart, new CountReason.CountTooFew(six, A, Lack.SEAMS, 5, 1_000_000));
    assertEquals(
        EnumSet.of(RuleId.COUNTS, RuleId.NEIGHBOUR_BORDERS), found(argument, apart).get(0).rules());
    assertEquals(9, found(argument, apart).get(0).slots().size());
    Look.Count three = count("A", "all", 3, 9);
    Look.Count four = count("A", "all", 4, 9);
    assertFinds(argument, looked(nine(3_900), counts(three)));
    Blanket short1 = looked(nine(3_900), counts(four));
    assertFinds(argument, short1, new CountReason.CountTooFew(four, A, Lack.STOCK, 3, 3_900));
    assertEquals(set(A), found(argument, short1).get(0).yarns());
    assertEquals(List.of(), argument.findings(without(short1, RuleId.YARN_TOTALS)));
    Look.Count row = count("A", "row1", 2, 3);
    assertFinds(
        argument,
        looked(nine(PLENTY).ban("r1c1", "A").ban("r1c2", "A"), counts(row)),
        new CountReason.CountTooFew(row, A, Lack.ROUNDS, 1, 1_000_000));
    // locks are within what is there already
    assertFinds(argument, looked(nine(3_900).note("r1c1", PieceState.PLANNED, "A"), counts(three)));
    assertFinds(
        argument,
        looked(nine(3_900).note("r1c1", PieceState.PLANNED, "A"), counts(four)),
        new CountReason.CountTooFew(four, A, Lack.STOCK, 3, 3_900));
  }

  /** Only the rounds that a count speaks of, and only what they may take. */
  @Test
  void countsLookAtTheirRoundsAlone() {
    StuckCounts argument = new StuckCounts();
    Look.Count light = count("C", "all", 1, 4);
    assertFinds(
        argument,
        looked(ample(), counts(light)),
        new CountReason.CountTooFew(light, C, Lack.ROUNDS, 0, PLENTY));
    Where anywhere = new Where(List.of("all"), List.of());
    Look.Count all = new Look.Count("A", anywhere, 9, OptionalInt.empty());
    BlanketBuilder twoRounds =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(1000), round(1000))
            .yarns(3, Tone.DARK, PLENTY);
    assertFinds(argument, looked(twoRounds, counts(all)));
    // 3.9 m are for three borders of 1 m, whatever shorter rounds of another tone there are
    BlanketBuilder short1 =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(500, Tone.LIGHT), round(1000, Tone.DARK))
            .yarn(Tone.DARK, 3_900)
            .yarns(2, Tone.DARK, PLENTY)
            .yarn(Tone.LIGHT, PLENTY);
    Look.Count four = new Look.Count("A", anywhere, 4, OptionalInt.empty());
    assertFinds(
        argument,
        looked(short1, counts(four)),
        new CountReason.CountTooFew(four, A, Lack.STOCK, 3, 3_900));
    assertFinds(argument, looked(nine(3_000), counts(count("A", "all", 3, 9))));
    // of a pile, borders of B with centres of A
    Blanket piled = looked(twoRounds, counts(count("A", "row1..row2", 0, 1)));
    PileEntry entry = entry(5, "A", "B");
    assertFinds(argument, Blanket.ofUnjudged(piled.brief().withPile(List.of(entry))));
    assertFinds(
        argument, looked(nine(PLENTY), counts(count("A", "all", 5, 9), count("A", "all", 5, 9))));
  }

  /** Six joined pieces of one border, or borders that need not differ, are more than are apart. */
  @Test
  void countsLeaveOutSeamsThatMayMatch() {
    StuckCounts argument = new StuckCounts();
    Look six = counts(count("A", "all", 6, 9));
    BlanketBuilder joined = nine(PLENTY);
    for (String piece : List.of("r1c1", "r1c2", "r1c3", "r2c1", "r2c2", "r2c3")) {
      joined.note(piece, PieceState.JOINED, "A");
    }
    assertFinds(argument, looked(joined, six));
    Blanket blanket = looked(nine(PLENTY), six);
    assertEquals(List.of(), argument.findings(without(blanket, RuleId.NEIGHBOUR_BORDERS)));
  }

  @Test
  void moreThanMayShowAYarn() {
    StuckCounts argument = new StuckCounts();
    Look.Count most = count("A", "row1", 0, 1);
    assertFinds(argument, looked(nine(PLENTY).note("r1c1", PieceState.PLANNED, "A"), counts(most)));
    assertFinds(
        argument,
        looked(
            nine(PLENTY)
                .note("r1c1", PieceState.PLANNED, "A")
                .note("r1c3", PieceState.PLANNED, "A"),
            counts(most)),
        new CountReason.CountTooMany(most, A, 2, 0));
    // three places are in row 3: of five pieces of the pile two lie in rows 1 and 2
    Look.Count rows = count("A", "row1..row2", 0, 1);
    assertFinds(argument, piled(looked(nine(PLENTY), counts(rows)), 4));
    Blanket piled = piled(looked(nine(PLENTY), counts(rows)), 5);
    assertFinds(argument, piled, new CountReason.CountTooMany(rows, A, 0, 2));
    assertEquals(EnumSet.of(RuleId.COUNTS, RuleId.PILE), found(argument, piled).get(0).rules());
    Blanket made =
        piled(
            looked(
                nine(PLENTY).note("r1c1", PieceState.MADE, "A"),
                counts(count("A", "row1..row2", 0, 2))),
            5);
    assertFinds(
        argument, made, new CountReason.CountTooMany(count("A", "row1..row2", 0, 2), A, 1, 2));
  }

  private static Blanket piled(Blanket blanket, int pieces) {
    PileEntry entry = new PileEntry(PieceKind.SQUARE, List.of("A"), pieces, Set.of());
    return Blanket.ofUnjudged(blanket.brief().withPile(List.of(entry)));
  }

  @Test
  void leastNumbersOfSeveralYarns() {
    StuckCounts argument = new StuckCounts();
    Look.Count a = count("A", "all", 5, 9);
    Look.Count b = count("B", "all", 5, 9);
    assertFinds(argument, looked(nine(PLENTY), counts(a, count("B", "all", 4, 9))));
    assertFinds(
        argument,
        looked(nine(PLENTY), counts(a, b)),
        new CountReason.CountsTogether(a.where(), 9, List.of(A, B), List.of(5, 5)));
    assertFinds(argument, looked(nine(PLENTY), counts(a, count("B", "row1", 1, 9))));
  }

  @Test
  void numbersThatASymmetryRulesOut() {
    StuckCounts argument = new StuckCounts();
    Look both = Look.NONE.withSymmetry(Symmetry.BOTH);
    Where corners = new Where(List.of("r1c1", "r1c3"), List.of());
    Look.Count one = new Look.Count("A", corners, 1, OptionalInt.of(1));
    Look.Count two = new Look.Count("A", corners, 1, OptionalInt.of(2));
    Look.Count three = new Look.Count("A", corners, 2, OptionalInt.empty());
    Blanket blanket = looked(nine(PLENTY), both.withCounts(List.of(one)));
    assertFinds(
        argument, blanket, new CountReason.CountOfImages(one, A, 1, 1, 0, OptionalInt.of(2)));
    assertEquals(
        EnumSet.of(RuleId.COUNTS, RuleId.SYMMETRY), found(argument, blanket).get(0).rules());
    assertFinds(argument, looked(nine(PLENTY), both.withCounts(List.of(two, three))));
    assertFinds(argument, looked(nine(PLENTY), counts(one)));
    Look.Count none = new Look.Count("A", corners, 0, OptionalInt.of(1));
    assertFinds(argument, looked(nine(PLENTY), both.withCounts(List.of(none))));
    Look.Count more = new Look.Count("A", corners, 3, OptionalInt.empty());
    assertFinds(
        argument,
        looked(nine(PLENTY), both.withCounts(List.of(more))),
        new CountReason.CountTooFew(more, A, Lack.ROUNDS, 2, PLENTY),
        new CountReason.CountOfImages(more, A, 3, 2, 2, OptionalInt.empty()));
    assertEquals(List.of(), argument.findings(without(blanket, RuleId.SYMMETRY)));
    assertFinds(argument, looked(nine(PLENTY), both.withCounts(List.of(count("A", "all", 3, 3)))));
  }

  private static PileEntry entry(int pieces, String... codes) {
    return new PileEntry(PieceKind.SQUARE, List.of(codes), pieces, Set.of());
  }

  private static Blanket piled(BlanketBuilder builder, PileEntry... entries) {
    return Blanket.ofUnjudged(builder.build().brief().withPile(List.of(entries)));
  }

  /** Two of four squares are apart, but none beside a made one of the same border. */
  @Test
  void morePiecesOfAPileThanPlacesApart() {
    PileBorders argument = new PileBorders();
    assertFinds(argument, piled(ample(), entry(2, "C", "A")));
    Map<PieceKind, Integer> three = Map.of(PieceKind.SQUARE, 3);
    Blanket blanket = piled(ample(), entry(2, "C", "A"), entry(1, "D", "A"));
    assertFinds(argument, blanket, new PileReason.PileBordersMeet(three, List.of(A), 2, false));
    assertEquals(
        EnumSet.of(RuleId.PILE, RuleId.NEIGHBOUR_BORDERS, RuleId.LOCKS, RuleId.BORDERS),
        found(argument, blanket).get(0).rules());
    Map<PieceKind, Integer> two = Map.of(PieceKind.SQUARE, 2);
    assertFinds(
        argument,
        piled(ample().note("r1c1", PieceState.MADE, "C", "A"), entry(2, "C", "A")),
        new PileReason.PileBordersMeet(two, List.of(A), 1, true));
    assertFinds(
        argument, piled(ample().note("r1c1", PieceState.PLANNED, null, "B"), entry(2, "C", "A")));
    assertFinds(
        argument,
        piled(
            ample()
                .note("r1c1", PieceState.PLANNED, null, "B")
                .note("r1c2", PieceState.PLANNED, "D", null),
            entry(2, "C", "A")),
        new PileReason.PileBordersMeet(two, List.of(A), 1, false));
    // borders that need not differ, for the look gives them or no line asks for it
    Blanket given = piled(ample(), entry(4, "C", "A"));
    assertEquals(1, found(argument, given).size());
    assertFinds(argument, Blanket.ofUnjudged(given.brief().withLook(Look.NONE.withBorders("A"))));
    for (RuleId rule : List.of(RuleId.NEIGHBOUR_BORDERS, RuleId.PILE)) {
      assertEquals(List.of(), argument.findings(without(given, rule)));
    }
    // two places left, side by side, for a centre of D lies in the others
    assertFinds(
        argument,
        piled(
            ample()
                .note("r1c1", PieceState.PLANNED, "D", null)
                .note("r1c2", PieceState.PLANNED, "D", null),
            entry(2, "C", "A"),
            entry(1, "D", "B")),
        new PileReason.PileBordersMeet(two, List.of(A), 1, false));
    // of greys that look alike, as of one
    BlanketBuilder greys =
        twoByTwo()
            .yarn(Tone.DARK, new Srgb(20, 20, 20), PLENTY)
            .yarn(Tone.DARK, new Srgb(22, 20, 20), PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY);
    PileEntry[] both = {entry(2, "C", "A"), entry(1, "C", "B")};
    assertFinds(argument, piled(greys, both));
    assertFinds(
        argument,
        piled(greys.minContrast(10), both),
        new PileReason.PileBordersMeet(three, List.of(A, B), 2, false));
    assertFinds(
        argument,
        piled(greys, entry(3, "C", "A"), entry(3, "C", "B")),
        new PileReason.PileBordersMeet(three, List.of(A), 2, false),
        new PileReason.PileBordersMeet(Map.of(PieceKind.SQUARE, 6), List.of(A, B), 2, false));
    Blanket alike = piled(greys, both);
    List<BriefLine> lines =
        RuleBook.lines(alike).stream()
            .filter(line -> !line.path().toString().equals("rules.min-contrast"))
            .toList();
    assertEquals(List.of(), argument.findings(Requirements.of(alike, lines)));
    assertFinds(argument, piled(ample().minContrast(1), entry(2, "C", "A"), entry(1, "C", "B")));
  }

  @Test
  void piecesOfAPileThatFindNoPlace() {
    PileLocks argument = new PileLocks();
    BlanketBuilder locked =
        ample()
            .note("r1c1", PieceState.PLANNED, null, "B")
            .note("r1c2", PieceState.PLANNED, "D", null)
            .note("r2c1", PieceState.MADE, "C", "B");
    assertFinds(argument, piled(locked, entry(1, "C", "A")));
    assertFinds(
        argument,
        piled(locked, entry(2, "C", "A")),
        new PileReason.PileKeptOut(List.of(0), List.of(3)));
    assertEquals(
        Set.of(
            RuleId.PILE,
            RuleId.LOCKS,
            RuleId.BANS,
            RuleId.TONES,
            RuleId.ZONES,
            RuleId.COUNTS,
            RuleId.BORDERS),
        found(argument, piled(locked, entry(2, "C", "A"))).get(0).rules());
    assertFinds(argument, piled(locked.ban("r2c2", "A", "B"), entry(1, "D", "B")));
    assertFinds(
        argument,
        piled(locked.ban("r1c2", "A", "B"), entry(1, "C", "B")),
        new PileReason.PlacesUnfilled(List.of(1)));
  }

  /** Borders of 2 m and centres of 1 m: three pieces of the pile take 6 m of A; one is made. */
  @Test
  void aPileThatOverdraws() {
    OverdrawnByPile argument = new OverdrawnByPile();
    BlanketBuilder enough =
        twoByTwo()
            .yarn(Tone.DARK, 8_000)
            .yarn(Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r1c2", PieceState.MADE, "C", "A");
    assertFinds(argument, piled(enough, entry(3, "C", "A")));
    BlanketBuilder less =
        twoByTwo()
            .yarn(Tone.DARK, 7_999)
            .yarn(Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r1c2", PieceState.MADE, "C", "A");
    Blanket blanket = piled(less, entry(3, "C", "A"));
    assertFinds(argument, blanket, new PileReason.PileOverdrawn(A, 6_000, 0, 0, 2_000, 0, 7_999));
    // joining takes 12 m of it beside; a yarn that no piece of the pile has is told elsewhere
    assertFinds(
        argument,
        piled(enough.joining("A", 30), entry(3, "C", "A")),
        new PileReason.PileOverdrawn(A, 6_000, 0, 0, 2_000, 12_000, 8_000));
    // half of each of two seams of 10 cm, twice as long in yarn: 0.2 m for each of three borders
    assertFinds(
        argument,
        JoinedInBorders.of(piled(enough, entry(3, "C", "A")), 1),
        new PileReason.PileOverdrawn(A, 6_000, 0, 600, 2_200, 0, 8_000));
    assertFinds(argument, piled(enough, entry(1, "C", "B")));
    assertEquals(List.of(), argument.findings(without(blanket, RuleId.YARN_TOTALS)));
    assertEquals(List.of(), argument.findings(without(blanket, RuleId.PILE)));
    assertEquals(set(A), found(argument, blanket).get(0).yarns());
    assertEquals(EnumSet.of(RuleId.PILE, RuleId.LOCKS), found(argument, blanket).get(0).rules());
  }

  private static List<String> lines(Blanket blanket, Finding finding) {
    return finding.lines(RoundYarns.all(blanket), RuleBook.lines(blanket)).stream()
        .map(line -> line.path().toString())
        .toList();
  }

  /** Those that narrow its rounds, those of its rules, and of stock those of its yarns, first. */
  @Test
  void linesThatConcernAFinding() {
    Blanket barred =
        ample()
            .note("r1c1", PieceState.PLANNED, "A", null)
            .ban("r1c1", "B")
            .ban("r1c2", "A")
            .build();
    assertEquals(
        List.of("motifs.square.rounds[0].tone", "pieces[0] r1c1", "pieces[1].not r1c1"),
        lines(barred, found(new EmptyRounds(), barred).get(0)));
    Blanket overdrawn =
        twoByTwo()
            .yarn(Tone.DARK, 13_000)
            .yarn(Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .joining("A", 30)
            .note("r1c2", PieceState.PLANNED, null, "A")
            .note("r2c1", PieceState.PLANNED, null, "B")
            .build();
    assertEquals(
        List.of("yarns[0]", "joining", "motifs.square.rounds[1].tone", "pieces[0] r1c2"),
        lines(overdrawn, found(new OverdrawnYarns(), overdrawn).get(0)));
    Blanket seam =
        ample()
            .note("r1c1", PieceState.PLANNED, null, "B")
            .note("r2c1", PieceState.PLANNED, null, "B")
            .build();
    assertEquals(
        List.of(
            "rules.neighbour-borders",
            "motifs.square.rounds[1].tone",
            "pieces[0] r1c1",
            "pieces[1] r2c1"),
        lines(seam, found(new StuckSeams(), seam).get(0)));
  }

  /**
   * The lines that a finding names are enough for its argument; where stock is short, locks of
   * other rounds may matter beside them now and then.
   */
  @Test
  void linesOfAFindingAloneBringItAbout() {
    int held = 0;
    int findings = 0;
    Set<Class<?>> met = new HashSet<>();
    for (long seed = 0; seed < 300; seed++) {
      Blanket blanket;
      if (seed % 3 == 0) {
        Brief brief = RandomLooks.of(seed, RandomBriefs.of(seed, 3, 4));
        if (!BriefJudge.mistakes(brief).isEmpty()) {
          continue;
        }
        blanket = Blanket.of(brief);
      } else {
        blanket = seed % 3 == 1 || seed > 90 ? TinyBlankets.of(seed) : TinyPiles.looked(seed);
      }
      List<BriefLine> all = RuleBook.lines(blanket);
      RoundYarns unrestricted = RoundYarns.direct(blanket, List.of());
      for (List<Argument> turn : Arguments.TURNS) {
        for (Argument argument : turn) {
          for (Finding finding : found(argument, blanket)) {
            List<BriefLine> lines = finding.lines(unrestricted, all);
            String where = "seed " + seed + ": " + finding.reason();
            boolean enough = !argument.findings(Requirements.of(blanket, lines)).isEmpty();
            assertTrue(enough || !finding.yarns().isEmpty(), where);
            held += enough ? 1 : 0;
            findings++;
            met.add(argument.getClass());
          }
        }
      }
    }
    assertTrue(held > 100 && held * 20 > findings * 19, held + " of " + findings);
    assertTrue(met.size() > 7, "met " + met);
  }
}
