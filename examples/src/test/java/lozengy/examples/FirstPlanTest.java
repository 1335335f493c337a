package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementFile;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.check.Check;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FirstPlanTest {

  private static final Path SOURCE =
      Path.of("src", "main", "java", "lozengy", "examples", "FirstPlan.java");

  @Test
  void theReadmeShowsItsLines() throws Exception {
    Matcher shown =
        Pattern.compile("```java\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Tour.readme().resolveSibling("solver").resolve("README.md")));
    assertEquals(true, shown.find(), "solver/README.md shows no Java");
    List<String> lines = Files.readAllLines(SOURCE);
    int from = 0;
    while (!lines.get(from).contains("void plan(")) {
      from++;
    }
    int to = lines.lastIndexOf("  }");
    String body =
        lines.subList(from + 1, to).stream()
            .map(line -> line.substring(4) + "\n")
            .collect(Collectors.joining());
    assertEquals(body, shown.group(1));
  }

  @Test
  void itsAnswerIsValid(@TempDir Path folder) throws Exception {
    Path answer = folder.resolve("cushion.arrangement.json");
    FirstPlan.plan(ExampleBriefs.file("cushion.yaml"), answer);
    StatedArrangement read = ArrangementReader.read(answer);
    assertEquals(List.of(), Check.faults(read.blanket(), read.sequences()));
  }

  @Test
  void interruptedItWritesTheBestSoFar(@TempDir Path folder) throws Exception {
    Path answer = folder.resolve("cushion.arrangement.json");
    PrintStream err = System.err;
    int[] told = {0};
    System.setErr(
        new PrintStream(OutputStream.nullOutputStream()) {
          @Override
          public void println(double score) {
            if (++told[0] == 3) {
              Thread.currentThread().interrupt();
            }
          }
        });
    try {
      FirstPlan.plan(ExampleBriefs.file("cushion.yaml"), answer);
    } finally {
      System.setErr(err);
      assertTrue(Thread.interrupted());
    }
    Arrangement read = ArrangementFile.read(answer);
    assertEquals(List.of(), Check.faults(read.blanket(), read.sequences()));
    assertTrue(read.solved().orElseThrow().moves() < 500_000, "it was not cut short");
  }
}
