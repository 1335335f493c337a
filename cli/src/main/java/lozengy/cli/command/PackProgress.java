package lozengy.cli.command;

import java.util.function.Consumer;
import java.util.function.Supplier;
import lozengy.cli.process.Terminal;
import lozengy.report.Figures;
import lozengy.solver.pack.PackOptions.Attempt;

/** Shows on a terminal which pack is being tried, on one line that is written over. */
final class PackProgress implements Consumer<Attempt> {

  private final Terminal terminal;
  private int width;

  PackProgress(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public void accept(Attempt attempt) {
    show(
        attempt.number() == 0
            ? "planning with plenty of yarn"
            : "pack "
                + attempt.number()
                + ": planning with "
                + Figures.count(attempt.balls(), "ball"));
  }

  /** Does something long, and takes the line away after it. */
  <T> T during(Supplier<T> work) {
    try {
      return work.get();
    } finally {
      if (width > 0) {
        show("");
        terminal.err().print('\r');
        terminal.err().flush();
      }
    }
  }

  private void show(String text) {
    if (terminal.showProgress()) {
      terminal.err().print("\r" + text + " ".repeat(Math.max(0, width - text.length())));
      terminal.err().flush();
      width = text.length();
    }
  }
}
