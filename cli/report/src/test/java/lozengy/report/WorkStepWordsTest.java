package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.layout.LayoutSize;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import org.junit.jupiter.api.Test;

class WorkStepWordsTest {

  private static List<String> joins(LayoutSize size) {
    Arrangement plan =
        Samples.filled(Samples.brief("Plan", size, Samples.yarns(), List.of()), 1);
    WorkStepWords words = new WorkStepWords(plan.blanket(), plan.sequences());
    return WorkSteps.of(plan, WorkOrder.STRIP).left().stream()
        .filter(WorkStep.Join.class::isInstance)
        .map(step -> words.title(step).replaceFirst(", [0-9.]+ m of .*", ""))
        .toList();
  }

  @Test
  void aStripIsJoinedToTheOneBeforeIt() {
    assertEquals(
        List.of(
            "join strip 1",
            "join strip 2, then join it to strip 1",
            "join strip 3, then join it to strip 2"),
        joins(Samples.straight(2, 3)));
  }

  @Test
  void aStripOfOnePieceHasNothingToJoinWithin() {
    List<String> joins = joins(Samples.onPoint(2, 2));
    assertTrue(joins.contains("join strip 3, then join it to strip 2"), joins.toString());
    int last = joins.size() + 1;
    assertEquals("join strip " + last + " to strip " + (last - 1), joins.get(joins.size() - 1));
    assertEquals(
        List.of("join strip 2 to strip 1", "join strip 3 to strip 2"),
        joins(Samples.straight(1, 3)));
  }
}
