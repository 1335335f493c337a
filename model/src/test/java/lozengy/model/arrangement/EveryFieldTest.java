package lozengy.model.arrangement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.check.RuleId;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.progress.Mark;
import lozengy.model.progress.MarkedArrangement;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;

/**
 * Changes every value of an arrangement's file, one at a time: to another, to nothing, away, twice.
 * Each time the reader refuses the file, or the check finds a fault, or the file says the same in
 * other words, or the value is one of those listed here, with the reason why nothing else in the
 * file speaks against the change.
 */
class EveryFieldTest {

  private static final int MOST_OTHERS = 4;
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Cushion
      layout: { setting: on-point, across: 2, down: 2 }
      motifs:
        square:
          side: 10 cm
          rounds: [ { tone: light, metres: 1 }, { metres: 2 }, { tone: [dark, mid], metres: 3 } ]
        triangle: { base: 14 cm, rounds: [ { metres: 1 }, { tone: [dark, mid], metres: 2 } ] }
        corner: { rounds: [ { tone: [dark, mid], grams: 0.5 } ] }
      yarns:
        - { code: MUD, name: Tidal mud, colour: "#2c2a29", ball: { grams: 50, metres: 120 }, balls: 1 }
        - { code: PEA, name: Peat, colour: "#4a3427", ball: { grams: 50, metres: 120 }, balls: 0.5, left: 3 m }
        - { code: SAM, name: Samphire, colour: "#5f7a4a", ball: { grams: 50, metres: 120 }, balls: 1, share: 2 }
        - { code: REE, name: Reed, colour: "#a98d5c", ball: { grams: 50, metres: 120 }, balls: 1, tone: mid }
        - { code: FOA, name: Foam, colour: "#e8e6df", ball: { grams: 50, metres: 120 }, balls: 1 }
      tones: { dark-below: 42, light-from: 68 }
      joining: { yarn: MUD, metres-per-metre: 3 }
      edging: { yarn: PEA, metres-per-metre: 5 }
      rules: { min-contrast: 3, within-piece: all-differ, copies: 2, keep-back: 5 % }
      prefer: { balance: 3, spread: 3, contrast: 1, variety: 1, leeway: 1, keep: 3, colour-vision: 1, contrast-between: 1, contrast-within: 1 }
      pieces:
        - { at: r1c1, rounds: [FOA, REE, MUD], state: joined }
        - { at: top-left, rounds: [SAM], state: made }
        - { at: r1c2, rounds: [FOA, ~, PEA], rounds-worked: 1 }
        - { at: squares, not: MUD }
      pile:
        - { kind: square, rounds: [FOA, PEA, SAM], count: 1 }
      """;

  private static final String HISTORY = "How it was found is told nowhere else.";

  /**
   * What has come about, mark by mark, is told nowhere else; brief and plan say how things stand.
   */
  private static final String DIARY = "diary";

  private static final String ASKED =
      "The brief is the truth about what is asked: the arrangement answers the changed one too.";

  /** The values that can be changed, each with the reason. */
  private static final String LOOSER =
      "A higher bound is one too; what is best goes by that of the objective.";

  private static final Map<String, String> CHANGEABLE =
      Map.ofEntries(
          Map.entry("score.bound_proof", "The proof's name is told nowhere else."),
          Map.entry("score.bound", LOOSER),
          Map.entry("score.objective", "Without it the file is an earlier version's."),
          Map.entry("solved", HISTORY),
          Map.entry("solved.seed", HISTORY),
          Map.entry("solved.moves", HISTORY),
          Map.entry("solved.walkers", HISTORY),
          Map.entry("solved.seconds", HISTORY),
          Map.entry("solved.version", HISTORY),
          Map.entry("solved.choice", HISTORY),
          Map.entry("solved.choice.count", HISTORY),
          Map.entry("solved.choice.within_points", HISTORY),
          Map.entry("earlier[].rounds[]", "Keep does not tell of rounds that are not free now."),
          Map.entry("brief.motifs.triangle.base", ASKED),
          Map.entry("brief.rules", ASKED),
          Map.entry("brief.rules.copies", ASKED),
          Map.entry("brief.rules.keep-back", ASKED),
          Map.entry("brief.rules.min-contrast", ASKED),
          Map.entry("brief.rules.within-piece", ASKED),
          Map.entry("brief.tones.dark-below", ASKED),
          Map.entry("brief.tones.light-from", ASKED),
          Map.entry("brief.yarns[].ball.grams", ASKED),
          Map.entry("brief.yarns[].ball.metres", ASKED),
          Map.entry("brief.yarns[].balls", ASKED),
          Map.entry("brief.yarns[].tone", ASKED),
          Map.entry("brief.pieces[]", ASKED),
          Map.entry("brief.pieces[].at[]", ASKED),
          Map.entry("brief.pieces[].not", ASKED),
          Map.entry("brief.pieces[].not[]", ASKED),
          Map.entry("brief.yarns[].counted.made[]", ASKED),
          Map.entry("brief.yarns[].counted.part-worked[].rounds-worked", ASKED),
          Map.entry("brief.yarns[].counted.part-worked[].at[]", ASKED),
          Map.entry("brief.yarns[].counted.part-worked[]", ASKED),
          Map.entry("brief.yarns[].counted.part-worked", ASKED),
          Map.entry("brief.yarns[].counted.joined[]", ASKED));

  private final Map<String, Set<JsonNode>> seen = new LinkedHashMap<>();
  private final Map<String, Set<String>> passing = new TreeMap<>();
  private JsonNode file;
  private StatedArrangement asItWas;
  private int tried;

  @Test
  void noChangeGoesUnnoticed() throws IOException {
    file = JSON.readTree(ArrangementWriter.text(arrangement()));
    asItWas = read();
    assertEquals("", told(asItWas));
    gather("", file);
    walk("", file);
    assertTrue(tried > 1000, tried + " changes");
    Map<String, Set<String>> unexpected = new TreeMap<>(passing);
    unexpected.keySet().removeAll(CHANGEABLE.keySet());
    assertTrue(unexpected.keySet().removeIf(path -> path.startsWith(DIARY)));
    assertEquals(Map.of(), unexpected, "pass unnoticed");
    passing.keySet().removeIf(path -> path.startsWith(DIARY));
    assertEquals(new TreeSet<>(CHANGEABLE.keySet()), passing.keySet(), "are noticed after all");
  }

  private static Arrangement arrangement() {
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("b.yaml", BRIEF)));
    Sequences sequences = blanket.locks();
    assertTrue(fill(blanket, sequences, 0), "the brief can be answered");
    Sequences earlier = sequences.copy();
    int last = earlier.pieces() - 1;
    earlier.set(last, 0, (earlier.yarn(last, 0) + 1) % 2);
    Score score = Scorer.score(blanket, sequences, Optional.of(earlier));
    Arrangement solved =
        new Arrangement(
            blanket,
            sequences,
            Optional.of(earlier),
            score,
            Optional.of(bound(score)),
            Optional.of(
                new Arrangement.Solved(
                    7,
                    1000,
                    3,
                    Optional.of(1.5),
                    "0.1.0",
                    Arrangement.Solved.OPTIMAL,
                    Optional.of(new Arrangement.Choice(3, 1)))));
    Mark mark =
        Mark.NONE
            .withStates(List.of(new Mark.State("made", PieceState.MADE, List.of("top1"))))
            .withWorked(
                List.of(
                    new Mark.Work(
                        "worked",
                        new PieceNote(
                            List.of("left1"),
                            List.of(Optional.of("REE"), Optional.empty()),
                            PieceState.PLANNED,
                            Set.of()))))
            .withCounts(List.of(new Mark.Count("left", "REE", new YarnAmount.Length(90_000))));
    Arrangement marked = MarkedArrangement.of(solved, mark);
    // stated again, so that the file states one of each
    return new Arrangement(
        marked.blanket(),
        marked.sequences(),
        marked.earlier(),
        marked.score(),
        Optional.of(bound(marked.score())),
        solved.solved(),
        marked.diary());
  }

  private static Arrangement.Bound bound(Score score) {
    return new Arrangement.Bound(score.total(), "windows", Optional.of(score.objective()));
  }

  /** Fills open rounds so that all rules hold. */
  private static boolean fill(Blanket blanket, Sequences sequences, int piece) {
    if (piece == sequences.pieces()) {
      return Check.faults(blanket, sequences).isEmpty();
    }
    for (int round = 0; round < sequences.rounds(piece); round++) {
      if (sequences.yarn(piece, round) == Sequences.OPEN) {
        for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
          sequences.set(piece, round, yarn);
          if (mayStand(blanket, sequences) && fill(blanket, sequences, piece)) {
            return true;
          }
        }
        sequences.set(piece, round, Sequences.OPEN);
        return false;
      }
    }
    return fill(blanket, sequences, piece + 1);
  }

  private static boolean mayStand(Blanket blanket, Sequences sequences) {
    return Check.faults(blanket, sequences).stream()
        .allMatch(fault -> fault.rule() == RuleId.COMPLETE || fault.rule() == RuleId.PILE);
  }

  private StatedArrangement read() {
    return ArrangementReader.read(SourceText.of("a.json", file.toString()));
  }

  private static String told(StatedArrangement stated) {
    List<Object> all = new ArrayList<>(Check.faults(stated.blanket(), stated.sequences()));
    all.addAll(Contradictions.of(stated));
    return all.isEmpty() ? "" : all.toString();
  }

  /** Whether the file says what it said before the change, in other words. */
  private boolean saysTheSame(StatedArrangement stated) {
    return stated.blanket().brief().equals(asItWas.blanket().brief())
        && stated.sequences().equals(asItWas.sequences())
        && stated.earlier().equals(asItWas.earlier())
        && stated.score().equals(asItWas.score())
        && stated.bound().equals(asItWas.bound())
        && stated.solved().equals(asItWas.solved())
        && stated.yarns().equals(asItWas.yarns())
        && stated.diary().equals(asItWas.diary())
        && stated.leftOut().equals(asItWas.leftOut());
  }

  /** Notes which values stand at places of the same kind. */
  private void gather(String path, JsonNode node) {
    if (node.isValueNode()) {
      seen.computeIfAbsent(path, each -> new LinkedHashSet<>()).add(node);
    }
    node.properties().forEach(field -> gather(below(path, field.getKey()), field.getValue()));
    if (node.isArray()) {
      node.forEach(item -> gather(path + "[]", item));
    }
  }

  private static String below(String path, String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  private void walk(String path, JsonNode node) {
    if (node instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      for (String name : names) {
        JsonNode before = object.get(name);
        String at = below(path, name);
        walk(at, before);
        for (JsonNode other : others(at, before)) {
          object.set(name, other);
          attempt(at, before + " -> " + other);
        }
        if (!before.isNull()) { // nothing and away mean the same
          object.remove(name);
          attempt(at, "away");
        }
        restore(object, names, name, before);
      }
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        JsonNode before = list.get(i);
        String at = path + "[]";
        walk(at, before);
        for (JsonNode other : others(at, before)) {
          list.set(i, other);
          attempt(at, before + " -> " + other);
        }
        list.remove(i);
        attempt(at, "item " + before + " away");
        list.insert(i, before);
        list.insert(i, before.deepCopy());
        attempt(at, "item " + before + " twice");
        list.remove(i);
      }
    }
  }

  private static void restore(ObjectNode object, List<String> names, String name, JsonNode value) {
    Map<String, JsonNode> all = new LinkedHashMap<>();
    for (String each : names) {
      all.put(each, each.equals(name) ? value : object.get(each));
    }
    object.removeAll();
    object.setAll(all);
  }

  private List<JsonNode> others(String at, JsonNode value) {
    List<JsonNode> others = new ArrayList<>();
    if (value.isNull()) {
      others.add(NODES.numberNode(1));
    } else {
      others.add(NODES.nullNode());
    }
    if (value.isNumber()) {
      others.add(NODES.numberNode(value.decimalValue().add(java.math.BigDecimal.ONE)));
      others.add(NODES.numberNode(value.decimalValue().subtract(java.math.BigDecimal.ONE)));
    } else if (value.isTextual()) {
      others.add(NODES.textNode(value.asText() + "x"));
      others.add(NODES.textNode(value.asText().replaceFirst("[1-9]", "6")));
    } else if (value.isBoolean()) {
      others.add(NODES.booleanNode(!value.booleanValue()));
    } else if (value.isObject()) {
      others.add(NODES.objectNode());
    } else if (value.isArray()) {
      others.add(NODES.arrayNode());
    }
    others.addAll(seen.getOrDefault(at, Set.of()));
    others.removeIf(value::equals);
    return others.subList(0, Math.min(MOST_OTHERS, others.size()));
  }

  private void attempt(String at, String change) {
    tried++;
    try {
      StatedArrangement stated = read();
      if (told(stated).isEmpty() && !saysTheSame(stated)) {
        passing.computeIfAbsent(at, each -> new TreeSet<>()).add(change);
      }
    } catch (InputException e) {
      // refused, and told why
      assertTrue(!e.mistakes().isEmpty());
    }
  }
}
