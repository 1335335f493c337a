package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import lozengy.solver.pack.PackGoal;
import lozengy.solver.pack.PackOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What options may say, and that each wither changes its own part alone. */
class SolveOptionsTest {

  @Test
  void eachWitherChangesItsOwnPart() {
    ProgressListener listener = progress -> {};
    SolveOptions defaults = SolveOptions.defaults();
    SolveOptions options =
        defaults
            .withSeed(7)
            .withMoves(5)
            .withWalkers(4)
            .withSeconds(2.5)
            .withReserved(0.5)
            .withThreads(3)
            .withListener(listener);
    assertEquals(
        new SolveOptions(
            7,
            OptionalLong.of(5),
            OptionalInt.of(4),
            OptionalDouble.of(2.5),
            0.5,
            3,
            defaults.stop(),
            listener),
        options);
    assertTrue(options.withStop(() -> true).stop().getAsBoolean());
  }

  @Test
  void eachWitherOfAPackChangesItsOwnPart() {
    BooleanSupplier stop = () -> true;
    Consumer<PackOptions.Attempt> listener = attempt -> {};
    assertEquals(
        new PackOptions(
            PackGoal.PRICE,
            OptionalDouble.of(70),
            3,
            20,
            Optional.of(BigDecimal.TEN),
            7,
            OptionalLong.of(5),
            3,
            stop,
            listener),
        PackOptions.defaults()
            .withGoal(PackGoal.PRICE)
            .withLeastScore(70)
            .withMargin(3)
            .withBend(20)
            .withSeed(7)
            .withMoves(5)
            .withThreads(3)
            .withStop(stop)
            .withLooser(BigDecimal.TEN)
            .withListener(listener));
  }

  @Test
  void theSearchHasWhatIsNotReserved() {
    SolveOptions options = SolveOptions.defaults().withReserved(0.5);
    assertEquals(OptionalDouble.empty(), options.searchSeconds());
    assertEquals(OptionalDouble.of(1.5), options.withSeconds(2).searchSeconds());
    assertEquals(OptionalDouble.of(0), options.withSeconds(0.3).searchSeconds());
  }

  @Test
  void numbersOutOfRangeAreRefusedAtOnce() {
    SolveOptions defaults = SolveOptions.defaults();
    PackOptions pack = PackOptions.defaults();
    List<Executable> wrong =
        List.of(
            () -> defaults.withThreads(0),
            () -> defaults.withWalkers(0),
            () -> defaults.withWalkers(65),
            () -> defaults.withMoves(-5),
            () -> defaults.withSeconds(Double.NaN),
            () -> defaults.withSeconds(Double.POSITIVE_INFINITY),
            () -> defaults.withSeconds(-1),
            () -> defaults.withReserved(-1),
            () -> defaults.withReserved(Double.NaN),
            () -> pack.withThreads(0),
            () -> pack.withMoves(-5),
            () -> pack.withLeastScore(Double.NaN),
            () -> pack.withLeastScore(100.5),
            () -> pack.withMargin(Double.NaN),
            () -> pack.withMargin(-1),
            () -> pack.withBend(Double.POSITIVE_INFINITY));
    for (Executable each : wrong) {
      assertThrows(IllegalArgumentException.class, each);
    }
    assertEquals(
        "stop is null",
        assertThrows(NullPointerException.class, () -> defaults.withStop(null)).getMessage());
    assertThrows(NullPointerException.class, () -> pack.withGoal(null));
  }
}
