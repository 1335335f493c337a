package lozengy.solver;

import java.util.Optional;
import java.util.function.Supplier;

/** Hears how a solve goes. */
@FunctionalInterface
public interface ProgressListener {

  /**
   * Called now and then with the state so far.
   *
   * @param progress the state so far; the search goes on when this returns
   */
  void progress(Progress progress);

  /**
   * The state of a solve.
   *
   * @param seconds since the start
   * @param moves tried so far
   * @param score best so far of what is maximised, 0 to 100: the total, or with keep weighed in
   *     where it is planned again; NaN before the first valid arrangement
   * @param bound proved bound on that, 0 to 100
   * @param incumbent copies the best so far, where there is one: to be asked only until the
   *     listener returns, on the thread that calls it. What it gives may be kept
   */
  record Progress(
      double seconds,
      long moves,
      double score,
      double bound,
      Supplier<Optional<Incumbent>> incumbent) {

    /**
     * A state of which nothing is handed out.
     *
     * @param seconds since the start
     * @param moves tried so far
     * @param score best so far of what is maximised, 0 to 100, or NaN
     * @param bound proved bound on that, 0 to 100
     */
    public Progress(double seconds, long moves, double score, double bound) {
      this(seconds, moves, score, bound, Optional::empty);
    }
  }
}
