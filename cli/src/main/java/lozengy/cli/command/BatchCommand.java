package lozengy.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import lozengy.cli.batch.Batch;
import lozengy.cli.batch.BatchEnd;
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
      "",
      "A line may say more: {\"format\": \"lozengy-batch-line/1\", \"id\": \"A7\", \"seed\": 3, \"best-of\":"
          + " 5, \"document\": {...}}. Its result bears the id, and the document's title.",
      "",
      "Ctrl-C lets the lines under way come to their end, marks their results with \"stopped\": true,"
          + " says how to go on and ends with exit code 6.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy batch briefs.jsonl > results.jsonl",
      "  make-briefs | lozengy batch - --workers 4 --moves 500000 | read-results",
      "  lozengy batch briefs.jsonl --skip 1200 >> results.jsonl"
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

  @Option(
      names = "--best-of",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "Solve each line with that many seeds, one after the other, and keep the best; 1 if not"
              + " said. A line may say it for itself.")
  private int bestOf;

  @Option(
      names = "--skip",
      paramLabel = "N",
      defaultValue = "0",
      description = "Leave out the first N lines, blank ones too; numbers stay as they are.")
  private long skip;

  @Mixin private WalkersOption walkers;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  BatchCommand(Terminal terminal, Solving solving) {
    this.terminal = terminal;
    this.solving = solving;
  }

  @Override
  public Integer call() {
    int atOnce = workers == null ? Runtime.getRuntime().availableProcessors() : workers;
    if (atOnce < 1 || atOnce > MOST_WORKERS) {
      throw outOfRange("--workers", atOnce, 1, MOST_WORKERS);
    }
    if (bestOf < 1 || bestOf > Batch.MOST_SEEDS) {
      throw outOfRange("--best-of", bestOf, 1, Batch.MOST_SEEDS);
    }
    if (skip < 0) {
      throw outOfRange("--skip", skip, 0, Long.MAX_VALUE);
    }
    SolveRequest request = SolveRequest.of(seed, moves, walkers.wanted(), seconds, 1);
    Source source = new Source(file);
    try (InputStream in = source.open(terminal)) {
      BooleanSupplier stop = terminal.stopSignal().listen();
      SolveOptions options = request.options(stop, progress -> {});
      return told(new Batch(in, this::write, solving, options, bestOf, skip, atOnce).run()).code();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Refusal outOfRange(String option, long found, long least, long most) {
    return Refusal.of(
        option,
        MistakeCode.OUT_OF_RANGE.about(found, least, most),
        Long.toString(found),
        "Give a whole number from " + least + " to " + most);
  }

  /** Says how far a batch came that was stopped. */
  private ExitCode told(BatchEnd end) {
    if (!end.stopped()) {
      return ExitCode.DONE;
    }
    String cutShort =
        end.cutShort().isEmpty()
            ? ""
            : "; of these, what was cut short bears \"stopped\": true, from line "
                + end.cutShort().get(0)
                + " on";
    terminal
        .err()
        .println(
            "lozengy: Stopped. Lines up to "
                + end.lastLine()
                + " have results"
                + cutShort
                + ". --skip "
                + end.lastWhole()
                + " goes on");
    return ExitCode.STOPPED;
  }

  /** Writes at once what others may be waiting for. */
  private boolean write(byte[] result) {
    terminal.write(result);
    return !terminal.outputClosed();
  }
}
