package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.progress.LeastUpset;
import org.junit.jupiter.api.Test;

/** How many rounds had to change, in a sentence. */
class ReplanTextTest {

  private static final Arrangement THROW = Samples.saltmarshThrow();

  /** What is told where the centre of the last planned piece had another yarn before. */
  private static String told(LeastUpset least) {
    Sequences before = THROW.sequences().copy();
    int piece = before.pieces() - 1;
    while (THROW.blanket().state(piece) != PieceState.PLANNED) {
      piece--;
    }
    before.set(piece, 0, (before.yarn(piece, 0) + 1) % THROW.blanket().brief().yarns().size());
    return ReplanText.of(
        ReplanComparison.of(THROW, before, least, Optional.empty(), Optional.empty()));
  }

  @Test
  void nothingIsSaidToHaveToChangeWhereThatIsNotProved() {
    Map.of(
            new LeastUpset(0, true), "None had to change, 1 did.",
            new LeastUpset(1, true), "1 had to change, 1 did.",
            new LeastUpset(1, false), "At least 1 must change; 1 did.",
            new LeastUpset(0, false), "That any had to change is not proved; 1 did.")
        .forEach(
            (least, words) -> {
              String told = told(least);
              assertTrue(told.lines().anyMatch(words::equals), told);
            });
  }
}
