package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.cli.Briefs;
import lozengy.cli.JsonSchemas;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.brief.Part;
import lozengy.model.compare.Compared;
import lozengy.model.compare.Comparison;
import lozengy.model.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {

  @TempDir Path folder;

  private static Arrangement arrangement(String file) {
    return ArrangementReader.read(Path.of(file)).scored();
  }

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
    assertTrue(parsed.number("arrangements[1].keep") <= 100);
    assertTrue(lines.contains("keep: what stands as planned before; it is no part of the total"));
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
  void aFileThatIsThereNamesTheOptionThatNamedIt() {
    String file = Briefs.solve(folder);
    Result result = Run.of("compare", file, "--charts", file);
    assertEquals(2, result.code());
    assertTrue(result.err().contains("Name another file with --charts"), result.err());
  }

  @Test
  void manyArrangementsStandInNarrowColumnsBelowTheirNames() {
    String file = Briefs.solve(folder);
    String[] call = new String[13];
    Arrays.fill(call, file);
    call[0] = "compare";
    Result result = Run.of(call);
    List<String> lines = result.out().lines().toList();
    assertEquals("12  " + file, lines.get(11));
    for (String line : lines.subList(12, lines.size())) {
      assertTrue(line.length() <= 110, line);
    }
    Compared one = Compared.of("", arrangement(file));
    int rounds = new Comparison(List.of(one, one)).changed(0, 1).orElseThrow().shared();
    assertTrue(result.out().contains("Rounds in another yarn, of the " + rounds + " that both"));
    String chart = Run.of("compare", file, file, "--charts", "-").out();
    assertTrue(chart.contains(">1  ") && chart.contains(">2  "), "charts bear their numbers");
  }

  @Test
  void whitePiecesAreOutlinedOnWhitePaperWhereNoSeamFramesThem() {
    String brief =
        Briefs.write(
            folder,
            "white.yaml",
            """
            format: lozengy-brief/1
            title: White
            layout: { setting: straight, across: 2, down: 2 }
            motifs:
              square: { side: 10 cm, rounds: [ { metres: 1 }, { metres: 1 } ] }
            yarns:
              - { code: WHI, name: White, colour: "#ffffff", left: 100 m }
              - { code: ECR, name: Ecru, colour: "#fefefe", left: 100 m }
            """);
    String file = folder.resolve("white.json").toString();
    assertEquals(0, Run.of("solve", brief, "--moves", "2000", "-o", file).code());
    String chart = Run.of("compare", file, file, "--charts", "-").out();
    assertTrue(chart.contains("stroke=\"#1a1a1a\""), chart);
  }

  /** An a of Helvetica, or of a font with its measures, is 0.556 of its size wide (from memory). */
  @Test
  void aLongNameEndsWithinItsChart() throws IOException {
    String name = "a".repeat(100);
    Path copy = Files.copy(Path.of(Briefs.solve(folder)), folder.resolve(name));
    String chart = Run.of("compare", copy.toString(), copy.toString(), "--charts", "-").out();
    Matcher width = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ").matcher(chart);
    Matcher label = Pattern.compile("(score [0-9.]+, …a+)<").matcher(chart);
    assertTrue(width.find() && label.find(), chart);
    double room = (Double.parseDouble(width.group(1)) - 2 * 6 - 8) / 2;
    double wide = 3 * 0.556 * label.group(1).length();
    assertTrue(wide < room && wide > 0.7 * room, wide + " in " + room);
  }

  @Test
  void oneThatBreaksRulesBeatsNoneThatBreaksNone() {
    Compared good = Compared.of("good", arrangement(Briefs.solve(folder)));
    Map<Part, Double> better = new EnumMap<>(good.score().parts());
    better.replaceAll((part, figure) -> 100.0);
    Compared broken =
        new Compared(
            "broken", good.arrangement(), new Score(100, 100, better), 1, good.leftMillimetres());
    assertEquals(List.of(), new Comparison(List.of(good, broken)).beatenBy(0));
    Compared mended =
        new Compared(
            "mended", good.arrangement(), new Score(100, 100, better), 0, good.leftMillimetres());
    assertEquals(List.of(2), new Comparison(List.of(good, broken, mended)).beatenBy(0));
  }

  @Test
  void oneFileAtLeastIsNeeded() {
    assertEquals(2, Run.of("compare").code());
  }
}
