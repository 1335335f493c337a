package lozengy.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import lozengy.cli.batch.Batch;
import lozengy.cli.file.Source;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.input.MistakeCode;
import lozengy.solver.SolveOptions;
import lozengy.solver.Solving;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans many blankets in a row. */
@Command(
    description = {
      "Plans many blankets: a brief or an arrangement on each line in (JSON Lines), a result on each"
          + " line out, in the same order.",
      "",
      "A result is {\"format\": \"lozengy-batch-result/1\", \"line\": 1, \"outcome\": \"found\", \"arrangement\": {...}}; the outcome may be"
          + " impossible or unfinished, with reasons, or error, with the mistakes of that line. A"
          + " wrong line stops nothing: the exit code is 0 all the same. Blank lines have no result.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy batch briefs.jsonl > results.jsonl",
      "  make-briefs | lozengy batch - --workers 4 --moves 500000 | read-results"
    })
final class BatchCommand implements Callable<Integer> {

  private static final int MOST_WORKERS = 1024;

  private final Terminal terminal;
  private final Solving solving;

  @Parameters(paramLabel = "FILE", description = "The lines; - is standard input.")
  private String file;

  @Option(
      names = "--workers",
      paramLabel = "N",
      description = "Solve that many lines at once; as many as there are cores if not said.")
  private Integer workers;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Where the random source starts, for every line; 1 if not said.")
  private Long seed;

  @Option(
      names = "--moves",
      paramLabel = "N",
      description =
          "Try that many moves at most for a line; by the blanket's size if neither this nor"
              + " --seconds is said.")
  private Long moves;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "Search that long at most for a line.")
  private Double seconds;

  @Mixin private HelpOption help;

  BatchCommand(Terminal terminal, Solving solving) {
    this.terminal = terminal;
    this.solving = solving;
  }

  @Override
  public Integer call() {
    int atOnce = workers == null ? Runtime.getRuntime().availableProcessors() : workers;
    if (atOnce < 1 || atOnce > MOST_WORKERS) {
      throw Refusal.of(
          "--workers",
          MistakeCode.OUT_OF_RANGE.about(atOnce, 1, MOST_WORKERS),
          Integer.toString(atOnce),
          "Give a whole number from 1 to " + MOST_WORKERS);
    }
    SolveRequest request = SolveRequest.of(seed, moves, seconds, 1);
    Source source = new Source(file);
    try (InputStream in = source.open(terminal)) {
      BooleanSupplier stop = terminal.stopSignal().listen();
      SolveOptions options = request.options(stop, progress -> {});
      new Batch(in, this::write, solving, options, atOnce).run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return ExitCode.DONE.code();
  }

  /** Writes at once what others may be waiting for. */
  private boolean write(byte[] result) {
    terminal.write(result);
    return !terminal.outputClosed();
  }
}
