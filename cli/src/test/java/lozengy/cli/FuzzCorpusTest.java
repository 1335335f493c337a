package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Gives every reader the inputs that runs of the fuzzer have kept, and those that it found. */
class FuzzCorpusTest {

  private static final Path CORPUS = Path.of("src/test/resources/lozengy/cli/fuzz");

  @TestFactory
  Stream<DynamicTest> everyReaderTakesWhatIsKept() {
    return Fuzz.readers().entrySet().stream().flatMap(FuzzCorpusTest::tests);
  }

  private static Stream<DynamicTest> tests(Map.Entry<String, Consumer<byte[]>> reader) {
    List<Path> files = files(CORPUS.resolve(reader.getKey()));
    assertNotEquals(List.of(), files, reader.getKey());
    return files.stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    reader.getKey() + " " + file.getFileName(),
                    () -> reader.getValue().accept(Files.readAllBytes(file))));
  }

  private static List<Path> files(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
