package lozengy.range;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.spark.sql.SparkSession;

/** What batch on one machine makes of a range, and what the engine has made of it. */
final class Batch {

  static final String RANGE =
      """
      format: range/1
      document:
        format: lozengy-brief/1
        title: Mat
        layout: { setting: straight, across: 3, down: 2 }
        motifs: { square: { side: 9 cm, rounds: [{ metres: 1.4 }, { metres: 3.3 }] } }
      sizes:
        mat: {}
        runner: { title: Läufer, layout: { across: 5 } }
      palettes:
        shore:
          yarns:
            - { code: PEA, name: Peat, colour: "#553527", left: 40 m }
            - { code: TID, name: Tidewater, colour: "#3f8a90", left: 40 m }
            - { code: FOA, name: Foam, colour: "#f1eee3", left: 40 m }
        poor:
          yarns:
            - { code: PEA, name: Peat, colour: "#553527", left: 1 m }
        wrong:
          yarns:
            - { code: PEA, name: Peat, colour: peat, left: 40 m }
      looks:
        plain: {}
        mirrored: { look: { symmetry: left-right } }
      seeds: { from: 3, to: 4 }
      """;

  static final long MOVES = 2_000;

  private Batch() {}

  /** The lines of a range as one text. */
  static String lines(String range) {
    RangeFile file = new RangeFile(range);
    StringBuilder lines = new StringBuilder();
    for (long i = 0; i < file.count(); i++) {
      lines.append(file.item(i).json()).append('\n');
    }
    return lines.toString();
  }

  /** The results that the built program writes. */
  static String results(Path folder, String range, String... options)
      throws IOException, InterruptedException {
    Path in = Files.writeString(folder.resolve("lines.jsonl"), lines(range));
    Path out = folder.resolve("batch.jsonl");
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                System.getProperty("lozengy.jar"),
                "batch",
                in.toString()));
    command.addAll(List.of(options));
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    if (process.waitFor() != 0) {
      throw new IllegalStateException("batch ended with " + process.exitValue());
    }
    return Files.readString(out);
  }

  /** The results that a run has written, its parts one after the other. */
  static String results(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("results.jsonl"))) {
      StringBuilder all = new StringBuilder();
      for (Path part :
          files
              .filter(each -> each.getFileName().toString().startsWith("part-"))
              .sorted()
              .toList()) {
        all.append(Files.readString(part));
      }
      return all.toString();
    }
  }

  static SparkSession local(int cores) {
    return SparkSession.builder()
        .master("local[" + cores + "]")
        .config("spark.ui.enabled", false)
        .config("spark.log.level", "ERROR")
        .config("spark.driver.bindAddress", "127.0.0.1")
        .getOrCreate();
  }
}
