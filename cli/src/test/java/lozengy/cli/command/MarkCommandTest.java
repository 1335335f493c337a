package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.brief.PieceState;
import lozengy.model.making.MakeList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkCommandTest {

  @TempDir Path folder;
  private String file;
  private String original;

  @BeforeEach
  void solve() {
    file = Briefs.solved(folder);
    original = Briefs.text(file);
  }

  private Result mark(String... options) {
    return Run.of(arguments(options));
  }

  private String[] arguments(String... options) {
    List<String> arguments = new ArrayList<>(List.of("mark", file));
    arguments.addAll(Arrays.asList(options));
    return arguments.toArray(String[]::new);
  }

  private static Result done(Result result) {
    assertEquals(0, result.code(), result.err());
    return result;
  }

  private StatedArrangement stated() {
    return ArrangementReader.read(Path.of(file));
  }

  private String inState(PieceState state) {
    StatedArrangement stated = stated();
    List<String> names = new ArrayList<>();
    for (int piece = 0; piece < stated.blanket().pieceCount(); piece++) {
      if (stated.blanket().state(piece) == state) {
        names.add(stated.blanket().place(piece).name());
      }
    }
    return String.join(" ", names);
  }

  private String border(String name) {
    StatedArrangement stated = stated();
    int piece = stated.blanket().layout().find(name).orElseThrow().index();
    return stated.blanket().yarn(stated.sequences().border(piece)).code();
  }

  @Test
  void listsRangesAndStripsAreMarkedInPlace() {
    Result result = done(mark("--made", "row1,r3c1..r3c2", "--made", "top1", "--joined", "strip1"));

    assertEquals("r1c1 r1c2 r3c1 r3c2 top1", inState(PieceState.MADE));
    assertEquals("top-left", inState(PieceState.JOINED));
    assertTrue(result.out().contains("Now made: r1c1, r1c2, r3c1, r3c2 and top1"), result.out());
    assertTrue(result.out().contains("5 made, 1 joined, 7 planned. Score "), result.out());
    assertTrue(result.out().endsWith("Wrote " + file + "\n"), result.out());
    assertEquals(0, Run.of("check", file).code());
  }

  @Test
  void aListComesFromStandardInputAsCsv() {
    String csv = "\uFEFFname,at,colour\r\n\"Square, first\",r1c1,red\r\nother,\"row3\",\r\n\r\n";

    done(new Run().input(csv.getBytes(StandardCharsets.UTF_8)).run(arguments("--made", "-")));

    assertEquals("r1c1 r3c1 r3c2", inState(PieceState.MADE));
  }

  @Test
  void aListWithoutAHeadIsReadCellByCell() {
    String csv = "r1c1;r1c2\ntop1\ttop-left\n";

    done(new Run().input(csv.getBytes(StandardCharsets.UTF_8)).run(arguments("--joined", "-")));

    assertEquals("r1c1 r1c2 top1 top-left", inState(PieceState.JOINED));
  }

  @Test
  void whatWasReallyWorkedIsToldWithWhatItBreaks() {
    String repeated = border("r2c1");
    String planned = border("r1c1");

    Result result = done(mark("--worked", "r1c1=..," + repeated));

    assertEquals(repeated, border("r1c1"));
    assertEquals("r1c1", inState(PieceState.MADE));
    assertTrue(result.out().contains(planned + " -> "), result.out());
    assertTrue(result.out().matches("(?s).*\\d faults?:\n.*"), result.out());
    Result check = Run.of("check", file);
    assertEquals(5, check.code());
    assertTrue(
        check.out().contains("neighbour-borders: r1c1 and r2c1 are joined along a side"),
        check.out());
    // planning again mends what is still to be worked
    done(Run.of("solve", file, "--moves", Briefs.MOVES, "--threads", "1"));
    assertEquals(0, Run.of("check", folder.resolve("small-2.arrangement.json").toString()).code());
  }

  @Test
  void aCountIsTheTruthForItsYarnFromNowOn() {
    Result result = done(mark("--made", "squares", "--left", "NAV=60g", "--edged", "25"));

    assertTrue(result.out().contains("Navy (NAV): 144.00 m at hand, "), result.out());
    Parsed report = Parsed.of(done(Run.of("need", file, "--json")));
    assertEquals("NAV", report.at("yarns[0].code"));
    assertEquals(144, report.number("yarns[0].available_m"));
    assertEquals(0, Run.of("check", file).code());
    assertTrue(
        done(Run.of("report", file)).out().contains("NAV was counted in mid-work"),
        "no word of it");
  }

  @Test
  void marksAreTakenBackOneByOneToTheLastByte() {
    done(mark("--made", "row1"));
    String once = Briefs.text(file);
    done(mark("--joined", "r1c1", "--worked", "r1c1=..,BRO", "--left", "BRO=9 m"));

    Result result = done(mark("--undo"));

    assertTrue(result.out().startsWith("The last mark is taken back.\n"), result.out());
    assertTrue(result.out().contains("Brown (BRO): as before the count, "), result.out());
    assertEquals(once, Briefs.text(file));
    done(mark("--undo"));
    assertEquals(original, Briefs.text(file));
    Result again = mark("--undo");
    assertEquals(2, again.code());
    assertTrue(again.err().contains("There is no mark to take back"), again.err());
  }

  @Test
  void yarnComesAndGoesAndIsTakenBackToTheLastByte() {
    done(mark("--made", "row1"));
    assertTrue(
        done(mark(
                "--add", "code: COP, colour: \"#8a4b2d\", balls: 2, ball: {grams: 50, metres: 90}"))
            .out()
            .contains("COP: new, 180.00 m at hand, "));
    assertTrue(done(mark("--bought", "COP=1 1/2 balls")).out().contains("COP: 315.00 m at hand, "));
    assertTrue(
        done(mark("--lot", "NA2=NAV", "--bought", "NA2=20 m"))
            .out()
            .contains("Navy, lot NA2 (NA2): new, 20.00 m at hand, "));
    Result gone = done(mark("--gone", "BRO"));
    assertTrue(gone.out().contains("Brown (BRO): gone, "), gone.out());
    assertTrue(gone.out().contains("has Brown (BRO), which is gone"), gone.out());
    assertTrue(done(Run.of("need", file)).out().contains(" gone "), "no word of it");
    Parsed need = Parsed.of(done(Run.of("need", file, "--json")));
    assertEquals("BRO", need.at("yarns[1].code"));
    assertEquals("true", need.at("yarns[1].gone").toString());
    for (int i = 0; i < 5; i++) {
      done(mark("--undo"));
    }
    assertEquals(original, Briefs.text(file));
  }

  @Test
  void yarnThatCannotBeIsRefusedWithWhatWouldBeRight() {
    assertEquals(
        "lozengy: --add colour: \"red\" is not a colour. Give it as \"#rrggbb\", six hexadecimal"
            + " digits, in quotes\n",
        mark("--add", "code: RUS, colour: red, left: 3 m").err());
    assertEquals(
        "lozengy: --bought NAV=2: '2' is no amount that can be bought. Give a number above 0 and"
            + " balls, g, oz, m or yd, such as SLO=2balls\n",
        mark("--bought", "NAV=2").err());
    assertEquals(
        "lozengy: --gone NAW: No yarn has the code \"NAW\". Maybe NAV is meant\n",
        mark("--gone", "NAW").err());
    assertEquals(original, Briefs.text(file));
  }

  @Test
  void anotherBriefIsPlannedCloseToWhatStands() throws IOException {
    done(mark("--made", "row1", "--gone", "BRO"));
    Path brief = folder.resolve("small.yaml");
    Path changed = folder.resolve("changed.yaml");
    Files.writeString(
        changed,
        Files.readString(brief).replace("\nrules:\n", "\nrules:\n  neighbour-centres: differ\n"));
    String[] wish = {"solve", file, "--brief", changed.toString(), "--moves", Briefs.MOVES};
    Result result = Run.of(wish);
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("What has changed: "), result.out());
    StatedArrangement now = ArrangementReader.read(folder.resolve("small-2.arrangement.json"));
    assertTrue(now.blanket().brief().rules().centresDiffer());
    assertTrue(now.blanket().yarn(now.blanket().yarnIndex("BRO")).gone());
    assertEquals(stated().blanket().locks().yarn(0, 0), now.blanket().locks().yarn(0, 0), "worked");
    Result plain = Run.of("solve", brief.toString(), "--brief", changed.toString());
    assertEquals(2, plain.code());
    assertTrue(plain.err().contains("There is no plan for it to change"), plain.err());
  }

  @Test
  void nothingIsLeftWithoutAUnit() {
    Result result = done(mark("--left", "ROS=0"));

    assertTrue(result.out().contains("(ROS): 0.00 m at hand"), result.out());
  }

  @Test
  void theFirstMarkIsTakenBackToTheSolvedFile() {
    done(mark("--made", "all", "--left", "NAV=1g"));
    done(mark("--undo"));

    assertEquals(original, Briefs.text(file));
  }

  @Test
  void nothingNewLeavesTheFileAlone() {
    done(mark("--made", "row1"));
    String once = Briefs.text(file);

    Result result = done(mark("--made", "r1c1"));

    assertEquals("Nothing new: all of this is marked already.\n", result.out());
    assertEquals(once, Briefs.text(file));
    assertEquals("nothing-new", Parsed.of(done(mark("--made", "r1c1", "--json"))).at("outcome"));
  }

  @Test
  void theResultMayGoElsewhere() {
    String other = folder.resolve("other.json").toString();

    done(mark("--made", "row1", "-o", other));
    assertEquals(original, Briefs.text(file));
    assertTrue(Files.exists(Path.of(other)));
    assertEquals(2, mark("--made", "row1", "-o", other).code());
    Result piped =
        new Run()
            .input(original.getBytes(StandardCharsets.UTF_8))
            .run("mark", "-", "--made", "row1");
    assertEquals(0, piped.code());
    assertEquals(Briefs.text(other), piped.out());
    assertTrue(piped.err().contains("Now made: r1c1 and r1c2"), piped.err());
  }

  @Test
  void jsonTellsTheSame() {
    String repeated = border("r2c1");

    Parsed json =
        Parsed.of(done(mark("--worked", "r1c1=..," + repeated, "--left", "ROS=40 m", "--json")));

    assertEquals("marked", json.at("outcome"));
    assertEquals(file, json.at("arrangement"));
    assertEquals("r1c1", json.at("states[0].at"));
    assertEquals("planned", json.at("states[0].from"));
    assertEquals("made", json.at("states[0].to"));
    assertEquals(repeated, json.at("worked[0].to[4]"));
    assertEquals("ROS", json.at("counted[0].code"));
    assertEquals(40, json.number("counted[0].available_m"));
    assertEquals(1, json.number("pieces.made"));
    assertEquals("neighbour-borders", json.at("faults[0].rule"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "--made=row9 | --made: There is no piece \"row9\". The rows are row1 to row3",
        "--joined= | --joined: There is no piece \"\". Squares are named by row and place",
        "--worked=r1c1 | --worked r1c1: There is no =. Name yarns, such as r4c2=~,~,SND,~,~",
        "--worked=r1c1= | --worked r1c1=: Nothing stands after =. Name yarns",
        "--worked=r1c1=~,~,~,~,~ | --worked r1c1=~,~,~,~,~: No yarn is named. Name at least one",
        "--worked=r1c1=..,NAY | --worked r1c1=..,NAY: No yarn has the code \"NAY\". Maybe NAV is",
        "--worked=r1c1=NAV | --worked r1c1=NAV: r1c1 is given 1 round. A square has 5 rounds",
        "--left=NAV | --left NAV: There is no =. Name a yarn and an amount, such as REE=85g",
        "--left=NAV=85 | --left NAV=85: '85' is no amount of yarn. Give a number and g, oz, m or yd",
        "--left=NAV=-1g | --left NAV=-1g: '-1g' is no amount of yarn",
        "--left=XXX=1g | --left XXX=1g: No yarn has the code \"XXX\"",
        "--edged=30 | --edged: The edging's yarn is not counted with it. Count what is left of NAV",
        "--edged=130 | --edged: 130.0. Give a number from 0 to 100",
        "--rounds=r1c1 | --rounds r1c1: There is no =. Name pieces and a number, such as squares=2",
        "--rounds=r1c1=two | --rounds r1c1=two: 'two' is no number of rounds. Give how many",
        "--rounds=r1c1=6 | --rounds r1c1=6: r1c1 has no round 6. A square has 5 rounds; give 1 to 5",
        "--rounds=r1c1=0 | --rounds r1c1=0: r1c1 has no round 0. A square has 5 rounds; give 1 to 5",
        "--step=first | --step first: This names no step. Give a number, or a range such as 1-4",
        "--step=999 | --step 999: The make list has no step 999. Its steps are 1 to ",
        "--step=0 | --step 0: The make list has no step 0. Its steps are 1 to ",
        "--step=3-1 | --step 3-1: Step 3 comes after step 1. Give the lower number first",
        "--step=1=row9 | --step 1=row9: There is no piece \"row9\". The rows are row1 to row3",
        "--made=all --on=2025-02-30 | --on 2025-02-30: This is no day. Give year, month and day, such",
        "--made=all --on=9025-02-03 | --on 9025-02-03: That day is still to come. Today is ",
        "--left=NAV=31,5g | --left NAV=31,5g: '31,5g' is no amount of yarn. Write decimals with a point: 31.5g",
        "--edged=half | Invalid value for option '--edged': 'half' is not a part in per cent, such as 40 %",
        "--edged=4,5% | Invalid value for option '--edged': '4,5%' is not a part in per cent, such as 40 %. Write decimals with a point: 4.5%",
        "--undone | There is no option '--undone'. Perhaps '--uncount' or '--undo' is meant."
      })
  void whatIsWrongIsToldAndTheFileLeftAlone(String option, String words) {
    Result result = mark(option.split(" "));

    assertEquals(2, result.code(), result.err());
    assertTrue(result.err().startsWith("lozengy: " + words), result.err());
    assertEquals(original, Briefs.text(file));
  }

  @Test
  void allMistakesOfACallAreToldTogether() {
    Result result = mark("--made", "row9", "--worked", "r1c1=..,NAY", "--left", "XXX=1g");

    assertEquals(2, result.code());
    assertEquals(2, result.err().lines().count(), result.err());
    Result json = mark("--made", "row1", "--joined", "row9", "--json");
    assertEquals("--joined", Parsed.of(json).at("error.mistakes[0].path"));
  }

  @Test
  void aCallThatMarksNothingOrBothMarksAndUndoesIsWrong() {
    String nothing = mark().err();
    assertTrue(nothing.contains("Nothing is to be marked. Give --made, "), nothing);
    assertTrue(nothing.contains("--bought, --add, --lot, --gone, --uncount or --hand"), nothing);
    Result both = mark("--undo", "--made", "row1");
    assertEquals(2, both.code());
    assertTrue(both.err().contains("--undo: Other marks are given with it"), both.err());
  }

  @Test
  void standardInputServesOnce() {
    Result two = mark("--made", "-", "--joined", "-");
    assertTrue(two.err().contains("Two lists are to come from standard input"), two.err());
    Result both = new Run().run("mark", "-", "--made", "-");
    assertTrue(both.err().contains("It cannot be both the arrangement and a list"), both.err());
    Result empty = mark("--made", "-");
    assertEquals(2, empty.code());
    assertTrue(empty.err().contains("standard input: No piece is named"), empty.err());
  }

  @Test
  void aBriefCannotBeMarked() {
    Result result = Run.of("mark", folder.resolve("small.yaml").toString(), "--made", "row1");

    assertEquals(2, result.code());
    assertTrue(result.err().contains("This is a brief"), result.err());
    assertFalse(Run.of("mark", folder.resolve("no.json").toString(), "--undo").code() == 0);
  }

  @Test
  void wherePiecesAreNamedMoreThanOnceTheFurthestCounts() {
    Result result =
        done(
            mark("--planned", "all", "--rounds", "row1=2", "--made", "r1c1", "--joined", "strip1"));

    assertEquals("r1c1", inState(PieceState.MADE));
    assertEquals("top-left", inState(PieceState.JOINED));
    assertTrue(
        result
            .out()
            .contains(
                "Named more than once, the furthest counts (joined over made, made over begun, begun"
                    + " over planned): r1c1, r1c2 and top-left\n"),
        result.out());
    assertTrue(result.out().contains("Now worked to round 2: r1c2\n"), result.out());
    assertTrue(
        result.out().contains("1 made, 1 joined, 11 planned, 1 of them begun."), result.out());
    assertEquals(0, Run.of("check", file).code());
  }

  @Test
  void roundsAreWorkedFromTheCentreOutAndWithAllOfThemAPieceIsMade() {
    Parsed json = Parsed.of(done(mark("--rounds", "squares=5", "--rounds", "top1=1", "--json")));

    assertEquals("top1", json.at("rounds_worked[0].at"));
    assertEquals(1, json.number("rounds_worked[0].to"));
    assertEquals(1, json.number("pieces.part_worked"));
    assertEquals(5, json.number("pieces.made"));
    done(mark("--rounds", "r1c1=2"));
    assertEquals("r1c2 r2c1 r3c1 r3c2", inState(PieceState.MADE));
  }

  @Test
  void theStepsOfTheMakeListKeepTheirNumbersWhileTheyAreWorked() {
    MakeList whole = MakeList.of(stated().scored());
    done(mark("--step", "1-2"));
    MakeList left = MakeList.of(stated().scored());

    assertEquals(whole.steps(), left.steps());
    assertEquals(whole.batches().subList(2, whole.steps()), left.batches());
    int piece = left.batches().get(0).tasks().get(0).piece();
    done(mark("--step", "3=" + stated().blanket().place(piece).name()));
    List<MakeList.Task> tasks = new ArrayList<>(whole.batches().get(2).tasks());
    tasks.removeIf(task -> task.piece() == piece);
    List<MakeList.Batch> rest = MakeList.of(stated().scored()).batches();
    assertEquals(tasks, rest.get(0).step() == 3 ? rest.get(0).tasks() : List.<MakeList.Task>of());
    done(mark("--step", "1-" + whole.steps()));
    assertEquals(13, inState(PieceState.MADE).split(" ").length);
  }

  /** As after a mark by a clock that was ahead: the remedy that is told must do. */
  @Test
  void theDayOfTheLastMarkCanBeGivenThoughItIsStillToCome() throws IOException {
    done(mark("--made", "r1c1", "--on", "2025-03-02"));
    Path path = Path.of(file);
    Files.writeString(path, Files.readString(path).replace("2025-03-02", "9025-03-02"));
    Result today = mark("--made", "r1c2");
    assertEquals(2, today.code());
    assertTrue(today.err().contains("Give 9025-03-02 or a later day"), today.err());
    assertEquals(2, mark("--made", "r1c2", "--on", "9025-03-03").code());
    done(mark("--made", "r1c2", "--on", "9025-03-02"));
    done(
        Run.of("substitute", file, "NAV", "--take", "NAV=BRO", "-o", file + "2", "--moves", "200"));
  }

  @Test
  void daysGoForward() {
    done(mark("--made", "r1c1", "--on", "2025-03-02"));
    String once = Briefs.text(file);
    Result back = mark("--made", "r1c2", "--on", "2025-03-01");

    assertEquals(2, back.code());
    assertEquals(
        "lozengy: --on 2025-03-01: 2025-03-01 is before the last mark, of 2025-03-02. Give"
            + " 2025-03-02 or a later day\n",
        back.err());
    assertEquals(once, Briefs.text(file));
    assertEquals(
        "2025-03-02",
        Parsed.of(done(mark("--made", "r1c2", "--on", "2025-03-02", "--json"))).at("on"));
    LocalDate before = LocalDate.now();
    done(mark("--made", "r2c1"));
    LocalDate day = stated().diary().lastDay().orElseThrow();
    assertTrue(!day.isBefore(before) && !day.isAfter(LocalDate.now()), day.toString());
  }

  @Test
  void planningAgainKeepsTheDiaryAndWhatIsWorkedInPart() {
    done(mark("--rounds", "squares=2", "--on", "2025-03-01"));
    StatedArrangement begun = stated();
    done(Run.of("solve", file, "--moves", Briefs.MOVES, "--threads", "1"));
    file = folder.resolve("small-2.arrangement.json").toString();

    StatedArrangement again = stated();
    assertEquals(1, again.diary().entries().size());
    for (int piece = 0; piece < 5; piece++) {
      assertEquals(2, again.blanket().roundsWorked(piece));
      for (int round = 0; round < 2; round++) {
        assertEquals(begun.sequences().yarn(piece, round), again.sequences().yarn(piece, round));
      }
    }
    assertTrue(
        mark("--undo").err().contains("There is no mark to take back"), mark("--undo").err());
    done(mark("--made", "r1c1"));
    done(mark("--undo"));
  }

  @Test
  void aBallWeighedInMidWorkTellsOfTheHandAndIsReckonedWithWhenAgreedTo() throws IOException {
    String brief =
        Briefs.write(
            folder,
            "hand.yaml",
            """
            format: lozengy-brief/1
            title: A hand
            layout: { setting: straight, across: 3, down: 2 }
            motifs: { square: { side: 10 cm, rounds: [ { metres: 10 } ] } }
            yarns:
              - { code: A, colour: "#2c2a29", balls: 1, ball: { grams: 50, metres: 32.5 } }
              - { code: B, colour: "#b9b57a", balls: 1, ball: { grams: 50, metres: 32.5 } }
            """);
    String to = folder.resolve("hand.json").toString();
    done(Run.of("solve", brief, "-o", to, "--moves", "2000"));
    String first = Parsed.of(Briefs.text(to)).at("pieces[0].rounds[0]");
    String other = first.equals("A") ? "B" : "A";
    // two of the three pieces in the first yarn: 20 m by the brief, 22 m gone
    String two =
        first.equals(Parsed.of(Briefs.text(to)).at("pieces[2].rounds[0]")) ? "r1c3" : "r2c2";

    Result told = done(Run.of("mark", to, "--made", "r1c1," + two, "--left", first + "=10.5m"));
    assertTrue(
        told.out().contains("22.0 m were gone when it was counted, and 20.0 m were reckoned"),
        told.out());
    // 33 m of the other, of 32.5; 11 m of the first, of 10.5
    assertTrue(
        told.out()
                .contains(
                    "your hand takes 10.0 % more than the brief says. Then too little is there: ")
            && told.out().contains("0.5 m of " + first)
            && told.out().contains("0.5 m of " + other),
        told.out());
    Parsed data = Parsed.of(Run.of("need", to, "--json"));
    assertEquals(110, data.number("counted_hand.percent"));
    assertEquals(2, data.size("counted_hand.short"));
    assertEquals("true", data.at("enough"));

    Result agreed = done(Run.of("mark", to, "--hand", "counted", "--json"));
    assertEquals(110, Parsed.of(agreed).number("hand_percent"));
    assertEquals("false", Parsed.of(Run.of("need", to, "--json")).at("enough"));
    done(Run.of("mark", to, "--undo"));
    assertEquals("true", Parsed.of(Run.of("need", to, "--json")).at("enough"));

    Result wrong = Run.of("mark", to, "--hand", "4%");
    assertEquals(2, wrong.code());
    assertTrue(wrong.err().contains("Give 50% to 200%"), wrong.err());
  }
}
