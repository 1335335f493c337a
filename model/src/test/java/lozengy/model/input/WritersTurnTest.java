package lozengy.model.input;

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
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WritersTurnTest {

  private static final int WRITERS = 6;
  private static final int WRITES = 25;

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void begin() throws IOException {
    file = WholeFile.place(Files.writeString(folder.resolve("a.txt"), "0"));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void oneAtATimeHasItsTurn() throws Exception {
    AtomicInteger within = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    inThreads(
        () -> {
          for (int i = 0; i < WRITES; i++) {
            WritersTurn turn = WritersTurn.at(file);
            try {
              most.accumulateAndGet(within.incrementAndGet(), Math::max);
              Thread.yield();
              within.decrementAndGet();
            } finally {
              turn.close();
            }
          }
          return null;
        });
    assertEquals(1, most.get());
    assertEquals(List.of("a.txt"), names());
  }

  @Test
  void noneOfManyChangesByThreadsIsLost() throws Exception {
    inThreads(() -> count(file, WRITES));
    assertEquals(Integer.toString(WRITERS * WRITES), Files.readString(file));
    assertEquals(List.of("a.txt"), names());
  }

  @Test
  void noneOfManyChangesByProcessesIsLost() throws Exception {
    List<Process> processes = new ArrayList<>();
    for (int i = 0; i < WRITERS; i++) {
      processes.add(start("count"));
    }
    for (Process process : processes) {
      assertEquals(0, process.waitFor());
    }
    assertEquals(Integer.toString(WRITERS * WRITES), Files.readString(file));
    assertEquals(List.of("a.txt"), names());
  }

  @Test
  void theTurnOfAKilledProcessEndsWithIt() throws Exception {
    Process holder = start("hold");
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(holder.getInputStream(), StandardCharsets.UTF_8))) {
      assertEquals("held", out.readLine());
      assertEquals(List.of(".a.txt.lock", "a.txt"), names());
      ExecutorService executor = Executors.newSingleThreadExecutor();
      Future<?> waiting =
          executor.submit(
              () -> {
                WholeFile.write(file, true, target -> target.write('x'));
                return null;
              });
      executor.shutdown();
      assertTrue(holder.isAlive());
      assertEquals("0", Files.readString(file));
      holder.destroyForcibly();
      holder.waitFor();
      waiting.get();
    } finally {
      holder.destroyForcibly();
    }
    assertEquals("x", Files.readString(file));
    assertEquals(List.of("a.txt"), names());
  }

  @Test
  void aLockThatAKilledProcessLeftIsTakenOver() throws IOException {
    Files.writeString(folder.resolve(".a.txt.lock"), "12 34 56, and longer than any word of ours");
    WholeFile.write(file, true, out -> out.write('x'));
    assertEquals("x", Files.readString(file));
    assertEquals(List.of("a.txt"), names());
  }

  private static void inThreads(Callable<Void> work) throws Exception {
    ExecutorService executor = Executors.newFixedThreadPool(WRITERS);
    try {
      List<Future<Void>> all = new ArrayList<>();
      for (int i = 0; i < WRITERS; i++) {
        all.add(executor.submit(work));
      }
      for (Future<Void> each : all) {
        each.get();
      }
    } finally {
      executor.shutdownNow();
    }
  }

  private Process start(String what) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            Other.class.getName(),
            what,
            file.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** Adds one to the number in a file, over and over; what was overtaken is done again. */
  private static Void count(Path file, int times) throws IOException {
    for (int done = 0; done < times; ) {
      Snapshot before = Snapshot.of(file);
      int number = Integer.parseInt(Files.readString(file)) + 1;
      try {
        WholeFile.write(
            file,
            before,
            out -> out.write(Integer.toString(number).getBytes(StandardCharsets.UTF_8)));
        done++;
      } catch (OvertakenException e) {
        // again, from what is there now
      }
    }
    return null;
  }

  /** Another process. */
  static final class Other {

    private Other() {}

    /** Counts, or holds its turn until it is killed. */
    public static void main(String[] arguments) throws Exception {
      Path file = Path.of(arguments[1]);
      if (arguments[0].equals("count")) {
        count(file, WRITES);
        return;
      }
      WritersTurn.at(file);
      System.out.println("held");
      System.out.flush();
      Thread.sleep(Long.MAX_VALUE);
    }
  }
}
