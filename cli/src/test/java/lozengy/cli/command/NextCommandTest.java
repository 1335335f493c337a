package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NextCommandTest {

  private static final String MARK = "lozengy mark ";

  @TempDir Path folder;

  private String planned() {
    String brief = folder.resolve("small.yaml").toString();
    Run.of("new", "--across", "2", "--down", "2", "-o", brief);
    assertEquals(0, Run.of("solve", brief, "--moves", "2000").code());
    return folder.resolve("small.arrangement.json").toString();
  }

  private static String next(String file, String order) {
    Result result = Run.of("next", file, "--by", order);
    assertEquals(0, result.code(), result.err());
    return result.out();
  }

  /** Whoever does what it says, and marks it as it says, comes to the end step by step. */
  @ParameterizedTest
  @ValueSource(strings = {"ball", "strip", "round"})
  void leadsFromTheFirstStepToTheEdging(String order) {
    String file = planned();
    String told = next(file, order);
    for (int step = 1; !told.lines().findFirst().orElseThrow().contains("edge"); step++) {
      assertTrue(told.startsWith("Step " + step + " of "), told);
      String line = told.lines().filter(each -> each.contains(MARK)).findFirst().orElseThrow();
      String mark = line.substring(line.indexOf(MARK) + MARK.length() + file.length()).strip();
      String[] words = mark.split(" ");
      assertEquals(0, Run.of("mark", file, words[0], words[1]).code(), mark);
      told = next(file, order);
    }
    String report = Run.of("report", file).out();
    assertTrue(report.contains("13 joined"), report);
  }

  /** The line is there to be pasted to a shell. */
  @Test
  void aNameWithABlankStandsWithinQuotes() throws IOException {
    Path file = folder.resolve("Anna's throw.json");
    Files.move(Path.of(planned()), file);
    String quoted = "'" + file.toString().replace("'", "'\\''") + "'";
    String told = next(file.toString(), "ball");
    assertTrue(told.contains(MARK + quoted + " --step 1"), told);
  }

  @Test
  void anOrderThatIsNotKnownIsRefused() {
    Result result = Run.of("next", planned(), "--by", "yarn");
    assertEquals(2, result.code());
    assertTrue(result.err().contains("ball, strip, round"), result.err());
  }
}
