package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Check;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Planning again with changes that the command line asks for. */
class SolveChangesTest {

  @TempDir Path folder;
  private String file;
  private StatedArrangement before;

  @BeforeEach
  void solve() {
    file = Briefs.solved(folder);
    assertEquals(0, Run.of("mark", file, "--joined", "r1c1", "--made", "r3c2").code());
    before = ArrangementReader.read(Path.of(file));
  }

  private Result again(String... options) {
    List<String> arguments =
        new ArrayList<>(
            List.of("solve", file, "--moves", Briefs.MOVES, "--threads", "1", "--overwrite"));
    arguments.addAll(List.of("-o", folder.resolve("again.json").toString()));
    arguments.addAll(Arrays.asList(options));
    return Run.of(arguments.toArray(String[]::new));
  }

  private StatedArrangement solved(String... options) {
    Result result = again(options);
    assertEquals(0, result.code(), result.err() + result.out());
    StatedArrangement solved = ArrangementReader.read(folder.resolve("again.json"));
    assertEquals(List.of(), Check.faults(solved.blanket(), solved.sequences()));
    return solved;
  }

  private String refused(String... options) {
    Result result = again(options);
    assertEquals(2, result.code(), result.out());
    return result.err();
  }

  private static String codes(StatedArrangement arrangement, String name) {
    int piece = arrangement.blanket().layout().find(name).orElseThrow().index();
    List<String> codes = new ArrayList<>();
    for (int yarn : arrangement.sequences().of(piece)) {
      codes.add(arrangement.blanket().yarn(yarn).code());
    }
    return String.join(" ", codes);
  }

  private static boolean uses(StatedArrangement arrangement, String code) {
    Sequences sequences = arrangement.sequences();
    int yarn = arrangement.blanket().yarnIndex(code);
    return IntStream.range(0, sequences.pieces())
        .filter(piece -> arrangement.blanket().state(piece) == PieceState.PLANNED)
        .anyMatch(piece -> IntStream.of(sequences.of(piece)).anyMatch(each -> each == yarn));
  }

  private void assertWorkedAsBefore(StatedArrangement solved) {
    assertEquals(codes(before, "r1c1"), codes(solved, "r1c1"));
    assertEquals(codes(before, "r3c2"), codes(solved, "r3c2"));
    assertEquals(PieceState.JOINED, solved.blanket().state(0));
  }

  @Test
  void everyWrongLockIsToldBesideOnesOfThePlan() {
    String told = refused("--lock", "r1c2=..,XXX", "--lock", "r88c1", "--ban", "top=YYY");

    assertTrue(told.contains("--lock r88c1: There is no piece \"r88c1\""), told);
    told = refused("--lock", "r1c2=..,XXX", "--lock", "r2c1", "--ban", "top=YYY");
    assertTrue(told.contains("--lock r1c2=..,XXX: No yarn has the code \"XXX\""), told);
    assertTrue(told.contains("--ban top=YYY: No yarn has the code \"YYY\""), told);
  }

  @Test
  void piecesAreLockedAsPlannedOrToYarns() {
    StatedArrangement solved =
        solved("--lock", "r2c1", "--lock", "r1c2=CRE,~,~,~,~", "--lock", "bottom-left=..,PLU");

    assertEquals(codes(before, "r2c1"), codes(solved, "r2c1"));
    assertTrue(codes(solved, "r1c2").startsWith("CRE "), codes(solved, "r1c2"));
    assertTrue(codes(solved, "bottom-left").endsWith(" PLU"));
    assertWorkedAsBefore(solved);
  }

  @Test
  void yarnsAreKeptOutOfGroups() {
    StatedArrangement solved = solved("--ban", "triangles=TEA,OLI", "--ban", "corners=SKY");

    for (String name : List.of("top1", "right1", "bottom1", "left1")) {
      assertFalse(codes(solved, name).matches(".*(TEA|OLI).*"), codes(solved, name));
    }
    assertWorkedAsBefore(solved);
  }

  @Test
  void locksAreTakenBackInTheNewFile() {
    solved("--lock", "row1");
    String locked = folder.resolve("again.json").toString();
    String freed = folder.resolve("freed.json").toString();

    Result result =
        Run.of("solve", locked, "--moves", "500", "--threads", "1", "-o", freed, "--free", "r1c2");

    assertEquals(0, result.code(), result.err());
    StatedArrangement solved = ArrangementReader.read(Path.of(freed));
    int piece = solved.blanket().layout().find("r1c2").orElseThrow().index();
    assertTrue(solved.blanket().free(piece, 0));
  }

  @Test
  void aYarnIsDoneWithoutOrReplaced() {
    StatedArrangement without = solved("--without", "ROS");
    assertFalse(uses(without, "ROS"));
    assertWorkedAsBefore(without);

    StatedArrangement swapped = solved("--swap", "ROS=TEA");
    assertFalse(uses(swapped, "ROS"));
    assertWorkedAsBefore(swapped);
  }

  @Test
  void theSizeChangesAroundWhatIsThere() {
    StatedArrangement larger = solved("--down", "3", "--across", "3");
    assertEquals(13 + 8 + 4, larger.blanket().pieceCount());
    assertWorkedAsBefore(larger);

    StatedArrangement moved = solved("--down", "3", "--anchor", "bottom-left");
    assertEquals(codes(before, "r1c1"), codes(moved, "r3c1"));
    assertEquals(codes(before, "r3c2"), codes(moved, "r5c2"));
  }

  @Test
  void aBriefMayBeChangedTooBeforeThereIsAPlan() {
    String brief = folder.resolve("small.yaml").toString();
    String out = folder.resolve("b.json").toString();

    Result result =
        Run.of(
            "solve",
            brief,
            "--moves",
            Briefs.MOVES,
            "--threads",
            "1",
            "-o",
            out,
            "--without",
            "ROS",
            "--lock",
            "r1c1=..,BRO");

    assertEquals(0, result.code(), result.err());
    assertFalse(result.out().contains("What has changed"), result.out());
    assertTrue(codes(ArrangementReader.read(Path.of(out)), "r1c1").endsWith("BRO"));
    Result asPlanned = Run.of("solve", brief, "--lock", "r1c1", "-o", out, "--overwrite");
    assertEquals(2, asPlanned.code());
    assertTrue(
        asPlanned.err().contains("--lock r1c1: There is no plan yet that r1c1 could keep to"),
        asPlanned.err());
  }

  @Test
  void whatHasChangedIsToldPieceByPieceAndWhyTheScoreHasMoved() {
    String was = codes(before, "r2c1");
    String taken = was + codes(before, "r1c1") + codes(before, "r3c2");
    String border =
        Stream.of("NAV", "BRO", "FOR", "PLU")
            .filter(dark -> !taken.contains(dark))
            .findFirst()
            .get();

    Result result = again("--lock", "r2c1=..," + border, "--compare-afresh");

    assertEquals(0, result.code(), result.err());
    StatedArrangement solved = ArrangementReader.read(folder.resolve("again.json"));
    String out = result.out();
    assertTrue(out.contains("What has changed: "), out);
    assertTrue(out.matches("(?s).*r2c1 +" + was + " +-> +" + codes(solved, "r2c1") + "\n.*"), out);
    assertTrue(
        out.matches("(?s).*Solved afresh it would have been \\d+\\. The score would be .*"), out);
    assertTrue(out.contains("Why the score has moved"), out);
    assertTrue(out.matches("(?s).*\n  keep +100\\.0 +[\\d.]+ +3 *\n  with keep +.*"), out);
    assertTrue(
        out.contains(
            "./lozengy solve " + file + " --lock r2c1=..," + border + " --seed 1 --moves "),
        out);
  }

  @Test
  void theMovesOfThePartsAddUpToThatOfTheTotal() {
    Result result = again("--without", "ROS", "--compare-afresh", "--json");

    Parsed json = Parsed.of(result);
    double sum = 0;
    for (String part : json.names("changes.score.parts")) {
      sum += json.number("changes.score.parts." + part + ".points");
    }
    assertEquals(
        json.number("changes.score.total_now") - json.number("changes.score.total_before"),
        sum,
        1e-4);
    assertEquals(json.number("summary.score.total"), json.number("changes.score.total_now"), 1e-6);
    StatedArrangement solved = ArrangementReader.read(folder.resolve("again.json"));
    int changed = 0;
    for (int piece = 0; piece < solved.sequences().pieces(); piece++) {
      for (int round = 0; round < solved.sequences().rounds(piece); round++) {
        changed +=
            solved.sequences().yarn(piece, round) == before.sequences().yarn(piece, round) ? 0 : 1;
      }
    }
    assertEquals(changed, json.number("changes.rounds_changed"));
    int gone = 0;
    for (int piece = 0; piece < before.sequences().pieces(); piece++) {
      boolean planned = before.blanket().state(piece) == PieceState.PLANNED;
      String name = before.blanket().place(piece).name();
      gone += planned && codes(before, name).contains("ROS") ? 1 : 0;
    }
    double least = json.number("changes.rounds_that_must_change.at_least");
    assertTrue(least >= gone && least <= changed, gone + " <= " + least + " <= " + changed);
    assertTrue(json.number("changes.afresh.rounds_changed") >= 0);
    assertTrue(json.size("changes.pieces") > 0);
    assertEquals(5, json.size("changes.pieces[0].from"));
  }

  @Test
  void howManyRoundsHadToChangeIsToldInOneSentence() {
    String told = again("--without", "ROS").out();

    assertTrue(
        told.matches(
            "(?s).*\n(\\d+ had to change, \\d+ did|At least \\d+ must change; \\d+ did)\\.\n.*"),
        told);
  }

  @Test
  void nothingChangesWhereNothingWasAskedFor() {
    String out = again().out();

    assertTrue(out.contains("What has changed: nothing\n"), out);
    assertFalse(out.contains("had to change"), out);
  }

  @Test
  void theMovesThatAreToldGiveTheSameAgain() throws IOException {
    String[] plain = {
      "solve",
      file,
      "--without",
      "ROS",
      "--overwrite",
      "-o",
      folder.resolve("again.json").toString()
    };
    String moves = Run.of(plain).out().replaceAll("(?s).*--moves (\\d+).*", "$1");
    byte[] first = Files.readAllBytes(folder.resolve("again.json"));

    List<String> repeated = new ArrayList<>(Arrays.asList(plain));
    repeated.addAll(List.of("--moves", moves, "--threads", "1"));
    Run.of(repeated.toArray(String[]::new));

    assertArrayEquals(first, Files.readAllBytes(folder.resolve("again.json")));
  }

  @Test
  void planningAgainKeepsMoreThanPlanningAfresh() {
    Parsed json = Parsed.of(again("--without", "ROS", "--compare-afresh", "--json"));

    assertTrue(
        json.number("changes.rounds_changed") < json.number("changes.afresh.rounds_changed"));
  }

  @Test
  void whatCannotBeIsAClearNo() {
    // every dark yarn is kept out of the borders that must be dark
    Result result = again("--ban", "r2c1=NAV,BRO", "--ban", "r2c1=FOR,PLU", "--json");

    assertEquals(3, result.code(), result.out());
    assertEquals("impossible", Parsed.of(result).at("outcome"));
    assertTrue(Parsed.of(result).at("reasons[0]").contains("r2c1"), result.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "--lock=row9 | --lock row9: There is no piece \"row9\". The rows are row1 to row3",
        "--lock=r1c2=NAY,~,~,~,~ | --lock r1c2=NAY,~,~,~,~: No yarn has the code \"NAY\". Maybe",
        "--lock=r1c2=NAV | --lock r1c2=NAV: r1c2 is given 1 round. A square has 5 rounds; ~ leaves",
        "--lock=r1c2=.. | --lock r1c2=..: No yarn is named. Name at least one",
        "--lock=r1c2=..,CRE | --lock r1c2=..,CRE: r1c2: the border has Cream (CRE), which is light,",
        "--lock=r1c2,r2c1=..,FOR | --lock r1c2,r2c1=..,FOR: r1c2 and r2c1 are joined along a side",
        "--free=r1c2 | --free r1c2: Nothing is locked there. Leave it out, or name other pieces",
        "--free=r1c1 | --free r1c1: r1c1 is worked already. Mark pieces planned to work them anew",
        "--ban=triangles | --ban triangles: There is no =. Name pieces and yarns, such as",
        "--ban=triangels=NAV | --ban triangels=NAV: There is no piece \"triangels\". Maybe triangles",
        "--ban=triangles=NAF | --ban triangles=NAF: No yarn has the code \"NAF\". Maybe NAV is meant",
        "--without=NAV | --without NAV: The joining is in NAV. Put another yarn in its place: swap NAV for it",
        "--without=XXX | --without XXX: No yarn has the code \"XXX\". The yarns' codes are NAV,",
        "--swap=NAV | --swap NAV: There is no =. Name both yarns, such as REE=SND",
        "--swap=NAV=NAV | --swap NAV=NAV: NAV is the same yarn. Name another to put in its place",
        "--swap=NAV=XX | --swap NAV=XX: No yarn has the code \"XX\"",
        "--down=2 | --down: The blanket is 2 across and 2 down already. Name another size",
        "--down=1 | --down: r3c2 is worked and would lie outside. Let another corner stay",
        "--across=0 | --across, --down: 0 across and 2 down. Give whole numbers, 1 or more",
        "--across=99999 | --across: 99,999 across and 2 down make",
        "--across=two | Invalid value for option '--across': 'two' is not a whole number",
        "--anchor=top-left | --anchor: The size does not change. Give --across or --down with it",
        "--anchor=middle | Invalid value for option '--anchor': 'middle' is none of top-left,"
      })
  void whatIsWrongIsTold(String option, String words) {
    String err = refused(option);

    // Another fault may be told before it, where the search happened to give a neighbour that yarn.
    assertTrue(err.contains("lozengy: " + words), err);
  }

  @Test
  void allThatIsWrongIsToldTogether() {
    assertEquals(
        3, refused("--lock", "row9", "--swap", "NAV=XX", "--without", "YY").lines().count());
    assertEquals(2, refused("--ban", "x", "--swap", "NAV").lines().count());
  }

  @Test
  void whereNothingIsLeftToTryTheCommandToGiveAgainCanBeGiven() {
    assertEquals(0, Run.of("mark", file, "--joined", "all").code());
    String first = folder.resolve("first.json").toString();
    String again = folder.resolve("again.json").toString();

    Result solved = Run.of("solve", file, "--moves", "500", "-o", first);

    Matcher moves = Pattern.compile("--seed 1 --moves (\\d+)").matcher(solved.out());
    assertTrue(moves.find(), solved.out());
    Result repeated = Run.of("solve", file, "--seed", "1", "--moves", moves.group(1), "-o", again);
    assertEquals(0, repeated.code(), repeated.err());
    assertEquals(Briefs.text(first), Briefs.text(again));
  }
}
