package lozengy.solver.pack;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * What a pack is to be good for, and how hard to look.
 *
 * @param goal what it is to have least of
 * @param leastScore points, 0 to 100, that an arrangement from it must reach, leeway aside; where
 *     empty, as many as one from plenty of yarn, less the margin
 * @param marginPoints that margin, 0 or more
 * @param bendPercent by how much of its share's length each shade may be used more or less, to the
 *     next round, 0 or more
 * @param seed seed of the random source
 * @param moves moves of each solve, where said; with the seed they fix the result
 * @param threads threads to use, at least 1; they do not change the result
 * @param stop asked now and then; once true, the work ends
 */
public record PackOptions(
    PackGoal goal,
    OptionalDouble leastScore,
    double marginPoints,
    double bendPercent,
    long seed,
    OptionalLong moves,
    int threads,
    BooleanSupplier stop) {

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
   * @param seed seed of the random source
   * @param moves moves of each solve, where said, at least 0
   * @param threads threads to use, at least 1
   * @param stop asked now and then; once true, the work ends
   * @throws IllegalArgumentException if a number is out of its range
   */
  public PackOptions {
    Objects.requireNonNull(goal, "goal");
    Objects.requireNonNull(stop, "stop");
    double least = leastScore.orElse(0);
    if (!(least >= 0 && least <= 100)) {
      throw new IllegalArgumentException("a score of " + least + " is not 0 to 100");
    }
    if (!(marginPoints >= 0) || !(bendPercent >= 0)) {
      throw new IllegalArgumentException("margin and bend must be 0 or more");
    }
  }

  /** {@return as few balls as give almost the score of plenty; seed 1, all cores} */
  public static PackOptions defaults() {
    return new PackOptions(
        PackGoal.BALLS,
        OptionalDouble.empty(),
        USUAL_MARGIN,
        USUAL_BEND,
        1,
        OptionalLong.empty(),
        Runtime.getRuntime().availableProcessors(),
        () -> false);
  }
}
