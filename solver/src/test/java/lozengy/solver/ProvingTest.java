package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.reading.BriefReader;
import lozengy.solver.bound.BoundLimits;
import lozengy.solver.bound.Bounds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A proof goes as far as the search's moves are worth: for each piece, 1,500 are worth a second
 * stage and 5,000 a third.
 */
class ProvingTest {

  private static Blanket cushion() {
    return Blanket.of(BriefReader.read(Path.of("..", "examples", "cushion.yaml")));
  }

  private static double proved(OptionalLong moves) {
    try (Proving proving =
        new Proving(cushion(), Optional.empty(), moves, OptionalDouble.empty(), () -> false)) {
      return proving.bound().orElseThrow().total();
    }
  }

  private static double bound(int stages) {
    return Bounds.of(cushion(), new BoundLimits(stages), () -> false).total();
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "37499, 0", "37500, 1", "124999, 1", "125000, 2"})
  void fewMovesEndItAtAnEarlierStage(long moves, int stages) {
    assertEquals(25, cushion().pieceCount());
    assertEquals(bound(stages), proved(OptionalLong.of(moves)));
  }

  @Test
  void withoutALimitOfMovesItGoesThroughAllStages() {
    assertTrue(bound(0) > bound(1) && bound(1) > bound(2), "the stages cannot be told apart");
    assertEquals(bound(2), proved(OptionalLong.empty()));
  }
}
