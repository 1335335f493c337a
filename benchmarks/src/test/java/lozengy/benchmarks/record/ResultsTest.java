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
}
