package lozengy.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import lozengy.benchmarks.peer.Stopwatch;

/** Runs commands as processes of their own, and times them. */
final class Commands {

  private Commands() {}

  /** How a process ended: its exit code, and its seconds from start to end. */
  record Ended(int exit, double seconds) {}

  /** Runs a command; what it prints is thrown away. */
  static Ended run(List<String> command) throws IOException {
    Stopwatch watch = new Stopwatch();
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try {
      int exit = process.waitFor();
      return new Ended(exit, watch.seconds());
    } catch (InterruptedException e) {
      process.destroy();
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while a command ran", e);
    }
  }

  /** The Java that this runs on. */
  static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }
}
