package lozengy.benchmarks.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultsTest {

  private static final List<String> COLUMNS = List.of("brief", "seconds", "score");

  @TempDir private Path folder;

  @Test
  void readsBackWhatItWrote() {
    Path file = folder.resolve("deeper").resolve("results.csv");
    Map<String, String> about = new LinkedHashMap<>();
    about.put("command", "benchmarks/run whole --briefs a,b: c");
    about.put("cores", "2");
    try (Results.Writer writer = new Results.Writer(file, about, COLUMNS)) {
      writer.row(List.of("cushion", "0.300", "76.2500"));
      writer.row(List.of("baby", "1.000", ""));
    }
    Results read = Results.read(file);
    assertEquals(about, read.about());
    assertEquals(
        List.of(
            Map.of("brief", "cushion", "seconds", "0.300", "score", "76.2500"),
            Map.of("brief", "baby", "seconds", "1.000", "score", "")),
        read.rows());
  }

  @Test
  void rowsAreThereBeforeTheFileIsClosed() throws IOException {
    Path file = folder.resolve("results.csv");
    try (Results.Writer writer = new Results.Writer(file, Map.of(), COLUMNS)) {
      writer.row(List.of("cushion", "1", "2"));
      assertEquals("brief,seconds,score\ncushion,1,2\n", Files.readString(file));
    }
  }

  @Test
  void refusesRowsThatAreNone() {
    Path file = folder.resolve("results.csv");
    try (Results.Writer writer = new Results.Writer(file, Map.of(), COLUMNS)) {
      assertThrows(IllegalArgumentException.class, () -> writer.row(List.of("a", "b")));
      assertThrows(IllegalArgumentException.class, () -> writer.row(List.of("a", "b", "c,d")));
    }
  }

  @Test
  void refusesALineThatIsShort() throws IOException {
    Path file = folder.resolve("results.csv");
    Files.writeString(file, "brief,score\ncushion,1\nbaby\n");
    IllegalArgumentException wrong =
        assertThrows(IllegalArgumentException.class, () -> Results.read(file));
    assertTrue(wrong.getMessage().contains("baby"), wrong.getMessage());
  }

  @Test
  void goesOnWithAFileOfTheSameCommitAndMachine() {
    Path file = folder.resolve("results.csv");
    try (Results.Writer writer = new Results.Writer(file, about("first", "abc"), COLUMNS)) {
      writer.row(List.of("cushion", "1", "2"));
    }
    try (Results.Writer writer = Results.Writer.append(file, about("second", "abc"), COLUMNS)) {
      writer.row(List.of("baby", "3", "4"));
    }
    Results read = Results.read(file);
    assertEquals(2, read.rows().size());
    assertEquals("baby", read.rows().get(1).get("brief"));
    assertEquals("first", read.about().get("command"));
    assertEquals("second", read.about().get("command, part 2"));
    assertEquals(2, read.parts());
  }

  @Test
  void refusesToGoOnWithAFileOfAnotherCommitOrOtherColumns() {
    Path file = folder.resolve("results.csv");
    try (Results.Writer writer = new Results.Writer(file, about("first", "abc"), COLUMNS)) {
      writer.row(List.of("cushion", "1", "2"));
    }
    IllegalArgumentException commit =
        assertThrows(
            IllegalArgumentException.class,
            () -> Results.Writer.append(file, about("second", "def"), COLUMNS));
    assertTrue(commit.getMessage().contains("abc"), commit.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> Results.Writer.append(file, about("second", "abc"), List.of("brief")));
  }

  private static Map<String, String> about(String command, String commit) {
    return Map.of(
        "command", command, "date", command, "load average at the start", "1", "lozengy", commit);
  }
}
