package lozengy.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lozengy.cli.process.Overtaken;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {

  @TempDir Path folder;

  @Test
  void allAreWrittenAndNothingElse() throws IOException {
    Path first = folder.resolve("first");
    Path second = folder.resolve("second");
    new WholeFiles(false).write(contents(first, second));
    assertEquals("new", Files.readString(first));
    assertEquals("new", Files.readString(second));
    assertEquals(2, count());
  }

  @Test
  void oneInTheWayLeavesAllAsTheyWere() throws IOException {
    Path first = folder.resolve("first");
    Path second = Files.writeString(folder.resolve("second"), "old");
    Refusal refusal =
        assertThrows(Refusal.class, () -> new WholeFiles(false).write(contents(first, second)));
    assertEquals(second.toString(), refusal.place());
    assertTrue(refusal.getMessage().contains("--overwrite"), refusal.getMessage());
    assertTrue(Files.notExists(first));
    assertEquals("old", Files.readString(second));
    assertEquals(1, count());
  }

  @Test
  void oneThatCannotBeWrittenLeavesAllAsTheyWere() throws IOException {
    Path first = Files.writeString(folder.resolve("first"), "old");
    // what it is called while it is written is longer than a name may be
    Path second = folder.resolve("s".repeat(250));
    Refusal refusal =
        assertThrows(Refusal.class, () -> new WholeFiles(true).write(contents(first, second)));
    assertEquals(second.toString(), refusal.place());
    assertEquals("old", Files.readString(first));
    assertEquals(1, count());
  }

  @Test
  void aFolderInWhichNothingCanBeWrittenIsNotLeftBehind() throws IOException {
    Path made = folder.resolve("made");
    FolderTarget target = new FolderTarget(Optional.of(made), new WholeFiles(false));
    Terminal nowhere =
        new Terminal(
            InputStream.nullInputStream(),
            OutputStream.nullOutputStream(),
            OutputStream.nullOutputStream(),
            false,
            false,
            () -> () -> false);
    Map<String, byte[]> contents = Map.of("a", new byte[] {1}, "s".repeat(250), new byte[] {2});
    assertThrows(Refusal.class, () -> target.write(nowhere, contents));
    assertTrue(Files.notExists(made));
  }

  @Test
  void replacesWhereAsked() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "old and longer");
    new WholeFiles(true).write(contents(file));
    assertEquals("new", Files.readString(file));
    assertEquals(1, count());
  }

  @Test
  void leavesAloneWhatAnotherHasChangedSinceItWasExpected() throws IOException {
    Path first = folder.resolve("first");
    Path second = Files.writeString(folder.resolve("second"), "old");
    WholeFiles files = new WholeFiles(true);
    files.expect(first);
    files.expect(second);
    Files.writeString(second, "Old");
    Overtaken refusal = assertThrows(Overtaken.class, () -> files.write(contents(first, second)));
    assertEquals(second.toString(), refusal.place());
    assertTrue(Files.notExists(first));
    assertEquals("Old", Files.readString(second));
  }

  @Test
  void leavesAloneWhatAnotherHasWrittenSinceItWasExpected() throws IOException {
    for (boolean overwrite : new boolean[] {false, true}) {
      Path file = folder.resolve("file" + overwrite);
      WholeFiles files = new WholeFiles(overwrite);
      files.expect(file);
      Files.writeString(file, "theirs");
      assertThrows(Overtaken.class, () -> files.write(contents(file)));
      assertEquals("theirs", Files.readString(file));
    }
  }

  @Test
  void whatWasReadIsWhatMayBeReplaced() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "read");
    Path link = Files.createSymbolicLink(folder.resolve("link"), file);
    WholeFiles files = new WholeFiles(true);
    files.lookAt(link);
    Files.writeString(file, "changed");
    files.expect(file);
    assertThrows(Overtaken.class, () -> files.write(contents(file)));
    assertEquals("changed", Files.readString(file));
  }

  @Test
  void aFolderThatAnotherFilledMeanwhileIsLeftAlone() throws IOException {
    Path sub = folder.resolve("sub");
    FolderTarget target = new FolderTarget(Optional.of(sub), new WholeFiles(true));
    target.expect(List.of("a"));
    Files.createDirectory(sub);
    Files.writeString(sub.resolve("a"), "theirs");
    Map<String, byte[]> mine = Map.of("a", new byte[] {'x'});
    assertThrows(Overtaken.class, () -> target.write(null, mine));
    assertEquals("theirs", Files.readString(sub.resolve("a")));
  }

  @Test
  void refusesWhatCannotBeAFile() {
    WholeFiles files = new WholeFiles(true);
    assertThrows(Refusal.class, () -> files.expect(folder));
    assertThrows(Refusal.class, () -> files.expect(folder.resolve("none").resolve("file")));
  }

  private static Map<Path, byte[]> contents(Path... files) {
    Map<Path, byte[]> contents = new LinkedHashMap<>();
    for (Path file : files) {
      contents.put(file, new byte[] {'n', 'e', 'w'});
    }
    return contents;
  }

  private long count() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.count();
    }
  }
}
