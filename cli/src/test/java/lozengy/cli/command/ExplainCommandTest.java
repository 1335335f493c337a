package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplainCommandTest {

  @TempDir private Path folder;

  /** The small brief with two neighbours locked to one border. */
  private String lockedAlike() {
    String brief = Briefs.text(Briefs.write(folder));
    return Briefs.write(
        folder,
        "alike.yaml",
        brief
            + "\npieces:\n"
            + "  - { at: r1c1, rounds: [.., BRO] }\n"
            + "  - { at: r2c1, rounds: [.., BRO] }\n");
  }

  @Test
  void saysThatAnArrangementFitsAndWritesIt() {
    String out = folder.resolve("witness.json").toString();

    Result result = Run.of("explain", Briefs.write(folder), "-o", out);

    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("an arrangement fits"), result.out());
    assertEquals(0, Run.of("check", out).code());
  }

  @Test
  void namesTheLinesThatCannotHoldTogether() {
    Result result = Run.of("explain", lockedAlike(), "--json");

    assertEquals(3, result.code(), result.err());
    Parsed json = Parsed.of(result);
    assertEquals("lozengy-explanation/1", json.at("format"));
    assertEquals("impossible", json.at("outcome"));
    assertEquals("true", json.at("causes[0].minimal"));
    assertEquals(3, json.size("causes[0].lines"));
    String brief = Briefs.text(folder.resolve("alike.yaml").toString());
    int line = (int) json.number("causes[0].lines[1].line");
    assertTrue(brief.lines().toList().get(line - 1).contains("r1c1"), "line " + line);
  }

  @Test
  void aCountIsLeftOutWholeWhereItAsksForNothingElse() {
    String brief = Briefs.text(Briefs.write(folder));
    String asks =
        "\nlook: { counts: [ { yarn: BRO, rounds: border, at-least: 1%s } ] }\n"
            + "pieces: [ { at: all, not: [BRO] } ]\n";

    String alone = Briefs.write(folder, "alone.yaml", brief + asks.formatted(""));
    String both = Briefs.write(folder, "both.yaml", brief + asks.formatted(", at-most: 3"));

    assertTrue(remedies(alone).contains("\"path\":\"look.counts[0]\""), remedies(alone));
    assertTrue(remedies(both).contains("\"path\":\"look.counts[0].at-least\""), remedies(both));
  }

  private static String remedies(String file) {
    String json = Run.of("explain", file, "--json").out().replaceAll("\\s", "");
    return json.substring(json.indexOf("\"remedies\""));
  }

  @Test
  void explainsLocksOfTheCommandLineThatCannotHold() {
    String file = Briefs.write(folder);

    Result result = Run.of("explain", file, "--lock", "r1c1=..,BRO", "--lock", "r2c1=..,BRO");

    assertEquals(3, result.code(), result.err());
    String words = result.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("--lock r2c1=..,BRO, r2c1:"), words);
    assertTrue(words.contains("r1c1 and r2c1 are joined along a side"), words);
    assertTrue(words.contains("Free r1c1 of its lock --lock r1c1=..,BRO: leave it out"), words);
  }

  /** The command is there to be pasted to a shell. */
  @Test
  void aNameWithABlankStandsWithinQuotes() throws IOException {
    String locks = "\"pieces\": [{ \"at\": [\"r1c1\", \"r2c1\"], \"rounds\": [\"..\", \"BRO\"] }]";
    String solved = Files.readString(Path.of(Briefs.solved(folder)));
    Path file = folder.resolve("two alike.json");
    Files.writeString(file, solved.replace("\"pieces\": []", locks));

    Result result = Run.of("explain", file.toString());

    assertEquals(3, result.code(), result.err());
    String words = result.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("two alike.json' --free r1c1"), words);
  }

  @Test
  void namesTheOptionToLeaveOutWhereAnotherOneHasTakenNotesAway() {
    String file = Briefs.solved(folder);
    assertEquals(0, Run.of("mark", file, "--made", "all").code());
    String[] call = {"explain", file, "--move=all", "--lock=r1c1=..,BRO", "--lock=r2c1=..,BRO"};

    Result result = Run.of(call);
    Result json =
        Run.of(Stream.concat(Stream.of(call), Stream.of("--json")).toArray(String[]::new));

    assertEquals(3, result.code(), result.err());
    String words = result.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("--lock r2c1=..,BRO: leave it out"), words);
    // it would take nothing back: options lock last
    assertFalse(words.contains("--free"), words);
    assertFalse(json.out().contains("--free"), json.out());
  }

  @Test
  void tellsOfMistakesThatAreNotOfLocks() {
    String brief = Briefs.text(Briefs.write(folder));
    String wrong = Briefs.write(folder, "wrong.yaml", brief.replace("across: 2", "across: 0"));

    assertEquals(2, Run.of("explain", wrong).code());
  }
}
