package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Srgb;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.layout.LayoutSize;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** Another brief beside a plan: what is asked is new, what has come about stays. */
class RebriefedTest {

  private static final String MADE = "{ at: r1c3, rounds: [MUD, REE, PEA], state: made }";
  private static final String BEGUN = "{ at: r2c1, rounds: [MUD, SKY, ~], rounds-worked: 2 }";

  private static Changed changed(CurrentPlan current, Brief brief, String... kept) {
    return Changes.apply(
        current, List.of(new Change.Rebrief("--brief new.yaml", brief, Set.of(kept))));
  }

  private static String refused(CurrentPlan current, Brief brief) {
    return assertThrows(InputException.class, () -> changed(current, brief)).getMessage();
  }

  private static Brief read(String from, String to) {
    String text = BriefWriter.text(Sample.brief());
    assertTrue(text.contains(from), text);
    return BriefReader.read(SourceText.of("new.json", text.replace(from, to)));
  }

  private static Yarn yarn(Changed changed, String code) {
    return changed.blanket().yarn(changed.blanket().yarnIndex(code));
  }

  private static Brief without(Brief brief, String code) {
    return brief.withYarns(
        brief.yarns().stream().filter(yarn -> !yarn.code().equals(code)).toList());
  }

  @Test
  void whatIsWorkedStaysAndTheRestIsAskedAnew() {
    List<Yarn> yarns = new ArrayList<>(Sample.brief().yarns());
    yarns.add(
        0,
        Yarn.of("RUS", new Srgb(0x8a, 0x4b, 0x2d))
            .withLeft(Optional.of(new YarnAmount.Length(60_000))));
    Brief asked = Sample.brief().withYarns(yarns);
    asked = asked.withRules(asked.rules().withCentresDiffer(true));
    Changed changed = changed(Sample.current(MADE, BEGUN), asked);
    Blanket now = changed.blanket();
    assertAll(
        () -> assertTrue(now.brief().rules().centresDiffer()),
        () -> assertEquals(0, now.yarnIndex("RUS")),
        () -> assertEquals("MUD REE PEA", Sample.locks(now, "r1c3")),
        () -> assertEquals(PieceState.MADE, now.state(piece(now, "r1c3"))),
        () -> assertEquals("MUD SKY ~", Sample.locks(now, "r2c1")),
        () -> assertEquals(2, now.roundsWorked(piece(now, "r2c1"))),
        () -> assertEquals("~ ~ ~", Sample.locks(now, "r1c1")),
        () ->
            assertEquals(
                "MUD REE PEA", Sample.codes(now, changed.earlier().orElseThrow(), "r1c1")));
  }

  private static int piece(Blanket blanket, String name) {
    return blanket.layout().find(name).orElseThrow().index();
  }

  @Test
  void aYarnThatTheBriefNoLongerNamesIsGoneWhereItIsWorked() {
    Brief asked = without(Sample.brief(), "REE");
    Changed changed = changed(Sample.current(MADE), asked);
    assertTrue(yarn(changed, "REE").gone());
    assertEquals("MUD REE PEA", Sample.locks(changed.blanket(), "r1c3"));
    Changed unworked = changed(Sample.current(), asked);
    assertEquals(-1, unworked.blanket().yarnIndex("REE"));
    assertEquals(
        "MUD ~ PEA", Sample.codes(unworked.blanket(), unworked.earlier().orElseThrow(), "r1c1"));
  }

  @Test
  void whatHasComeAboutWithYarnsStandsWhateverTheBriefSays() {
    Brief asked = Sample.brief();
    CurrentPlan current = Sample.current(MADE);
    Counted count = new Counted(new YarnAmount.Length(77_000), List.of("r1c3"), List.of(), 0);
    List<Yarn> yarns =
        current.brief().yarns().stream()
            .map(
                yarn ->
                    switch (yarn.code()) {
                      case "MUD" -> yarn.withCount(Optional.of(count));
                      case "REE" -> yarn.withBalls(9);
                      case "SKY" -> yarn.withGone(true);
                      default -> yarn.withLeft(Optional.of(new YarnAmount.Length(1000)));
                    })
            .toList();
    Changed changed =
        changed(
            new CurrentPlan(current.brief().withYarns(yarns), current.sequences()), asked, "REE");
    assertAll(
        () -> assertEquals(Optional.of(count), yarn(changed, "MUD").counted()),
        () -> assertEquals(9, yarn(changed, "REE").balls()),
        () -> assertTrue(yarn(changed, "SKY").gone()),
        () -> assertFalse(yarn(changed, "PEA").gone()),
        // nothing has come about with it, so the brief says what there is
        () -> assertEquals(500_000, yarn(changed, "PEA").stockMillimetres()));
  }

  @Test
  void aYarnThatWasAddedStays() {
    CurrentPlan current = Sample.current();
    Brief asked = without(current.brief(), "SKY");
    assertEquals(3, changed(current, asked, "SKY").blanket().yarnIndex("SKY"));
  }

  @Test
  void anotherSizeKeepsTheTopLeft() {
    LayoutSize size = Sample.brief().layout();
    LayoutSize larger =
        new LayoutSize(
            size.setting(), 4, size.down(), size.sideTriangles(), size.cornerTriangles());
    Changed changed = changed(Sample.current(MADE), Sample.brief().withLayout(larger));
    Blanket now = changed.blanket();
    assertEquals("MUD REE PEA", Sample.locks(now, "r1c3"));
    assertEquals("~ ~ ~", Sample.codes(now, changed.earlier().orElseThrow(), "r1c4"));
  }

  @Test
  void whatIsWorkedCannotBeAskedOtherwise() {
    CurrentPlan current = Sample.current(MADE);
    assertEquals(
        "--brief new.yaml: Its motif of a square has 2 rounds, and 1 square of 3 rounds are worked."
            + " Keep as many rounds, or mark what is worked as planned",
        refused(
            current,
            read(",\n        {\"tone\": [\"dark\", \"mid\", \"light\"], \"metres\": 3}", "")));
  }

  @Test
  void whatIsBegunInAYarnGoesOnInIt() {
    Brief asked =
        Sample.brief()
            .withJoining(Sample.brief().joining().map(use -> new YarnUse("SKY", 3)))
            .withEdging(Sample.brief().edging());
    String joined = "{ at: r1c3, rounds: [MUD, REE, PEA], state: joined }";
    assertEquals(
        "--brief new.yaml: Its joining is in SKY, and has been begun in MUD. Keep MUD there, and ask"
            + " for a swap of MUD for SKY",
        refused(Sample.current(joined), asked));
    assertEquals(
        "SKY",
        changed(Sample.current(MADE), asked)
            .blanket()
            .brief()
            .joiningInOneYarn()
            .orElseThrow()
            .yarn());
  }
}
