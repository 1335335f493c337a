package lozengy.range;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Optional;
import java.util.Spliterators;
import java.util.stream.StreamSupport;
import lozengy.report.batch.Line;
import lozengy.report.batch.LineResult;
import lozengy.report.batch.LineSolver;
import lozengy.solver.Solver;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.StructType;

/**
 * Solves lines of a range by their numbers, on an executor. It holds texts and numbers alone, so
 * that it travels; whatever an executor is asked, it works out of these.
 *
 * @param range the text of the range file
 * @param limits how long to search
 */
record SolveLines(String range, Limits limits) implements MapPartitionsFunction<Long, Row> {

  /** A row for every line. Nothing in it depends on when and where it was solved. */
  static final StructType ROW =
      new StructType()
          .add("line", "long")
          .add("size", "string")
          .add("palette", "string")
          .add("look", "string")
          .add("seed", "long")
          .add("outcome", "string")
          .add("objective", "double")
          .add("result", "string");

  private static final ObjectMapper JSON = new ObjectMapper();

  @Override
  public Iterator<Row> call(Iterator<Long> indices) {
    RangeFile file = new RangeFile(range);
    TaskContext task = TaskContext.get();
    LineSolver solver =
        new LineSolver(
            Solver::solve, limits.options().withStop(task::isInterrupted), limits.bestOf());
    return StreamSupport.stream(Spliterators.spliteratorUnknownSize(indices, 0), false)
        .map(index -> row(file.item(index), solver))
        .iterator();
  }

  private static Row row(RangeFile.Item item, LineSolver solver) {
    byte[] bytes = item.json().getBytes(StandardCharsets.UTF_8);
    LineResult solved =
        solver.solve(new Line(item.number(), bytes, bytes.length > Line.MOST_BYTES));
    Optional<byte[]> result = solved.bytes().filter(each -> !solved.cutShort());
    // A task that is taken away keeps nothing; whoever solves the line again gives it its whole
    // time.
    String text =
        new String(
                result.orElseThrow(() -> new IllegalStateException("The task was taken away")),
                StandardCharsets.UTF_8)
            .strip();
    JsonNode read = tree(text);
    JsonNode objective = read.path("arrangement").path("score").path("objective");
    return RowFactory.create(
        item.number(),
        item.size(),
        item.palette(),
        item.look(),
        item.seed(),
        read.path("outcome").asText(),
        objective.isNumber() ? objective.asDouble() : null,
        text);
  }

  private static JsonNode tree(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A result is JSON", e);
    }
  }
}
