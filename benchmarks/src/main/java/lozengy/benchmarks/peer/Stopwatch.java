package lozengy.benchmarks.peer;

/** Seconds since it was made. */
public final class Stopwatch {

  private static final double NANOS = 1e9;

  private final long start = System.nanoTime();

  /** Seconds since it was made. */
  public double seconds() {
    return (System.nanoTime() - start) / NANOS;
  }
}
