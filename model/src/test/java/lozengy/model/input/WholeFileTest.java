package lozengy.model.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

  @TempDir Path folder;

  private static void write(Path target, boolean overwrite, String text) throws IOException {
    WholeFile.write(target, overwrite, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static String refusal(Path target, boolean overwrite) {
    return assertThrows(InputException.class, () -> write(target, overwrite, "new")).getMessage();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aNewFileIsWrittenAndNothingElse() throws IOException {
    write(folder.resolve("a.json"), false, "new");
    assertEquals("new", Files.readString(folder.resolve("a.json")));
    assertEquals(List.of("a.json"), names());
  }

  @Test
  void aFileIsReplacedOnlyWhereAsked() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "old");
    assertEquals(
        file + " is there already. Name another file, or ask to overwrite it",
        refusal(file, false));
    assertEquals("old", Files.readString(file));
    write(file, true, "new");
    assertEquals("new", Files.readString(file));
    assertEquals(List.of("a.json"), names());
  }

  @Test
  void whatFailsHalfWayLeavesTheOldFile() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "old");
    assertThrows(
        IOException.class,
        () ->
            WholeFile.write(
                file,
                true,
                out -> {
                  out.write(new byte[100_000]);
                  throw new IOException("full");
                }));
    assertEquals("old", Files.readString(file));
    assertEquals(List.of("a.json"), names());
  }

  @Test
  void theOldFileStandsUntilTheNewOneIsWhole() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "old");
    WholeFile.write(
        file,
        true,
        out -> {
          out.write("new".getBytes(StandardCharsets.UTF_8));
          out.flush();
          assertEquals("old", Files.readString(file));
        });
    assertEquals("new", Files.readString(file));
  }

  @Test
  void whatEndedProcessesLeftHalfWrittenIsRemoved() throws IOException {
    long ended = Integer.MAX_VALUE - 1; // above any process id
    long running = ProcessHandle.current().parent().orElseThrow().pid();
    List<String> staying =
        List.of(
            ".a.json." + running + ".part",
            ".a.json.bak." + ended + ".part",
            ".a.json.x.part",
            ".b.json." + ended + ".part");
    for (String name : staying) {
      Files.writeString(folder.resolve(name), "half");
    }
    Files.writeString(folder.resolve(".a.json." + ended + ".part"), "half");

    write(folder.resolve("a.json"), true, "new");

    assertEquals(Stream.concat(staying.stream(), Stream.of("a.json")).sorted().toList(), names());
  }

  @Test
  void foldersInTheWayAndMissingFoldersAreTold() throws IOException {
    assertEquals(folder + " is a folder. Name a file", refusal(folder, true));
    Path missing = folder.resolve("no");
    assertEquals(
        "There is no folder " + missing + ". Make the folder first, or name another",
        refusal(missing.resolve("a.json"), false));
    assertFalse(Files.exists(missing));
    Path file = Files.writeString(folder.resolve("file"), "x");
    assertEquals(
        file + " is a file, not a folder. Name another folder",
        refusal(file.resolve("a.json"), false));
  }

  @Test
  void aLinkIsKeptAndWhatItLeadsToReplaced() throws IOException {
    Path real = Files.writeString(folder.resolve("real.json"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
    write(link, true, "new");
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("new", Files.readString(real));
  }

  @Test
  void aLinkToNothingIsKeptAndWhatItLeadsToWritten() throws IOException {
    Path real = folder.resolve("real.json");
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("real.json"));
    write(link, false, "new");
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("new", Files.readString(real));

    Path nowhere = folder.resolve("no").resolve("a.json");
    Path astray = Files.createSymbolicLink(folder.resolve("astray.json"), nowhere);
    assertEquals(
        "There is no folder " + nowhere.getParent() + ". Make the folder first, or name another",
        refusal(astray, true));
    assertTrue(Files.isSymbolicLink(astray));
  }

  @Test
  void aLinkToItselfIsTold() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("link.json"));
    assertEquals(link + " is a link that leads nowhere. Name a file", refusal(link, true));
    assertTrue(Files.isSymbolicLink(link));
  }

  @Test
  void twoNamesOfOneFileAreOnePlace() throws IOException {
    Path real = Files.writeString(folder.resolve("real.json"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
    Path other = folder.resolve("sub").resolve("..").resolve("real.json");
    Files.createDirectory(folder.resolve("sub"));
    assertEquals(WholeFile.place(real), WholeFile.place(link));
    assertEquals(WholeFile.place(real), WholeFile.place(other));
  }

  @Test
  void whatAnotherHasWrittenSinceIsLeftAlone() throws IOException {
    Path file = folder.resolve("a.json");
    Snapshot nothing = Snapshot.of(file);
    Files.writeString(file, "theirs");
    assertOvertaken(file, nothing);
    Snapshot theirs = Snapshot.of(file);
    Files.writeString(file, "Theirs");
    assertOvertaken(file, theirs);
    Snapshot both = Snapshot.of(file);
    WholeFile.write(file, both, out -> out.write('x'));
    assertEquals("x", Files.readString(file));
    Snapshot mine = Snapshot.of(file);
    Files.delete(file);
    assertThrows(OvertakenException.class, () -> WholeFile.write(file, mine, out -> {}));
    assertEquals(List.of(), names());
  }

  private void assertOvertaken(Path file, Snapshot before) throws IOException {
    String theirs = Files.readString(file);
    assertEquals(
        "Another has changed "
            + file
            + " since it was read, so it was left alone. Look at what it holds now, then try again",
        assertThrows(
                OvertakenException.class,
                () -> WholeFile.write(file, before, out -> out.write('x')))
            .getMessage());
    assertEquals(theirs, Files.readString(file));
    assertEquals(List.of("a.json"), names());
  }

  @Test
  void permissionsStay() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
    write(file, true, "new");
    assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void whatIsNoFileIsWrittenTo() throws IOException {
    write(Path.of("/dev/null"), false, "new");
    assertFalse(Files.isRegularFile(Path.of("/dev/null")));
  }
}
