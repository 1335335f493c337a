package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Marks one file many times at once, from several processes, of which one is killed over and over,
 * and from several threads of one process. {@code -Dlozengy.marks=200} marks more often than a
 * usual run does.
 */
class ConcurrentMarksTest {

  private static final int MARKS = Integer.getInteger("lozengy.marks", 25);
  private static final int WRITERS = 5;
  private static final int ACROSS = 10;
  private static final int KILLS = 3;

  @TempDir Path folder;
  private String file;

  @BeforeEach
  void solve() {
    String brief = folder.resolve("many.yaml").toString();
    String down = Integer.toString(((MARKS + ACROSS - 1) / ACROSS) + 1);
    String across = Integer.toString(ACROSS);
    assertEquals(
        0,
        Run.of("new", "--setting", "straight", "--across", across, "--down", down, "-o", brief)
            .code());
    Run.Result solved = Run.of("solve", brief, "--moves", "100000", "--threads", "1");
    assertEquals(0, solved.code(), solved.out() + solved.err());
    file = folder.resolve("many.arrangement.json").toString();
  }

  @Test
  void noMarkOfAnyProcessIsLost() throws Exception {
    List<Process> markers = new ArrayList<>();
    for (int writer = 0; writer < WRITERS; writer++) {
      markers.add(start(piecesOf(writer)));
    }
    SplittableRandom random = new SplittableRandom(20_260_102);
    for (int kill = 0; kill < KILLS; kill++) {
      killWhileMarking(random.nextInt(MARKS / WRITERS));
    }
    for (Process marker : markers) {
      assertEquals(0, marker.waitFor());
    }
    assertAllMade();
  }

  @Test
  void noMarkOfAnyThreadIsLost() throws Exception {
    ExecutorService executor = Executors.newFixedThreadPool(WRITERS);
    try {
      List<Future<?>> markers = new ArrayList<>();
      for (int writer = 0; writer < WRITERS; writer++) {
        List<String> pieces = piecesOf(writer);
        markers.add(executor.submit(() -> pieces.forEach(piece -> mark(file, piece))));
      }
      for (Future<?> marker : markers) {
        marker.get();
      }
    } finally {
      executor.shutdownNow();
    }
    assertAllMade();
  }

  private static List<String> piecesOf(int writer) {
    return IntStream.range(0, MARKS)
        .filter(mark -> mark % WRITERS == writer)
        .mapToObj(mark -> "r" + (mark / ACROSS + 1) + "c" + (mark % ACROSS + 1))
        .toList();
  }

  /** Marks pieces of the last row, which no other does, and is killed in the midst of it. */
  private void killWhileMarking(int marks) throws Exception {
    String row = "row" + (((MARKS + ACROSS - 1) / ACROSS) + 1);
    List<String> pieces = new ArrayList<>();
    for (int i = 0; i < MARKS; i++) {
      pieces.add(i % 2 == 0 ? row : "-" + row);
    }
    Process process = start(pieces);
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (int mark = 0; mark <= marks; mark++) {
        out.readLine();
      }
    } finally {
      process.destroyForcibly();
    }
    process.waitFor();
  }

  private Process start(List<String> pieces) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Marker.class.getName(),
                file));
    command.addAll(pieces);
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  private void assertAllMade() throws IOException {
    Blanket blanket = ArrangementReader.read(Path.of(file)).blanket();
    List<String> lost =
        IntStream.range(0, MARKS)
            .filter(piece -> blanket.state(piece) != PieceState.MADE)
            .mapToObj(piece -> blanket.place(piece).name())
            .toList();
    assertEquals(List.of(), lost);
    Run.Result check = Run.of("check", file);
    assertEquals(0, check.code(), check.out() + check.err());
    // the next one clears away what the killed ones left
    assertEquals(0, Run.of("mark", file, "--joined", "r1c1").code());
    try (Stream<Path> files = Files.list(folder)) {
      assertTrue(files.noneMatch(path -> path.getFileName().toString().startsWith(".")));
    }
  }

  private static void mark(String file, String piece) {
    boolean made = !piece.startsWith("-");
    Run.Result result =
        Run.of("mark", file, made ? "--made" : "--planned", made ? piece : piece.substring(1));
    assertEquals(0, result.code(), result.err());
  }

  /** Marks one piece after another, and says so before each. */
  static final class Marker {

    private Marker() {}

    /** Marks the pieces named after the file; those with a dash before them as planned. */
    public static void main(String[] arguments) {
      for (int i = 1; i < arguments.length; i++) {
        System.out.println("mark");
        System.out.flush();
        mark(arguments[0], arguments[i]);
      }
    }
  }
}
