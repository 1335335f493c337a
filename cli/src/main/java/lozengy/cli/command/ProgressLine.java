package lozengy.cli.command;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.DoubleStream;
import lozengy.cli.process.Terminal;
import lozengy.solver.ProgressListener;

/** Shows how a solve goes on one line that is written over again and again. */
final class ProgressLine implements ProgressListener {

  private static final double SECONDS_BETWEEN = 0.1;

  private final PrintWriter err;
  private final int widest;
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

  ProgressLine(Terminal terminal, Limits limits) {
    this.err = terminal.err();
    // A full line would make some terminals go on to the next.
    this.widest = Math.max(1, terminal.screen().columns() - 1);
    this.limits = limits;
  }

  @Override
  public void progress(Progress progress) {
    if (progress.seconds() - lastSeconds < SECONDS_BETWEEN) {
      return;
    }
    lastSeconds = progress.seconds();
    show(fitting(words(progress)));
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
        "%s, score %.2f of at most %.2f%s; Ctrl-C keeps the best; %,d moves",
        time,
        progress.score(),
        progress.bound(),
        left(progress),
        progress.moves());
  }

  /** As much as fits on a line: what spills onto a second one could not be written over. */
  private String fitting(String words) {
    String text = words;
    while (text.length() > widest) {
      int part = text.lastIndexOf(';');
      text = text.substring(0, part < 0 ? widest : part);
    }
    return text;
  }
}
