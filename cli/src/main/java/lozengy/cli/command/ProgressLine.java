package lozengy.cli.command;

import java.io.PrintWriter;
import java.util.Locale;
import lozengy.solver.ProgressListener;

/** Shows how a solve goes on one line that is written over again and again. */
final class ProgressLine implements ProgressListener {

  private static final double SECONDS_BETWEEN = 0.1;

  private final PrintWriter err;
  private double lastSeconds = Double.NEGATIVE_INFINITY;
  private int width;

  ProgressLine(PrintWriter err) {
    this.err = err;
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

  private static String words(Progress progress) {
    String time = String.format(Locale.ROOT, "%.1f s", progress.seconds());
    if (Double.isNaN(progress.score())) {
      return time + ", looking for a first arrangement";
    }
    return String.format(
        Locale.ROOT,
        "%s, %,d moves, score %.2f of at most %.2f; Ctrl-C keeps the best so far",
        time,
        progress.moves(),
        progress.score(),
        progress.bound());
  }
}
