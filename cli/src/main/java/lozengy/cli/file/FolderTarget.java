package lozengy.cli.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.input.MistakeCode;

/**
 * Where a result of several files goes.
 *
 * @param folder the folder; empty for standard output, which gets one ZIP archive of the files
 * @param files what writes the files in the folder
 */
public record FolderTarget(Optional<Path> folder, WholeFiles files) {

  /** The archive's entries bear one time, so that the same files give the same bytes. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  /**
   * Refuses early what {@link #write} would refuse. What stands there at this moment is what may be
   * replaced.
   *
   * @param names the files' names
   * @throws Refusal if a file stands in its place, or the folder above it is missing, or a file in
   *     it may not be replaced
   */
  public void expect(Collection<String> names) {
    if (folder.isEmpty()) {
      return;
    }
    if (Files.isDirectory(folder.get())) {
      names.forEach(name -> files.expect(folder.get().resolve(name)));
      return;
    }
    Path path = folder.get();
    if (Files.exists(path)) {
      throw Refusal.of(
          path.toString(), MistakeCode.UNWRITABLE.about(), "It is a file", "Name a folder with -o");
    }
    Path above = path.toAbsolutePath().getParent();
    if (above == null || !Files.isDirectory(above)) {
      throw Refusal.of(
          path.toString(),
          MistakeCode.NO_SUCH_FILE.about(above),
          "There is no folder " + above,
          "Make it first, or name another with -o");
    }
    names.forEach(name -> files.lookAt(path.resolve(name)));
  }

  /**
   * Writes the files; makes the folder if it is not there.
   *
   * @param contents contents by name
   * @throws Refusal if a file is there and may not be replaced, or cannot be written
   */
  public void write(Terminal terminal, Map<String, byte[]> contents) {
    if (folder.isEmpty()) {
      terminal.write(zip(contents));
      return;
    }
    expect(contents.keySet());
    Path path = folder.get();
    boolean made = !Files.isDirectory(path);
    try {
      if (made) {
        Files.createDirectory(path);
      }
    } catch (IOException e) {
      throw Refusal.of(
          path.toString(),
          MistakeCode.UNWRITABLE.about(Source.reason(e)),
          "The folder cannot be made: " + Source.reason(e),
          "Name another folder with -o");
    }
    Map<Path, byte[]> placed = new LinkedHashMap<>();
    contents.forEach((name, content) -> placed.put(path.resolve(name), content));
    try {
      files.write(placed);
    } catch (Refusal e) {
      if (made) {
        removeEmpty(path);
      }
      throw e;
    }
  }

  /** Removes a folder in which nothing could be written. */
  private static void removeEmpty(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      // another has put something into it meanwhile, or it cannot be removed: it stays
    }
  }

  private static byte[] zip(Map<String, byte[]> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(file.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory takes everything", e);
    }
    return bytes.toByteArray();
  }
}
