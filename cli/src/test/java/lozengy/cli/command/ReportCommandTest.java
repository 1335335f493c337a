package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import lozengy.cli.Briefs;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {

  @TempDir Path folder;
  private String file;

  @BeforeEach
  void solve() {
    file = Briefs.solve(folder);
  }

  @Test
  void summaryIsPrintedOrWritten() {
    Result printed = Run.of("report", file);
    assertEquals(0, printed.code());
    assertTrue(printed.out().contains("Score "), printed.out());
    String summary = folder.resolve("summary.txt").toString();
    Result written = Run.of("report", file, "-o", summary);
    assertEquals("Wrote " + summary + "\n", written.out());
    assertEquals(printed.out(), Briefs.text(summary));
  }

  @Test
  void chartIsTheOneThatSolvingDrew() {
    Result chart = Run.of("report", file, "--as", "svg", "-o", "-");
    assertEquals(0, chart.code());
    assertEquals(Briefs.text(folder.resolve("small.svg").toString()), chart.out());
  }

  @Test
  void chartGoesBesideTheArrangementAndOverwritesNothing() throws Exception {
    assertEquals(2, Run.of("report", file, "--as", "svg").code());
    Path moved = folder.resolve("elsewhere");
    Files.createDirectory(moved);
    Files.copy(Path.of(file), moved.resolve("plan.arrangement.json"));
    Result result =
        Run.of("report", moved.resolve("plan.arrangement.json").toString(), "--as", "SVG");
    assertEquals(0, result.code(), result.err());
    assertEquals("Wrote " + moved.resolve("plan.svg") + "\n", result.out());
    assertTrue(Files.exists(moved.resolve("plan.svg")));
  }

  @Test
  void namesAndCodesAreDrawnOnRequest() {
    String plain = Run.of("report", file, "--as", "svg", "-o", "-").out();
    String names = Run.of("report", file, "--as", "svg", "-o", "-", "--names").out();
    String codes = Run.of("report", file, "--as", "svg", "-o", "-", "--codes").out();
    assertFalse(plain.contains(">r2c1<"));
    assertTrue(names.contains(">r2c1<"));
    assertNotEquals(names, codes);
    assertNotEquals(plain, codes);
  }

  @Test
  void standardInputGoesToStandardOutput() {
    byte[] bytes = Briefs.text(file).getBytes(StandardCharsets.UTF_8);
    Result result = new Run().input(bytes).run("report", "-", "--as", "svg");
    assertEquals(0, result.code());
    assertEquals(Briefs.text(folder.resolve("small.svg").toString()), result.out());
  }

  @Test
  void openRoundsAreRefused() {
    String open =
        Briefs.write(
            folder,
            "open.json",
            Briefs.text(file).replaceFirst("(\"rounds\": ?\\[)\"[A-Z]+\"", "$1null"));
    for (String command : new String[] {"report", "compare"}) {
      Result result = Run.of(command, open);
      assertEquals(2, result.code());
      assertTrue(result.err().contains("Some rounds have no yarn yet"), result.err());
    }
  }

  @Test
  void unknownFormNamesTheKnownOnes() {
    Result result = Run.of("report", file, "--as", "png");
    assertEquals(2, result.code());
    assertTrue(result.err().contains("'png' is none of svg"), result.err());
  }
}
