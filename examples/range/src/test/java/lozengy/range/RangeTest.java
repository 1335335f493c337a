package lozengy.range;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.hadoop.fs.FileAlreadyExistsException;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class RangeTest {

  private static final SolveLines LINES =
      new SolveLines(Batch.RANGE, new Limits(Batch.MOVES, null, 1));

  @TempDir private Path folder;

  /** One task or many, on one core or two. */
  @Test
  void resultsAreThoseOfBatch() throws Exception {
    String batch = Batch.results(folder, Batch.RANGE, "--moves", "" + Batch.MOVES);
    assertEquals(24, batch.lines().count());
    for (String outcome : List.of("found", "impossible", "error")) {
      assertTrue(batch.contains("\"outcome\":\"" + outcome + "\""), outcome);
    }
    int run = 0;
    for (int cores : List.of(1, 2)) {
      try (SparkSession spark = Batch.local(cores)) {
        for (long linesPerTask : cores == 1 ? List.of(100L) : List.of(1L, 7L)) {
          Path out = folder.resolve("run" + run++);
          Range.solve(spark, LINES, linesPerTask, out.toString());
          assertEquals(batch, Batch.results(out), cores + " cores, " + linesPerTask + " lines");
        }
      }
    }
  }

  @Test
  void theBestOfSeveralSeedsIsThatOfBatch() throws Exception {
    String range = Batch.RANGE.replace("to: 4", "to: 3");
    String batch = Batch.results(folder, range, "--moves", "" + Batch.MOVES, "--best-of", "3");
    assertTrue(batch.contains("\"seeds\":["));
    try (SparkSession spark = Batch.local(2)) {
      SolveLines lines = new SolveLines(range, new Limits(Batch.MOVES, null, 3));
      Range.solve(spark, lines, 4, folder.resolve("run").toString());
    }
    assertEquals(batch, Batch.results(folder.resolve("run")));
  }

  @Test
  void failedLinesAreRowsAndTheBestAreSetOut() throws Exception {
    Path out = folder.resolve("run");
    try (SparkSession spark = Batch.local(2)) {
      Range.solve(spark, LINES, 5, out.toString());
      List<Row> rows =
          spark
              .read()
              .parquet(out.resolve("results.parquet").toString())
              .sort("line")
              .collectAsList();
      assertEquals(24, rows.size());
      Row wrong = rows.get(8);
      assertEquals(9L, wrong.<Long>getAs("line"));
      assertEquals("wrong", wrong.getAs("palette"));
      assertEquals("error", wrong.getAs("outcome"));
      assertTrue(wrong.isNullAt(wrong.fieldIndex("objective")));
      assertTrue(wrong.<String>getAs("result").contains("\"document.yarns[0].colour\""));
      List<Row> summary =
          spark
              .read()
              .option("header", true)
              .schema(
                  "size string, palette string, look string, lines long, found long, impossible"
                      + " long, unfinished long, error long, worst double, median double, best"
                      + " double, best_line long")
              .csv(out.resolve("summary.csv").toString())
              .collectAsList();
      assertEquals(12, summary.size());
      for (int i = 0; i < summary.size(); i++) {
        List<Row> some = rows.subList(2 * i, 2 * i + 2);
        Row line = summary.get(i);
        assertEquals(some.get(0).<String>getAs("look"), line.getAs("look"));
        for (String outcome : List.of("found", "impossible", "unfinished", "error")) {
          long count = some.stream().filter(each -> each.getAs("outcome").equals(outcome)).count();
          assertEquals(count, line.<Long>getAs(outcome), outcome + " in " + line);
        }
        assertEquals(best(some), line.getAs("best_line"));
      }
    }
    String page = Files.readString(out.resolve("gallery.html"));
    assertEquals(4, page.split("<figure>", -1).length - 1);
    assertTrue(page.contains("runner, shore, mirrored"));
  }

  /** The number of the line with the highest objective, of equal ones the first; null for none. */
  private static Long best(List<Row> rows) {
    Row best = null;
    for (Row each : rows) {
      Double objective = each.getAs("objective");
      if (objective != null && (best == null || objective > best.<Double>getAs("objective"))) {
        best = each;
      }
    }
    return best == null ? null : best.<Long>getAs("line");
  }

  /** Nobody lives to see that many moves tried: only their seconds end these lines. */
  @Test
  @Timeout(300)
  void aLimitOfTimeHoldsForEachLine() throws Exception {
    String range = Batch.RANGE.replace("to: 4", "to: 3");
    try (SparkSession spark = Batch.local(2)) {
      SolveLines lines = new SolveLines(range, new Limits(1L << 60, 0.2, 1));
      Range.solve(spark, lines, 3, folder.resolve("run").toString());
    }
    assertEquals(12, Batch.results(folder.resolve("run")).lines().count());
  }

  @Test
  void nothingIsOverwritten() throws IOException {
    Path out = Files.createDirectory(folder.resolve("run"));
    try (SparkSession spark = Batch.local(1)) {
      assertThrows(
          FileAlreadyExistsException.class, () -> Range.solve(spark, LINES, 5, out.toString()));
    }
    try (Stream<Path> files = Files.list(out)) {
      assertFalse(files.findAny().isPresent());
    }
  }

  @Test
  void wrongRangesAreToldWithTheirPlace() {
    assertWrong("format", "format: range/1", "format: range/9");
    assertWrong("seeds", "to: 4", "to: 2");
    assertWrong("[colours]", "looks:", "colours: {}\nlooks:");
    assertWrong("sizes.mat", "mat: {}", "mat: 3");
    assertThrows(IllegalArgumentException.class, () -> new Limits(0L, null, 1));
    assertThrows(IllegalArgumentException.class, () -> new Limits(null, 0.0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Limits(null, null, 1001));
  }

  private static void assertWrong(String place, String right, String wrong) {
    assertTrue(Batch.RANGE.contains(right));
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> new RangeFile(Batch.RANGE.replace(right, wrong)))
            .getMessage();
    assertTrue(message.startsWith(place), message);
  }
}
