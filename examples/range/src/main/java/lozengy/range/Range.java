package lozengy.range;

import static org.apache.spark.sql.functions.expr;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.hadoop.fs.FileAlreadyExistsException;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;

/**
 * Solves a range of briefs on a cluster. {@code expand} writes its lines, as batch reads them;
 * {@code solve} writes their results into a folder.
 */
public final class Range {

  private static final String USAGE =
      """
      expand RANGE
      solve RANGE FOLDER [--moves N] [--seconds N] [--best-of N] [--lines-per-task N]""";

  private static final long LINES_PER_TASK = 32;

  private Range() {}

  /** Carries out a command; the file of the range is one of the machine where it runs. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length == 2 && arguments[0].equals("expand")) {
      expand(new RangeFile(Files.readString(java.nio.file.Path.of(arguments[1]))));
    } else if (arguments.length >= 3 && arguments[0].equals("solve")) {
      Map<String, String> options = options(List.of(arguments).subList(3, arguments.length));
      Limits limits =
          new Limits(
              options.containsKey("--moves") ? Long.valueOf(options.get("--moves")) : null,
              options.containsKey("--seconds") ? Double.valueOf(options.get("--seconds")) : null,
              Integer.parseInt(options.getOrDefault("--best-of", "1")));
      String perTask = options.getOrDefault("--lines-per-task", Long.toString(LINES_PER_TASK));
      String range = Files.readString(java.nio.file.Path.of(arguments[1]));
      try (SparkSession spark = SparkSession.builder().appName("range").getOrCreate()) {
        solve(spark, new SolveLines(range, limits), Long.parseLong(perTask), arguments[2]);
      }
    } else {
      throw new IllegalArgumentException("Give one of:\n" + USAGE);
    }
  }

  private static Map<String, String> options(List<String> words) {
    Map<String, String> options = new HashMap<>();
    Set<String> known = Set.of("--moves", "--seconds", "--best-of", "--lines-per-task");
    for (int i = 0; i < words.size(); i += 2) {
      if (!known.contains(words.get(i)) || i + 1 == words.size()) {
        throw new IllegalArgumentException(words.get(i) + ": give one of:\n" + USAGE);
      }
      options.put(words.get(i), words.get(i + 1));
    }
    return options;
  }

  private static void expand(RangeFile file) {
    PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
    for (long i = 0; i < file.count(); i++) {
      out.print(file.item(i).json() + "\n");
    }
    out.flush();
  }

  /**
   * Solves a range. The rows are written before anything else is made of them, and never solved
   * twice for that.
   *
   * @param linesPerTask how many lines are solved, and again where an executor is lost, in one go
   * @param folder where all goes; must not exist
   */
  static void solve(SparkSession spark, SolveLines lines, long linesPerTask, String folder)
      throws IOException {
    if (linesPerTask < 1) {
      throw new IllegalArgumentException("--lines-per-task " + linesPerTask + ": give 1 or more");
    }
    Path root = new Path(folder);
    FileSystem files = root.getFileSystem(spark.sparkContext().hadoopConfiguration());
    if (files.exists(root)) {
      throw new FileAlreadyExistsException(folder + " exists; name a new folder");
    }
    long count = new RangeFile(lines.range()).count();
    int tasks = Math.toIntExact((count + linesPerTask - 1) / linesPerTask);
    String rows = folder + "/results.parquet";
    spark
        .range(0, count, 1, tasks)
        .mapPartitions(lines, Encoders.row(SolveLines.ROW))
        .write()
        .parquet(rows);
    Dataset<Row> solved = spark.read().schema(SolveLines.ROW).parquet(rows);
    solved.sort("line").select("result").write().text(folder + "/results.jsonl");
    summary(solved).coalesce(1).write().option("header", true).csv(folder + "/summary.csv");
    try (OutputStream out = files.create(new Path(root, "gallery.html"), false)) {
      out.write(
          GalleryPage.of(best(solved).limit(GalleryPage.MOST).collectAsList())
              .getBytes(StandardCharsets.UTF_8));
    }
  }

  /** What became of each size, palette and look. */
  private static Dataset<Row> summary(Dataset<Row> solved) {
    return solved
        .groupBy("size", "palette", "look")
        .agg(
            expr("count(*) as lines"),
            expr("count_if(outcome = 'found') as found"),
            expr("count_if(outcome = 'impossible') as impossible"),
            expr("count_if(outcome = 'unfinished') as unfinished"),
            expr("count_if(outcome = 'error') as error"),
            expr("min(objective) as worst"),
            expr("percentile(objective, 0.5) as median"),
            expr("max(objective) as best"),
            expr(
                "max_by(line, struct(objective, -line)) filter (where outcome = 'found') as"
                    + " best_line"),
            expr("min(line) as first_line"))
        .sort("first_line")
        .drop("first_line");
  }

  /**
   * The line of each size, palette and look whose objective is highest, of equal ones the first.
   */
  private static Dataset<Row> best(Dataset<Row> solved) {
    return solved
        .where("outcome = 'found'")
        .groupBy("size", "palette", "look")
        .agg(expr("max_by(struct(*), struct(objective, -line)) as best"))
        .select("best.*")
        .sort("line");
  }
}
