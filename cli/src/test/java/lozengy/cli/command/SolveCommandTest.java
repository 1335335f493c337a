package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.check.RuleId;
import lozengy.solver.ProgressListener.Progress;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.Solving;
import lozengy.solver.explain.argument.Refutation;
import lozengy.solver.explain.argument.StockReason;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SolveCommandTest {

  private static final Refutation ALL_KEPT =
      new Refutation(new StockReason.AllKeptBack(100), new StockReason.AllKeptBack(100), 0, 0);
  private static final Fault SHORT =
      new Fault(
          RuleId.YARN_TOTALS, List.of(), List.of(), List.of(0), new Fault.RunsOut(3_000, 2_000));

  @TempDir Path folder;
  private String brief;

  @BeforeEach
  void writeBrief() {
    brief = Briefs.write(folder);
  }

  @Test
  void arrangementAndChartGoBesideTheBrief() throws IOException {
    Result result = solve(brief);
    assertEquals(0, result.code(), result.err());
    assertEquals("", result.err());
    assertEquals(Set.of("small.yaml", "small.arrangement.json", "small.svg"), files());
    StatedArrangement stated = ArrangementReader.read(folder.resolve("small.arrangement.json"));
    assertEquals(List.of(), Check.faults(stated.blanket(), stated.sequences()));
    assertTrue(Files.readString(folder.resolve("small.svg")).contains("<svg"));
    assertTrue(result.out().contains("Score "), result.out());
    assertTrue(
        result.out().contains("Wrote " + folder.resolve("small.arrangement.json")), result.out());
  }

  @Test
  void sameBriefSeedAndMovesGiveTheSameBytes() {
    List<String> texts = new ArrayList<>();
    for (String name : List.of("one", "two")) {
      String file = folder.resolve(name + ".arrangement.json").toString();
      assertEquals(0, solve(brief, "-o", file, "--seed", "5").code());
      texts.add(Briefs.text(file));
      assertTrue(Files.exists(folder.resolve(name + ".svg")));
    }
    assertEquals(texts.get(0), texts.get(1));
    Result other = solve(brief, "-o", "-", "--seed", "6");
    assertFalse(texts.contains(other.out()), "another seed gave the same arrangement");
  }

  @Test
  void walkersArePartOfTheRecipe() {
    String three = folder.resolve("three.arrangement.json").toString();
    Result solved = solve(brief, "-o", three, "--walkers", "3");
    assertEquals(0, solved.code(), solved.err());
    assertTrue(Briefs.text(three).contains("\"walkers\": 3"), Briefs.text(three));
    String line =
        solved.out().lines().filter(each -> each.contains("./lozengy solve")).findFirst().get();
    List<String> again =
        new ArrayList<>(
            List.of(line.strip().split(" ")).subList(1, line.strip().split(" ").length));
    assertTrue(line.endsWith(" --walkers 3"), line);
    again.addAll(List.of("--threads", "2", "-o", "-"));
    assertEquals(Briefs.text(three), Run.of(again.toArray(String[]::new)).out());

    String usual = folder.resolve("usual.arrangement.json").toString();
    Result two = solve(brief, "-o", usual, "--walkers", "2");
    assertFalse(Briefs.text(usual).contains("walkers"), Briefs.text(usual));
    assertFalse(two.out().contains("--walkers"), two.out());
    assertEquals(Briefs.text(usual), solve(brief, "-o", "-").out());
  }

  @Test
  void standardStreamsCarryBytesAlone() {
    byte[] bytes = Briefs.text(brief).getBytes(StandardCharsets.UTF_8);
    Result result =
        new Run().input(bytes).run("solve", "-", "--moves", Briefs.MOVES, "--threads", "1");
    assertEquals(0, result.code());
    assertEquals(Set.of("small.yaml"), files());
    assertTrue(result.err().contains("Score "), result.err());
    assertArrayEquals(result.bytes(), solve(brief, "-o", "-").bytes());
    Parsed told = Parsed.of(solve(brief, "-o", "-", "--json"));
    assertEquals("lozengy-arrangement/1", told.at("content.format"));
  }

  @Test
  void nothingIsOverwrittenUnlessAsked() {
    String answer = Briefs.write(folder, "small.arrangement.json", "mine");
    Run never =
        new Run()
            .solving(
                (blanket, earlier, options) -> {
                  throw new AssertionError("solved in vain");
                });
    Result refused = never.run("solve", brief);
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains(answer), refused.err());
    assertEquals("mine", Briefs.text(answer));
    assertEquals(0, solve(brief, "--overwrite").code());
    assertFalse(Briefs.text(answer).equals("mine"));
  }

  @Test
  void chartInTheWayLeavesTheArrangementUnwritten() {
    Briefs.write(folder, "small.svg", "mine");
    assertEquals(2, solve(brief).code());
    assertEquals(Set.of("small.yaml", "small.svg"), files());
  }

  @Test
  void planningAgainKeepsBothAndStaysClose() {
    assertEquals(0, solve(brief).code());
    String answer = folder.resolve("small.arrangement.json").toString();
    String before = Briefs.text(answer);
    Result again = solve(answer);
    assertEquals(0, again.code(), again.err());
    assertEquals(before, Briefs.text(answer));
    StatedArrangement first = ArrangementReader.read(Path.of(answer));
    StatedArrangement second = ArrangementReader.read(folder.resolve("small-2.arrangement.json"));
    assertEquals(Optional.of(first.sequences()), second.earlier());
    assertTrue(Files.exists(folder.resolve("small-2.svg")));
    assertEquals(0, solve(folder.resolve("small-2.arrangement.json").toString()).code());
    assertTrue(Files.exists(folder.resolve("small-3.arrangement.json")));
  }

  @Test
  void workedPiecesOfAnArrangementHold() throws IOException {
    assertEquals(0, solve(brief).code());
    Path answer = folder.resolve("small.arrangement.json");
    assertEquals(0, Run.of("mark", answer.toString(), "--joined", "r2c1").code());
    StatedArrangement before = ArrangementReader.read(answer);
    int piece = before.blanket().layout().find("r2c1").orElseThrow().index();
    assertEquals(0, solve(answer.toString(), "--seed", "9").code());
    StatedArrangement after = ArrangementReader.read(folder.resolve("small-2.arrangement.json"));
    assertArrayEquals(before.sequences().of(piece), after.sequences().of(piece));
    assertEquals(before.blanket().state(piece), after.blanket().state(piece));
  }

  @Test
  void aMarkMadeMeanwhileIsNotLostAndNeitherIsTheAnswer() throws IOException {
    assertEquals(0, solve(brief).code());
    String answer = folder.resolve("small.arrangement.json").toString();
    Run marking =
        new Run()
            .solving(
                (blanket, earlier, options) -> {
                  assertEquals(0, Run.of("mark", answer, "--made", "r1c1").code());
                  return Solver.solve(blanket, earlier, options);
                });
    Result again =
        marking.run("solve", answer, "-o", answer, "--overwrite", "--moves", Briefs.MOVES);
    assertEquals(2, again.code(), again.out());
    assertTrue(again.err().contains("Another has changed it in the meantime"), again.err());
    Path beside = folder.resolve("small-2.arrangement.json");
    assertTrue(again.err().contains(beside.toString()), again.err());
    StatedArrangement marked = ArrangementReader.read(Path.of(answer));
    int piece = marked.blanket().layout().find("r1c1").orElseThrow().index();
    assertEquals(PieceState.MADE, marked.blanket().state(piece));
    assertEquals(
        Optional.of(marked.sequences()), ArrangementReader.read(beside).earlier(), "the answer");
    assertTrue(Files.exists(folder.resolve("small-2.svg")));
  }

  @Test
  void whatAnotherWroteMeanwhileIsNotReplaced() throws IOException {
    Path answer = folder.resolve("small.arrangement.json");
    Run writing =
        new Run()
            .solving(
                (blanket, earlier, options) -> {
                  Briefs.write(folder, "small.arrangement.json", "theirs");
                  return Solver.solve(blanket, earlier, options);
                });
    Result result = writing.run("solve", brief, "--moves", Briefs.MOVES);
    assertEquals(2, result.code(), result.out());
    assertEquals("theirs", Files.readString(answer));
    assertEquals(0, Run.of("check", folder.resolve("small-2.arrangement.json").toString()).code());
  }

  @Test
  void openRoundsOfAnArrangementAreFilled() throws IOException {
    assertEquals(0, solve(brief).code());
    Path answer = folder.resolve("small.arrangement.json");
    Files.writeString(
        answer, Files.readString(answer).replaceFirst("(\"rounds\": ?\\[)\"[A-Z]+\"", "$1null"));
    assertFalse(ArrangementReader.read(answer).sequences().complete());
    Result again = solve(answer.toString());
    assertEquals(0, again.code(), again.err());
    assertTrue(
        ArrangementReader.read(folder.resolve("small-2.arrangement.json")).sequences().complete());
  }

  @Test
  void jsonTellsWhereTheResultsAre() {
    Result result = solve(brief, "--json");
    Parsed parsed = Parsed.of(result);
    assertEquals("found", parsed.at("outcome"));
    assertEquals(folder.resolve("small.arrangement.json").toString(), parsed.at("arrangement"));
    assertEquals(folder.resolve("small.svg").toString(), parsed.at("chart"));
    double total = parsed.number("summary.score.total");
    assertTrue(total > 0 && total <= 100, "total " + total);
  }

  @Test
  void impossibleIsToldWithReasonsAndWritesNothing() {
    Run run =
        new Run()
            .solving((b, e, o) -> new SolveResult.Impossible(List.of(ALL_KEPT), Optional.empty()));
    Result result = run.run("solve", brief);
    assertEquals(3, result.code());
    assertTrue(result.out().contains("nothing is left to work with"), result.out());
    assertEquals(Set.of("small.yaml"), files());
    Result json = run.run("solve", brief, "--json");
    assertEquals(3, json.code());
    assertEquals("impossible", Parsed.of(json).at("outcome"));
    String words = Parsed.of(json).at("reasons[0]");
    assertEquals("100 % of each yarn is kept back, so that nothing is left to work with", words);
    assertEquals(words, Parsed.of(json).at("causes[0].words"));
    assertEquals("all-kept-back", Parsed.of(json).at("causes[0].code"));
  }

  @Test
  void whatMoreMovesMayFindIsToldWithTheCommandThatTriesThem() {
    Run run =
        new Run()
            .solving(
                (b, e, o) ->
                    new SolveResult.Found(
                        ((SolveResult.Found) Solver.solve(b, e, o)).arrangement(),
                        Optional.of(new SolveResult.Unsettled(1.25, 4.5, 8000))));
    Result result = run.run("solve", brief, "--moves", "2000", "--seed", "3");
    assertTrue(result.out().contains("ended 1.3 points apart"), result.out());
    assertTrue(
        result.out().contains("./lozengy solve " + brief + " --seed 3 --moves 8000"), result.out());
    Parsed json = Parsed.of(run.run("solve", brief, "--moves", "2000", "--json", "--overwrite"));
    assertEquals(1.25, json.number("more_to_find.points_apart"));
    assertEquals(4.5, json.number("more_to_find.points_below_bound"));
    assertEquals(8000, json.number("more_to_find.try_moves"));
  }

  @Test
  void unfinishedIsToldAndWritesNothing() {
    Run run = new Run().solving((b, e, o) -> new SolveResult.Unfinished(List.of(SHORT)));
    Result result = run.run("solve", brief);
    assertEquals(4, result.code());
    assertTrue(result.out().contains("3.00 m needed"), result.out());
    assertEquals(Set.of("small.yaml"), files());
    assertEquals("unfinished", Parsed.of(run.run("solve", brief, "--json")).at("outcome"));
    // Where the arrangement was to go to standard output, nothing but one ever does.
    Result piped = run.run("solve", brief, "-o", "-");
    assertEquals("", piped.out());
    assertTrue(piped.err().contains("3.00 m needed"), piped.err());
  }

  @Test
  void stoppingKeepsTheBestSoFar() {
    AtomicBoolean interrupted = new AtomicBoolean();
    Solving interruptedOnceFound =
        (blanket, earlier, asked) ->
            Solver.solve(
                blanket,
                earlier,
                asked.withListener(progress -> interrupted.set(!Double.isNaN(progress.score()))));
    // A limit that no test waits for: only the interrupt can end this search.
    Result result =
        new Run()
            .stop(interrupted::get)
            .solving(interruptedOnceFound)
            .run("solve", brief, "--moves", "9000000000000000000", "--threads", "1");
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Stopped early"), result.out());
    assertEquals(0, Run.of("check", folder.resolve("small.arrangement.json").toString()).code());
  }

  @Test
  void optionsReachTheSolver() {
    List<SolveOptions> seen = new ArrayList<>();
    Run run =
        new Run()
            .solving(
                (blanket, earlier, options) -> {
                  seen.add(options);
                  return new SolveResult.Unfinished(List.of(SHORT));
                });
    run.run("solve", brief);
    run.run("solve", brief, "--seed", "-7", "--moves", "12", "--threads", "2");
    run.run("solve", brief, "--seconds", "0.25", "--moves", "12");
    assertEquals(SolveOptions.defaults().seconds(), seen.get(0).seconds());
    assertEquals(OptionalLong.empty(), seen.get(0).moves());
    assertEquals(-7, seen.get(1).seed());
    assertEquals(2, seen.get(1).threads());
    assertEquals(OptionalLong.of(12), seen.get(1).moves());
    assertEquals(OptionalDouble.empty(), seen.get(1).seconds());
    assertEquals(OptionalDouble.of(0.25), seen.get(2).seconds());
    assertEquals(OptionalLong.of(12), seen.get(2).moves());
  }

  @Test
  void progressIsShownOnlyToAPersonAndClearedAway() {
    Solving slow =
        (blanket, earlier, options) -> {
          options.listener().progress(new Progress(0.1, 0, Double.NaN, 100));
          options.listener().progress(new Progress(1.5, 1_234_567, 91.234, 96));
          return new SolveResult.Unfinished(List.of(SHORT));
        };
    Result alone = new Run().solving(slow).run("solve", brief, "-o", "-");
    assertFalse(alone.err().contains("\r"));
    String moves = "5000000";
    Result watched = new Run().solving(slow).withProgress().run("solve", brief, "--moves", moves);
    assertTrue(
        watched.err().contains("\r1.5 s, score 91.23 of at most 96.00; 5 s left; Ctrl-C"),
        watched.err());
    assertTrue(watched.err().endsWith(" \r"), "the line is left on the terminal");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 20, 40, 79, 80, 120})
  void progressNeverSpillsOntoASecondLine(int columns) {
    Solving slow =
        (blanket, earlier, options) -> {
          options.listener().progress(new Progress(0.1, 0, Double.NaN, 100));
          options.listener().progress(new Progress(12345.6, 123_456_789_012L, 99.999, 100));
          return new SolveResult.Unfinished(List.of(SHORT));
        };
    Result watched =
        new Run()
            .solving(slow)
            .withProgress()
            .withColumns(columns)
            .run("solve", brief, "--moves", "123456789099");
    String written = watched.err().substring(watched.err().indexOf('\r'));
    String line = written.substring(1, written.lastIndexOf('\r'));
    line.lines().forEach(each -> assertTrue(each.length() < Math.max(2, columns), each));
    assertEquals(columns >= 120, line.contains("123,456,789,012 moves"), line);
    assertEquals(columns >= 79, line.contains("score 100.00 of at most 100.00; "), line);
  }

  @Test
  void allWrongNumbersAreToldAtOnce() {
    Result result =
        Run.of(
            "solve",
            brief,
            "--moves",
            "0",
            "--walkers",
            "65",
            "--seconds",
            "NaN",
            "--threads",
            "0");
    assertEquals(2, result.code());
    assertEquals(
        """
        lozengy: --moves: 0. Give a whole number, 1 or more
        lozengy: --walkers: 65. Give a whole number from 1 to 64
        lozengy: --seconds: NaN. Give a number above 0
        lozengy: --threads: 0. Give a whole number from 1 to 1024
        """,
        result.err());
    Result word = Run.of("solve", brief, "--moves", "many");
    assertEquals(2, word.code());
    assertTrue(word.err().contains("'many' is not a whole number"), word.err());
  }

  @Test
  void everyMistakeOfTheBriefIsToldWithItsLine() {
    String wrong =
        Briefs.write(
            folder,
            "wrong.yaml",
            Briefs.text(brief).replace("#232c4b", "navy").replace("side: 10 cm", "side: -10 cm"));
    Result result = Run.of("solve", wrong, "--json");
    assertEquals(2, result.code());
    assertEquals(2, result.err().lines().count(), result.err());
    result.err().lines().forEach(l -> assertTrue(l.startsWith("lozengy: " + wrong + ", line "), l));
    assertEquals(2, Parsed.of(result).size("error.mistakes"));
    assertEquals("motifs.square.side", Parsed.of(result).at("error.mistakes[0].path"));
    assertTrue(Parsed.of(result).number("error.mistakes[0].line") > 0);
  }

  private Result solve(String file, String... more) {
    return Run.of(
        Stream.concat(
                Stream.of("solve", file, "--moves", Briefs.MOVES, "--threads", "1"),
                Stream.of(more))
            .toArray(String[]::new));
  }

  private Set<String> files() {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
