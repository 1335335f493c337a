package lozengy.range;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Executors as processes of their own, submitted as on a cluster. */
class LostExecutorTest {

  private static final Duration PATIENCE = Duration.ofMinutes(8);
  private static final String MOVES = "300000";

  @TempDir private Path folder;

  /** Kills one when the first of its lines are solved; another takes its place. */
  @Test
  void linesOfALostExecutorAreSolvedAgain() throws Exception {
    Path range = Path.of("ranges/coast.yaml").toAbsolutePath();
    String batch = Batch.results(folder, Files.readString(range), "--moves", MOVES);
    Path out = folder.resolve("run");
    Path log = folder.resolve("log");
    ProcessBuilder submit =
        new ProcessBuilder(
            Path.of("submit").toAbsolutePath().toString(),
            "--master",
            "local-cluster[2,1,1024]",
            "--conf",
            "spark.ui.enabled=false",
            "solve",
            range.toString(),
            out.toString(),
            "--moves",
            MOVES,
            "--lines-per-task",
            "1");
    submit.redirectErrorStream(true).redirectOutput(log.toFile()).directory(folder.toFile());
    Process driver = submit.start();
    try {
      Instant latest = Instant.now().plus(PATIENCE);
      while (solved(out) < 4 && driver.isAlive() && Instant.now().isBefore(latest)) {
        Thread.sleep(100);
      }
      List<ProcessHandle> executors = executors(driver);
      assertEquals(2, executors.size(), () -> text(log));
      executors.get(0).destroyForcibly();
      assertEquals(0, driver.waitFor(), () -> text(log));
    } finally {
      driver.descendants().forEach(ProcessHandle::destroyForcibly);
      driver.destroyForcibly();
    }
    assertTrue(text(log).contains("ExecutorLostFailure"), text(log));
    assertEquals(batch, Batch.results(out));
  }

  private static long solved(Path out) throws IOException {
    if (!Files.exists(out)) {
      return 0;
    }
    try (Stream<Path> files = Files.walk(out)) {
      return files
          .filter(each -> each.toString().endsWith(".parquet") && Files.isRegularFile(each))
          .count();
    } catch (UncheckedIOException e) {
      // A file was moved meanwhile.
      return 0;
    }
  }

  private static List<ProcessHandle> executors(Process driver) {
    return driver
        .descendants()
        .filter(
            each ->
                each.info()
                    .commandLine()
                    .filter(line -> line.contains("CoarseGrainedExecutorBackend"))
                    .isPresent())
        .toList();
  }

  private static String text(Path log) {
    try {
      return Files.readString(log);
    } catch (IOException e) {
      return e.toString();
    }
  }
}
