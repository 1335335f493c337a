package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

  private static final Pattern USED = Pattern.compile("(\"used_m\": ?)([0-9.]+)");
  private static final Pattern TOTAL = Pattern.compile("(\"total\": ?)([0-9.]+)");

  @TempDir Path folder;
  private String file;
  private String text;

  @BeforeEach
  void solve() {
    file = Briefs.solve(folder);
    text = Briefs.text(file);
  }

  @Test
  void solvedArrangementIsValid() {
    Result result = Run.of("check", file);
    assertEquals(0, result.code());
    assertTrue(result.out().startsWith(file + ": Valid."), result.out());
    Result json = Run.of("check", file, "--json");
    assertEquals("true", Parsed.of(json).at("valid"));
    assertEquals(0, Parsed.of(json).size("faults"));
    assertEquals(Parsed.of(text).number("score.total"), Parsed.of(json).number("total"), 1e-9);
  }

  @Test
  void standardInputIsCheckedToo() {
    Result result = new Run().input(text.getBytes(StandardCharsets.UTF_8)).run("check", "-");
    assertEquals(0, result.code());
    assertTrue(result.out().startsWith("standard input: Valid."), result.out());
  }

  @Test
  void changedBorderBreaksRulesAndFigures() {
    // The border of r1c1 becomes that of its neighbour r2c1.
    String border = lastRound("r2c1");
    String edited =
        text.replaceFirst(
            "(\"at\": ?\"r1c1\".*?\"rounds\": ?\\[.*?)\"[A-Z]+\"\\]", "$1\"" + border + "\"]");
    assertNotEquals(text, edited);
    Result result = check(edited);
    assertEquals(5, result.code());
    Parsed parsed = Parsed.of(result);
    assertEquals("false", parsed.at("valid"));
    List<String> rules = rules(parsed);
    assertTrue(rules.contains("neighbour-borders"), rules.toString());
    assertTrue(rules.contains("stated-score"), rules.toString());
    assertTrue(rules.contains("stated-yarns"), rules.toString());
    int broken = rules.indexOf("neighbour-borders");
    assertEquals(2, parsed.size("faults[" + broken + "].pieces"));
    assertEquals("r1c1", parsed.at("faults[" + broken + "].pieces[0]"));
  }

  @Test
  void wordsNameEveryFault() {
    String edited = Briefs.write(folder, "edited.json", text.replaceFirst("\"mid\"", "\"dark\""));
    Result asWords = Run.of("check", edited);
    Result asJson = Run.of("check", edited, "--json");
    assertEquals(5, asWords.code());
    int faults = Parsed.of(asJson).size("faults");
    assertTrue(faults > 0);
    int warnings = Parsed.of(asJson).size("warnings");
    assertEquals(1 + faults + warnings, asWords.out().lines().count(), asWords.out());
    for (int i = 0; i < faults; i++) {
      String words = Parsed.of(asJson).at("faults[" + i + "].words");
      assertTrue(asWords.out().contains(words), words);
    }
  }

  @Test
  void openRoundIsAFault() {
    Result result = check(text.replaceFirst("(\"rounds\": ?\\[)\"[A-Z]+\"", "$1null"));
    assertEquals(5, result.code());
    assertTrue(rules(Parsed.of(result)).contains("complete"));
  }

  @Test
  void statedTotalIsHeldAgainstTheRealOne() {
    double total = Parsed.of(text).number("score.total");
    String half = TOTAL.matcher(text).replaceFirst("$1" + total / 2);
    Result result = check(half);
    assertEquals(5, result.code());
    assertEquals(List.of("stated-score"), rules(Parsed.of(result)));
    assertTrue(Parsed.of(result).at("faults[0].words").contains("for total"), result.out());
  }

  @Test
  void theScoreOfAnEarlierVersionIsAWarning() {
    String former = text.replaceFirst("\"keep\": ?null, \"objective\": ?[0-9.]+, ", "");
    assertNotEquals(text, former);
    Result result = check(TOTAL.matcher(former).replaceFirst("$112.5"));
    assertEquals(0, result.code());
    String warning = Parsed.of(result).at("warnings[0]");
    assertTrue(warning.contains("a score of 12.50 by the formulas of an earlier"), warning);
    String words = Run.of("check", folder.resolve("edited.json").toString()).out();
    assertTrue(words.contains("Every rule holds; yarn totals are as stated."), words);
    String summary = Run.of("report", folder.resolve("edited.json").toString()).out();
    assertTrue(summary.contains("Score ") && !summary.contains("no arrangement"), summary);
  }

  @Test
  void statedYarnIsHeldAgainstTheRealOneToTheMillimetre() {
    Matcher used = USED.matcher(text);
    assertTrue(used.find());
    double metres = Double.parseDouble(used.group(2));
    String longer =
        text.substring(0, used.start(2))
            + String.format(java.util.Locale.ROOT, "%.3f", metres + 0.001)
            + text.substring(used.end(2));
    Result result = check(longer);
    assertEquals(5, result.code());
    assertEquals(List.of("stated-yarns"), rules(Parsed.of(result)));
    assertEquals("NAV", Parsed.of(result).at("faults[0].yarns[0]"));
  }

  @Test
  void boundBelowTheScoreIsAFault() {
    String low = text.replaceFirst("\"bound\": ?[^,}]+", "\"bound\": 1.5");
    Result result = check(low);
    assertEquals(5, result.code());
    assertEquals(List.of("stated-bound"), rules(Parsed.of(result)));
  }

  @Test
  void rowsAndPartsThatAreMissingAreNamed() {
    Result row = check(text.replaceFirst("(?m)^ *\\{\"code\": \"NAV\", \"name\".*,\n", ""));
    assertEquals(5, row.code());
    assertEquals(List.of("stated-yarns"), rules(Parsed.of(row)));
    assertEquals("NAV", Parsed.of(row).at("faults[0].yarns[0]"));
    Result part = check(text.replaceFirst("\"spread\": [0-9.]+", "\"spread\": null"));
    assertEquals(5, part.code());
    assertTrue(
        Parsed.of(part).at("faults[0].words").startsWith("The file states nothing for spread; "),
        part.out());
  }

  @Test
  void everyCommandRefusesPiecesThatContradictTheBrief() {
    String edited =
        Briefs.write(
            folder,
            "edited.json",
            text.replaceFirst("(\"at\": \"r2c1\".*?)\"planned\"", "$1\"joined\""));
    for (List<String> command :
        List.of(
            List.of("check", edited),
            List.of("report", edited),
            List.of("compare", edited),
            List.of("need", edited),
            List.of("mark", edited, "--made", "r1c1"),
            List.of("explain", edited),
            List.of("solve", edited, "--moves", Briefs.MOVES))) {
      Result result = Run.of(command.toArray(String[]::new));
      assertEquals(2, result.code(), command.toString());
      assertTrue(
          result
              .err()
              .contains(
                  "r2c1 is stated to be joined. It is planned by the brief; a mark changes that"),
          result.err());
    }
  }

  @Test
  void otherCommandsWorkFiguresOutAnewAndSaySo() {
    String edited =
        Briefs.write(
            folder,
            "edited.json",
            TOTAL
                .matcher(text)
                .replaceFirst("$1 12.5")
                .replaceFirst("\"bound\": ?[^,}]+", "\"bound\": 1.5"));
    for (List<String> command :
        List.of(
            List.of("report"),
            List.of("compare"),
            List.of("need"),
            List.of("mark", "--made", "r1c1", "-o", "-"))) {
      List<String> asked = new ArrayList<>(command);
      asked.add(1, edited);
      Result worked = Run.of(asked.toArray(String[]::new));
      asked.set(1, file);
      Result right = Run.of(asked.toArray(String[]::new));
      assertEquals(0, worked.code(), worked.err());
      assertTrue(worked.err().contains("edited.json: Figures in it are not what"), worked.err());
      assertTrue(!right.err().contains("Figures in it"), right.err());
      assertTrue(!worked.out().contains("12.5"), worked.out());
      assertTrue(!worked.out().contains("exceed 1.5"), worked.out());
    }
  }

  @Test
  void briefIsNoArrangement() {
    Result result = Run.of("check", folder.resolve("small.yaml").toString());
    assertEquals(2, result.code());
    assertTrue(result.err().contains("This is a brief"), result.err());
  }

  private Result check(String edited) {
    return Run.of("check", Briefs.write(folder, "edited.json", edited), "--json");
  }

  private String lastRound(String piece) {
    Matcher rounds =
        Pattern.compile("\"at\": ?\"" + piece + "\".*?\"rounds\": ?\\[.*?\"([A-Z]+)\"\\]")
            .matcher(text);
    assertTrue(rounds.find());
    return rounds.group(1);
  }

  private static List<String> rules(Parsed parsed) {
    return IntStream.range(0, parsed.size("faults"))
        .mapToObj(i -> parsed.at("faults[" + i + "].rule"))
        .collect(Collectors.toList());
  }
}
