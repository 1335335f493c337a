package lozengy.examples;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.cli.command.Lozengy;
import lozengy.cli.process.Terminal;
import lozengy.solver.Solver;

/**
 * What the README's tour shows: the commands there, run on copies of the example briefs. As a
 * program it makes anew what is kept of it.
 *
 * @param arrangement text of the demonstration's arrangement file
 * @param chart text of its chart
 * @param screens what the terminal shows, by the command as the README gives it
 * @param codes the exit codes, by the same
 */
record Tour(
    String arrangement, String chart, Map<String, String> screens, Map<String, Integer> codes) {

  static final String SOLVE = "./lozengy solve examples/saltmarsh-throw.yaml";
  static final String CHECK = "./lozengy check examples/saltmarsh-throw.arrangement.json";
  static final String IMPOSSIBLE = "./lozengy solve examples/cannot-be-done.yaml";

  /** What becomes of the demonstration, in its order. */
  static final List<String> LIFE =
      List.of(
          "./lozengy mark examples/saltmarsh-throw.arrangement.json --step 1-3 --on 2026-01-04",
          "./lozengy mark examples/saltmarsh-throw.arrangement.json --made strip1..strip3"
              + " --on 2026-01-18",
          "./lozengy mark examples/saltmarsh-throw.arrangement.json --made strip4 --bought"
              + " SND=1ball --gone THR --on 2026-01-25",
          "./lozengy solve examples/saltmarsh-throw.arrangement.json -o examples/again.json"
              + " | tail -13",
          "./lozengy mark examples/again.json --joined strip1..strip4 --made strip5 --on"
              + " 2026-02-08",
          "./lozengy report examples/again.json | head -9");

  /** All commands that the README shows, in its order. */
  static List<String> commands() {
    List<String> commands = new ArrayList<>(List.of(SOLVE, CHECK, IMPOSSIBLE));
    commands.addAll(LIFE);
    return commands;
  }

  /** The arrangement, where it is kept. */
  static Path arrangementFile() {
    return ExampleBriefs.file("tour").resolve("saltmarsh-throw.arrangement.json");
  }

  /** The chart, where it is kept. */
  static Path chartFile() {
    return ExampleBriefs.file("tour").resolve("saltmarsh-throw.svg");
  }

  /** The README, which shows the screens. */
  static Path readme() {
    return ExampleBriefs.file("..").resolve("README.md");
  }

  /**
   * Takes the tour.
   *
   * @param folder an empty folder to work in
   */
  static Tour take(Path folder) throws IOException {
    Path examples = Files.createDirectory(folder.resolve("examples"));
    for (String name : new String[] {"saltmarsh-throw.yaml", "cannot-be-done.yaml"}) {
      Files.copy(ExampleBriefs.file(name), examples.resolve(name));
    }
    Map<String, String> screens = new LinkedHashMap<>();
    Map<String, Integer> codes = new LinkedHashMap<>();
    String arrangement = "";
    for (String command : commands()) {
      String[] parts = command.split(" \\| ");
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      codes.put(command, run(folder, parts[0], out));
      String screen = out.toString(StandardCharsets.UTF_8).replace(examples.toString(), "examples");
      screens.put(command, parts.length == 1 ? screen : part(screen, parts[1]));
      if (command.equals(SOLVE)) {
        arrangement = Files.readString(examples.resolve("saltmarsh-throw.arrangement.json"));
      }
    }
    return new Tour(
        arrangement, Files.readString(examples.resolve("saltmarsh-throw.svg")), screens, codes);
  }

  /** The first or the last lines of a screen, as {@code head -9} or {@code tail -9} shows them. */
  private static String part(String screen, String filter) {
    String[] words = filter.split(" -");
    List<String> lines = screen.lines().toList();
    int most = Math.min(lines.size(), Integer.parseInt(words[1]));
    boolean head = words[0].equals("head");
    List<String> shown =
        head ? lines.subList(0, most) : lines.subList(lines.size() - most, lines.size());
    return String.join("\n", shown) + "\n";
  }

  /** Makes what is kept of the tour anew; to be run in the project's folder. */
  public static void main(String[] args) throws IOException {
    System.setProperty("basedir", "examples");
    Tour tour = take(Files.createTempDirectory(Path.of("examples", "target"), "tour"));
    Files.createDirectories(chartFile().getParent());
    Files.writeString(arrangementFile(), tour.arrangement());
    Files.writeString(chartFile(), tour.chart());
    String readme = Files.readString(readme());
    for (Map.Entry<String, String> screen : tour.screens().entrySet()) {
      String kept = screenIn(readme, screen.getKey());
      String head = head(screen.getKey());
      readme = readme.replace(head + kept + CLOSING, head + screen.getValue() + CLOSING);
    }
    Files.writeString(readme(), readme);
  }

  /** What a README shows of a command. */
  static String screenIn(String readme, String command) {
    int start = readme.indexOf(head(command)) + head(command).length();
    return readme.substring(start, readme.indexOf(CLOSING, start));
  }

  private static final String CLOSING = "```\n";

  private static String head(String command) {
    return "```\n$ " + command + "\n";
  }

  private static int run(Path folder, String command, ByteArrayOutputStream out) {
    String[] words = command.replace("examples/", folder + "/examples/").split(" ");
    String[] arguments = Arrays.copyOfRange(words, 1, words.length);
    Terminal terminal =
        new Terminal(InputStream.nullInputStream(), out, out, false, false, () -> () -> false);
    int code = Lozengy.commandLine(terminal, Solver::solve).execute(arguments);
    terminal.flush();
    return code;
  }
}
