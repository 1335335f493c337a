package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.Schemas;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.score.Targets;
import org.junit.jupiter.api.Test;

/** The looks that a brief asks for: read, written, judged, and held against arrangements. */
class LooksInBriefsTest {

  private static final String PLAIN =
      """
      format: lozengy-brief/1
      title: Looks
      layout: { setting: on-point, across: 2, down: 2, sides: triangles, corners: triangles }
      motifs:
        square: { side: 9 cm, rounds: [ { metres: 1 }, { metres: 2 } ] }
        triangle: { rounds: [ { tone: [light, mid], metres: 1 } ] }
        corner: { rounds: [ { metres: 1 } ] }
      yarns:
        - { code: MUD, colour: "#202020", left: 100 m }
        - { code: REE, colour: "#888888", left: 100 m }
        - { code: FOA, colour: "#f0f0f0", left: 100 m }
      """;

  @Test
  void looksReadBackAsWrittenAndHoldAgainstTheSchema() {
    String text =
        PLAIN
            + """
            look:
              contrast: calm
              zones:
                - { at: [triangles, corners], only: [REE, FOA] }
                - { at: row2, rounds: [1, border], only: MUD }
                - { rounds: border, only: [REE, MUD, FOA] }
              apart: [ [MUD, FOA] ]
            """;
    assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.yaml", text)));
    Brief brief = brief(text);
    Look look = brief.look();
    assertEquals(Look.CALM, look.contrast());
    assertEquals(new Where(List.of("row2"), List.of(1, Where.BORDER)), look.zones().get(1).where());
    assertEquals(Where.BORDERS, look.zones().get(2).where());
    assertEquals(List.of(new Look.Pair("MUD", "FOA")), look.apart());
    String written = BriefWriter.text(brief);
    assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.json", written)));
    assertEquals(brief, BriefReader.read(SourceText.of("b.json", written)));
    assertEquals(
        List.of("MUD"),
        brief(PLAIN.replace("tone: [light, mid], ", "") + "look: { borders: MUD }")
            .look()
            .borders());
  }

  @Test
  void aBriefWithoutALookSaysNothingOfOne() {
    assertEquals(Look.NONE, brief(PLAIN).look());
    assertTrue(!BriefWriter.text(brief(PLAIN)).contains("look"));
  }

  @Test
  void mistakesAreToldWithPlaceValueAndRemedy() {
    assertEquals(
        List.of(
            "13 look.contrast: \"loud\" is not a number. Write calm or lively, or give a number of"
                + " percent from 0 to 100",
            "14 look.zones[0].only: No yarn has the code \"MUT\". Maybe MUD is meant",
            "15 look.zones[1].at: There is no piece \"row9\". The rows are row1 to row3",
            "16 look.zones[2].rounds: None of these pieces has round 2. Count the rounds from 1 at"
                + " the centre, or write border",
            "17 look.zones[3].only: The field only is missing. Add it, such as only: [MUD, REE]",
            "18 look.apart[0]: 3 yarns are named. Name two, such as [MUD, REE]",
            "19 look.apart[1][1]: REE is named twice. Name another yarn, or leave one out",
            "20 look.borders: 3 yarns are named. Name one for all borders, or two that alternate",
            "21 look.zone: The field \"zone\" is not known here. Maybe zones is meant"),
        mistakes(
            """
            look:
              contrast: loud
              zones: [ { only: MUT },
                       { at: row9, only: MUD },
                       { at: corners, rounds: 2, only: MUD },
                       { at: corners } ]
              apart: [ [MUD, REE, FOA],
                       [REE, REE] ]
              borders: [MUD, REE, FOA]
              zone: 1
            """));
  }

  @Test
  void contradictionsAreToldWithPlaceValueAndRemedy() {
    assertEquals(
        List.of(
            "13 look.borders: MUD is dark, which the border of a triangle is not. Name another"
                + " yarn, or let motifs.triangle.rounds[0] take it",
            "14 look.apart[0]: FOA and MUD alternate as borders. Keep them apart, or let"
                + " look.borders alternate, not both"),
        mistakes(
            """
            look:
              borders: [MUD, FOA]
              apart: [ [FOA, MUD] ]
            """));
    assertEquals(
        List.of(
            "13 pieces[0].rounds: r1c1: the border has MUD, but the look gives it REE. Hold another"
                + " yarn there, or change look.borders"),
        mistakes(
            """
            look: { borders: REE }
            pieces: [ { at: r1c1, rounds: [~, MUD] } ]
            """));
    assertEquals(
        List.of(
            "13 pieces[0].rounds: r1c1: round 1 has MUD, but its zone takes only REE. Hold another"
                + " yarn there, or change the zone"),
        mistakes(
            """
            look: { zones: [ { at: r1c1, only: REE } ] }
            pieces: [ { at: r1c1, rounds: [MUD, ~] } ]
            """));
  }

  @Test
  void faultsAreToldInWords() {
    Blanket blanket =
        Blanket.of(
            brief(
                PLAIN
                    + """
                    look:
                      zones: [ { at: squares, rounds: 1, only: [REE, FOA] } ]
                      apart: [ [MUD, FOA] ]
                    pieces: [ { at: r1c1, rounds: [MUD, MUD], state: joined } ]
                    """));
    Sequences sequences = blanket.locks();
    set(blanket, sequences, "r1c2", "MUD", "REE");
    set(blanket, sequences, "r2c1", "REE", "FOA");
    set(blanket, sequences, "r3c1", "REE", "MUD");
    assertEquals(
        List.of(
            "zones: r1c2: round 1 has MUD, but its zone takes only REE and FOA",
            "apart: r1c1 and r2c1 are joined along a side, and their borders MUD and FOA are to be"
                + " kept apart",
            "apart: r2c1 and r3c1 are joined along a side, and their borders FOA and MUD are to be"
                + " kept apart"),
        faults(blanket, sequences));
  }

  @Test
  void theNeighbourRuleGivesWayOnlyBetweenBordersThatTheLookGives() {
    Blanket blanket =
        Blanket.of(
            brief(
                PLAIN
                    + """
                    look: { borders: REE }
                    pieces: [ { at: r2c1, rounds: [MUD, FOA], state: made } ]
                    """));
    Sequences sequences = blanket.locks();
    assertEquals(List.of(), faults(blanket, sequences), "all borders are locked by the look");
    assertEquals(blanket.yarnIndex("REE"), sequences.border(0));
    set(blanket, sequences, "r1c1", "MUD", "FOA");
    assertEquals(
        List.of(
            "borders: r1c1: the border has FOA, but the look gives it REE",
            "neighbour-borders: r1c1 and r2c1 are joined along a side and both have the border"
                + " FOA"),
        faults(blanket, sequences));
  }

  @Test
  void alternatingBordersMakeAChessboard() {
    for (String layout :
        List.of("setting: on-point, across: 3, down: 2", "setting: straight, across: 3, down: 3")) {
      String text =
          PLAIN.replaceFirst("setting: on-point, across: 2, down: 2.*", layout + " }")
              + "look: { borders: [FOA, MUD] }\n";
      Blanket blanket =
          Blanket.of(brief(text.replace("tone: [light, mid], ", "").replace("straight }", "")));
      int seams = blanket.layout().seams().size();
      for (int seam = 0; seam < seams; seam++) {
        int first = blanket.locks().border(blanket.layout().seams().first()[seam]);
        int second = blanket.locks().border(blanket.layout().seams().second()[seam]);
        assertEquals(2, first + second, "a seam has FOA (2) on one side and MUD (0) on the other");
      }
      assertTrue(seams > 5);
      assertEquals(2, blanket.locks().border(0), "r1c1 takes the first");
    }
  }

  @Test
  void targetsFollowZonesAndGivenBorders() {
    Blanket zoned =
        Blanket.of(brief(PLAIN + "look: { zones: [ { at: squares, rounds: 1, only: [MUD] } ] }"));
    assertEquals(5, Targets.of(zoned).counts()[1][zoned.yarnIndex("MUD")]);
    Blanket given = Blanket.of(brief(PLAIN + "look: { borders: REE }"));
    assertEquals(13, Targets.of(given).counts()[0][given.yarnIndex("REE")]);
  }

  private static void set(Blanket blanket, Sequences sequences, String piece, String... codes) {
    int index = blanket.layout().find(piece).orElseThrow().index();
    for (int round = 0; round < codes.length; round++) {
      sequences.set(index, round, blanket.yarnIndex(codes[round]));
    }
  }

  private static List<String> faults(Blanket blanket, Sequences sequences) {
    List<String> words = new ArrayList<>();
    for (Fault fault : Check.faults(blanket, sequences)) {
      String rule = fault.rule().word();
      if (!List.of("complete", "within-piece", "locks").contains(rule)) {
        words.add(rule + ": " + fault.words());
      }
    }
    return words;
  }

  private static Brief brief(String text) {
    return BriefReader.read(SourceText.of("b.yaml", text));
  }

  private static List<String> mistakes(String look) {
    InputException wrong = assertThrows(InputException.class, () -> brief(PLAIN + look));
    return wrong.mistakes().stream()
        .map(each -> each.line() + " " + each.path() + ": " + each.found() + ". " + each.remedy())
        .toList();
  }
}
