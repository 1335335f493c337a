package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lozengy.cli.JsonSchemas;
import lozengy.cli.Main;
import lozengy.cli.Run;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code --json} prints keeps to the published schemas. */
class ResultSchemasTest {

  @TempDir static Path folder;
  private static String brief;
  private static String arrangement;
  private static String solved;
  private static Path solvedFirst;

  @BeforeAll
  static void solve() throws Exception {
    brief = folder.resolve("small.yaml").toString();
    arrangement = folder.resolve("small.arrangement.json").toString();
    holds(null, 0, "new", "--across", "2", "--down", "2", "-o", brief);
    solved = holds("solve-result", 0, "solve", brief, "--moves", "2000", "--json");
    solvedFirst = Files.copy(Path.of(arrangement), folder.resolve("first.json"));
  }

  /** Runs, and holds the output against a schema, if one is named. */
  private static String holds(String schema, int code, String... arguments) {
    Run.Result result = Run.of(arguments);
    assertEquals(code, result.code(), result.err());
    if (schema != null) {
      assertEquals(List.of(), mistakes(schema, result.out()), result.out());
    }
    return result.out();
  }

  private static List<String> mistakes(String schema, String document) {
    return JsonSchemas.mistakes(
        SpecificationVersion.DRAFT_2020_12, Main.class, schema + "-1.schema.json", document);
  }

  @Test
  void everyCommandKeepsToItsSchema() throws Exception {
    holds("check-result", 0, "check", arrangement, "--json");
    holds("compare-result", 0, "compare", arrangement, arrangement, "--json");
    holds("need-result", 0, "need", arrangement, "--json");
    holds("need-result", 0, "need", brief, "--json");
    holds("pack-result", 0, "pack", brief, "--moves", "2000", "--json");
    holds("pack-result", 3, "pack", brief, "--moves", "2000", "--score", "100", "--json");
    holds("sizes-result", 0, "sizes", brief, "cushion", "--json");
    holds("pack-sizes-result", 0, "pack", brief, "--moves", "2000", "--size", "a=2x2", "--json");
    holds("substitute-result", 0, "substitute", arrangement, "CRE", "--try", "1", "--json");
    holds("substitute-result", 0, "substitute", brief, "NAV", "--try", "1", "--json");
    String taken = folder.resolve("taken.json").toString();
    holds(
        "substitute-result",
        0,
        "substitute",
        arrangement,
        "--take",
        "CRE=BLU",
        "-o",
        taken,
        "--json");
    holds("report-result", 0, "report", arrangement, "--json");
    String page = folder.resolve("page.html").toString();
    holds("report-result", 0, "report", arrangement, "--as", "html", "-o", page, "--json");
    holds("gallery-result", 0, "gallery", brief, "--moves", "2000", "--json");
    holds("next-result", 0, "next", arrangement, "--json");
    holds("next-result", 0, "next", arrangement, "--by", "strip", "--json");
    holds("mark-result", 0, "mark", arrangement, "--made", "r1c1", "--json");
    holds("solve-result", 0, "solve", arrangement, "--moves", "2000", "--json");
    String itself =
        holds("solve-result", 0, "solve", brief, "--moves", "2000", "-o", "-", "--json");
    assertEquals(
        new ObjectMapper().readTree(Files.readString(solvedFirst)),
        new ObjectMapper().readTree(itself).get("content"));
    String impossible =
        Files.readString(Path.of(brief)).replaceAll("balls: [0-9.]+", "balls: 0.01");
    Path none = Files.writeString(folder.resolve("none.yaml"), impossible);
    holds("solve-result", 3, "solve", none.toString(), "--json");
    holds("explanation", 0, "explain", brief, "--json");
    String why = holds("explanation", 3, "explain", none.toString(), "--json");
    assertFalse(mistakes("explanation", why.replace("\"causes\"", "\"cause\"")).isEmpty());
    String written = folder.resolve("miss.json").toString();
    String locked = "src/test/resources/lozengy/cli/infeasible/locked-neighbours.yaml";
    holds("explanation", 3, "explain", locked, "-o", written, "--json");
    String rules = "src/test/resources/lozengy/cli/infeasible/within-piece.yaml";
    holds("pack-result", 3, "pack", rules, "--moves", "2000", "--json");
  }

  /** Every format that a command names on standard output has its schema in the jar. */
  @Test
  void everyFormatInTheCodeHasASchema() throws Exception {
    Set<String> formats = new TreeSet<>();
    for (Path module :
        List.of(Path.of("src", "main", "java"), Path.of("report", "src", "main", "java"))) {
      for (Path source : javaFiles(module)) {
        Pattern.compile("(?:\"lozengy-([a-z-]+/[0-9])\"|Json.result\\(\\s*\"([a-z-]+)\")")
            .matcher(Files.readString(source))
            .results()
            .map(each -> each.group(1) == null ? each.group(2) + "/1" : each.group(1))
            .forEach(formats::add);
      }
    }
    assertTrue(formats.contains("explanation/1") && formats.contains("check-result/1"));
    for (String format : formats) {
      String name = format.replace('/', '-') + ".schema.json";
      assertNotNull(Main.class.getResource(name), name);
    }
  }

  private static List<Path> javaFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  @Test
  void mistakesKeepToTheirSchema() {
    holds("error", 2, "check", folder.resolve("missing.json").toString(), "--json");
    holds("error", 2, "solve", brief, "--moves", "0", "--json");
    holds("error", 2, "report", arrangement, "--as", "nothing", "--json");
  }

  @Test
  void theNewBriefInJsonIsABrief() throws Exception {
    Path file = folder.resolve("new.json");
    Files.writeString(file, holds(null, 0, "new", "--across", "2", "--down", "2", "--json"));
    holds("solve-result", 0, "solve", file.toString(), "--moves", "2000", "--json");
  }

  @Test
  void aSchemaRefusesWhatItShould() {
    String other = solved.replace("\"found\"", "\"guessed\"");
    assertFalse(mistakes("solve-result", other).isEmpty());
    assertFalse(mistakes("check-result", solved).isEmpty());
  }

  /** What {@code schema} lists is what there is, each with the {@code $id} of its name. */
  @Test
  void everySchemaIsPrinted() throws Exception {
    List<String> names = Run.of("schema").out().lines().toList();
    Set<String> there = new TreeSet<>();
    for (Path resources :
        List.of(
            Path.of("src", "main", "resources"),
            Path.of("..", "model", "src", "main", "resources"))) {
      try (Stream<Path> files = Files.walk(resources)) {
        files
            .map(file -> file.getFileName().toString())
            .filter(file -> file.endsWith("-1.schema.json"))
            .forEach(file -> there.add(file.replace("-1.schema.json", "")));
      }
    }
    assertEquals(there, new TreeSet<>(names));
    for (String name : names) {
      String id =
          new ObjectMapper().readTree(holds(null, 0, "schema", name)).get("$id").textValue();
      assertEquals("urn:lozengy:" + name + ":1", id);
    }
    holds("error", 2, "schema", "breif", "--json");
  }

  @Test
  void theCompletionKnowsEveryCommandAndItsOptions() {
    String script = holds(null, 0, "completion");
    assertTrue(script.contains("--compare-afresh") && script.contains("--best-of"), script);
    assertTrue(script.contains("(\"on-point\" \"straight\")"), "words that the option takes");
  }
}
