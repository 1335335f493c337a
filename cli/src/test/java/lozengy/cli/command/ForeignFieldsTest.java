package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import lozengy.cli.JsonSchemas;
import lozengy.cli.Run;
import lozengy.model.brief.Brief;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields of other programs, and of newer ones, go through every command. */
class ForeignFieldsTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Others
      x-top: { id: 7, list: [ 1.50, "a", true, ~ ], deep: { x-in: 'q"uote' } }
      layout: { setting: straight, across: 4, down: 4, x-layout: 1 }
      motifs:
        x-motifs: 2
        square:
          side: 10 cm
          x-square: 3
          rounds: [ { metres: 1.4, x-centre: 4 }, { metres: 2.7 }, { metres: 3.9, x-border: 5 } ]
      yarns:
        - { code: A, colour: "#202020", left: 300 m, x-yarn: of A, ball: { grams: 50, metres: 100 } }
        - { code: B, colour: "#f0f0f0", left: 300 m, x-yarn: of B, ball: { grams: 50, metres: 100 } }
        - { code: C, colour: "#a04040", left: 300 m, ball: { grams: 50, metres: 100 } }
        - { code: D, colour: "#4040a0", balls: 3, ball: { grams: 50, metres: 100, x-ball: 6 } }
      rules: { min-contrast: 5, x-rules: 7 }
      prefer: { x-prefer: 8 }
      look: { x-look: 9 }
      tones: { x-tones: 10 }
      pieces:
        - { at: r1c1, not: A, x-note: 11 }
        - { at: [r2c2, r2c3], x-note: 12 }
      """;

  @TempDir Path folder;
  private Path brief;
  private Path plan;

  @BeforeEach
  void solve() throws IOException {
    brief = Files.writeString(folder.resolve("b.yaml"), BRIEF);
    plan = folder.resolve("p.json");
    run(0, "solve", brief, "--moves", "2000", "-o", plan);
  }

  private static Run.Result run(int code, Object... words) {
    String[] arguments = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      arguments[i] = words[i].toString();
    }
    Run.Result result = Run.of(arguments);
    assertEquals(code, result.code(), result.err());
    return result;
  }

  /** All fields of others below a value, by name and what they lie in. */
  private static Map<String, Set<String>> foreign(JsonNode node) {
    Map<String, Set<String>> found = new TreeMap<>();
    collect(node, found);
    return found;
  }

  private static void collect(JsonNode node, Map<String, Set<String>> found) {
    node.properties()
        .forEach(
            field -> {
              if (field.getKey().startsWith("x-")) {
                String within = node.path("code").asText() + node.path("metres").asText();
                found
                    .computeIfAbsent(field.getKey(), each -> new TreeSet<>())
                    .add(within + " " + field.getValue());
              } else {
                collect(field.getValue(), found);
              }
            });
    if (node.isArray()) {
      node.forEach(item -> collect(item, found));
    }
  }

  private static JsonNode tree(Path file) throws IOException {
    return JSON.readTree(Files.readString(file));
  }

  private static void holdsSchema(Path arrangement) throws IOException {
    assertEquals(
        List.of(),
        JsonSchemas.mistakes(
            SpecificationVersion.DRAFT_2020_12,
            Brief.class,
            "/lozengy/model/arrangement-1.schema.json",
            Files.readString(arrangement)));
  }

  @Test
  void allOfThemAreWrittenBack() throws Exception {
    JsonNode written = tree(plan).get("brief");
    assertEquals(
        "{\"id\":7,\"list\":[1.50,\"a\",true,null],\"deep\":{\"x-in\":\"q\\\"uote\"}}",
        written.get("x-top").toString().replace("1.5,", "1.50,"));
    Map<String, Set<String>> found = foreign(written);
    assertEquals(
        Set.of(
            "x-top",
            "x-layout",
            "x-motifs",
            "x-square",
            "x-centre",
            "x-border",
            "x-yarn",
            "x-ball",
            "x-rules",
            "x-prefer",
            "x-look",
            "x-tones",
            "x-note"),
        found.keySet());
    assertEquals(Set.of("A \"of A\"", "B \"of B\""), found.get("x-yarn"));
    assertEquals(Set.of("3.9 5"), found.get("x-border"));
    assertEquals(Set.of(" 11", " 12"), found.get("x-note"));
    holdsSchema(plan);
  }

  @Test
  void everyCommandCarriesThem() throws Exception {
    ObjectNode own = (ObjectNode) tree(plan);
    own.put("x-file", "around");
    ((ObjectNode) own.at("/pieces/5")).put("x-piece", own.at("/pieces/5/at").textValue());
    ((ObjectNode) own.at("/yarns/1")).put("x-total", "B's");
    ((ObjectNode) own.at("/score")).put("x-score", 1);
    Files.writeString(plan, JSON.writeValueAsString(own));
    Map<String, Set<String>> all = foreign(own);
    assertTrue(all.containsKey("x-piece"));

    run(0, "mark", plan, "--made", "row1", "--on", "2026-01-04");
    assertEquals(all, foreign(tree(plan)), "mark");
    run(0, "mark", plan, "--joined", "r1c1,r1c2", "--left", "A=250m", "--on", "2026-01-05");
    run(0, "mark", plan, "--rounds", "r2c2=1", "--bought", "D=1ball", "--on", "2026-01-06");
    assertEquals(all, foreign(tree(plan)), "count, buy and begin");
    run(0, "mark", plan, "--undo");
    assertEquals(all, foreign(tree(plan)), "undo");
    Path next = folder.resolve("next.json");
    run(0, "solve", plan, "--swap", "B=C", "--moves", "2000", "-o", next);
    assertEquals(all, foreign(tree(next)), "swap");
    run(
        0,
        "solve",
        plan,
        "--lock",
        "r3c3",
        "--ban",
        "r4c4=A",
        "--moves",
        "2000",
        "-o",
        next,
        "--overwrite");
    assertEquals(all, foreign(tree(next)), "lock and ban");
    holdsSchema(next);
    run(
        0,
        "solve",
        plan,
        "--down",
        "6",
        "--across",
        "5",
        "--moves",
        "2000",
        "-o",
        next,
        "--overwrite");
    assertEquals(all, foreign(tree(next)), "another size");
    JsonNode moved = tree(next).get("pieces");
    moved.forEach(
        piece -> {
          if (piece.has("x-piece")) {
            assertEquals(piece.get("at"), piece.get("x-piece"));
          }
        });
    Path other = folder.resolve("o.yaml");
    Files.writeString(
        other, BRIEF.replace("x-layout: 1", "x-layout: 100").replace("  x-motifs: 2\n", ""));
    run(0, "solve", plan, "--brief", other, "--moves", "2000", "-o", next, "--overwrite");
    Map<String, Set<String>> merged = new TreeMap<>(all);
    merged.put("x-layout", Set.of(" 100"));
    assertEquals(merged, foreign(tree(next)), "another brief");
    run(0, "pack", brief, "--moves", "2000", "-o", next, "--overwrite");
    all.keySet().removeAll(Set.of("x-file", "x-piece", "x-total", "x-score"));
    assertEquals(all.keySet(), foreign(tree(next)).keySet(), "pack");
    String line = JSON.writeValueAsString(own.get("brief"));
    String result =
        new Run()
            .input(line.getBytes(StandardCharsets.UTF_8))
            .run("batch", "-", "--moves", "2000")
            .out();
    assertEquals(all, foreign(JSON.readTree(result)), "batch");
  }

  @Test
  void aPieceThatIsGoneTakesItsFieldsAlong() throws Exception {
    Path next = folder.resolve("next.json");
    run(0, "solve", plan, "--down", "1", "--moves", "2000", "-o", next);
    assertEquals(Set.of(" 11"), foreign(tree(next)).get("x-note"));
    run(0, "check", next);
  }

  /** Entries that differ in nothing but what was counted since, and one day in that no more. */
  @Test
  void entriesOfAPileThatAreAlikeKeepTheirOwn() throws Exception {
    Files.writeString(
        brief,
        BRIEF.replace("left: 300 m, x-yarn: of A", "counted: { left: 300 m }, x-yarn: of A")
            + """
            pile:
              - { kind: square, rounds: [A, B, C], count: 2, x-bag: 1 }
              - { kind: square, rounds: [A, B, C], counted: [A], x-bag: 2, x-shelf: 5 }
              - { kind: square, rounds: [B, A, C], x-bag: 3 }
            """);
    Path next = folder.resolve("next.json");
    run(0, "solve", brief, "--moves", "2000", "-o", next);
    assertEquals(List.of("1", "2", "3"), bags(next));
    holdsSchema(next);
    run(0, "mark", next, "--left", "D=140m", "--on", "2026-01-04");
    assertEquals(List.of("1", "2", "3"), bags(next));
    run(0, "mark", next, "--left", "A=250m", "--on", "2026-01-05");
    assertEquals(List.of("1", "3"), bags(next), "the first two are one");
    assertEquals(5, tree(next).at("/brief/pile/0/x-shelf").intValue());
  }

  private static List<String> bags(Path arrangement) throws IOException {
    return tree(arrangement).at("/brief/pile").findValues("x-bag").stream()
        .map(JsonNode::asText)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "lozengy-brief/1, twist, 2, Known here",
    "lozengy-brief/1, colur, 2, Maybe colour is meant",
    "lozengy-brief/1.3, colur, 2, Maybe colour is meant",
    "lozengy-brief/1.3, twist, 0, yarns[0].twist",
    "lozengy-brief/2, twist, 2, This program reads lozengy-brief/1"
  })
  void anUnknownFieldIsAWarningInANewerFileOnly(String format, String field, int code, String told)
      throws Exception {
    String text = BRIEF.replace("lozengy-brief/1", format).replace("x-yarn: of A", field + ": S");
    Files.writeString(brief, text);
    Path next = folder.resolve("next.json");
    Run.Result run = run(code, "solve", brief, "--moves", "2000", "-o", next);
    assertTrue(run.err().contains(told), run.err());
    if (code == 0) {
      run(0, "mark", next, "--made", "row1");
      JsonNode written = tree(next).get("brief");
      assertEquals("S", written.at("/yarns/0/twist").textValue());
      assertEquals("lozengy-brief/1.3", written.get("format").textValue());
      String checked = run(0, "check", next, "--json").out();
      assertEquals("field-newer", JSON.readTree(checked).at("/doubts/0/code").textValue());
    }
  }
}
