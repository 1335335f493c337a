package lozengy.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNamesTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "throw.yaml, throw",
    "throw.yml, throw",
    "throw.json, throw",
    "throw.arrangement.json, throw",
    "my throw v1.2.yaml, my throw v1.2",
    "throw, throw",
    ".yaml, .yaml",
    "throw.txt, throw.txt"
  })
  void stemIsTheNameWithoutItsKind(String name, String stem) {
    assertEquals(stem, FileNames.stem(Path.of("folder", name)));
  }

  @Test
  void resultsLieBesideTheirBrief() {
    assertEquals(Path.of("a", "b.arrangement.json"), FileNames.arrangement(Path.of("a", "b.yaml")));
    assertEquals(
        Path.of("a", "b.svg"), FileNames.beside(Path.of("a", "b.arrangement.json"), ".svg"));
    assertEquals(Path.of("b.arrangement.json"), FileNames.arrangement(Path.of("b.yaml")));
  }

  @ParameterizedTest
  @CsvSource({
    "throw.arrangement.json, throw-2.arrangement.json",
    "throw-2.arrangement.json, throw-3.arrangement.json",
    "throw-9.json, throw-10.arrangement.json",
    "throw-0.json, throw-0-2.arrangement.json",
    "-.json, --2.arrangement.json",
    "throw-alternative-2.arrangement.json, throw-alternative-2-2.arrangement.json",
    "throw-alternative-2-2.arrangement.json, throw-alternative-2-3.arrangement.json"
  })
  void nextCountsOn(String name, String next) {
    assertEquals(folder.resolve(next), next(name));
  }

  @ParameterizedTest
  @CsvSource({
    "throw.arrangement.json, throw-alternative-3.arrangement.json",
    "throw-2.arrangement.json, throw-2-alternative-3.arrangement.json"
  })
  void alternativesAreNumberedApartFromWhatIsPlannedAgain(String name, String third) {
    assertEquals(folder.resolve(third), FileNames.alternative(folder.resolve(name), 3));
  }

  @Test
  void nextSkipsWhatIsThere() throws IOException {
    Files.createFile(folder.resolve("throw-2.arrangement.json"));
    Files.createFile(folder.resolve("throw-3.svg"));
    assertEquals(folder.resolve("throw-4.arrangement.json"), next("throw.arrangement.json"));
  }

  private Path next(String name) {
    return FileNames.next(folder.resolve(name), file -> FileNames.beside(file, ".svg"));
  }
}
