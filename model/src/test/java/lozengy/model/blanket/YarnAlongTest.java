package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.Counted;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.check.YarnTotalsRule;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** Joining and edging by the metre, by a strip, and in several rounds. */
class YarnAlongTest {

  /** 2 x 2 straight squares of 10 cm: 4 seams, 40 cm in all, and an outline of 80 cm. */
  private static Brief with(String joining, String edging) {
    return BriefReader.read(
        SourceText.of(
            "brief.yaml",
            """
            format: lozengy-brief/1
            title: Four squares
            layout: { setting: straight, across: 2, down: 2 }
            motifs: { square: { side: 10 cm, rounds: [ { metres: 3 } ] } }
            joining: JOINING
            edging: EDGING
            yarns:
              - { code: MUD, colour: "#2c2a29", balls: 2, ball: { grams: 50, metres: 120 } }
              - { code: FOA, colour: "#f1eee3", left: 200 m }
            """
                .replace("JOINING", joining)
                .replace("EDGING", edging)));
  }

  @Test
  void aStripTellsWhatASeamTakes() {
    Brief brief =
        with(
            "{ yarn: MUD, sample: { length: 16 cm, takes: 0.5 g } }",
            "{ yarn: FOA, sample: { length: 8 in, takes: 2 m } }");
    Blanket blanket = Blanket.of(brief);

    // 0.5 g are 1.2 m; 1.2 m / 16 cm x 40 cm
    assertAll(
        () -> assertEquals(3000, blanket.fixedUse().joiningMillimetres()),
        () -> assertEquals(7874, blanket.fixedUse().edgingMillimetres()), // 2 m / 20.32 cm x 80 cm
        () -> assertEquals(brief, reread(brief)));
  }

  @Test
  void roundsOfTheEdgingAddUp() {
    assertAll(
        () -> assertEquals(3 * 80 * 40, edging("{ yarn: MUD, rounds: 3, metres-per-metre: 4 }")),
        // a strip of three rounds, 20 cm of each: 24 m / 60 cm x 240 cm
        () ->
            assertEquals(
                96_000,
                edging(
                    "{ yarn: MUD, rounds: 3, sample: { length: 20 cm, rounds: 3, takes: 10 g } }")));
  }

  @Test
  void roundsOfTheEdgingMayEachHaveTheirYarn() {
    Brief brief =
        with(
            "{ yarn: MUD, metres-per-metre: 3 }",
            "[ { yarn: MUD, metres-per-metre: 4 }, { yarn: FOA, rounds: 2, metres-per-metre: 5 },"
                + " { yarn: MUD, metres-per-metre: 1 } ]");
    Blanket blanket = Blanket.of(brief);
    Brief begun =
        brief.withYarns(
            List.of(
                brief.yarns().get(0),
                brief
                    .yarns()
                    .get(1)
                    .withCount(
                        Optional.of(
                            new Counted(new YarnAmount.Length(9_000), List.of(), List.of(), 25)))));
    Blanket edged = Blanket.of(begun);
    List<String> lines =
        new YarnTotalsRule().lines(blanket).stream().map(line -> line.path().toString()).toList();
    assertAll(
        () -> assertEquals(80 * 40 + 80 * 10, blanket.fixedUse().edgingMillimetres(0)),
        () -> assertEquals(2 * 80 * 50, blanket.fixedUse().edgingMillimetres(1)),
        () -> assertEquals(12_000, blanket.fixedUse().edgingMillimetres()),
        () -> assertEquals(8_000, blanket.fixedUse().millimetres(1)),
        () -> assertEquals(6_000, edged.fixedUse().edgingMillimetres(1)),
        () -> assertEquals(8_000, edged.fixedUse().wholeEdgingMillimetres(1)),
        () ->
            assertEquals(
                List.of("yarns[0]", "yarns[1]", "joining", "edging[0]", "edging[1]"), lines),
        () -> assertEquals(brief, reread(brief)));
  }

  @Test
  void anUnknownYarnOfTheEdgingIsToldWithItsRound() {
    InputException wrong =
        assertThrows(
            InputException.class,
            () ->
                with(
                    "{ yarn: MUD, metres-per-metre: 3 }",
                    "[ { yarn: MUD, metres-per-metre: 4 }, { yarn: FAO, metres-per-metre: 5 } ]"));
    assertEquals("edging[1].yarn", wrong.mistakes().get(0).path().toString());
  }

  private static long edging(String edging) {
    Brief brief = with("{ yarn: MUD, metres-per-metre: 3 }", edging);
    assertEquals(brief, reread(brief));
    return Blanket.of(brief).fixedUse().edgingMillimetres();
  }

  /** What was weighed in one yarn is as long in another, whose put-up may be untold. */
  @Test
  void aStripThatWasWeighedIsALengthInAnotherYarn() {
    Brief brief =
        with(
            "{ yarn: MUD, sample: { length: 16 cm, takes: 0.5 g } }",
            "{ yarn: FOA, metres-per-metre: 4 }");
    YarnUse other = brief.joiningInOneYarn().orElseThrow().in("FOA", brief.yarns().get(0).ball());
    Brief changed = brief.withJoining(Optional.of(other));

    assertEquals(3000, Blanket.of(changed).fixedUse().joiningMillimetres());
  }

  private static Brief reread(Brief brief) {
    return BriefReader.read(SourceText.of("again.json", BriefWriter.text(brief)));
  }
}
