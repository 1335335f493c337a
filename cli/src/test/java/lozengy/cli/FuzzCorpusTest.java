package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Gives every reader the inputs that runs of the fuzzer have kept, those that it found, and random
 * changes of them: {@code -Dlozengy.fuzz=1000000} many, from {@code -Dlozengy.fuzz.seed=7} on.
 */
class FuzzCorpusTest {

  private static final long CHANGED = Long.getLong("lozengy.fuzz", 1_000);
  private static final long SEED = Long.getLong("lozengy.fuzz.seed", 1);
  private static final Path CORPUS = Path.of("src/test/resources/lozengy/cli/fuzz");

  @TestFactory
  Stream<DynamicTest> everyReaderTakesWhatIsKept() {
    return Fuzz.readers().entrySet().stream().flatMap(FuzzCorpusTest::tests);
  }

  private static Stream<DynamicTest> tests(Map.Entry<String, Predicate<byte[]>> reader) {
    List<Path> files = files(CORPUS.resolve(reader.getKey()));
    assertNotEquals(List.of(), files, reader.getKey());
    return files.stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    reader.getKey() + " " + file.getFileName(),
                    () -> reader.getValue().test(Files.readAllBytes(file))));
  }

  @TestFactory
  Stream<DynamicTest> everyReaderTakesWhatIsChangedAtRandom() throws IOException {
    String dictionary = Files.readString(CORPUS.resolveSibling("fuzz.dict"));
    return Fuzz.readers().entrySet().stream()
        .map(
            reader ->
                DynamicTest.dynamicTest(
                    reader.getKey(),
                    () -> changed(reader.getKey(), reader.getValue(), dictionary)));
  }

  private static void changed(String name, Predicate<byte[]> reader, String dictionary)
      throws IOException {
    List<byte[]> kept = new ArrayList<>();
    for (Path file : files(CORPUS.resolve(name))) {
      kept.add(Files.readAllBytes(file));
    }
    Mutator mutator = new Mutator(kept, dictionary, SEED);
    long taken = 0;
    for (long i = 0; i < CHANGED; i++) {
      byte[] input = mutator.next();
      try {
        if (reader.test(input)) {
          mutator.taken(input);
          taken++;
        }
      } catch (Throwable failure) {
        Path found = Files.write(Path.of("target", "found-" + name), input);
        throw new AssertionError("input " + i + " of seed " + SEED + " is in " + found, failure);
      }
    }
    assertTrue(taken > CHANGED / 100 && taken < CHANGED, taken + " taken of " + CHANGED);
    if (System.getProperty("lozengy.fuzz") != null) {
      System.out.printf("%s, seed %d: %d inputs, %d of them taken%n", name, SEED, CHANGED, taken);
    }
  }

  private static List<Path> files(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
