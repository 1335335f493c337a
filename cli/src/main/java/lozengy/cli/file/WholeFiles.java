package lozengy.cli.file;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import lozengy.cli.Refusal;

/**
 * Writes files that belong together: each whole or not at all, and none over an existing file
 * unless the user asked for that.
 */
public final class WholeFiles {

  private final boolean overwrite;

  /**
   * Makes a writer.
   *
   * @param overwrite whether existing files may be replaced
   */
  public WholeFiles(boolean overwrite) {
    this.overwrite = overwrite;
  }

  /**
   * Refuses early, before any long work, what {@link #write} would refuse.
   *
   * @throws Refusal if the file is there and may not be replaced, or its folder cannot take it
   */
  public void expect(Path file) {
    Path folder = folder(file);
    if (Files.isDirectory(file)) {
      throw Refusal.of(file.toString(), "is a folder", "Name a file to write");
    }
    if (!Files.isDirectory(folder)) {
      throw Refusal.of(file.toString(), "there is no folder " + folder, "Make the folder first");
    }
    if (Files.exists(file) && !isRegular(file)) {
      return;
    }
    if (Files.exists(file) && !overwrite) {
      throw exists(file);
    }
    if (!Files.isWritable(folder)) {
      throw Refusal.of(
          file.toString(), "you may not write in " + folder, "Name another folder with -o");
    }
  }

  /**
   * Writes files. All are written beside their places first and then moved there, so that a full
   * disk leaves everything as it was.
   *
   * @throws Refusal if one cannot be written
   */
  public void write(Map<Path, byte[]> contents) {
    contents.keySet().forEach(this::expect);
    Map<Path, Path> written = new LinkedHashMap<>();
    Path current = null;
    try {
      for (Map.Entry<Path, byte[]> each : contents.entrySet()) {
        current = each.getKey();
        if (Files.exists(current) && !isRegular(current)) {
          Files.write(current, each.getValue());
        } else {
          Path target = Files.exists(current) ? current.toRealPath() : current;
          Path draft = draft(target);
          written.put(draft, target);
          Files.write(draft, each.getValue(), StandardOpenOption.CREATE_NEW);
        }
      }
      for (Map.Entry<Path, Path> each : written.entrySet()) {
        current = each.getValue();
        move(each.getKey(), current);
      }
    } catch (FileAlreadyExistsException e) {
      throw exists(current);
    } catch (IOException e) {
      throw Refusal.of(
          String.valueOf(current),
          "cannot be written: " + Source.reason(e),
          "Make room or name another file with -o");
    } finally {
      written.keySet().forEach(WholeFiles::forget);
    }
  }

  private void move(Path draft, Path target) throws IOException {
    if (!overwrite) {
      Files.move(draft, target);
      return;
    }
    try {
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path draft(Path target) {
    long process = ProcessHandle.current().pid();
    return target.resolveSibling("." + target.getFileName() + "." + process + ".draft");
  }

  private static void forget(Path draft) {
    try {
      Files.deleteIfExists(draft);
    } catch (IOException e) {
      draft.toFile().deleteOnExit();
    }
  }

  /** Other than a regular file is a device or a pipe, which is written to as it is. */
  private static boolean isRegular(Path file) {
    return Files.isRegularFile(file);
  }

  private static Path folder(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }

  private static Refusal exists(Path file) {
    return Refusal.of(
        file.toString(), "is there already", "Name another file with -o, or add --overwrite");
  }
}
