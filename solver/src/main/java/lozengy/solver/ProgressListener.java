package lozengy.solver;

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
   */
  record Progress(double seconds, long moves, double score, double bound) {}
}
