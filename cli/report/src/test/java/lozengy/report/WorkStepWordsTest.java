package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.brief.Brief;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.LayoutSize;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import org.junit.jupiter.api.Test;

class WorkStepWordsTest {

  private static List<String> joins(LayoutSize size) {
    Arrangement plan = Samples.filled(Samples.brief("Plan", size, Samples.yarns(), List.of()), 1);
    WorkStepWords words = new WorkStepWords(plan.blanket(), plan.sequences());
    return WorkSteps.of(plan, WorkOrder.STRIP).left().stream()
        .filter(WorkStep.Join.class::isInstance)
        .map(step -> String.join("|", words.lines(step)))
        .toList();
  }

  @Test
  void aStripIsJoinedWithinAndThenToTheOneBeforeIt() {
    assertEquals(
        List.of(
            "its pieces from left to right: r1c1, r1c2",
            "its pieces from left to right: r2c1, r2c2, then to strip 1",
            "its pieces from left to right: r3c1, r3c2, then to strip 2"),
        joins(Samples.straight(2, 3)));
  }

  private static String edging(String... yarns) {
    Brief brief =
        Samples.brief("Plan", Samples.straight(2, 3), Samples.yarns(), List.of())
            .withEdging(Stream.of(yarns).map(code -> new YarnUse(code, 4)).toList());
    Arrangement plan = Samples.filled(brief, 1);
    List<WorkStep> left = WorkSteps.of(plan, WorkOrder.STRIP).left();
    return new WorkStepWords(plan.blanket(), plan.sequences()).title(left.get(left.size() - 1));
  }

  @Test
  void edgingIsToldFromTheInsideOut() {
    String one = Samples.yarns().get(0).code();
    String two = Samples.yarns().get(1).code();
    assertEquals("edge the outline, 4.0 m of " + one, edging(one));
    assertEquals(
        "edge the outline, from the inside out: 4.0 m of " + one + ", then 4.0 m of " + two,
        edging(one, two));
    assertEquals(
        "edge the outline, from the inside out in "
            + String.join(", then ", one, two, one)
            + ": 8.0 m of "
            + one
            + " and 4.0 m of "
            + two,
        edging(one, two, one));
  }

  @Test
  void aStripOfOnePieceHasNothingToJoinWithin() {
    List<String> joins = joins(Samples.onPoint(2, 2));
    assertTrue(joins.get(0).endsWith(", then to strip 1"), joins.toString());
    assertFalse(joins.get(0).contains("top-left"), joins.toString());
    int last = joins.size() + 1;
    assertEquals("bottom-right to strip " + (last - 1), joins.get(joins.size() - 1));
    assertEquals(List.of("r2c1 to strip 1", "r3c1 to strip 2"), joins(Samples.straight(1, 3)));
  }
}
