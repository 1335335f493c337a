package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a file holds: one line for each mistake, exit code 2, nothing written. */
class BadInputTest {

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> everyCommandRefusesBadFiles() {
    return bad().entrySet().stream()
        .flatMap(
            each ->
                Stream.of("solve", "check", "compare", "report", "need", "pack", "substitute")
                    .map(
                        command ->
                            DynamicTest.dynamicTest(
                                command + " " + each.getKey(),
                                () -> refuses(command, each.getKey(), each.getValue()))));
  }

  private static Map<String, byte[]> bad() {
    String brief = Run.of("new").out();
    Map<String, byte[]> bad = new TreeMap<>();
    bad.put("empty.yaml", new byte[0]);
    bad.put("blank.json", bytes(" \n\n"));
    bad.put("binary.yaml", new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, (byte) 0xff});
    bad.put("utf16.yaml", brief.getBytes(StandardCharsets.UTF_16));
    bad.put("nested.json", bytes("[".repeat(5_000_000)));
    bad.put("nested.yaml", bytes("{a: ".repeat(500_000)));
    bad.put("alias.yaml", bytes("a: &a [1]\nb: [*a, *a]\nformat: *a\n"));
    bad.put("cut.json", bytes("{\"format\": \"lozengy-arrangement/1\", \"pieces\": ["));
    bad.put("list.yaml", bytes("- 1\n- 2\n"));
    bad.put("later.json", bytes("{\"format\": \"lozengy-arrangement/9\"}"));
    bad.put("other.yaml", bytes("format: something/1\n"));
    bad.put("million.yaml", bytes(brief.replace("across: 6", "across: 1000000")));
    bad.put("nan.yaml", bytes(brief.replace("metres: 6.8", "metres: .nan")));
    bad.put("twice.yaml", bytes(brief.replace("code: BRO", "code: NAV")));
    bad.put("nowhere.yaml", bytes(brief + "pieces: [ { at: r99c1, state: planned } ]\n"));
    return bad;
  }

  private void refuses(String command, String name, byte[] content) throws IOException {
    Path file = Files.write(folder.resolve(name), content);
    Result result = Run.of(command, file.toString());
    assertEquals(2, result.code(), result.err());
    assertEquals("", result.out());
    assertFalse(result.err().isEmpty());
    result.err().lines().forEach(line -> assertTrue(line.startsWith("lozengy: " + file), line));
    assertEquals(Set.of(name), files());
    Files.delete(file);
  }

  @TestFactory
  Stream<DynamicTest> everyCommandRefusesWhatIsNoFile() {
    Path missing = folder.resolve("missing.yaml");
    return Stream.of("solve", "check", "compare", "report", "need", "pack", "substitute")
        .map(
            command ->
                DynamicTest.dynamicTest(
                    command,
                    () -> {
                      Result gone = Run.of(command, missing.toString());
                      assertEquals(2, gone.code());
                      assertEquals(
                          "lozengy: "
                              + missing
                              + ": There is no such file. Check its name and its folder\n",
                          gone.err());
                      Result directory = Run.of(command, folder.toString());
                      assertEquals(2, directory.code());
                      assertTrue(directory.err().contains("This is a folder"), directory.err());
                    }));
  }

  @Test
  void namesThatAreNoTextAreSentToStandardInput() {
    // What Java makes of a file name with a byte that is no UTF-8.
    String garbled = folder.resolve("caf\ufffd.json").toString();
    Result result = Run.of("check", garbled);
    assertEquals(2, result.code());
    assertTrue(result.err().contains("give it as standard input, -"), result.err());
  }

  private Set<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
