package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Processes whose disk is full, whose folder or temporary folder cannot be written, whose reader
 * leaves, that have little memory or are killed: they end as documented, and leave nothing
 * half-written. {@code -Dlozengy.faults=100} kills more often than a usual run does.
 */
class FaultsTest {

  private static final int KILLS = Integer.getInteger("lozengy.faults", 1);
  private static final int MOST_MICROSECONDS = 60_000;
  private static final long STUCK_SECONDS = 180;
  private static final String ON_LINUX = "needs the shell and the devices of Linux";

  @TempDir Path folder;
  private Path in;
  private Path out;

  /** How a process ended. */
  private record End(int code, String out, String err) {}

  @BeforeEach
  void solve() throws IOException {
    Assumptions.assumeTrue(Files.exists(Path.of("/dev/full")), ON_LINUX);
    in = Files.createDirectory(folder.resolve("in"));
    out = Files.createDirectory(folder.resolve("out"));
    Briefs.solved(in);
    String line = Run.of("new", "--across", "2", "--down", "2", "--json").out().replace("\n", "");
    Briefs.write(in, "lines.jsonl", (line + "\n").repeat(4));
  }

  /**
   * The commands that write files, in folder {@code out}, with a seed of which their bytes come.
   */
  private List<List<String>> writing(Path to, int seed) {
    String brief = in.resolve("small.yaml").toString();
    String plan = in.resolve("small.arrangement.json").toString();
    String seeded = Integer.toString(seed);
    List<List<String>> commands = new ArrayList<>();
    commands.add(
        List.of("solve", brief, "-o", to.resolve("plan.json").toString(), "--seed", seeded));
    commands.add(
        List.of(
            "substitute",
            plan,
            "NAV",
            "--take",
            seed == 1 ? "NAV=BRO" : "NAV=FOR",
            "-o",
            to.resolve("taken.json").toString()));
    commands.add(
        List.of("gallery", brief, "-o", to.resolve("gallery.html").toString(), "--seed", seeded));
    commands.replaceAll(
        command ->
            Stream.concat(command.stream(), Stream.of("--moves", "200", "--threads", "1"))
                .toList());
    commands.add(
        List.of(
            "report",
            plan,
            "--as",
            seed == 1 ? "pdf" : "html",
            "-o",
            to.resolve("page").toString()));
    commands.add(List.of("report", plan, "--as", "tables", "-o", to.resolve("tables").toString()));
    commands.add(
        List.of(
            "sizes",
            brief,
            seed == 1 ? "small=2x2" : "small=2x3",
            "large=4x4",
            "--briefs",
            to.resolve("briefs").toString()));
    commands.add(
        List.of(
            "new",
            "--across",
            Integer.toString(1 + seed),
            "--down",
            "2",
            "-o",
            to.resolve("new.yaml").toString()));
    return commands;
  }

  private List<List<String>> overwriting(Path to, int seed) {
    List<List<String>> commands = writing(to, seed);
    commands.replaceAll(
        command -> Stream.concat(command.stream(), Stream.of("--overwrite")).toList());
    return commands;
  }

  @Test
  void aFullDiskLeavesEverythingAsItWas() throws Exception {
    for (List<String> command : writing(out, 1)) {
      assertEquals(Map.of(), contents(out));
      End end = inShell("ulimit -f 1; exec \"$@\"", "-Xmx256m", command);
      assertRefused(command, end);
    }
    assertEquals(Map.of(), contents(out));
    Map<String, String> before = contents(in);
    List<String> mark =
        List.of("mark", in.resolve("small.arrangement.json").toString(), "--made", "row1");
    assertRefused(mark, inShell("ulimit -f 1; exec \"$@\"", "-Xmx256m", mark));
    assertEquals(before, contents(in));
  }

  @Test
  void anOutputThatIsFullIsRefused() throws Exception {
    String plan = in.resolve("small.arrangement.json").toString();
    for (List<String> command :
        List.of(
            List.of("check", plan),
            List.of("need", plan, "--json"),
            List.of("report", plan, "--as", "pdf", "-o", "-"),
            List.of("schema", "brief"),
            List.of("batch", in.resolve("lines.jsonl").toString(), "--moves", "200"))) {
      assertRefused(command, inShell("exec \"$@\" >/dev/full", "-Xmx256m", command));
    }
  }

  @Test
  void aFolderThatCannotBeWrittenIsRefused() throws Exception {
    // nobody writes there, the superuser neither
    for (List<String> command : writing(Path.of("/proc"), 1)) {
      assertRefused(command, inShell("exec \"$@\"", "-Xmx256m", command));
    }
  }

  @Test
  void noTemporaryFolderIsNeeded() throws Exception {
    for (List<String> command : writing(out, 1)) {
      End end = inShell("exec \"$@\"", "-Djava.io.tmpdir=/proc", command);
      assertEquals(0, end.code(), command + "\n" + end.err());
    }
    String plan = in.resolve("small.arrangement.json").toString();
    for (String form : List.of("png", "pdf", "tables")) {
      List<String> command = List.of("report", plan, "--as", form, "-o", "-");
      End end = inShell("exec \"$@\"", "-Djava.io.tmpdir=/proc", command);
      assertEquals(0, end.code(), command + "\n" + end.err());
    }
  }

  @Test
  void aReaderThatLeavesIsNoFailure() throws Exception {
    String plan = in.resolve("small.arrangement.json").toString();
    for (List<String> command :
        List.of(
            List.of("report", plan),
            List.of("report", plan, "--as", "html", "-o", "-"),
            List.of("schema", "brief"))) {
      // its reader has left before anything is written; the exit code goes another way
      End end = inShell("{ { \"$@\"; echo $? >&3; } | exec true; } 3>&1", "-Xmx256m", command);
      assertEquals("0", end.out().strip(), command + "\n" + end.err());
      assertEquals("", end.err());
    }
  }

  @Test
  void littleMemoryIsToldAndLeavesNothing() throws Exception {
    String large = folder.resolve("large.yaml").toString();
    assertEquals(0, Run.of("new", "--across", "150", "--down", "150", "-o", large).code());
    List<String> command =
        List.of("solve", large, "-o", out.resolve("plan.json").toString(), "--moves", "10");
    End end = inShell("exec \"$@\"", "-Xmx32m", command);
    assertTrue(end.code() == 1 || end.code() == 2, end.code() + "\n" + end.err());
    assertTrue(end.err().contains("-Xmx"), end.err());
    assertFalse(end.err().contains("fault of the program"), end.err());
    assertEquals(Map.of(), contents(out));
  }

  /** Each file that a killed process leaves is one that a process which ends writes. */
  @Test
  void killedAtAnyMomentItLeavesWholeFiles() throws Exception {
    Map<String, List<String>> known = new TreeMap<>();
    for (int seed = 1; seed <= 2; seed++) {
      overwriting(out, seed).forEach(command -> assertEquals(0, Run.of(flat(command)).code()));
      contents(out)
          .forEach(
              (name, text) -> known.computeIfAbsent(name, each -> new ArrayList<>()).add(text));
    }
    SplittableRandom random = new SplittableRandom(20_260_102);
    int commands = writing(out, 1).size();
    for (int kill = 0; kill < KILLS * commands; kill++) {
      // each command in turn is the one that is killed, in a process that has worked before
      killOnce(kill % commands, 1 + random.nextInt(2), random.nextInt(MOST_MICROSECONDS));
      contents(out)
          .forEach(
              (name, text) -> {
                if (!Path.of(name).getFileName().toString().startsWith(".")) {
                  assertTrue(known.get(name).contains(text), name + " is half-written");
                }
              });
    }
    // whoever writes next clears away what the killed ones left
    overwriting(out, 1).forEach(command -> assertEquals(0, Run.of(flat(command)).code()));
    assertEquals(known.keySet(), contents(out).keySet());
  }

  @Test
  void aKilledBatchHasWrittenWhatItSays() throws Exception {
    String[] batch = {
      "batch", in.resolve("lines.jsonl").toString(), "--moves", "200", "--workers", "1"
    };
    String whole = Run.of(batch).out();
    SplittableRandom random = new SplittableRandom(20_260_103);
    for (int kill = 0; kill < KILLS; kill++) {
      Process process = new ProcessBuilder(java("-Xmx256m", List.of(batch))).start();
      process.getErrorStream().close();
      StringBuilder got = new StringBuilder();
      try (BufferedReader reader =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
        got.append(reader.readLine()).append('\n');
        spin(random.nextInt(MOST_MICROSECONDS));
        // which leaves the pipe open, with what is still in it
        process.toHandle().destroyForcibly();
        reader.lines().forEach(line -> got.append(line).append('\n'));
      }
      assertTrue(process.waitFor(STUCK_SECONDS, TimeUnit.SECONDS), "a killed process still runs");
      // the last line may be cut
      assertTrue(whole.startsWith(got.substring(0, got.length() - 1)), got.toString());
    }
  }

  /** Kills a process some microseconds after it has begun its third command. */
  private void killOnce(int first, int seed, int microseconds) throws Exception {
    List<String> words = new ArrayList<>();
    List<List<String>> commands = overwriting(out, seed);
    for (int i = 0; i < commands.size(); i++) {
      words.addAll(commands.get((first + i) % commands.size()));
      words.add(Worker.END);
    }
    List<String> call = new ArrayList<>(java("-Xmx256m", words));
    call.set(call.indexOf(Main.class.getName()), Worker.class.getName());
    Process process = new ProcessBuilder(call).redirectErrorStream(true).start();
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (int begun = 0; begun < 3; begun++) {
        assertEquals("begun", reader.readLine());
      }
      spin(microseconds);
      process.destroyForcibly();
    }
    assertTrue(process.waitFor(STUCK_SECONDS, TimeUnit.SECONDS), "a killed process still runs");
  }

  private static void spin(int microseconds) {
    long end = System.nanoTime() + TimeUnit.MICROSECONDS.toNanos(microseconds);
    while (System.nanoTime() < end) {
      Thread.onSpinWait();
    }
  }

  private static void assertRefused(List<String> command, End end) {
    assertEquals(2, end.code(), command + "\n" + end.err());
    assertNotEquals("", end.err());
    end.err()
        .lines()
        .forEach(line -> assertFalse(line.contains("fault of the program"), command + line));
    assertTrue(end.err().contains("lozengy: "), end.err());
  }

  private static List<String> java(String option, List<String> command) {
    List<String> call =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                option,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    call.addAll(command);
    return call;
  }

  private End inShell(String script, String option, List<String> command) throws Exception {
    List<String> call = new ArrayList<>(List.of("sh", "-c", script, "sh"));
    call.addAll(java(option, command));
    Path err = folder.resolve("err");
    Process process = new ProcessBuilder(call).redirectError(err.toFile()).start();
    process.getOutputStream().close();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(STUCK_SECONDS, TimeUnit.SECONDS), command + " does not end");
    return new End(process.exitValue(), printed, Files.readString(err));
  }

  /** The files below a folder by their names in it, each byte as a character. */
  private static Map<String, String> contents(Path folder) {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(each -> !each.equals(folder)).toList()) {
        String name = folder.relativize(file).toString();
        contents.put(
            name,
            Files.isDirectory(file)
                ? "a folder"
                : new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return contents;
  }

  private static String[] flat(List<String> command) {
    return command.toArray(String[]::new);
  }

  /** Runs commands one after another over and over, and says so before each. */
  static final class Worker {

    private static final String END = ";";

    private Worker() {}

    /** Runs until it is killed. */
    public static void main(String[] words) {
      while (true) {
        List<String> command = new ArrayList<>();
        for (String word : words) {
          if (!word.equals(END)) {
            command.add(word);
            continue;
          }
          System.out.println("begun");
          System.out.flush();
          Run.Result result = Run.of(flat(command));
          if (result.code() != 0) {
            System.exit(result.code());
          }
          command.clear();
        }
      }
    }
  }
}
