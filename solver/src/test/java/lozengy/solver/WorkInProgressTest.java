package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.progress.Anchor;
import lozengy.model.progress.Change;
import lozengy.model.progress.Changed;
import lozengy.model.progress.Changes;
import lozengy.model.progress.CurrentPlan;
import lozengy.model.progress.Mark;
import lozengy.model.progress.MarkedArrangement;
import lozengy.model.progress.Upset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random blankets through months of work: marked, counted, changed and planned again. */
class WorkInProgressTest {

  private static final int STEPS = 6;

  /** What a chain of steps has come to, so that a test can tell whether it tested anything. */
  private record Tally(int solved, int changedAgain, int refused) {}

  @ParameterizedTest
  @ValueSource(longs = {2, 4, 5, 7, 8})
  void whatIsWorkedIsNeverAlteredByMarksAndByPlanningAgain(long hundred) {
    Tally tally = new Tally(0, 0, 0);
    for (long seed = hundred * 100; seed < hundred * 100 + 12; seed++) {
      Tally one = chain(seed);
      tally =
          new Tally(
              tally.solved + one.solved,
              tally.changedAgain + one.changedAgain,
              tally.refused + one.refused);
    }
    assertTrue(tally.solved > 3 && tally.changedAgain > 5, tally.toString());
  }

  private static Tally chain(long seed) {
    Blanket blanket = Blanket.ofUnjudged(RandomBriefs.of(seed, 4, 8));
    SplittableRandom random = new SplittableRandom(seed);
    if (!(solve(blanket, Optional.empty(), seed) instanceof SolveResult.Found first)) {
      return new Tally(0, 0, 0);
    }
    Arrangement now = first.arrangement();
    int again = 0;
    int refused = 0;
    for (int step = 0; step < STEPS; step++) {
      now = marked(now, random);
      try {
        Changed changed =
            Changes.apply(
                new CurrentPlan(now.blanket().brief(), Optional.of(now.sequences())),
                changes(now.blanket(), random));
        if (solve(changed.blanket(), changed.earlier(), seed + step)
            instanceof SolveResult.Found found) {
          assertWorkedAsBefore(now, found.arrangement());
          assertUpsetIsTold(changed, found.arrangement());
          now = found.arrangement();
          again++;
        }
      } catch (InputException e) {
        refused++; // a lock against a rule, or a size that would lose a worked piece
      }
    }
    return new Tally(1, again, refused);
  }

  private static SolveResult solve(Blanket blanket, Optional<Sequences> earlier, long seed) {
    return Solver.solve(
        blanket, earlier, SolveOptions.defaults().withSeed(seed).withMoves(4000).withThreads(1));
  }

  /** Marks some pieces and perhaps a count, through the file's text as the command does. */
  private static Arrangement marked(Arrangement before, SplittableRandom random) {
    List<Mark.State> states = new ArrayList<>();
    for (int piece = 0; piece < before.blanket().pieceCount(); piece++) {
      PieceState state = before.blanket().state(piece);
      if (state != PieceState.JOINED && random.nextInt(6) == 0) {
        PieceState next = state == PieceState.MADE ? PieceState.JOINED : PieceState.MADE;
        states.add(
            new Mark.State(next.word(), next, List.of(before.blanket().place(piece).name())));
      }
    }
    List<Mark.Count> counts = new ArrayList<>();
    if (random.nextInt(3) == 0) {
      int yarn = random.nextInt(before.blanket().yarnCount());
      long spare =
          before.blanket().yarn(yarn).stockMillimetres()
              - before.blanket().usedMillimetres(before.sequences())[yarn];
      counts.add(
          new Mark.Count(
              "left",
              before.blanket().yarn(yarn).code(),
              new YarnAmount.Length(20_000 + Math.max(0, spare))));
    }
    Arrangement marked =
        MarkedArrangement.of(before, Mark.NONE.withStates(states).withCounts(counts));
    Arrangement read =
        ArrangementReader.read(SourceText.of("a.json", ArrangementWriter.text(marked))).scored();
    assertEquals(before.sequences(), read.sequences());
    for (Mark.State state : states) {
      int piece = before.blanket().layout().find(state.at().get(0)).orElseThrow().index();
      assertEquals(state.state(), read.blanket().state(piece));
    }
    if (marked != before) {
      Arrangement undone = MarkedArrangement.undone(read).orElseThrow();
      assertEquals(before.blanket().brief(), undone.blanket().brief());
      assertEquals(before.sequences(), undone.sequences());
    }
    return read;
  }

  private static List<Change> changes(Blanket blanket, SplittableRandom random) {
    List<Change> changes = new ArrayList<>();
    String piece = blanket.place(random.nextInt(blanket.pieceCount())).name();
    String yarn = blanket.yarn(random.nextInt(blanket.yarnCount())).code();
    String other = blanket.yarn(random.nextInt(blanket.yarnCount())).code();
    switch (random.nextInt(7)) {
      case 0 -> changes.add(new Change.Lock("lock", List.of(piece, "row1")));
      case 1 ->
          changes.add(
              new Change.Hold(
                  "ban",
                  new PieceNote(List.of(piece), List.of(), PieceState.PLANNED, Set.of(yarn))));
      case 2 -> changes.add(new Change.Without("without", yarn));
      case 3 -> changes.add(new Change.Swap("swap", yarn, other));
      case 4 ->
          changes.add(
              new Change.Resize(
                  "size",
                  blanket.layout().size().across(),
                  blanket.layout().size().down() + 1,
                  Anchor.values()[random.nextInt(4)]));
      default -> {
        // planned again as it is
      }
    }
    return changes;
  }

  private static void assertWorkedAsBefore(Arrangement before, Arrangement after) {
    assertEquals(List.of(), Check.faults(after.blanket(), after.sequences()));
    boolean sameSize = before.blanket().layout().size().equals(after.blanket().layout().size());
    List<List<Integer>> worked = new ArrayList<>();
    List<List<Integer>> workedAfter = new ArrayList<>();
    for (int piece = 0; piece < before.blanket().pieceCount(); piece++) {
      if (before.blanket().state(piece) != PieceState.PLANNED) {
        worked.add(yarns(before, piece));
        if (sameSize) {
          assertEquals(before.blanket().state(piece), after.blanket().state(piece));
          assertArrayEquals(before.sequences().of(piece), after.sequences().of(piece));
        }
      }
    }
    for (int piece = 0; piece < after.blanket().pieceCount(); piece++) {
      if (after.blanket().state(piece) != PieceState.PLANNED) {
        workedAfter.add(yarns(after, piece));
      }
    }
    // in another size the places move, but it is the same pieces
    worked.sort(WorkInProgressTest::compare);
    workedAfter.sort(WorkInProgressTest::compare);
    assertEquals(worked, workedAfter);
  }

  private static List<Integer> yarns(Arrangement arrangement, int piece) {
    List<Integer> yarns = new ArrayList<>();
    yarns.add(arrangement.blanket().kind(piece).ordinal());
    yarns.add(arrangement.blanket().state(piece).ordinal());
    for (int yarn : arrangement.sequences().of(piece)) {
      yarns.add(yarn);
    }
    return yarns;
  }

  private static int compare(List<Integer> a, List<Integer> b) {
    return a.toString().compareTo(b.toString());
  }

  private static void assertUpsetIsTold(Changed changed, Arrangement after) {
    Sequences before = changed.before().orElseThrow();
    Upset upset = Upset.of(after.blanket(), before, after.sequences());
    int differ = 0;
    int open = 0;
    for (int piece = 0; piece < before.pieces(); piece++) {
      for (int round = 0; round < before.rounds(piece); round++) {
        boolean wasOpen = before.yarn(piece, round) == Sequences.OPEN;
        open += wasOpen ? 1 : 0;
        differ +=
            !wasOpen && before.yarn(piece, round) != after.sequences().yarn(piece, round) ? 1 : 0;
      }
    }
    assertEquals(differ, upset.changedRounds() + upset.heldRounds());
    assertEquals(open, upset.newRounds());
    // the part keep tells the same, but for rounds that a swap accounts for
    if (before.equals(changed.earlier().orElseThrow()) && upset.freeRounds() > 0) {
      assertEquals(
          100 - 100.0 * upset.changedRounds() / upset.freeRounds(),
          after.score().parts().get(Part.KEEP),
          1e-9);
    }
  }

  @Test
  void planningAgainChangesLessThanPlanningAfresh() {
    int kept = 0;
    int fresh = 0;
    for (long seed = 1; seed <= 12; seed++) {
      Blanket blanket = Blanket.ofUnjudged(RandomBriefs.of(seed, 4, 8));
      if (!(solve(blanket, Optional.empty(), seed) instanceof SolveResult.Found found)) {
        continue;
      }
      Sequences first = found.arrangement().sequences();
      Changed same = Changes.apply(new CurrentPlan(blanket.brief(), Optional.of(first)), List.of());
      kept += changedRounds(first, solve(same.blanket(), same.earlier(), seed));
      fresh += changedRounds(first, solve(same.blanket(), Optional.empty(), seed + 1));
    }
    assertTrue(2 * kept < fresh, kept + " against " + fresh);
  }

  private static int changedRounds(Sequences before, SolveResult after) {
    Arrangement arrangement = ((SolveResult.Found) after).arrangement();
    return Upset.of(arrangement.blanket(), before, arrangement.sequences()).changedRounds();
  }
}
