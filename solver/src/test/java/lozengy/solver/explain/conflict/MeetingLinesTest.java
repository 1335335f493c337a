package lozengy.solver.explain.conflict;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Start;
import org.junit.jupiter.api.Test;

/** What meets what, looked at without the rest of a brief. */
class MeetingLinesTest {

  /** Too few dead ends for the whole of the brief below, and enough for what meets there. */
  private static final Limits FEW = Limits.of(100_000, 30);

  private static BlanketBuilder squares(long millimetres) {
    return BlanketBuilder.straight(7, 7)
        .motif(PieceKind.SQUARE, round(1000), round(1500))
        .copies(9)
        .yarns(3, Tone.MID, millimetres);
  }

  /** Three yarns colour the borders of 49 squares, but not beside these seven. */
  private static Blanket hemmed() {
    return squares(42_000)
        .note("r4c4", PieceState.PLANNED, null, "A")
        .note("r3c2", PieceState.PLANNED, null, "B")
        .note("r6c7", PieceState.PLANNED, null, "A")
        .note("r4c7", PieceState.PLANNED, null, "B")
        .note("r5c7", PieceState.PLANNED, null, "C")
        .note("r6c4", PieceState.PLANNED, null, "B")
        .note("r2c2", PieceState.PLANNED, null, "C")
        .build();
  }

  @Test
  void aConflictOfWhatMeetsIsFoundWhereTheWholeTakesTooManyDeadEnds() {
    Blanket blanket = hemmed();
    List<BriefLine> lines = RuleBook.lines(blanket);
    assertInstanceOf(Start.Limited.class, Start.find(ConstraintModel.of(blanket), 1, FEW));
    assertTrue(MeetingLines.conflict(blanket, lines, 1, FEW));
    ConsistencyOracle oracle = new ConsistencyOracle(1, FEW);
    assertEquals(ConsistencyOracle.Verdict.CONFLICTS, oracle.settle(blanket, lines));
    Feasibility.Answer answer = Feasibility.search(blanket, 1, FEW);
    Conflict conflict =
        assertInstanceOf(Feasibility.Impossible.class, answer).conflict().orElseThrow();
    Set<RuleId> rules = conflict.lines().stream().map(BriefLine::rule).collect(Collectors.toSet());
    assertEquals(Set.of(RuleId.NEIGHBOUR_BORDERS, RuleId.LOCKS), rules);
  }

  @Test
  void nothingIsSaidWhereStockOrCopiesAreNeededOrNothingIsLeftOut() {
    Blanket scarce = squares(30_000).build();
    List<BriefLine> lines = RuleBook.lines(scarce);
    assertFalse(MeetingLines.conflict(scarce, lines, 1, FEW));
    Blanket blanket = hemmed();
    List<BriefLine> meeting =
        RuleBook.lines(blanket).stream()
            .filter(line -> line.rule() == RuleId.NEIGHBOUR_BORDERS || line.rule() == RuleId.LOCKS)
            .toList();
    assertFalse(MeetingLines.conflict(blanket, meeting, 1, FEW), "these were searched already");
  }
}
