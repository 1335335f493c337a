package lozengy.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.record.Results;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Runs the command itself, each time in a new process: solves of the set, judged from the files
 * that they write, and how long short commands take beside the least that a Java program takes.
 */
@Command(
    name = "cold",
    mixinStandardHelpOptions = true,
    description = "The command as a process: solves from a cold start, and starts alone.")
public final class ColdRuns implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of("what", "brief", "pieces", "seed", "limit_s", "seconds", "exit", "valid", "score");

  private static final String LAUNCHER = "./lozengy";

  @Option(names = "--briefs", split = ",", description = "Names of briefs; by default the set.")
  private List<String> briefs = BriefSet.all().stream().map(BriefSpec::name).toList();

  @Option(names = "--seeds", split = ",", description = "Seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L, 2L, 3L, 4L, 5L);

  @Option(names = "--limits", split = ",", description = "Limits in seconds: ${DEFAULT-VALUE}.")
  private List<Double> limits = List.of(0.3, 1.0);

  @Option(names = "--starts", description = "How often each short command: ${DEFAULT-VALUE}.")
  private int starts = 20;

  @Option(names = "--demo", description = "Brief for the short commands: ${DEFAULT-VALUE}.")
  private Path demo = Path.of("examples", "saltmarsh-throw.yaml");

  @Mixin private Output output;

  private Results.Writer results;
  private Path folder;

  @Override
  public Integer call() throws IOException {
    // builds what is stale, outside of what is timed
    Commands.run(List.of(LAUNCHER, "--version"));
    folder = Files.createTempDirectory("lozengy-cold");
    try (Results.Writer writer = output.open(COLUMNS)) {
      results = writer;
      starts();
      for (String name : briefs) {
        PlantedBrief made = PlantedBrief.of(BriefSet.named(name));
        Path file = DumpBriefs.write(folder, made);
        for (double limit : limits) {
          for (long seed : seeds) {
            solve(made, file, limit, seed);
          }
        }
      }
    } finally {
      remove();
    }
    return 0;
  }

  /** In turns, so that what else the machine does falls on all alike. */
  private void starts() throws IOException {
    if (starts == 0) {
      return;
    }
    Path answer = folder.resolve("demo.json");
    Commands.Ended made =
        Commands.run(List.of(LAUNCHER, "solve", demo.toString(), "-o", answer.toString()));
    if (made.exit() != 0) {
      throw new IllegalStateException("solving the demo ended with " + made.exit());
    }
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put(
        "hello",
        List.of(
            Commands.java(),
            "-cp",
            Path.of("benchmarks", "target", "classes").toString(),
            Hello.class.getName()));
    commands.put("version", List.of(LAUNCHER, "--version"));
    commands.put("version without launcher", withoutLauncher("--version"));
    commands.put("check", List.of(LAUNCHER, "check", answer.toString()));
    commands.put("check without launcher", withoutLauncher("check", answer.toString()));
    for (int i = 0; i < starts; i++) {
      for (Map.Entry<String, List<String>> command : commands.entrySet()) {
        Commands.Ended ended = Commands.run(command.getValue());
        results.row(
            List.of(
                command.getKey(),
                "",
                "",
                "",
                "",
                Output.seconds(ended.seconds()),
                Integer.toString(ended.exit()),
                "",
                ""));
      }
    }
  }

  /** The JVM alone, as the launcher starts it for a short command. */
  private static List<String> withoutLauncher(String... words) throws IOException {
    Path archive =
        Path.of("target", "launcher", "classes-" + System.getProperty("java.version") + ".jsa");
    List<String> command =
        new ArrayList<>(
            List.of(
                Commands.java(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xshare:auto",
                "-XX:SharedArchiveFile=" + archive.toRealPath(),
                "-cp",
                Path.of("cli", "target", "lozengy.jar").toRealPath().toString(),
                "lozengy.cli.Main"));
    command.addAll(List.of(words));
    return command;
  }

  private void solve(PlantedBrief made, Path brief, double limit, long seed) throws IOException {
    Path answer = folder.resolve("answer.json");
    Files.deleteIfExists(answer);
    Commands.Ended ended =
        Commands.run(
            List.of(
                LAUNCHER,
                "solve",
                brief.toString(),
                "--seconds",
                Double.toString(limit),
                "--seed",
                Long.toString(seed),
                "-o",
                answer.toString(),
                "--overwrite"));
    List<String> cells = new ArrayList<>();
    cells.add("solve");
    cells.add(made.spec().name());
    cells.add(Integer.toString(made.blanket().pieceCount()));
    cells.add(Long.toString(seed));
    cells.add(Double.toString(limit));
    cells.add(Output.seconds(ended.seconds()));
    cells.add(Integer.toString(ended.exit()));
    if (ended.exit() == 0) {
      Sequences sequences = ArrangementReader.read(answer).sequences();
      cells.add(Check.faults(made.blanket(), sequences).isEmpty() ? "yes" : "no");
      cells.add(Output.points(Scorer.score(made.blanket(), sequences, Optional.empty()).total()));
    } else {
      cells.add("");
      cells.add("");
    }
    results.row(cells);
    System.out.println(String.join(" ", cells));
  }

  private void remove() throws IOException {
    List<Path> files;
    try (var listed = Files.list(folder)) {
      files = listed.toList();
    }
    for (Path file : files) {
      Files.delete(file);
    }
    Files.delete(folder);
  }
}
