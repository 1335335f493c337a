package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.Schemas;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import lozengy.model.score.Targets;
import lozengy.model.wording.FaultWords;
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
              symmetry: left-right
              contrast: calm
              zones:
                - { at: [triangles, corners], only: [REE, FOA] }
                - { at: row2, rounds: [1, border], only: MUD }
                - { rounds: border, only: [REE, MUD, FOA] }
              apart: [ [MUD, FOA] ]
              fade: { towards: bottom-right, order: [MUD, FOA], at: squares, rounds: all }
            prefer: { fade: high }
            """;
    assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.yaml", text)));
    Brief brief = brief(text);
    Look look = brief.look();
    assertEquals(Symmetry.LEFT_RIGHT, look.symmetry());
    assertEquals(new Look.Contrast(Look.CALM, Look.CALM), look.contrast());
    assertEquals(new Where(List.of("row2"), List.of(1, Where.BORDER)), look.zones().get(1).where());
    assertEquals(Where.BORDERS, look.zones().get(2).where());
    assertEquals(List.of(new Look.Pair("MUD", "FOA")), look.apart());
    assertEquals(
        new Fade(
            Fade.Towards.BOTTOM_RIGHT,
            Fade.Order.STATED,
            List.of("MUD", "FOA"),
            new Where(List.of("squares"), List.of())),
        look.fade().orElseThrow());
    assertEquals(9, brief.prefer().weight(Part.FADE));
    Brief silent = brief(PLAIN + "look: { fade: { towards: outline } }");
    assertEquals(3, silent.prefer().weight(Part.FADE));
    assertEquals(0, brief(PLAIN).prefer().weight(Part.FADE));
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
  void anOrderIsReadWeighedAndWritten() {
    Brief asked = brief(PLAIN + "look: { order: scattered }");
    assertEquals(Optional.of(Order.SCATTERED), asked.look().order());
    assertEquals(3, asked.prefer().weight(Part.ORDER));
    Brief off = brief(PLAIN + "look: { order: ordered }\nprefer: { order: 0 }");
    assertEquals(Optional.of(Order.ORDERED), off.look().order());
    assertEquals(0, off.prefer().weight(Part.ORDER));
    assertEquals(0, brief(PLAIN).prefer().weight(Part.ORDER));
    for (Brief each : List.of(asked, off, brief(PLAIN + "prefer: { order: high }"))) {
      String written = BriefWriter.text(each);
      assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.json", written)));
      assertEquals(each, BriefReader.read(SourceText.of("b.json", written)));
    }
    assertEquals(
        List.of("12 look.order: \"neat\" is not known here. Write scattered or ordered"),
        mistakes("look: { order: neat }\n"));
  }

  @Test
  void contrastIsReadWeighedAndWrittenApart() {
    Brief apart =
        brief(
            PLAIN
                + """
                look: { contrast: { between: calm, within: 70 } }
                prefer: { contrast-between: high, contrast-within: 2 }
                """);
    assertEquals(new Look.Contrast(Look.CALM, 70), apart.look().contrast());
    assertEquals(9, apart.prefer().weight(Part.CONTRAST_BETWEEN));
    assertEquals(2, apart.prefer().weight(Part.CONTRAST_WITHIN));
    assertEquals(0, apart.prefer().weight(Part.CONTRAST));
    Brief half = brief(PLAIN + "look: { contrast: { within: calm } }");
    assertEquals(new Look.Contrast(Look.LIVELY, Look.CALM), half.look().contrast());
    assertEquals(Preferences.DEFAULT, half.prefer());
    Brief both = brief(PLAIN + "prefer: { contrast: 1, contrast-within: 2 }");
    assertEquals(1, both.prefer().weight(Part.CONTRAST));
    Brief off = brief(PLAIN + "prefer: { contrast-within: off }");
    assertEquals(1, off.prefer().weight(Part.CONTRAST));
    for (Brief each : List.of(apart, half, both, off)) {
      String written = BriefWriter.text(each);
      assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.json", written)));
      assertEquals(each, BriefReader.read(SourceText.of("b.json", written)));
    }
    assertEquals(
        List.of(
            "12 look.contrast.between: \"loud\" is not a number. Write calm or lively, or give a"
                + " number of percent from 0 to 100",
            "12 look.contrast.beside: The field \"beside\" is not known here. Known here are"
                + " between, within"),
        mistakes("look: { contrast: { between: loud, beside: calm } }\n"));
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
            "21 look.fade.towards: \"down\" is not known here. Write right, bottom-right, bottom,"
                + " bottom-left, left, top-left, top, top-right, outline or centre",
            "22 look.zone: The field \"zone\" is not known here. Maybe zones is meant"),
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
              fade: { towards: down }
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
  void imagesFollowWhatIsLockedOrWorkedAndDifferencesAreFaults() {
    Blanket blanket =
        Blanket.of(
            brief(
                PLAIN
                    + """
                    look: { symmetry: both }
                    pieces:
                      - { at: r1c1, rounds: [REE, MUD], state: made }
                      - { at: top1, rounds: [FOA] }
                    """));
    Sequences sequences = blanket.locks();
    for (String image : List.of("r1c1", "r1c2", "r3c1", "r3c2")) {
      int piece = blanket.layout().find(image).orElseThrow().index();
      assertEquals(blanket.yarnIndex("MUD"), sequences.border(piece), image);
    }
    int bottom = blanket.layout().find("bottom1").orElseThrow().index();
    assertEquals(blanket.yarnIndex("FOA"), sequences.border(bottom));
    assertEquals(5, blanket.orbits().leads().length, "r1c1, r2c1, a triangle each way, a corner");
    set(blanket, sequences, "r3c2", "REE", "REE");
    assertEquals(
        List.of(
            "symmetry: r1c1 and r3c2 are each other's images (both), but the border is MUD in the"
                + " one and REE in the other"),
        faults(blanket, sequences));
    assertEquals(
        List.of(
            "13 pieces[1].rounds: r1c1 and r1c2 are each other's images (left-right), but the"
                + " border is MUD in the one and FOA in the other. Give both the same yarn, or"
                + " change look.symmetry"),
        mistakes(
            """
            pieces: [ { at: r1c1, rounds: [~, MUD] },
                      { at: r1c2, rounds: [~, FOA] } ]
            look: { symmetry: left-right }
            """));
  }

  @Test
  void imagesThatAreAllWorkedAreFactsAndImagesCountAsOneForCopies() {
    Blanket blanket =
        Blanket.of(
            brief(
                PLAIN
                    + """
                    rules: { copies: 1 }
                    look: { symmetry: left-right }
                    pieces:
                      - { at: r1c1, rounds: [REE, MUD], state: made }
                      - { at: r1c2, rounds: [MUD, FOA], state: made }
                    """));
    Sequences sequences = blanket.locks();
    assertEquals(List.of(), faults(blanket, sequences));
    set(blanket, sequences, "r3c1", "FOA", "REE");
    set(blanket, sequences, "r3c2", "FOA", "REE");
    assertEquals(List.of(), faults(blanket, sequences));
    set(blanket, sequences, "r2c1", "FOA", "REE");
    assertTrue(faults(blanket, sequences).toString().contains("2 pieces, 1 allowed"));
  }

  @Test
  void aMarkThatChangesNoYarnChangesNeitherVarietyNorFaults() {
    String locked =
        PLAIN.replace("sides: triangles, corners: triangles", "sides: open, corners: open")
            + """
            rules: { copies: 2 }
            look: { symmetry: left-right }
            pieces:
              - { at: [r1c1, r1c2], rounds: [REE, MUD] }
              - { at: [r3c1, r3c2], rounds: [REE, MUD] }
              - { at: r2c1, rounds: [MUD, FOA] }
            """;
    Blanket planned = Blanket.of(brief(locked));
    Sequences sequences = planned.locks();
    assertEquals(List.of(), faults(planned, sequences));
    double variety = variety(planned, sequences);
    for (String images : List.of("r1c1, r1c2", "r3c1, r3c2")) {
      int end = locked.indexOf(" }", locked.indexOf(images));
      String made = locked.substring(0, end) + ", state: made" + locked.substring(end);
      Blanket marked = Blanket.of(brief(made));
      assertEquals(List.of(), faults(marked, sequences), images);
      assertEquals(variety, variety(marked, sequences), images);
    }
  }

  private static double variety(Blanket blanket, Sequences sequences) {
    return Scorer.score(blanket, sequences, Optional.empty()).parts().get(Part.VARIETY);
  }

  @Test
  void aFadeIsSpearmansRankCorrelationWhereEachYarnHasItsShare() {
    String row =
        """
        format: lozengy-brief/1
        title: Row
        layout: { setting: straight, across: 4, down: 1 }
        motifs: { square: { side: 9 cm, rounds: [ { metres: 1 } ] } }
        yarns:
          - { code: D, colour: "#000000", left: 100 m }
          - { code: A, colour: "#ffffff", left: 100 m }
          - { code: C, colour: "#444444", left: 100 m }
          - { code: B, colour: "#999999", left: 100 m }
        prefer: { fade: 1 }
        look: { fade: { towards: right } }
        """;
    Blanket blanket = Blanket.of(brief(row));
    // with four ranks 300 / 4 x sum of d squared is 75/16 of the sum over ranks, and r is 1 -
    // sum/10
    assertEquals(100, fade(blanket, "D", "C", "B", "A"), 1e-9);
    assertEquals(100 - 75.0 / 16 * 2, fade(blanket, "D", "B", "C", "A"), 1e-9);
    assertEquals(100 - 75.0 / 16 * 20, fade(blanket, "A", "B", "C", "D"), 1e-9);
    Blanket stated =
        Blanket.of(brief(row.replace("towards: right", "towards: left, order: [A, B]")));
    // B lies at 5/8 and belongs at 3/4, A lies at 3/8 and belongs at 1/4; C and D are out of it
    assertEquals(100 - 75 * (2 / 64.0 + 2 / 6.0), fade(stated, "C", "B", "A", "D"), 1e-9);
  }

  private static double fade(Blanket blanket, String... codes) {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < codes.length; piece++) {
      sequences.set(piece, 0, blanket.yarnIndex(codes[piece]));
    }
    return Scorer.score(blanket, sequences, Optional.empty()).parts().get(Part.FADE);
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
        words.add(rule + ": " + new FaultWords(blanket).of(fault));
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
