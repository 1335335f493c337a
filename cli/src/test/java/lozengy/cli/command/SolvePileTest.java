package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.check.Check;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Finished pieces without a place, as the command line is given them and tells of them. */
class SolvePileTest {

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Nine patch
      layout: { setting: straight, across: 3, down: 3 }
      motifs:
        square: { side: 10 cm, rounds: [ { metres: 1 }, { metres: 2 } ] }
      rules: { min-contrast: 5 }
      yarns:
        - { code: MUD, name: Tidal mud, colour: "#222222", left: 40 m }
        - { code: PEA, name: Peat, colour: "#232222", left: 40 m }
        - { code: REE, name: Reed, colour: "#b9b57a", left: 40 m }
        - { code: FOA, name: Foam, colour: "#eeeeee", left: 40 m }
      """;

  @TempDir Path folder;

  private Result solve(String brief, String table) throws IOException {
    Path file = Files.writeString(folder.resolve("brief.yaml"), brief);
    Path pile = Files.writeString(folder.resolve("pile.csv"), table);
    String to = folder.resolve("laid.json").toString();
    return Run.of(
        "solve",
        file.toString(),
        "--pile",
        pile.toString(),
        "--moves",
        "50000",
        "--overwrite",
        "-o",
        to);
  }

  @Test
  void aTableOfFinishedPiecesIsLaidOut() throws IOException {
    Result result =
        solve(BRIEF, "kind,count,rounds\nsquare,4,FOA MUD\n,,REE,FOA\n\nsquare;1;MUD REE\n");
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("9 squares of 10 cm; 6 made, 0 joined, 3 planned"));
    assertTrue(
        result
            .out()
            .contains(
                "Where the 6 finished pieces of the pile go, by border and inwards\n"
                    + "  square  MUD FOA  r"),
        result.out());
    assertTrue(result.out().contains("--pile " + folder.resolve("pile.csv") + " --seed 1"));
    StatedArrangement laid = ArrangementReader.read(folder.resolve("laid.json"));
    assertEquals(List.of(), Check.faults(laid.blanket(), laid.sequences()));
    assertEquals(6, PilePlacement.of(laid.blanket(), laid.sequences()).pieces().size());
    assertEquals(0, Run.of("check", folder.resolve("laid.json").toString()).code());
  }

  @Test
  void aTablesMistakesAreToldTogetherWithTheirLines() throws IOException {
    Result result =
        solve(
            BRIEF,
            "kind,count,rounds\nsqare,1,FOA MUD\nsquare,0,FOA MUT\nsquare,2,FOA\ncorner,1,MUD\n");
    assertEquals(2, result.code());
    String pile = "lozengy: " + folder.resolve("pile.csv").toString();
    assertEquals(
        List.of(
            pile
                + ", line 2, kind: \"sqare\" is no kind of piece. Write square, triangle or corner",
            pile + ", line 3, count: The count is \"0\". Give a whole number, 1 or more",
            pile + ", line 3, rounds: No yarn has the code \"MUT\". Maybe MUD is meant",
            pile + ", line 4, rounds: 1 round is given. A square has 2 rounds, the centre first",
            pile
                + ", line 5, kind: The brief has no motif for a corner. Take it off the list, or add"
                + " motifs.corner"),
        result.err().lines().toList());
  }

  @Test
  void aTableWithoutItsHeaderIsToldHowToBegin() throws IOException {
    Result result = solve(BRIEF, "square,1,FOA MUD\n");
    assertEquals(2, result.code());
    assertTrue(
        result.err().contains("line 1, rounds: There is no such column. Begin with a line such as"),
        result.err());
  }

  @Test
  void aPileThatCannotLieIsRefusedWithTheReason() throws IOException {
    Result same = solve(BRIEF, "count,rounds\n6,FOA MUD\n");
    assertEquals(3, same.code());
    assertTrue(
        same.out()
            .contains(
                "6 squares of the pile have the border Tidal mud (MUD), and at most 5 can lie so"
                    + " that no two share a seam: 1 too many"),
        same.out());
    Result alike = solve(BRIEF, "count,rounds\n3,FOA MUD\n3,FOA PEA\n");
    assertEquals(3, alike.code());
    assertTrue(
        alike
            .out()
            .contains(
                "6 squares of the pile have borders that look alike, Tidal mud (MUD) and Peat (PEA)"
                    + " (min-contrast 5), and at most 5 can lie"),
        alike.out());
    Result locked =
        solve(
            BRIEF + "pieces: [ { at: row1..row3, rounds: [~, REE] }, { at: r1c1, not: FOA } ]\n",
            "count,rounds\n1,REE FOA\n");
    assertEquals(2, locked.code(), "locks side by side repeat");
    Result kept =
        solve(
            BRIEF
                + "pieces:\n"
                + "  - { at: [r1c1, r1c3, r3c1, r3c3], rounds: [~, REE] }\n"
                + "  - { at: [r1c2, r2c1, r2c3, r3c2], rounds: [~, MUD] }\n",
            "count,rounds\n1,REE FOA\n1,MUD FOA\n");
    assertEquals(3, kept.code(), kept.err());
    assertTrue(
        kept.out()
            .contains(
                "The pile's 1 square in REE, FOA and 1 square in MUD, FOA can lie only at r2c2:"
                    + " locks keep them out of other places"),
        kept.out());
  }

  /** The colours of finished pieces are facts, owned or not: nothing is to be bought for them. */
  @Test
  void finishedPiecesInYarnThatIsNotOwnedAreNoShortage() throws IOException {
    String gone = BRIEF.replaceFirst("left: 40 m", "left: 0 m");
    String table = "count,rounds\n3,FOA MUD\n1,MUD REE\n";
    Result result = solve(gone, table);
    assertEquals(0, result.code(), result.out() + result.err());
    String laid = folder.resolve("laid.json").toString();
    assertEquals(0, Run.of("check", laid).code());
    StatedArrangement answer = ArrangementReader.read(Path.of(laid));
    long shown = 0;
    for (int piece = 0; piece < answer.blanket().pieceCount(); piece++) {
      shown += Arrays.stream(answer.sequences().of(piece)).filter(yarn -> yarn == 0).count();
    }
    assertEquals(4, shown, "only what is finished shows mud");
    Parsed need = Parsed.of(Run.of("need", laid, "--json"));
    assertEquals("true", need.at("enough"));
    assertEquals("MUD", need.at("yarns[0].code"));
    assertEquals(7.0, need.number("yarns[0].worked_m"));
    assertEquals(0.0, need.number("yarns[0].to_work_m"));
    assertEquals(0.0, need.number("yarns[0].at_hand_m"));
  }

  @Test
  void whatIsWorkedBesideThePileMustBeThere() throws IOException {
    String joined = BRIEF.replaceFirst("left: 40 m", "left: 5 m");
    joined += "joining: { yarn: MUD, metres-per-metre: 1 }\n";
    Result result = solve(joined, "count,rounds\n3,FOA MUD\n");
    assertEquals(3, result.code());
    assertTrue(
        result
            .out()
            .contains(
                "Tidal mud (MUD): the pile's pieces hold 6.00 m and joining takes 1.20 m; 5.00 m are"
                    + " there, what finished pieces hold included: 1.20 m short beyond what the pile"
                    + " holds already, unless they were counted since"),
        result.out());
  }

  @Test
  void madePiecesMayMoveWhereAskedAndJoinedOnesStay() {
    String file = Briefs.solved(folder);
    Result marked = Run.of("mark", file, "--joined", "r1c1", "--made", "r3c2,r2c1,top1");
    assertEquals(0, marked.code());
    StatedArrangement before = ArrangementReader.read(Path.of(file));
    String to = folder.resolve("moved.json").toString();
    Result result =
        Run.of("solve", file, "--move", "all", "--moves", Briefs.MOVES, "-o", to, "--threads", "1");
    assertEquals(0, result.code(), result.err());
    StatedArrangement after = ArrangementReader.read(Path.of(to));
    assertEquals(List.of(), Check.faults(after.blanket(), after.sequences()));
    assertArrayEquals(before.sequences().of(0), after.sequences().of(0));
    assertEquals(3, after.blanket().brief().pile().size());
    assertEquals(3, PilePlacement.of(after.blanket(), after.sequences()).pieces().size());
    String place =
        after
            .blanket()
            .place(PilePlacement.of(after.blanket(), after.sequences()).pieces().get(0))
            .name();
    Result joined = Run.of("mark", to, "--joined", place);
    assertEquals(0, joined.code(), joined.err());
    assertTrue(joined.out().contains("No longer on the pile: " + place), joined.out());
    assertEquals(2, ArrangementReader.read(Path.of(to)).blanket().brief().pile().size());
  }

  @Test
  void aPileOnStandardInputIsRead() throws IOException {
    Path file = Files.writeString(folder.resolve("brief.yaml"), BRIEF);
    Result result =
        new Run()
            .input("count,rounds\n2,FOA MUD\n".getBytes(StandardCharsets.UTF_8))
            .run("solve", file.toString(), "--pile", "-", "--moves", "20000", "-o", "-");
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("\"pile\": true"), result.out());
  }

  /** More finished pieces than places: some stay out, and every later command knows of them. */
  @Test
  void whatStaysOutIsChosenAndTold() throws IOException {
    Result result = solve(BRIEF, "count,rounds\n6,FOA MUD\n6,FOA REE\n");
    assertEquals(0, result.code(), result.out() + result.err());
    assertTrue(
        result
            .out()
            .contains("Where the 9 finished pieces of the pile go, by border and inwards; 3"),
        result.out());
    String laid = folder.resolve("laid.json").toString();
    assertEquals(0, Run.of("check", laid).code());
    Parsed data = Parsed.of(Run.of("report", laid, "--json"));
    assertEquals(3.0, data.number("summary.pile[0].out") + data.number("summary.pile[1].out"));
    StatedArrangement answer = ArrangementReader.read(Path.of(laid));
    assertEquals(9, PilePlacement.of(answer.blanket(), answer.sequences()).pieces().size());
    Result marked = Run.of("mark", laid, "--joined", "all");
    assertEquals(0, marked.code(), marked.err());
    assertEquals(
        3,
        ArrangementReader.read(Path.of(laid)).blanket().pile().out().stream()
            .mapToInt(stack -> stack.count())
            .sum());
    Result undone = Run.of("mark", laid, "--undo");
    assertEquals(0, undone.code(), undone.err());
    assertEquals(9, ArrangementReader.read(Path.of(laid)).blanket().pile().count());
    String larger = folder.resolve("larger.json").toString();
    Result grown =
        Run.of("solve", laid, "--across", "4", "--moves", "50000", "-o", larger, "--threads", "1");
    assertEquals(0, grown.code(), grown.out() + grown.err());
    assertEquals(12, ArrangementReader.read(Path.of(larger)).blanket().pile().count());
  }

  @Test
  void whereNothingFitsWhateverStaysOutOneChoiceIsTold() throws IOException {
    Result result = solve(BRIEF, "count,rounds\n12,FOA MUD\n");
    assertEquals(3, result.code(), result.out() + result.err());
    assertTrue(
        result
            .out()
            .contains(
                "No arrangement fits this brief, whatever stays out of the pile. The proof is told"
                    + " for 3 left out, 3 in FOA, MUD. Proved:"),
        result.out());
    assertTrue(result.out().contains("9 squares of the pile have the border"), result.out());
    String pile = "pile: [ { kind: square, rounds: [FOA, MUD], count: 12 } ]\n";
    Path file = Files.writeString(folder.resolve("brief.yaml"), BRIEF + pile);
    Result explained = Run.of("explain", file.toString());
    assertEquals(2, explained.code(), "no reason holds for every choice");
    assertEquals(0, Run.of("need", file.toString()).code());
  }

  @Test
  void needCountsFinishedPiecesAsWorked() throws IOException {
    String pile = "pile: [ { kind: square, rounds: [FOA, MUD], count: 7 } ]\n";
    Path file = Files.writeString(folder.resolve("brief.yaml"), BRIEF + pile);
    Result result = Run.of("need", file.toString());
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().matches("(?s).*Tidal mud \\(MUD\\) +0.0 m +- +26.0 m.*"), result.out());
    assertTrue(result.out().matches("(?s).*dark, mid or light +4 +6.0 m.*"), result.out());
  }
}
