package lozengy.solver.explain.conflict;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Check;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.Limits;
import lozengy.solver.explain.conflict.ConsistencyOracle.Settled;
import lozengy.solver.explain.conflict.ConsistencyOracle.Verdict;
import org.junit.jupiter.api.Test;

/** What is settled of whole briefs and of some of their lines. */
class ConsistencyOracleTest {

  private static final ConsistencyOracle AMPLE =
      new ConsistencyOracle(1, Limits.of(10_000, 10_000));
  private static final ConsistencyOracle SCANT = new ConsistencyOracle(1, Limits.of(1, 1));
  private static final ConsistencyOracle STOPPED =
      new ConsistencyOracle(1, new Limits(1, 1, () -> true));

  private static BlanketBuilder squares(int across, int down) {
    return BlanketBuilder.straight(across, down)
        .motif(PieceKind.SQUARE, round(1000))
        .yarns(2, Tone.DARK, 100_000_000);
  }

  /** Two yarns leave a chessboard alone, of which these two squares are of both colours. */
  private static Blanket hemmed() {
    return squares(3, 3)
        .note("r1c1", PieceState.PLANNED, "A")
        .note("r3c2", PieceState.PLANNED, "A")
        .build();
  }

  @Test
  void aWholeBriefHoldsConflictsOrIsLeftOpen() {
    Blanket fits = squares(3, 3).build();
    Settled holds = AMPLE.settle(fits);
    assertEquals(Verdict.HOLDS, holds.verdict());
    assertEquals(List.of(), Check.faults(fits, holds.witness().orElseThrow()));
    Settled conflicts = new Settled(Verdict.CONFLICTS, Optional.empty());
    assertEquals(conflicts, AMPLE.settle(hemmed()));
    assertEquals(conflicts, STOPPED.settle(squares(1, 1).ban("r1c1", "A", "B").build()));
    Settled open = new Settled(Verdict.OPEN, Optional.empty());
    assertEquals(open, SCANT.settle(hemmed()));
    assertEquals(open, STOPPED.settle(fits));
    assertTrue(STOPPED.stop().getAsBoolean());
  }

  @Test
  void someLinesHoldConflictOrAreLeftOpen() {
    List<BriefLine> all = RuleBook.lines(hemmed());
    List<BriefLine> without =
        all.stream().filter(line -> line.rule() != RuleId.NEIGHBOUR_BORDERS).toList();
    assertEquals(Verdict.CONFLICTS, AMPLE.settle(hemmed(), all));
    assertEquals(Verdict.HOLDS, AMPLE.settle(hemmed(), without));
    assertEquals(Verdict.OPEN, SCANT.settle(hemmed(), all));
  }

  @Test
  void aBlanketTooLargeForTheModelIsLeftOpen() {
    Blanket large = squares(80, 76).build();
    assertEquals(Verdict.OPEN, AMPLE.settle(large, RuleBook.lines(large)));
    assertEquals(Verdict.OPEN, STOPPED.settleUnargued(large).verdict());
    assertEquals(
        new Feasibility.Unknown(), Feasibility.search(large, 1, Limits.of(10_000, 10_000)));
  }
}
