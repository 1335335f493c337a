package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Where;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.InputException;
import org.junit.jupiter.api.Test;

class ChangesTest {

  private static final String MADE = "{ at: r1c3, rounds: [MUD, REE, PEA], state: made }";

  private static Changed changed(CurrentPlan current, Change... changes) {
    return Changes.apply(current, List.of(changes));
  }

  private static String refused(CurrentPlan current, Change... changes) {
    return assertThrows(InputException.class, () -> changed(current, changes)).getMessage();
  }

  private static Change hold(String place, String at, String... codes) {
    List<Optional<String>> rounds = Arrays.stream(codes).map(Optional::ofNullable).toList();
    return new Change.Hold(
        place, new PieceNote(List.of(at), rounds, true, PieceState.PLANNED, 0, Set.of()));
  }

  private static Change ban(String at, String code) {
    return new Change.Hold(
        "ban " + at, new PieceNote(List.of(at), List.of(), PieceState.PLANNED, Set.of(code)));
  }

  @Test
  void piecesAreLockedAsPlannedEachWithItsOwnYarns() {
    Changed changed =
        changed(Sample.current(MADE), new Change.Lock("lock", List.of("row1", "r2c1")));

    assertAll(
        () -> assertEquals("MUD REE PEA", Sample.locks(changed.blanket(), "r1c1")),
        () -> assertEquals("MUD SKY REE", Sample.locks(changed.blanket(), "r2c1")),
        () -> assertEquals("~ ~ ~", Sample.locks(changed.blanket(), "r2c2")),
        () -> assertEquals(PieceState.MADE, state(changed, "r1c3")),
        // the made piece needs no lock
        () -> assertEquals(4, changed.blanket().brief().pieces().size()));
  }

  @Test
  void lockingAgainAddsNothing() {
    CurrentPlan once = current(changed(Sample.current(), new Change.Lock("lock", List.of("row1"))));

    assertEquals(
        once.brief(),
        changed(once, new Change.Lock("lock", List.of("r1c1", "r1c2"))).blanket().brief());
  }

  @Test
  void withoutAPlanALockMustNameItsYarns() {
    CurrentPlan none = new CurrentPlan(Sample.brief(), Optional.empty());

    assertEquals(
        "lock: There is no plan yet that r1c1 could keep to. Name its yarns, such as"
            + " r1c1=REE,~,MUD",
        refused(none, new Change.Lock("lock", List.of("r1c1"))));
    assertEquals(
        "~ ~ SKY", Sample.locks(changed(none, hold("lock", "r1c1", "SKY")).blanket(), "r1c1"));
  }

  @Test
  void locksAreTakenBackAndBansStay() {
    CurrentPlan current =
        Sample.current(
            "{ at: row1, rounds: [.., SKY], not: [MUD] }", "{ at: r1c2, rounds: [REE, ~, ~] }");

    Blanket blanket = changed(current, new Change.Free("free", List.of("r1c2"))).blanket();

    assertAll(
        () -> assertEquals("~ ~ ~", Sample.locks(blanket, "r1c2")),
        () -> assertEquals("~ ~ SKY", Sample.locks(blanket, "r1c1")),
        () -> assertEquals("~ ~ SKY", Sample.locks(blanket, "r1c3")),
        () -> assertTrue(blanket.banned(1, blanket.yarnIndex("MUD"))),
        () -> assertEquals(2, blanket.brief().pieces().size()));
  }

  @Test
  void whatIsNotLockedOrIsWorkedCannotBeFreed() {
    assertEquals(
        "free: Nothing is locked there. Leave it out, or name other pieces",
        refused(Sample.current(MADE), new Change.Free("free", List.of("r2c1"))));
    assertEquals(
        "free: r1c3 is worked already. Mark pieces planned to work them anew",
        refused(Sample.current(MADE), new Change.Free("free", List.of("row1"))));
    assertEquals(
        "free: There is no piece \"r1c9\". Row 1 holds places 1 to 3",
        refused(Sample.current(MADE), new Change.Free("free", List.of("r1c9"))));
  }

  @Test
  void aBanOfPiecesThatAreAllWorkedIsTold() {
    assertEquals(
        "ban r1c3: r1c3 is worked already. Mark pieces planned to work them anew",
        refused(Sample.current(MADE), ban("r1c3", "SKY")));
    // of some that are not, it keeps the yarn out of these
    Blanket blanket = changed(Sample.current(MADE), ban("row1", "SKY")).blanket();
    assertTrue(blanket.banned(0, blanket.yarnIndex("SKY")));
  }

  @Test
  void notesThatWishesBroughtAreKnownByTheWish() {
    Changed changed =
        changed(
            Sample.current("{ at: r1c1, rounds: [.., SKY] }"),
            new Change.Without("without", "REE"),
            ban("row3", "PEA"),
            hold("lock r1c2=..,MUD", "r1c2", "MUD"));

    List<PieceNote> notes = changed.blanket().brief().pieces();
    assertEquals(2, changed.wishes().size());
    changed
        .wishes()
        .forEach(
            (index, wish) ->
                assertEquals(
                    wish.startsWith("lock") ? List.of("r1c2") : List.of("row3"),
                    notes.get(index).at()));
  }

  @Test
  void aPieceIsFreedBeforeItIsLockedAnew() {
    CurrentPlan current = Sample.current("{ at: r1c1, rounds: [~, ~, SKY] }");

    Blanket blanket =
        changed(
                current,
                hold("lock r1c1=..,MUD", "r1c1", "MUD"),
                new Change.Free("free", List.of("r1c1")))
            .blanket();

    assertEquals("~ ~ MUD", Sample.locks(blanket, "r1c1"));
    assertEquals(
        "lock r1c1=..,MUD: Round 3 of r1c1 is held in MUD here and in SKY by pieces[0]. Keep one of"
            + " the two",
        refused(current, hold("lock r1c1=..,MUD", "r1c1", "MUD")));
  }

  @Test
  void locksThatBreakARuleAreToldWithPiecesAndYarnsByTheWishThatBroughtThem() {
    assertEquals(
        "lock b: r1c1 and r2c1 are joined along a side and both have the border SKY. Hold another"
            + " yarn there",
        refused(Sample.current(), hold("lock a", "r1c1", "SKY"), hold("lock b", "r2c1", "SKY")));
    assertTrue(
        refused(Sample.current(), hold("lock", "r1c1", "SKY"), ban("squares", "SKY"))
            .startsWith("lock: r1c1: the border has SKY, which is banned from this piece."));
    // a lock on what is worked already must agree with it
    assertTrue(
        refused(Sample.current(MADE), hold("lock", "r1c3", "SKY"))
            .startsWith(
                "lock: Round 3 of r1c3 is held in SKY here and is made in PEA by pieces[0]. Leave it"
                    + " out, or make the piece planned to work it anew"));
  }

  @Test
  void aYarnThatIsNotThereIsToldBesideALockOfThePlan() {
    String words =
        refused(
            Sample.current(),
            hold("lock a", "r1c1", "XXX"),
            new Change.Lock("lock b", List.of("r99c1")));

    assertTrue(words.contains("lock b: There is no piece \"r99c1\""), words);
  }

  @Test
  void whatIsToBeExplainedMayBreakRules() {
    List<Change> changes = List.of(hold("a", "r1c1", "SKY"), hold("b", "r2c1", "SKY"));

    Blanket blanket = Changes.applyUnjudged(Sample.current(), changes).blanket();

    assertEquals("~ ~ SKY", Sample.locks(blanket, "r2c1"));
  }

  @Test
  void allMistakesAreToldTogether() {
    assertEquals(
        "swap: No yarn has the code \"REED\". Maybe REE is meant\n"
            + "without: No yarn has the code \"XYZ\". The yarns' codes are MUD, REE, PEA, SKY\n"
            + "free: There is no piece \"rwo1\". Squares are named by row and place, such as r3c2,"
            + " triangles by side, such as top1",
        refused(
            Sample.current(),
            new Change.Free("free", List.of("rwo1")),
            new Change.Without("without", "XYZ"),
            new Change.Swap("swap", "REED", "SKY")));
  }

  @Test
  void whatWasWrongBeforeIsNotHeldAgainstAChange() {
    // two made pieces side by side with one border: a fact, though it breaks a rule
    CurrentPlan current =
        new CurrentPlan(
            Sample.brief()
                .withPieces(
                    List.of(note("r1c1", "MUD", "REE", "SKY"), note("r2c1", "MUD", "REE", "SKY"))),
            Optional.empty());

    assertEquals(3, changed(current, ban("row3", "PEA")).blanket().brief().pieces().size());
  }

  private static PieceNote note(String at, String... codes) {
    return new PieceNote(
        List.of(at), Arrays.stream(codes).map(Optional::of).toList(), PieceState.MADE, Set.of());
  }

  @Test
  void doingWithoutAYarnBansItFromAllAndWantsNoneOfIt() {
    Blanket blanket = changed(Sample.current(MADE), new Change.Without("without", "REE")).blanket();

    int reed = blanket.yarnIndex("REE");
    assertEquals(0, blanket.yarn(reed).share());
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      assertTrue(blanket.banned(piece, reed));
    }
    assertEquals("MUD REE PEA", Sample.locks(blanket, "r1c3"));
  }

  @Test
  void aYarnThatJoiningOrEdgingNeedsCannotBeDoneWithout() {
    assertEquals(
        "w: The joining is in MUD. Put another yarn in its place: swap MUD for it",
        refused(Sample.current(), new Change.Without("w", "MUD")));
    assertEquals(
        "w: The edging is in PEA. Put another yarn in its place: swap PEA for it",
        refused(Sample.current(), new Change.Without("w", "PEA")));
  }

  @Test
  void aLockInAYarnToDoWithoutIsTold() {
    assertTrue(
        refused(
                Sample.current("{ at: r1c1, rounds: [.., SKY] }"),
                new Change.Without("without", "SKY"))
            .contains("r1c1: the border has SKY, which is banned from this piece"));
  }

  @Test
  void aSwapPutsAYarnInAnothersPlaceInPlanAndLocks() {
    CurrentPlan current =
        Sample.current(
            MADE, "{ at: row1, rounds: [.., REE, ~] }", "{ at: bottom1, rounds: [.., REE] }");

    Changed changed = changed(current, new Change.Swap("swap", "REE", "SKY"));

    Blanket blanket = changed.blanket();
    assertAll(
        () -> assertEquals("~ SKY ~", Sample.locks(blanket, "r1c1")),
        () -> assertEquals("~ SKY", Sample.locks(blanket, "bottom1")),
        () -> assertEquals("MUD REE PEA", Sample.locks(blanket, "r1c3")),
        () -> assertEquals("MUD SKY PEA", Sample.codes(blanket, changed.earlier().get(), "r1c1")),
        () -> assertEquals("MUD REE PEA", Sample.codes(blanket, changed.before().get(), "r1c1")),
        () -> assertEquals("MUD REE PEA", Sample.codes(blanket, changed.earlier().get(), "r1c3")),
        () -> assertTrue(blanket.banned(0, blanket.yarnIndex("REE"))));
  }

  @Test
  void aSwapTakesOverEdgingAndShare() {
    Blanket blanket = changed(Sample.current(), new Change.Swap("swap", "PEA", "SKY")).blanket();

    assertAll(
        () -> assertEquals("SKY", blanket.brief().edging().get(0).yarn()),
        () -> assertEquals("MUD", blanket.brief().joiningInOneYarn().get().yarn()),
        () -> assertEquals(3, blanket.yarn(blanket.yarnIndex("SKY")).share()),
        () -> assertEquals(0, blanket.yarn(blanket.yarnIndex("PEA")).share()));
  }

  /** One square of odd rows is made: it shows REE and counts against what is asked for. */
  @Test
  void aSwapTakesOverWhatTheLookSaysOfWhatIsStillToBeWorked() {
    Brief plain = Sample.brief(MADE);
    Where second = new Where(List.of("squares"), List.of(2));
    Look look =
        Look.NONE
            .withZones(List.of(new Look.Zone(second, List.of("REE", "PEA"))))
            .withApart(List.of(new Look.Pair("REE", "PEA"), new Look.Pair("SKY", "REE")))
            .withCounts(List.of(new Look.Count("REE", second, 4, OptionalInt.of(5))));
    Brief looked = plain.withLook(look);
    CurrentPlan current = new CurrentPlan(looked, Optional.of(Sample.plan(looked)));

    Look now =
        Changes.applyUnjudged(current, List.of(new Change.Swap("swap", "REE", "SKY")))
            .blanket()
            .brief()
            .look();

    assertAll(
        () -> assertEquals(List.of("REE", "PEA", "SKY"), now.zones().get(0).only()),
        () ->
            assertEquals(
                List.of(
                    new Look.Pair("REE", "PEA"),
                    new Look.Pair("SKY", "PEA"),
                    new Look.Pair("SKY", "REE")),
                now.apart()),
        () ->
            assertEquals(
                List.of(
                    new Look.Count("REE", second, 1, OptionalInt.of(5)),
                    new Look.Count("SKY", second, 3, OptionalInt.of(4))),
                now.counts()));
  }

  @Test
  void swappingBackLiftsTheBan() {
    CurrentPlan swapped = current(changed(Sample.current(), new Change.Swap("swap", "REE", "SKY")));

    Blanket back = changed(swapped, new Change.Swap("back", "SKY", "REE")).blanket();

    assertFalse(back.banned(0, back.yarnIndex("REE")));
    assertTrue(back.banned(0, back.yarnIndex("SKY")));
  }

  @Test
  void aSwappedJoiningYarnIsNotChargedForSeamsThatAreJoinedAlready() {
    String[] joined = {
      "{ at: [r1c1, r3c1], rounds: [MUD, REE, PEA], state: joined }",
      "{ at: r2c1, rounds: [MUD, REE, SKY], state: joined }"
    };
    Blanket before = Blanket.of(Sample.brief(joined));

    Blanket after =
        changed(Sample.current(joined), new Change.Swap("swap", "MUD", "SKY")).blanket();

    int sky = after.yarnIndex("SKY");
    // two seams of 10 cm at 3 m a metre are joined
    assertEquals(
        before.fixedUse().joiningMillimetres() - 600, after.fixedUse().joiningMillimetres());
    // what one joined border of 3 m took is gone from the stock
    assertEquals(500_000 - 3000, after.yarn(sky).stockMillimetres());
    assertEquals(after.fixedUse().joiningMillimetres(), after.usedMillimetres(after.locks())[sky]);
  }

  @Test
  void aSwappedEdgingYarnIsNotChargedForWhatIsEdgedAlready() {
    Blanket before = Blanket.of(Sample.brief());
    Mark mark =
        Mark.NONE
            .withStates(List.of(new Mark.State("joined", PieceState.JOINED, List.of("all"))))
            .withCounts(List.of(new Mark.Count("left", "PEA", new YarnAmount.Length(1_000))))
            .withEdged(Optional.of(new Mark.Edged("edged", 40)));
    Sequences plan = Sample.plan(before.brief());
    CurrentPlan half =
        new CurrentPlan(
            Marking.apply(before, plan, List.of(), mark).blanket().brief(), Optional.of(plan));

    Blanket inSky = changed(half, new Change.Swap("swap", "PEA", "SKY")).blanket();
    // MUD has joined all seams, which no count has said yet
    Blanket inMud = changed(half, new Change.Swap("swap", "PEA", "MUD")).blanket();

    assertEquals(
        0.6 * before.fixedUse().edgingMillimetres(), inSky.fixedUse().edgingMillimetres(), 1);
    assertEquals(
        0.6 * before.fixedUse().edgingMillimetres(), inMud.fixedUse().edgingMillimetres(), 1);
    for (String code : List.of("SKY", "MUD")) {
      Blanket after = code.equals("SKY") ? inSky : inMud;
      int yarn = before.yarnIndex(code);
      long whole = before.usedMillimetres(plan)[yarn];
      assertEquals(
          before.yarn(yarn).stockMillimetres() - whole, after.yarn(yarn).stockMillimetres(), code);
      assertEquals(after.fixedUse().edgingMillimetres(), after.usedMillimetres(plan)[yarn], code);
    }
  }

  @Test
  void aYarnIsNotSwappedForItself() {
    assertEquals(
        "swap: MUD is the same yarn. Name another to put in its place",
        refused(Sample.current(), new Change.Swap("swap", "MUD", "MUD")));
  }

  private static PieceState state(Changed changed, String name) {
    return changed.blanket().state(changed.blanket().layout().find(name).get().index());
  }

  private static CurrentPlan current(Changed changed) {
    return new CurrentPlan(changed.blanket().brief(), changed.earlier());
  }
}
