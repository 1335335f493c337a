package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lozengy.cli.Main;
import lozengy.cli.command.Lozengy;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.solver.Solver;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every example and the output of every command against the printed schemas, by validators of other
 * languages: Ajv in strict mode, and Python's jsonschema. {@code -Dlozengy.validators=FOLDER} runs
 * it, with the node_modules that holds ajv; node and python3 must be on the path.
 */
@EnabledIfSystemProperty(named = OtherValidatorsTest.SWITCH, matches = ".+")
class OtherValidatorsTest {

  static final String SWITCH = "lozengy.validators";

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String MOVES = "2000";

  @TempDir static Path folder;
  private static Path schemas;
  private static Path documents;
  private static int written;

  @BeforeAll
  static void writeAll() throws IOException {
    schemas = Files.createDirectory(folder.resolve("schemas"));
    documents = Files.createDirectory(folder.resolve("documents"));
    for (String name : run(0, "schema").lines().toList()) {
      Files.writeString(schemas.resolve(name + ".json"), run(0, "schema", name));
    }
    for (String name : ExampleBriefs.names()) {
      keep("brief", yaml(ExampleBriefs.file(name + ".yaml")).toString());
    }
    for (String name : List.of("saltmarsh-throw", "cushion", "stash-blanket", "locked-throw")) {
      keep("arrangement", ArrangementWriter.text(SolvedExamples.of(name)));
    }
    results();
  }

  private static JsonNode yaml(Path file) throws IOException {
    return new YAMLMapper().readTree(Files.readString(file));
  }

  /** What every command prints for programs, good and bad. */
  private static void results() throws IOException {
    String brief = ExampleBriefs.file("cushion.yaml").toString();
    String none = ExampleBriefs.file("cannot-be-done.yaml").toString();
    String plan = folder.resolve("plan.json").toString();
    String again = folder.resolve("again.json").toString();
    keep("solve-result", run(0, "solve", brief, "--moves", MOVES, "-o", plan, "--json"));
    keep("solve-result", run(0, "solve", brief, "--moves", MOVES, "-o", "-", "--json"));
    keep("solve-result", run(3, "solve", none, "--json"));
    keep("mark-result", run(0, "mark", plan, "--made", "row1", "--on", "2026-01-04", "--json"));
    keep("mark-result", run(0, "mark", plan, "--joined", "r1c1", "--on", "2026-01-08", "--json"));
    keep("arrangement", Files.readString(Path.of(plan)));
    keep("solve-result", run(0, "solve", plan, "--moves", MOVES, "-o", again, "--json"));
    keep("arrangement", Files.readString(Path.of(again)));
    keep("check-result", run(0, "check", plan, "--json"));
    keep("compare-result", run(0, "compare", plan, again, "--json"));
    keep("report-result", run(0, "report", plan, "--json"));
    keep("card", run(0, "report", plan, "--as", "card", "--json"));
    keep("next-result", run(0, "next", plan, "--json"));
    keep(
        "substitute-result",
        run(0, "substitute", plan, "SED", "--try", "1", "--moves", MOVES, "--json"));
    keep("need-result", run(0, "need", plan, "--json"));
    keep("need-result", run(0, "need", brief, "--json"));
    keep("pack-result", run(0, "pack", brief, "--moves", MOVES, "--json"));
    keep("sizes-result", run(0, "sizes", brief, "cushion", "lap=3x4", "--json"));
    keep(
        "pack-sizes-result",
        run(0, "pack", brief, "--size", "own=3x3", "--moves", MOVES, "--json"));
    keep("explanation", run(3, "explain", none, "--json"));
    keep("explanation", run(0, "explain", brief, "--json"));
    keep("brief", run(0, "new", "--json"));
    keep("error", process("solve", brief, "--moves", "0", "--json"));
    String bare = yaml(Path.of(brief)).toString();
    String more =
        "{\"format\": \"lozengy-batch-line/1\", \"id\": 7, \"best-of\": 2, \"document\": "
            + bare
            + "}";
    keep("batch-line", more);
    keep("batch-line", more.replace(bare, Files.readString(Path.of(plan))));
    String lines =
        String.join("\n", bare, more, "no json", bare.replace("lozengy-brief/1", "x"), yaml(none));
    for (String line :
        run(0, lines.getBytes(StandardCharsets.UTF_8), "batch", "-", "--moves", MOVES)
            .lines()
            .toList()) {
      keep("batch-result", line);
    }
  }

  private static String yaml(String file) throws IOException {
    return yaml(Path.of(file)).toString();
  }

  /** Keeps a document, and one that says to be something else. */
  private static void keep(String schema, String text) throws IOException {
    String name = schema + "--" + written++;
    Files.writeString(documents.resolve(name + ".json"), text);
    String broken = text.replaceFirst("\"format\"\\s*:\\s*\"[^\"]*\"", "\"format\": \"another/1\"");
    Files.writeString(documents.resolve(name + ".broken.json"), broken);
  }

  private static String run(int code, String... words) throws IOException {
    return run(code, new byte[0], words);
  }

  private static String run(int code, byte[] input, String... words) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(input),
            out,
            OutputStream.nullOutputStream(),
            false,
            false,
            () -> () -> false);
    int ended = Lozengy.commandLine(terminal, Solver::solve, words).execute(words);
    terminal.flush();
    assertEquals(code, ended, String.join(" ", words));
    return out.toString(StandardCharsets.UTF_8);
  }

  /** What a process of its own prints, which tells mistakes too. */
  private static String process(String... words) throws IOException {
    List<String> java =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName());
    Process process =
        new ProcessBuilder(Stream.concat(java.stream(), Stream.of(words)).toList())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    process.getOutputStream().close();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  @Test
  void ajvTakesThemAll() throws Exception {
    holds("node", script("validate.cjs"), System.getProperty(SWITCH));
  }

  @Test
  void pythonTakesThemAll() throws Exception {
    holds(System.getProperty("lozengy.python", "python3"), script("validate.py"));
  }

  private static String script(String name) throws IOException {
    Path script = folder.resolve(name);
    try (InputStream in = OtherValidatorsTest.class.getResourceAsStream(name)) {
      Files.write(script, in.readAllBytes());
    }
    return script.toString();
  }

  private static void holds(String... command) throws Exception {
    List<String> words =
        Stream.concat(Stream.of(command), Stream.of(schemas.toString(), documents.toString()))
            .toList();
    Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), told);
    assertEquals("held " + 2 * written, told.strip());
  }
}
