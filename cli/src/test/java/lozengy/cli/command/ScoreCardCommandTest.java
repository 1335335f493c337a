package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
    assertTrue(Files.exists(folder.resolve("small-2.arrangement.json")));
    assertTrue(Files.exists(folder.resolve("small-2.svg")));
    Result again = Run.of("solve", brief, "--count", "3", "--moves", "20000");
    assertEquals(2, again.code());
    assertEquals(2, Run.of("solve", brief, "--count", "0").code());
    assertEquals(2, Run.of("solve", brief, "--count", "2", "-o", "-").code());
  }
}
