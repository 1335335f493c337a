package lozengy.model.stitch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Expected figures were worked out by hand from the stated loops and thicknesses. */
class StartingValuesTest {

  private static final Optional<YarnWeight> UNTOLD = Optional.empty();

  @Test
  void aLoopIsTheYarnOnceAroundHookAndYarn() {
    StartingValues values =
        StartingValues.of(
            Map.of(), Optional.of(YarnWeight.LIGHT), Optional.of(new BigDecimal("3.5")));

    assertEquals(17.5929, values.loop().orElseThrow().doubleValue(), 1e-4); // pi x 5.6 mm
    assertEquals(58.0566, values.of(Stitch.DOUBLE).doubleValue(), 1e-4); // 3.3 loops
    assertEquals(
        10 * 58.0566 + 4 * 21.1115,
        values.of(Map.of(Stitch.DOUBLE, 10, Stitch.CHAIN, 4)).doubleValue(),
        1e-3);
  }

  @Test
  void aStatedStitchIsTakenAsStatedAndTellsTheOthers() {
    StartingValues values =
        StartingValues.of(
            Map.of(Stitch.DOUBLE, new BigDecimal(66)), UNTOLD, Optional.of(BigDecimal.TEN));

    assertEquals(66, values.of(Stitch.DOUBLE).doubleValue());
    assertEquals(36, values.of(Stitch.SINGLE).doubleValue(), 1e-9); // 66 / 3.3 x 1.8
  }

  @Test
  void stitchesOnlyCompareWhereNothingIsTold() {
    StartingValues values = StartingValues.of(Map.of(), UNTOLD, Optional.of(BigDecimal.TEN));

    assertFalse(values.known());
    assertEquals(
        new BigDecimal("3.3"), values.of(Stitch.DOUBLE).divide(values.of(Stitch.SLIP_STITCH)));
  }
}
