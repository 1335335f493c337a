package lozengy.model.arrangement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefJudge;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArrangementFileTest {

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Pincushion
      layout: { setting: straight, across: 2, down: 2 }
      motifs: { square: { side: 5 cm, rounds: [ { metres: 1.25 }, { metres: 2 } ] } }
      yarns:
        - { code: MUD, name: Tidal mud, colour: "#2c2a29", left: 20 m }
        - { code: REE, name: Reed, colour: "#d9d59a", left: 20 m }
      pieces:
        - { at: r1c1, rounds: [MUD, REE], state: made, not: MUD }
        - { at: [r1c2, r2c1], rounds: [~, MUD] }
      """;

  /** The file below, field by field; the score is not worked out. */
  private static Arrangement arrangement() {
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("b.yaml", BRIEF)));
    Sequences sequences = blanket.locks();
    sequences.set(1, 0, 1);
    sequences.set(2, 0, 1);
    sequences.set(3, 0, 0);
    sequences.set(3, 1, 1);
    Map<Part, Double> parts = new EnumMap<>(Part.class);
    parts.put(Part.BALANCE, 100.0);
    parts.put(Part.SPREAD, 200.0 / 3);
    return new Arrangement(
        blanket,
        sequences,
        Optional.empty(),
        new Score(81.25, 81.25, parts),
        Optional.of(new Arrangement.Bound(93.4, "windows")),
        Optional.of(new Arrangement.Solved(7, 1000, Optional.of(1.5), "0.1.0", "none")));
  }

  private static final String FILE =
      """
      {
        "format": "lozengy-arrangement/1",
        "title": "Pincushion",
        "pieces": [
          {"at": "r1c1", "kind": "square", "state": "made", "rounds": ["MUD", "REE"], "x": 1, "y": 1},
          {"at": "r1c2", "kind": "square", "state": "planned", "rounds": ["REE", "MUD"], "x": 3, "y": 1},
          {"at": "r2c1", "kind": "square", "state": "planned", "rounds": ["REE", "MUD"], "x": 1, "y": 3},
          {"at": "r2c2", "kind": "square", "state": "planned", "rounds": ["MUD", "REE"], "x": 3, "y": 3}
        ],
        "yarns": [
          {"code": "MUD", "name": "Tidal mud", "available_m": 20, "used_m": 6.5, "left_m": 13.5},
          {"code": "REE", "name": "Reed", "available_m": 20, "used_m": 6.5, "left_m": 13.5}
        ],
        "score": {"total": 81.25, "parts": {"balance": 100, "spread": 66.666667, "contrast": null, "variety": null, "leeway": null}, "keep": null, "objective": 81.25, "bound": 93.4, "bound_proof": "windows"},
        "solved": {"seed": 7, "moves": 1000, "seconds": 1.5, "version": "0.1.0", "proof": "none"},
        "brief": {
          "format": "lozengy-brief/1",
          "title": "Pincushion",
          "layout": {"setting": "straight", "across": 2, "down": 2},
          "motifs": {
            "square": {
              "side": "5 cm",
              "rounds": [
                {"tone": ["dark", "mid", "light"], "metres": 1.25},
                {"tone": ["dark", "mid", "light"], "metres": 2}
              ]
            }
          },
          "yarns": [
            {"code": "MUD", "name": "Tidal mud", "colour": "#2c2a29", "balls": 0, "left": "20 m", "share": 1},
            {"code": "REE", "name": "Reed", "colour": "#d9d59a", "balls": 0, "left": "20 m", "share": 1}
          ],
          "tones": {"dark-below": 42, "light-from": 68},
          "rules": {"neighbour-borders": "differ", "min-contrast": 0, "within-piece": "adjacent-differ", "copies": "free", "keep-back": "0 %"},
          "prefer": {"balance": 3, "spread": 3, "contrast": 1, "variety": 1, "leeway": 1, "keep": 3},
          "pieces": [
            {"at": ["r1c1"], "rounds": ["MUD", "REE"], "state": "made", "not": ["MUD"]},
            {"at": ["r1c2", "r2c1"], "rounds": [null, "MUD"], "state": "planned"}
          ]
        }
      }
      """;

  private static StatedArrangement read(String text) {
    return ArrangementReader.read(SourceText.of("a.json", text));
  }

  @Test
  void aFileThatDoesNotSayHowManyWalkersHadTwo() {
    assertEquals(2, read(FILE).solved().orElseThrow().walkers());
    String three = edited("\"moves\": 1000, ", "\"moves\": 1000, \"walkers\": 3, ");
    assertEquals(3, read(three).solved().orElseThrow().walkers());
    assertEquals(
        1, mistakes(edited("\"moves\": 1000, ", "\"moves\": 1000, \"walkers\": 0, ")).size());
  }

  private static List<String> mistakes(String text) {
    InputException thrown = assertThrows(InputException.class, () -> read(text));
    return thrown.mistakes().stream().map(Mistake::words).toList();
  }

  private static String edited(String from, String to) {
    String edited = FILE.replace(from, to);
    assertTrue(FILE.contains(from), from);
    return edited;
  }

  /** Nothing is taken over that was reckoned by other formulas: keep was part of the total once. */
  @Test
  void scoresOfEarlierVersionsAreToldApart() {
    String former =
        edited("}, \"keep\": null, \"objective\": 81.25,", ", \"keep\": 90},")
            .replace("\"proof\": \"none\"", "\"proof\": \"optimal\"");
    StatedArrangement stated = read(former);
    assertEquals(Optional.of(81.25), stated.formerTotal());
    assertEquals(Optional.empty(), stated.score());
    assertEquals(Optional.empty(), stated.bound());
    assertEquals("none", stated.solved().orElseThrow().proof());
    StatedArrangement now = read(FILE);
    assertEquals(Optional.empty(), now.formerTotal());
    assertEquals(81.25, now.score().orElseThrow().total());
    assertEquals(93.4, now.bound().orElseThrow().total());
  }

  @Test
  void theFileIsWrittenToTheByte() {
    assertEquals(FILE, ArrangementWriter.text(arrangement()));
  }

  @Test
  void theFileIsRead() {
    StatedArrangement read = read(FILE);
    assertEquals(arrangement().sequences(), read.sequences());
    assertEquals(arrangement().blanket().brief(), read.blanket().brief());
    assertEquals(
        Map.of(Part.BALANCE, 100.0, Part.SPREAD, 66.666667), read.score().orElseThrow().parts());
    assertEquals(Optional.of(13.5), read.yarns().get(0).leftMetres());
    assertEquals(
        Scorer.score(read.blanket(), read.sequences(), Optional.empty()), read.scored().score());
  }

  @Test
  void whatFollowsFromTheRestMayBeLeftOut() {
    String bare =
        FILE.replaceAll("\"(kind|state)\": \"\\w+\", (?=.*\"x\")", "")
            .replaceAll(", \"x\": \\d, \"y\": \\d", "")
            .replaceAll("(?m)^  \"(score|solved)\".*\n", "")
            .replaceAll("(?s)  \"yarns\": \\[.*?\\],\n  \"brief\"", "  \"brief\"");
    StatedArrangement read = read(bare);
    assertEquals(arrangement().sequences(), read.sequences());
    assertEquals(Optional.empty(), read.score());
    assertEquals(Optional.empty(), read.solved());
    assertEquals(List.of(), read.yarns());
    assertEquals(PieceState.MADE, read.blanket().state(0));
    assertEquals(Set.of("kind", "state", "x", "y"), read.leftOut().keySet());
    assertEquals(List.of(0, 1, 2, 3), read.leftOut().get("state"));
    assertEquals(
        List.of(
            "kind of r1c1, r1c2, r2c1 and r2c2: what layout and brief make it",
            "score: in total 74.444444",
            "the yarn MUD: a yarn of its brief"),
        Contradictions.of(read).stream()
            .filter(each -> each.stated().isEmpty())
            .map(each -> each.what() + ": " + each.right())
            .filter(words -> words.matches(".*(kind|score|MUD).*"))
            .toList());
  }

  @Test
  void openRoundsAreRead() {
    StatedArrangement read =
        read(
            edited(
                "\"planned\", \"rounds\": [\"MUD\", \"REE\"], \"x\": 3",
                "\"planned\", \"rounds\": [null, \"REE\"], \"x\": 3"));
    assertEquals(Sequences.OPEN, read.sequences().yarn(3, 0));
    assertEquals(1, read.sequences().yarn(3, 1));
    assertThrows(IllegalArgumentException.class, read::scored);
  }

  /** Rules are for the check to judge. */
  @Test
  void rulesMayBeBroken() {
    StatedArrangement read =
        read(
            edited(
                "\"rounds\": [\"REE\", \"MUD\"], \"x\": 3",
                "\"rounds\": [\"REE\", \"REE\"], \"x\": 3"));
    assertEquals(1, read.sequences().yarn(1, 1));
    assertEquals(0, read.blanket().locked(1, 1));
  }

  /** The brief is the truth about what has been worked. */
  @Test
  void whatContradictsTheBriefIsRefused() {
    String text =
        edited(
                "  \"title\": \"Pincushion\",\n  \"pieces\"",
                "  \"title\": \"Other\",\n  \"pieces\"")
            .replace(
                "\"made\", \"rounds\": [\"MUD\", \"REE\"], \"x\": 1",
                "\"planned\", \"rounds\": [\"MUD\", \"MUD\"], \"x\": 1")
            .replace(
                "\"r1c2\", \"kind\": \"square\", \"state\": \"planned\"",
                "\"r1c2\", \"kind\": \"square\", \"state\": \"joined\", \"pile\": true");
    assertEquals(
        List.of(
            "line 3, title: The title is \"Other\" here, but not in the brief. Write"
                + " \"Pincushion\", as the brief in this file says",
            "line 5, pieces[0].rounds[1]: r1c1 is made in REE by the brief, but here in MUD. Write"
                + " REE; what it was really worked in is for a mark to say",
            "line 5, pieces[0].state: r1c1 is stated to be planned. It is made by the brief; a mark"
                + " changes that",
            "line 6, pieces[1].state: r1c2 is stated to be joined. It is planned by the brief; a"
                + " mark changes that",
            "line 6, pieces[1].pile: r1c2 is stated to be of the pile. No piece of the brief's pile"
                + " lies there"),
        mistakes(text));
  }

  private static Blanket noted(StatedArrangement read, PieceState... states) {
    return Blanket.ofUnjudged(
        WorkedPieces.noted(read.blanket(), stages(read.blanket(), states), read.sequences()));
  }

  private static Stages stages(Blanket blanket, PieceState... states) {
    Stages stages = Stages.of(blanket);
    for (int piece = 0; piece < states.length; piece++) {
      stages.set(piece, states[piece]);
    }
    return stages;
  }

  @Test
  void newStatesAreNoted() {
    StatedArrangement read = read(FILE);
    PieceState[] states = {
      PieceState.PLANNED, PieceState.JOINED, PieceState.PLANNED, PieceState.PLANNED
    };
    Blanket blanket = noted(read, states);
    assertEquals(PieceState.PLANNED, blanket.state(0));
    assertEquals(Sequences.OPEN, blanket.locked(0, 0));
    assertTrue(blanket.banned(0, 0), "a ban stays");
    assertEquals(PieceState.JOINED, blanket.state(1));
    assertEquals(1, blanket.locked(1, 0));
    assertEquals(0, blanket.locked(1, 1));
    assertEquals(PieceState.PLANNED, blanket.state(2));
    assertEquals(0, blanket.locked(2, 1), "the other piece of the note keeps its lock");
    assertEquals(List.of(), BriefJudge.mistakes(blanket.brief()));
    assertSame(
        blanket.brief(), WorkedPieces.noted(blanket, stages(blanket, states), read.sequences()));
  }

  @Test
  void aWorkedPieceMayDifferFromWhatWasLocked() {
    StatedArrangement read =
        read(
            edited(
                "\"planned\", \"rounds\": [\"REE\", \"MUD\"], \"x\": 3",
                "\"planned\", \"rounds\": [\"MUD\", \"REE\"], \"x\": 3"));
    Blanket blanket =
        noted(read, PieceState.MADE, PieceState.MADE, PieceState.PLANNED, PieceState.PLANNED);
    assertEquals(PieceState.MADE, blanket.state(1));
    assertEquals(1, blanket.locked(1, 1));
    assertEquals(0, blanket.locked(2, 1));
  }

  @Test
  void aWorkedPieceWithAnOpenRoundIsRefused() {
    Blanket blanket = arrangement().blanket();
    PieceState[] states = {
      PieceState.MADE, PieceState.MADE, PieceState.PLANNED, PieceState.PLANNED
    };
    assertThrows(
        IllegalArgumentException.class,
        () -> WorkedPieces.noted(blanket, stages(blanket, states), blanket.locks()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "arrangement/1|arrangement/2|line 2, format: \"lozengy-arrangement/2\" is not a format that"
            + " is read here. This program reads arrangements of the format lozengy-arrangement/1",
        "\"at\": \"r2c2\"|\"at\": \"r2c3\"|line 8, pieces[3].at: There is no piece \"r2c3\". Row 2"
            + " holds places 1 to 2",
        "\"at\": \"r2c2\"|\"at\": \"r2c1\"|line 8, pieces[3].at: The piece r2c1 is listed twice."
            + " List each piece once",
        "\"at\": \"r2c2\"|\"on\": \"r2c2\"|line 8, pieces[3].at: The field at is missing. Add it,"
            + " such as \"at\": \"r3c2\"//line 8, pieces[3].on: The field \"on\" is not known here."
            + " Known here are at, rounds, kind, state, rounds_worked, pile, x, y",
        "\"rounds\": [\"MUD\", \"REE\"], \"x\": 3|\"rounds\": [\"MUD\"], \"x\": 3|line 8,"
            + " pieces[3].rounds: r2c2 is given 1 round. A square has 2 rounds",
        "\"rounds\": [\"MUD\", \"REE\"], \"x\": 3|\"rounds\": [\"MUD\", \"REED\"], \"x\": 3|line 8,"
            + " pieces[3].rounds[1]: No yarn has the code \"REED\". Maybe REE is meant",
        "\"rounds\": [\"MUD\", \"REE\"], \"x\": 1|\"rounds\": [null, \"REE\"], \"x\": 1|line 5,"
            + " pieces[0].rounds[0]: r1c1 is made but its round 1 is open. Give all rounds that"
            + " are worked",
        "\"r1c2\", \"kind\": \"square\"|\"r1c2\", \"kind\": \"corner\"|line 6, pieces[1].kind: r1c2"
            + " is stated to be a corner. It is a square",
        "\"x\": 3, \"y\": 1|\"x\": 2, \"y\": 1|line 6, pieces[1].x: r1c2 is stated to lie at x 2."
            + " It is 3",
        "\"state\": \"made\", \"rounds\": [\"MUD\", \"REE\"], \"x\"|\"state\": \"done\","
            + " \"rounds\": [\"MUD\", \"REE\"], \"x\"|line 5, pieces[0].state: \"done\" is not"
            + " known here. Write planned, made or joined",
        "\"total\": 81.25|\"total\": NaN|line 14, score.total: \"NaN\" is not a number. Give a"
            + " number from 0 to 100",
        "\"seed\": 7|\"sed\": 7|line 15, solved.seed: The field seed is missing. Add it, such as"
            + " \"seed\": 1//line 15, solved.sed: The field \"sed\" is not known here. Maybe seed"
            + " is meant",
        "\"across\": 2|\"across\": 0|line 19, brief.layout.across: 0 is out of range. Give a whole"
            + " number, at least 1; at most 250,000 pieces are planned",
        "\"across\": 2|\"across\": 3|line 4, pieces: r1c3 and 1 other are not listed. List each of"
            + " the 6 pieces of the layout",
        "\"rounds\": [null, \"MUD\"]|\"rounds\": [null, \"MUT\"]|line 38,"
            + " brief.pieces[1].rounds[1]: No yarn has the code \"MUT\". Maybe MUD is meant",
        "\"brief\": {|\"breif\": {|line 1, brief: The field brief is missing. Add it, such as"
            + " \"brief\": { ... }, the brief that it answers//line 16, breif: The field \"breif\""
            + " is not known here. Maybe brief is meant",
      })
  void mistakesAreTold(String from, String to, String told) {
    assertEquals(told.replace("//", "\n"), String.join("\n", mistakes(edited(from, to))));
  }

  @Test
  void piecesThatAreMissingAreTold() {
    String text = FILE.replaceAll("(?m)^    \\{\"at\": \"r1c2\".*\n", "");
    assertEquals(
        List.of("line 4, pieces: r1c2 is not listed. List each of the 4 pieces of the layout"),
        mistakes(text));
  }

  @Test
  void mistakesInTheBriefAndThePiecesAreToldTogether() {
    String text =
        FILE.replace("\"colour\": \"#2c2a29\"", "\"colour\": \"brown\"")
            .replace(
                "\"state\": \"made\", \"rounds\": [\"MUD\", \"REE\"], \"x\"",
                "\"state\": \"done\", \"rounds\": \"MUD\", \"x\"");
    List<String> told = mistakes(text);
    assertEquals(3, told.size(), told.toString());
    assertTrue(told.get(0).startsWith("line 5, pieces[0].rounds: "));
    assertTrue(
        told.get(1).startsWith("line 5, pieces[0].state: ") || told.get(0).startsWith("line 5"));
    assertTrue(told.get(2).startsWith("line 30, brief.yarns[0].colour: "), told.get(2));
  }

  @Test
  void theFormatTellsABriefFromAnArrangement() {
    Documents.Document brief = Documents.read(SourceText.of("b.yaml", BRIEF));
    assertEquals("Pincushion", ((Documents.BriefDocument) brief).brief().title());
    Documents.Document arrangement = Documents.read(SourceText.of("a.json", FILE));
    assertEquals(
        arrangement().sequences(),
        ((Documents.ArrangementDocument) arrangement).arrangement().sequences());
    InputException neither =
        assertThrows(
            InputException.class, () -> Documents.read(SourceText.of("x", "format: recipe")));
    assertEquals(
        "line 1, format: \"recipe\" is not a format that is read here. A brief's format is"
            + " lozengy-brief/1, an arrangement's lozengy-arrangement/1",
        neither.getMessage());
  }

  @Test
  void aBriefReadsTheSameFromAnArrangement() {
    Brief brief = read(FILE).blanket().brief();
    assertEquals(BriefReader.read(SourceText.of("b.yaml", BRIEF)), brief);
  }
}
