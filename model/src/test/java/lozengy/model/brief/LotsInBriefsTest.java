package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import lozengy.model.Schemas;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** Dye lots of a brief: read, written, judged. */
class LotsInBriefsTest {

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Lots
      layout: { setting: straight, across: 2, down: 2 }
      motifs: { square: { side: 9 cm, rounds: [ { metres: 1 }, { metres: 2 } ] } }
      yarns:
        - { code: MUD, colour: "#202020", left: 100 m }
        - { code: REE, colour: "#888888", left: 100 m }
        - { code: FOA, colour: "#f0f0f0", left: 100 m }
        - { code: REE2, colour: "#8a8a88", left: 20 m, lot-of: %s }
        - { code: REE3, colour: "#868888", left: 20 m, lot-of: %s }
      """;

  private static Brief read(String text) {
    assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.yaml", text)));
    return BriefReader.read(SourceText.of("b.yaml", text));
  }

  private static List<String> mistakes(String text) {
    InputException told =
        assertThrows(InputException.class, () -> BriefReader.read(SourceText.of("b.yaml", text)));
    return told.mistakes().stream()
        .map(each -> each.line() + " " + each.path() + ": " + each.found() + ". " + each.remedy())
        .toList();
  }

  @Test
  void lotsReadBackAsWritten() {
    Brief brief = read(BRIEF.formatted("REE", "REE2"));
    assertEquals(Optional.of("REE2"), brief.yarns().get(4).lotOf());
    assertEquals(List.of(List.of(1, 3, 4)), Lots.of(brief.yarns()).shades());
    Brief free = read(BRIEF.formatted("REE", "REE2") + "rules: { lots: free }");
    assertFalse(free.rules().lotsApart());
    assertEquals(brief, read(BRIEF.formatted("REE", "REE2") + "rules: { lots: apart }"));
    for (Brief each : List.of(brief, free)) {
      assertEquals(each, read(BriefWriter.text(each)));
    }
  }

  @Test
  void lotsThatNameEachOtherAreOfOneShade() {
    Brief brief = read(BRIEF.formatted("REE3", "REE2"));
    assertEquals(List.of(List.of(3, 4)), Lots.of(brief.yarns()).shades());
  }

  @Test
  void mistakesAreToldWithPlaceValueAndRemedy() {
    assertEquals(
        List.of(
            "9 yarns[3].lot-of: No yarn has the code \"REED\". Maybe REE is meant",
            "10 yarns[4].lot-of: REE3 cannot be another dye lot of itself. Name the yarn that it is"
                + " another dye lot of, or leave lot-of out"),
        mistakes(BRIEF.formatted("REED", "REE3")));
    assertEquals(
        List.of(
            "9 yarns[3].lot-of: REE2 is mid, and FOA is light: dye lots of one shade have one tone."
                + " State the same tone for both, or leave lot-of out"),
        mistakes(BRIEF.formatted("FOA", "REE")));
    assertEquals(
        List.of("11 rules.lots: \"near\" is not known here. Write apart or free"),
        mistakes(BRIEF.formatted("REE", "REE") + "rules: { lots: near }"));
  }

  @Test
  void lotsOfOneShadeCannotAlternateAsBorders() {
    String text = BRIEF.formatted("REE", "REE2") + "look: { borders: [REE3, REE] }\n";
    assertEquals(
        List.of(
            "11 look.borders: REE3 and REE are dye lots of one shade and would alternate. Name"
                + " yarns of two shades, or write rules.lots: free"),
        mistakes(text));
    assertEquals(List.of("REE3", "REE"), read(text + "rules: { lots: free }").look().borders());
  }
}
