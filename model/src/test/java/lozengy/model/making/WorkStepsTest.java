package lozengy.model.making;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Diary;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WorkStepsTest {

  /** Two rows of two squares of two rounds, joined and edged, and what is known of them. */
  private static Arrangement arrangement(String layout, String pieces) {
    Blanket blanket =
        Blanket.of(
            BriefReader.read(
                SourceText.of(
                    "brief.yaml",
                    """
                    format: lozengy-brief/1
                    title: Four squares
                    layout: LAYOUT
                    motifs:
                      square: { side: 10 cm, rounds: [ { metres: 2 }, { metres: 3 } ] }
                      triangle: { rounds: [ { metres: 1 }, { metres: 1 } ] }
                      corner: { rounds: [ { metres: 1 } ] }
                    rules: { within-piece: free, min-contrast: 0 }
                    yarns:
                      - { code: MUD, colour: "#2c2a29", left: 100 m }
                      - { code: FOA, colour: "#f1eee3", left: 100 m }
                    joining: { yarn: MUD, metres-per-metre: 2 }
                    edging: { yarn: MUD, metres-per-metre: 4 }
                    pieces: [ PIECES ]
                    """
                        .replace("LAYOUT", layout)
                        .replace("PIECES", pieces))));
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int rounds = blanket.roundCount(piece);
      for (int round = 0; round < rounds; round++) {
        sequences.set(piece, round, (piece + rounds - round) % 2);
      }
    }
    return new Arrangement(
        blanket,
        sequences,
        Optional.empty(),
        Scorer.score(blanket, sequences, Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        Diary.EMPTY);
  }

  private static Arrangement square(String pieces) {
    return arrangement("{ setting: straight, across: 2, down: 2 }", pieces);
  }

  /** Steps in short: what a task is of, which strip is joined, that the outline is edged. */
  private static List<String> told(WorkSteps steps) {
    List<String> told = new ArrayList<>();
    for (WorkStep step : steps.left()) {
      String words = "edge";
      if (step instanceof WorkStep.Work work) {
        words =
            String.join(
                " ", work.tasks().stream().map(task -> task.piece() + "/" + task.round()).toList());
      } else if (step instanceof WorkStep.Join join) {
        words = "join " + join.strip() + " " + join.pieces() + " " + join.millimetres();
      }
      told.add(step.number() + ": " + words);
    }
    return told;
  }

  @Test
  void byStripEachPieceIsFinishedAndEachStripJoined() {
    assertEquals(
        List.of(
            "1: 0/0 0/1",
            "2: 1/0 1/1",
            "3: join 1 [0, 1] 200",
            "4: 2/0 2/1",
            "5: 3/0 3/1",
            "6: join 2 [2, 3] 600",
            "7: edge"),
        told(WorkSteps.of(square(""), WorkOrder.STRIP)));
  }

  @Test
  void byRoundTheYarnInHandComesFirst() {
    assertEquals(
        List.of("1: 0/0 2/0", "2: 1/0 3/0", "3: 0/1 2/1", "4: 1/1 3/1"),
        told(WorkSteps.of(square(""), WorkOrder.ROUND)).subList(0, 4));
  }

  @Test
  void byBallTheStepsAreTheMakeLists() {
    Arrangement arrangement = square("{ at: r1c1, rounds: [MUD, FOA], rounds-worked: 1 }");
    List<WorkStep> steps = WorkSteps.of(arrangement, WorkOrder.BALL).left();
    List<MakeList.Batch> batches = MakeList.of(arrangement).batches();
    for (int i = 0; i < batches.size(); i++) {
      WorkStep.Work work = (WorkStep.Work) steps.get(i);
      assertEquals(batches.get(i).step(), work.number());
      assertEquals(batches.get(i).tasks(), work.tasks());
    }
    assertEquals(batches.size() + 3, steps.size(), "two strips to join, and the edging");
  }

  /** What is done is left out, and the numbers of what is left stay as they were. */
  @Test
  void stepsKeepTheirNumbersWhileTheyAreWorked() {
    Arrangement arrangement =
        square(
            """
            { at: r1c1, rounds: [MUD, FOA], state: joined },
            { at: r1c2, rounds: [FOA, MUD], state: joined },
            { at: r2c1, rounds: [MUD, ~], rounds-worked: 1 }""");
    WorkSteps steps = WorkSteps.of(arrangement, WorkOrder.STRIP);
    assertEquals(List.of("4: 2/1", "5: 3/0 3/1", "6: join 2 [2, 3] 600", "7: edge"), told(steps));
    assertEquals(7, steps.count());
  }

  /** A corner that is a strip of its own is joined with the strip after it. */
  @Test
  void aStripWithoutASeamIsJoinedWithTheNext() {
    Arrangement onPoint = arrangement("{ setting: on-point, across: 2, down: 2 }", "");
    List<WorkStep.Join> joins =
        WorkSteps.of(onPoint, WorkOrder.STRIP).left().stream()
            .filter(WorkStep.Join.class::isInstance)
            .map(WorkStep.Join.class::cast)
            .toList();
    Blanket blanket = onPoint.blanket();
    assertEquals(2, joins.get(0).strip());
    assertEquals("top-left", blanket.place(joins.get(0).pieces().get(0)).name());
    assertEquals(blanket.pieceCount(), joins.stream().mapToInt(join -> join.pieces().size()).sum());
    assertEquals(
        blanket.fixedUse().joiningMillimetres(),
        joins.stream().mapToLong(WorkStep.Join::millimetres).sum());
  }

  @ParameterizedTest
  @EnumSource
  void everyRoundComesOnceAndAfterThoseWithinIt(WorkOrder order) {
    Arrangement arrangement = arrangement("{ setting: on-point, across: 3, down: 2 }", "");
    Blanket blanket = arrangement.blanket();
    int[] worked = new int[blanket.pieceCount()];
    int number = 0;
    for (WorkStep step : WorkSteps.of(arrangement, order).left()) {
      assertEquals(++number, step.number());
      if (step instanceof WorkStep.Work work) {
        work.tasks().forEach(task -> assertEquals(task.round(), worked[task.piece()]++));
      } else if (step instanceof WorkStep.Join join) {
        join.pieces().forEach(each -> assertEquals(blanket.roundCount(each), worked[each]));
      } else {
        assertTrue(step instanceof WorkStep.Edge);
      }
    }
  }
}
