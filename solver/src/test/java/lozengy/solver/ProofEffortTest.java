package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Proofs go by what a search may spend. */
class ProofEffortTest {

  private static final SolveOptions OPTIONS = SolveOptions.defaults().withThreads(1);

  /** 16 squares from four yarns that hold just enough, which the constraint model does not find. */
  private static Blanket tight() {
    return BlanketBuilder.straight(4, 4)
        .motif(
            PieceKind.SQUARE,
            BlanketBuilder.round(2011),
            BlanketBuilder.round(3108),
            BlanketBuilder.round(5303))
        .within(WithinPiece.ALL_DIFFER)
        .copies(1)
        .yarns(4, Tone.MID, 41_689)
        .build();
  }

  @Test
  void growsWithTheMovesUpToWhatAPacksTrialHas() {
    Blanket blanket = tight();
    long usual = SolveOptions.defaultMoves(blanket);
    assertEquals(2_000_000, usual);
    ProofEffort most = ProofEffort.of(blanket, OPTIONS);
    assertEquals(most, ProofEffort.of(blanket, OPTIONS.withMoves(usual / 4)));
    assertEquals(most, ProofEffort.of(blanket, OPTIONS.withMoves(Long.MAX_VALUE)));
    assertEquals(
        new ProofEffort(most.start() / 5, most.optimum() / 4),
        ProofEffort.of(blanket, OPTIONS.withMoves(100_000)));
    assertEquals(
        new ProofEffort(most.start() * 2 / 5, most.optimum() / 2),
        ProofEffort.of(blanket, OPTIONS.withMoves(200_000)));
    assertEquals(
        new ProofEffort(most.start() / 50, most.optimum() / 4),
        ProofEffort.of(blanket, OPTIONS.withMoves(0)));
  }

  @Test
  void aLimitOfTimeRulesAlone() {
    ProofEffort few = ProofEffort.of(tight(), OPTIONS.withMoves(1).withSeconds(1));
    ProofEffort most = ProofEffort.of(tight(), OPTIONS);
    assertEquals(most.start(), few.start());
    assertTrue(few.optimum() > most.optimum());
  }

  /** The stop is asked at every node, so that asking counts what is spent. */
  @Test
  void withoutMovesALookForAStartEndsSoonAndProvesNothing() {
    AtomicLong asked = new AtomicLong();
    SolveResult result =
        Solver.solve(
            tight(),
            Optional.empty(),
            OPTIONS
                .withMoves(0)
                .withStop(
                    () -> {
                      asked.incrementAndGet();
                      return false;
                    }));
    assertInstanceOf(SolveResult.Unfinished.class, result);
    assertTrue(asked.get() < 6_000, asked + " nodes and more");
  }
}
