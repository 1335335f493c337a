package lozengy.browser;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Runs the built program as a user would. */
final class Program {

  private Program() {}

  /** What a run gave. */
  record Result(int code, String words) {}

  /** An example's file. */
  static Path example(String name) {
    return Path.of(System.getProperty("lozengy.examples"), name);
  }

  /** Runs the program in a folder, and expects that it is done as asked. */
  static void done(Path folder, String... arguments) throws Exception {
    Result result = run(folder, arguments);
    if (result.code() != 0) {
      throw new AssertionError(String.join(" ", arguments) + ": " + result.words());
    }
  }

  /** Runs the program in a folder. */
  static Result run(Path folder, String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-jar");
    command.add(System.getProperty("lozengy.jar"));
    command.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String words = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Result(process.waitFor(), words);
  }
}
