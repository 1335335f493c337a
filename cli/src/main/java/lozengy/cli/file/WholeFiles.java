package lozengy.cli.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import lozengy.cli.Refusal;
import lozengy.model.input.InputException;
import lozengy.model.input.WholeFile;

/**
 * Writes files that belong together: each whole or not at all, and none over an existing file
 * unless the user asked for that.
 */
public final class WholeFiles {

  private final boolean overwrite;
  private final String option;

  /**
   * Makes a writer of files that {@code -o} names.
   *
   * @param overwrite whether existing files may be replaced
   */
  public WholeFiles(boolean overwrite) {
    this(overwrite, "-o");
  }

  /**
   * Makes a writer.
   *
   * @param overwrite whether existing files may be replaced
   * @param option the option that names the files, for remedies
   */
  public WholeFiles(boolean overwrite, String option) {
    this.overwrite = overwrite;
    this.option = option;
  }

  /**
   * Refuses early, before any long work, what {@link #write} would refuse.
   *
   * @throws Refusal if the file is there and may not be replaced, or its folder cannot take it
   */
  public void expect(Path file) {
    if (!overwrite && Files.isRegularFile(file)) {
      throw Refusal.of(
          file.toString(),
          "It is there already",
          "Name another file with " + option + ", or add --overwrite");
    }
    try {
      WholeFile.checkTarget(file, overwrite);
    } catch (InputException e) {
      throw Refusal.of(file.toString(), e);
    }
  }

  /**
   * Writes files. None is written before all have been looked at, so that what can be foreseen
   * leaves everything as it was.
   *
   * @throws Refusal if one cannot be written
   */
  public void write(Map<Path, byte[]> contents) {
    contents.keySet().forEach(this::expect);
    contents.forEach(this::write);
  }

  private void write(Path file, byte[] content) {
    try {
      WholeFile.write(file, overwrite, out -> out.write(content));
    } catch (InputException e) {
      throw Refusal.of(file.toString(), e);
    } catch (IOException e) {
      throw Refusal.of(
          file.toString(),
          "It cannot be written: " + Source.reason(e),
          "Make room, or name another file with " + option);
    }
  }
}
