package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.Schemas;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.CountsRule;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Targets;
import lozengy.model.wording.FaultWords;
import org.junit.jupiter.api.Test;

/** How many pieces show a yarn: read, written, judged, held against arrangements, and dealt. */
class CountsInBriefsTest {

  private static final String ROW =
      """
      format: lozengy-brief/1
      title: Row
      layout: { setting: straight, across: 6, down: 1 }
      motifs: { square: { side: 9 cm, rounds: [ { metres: 1 }, { metres: 2 } ] } }
      yarns:
        - { code: A, colour: "#202020", left: 100 m }
        - { code: B, colour: "#888888", left: 100 m }
        - { code: C, colour: "#f0f0f0", left: 100 m }
      """;

  @Test
  void countsReadBackAsWrittenAndHoldAgainstTheSchema() {
    String text =
        ROW
            + """
            look:
              counts:
                - { yarn: A, at: [r1c1, r1c3], rounds: border, at-least: 1, at-most: 2 }
                - { yarn: B, at-most: 0 }
                - { yarn: C, rounds: [1, border], at-least: 0 }
            """;
    assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.yaml", text)));
    Brief brief = brief(text);
    assertEquals(
        List.of(
            new Look.Count(
                "A",
                new Where(List.of("r1c1", "r1c3"), List.of(Where.BORDER)),
                1,
                OptionalInt.of(2)),
            new Look.Count("B", Where.EVERYWHERE, 0, OptionalInt.of(0)),
            new Look.Count(
                "C", new Where(List.of("all"), List.of(1, Where.BORDER)), 0, OptionalInt.empty())),
        brief.look().counts());
    String written = BriefWriter.text(brief);
    assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.json", written)));
    assertEquals(brief, BriefReader.read(SourceText.of("b.json", written)));
  }

  @Test
  void mistakesAreToldWithPlaceValueAndRemedy() {
    String text =
        ROW
            + """
            look:
              counts:
                - { yarn: A }
                - { yarn: D, at-most: 2 }
                - { at-most: 2 }
                - { yarn: A, at-least: 3, at-most: 2 }
                - { yarn: A, at: [r1c1, r1c2], at-least: 3 }
                - { yarn: A, at-least: -1 }
                - { yarn: A, at: r9c9, at-least: 1 }
                - { yarn: A, most: 1, at-least: 1 }
            """;
    assertEquals(
        List.of(
            "11 look.counts[0].at-least: The field at-least is missing. Add it, such as at-least:"
                + " 4, or at-most: 12",
            "12 look.counts[1].yarn: No yarn has the code \"D\". The yarns' codes are A, B, C",
            "13 look.counts[2].yarn: The field yarn is missing. Add it, such as yarn: MUD",
            "14 look.counts[3].at-least: At least 3 is more than at most 2. Lower at-least, or"
                + " raise at-most",
            "15 look.counts[4].at-least: At least 3 pieces are asked for, and only 2 have such a"
                + " round. Ask for no more than 2, or name more pieces in at",
            "16 look.counts[5].at-least: -1 is out of range. Give a whole number of pieces from 0"
                + " to 250000",
            "17 look.counts[6].at: There is no piece \"r9c9\". The rows are 1 to 1",
            "18 look.counts[7].most: The field \"most\" is not known here. Known here are yarn, at,"
                + " rounds, at-least, at-most"),
        mistakes(text));
    assertEquals(
        List.of(
            "10 pieces[0].rounds: 2 of all pieces have A in the border, and at most 1 are asked"
                + " for. Hold another yarn there, or change look.counts"),
        mistakes(
            ROW
                + """
                look: { counts: [ { yarn: A, rounds: border, at-most: 1 } ] }
                pieces: [ { at: [r1c1, r1c3], rounds: [.., A] } ]
                """));
  }

  @Test
  void faultsAreToldInWordsAndWhatIsWorkedIsAFact() {
    Blanket blanket =
        Blanket.of(
            brief(
                ROW
                    + """
                    look:
                      counts:
                        - { yarn: A, at: r1c1..r1c4, rounds: border, at-most: 1 }
                        - { yarn: B, at: r1c1..r1c4, at-least: 3 }
                        - { yarn: C, at: [r1c1, r1c3], at-least: 2 }
                    pieces: [ { at: [r1c1, r1c3], rounds: [B, A], state: made } ]
                    """));
    Sequences sequences = blanket.locks();
    assertEquals(List.of(), faults(blanket, sequences), "what is worked, and rounds still open");
    sequences.set(1, 0, 2);
    assertEquals(List.of(), faults(blanket, sequences), "the border may still be B");
    sequences.set(1, 1, 0);
    assertEquals(
        List.of("3 of r1c1..r1c4 have A in the border, and at most 1 are asked for"),
        faults(blanket, sequences));
    sequences.set(3, 0, 0);
    sequences.set(3, 1, 2);
    assertEquals(
        List.of(
            "3 of r1c1..r1c4 have A in the border, and at most 1 are asked for",
            "2 of r1c1..r1c4 have B in some round, and at least 3 are asked for"),
        faults(blanket, sequences));
  }

  @Test
  void countsMoveTheTargets() {
    assertArrayEquals(new int[][] {{2, 2, 2}, {2, 2, 2}}, targets(""));
    assertArrayEquals(
        new int[][] {{1, 3, 2}, {2, 2, 2}},
        targets("{ yarn: A, rounds: border, at-most: 1 }"),
        "the rest is shared out");
    assertArrayEquals(
        new int[][] {{5, 1, 0}, {2, 2, 2}}, targets("{ yarn: A, rounds: border, at-least: 5 }"));
    assertArrayEquals(
        new int[][] {{1, 3, 2}, {1, 3, 2}},
        targets("{ yarn: A, at-most: 2 }"),
        "two pieces, a round each");
    assertArrayEquals(
        new int[][] {{0, 1, 5}, {2, 2, 2}},
        targets("{ yarn: A, rounds: border, at-most: 0 }, { yarn: B, rounds: border, at-most: 1 }"),
        "what the first count adds to B the second takes off");
    assertArrayEquals(
        new int[][] {{2, 3, 1}, {0, 3, 3}},
        targets(
            "{ yarn: A, at-most: 2 }, { yarn: A, at: r1c1..r1c3, rounds: border, at-least: 2 }"),
        "a count that holds is not broken for another");
    assertArrayEquals(
        new int[][] {{4, 1, 1}, {2, 2, 2}},
        targets("{ yarn: A, at: r1c1..r1c3, rounds: border, at-least: 3 }"),
        "three of three, and one of the other three");
  }

  private static int[][] targets(String counts) {
    return Targets.of(Blanket.of(brief(ROW + "look: { counts: [ " + counts + " ] }\n"))).counts();
  }

  private static List<String> faults(Blanket blanket, Sequences sequences) {
    return new CountsRule()
        .faults(blanket, sequences).stream().map(new FaultWords(blanket)::of).toList();
  }

  private static Brief brief(String text) {
    return BriefReader.read(SourceText.of("b.yaml", text));
  }

  private static List<String> mistakes(String text) {
    InputException wrong = assertThrows(InputException.class, () -> brief(text));
    return wrong.mistakes().stream()
        .map(each -> each.line() + " " + each.path() + ": " + each.found() + ". " + each.remedy())
        .toList();
  }
}
