package lozengy.solver.pack;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * What a pack is to be good for, and how hard to look.
 *
 * @param goal what it is to have least of
 * @param leastScore points, 0 to 100, that an arrangement from it must reach, leeway aside; where
 *     empty, as many as one from plenty of yarn, less the margin
 * @param marginPoints that margin, 0 or more
 * @param bendPercent by how much of its share's length each shade may be used more or less, to the
 *     next round, 0 or more
 * @param looserPercent by how much more yarn than is reckoned hands may take, in per cent, 0 or
 *     more; where empty, what the brief says of whoever buys it, or else how far it says that yarn
 *     varies
 * @param seed seed of the random source
 * @param moves moves of each solve, where said; with the seed they fix the result
 * @param threads threads to use, at least 1; they do not change the result
 * @param stop asked now and then; once true, the work ends
 * @param listener told of each pack before it is tried
 */
public record PackOptions(
    PackGoal goal,
    OptionalDouble leastScore,
    double marginPoints,
    double bendPercent,
    Optional<BigDecimal> looserPercent,
    long seed,
    OptionalLong moves,
    int threads,
    BooleanSupplier stop,
    Consumer<Attempt> listener) {

  /**
   * A pack that is tried.
   *
   * @param number which one, from 1; 0 for plenty of yarn
   * @param balls how many balls it has; 0 for plenty of yarn
   */
  public record Attempt(int number, int balls) {}

  /** Points below plenty where nothing is said. */
  public static final double USUAL_MARGIN = 2;

  /** By how much shares may bend where nothing is said. */
  public static final double USUAL_BEND = 50;

  /**
   * Checks the ranges.
   *
   * @param goal what it is to have least of
   * @param leastScore points, 0 to 100, that an arrangement from it must reach, leeway aside
   * @param marginPoints points below plenty, 0 or more
   * @param bendPercent by how much of its share's length each shade may be used more or less
   * @param looserPercent by how much more yarn than is reckoned hands may take, in per cent
   * @param seed seed of the random source
   * @param moves moves of each solve, where said, at least 0
   * @param threads threads to use, at least 1
   * @param stop asked now and then; once true, the work ends
   * @param listener told of each pack before it is tried
   * @throws IllegalArgumentException if a number is out of its range
   */
  public PackOptions {
    Objects.requireNonNull(goal, "goal");
    Objects.requireNonNull(stop, "stop");
    Objects.requireNonNull(listener, "listener");
    double least = leastScore.orElse(0);
    if (!(least >= 0 && least <= 100)) {
      throw new IllegalArgumentException("a score of " + least + " is not 0 to 100");
    }
    boolean tighter = looserPercent.filter(percent -> percent.signum() < 0).isPresent();
    if (!(marginPoints >= 0) || !(bendPercent >= 0) || tighter) {
      throw new IllegalArgumentException("margin, bend and looseness must be 0 or more");
    }
  }

  /** {@return as few balls as give almost the score of plenty; seed 1, all cores} */
  public static PackOptions defaults() {
    return new PackOptions(
        PackGoal.BALLS,
        OptionalDouble.empty(),
        USUAL_MARGIN,
        USUAL_BEND,
        Optional.empty(),
        1,
        OptionalLong.empty(),
        Runtime.getRuntime().availableProcessors(),
        () -> false,
        attempt -> {});
  }
}
