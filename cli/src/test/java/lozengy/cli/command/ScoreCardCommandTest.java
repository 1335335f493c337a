package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lozengy.cli.Briefs;
import lozengy.cli.JsonSchemas;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Score cards, weak places on charts, and several arrangements to choose from. */
class ScoreCardCommandTest {

  @TempDir Path folder;

  @Test
  void theCardIsToldInWordsAndForPrograms() {
    String file = Briefs.solve(folder);
    Result text = Run.of("report", file, "--as", "card");
    assertEquals(0, text.code(), text.err());
    for (String each : List.of("shuffle", "at most", "Where it loses most", "Moran", "variance")) {
      assertTrue(text.out().contains(each), each);
    }
    Result json = Run.of("report", file, "--as", "card", "--json");
    assertEquals(
        List.of(),
        JsonSchemas.mistakes(
            SpecificationVersion.DRAFT_2020_12, Run.class, "card-1.schema.json", json.out()));
    Parsed card = Parsed.of(json);
    assertEquals(
        Parsed.of(Briefs.text(file)).number("score.parts.spread"),
        card.number("parts.spread.figure"),
        1e-9);
    assertTrue(card.number("parts.spread.at_most") >= card.number("parts.spread.figure"));
  }

  @Test
  void weakPlacesAreMarkedOnTheChart() {
    String file = Briefs.solve(folder);
    String plain = Run.of("report", file, "--as", "svg", "-o", "-").out();
    String marked = Run.of("report", file, "--as", "svg", "--weak", "-o", "-").out();
    assertTrue(!plain.contains("id=\"weak\"") && marked.contains("id=\"weak\""));
    String words =
        Parsed.of(Run.of("report", file, "--as", "card", "--json")).at("weak_spots[0].words");
    assertTrue(marked.contains("1  " + words) || marked.contains("1 " + words), words);
  }

  @Test
  void severalArrangementsGoToFilesOfTheirOwn() {
    String brief = Briefs.write(folder);
    Result result =
        Run.of("solve", brief, "--count", "3", "--within", "20", "--moves", "20000", "--json");
    assertEquals(0, result.code(), result.err());
    Parsed parsed = Parsed.of(result);
    int found = parsed.size("alternatives.found");
    assertTrue(found > 1, result.out());
    for (int i = 0; i < found; i++) {
      String file = parsed.at("alternatives.found[" + i + "].arrangement");
      assertEquals(0, Run.of("check", file).code(), file);
      assertEquals(
          Parsed.of(Briefs.text(file)).number("score.total"),
          parsed.number("alternatives.found[" + i + "].total"),
          1e-9);
    }
    assertTrue(Files.exists(folder.resolve("small.arrangement.json")));
    assertTrue(Files.exists(folder.resolve("small-alternative-2.arrangement.json")));
    assertTrue(Files.exists(folder.resolve("small-alternative-2.svg")));
    Result again = Run.of("solve", brief, "--count", "3", "--moves", "20000");
    assertEquals(2, again.code());
    assertEquals(2, Run.of("solve", brief, "--count", "0").code());
    assertEquals(2, Run.of("solve", brief, "--count", "2", "-o", "-").code());
  }

  /** A choice says how it is had again, and that gives the same; alone its seed would not. */
  @Test
  void eachOfSeveralTellsHowToHaveItAgain() {
    String brief = Briefs.write(folder);
    String[] call = {"solve", brief, "--count", "2", "--within", "20", "--moves", "20000"};
    Result result = Run.of(call);
    String second = folder.resolve("small-alternative-2.arrangement.json").toString();
    Parsed parsed = Parsed.of(Briefs.text(second));
    assertEquals("2", parsed.at("solved.choice.count"));
    String told = Run.of("report", second).out();
    assertTrue(told.contains("--seed 1 --moves 20000 --count 2 --within 20\n"), told);
    assertTrue(result.out().contains("2 arrangements within 20 points"), result.out());
    String before = Briefs.text(second);
    assertEquals(
        0,
        Run.of(
                "solve",
                brief,
                "--seed",
                "1",
                "--moves",
                "20000",
                "--count",
                "2",
                "--within",
                "20",
                "--overwrite")
            .code());
    assertEquals(before, Briefs.text(second));
  }

  @Test
  void fewerThanAskedForAreToldSoAndOldFilesBesideThem() {
    String brief = folder.resolve("two.yaml").toString();
    Briefs.write(folder, "two.yaml", TWO_SQUARES);
    Briefs.write(folder, "two-alternative-2.arrangement.json", "from before");
    Result result = Run.of("solve", brief, "--count", "2", "--moves", "1000", "--overwrite");
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Only 1 arrangement of the 2 asked for"), result.out());
    assertTrue(result.out().contains("Left from an earlier run, not one of these: "), result.out());
    assertEquals(2, Run.of("solve", brief, "--within", "2", "-o", "-").code());
  }

  /** Where nothing varies there is no z, where there is no seam nothing to tell apart. */
  @Test
  void whatTellsNothingIsNotTold() {
    String brief = Briefs.write(folder, "one.yaml", TWO_SQUARES.replace("across: 2", "across: 1"));
    assertEquals(0, Run.of("solve", brief, "--moves", "1000").code());
    String file = folder.resolve("one.arrangement.json").toString();
    String text = Run.of("report", file, "--as", "card").out();
    assertFalse(text.contains("told apart"), text);
    assertTrue(text.lines().anyMatch(line -> line.matches("  border +- +- +- +-")), text);
    assertTrue(text.lines().anyMatch(line -> line.matches("  border +seam .* -")), text);
    Result json = Run.of("report", file, "--as", "card", "--json");
    assertEquals(
        List.of(),
        JsonSchemas.mistakes(
            SpecificationVersion.DRAFT_2020_12, Run.class, "card-1.schema.json", json.out()));
    assertFalse(json.out().contains("\"z\"") || json.out().contains("lightness"), json.out());
  }

  private static final String TWO_SQUARES =
      """
      format: lozengy-brief/1
      title: Two squares
      layout: { setting: straight, across: 2, down: 1 }
      motifs: { square: { side: 10 cm, rounds: [ { metres: 1 } ] } }
      yarns:
        - { code: A, colour: "#000000", left: 10 m }
        - { code: B, colour: "#ffffff", left: 10 m }
      """;
}
