package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lozengy.solver.SolveResult.Unsettled;
import org.junit.jupiter.api.Test;

class SolveResultTest {

  @Test
  void onlySearchesThatEndApartAndFarBelowTheBoundAreUnsettled() {
    assertEquals(Optional.of(new Unsettled(0.5, 2, 4000)), Unsettled.of(0.5, 2, 1000));
    assertTrue(Unsettled.of(0.4, 9, 1000).isEmpty());
    assertTrue(Unsettled.of(9, 1.9, 1000).isEmpty());
  }
}
