package lozengy.cli.batch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import lozengy.cli.file.Inputs;
import lozengy.cli.process.FailureData;
import lozengy.cli.process.Refusal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Documents;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.arrangement.Documents.Document;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.InputException;
import lozengy.model.input.JsonText;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.SourceText;
import lozengy.report.Json;
import lozengy.report.ReasonData;
import lozengy.report.wording.Wording;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solving;

/** Turns a line with a brief or an arrangement into a line with the result; never fails. */
final class LineSolver {

  private static final String FORMAT = "format";
  private static final String VERSION = "lozengy-batch-result/1";
  private static final String LINE = "line";
  private static final String OUTCOME = "outcome";

  private final Solving solving;
  private final SolveOptions options;

  LineSolver(Solving solving, SolveOptions options) {
    this.solving = solving;
    this.options = options;
  }

  /** The result's line, with its line break. */
  byte[] solve(InputLines.Line line) {
    try {
      Document document = read(line);
      Optional<Sequences> earlier =
          document instanceof ArrangementDocument answer
              ? Optional.of(answer.arrangement().sequences())
              : Optional.empty();
      Blanket blanket = Inputs.blanket(document);
      SolveResult result = solving.solve(blanket, earlier, options);
      return result instanceof SolveResult.Found found
          ? found(line.number(), found.arrangement())
          : notFound(line.number(), blanket, result);
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError failure) {
      return bytes(
          Json.object(
              FORMAT,
              VERSION,
              LINE,
              line.number(),
              OUTCOME,
              "error",
              "error",
              FailureData.of(failure)));
    }
  }

  private static Document read(InputLines.Line line) {
    if (line.tooLong()) {
      throw Refusal.of(
          "",
          MistakeCode.TOO_LARGE.about("bytes", InputLines.MOST_BYTES),
          "The line is longer than the " + (InputLines.MOST_BYTES >> 20) + " MiB that are read",
          "Solve this brief by itself");
    }
    try {
      SourceText text = SourceText.read("", new ByteArrayInputStream(line.bytes()));
      return Documents.read(new SourceText(text.name(), text.text(), true));
    } catch (InputException e) {
      // All stands on one line, whose number the result bears.
      throw new InputException(e.mistakes().stream().map(each -> each.at(each.path(), 0)).toList());
    } catch (IOException e) {
      throw new UncheckedIOException("memory gives everything", e);
    }
  }

  private static byte[] found(long number, Arrangement arrangement) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      JsonText.writeLine(
          bytes,
          json -> {
            json.mapping();
            json.field(FORMAT).text(VERSION);
            json.field(LINE).number(number);
            json.field(OUTCOME).text("found");
            json.field("arrangement");
            ArrangementWriter.write(json, arrangement);
            json.endMapping();
          });
    } catch (IOException e) {
      throw new UncheckedIOException("memory takes everything", e);
    }
    return bytes.toByteArray();
  }

  private static byte[] notFound(long number, Blanket blanket, SolveResult result) {
    Optional<SolveResult.Impossible> impossible =
        result instanceof SolveResult.Impossible proved ? Optional.of(proved) : Optional.empty();
    Wording wording =
        new Wording(impossible.flatMap(SolveResult.Impossible::choice).orElse(blanket));
    return bytes(
        Json.object(
            FORMAT,
            VERSION,
            LINE,
            number,
            OUTCOME,
            impossible.isPresent() ? "impossible" : "unfinished",
            "reasons",
            result instanceof SolveResult.Unfinished unfinished
                ? wording.of(unfinished)
                : impossible.map(wording::of),
            "causes",
            impossible.map(proved -> ReasonData.of(blanket, proved))));
  }

  private static byte[] bytes(Map<String, Object> object) {
    return (Json.compact(object) + "\n").getBytes(StandardCharsets.UTF_8);
  }
}
