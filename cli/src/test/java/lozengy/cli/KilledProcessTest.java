package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.brief.PieceState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills processes that mark and solve, at random points, and looks at what they leave. {@code
 * -Dlozengy.kills=200} kills more often than a usual run does.
 */
class KilledProcessTest {

  private static final int KILLS = Integer.getInteger("lozengy.kills", 6);
  private static final int MOST_TICKS = 5;
  private static final int MOST_MICROSECONDS = 30_000;
  private static final long STUCK_SECONDS = 120;

  @TempDir Path folder;
  private Path file;
  private Path again;

  @BeforeEach
  void solve() {
    file = Path.of(Briefs.solved(folder));
    again = folder.resolve("again.json");
    assertEquals(0, Run.of("mark", file.toString(), "--joined", "r1c1", "--made", "top1").code());
  }

  @Test
  void aKilledProcessLeavesNoBrokenFile() throws Exception {
    SplittableRandom random = new SplittableRandom(20_260_101);
    Arrangement before = ArrangementReader.read(file).scored();
    for (int kill = 0; kill < KILLS; kill++) {
      killOnce(random.nextInt(MOST_TICKS), random.nextInt(MOST_MICROSECONDS));
      assertWhole(file, before);
      if (Files.exists(again)) {
        assertWhole(again, before);
      }
    }
    // what the killed ones left half-written is gone once the file is written again
    assertEquals(0, Run.of("mark", file.toString(), "--planned", "row2").code());
    assertEquals(0, Run.of("mark", file.toString(), "--made", "row2").code());
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> parts =
          files
              .filter(path -> path.getFileName().toString().startsWith("." + file.getFileName()))
              .toList();
      assertEquals(List.of(), parts);
    }
  }

  /** Starts a process, waits for some of its rounds and some microseconds more, and kills it. */
  private void killOnce(int ticks, int microseconds) throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Worker.class.getName(),
                file.toString(),
                again.toString())
            .redirectErrorStream(true)
            .start();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (int tick = 0; tick <= ticks; tick++) {
        assertEquals("tick", out.readLine());
      }
      long end = System.nanoTime() + TimeUnit.MICROSECONDS.toNanos(microseconds);
      while (System.nanoTime() < end) {
        Thread.onSpinWait();
      }
      process.destroyForcibly();
    }
    assertTrue(process.waitFor(STUCK_SECONDS, TimeUnit.SECONDS), "a killed process still runs");
  }

  /** The file can be read, its figures are right, and what is worked is as it was. */
  private static void assertWhole(Path path, Arrangement before) {
    Arrangement now = ArrangementReader.read(path).scored();
    for (int piece = 0; piece < before.blanket().pieceCount(); piece++) {
      if (before.blanket().state(piece) == PieceState.JOINED) {
        assertEquals(PieceState.JOINED, now.blanket().state(piece));
      }
      if (before.blanket().state(piece) != PieceState.PLANNED) {
        assertTrue(Arrays.equals(before.sequences().of(piece), now.sequences().of(piece)));
      }
    }
    Run.Result check = Run.of("check", path.toString());
    assertEquals(0, check.code(), check.out() + check.err());
  }

  /** Marks and solves over and over, and says so before each round. */
  static final class Worker {

    private Worker() {}

    /** Runs until it is killed. */
    public static void main(String[] arguments) throws IOException {
      String file = arguments[0];
      String again = new File(arguments[1]).getPath();
      for (int round = 0; true; round++) {
        System.out.println("tick");
        System.out.flush();
        String state = round % 2 == 0 ? "--made" : "--planned";
        work("mark", file, state, "row2,strip3", "--left", "NAV=" + (400 + round % 7) + "m");
        work("mark", file, "--undo");
        work("mark", file, state, "row2");
        if (round % 4 == 3) {
          work(
              "solve",
              file,
              "-o",
              again,
              "--overwrite",
              "--moves",
              "200",
              "--threads",
              "1",
              "--seed",
              Integer.toString(round));
        }
      }
    }

    private static void work(String... command) {
      int code = Run.of(command).code();
      if (code != 0) {
        System.out.println(String.join(" ", command) + " ended with " + code);
        System.exit(code);
      }
    }
  }
}
