package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {

  @TempDir Path folder;

  @Test
  void figuresStandSideBySide() {
    String first = Briefs.solve(folder);
    String second = folder.resolve("small-2.arrangement.json").toString();
    assertEquals(
        0, Run.of("solve", first, "--moves", "500", "--threads", "1", "--seed", "2").code());
    Result result = Run.of("compare", first, second);
    assertEquals(0, result.code(), result.err());
    List<String> lines = result.out().lines().toList();
    assertTrue(lines.get(0).contains("small"), result.out());
    for (String row :
        List.of("total", "balance", "spread", "contrast", "variety", "leeway", "faults")) {
      assertEquals(1, lines.stream().filter(line -> line.startsWith(row + " ")).count(), row);
    }
    // Only the second has an earlier arrangement to keep to.
    String keep = lines.stream().filter(line -> line.startsWith("keep ")).findFirst().orElseThrow();
    assertTrue(keep.matches("keep +- +[0-9.]+"), keep);
    Parsed parsed = Parsed.of(Run.of("compare", first, second, "--json"));
    assertEquals(2, parsed.size("arrangements"));
    assertEquals(second, parsed.at("arrangements[1].file"));
    assertEquals(
        Parsed.of(Briefs.text(second)).number("score.total"),
        parsed.number("arrangements[1].total"),
        1e-9);
    assertTrue(parsed.names("arrangements[1].parts").contains("keep"));
    assertEquals("0", parsed.at("arrangements[0].faults"));
  }

  @Test
  void oneFileAtLeastIsNeeded() {
    assertEquals(2, Run.of("compare").code());
  }
}
