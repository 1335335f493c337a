package lozengy.solver.pack;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import lozengy.model.input.Nulls;

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
    Nulls.refuse(
        "goal leastScore looserPercent moves stop listener",
        goal,
        leastScore,
        looserPercent,
        moves,
        stop,
        listener);
    double least = leastScore.orElse(0);
    if (!(least >= 0 && least <= 100)) {
      throw new IllegalArgumentException("a score of " + least + " is not 0 to 100");
    }
    if (!(marginPoints >= 0 && Double.isFinite(marginPoints))) {
      throw new IllegalArgumentException("a margin of " + marginPoints + " is not 0 or more");
    }
    if (!(bendPercent >= 0 && Double.isFinite(bendPercent))) {
      throw new IllegalArgumentException("a bend of " + bendPercent + " is not 0 or more");
    }
    if (moves.orElse(0) < 0) {
      throw new IllegalArgumentException("moves " + moves.getAsLong() + " are below 0");
    }
    if (threads < 1) {
      throw new IllegalArgumentException("threads " + threads + ": at least 1 is needed");
    }
    if (looserPercent.filter(percent -> percent.signum() < 0).isPresent()) {
      throw new IllegalArgumentException(
          "looser by " + looserPercent.get() + " % is not 0 or more");
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

  /**
   * {@return the same with another goal}
   *
   * @param other what it is to have least of
   */
  public PackOptions withGoal(PackGoal other) {
    return new PackOptions(
        other,
        leastScore,
        marginPoints,
        bendPercent,
        looserPercent,
        seed,
        moves,
        threads,
        stop,
        listener);
  }

  /**
   * {@return the same with a score to reach}
   *
   * @param points points, 0 to 100, that an arrangement from it must reach
   */
  public PackOptions withLeastScore(double points) {
    return new PackOptions(
        goal,
        OptionalDouble.of(points),
        marginPoints,
        bendPercent,
        looserPercent,
        seed,
        moves,
        threads,
        stop,
        listener);
  }

  /**
   * {@return the same with another margin}
   *
   * @param points points below plenty, 0 or more
   */
  public PackOptions withMargin(double points) {
    return new PackOptions(
        goal, leastScore, points, bendPercent, looserPercent, seed, moves, threads, stop, listener);
  }

  /**
   * {@return the same with shares that bend otherwise}
   *
   * @param percent by how much of its share's length each shade may be used more or less
   */
  public PackOptions withBend(double percent) {
    return new PackOptions(
        goal,
        leastScore,
        marginPoints,
        percent,
        looserPercent,
        seed,
        moves,
        threads,
        stop,
        listener);
  }

  /**
   * {@return the same with another seed}
   *
   * @param other seed of the random source
   */
  public PackOptions withSeed(long other) {
    return new PackOptions(
        goal,
        leastScore,
        marginPoints,
        bendPercent,
        looserPercent,
        other,
        moves,
        threads,
        stop,
        listener);
  }

  /**
   * {@return the same with a limit of moves}
   *
   * @param most moves of each solve, at least 0
   */
  public PackOptions withMoves(long most) {
    return new PackOptions(
        goal,
        leastScore,
        marginPoints,
        bendPercent,
        looserPercent,
        seed,
        OptionalLong.of(most),
        threads,
        stop,
        listener);
  }

  /**
   * {@return the same with other threads}
   *
   * @param number threads to use, at least 1
   */
  public PackOptions withThreads(int number) {
    return new PackOptions(
        goal,
        leastScore,
        marginPoints,
        bendPercent,
        looserPercent,
        seed,
        moves,
        number,
        stop,
        listener);
  }

  /**
   * {@return the same with something that ends it}
   *
   * @param asked asked now and then; once true, the work ends
   */
  public PackOptions withStop(BooleanSupplier asked) {
    return new PackOptions(
        goal,
        leastScore,
        marginPoints,
        bendPercent,
        looserPercent,
        seed,
        moves,
        threads,
        asked,
        listener);
  }

  /**
   * {@return the same for other hands}
   *
   * @param percent by how much more yarn than is reckoned they may take, 0 or more
   */
  public PackOptions withLooser(BigDecimal percent) {
    return new PackOptions(
        goal,
        leastScore,
        marginPoints,
        bendPercent,
        Optional.of(percent),
        seed,
        moves,
        threads,
        stop,
        listener);
  }

  /**
   * {@return the same with another listener}
   *
   * @param told told of each pack before it is tried
   */
  public PackOptions withListener(Consumer<Attempt> told) {
    return new PackOptions(
        goal,
        leastScore,
        marginPoints,
        bendPercent,
        looserPercent,
        seed,
        moves,
        threads,
        stop,
        told);
  }
}
