package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lozengy.cli.JsonSchemas;
import lozengy.cli.Main;
import lozengy.cli.Run;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is told of briefs that cannot be done, each for a reason of its own, word for word and as
 * JSON. They are invented. {@code -Dlozengy.told=write} writes what is told anew: look at it then.
 */
class ToldTest {

  private static final Path FOLDER = Path.of("src/test/resources/lozengy/cli/infeasible");
  private static final Path KEPT = Path.of("src/test/resources/lozengy/cli/told");

  @TempDir Path folder;

  static Stream<Path> briefs() throws IOException {
    List<Path> briefs;
    try (Stream<Path> files = Files.list(FOLDER)) {
      briefs = files.sorted().toList();
    }
    assertTrue(briefs.size() > 30, briefs.toString());
    return Stream.concat(briefs.stream(), Stream.of(Path.of("../examples/cannot-be-done.yaml")));
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void isToldWordForWordWithTheLinesThatCannotHold(Path brief) throws IOException {
    String told =
        run(brief, "explain", "explanation")
            + run(brief, "explain", "explanation", "--json")
            + run(
                brief,
                "solve",
                "solve-result",
                "--json",
                "--moves",
                "20000",
                "--threads",
                "1",
                "-o",
                folder.resolve("x.json").toString());
    Path kept = KEPT.resolve(brief.getFileName().toString().replace(".yaml", ".txt"));
    if ("write".equals(System.getProperty("lozengy.told"))) {
      Files.writeString(kept, told);
    }
    assertEquals(Files.readString(kept), told);
  }

  private static String run(Path brief, String command, String schema, String... options) {
    String[] arguments =
        Stream.concat(Stream.of(command, brief.toString()), Stream.of(options))
            .toArray(String[]::new);
    Run.Result result = Run.of(arguments);
    // locks that break a rule are a mistake of the brief for all but explain
    assertTrue(result.code() == 3 || command.equals("solve") && result.code() == 2, result.err());
    boolean json = List.of(options).contains("--json");
    if (json) {
      String which = (result.code() == 2 ? "error" : schema) + "-1.schema.json";
      String document = result.out();
      assertEquals(
          List.of(),
          JsonSchemas.mistakes(SpecificationVersion.DRAFT_2020_12, Main.class, which, document),
          document);
    }
    String head = "$ " + command + (json ? " --json" : "") + "\nexit " + result.code() + "\n";
    String place = brief.toString();
    return head + (result.out() + result.err()).replace(place, brief.getFileName().toString());
  }
}
