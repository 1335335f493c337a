package lozengy.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.record.Results;
import lozengy.model.brief.BriefWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Runs {@code batch} over many small briefs with one worker and more: lines a second, and the heap
 * that is in use after collections in each tenth of a run, which shows whether it grows.
 */
@Command(
    name = "batch",
    mixinStandardHelpOptions = true,
    description = "Many briefs in a row: lines a second by workers, and the heap over time.")
final class BatchRuns implements Callable<Integer> {

  private static final int PARTS = 10;
  private static final Path JAR = Path.of("cli", "target", "lozengy.jar");

  /** What a collection leaves, in the JVM's unified log: {@code 25M->5M(64M)}. */
  private static final Pattern COLLECTION = Pattern.compile("(\\d+)M->(\\d+)M\\(");

  private static final Pattern FOUND = Pattern.compile("\"outcome\": ?\"found\"");

  @Option(names = "--briefs", split = ",", description = "Briefs, in turn: ${DEFAULT-VALUE}.")
  private List<String> briefs = List.of("cushion", "cushion-tight", "lap-all-differ", "baby");

  @Option(names = "--lines", description = "How many lines: ${DEFAULT-VALUE}.")
  private int lines = 1000;

  @Option(names = "--moves", description = "Moves for a line: ${DEFAULT-VALUE}.")
  private long moves = 50_000;

  @Option(names = "--workers", split = ",", description = "Workers: ${DEFAULT-VALUE}.")
  private List<Integer> workers = List.of(1, 2);

  @Option(names = "--heap", description = "Heap of the JVM in MiB: ${DEFAULT-VALUE}.")
  private int heapMib = 128;

  @Mixin private Output output;

  @Override
  public Integer call() throws IOException {
    // builds what is stale, outside of what is timed
    Commands.run(List.of("./lozengy", "--version"));
    Path folder = Files.createTempDirectory("lozengy-batch");
    Path input = folder.resolve("briefs.jsonl");
    writeLines(input);
    try (Results.Writer results = output.open(columns())) {
      for (int each : workers) {
        results.row(run(folder, input, each));
      }
    }
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
    return 0;
  }

  private static List<String> columns() {
    List<String> columns = new ArrayList<>(List.of("workers", "lines", "moves", "heap_limit_mib"));
    columns.addAll(List.of("seconds", "exit", "found", "lines_per_second"));
    for (int part = 1; part <= PARTS; part++) {
      columns.add("heap_mib_" + part);
    }
    return columns;
  }

  private void writeLines(Path input) throws IOException {
    List<String> all = new ArrayList<>();
    for (String name : briefs) {
      String text = BriefWriter.text(PlantedBrief.of(BriefSet.named(name)).blanket().brief());
      // A line break stands only between the parts of a document, never within a text.
      all.add(text.replace('\n', ' '));
    }
    List<String> written = new ArrayList<>();
    for (int line = 0; line < lines; line++) {
      written.add(all.get(line % all.size()));
    }
    Files.write(input, written);
  }

  private List<String> run(Path folder, Path input, int atOnce) throws IOException {
    Path log = folder.resolve("gc.log");
    Path answers = folder.resolve("answers.jsonl");
    String command =
        String.format(
            Locale.ROOT,
            "exec '%s' -Xmx%dm -Xlog:gc:file='%s' -jar '%s' batch '%s' --workers %d --moves %d >'%s'",
            Commands.java(),
            heapMib,
            log,
            JAR,
            input,
            atOnce,
            moves,
            answers);
    Commands.Ended ended = Commands.run(List.of("sh", "-c", command));
    List<String> cells = new ArrayList<>();
    cells.add(Integer.toString(atOnce));
    cells.add(Integer.toString(lines));
    cells.add(Long.toString(moves));
    cells.add(Integer.toString(heapMib));
    cells.add(Output.seconds(ended.seconds()));
    cells.add(Integer.toString(ended.exit()));
    try (var read = Files.lines(answers)) {
      cells.add(Long.toString(read.filter(each -> FOUND.matcher(each).find()).count()));
    }
    cells.add(String.format(Locale.ROOT, "%.2f", lines / ended.seconds()));
    cells.addAll(heap(log));
    return cells;
  }

  /** The most that collections left in use, in each tenth of them. */
  private static List<String> heap(Path log) throws IOException {
    List<Integer> left = new ArrayList<>();
    for (String line : Files.readAllLines(log)) {
      Matcher collection = COLLECTION.matcher(line);
      if (collection.find()) {
        left.add(Integer.valueOf(collection.group(2)));
      }
    }
    List<String> most = new ArrayList<>();
    for (int part = 0; part < PARTS; part++) {
      List<Integer> these =
          left.subList(left.size() * part / PARTS, left.size() * (part + 1) / PARTS);
      most.add(these.stream().max(Integer::compare).map(String::valueOf).orElse(""));
    }
    return most;
  }
}
