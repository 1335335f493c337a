package lozengy.cli.command;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.DoubleStream;
import lozengy.solver.ProgressListener;

/** Shows how a solve goes on one line that is written over again and again. */
final class ProgressLine implements ProgressListener {

  private static final double SECONDS_BETWEEN = 0.1;

  private final PrintWriter err;
  private final Limits limits;
  private double lastSeconds = Double.NEGATIVE_INFINITY;
  private int width;

  /** Where a solve ends at the latest, where that is said. */
  record Limits(OptionalLong moves, OptionalDouble seconds) {

    /** Seconds to whichever limit comes first, judged by the moves so far. */
    OptionalDouble secondsLeft(Progress progress) {
      DoubleStream byTime = seconds.stream().map(limit -> limit - progress.seconds());
      DoubleStream byMoves =
          progress.moves() == 0
              ? DoubleStream.empty()
              : moves.stream()
                  .mapToDouble(
                      limit ->
                          (limit - progress.moves()) * (progress.seconds() / progress.moves()));
      return DoubleStream.concat(byTime, byMoves).map(each -> Math.max(0, each)).min();
    }
  }

  ProgressLine(PrintWriter err, Limits limits) {
    this.err = err;
    this.limits = limits;
  }

  @Override
  public void progress(Progress progress) {
    if (progress.seconds() - lastSeconds < SECONDS_BETWEEN) {
      return;
    }
    lastSeconds = progress.seconds();
    show(words(progress));
  }

  /** Takes the line away. */
  void clear() {
    if (width > 0) {
      show("");
      err.print('\r');
      err.flush();
    }
  }

  private void show(String text) {
    String blanks = " ".repeat(Math.max(0, width - text.length()));
    err.print("\r" + text + blanks);
    err.flush();
    width = text.length();
  }

  private String left(Progress progress) {
    OptionalDouble left = limits.secondsLeft(progress);
    return left.isPresent() ? String.format(Locale.ROOT, "; %.0f s left", left.getAsDouble()) : "";
  }

  private String words(Progress progress) {
    String time = String.format(Locale.ROOT, "%.1f s", progress.seconds());
    if (Double.isNaN(progress.score())) {
      return time + ", looking for a first arrangement";
    }
    return String.format(
        Locale.ROOT,
        "%s, %,d moves, score %.2f of at most %.2f%s; Ctrl-C keeps the best so far",
        time,
        progress.moves(),
        progress.score(),
        progress.bound(),
        left(progress));
  }
}
