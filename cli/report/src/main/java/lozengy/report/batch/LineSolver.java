package lozengy.report.batch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Documents;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.arrangement.Documents.Document;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.InputException;
import lozengy.model.input.JsonText;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;
import lozengy.report.FailureData;
import lozengy.report.Json;
import lozengy.report.solve.SolveText;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solving;

/**
 * Turns a line with a brief or an arrangement into a line with the result; never fails. With the
 * same solver and a limit of moves, or none, the result is a function of the line: the same bytes
 * on any machine.
 */
public final class LineSolver {

  /** Most seeds of which the best is taken. */
  public static final int MOST_SEEDS = BatchLine.MOST_SEEDS;

  private static final String VERSION = "lozengy-batch-result/1";
  private static final String STOPPED = "stopped";
  private static final String OUTCOME = "outcome";

  private final Solving solving;
  private final SolveOptions options;
  private final int bestOf;

  /**
   * Solves lines in one way.
   *
   * @param solving what solves
   * @param options how lines are solved that say nothing else
   * @param bestOf of how many seeds the best is wanted of these, at least 1
   */
  public LineSolver(Solving solving, SolveOptions options, int bestOf) {
    this.solving = solving;
    this.options = options;
    this.bestOf = bestOf;
  }

  /** The result; without bytes where it is stopped before it begins. */
  public LineResult solve(Line line) {
    if (stopping()) {
      return new LineResult(line.number(), Optional.empty(), false);
    }
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("format", VERSION);
    head.put("line", line.number());
    try {
      byte[] result = solve(line, head);
      return new LineResult(line.number(), Optional.of(result), head.containsKey(STOPPED));
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError failure) {
      head.put(OUTCOME, "error");
      head.put("error", FailureData.of(failure));
      return new LineResult(line.number(), Optional.of(bytes(head)), false);
    }
  }

  /** Solves; the head takes what goes before the outcome as soon as it is known. */
  private byte[] solve(Line line, Map<String, Object> head) {
    Mistakes mistakes = new Mistakes();
    BatchLine asked = BatchLine.read(tree(line, mistakes), mistakes);
    asked.id().ifPresent(id -> head.put("id", id));
    asked.title().ifPresent(title -> head.put("title", title));
    Document document = document(asked, mistakes);
    Optional<Sequences> earlier =
        document instanceof ArrangementDocument answer
            ? Optional.of(answer.arrangement().sequences())
            : Optional.empty();
    Blanket blanket = document.blanket();
    SeedRuns runs =
        SeedRuns.of(
            solving,
            blanket,
            earlier,
            options.withSeed(asked.seed().orElse(options.seed())),
            asked.bestOf().orElse(bestOf));
    if (stopping()) {
      head.put(STOPPED, true);
    }
    runs.data().ifPresent(tried -> head.put("seeds", tried));
    return runs.best() instanceof SolveResult.Found found
        ? found(head, found.arrangement())
        : bytes(notFound(head, blanket, runs.best()));
  }

  private boolean stopping() {
    return options.stop().getAsBoolean();
  }

  private static Node tree(Line line, Mistakes mistakes) {
    if (line.tooLong()) {
      throw new InputException(
          List.of(
              Mistake.ofWhole(
                  MistakeCode.TOO_LARGE.about("bytes", Line.MOST_BYTES),
                  "The line is longer than the " + (Line.MOST_BYTES >> 20) + " MiB that are read",
                  "Solve this brief by itself")));
    }
    try {
      SourceText text = SourceText.read("", new ByteArrayInputStream(line.bytes()));
      return TreeReader.read(new SourceText(text.name(), text.text(), true), mistakes);
    } catch (InputException e) {
      throw withoutLines(e);
    } catch (IOException e) {
      throw new UncheckedIOException("memory gives everything", e);
    }
  }

  private static Document document(BatchLine asked, Mistakes mistakes) {
    try {
      return Documents.read(asked.document(mistakes));
    } catch (InputException e) {
      throw withoutLines(e);
    }
  }

  /** All stands on one line, whose number the result bears. */
  private static InputException withoutLines(InputException failure) {
    return new InputException(
        failure.mistakes().stream().map(each -> each.at(each.path(), 0)).toList());
  }

  private static byte[] found(Map<String, Object> head, Arrangement arrangement) {
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    try {
      JsonText.writeLine(written, json -> ArrangementWriter.write(json, arrangement));
    } catch (IOException e) {
      throw new UncheckedIOException("memory takes everything", e);
    }
    head.put(OUTCOME, "found");
    head.put("arrangement", new Json.Raw(written.toString(StandardCharsets.UTF_8).strip()));
    return bytes(head);
  }

  private static Map<String, Object> notFound(
      Map<String, Object> head, Blanket blanket, SolveResult result) {
    head.putAll(SolveText.notFoundData(blanket, result));
    head.remove("doubts");
    return head;
  }

  private static byte[] bytes(Map<String, Object> object) {
    return (Json.compact(object) + "\n").getBytes(StandardCharsets.UTF_8);
  }
}
