package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lozengy.cli.Run.Result;
import lozengy.model.input.MistakeCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Every mistake bears a code that the README tells of, with the data that it names. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MistakeCodesTest {

  /** What no input brings about: another process, or the program itself, must. */
  private static final Set<MistakeCode> OF_NO_INPUT =
      EnumSet.of(
          MistakeCode.OVERTAKEN,
          MistakeCode.BUSY,
          MistakeCode.OUT_OF_MEMORY,
          MistakeCode.PROGRAM_FAULT);

  private static final String ROUND = "metres: 1.6 }";

  @TempDir Path folder;

  private final Set<MistakeCode> met = EnumSet.noneOf(MistakeCode.class);
  private final List<String> missed = new ArrayList<>();
  private String brief;
  private String plan;

  @BeforeAll
  void solve() {
    brief = Run.of("new", "--across", "2", "--down", "2").out();
    plan =
        new Run()
            .input(brief.getBytes(StandardCharsets.UTF_8))
            .run("solve", "-", "-o", "-", "--moves", "1000")
            .out();
  }

  @Test
  void readmeTellsOfEveryCodeAndItsData() throws IOException {
    Path readme = Path.of("README.md");
    Pattern row = Pattern.compile("\\| `([a-z-]+)` \\| [^|]+ \\| ([`a-z, ]*)\\|");
    String table = Files.readString(readme).split("### Codes of mistakes")[1];
    List<String> told =
        row.matcher(table)
            .results()
            .map((MatchResult found) -> found.group(1) + " " + found.group(2).replace("`", ""))
            .map(String::strip)
            .toList();
    assertEquals(
        Arrays.stream(MistakeCode.values())
            .map(code -> (code.word() + " " + String.join(", ", code.names())).strip())
            .toList(),
        told);
  }

  @Test
  void everyCodeIsMet() throws IOException {
    ofBriefs();
    ofArrangements();
    ofFilesAndCalls();
    assertEquals(List.of(), missed);
    assertEquals(EnumSet.complementOf(EnumSet.copyOf(OF_NO_INPUT)), met);
  }

  private void ofBriefs() {
    brief(MistakeCode.WRONG_TYPE, "side: 10 cm", "side: [10 cm]");
    brief(MistakeCode.EMPTY_TEXT, "title: My blanket", "title: ' '");
    brief(MistakeCode.TEXT_TOO_LONG, "title: My blanket", "title: " + "long".repeat(60));
    brief(MistakeCode.CONTROL_CHARACTER, "title: My blanket", "title: \"My \\e blanket\"");
    brief(MistakeCode.UNKNOWN_WORD, "setting: on-point", "setting: askew");
    brief(MistakeCode.NOT_A_NUMBER, ROUND, "metres: few }");
    brief(MistakeCode.QUOTED_NUMBER, ROUND, "metres: '1.6' }");
    brief(MistakeCode.NOT_A_QUANTITY, "side: 10 cm", "side: wide");
    brief(MistakeCode.NO_UNIT, "side: 10 cm", "side: 10");
    brief(MistakeCode.UNKNOWN_UNIT, "side: 10 cm", "side: 10 ells");
    brief(MistakeCode.OUT_OF_RANGE, ROUND, "metres: -1.6 }");
    brief(MistakeCode.MALFORMED, "\"#232c4b\"", "navy");
    brief(MistakeCode.WRONG_COUNT, "prefer:", "look: { borders: [NAV, BRO, FOR] }\nprefer:");
    brief(MistakeCode.FIELD_MISSING, "title: My blanket", "");
    brief(MistakeCode.FIELD_EMPTY, "title: My blanket", "title:");
    brief(MistakeCode.FIELD_UNKNOWN, "title: My blanket", "title: My blanket\ncolour: red");
    brief(MistakeCode.FIELD_TWICE, "title: My blanket", "title: My blanket\ntitle: Mine");
    brief(MistakeCode.ONE_OF, ROUND, "metres: 1.6, yards: 2 }");
    brief(MistakeCode.NAMED_TWICE, "code: BRO", "code: NAV");
    brief(MistakeCode.UNKNOWN_YARN, "edging:  { yarn: NAV", "edging:  { yarn: NVA");
    brief(MistakeCode.UNKNOWN_STITCH, ROUND, "stitches: { shell: 12 } }");
    brief(MistakeCode.AMBIGUOUS_STITCH, ROUND, "stitches: { dc: 12 } }");
    brief(MistakeCode.NO_STARTING_VALUE, ROUND, "stitches: { hdc: 12 } }");
    text(
        MistakeCode.LIGHTER_THAN_TAILS,
        changed(
            changed(brief, ROUND, "stitches: { hdc: 12 } }"),
            "motifs:",
            "stitches: { samples: [ { of: square, rounds: 1, takes: 0.2 m } ] }\nmotifs:"));
    brief(MistakeCode.UNKNOWN_PIECE, "prefer:", "pieces: [ { at: r9c1, not: [FOR] } ]\nprefer:");
    brief(
        MistakeCode.NOT_COUNTED,
        "prefer:",
        "pile: [ { kind: corner, rounds: [CRE, TEA, NAV], counted: [CRE] } ]\nprefer:");
    brief(MistakeCode.CONTRADICTS, "rules:", "tones: { dark-below: 60, light-from: 50 }\nrules:");
    brief(
        MistakeCode.ROUND_OPEN,
        "prefer:",
        "pieces: [ { at: top-left, rounds: [CRE, ~, NAV], state: made } ]\nprefer:");
    brief(
        MistakeCode.BREAKS_RULE,
        "prefer:",
        "pieces: [ { at: r1c1, rounds: [~, ~, ~, ~, NAV] },"
            + " { at: r2c1, rounds: [~, ~, ~, ~, NAV] } ]\nprefer:");
    brief(MistakeCode.WRONG_FORMAT, "lozengy-brief/1", "lozengy-brief/9");
    brief(MistakeCode.UNSUPPORTED, "title: My blanket", "title: &t My blanket");
    brief(MistakeCode.TOO_LARGE, "across: 2", "across: 100000");
    text(MistakeCode.SYNTAX, "title: [");
    text(MistakeCode.EMPTY_INPUT, "");
    text(MistakeCode.NOT_TEXT, "title: \0");
    text(MistakeCode.FURTHER_MISTAKES, brief + "a: [" + "&a 1, ".repeat(101) + "]");
  }

  private void ofArrangements() {
    String kind = "\"kind\": \"corner\"";
    run(MistakeCode.DIFFERS_FROM_BRIEF, changed(plan, kind, "\"kind\": \"square\""), "check", "-");
    run(MistakeCode.NOTHING_TO_CHANGE, plan, "solve", "-", "-o", "-", "--free", "r1c1");
    String made =
        changed(
            brief,
            "prefer:",
            "pieces: [ { at: top-left, rounds: [CRE, TEA, NAV]," + " state: made } ]\nprefer:");
    run(MistakeCode.ALREADY_WORKED, made, "solve", "-", "-o", "-", "--free", "top-left");
  }

  private void ofFilesAndCalls() throws IOException {
    Path there = Files.writeString(folder.resolve("there.yaml"), brief);
    String none = folder.resolve("none.yaml").toString();
    run(MistakeCode.NO_SUCH_FILE, "", "check", none);
    run(MistakeCode.FILE_EXISTS, plan, "solve", "-", "-o", there.toString());
    run(MistakeCode.UNREADABLE, "", "check", folder.toString());
    run(MistakeCode.UNWRITABLE, plan, "solve", "-", "-o", folder.toString());
    run(MistakeCode.WRONG_CALL, "", "check", none, none);
    run(MistakeCode.NO_SIZE_NEAR, brief, "sizes", "-", "tiny=5x5cm");
    run(MistakeCode.OPTION_MISSING, plan, "solve", "-", "-o", "-", "--within", "1");
  }

  private void brief(MistakeCode code, String old, String now) {
    text(code, changed(brief, old, now));
  }

  private void text(MistakeCode code, String text) {
    run(code, text, "solve", "-", "-o", "-");
  }

  private static String changed(String text, String old, String now) {
    assertTrue(text.contains(old), old);
    return text.replaceFirst(Pattern.quote(old), now.replace("\\", "\\\\"));
  }

  /** Runs what is to be refused for a mistake of a sort, among others. */
  private void run(MistakeCode code, String input, String... arguments) {
    List<String> all = new ArrayList<>(List.of(arguments));
    all.add("--json");
    Result result =
        new Run().input(input.getBytes(StandardCharsets.UTF_8)).run(all.toArray(String[]::new));
    assertEquals(2, result.code(), code + ": " + result.err());
    Parsed told = Parsed.of(result);
    List<String> codes =
        IntStream.range(0, told.size("error.mistakes"))
            .mapToObj(i -> told.at("error.mistakes[" + i + "].code"))
            .toList();
    if (codes.contains(code.word())) {
      met.add(code);
    } else {
      missed.add(code + " is not among " + codes);
    }
  }
}
