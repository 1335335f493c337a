package lozengy.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;

/**
 * Runs the commands once on a small blanket in a temporary folder, so that the launcher learns
 * which classes a run loads.
 */
final class Rehearsal {

  private Rehearsal() {}

  /** Runs the commands. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("lozengy-rehearsal");
    try {
      String brief = folder.resolve("brief.yaml").toString();
      String answer = folder.resolve("brief.arrangement.json").toString();
      String again = folder.resolve("again.arrangement.json").toString();
      run(List.of("new", "--across", "2", "--down", "2", "-o", brief));
      // what briefs often ask for beyond the defaults
      String text = Files.readString(Path.of(brief));
      Files.writeString(Path.of(brief), text.replace("copies:", "copies: 1 #"));
      List<List<String>> commands =
          List.of(
              List.of("--help"),
              List.of("--version"),
              List.of("need", brief),
              List.of("solve", brief, "--moves", "20000"),
              List.of("solve", brief, "--moves", "20000", "--json", "--overwrite"),
              List.of("check", answer),
              List.of("next", answer),
              List.of("mark", answer, "--made", "r1c1"),
              List.of("solve", answer, "--lock", "r2c1", "--ban", "triangles=RUS", "-o", again),
              List.of("need", answer),
              List.of("compare", answer, answer),
              List.of("report", answer),
              List.of("report", answer, "--as", "svg", "-o", "-"),
              List.of("report", answer, "--as", "html", "-o", "-"));
      commands.forEach(Rehearsal::run);
    } finally {
      remove(folder);
    }
  }

  private static void run(List<String> command) {
    int code = Main.run(silent(), command.toArray(String[]::new));
    if (code != ExitCode.DONE.code()) {
      throw new IllegalStateException(command + " ended with " + code);
    }
  }

  private static Terminal silent() {
    return new Terminal(
        InputStream.nullInputStream(),
        OutputStream.nullOutputStream(),
        OutputStream.nullOutputStream(),
        true,
        false,
        () -> () -> false);
  }

  private static void remove(Path folder) throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
