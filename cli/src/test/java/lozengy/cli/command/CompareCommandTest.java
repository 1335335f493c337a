package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.List;
import lozengy.cli.Briefs;
import lozengy.cli.JsonSchemas;
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
  void tellsChangesAndWhatIsBeatenAndDrawsTheCharts() {
    String first = Briefs.solve(folder);
    String second = folder.resolve("small-2.arrangement.json").toString();
    assertEquals(
        0, Run.of("solve", first, "--moves", "500", "--threads", "1", "--seed", "2").code());
    Result json = Run.of("compare", first, second, first, "--json");
    assertEquals(
        List.of(),
        JsonSchemas.mistakes(
            SpecificationVersion.DRAFT_2020_12,
            Run.class,
            "compare-result-1.schema.json",
            json.out()));
    Parsed parsed = Parsed.of(json);
    assertEquals(3, parsed.size("changes"));
    assertEquals("0", parsed.at("changes[1].rounds_changed"));
    assertEquals(parsed.at("changes[0].rounds_changed"), parsed.at("changes[2].rounds_changed"));
    String charts = folder.resolve("charts.svg").toString();
    Result result = Run.of("compare", first, second, "--charts", charts);
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Wrote " + charts));
    String svg = Briefs.text(charts);
    assertTrue(svg.contains("arrangement-2") && !svg.contains("arrangement-3"));
    assertEquals(svg, Run.of("compare", first, second, "--charts", "-").out());
    assertEquals(2, Run.of("compare", first, second, "--charts", charts).code());
  }

  @Test
  void oneFileAtLeastIsNeeded() {
    assertEquals(2, Run.of("compare").code());
  }
}
