package lozengy.cli.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.TreeMap;
import lozengy.cli.process.Overtaken;
import lozengy.cli.process.Refusal;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.OvertakenException;
import lozengy.model.input.Snapshot;
import lozengy.model.input.WholeFile;

/**
 * Writes files that belong together: each whole or not at all, none over an existing file unless
 * the user asked for that, and none over what another has written since it was looked at.
 */
public final class WholeFiles {

  private final boolean overwrite;
  private final String option;
  private final Map<Path, Snapshot> before = new HashMap<>();

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

  /** The same for files that another option names. */
  public WholeFiles namedBy(String another) {
    return new WholeFiles(overwrite, another);
  }

  /**
   * Looks at a file that is about to be read, and may later be replaced by what is made of it.
   *
   * @throws Refusal if it is there and cannot be read
   */
  public void lookAt(Path file) {
    try {
      before.putIfAbsent(WholeFile.place(file), Snapshot.of(file));
    } catch (InputException e) {
      throw Refusal.of(file.toString(), e);
    } catch (IOException e) {
      throw Refusal.of(
          file.toString(),
          MistakeCode.UNREADABLE.about(Source.reason(e)),
          "It cannot be read: " + Source.reason(e),
          "Check that you may read it");
    }
  }

  /**
   * Refuses early, before any long work, what {@link #write} would refuse, and looks at what stands
   * there.
   *
   * @throws Refusal if the file is there and may not be replaced, or its folder cannot take it
   */
  public void expect(Path file) {
    if (!overwrite && Files.isRegularFile(file)) {
      throw Refusal.of(
          file.toString(),
          MistakeCode.FILE_EXISTS.about(file),
          "It is there already",
          "Name another file with " + option + ", or add --overwrite");
    }
    try {
      WholeFile.checkTarget(file, overwrite);
    } catch (InputException e) {
      throw Refusal.of(file.toString(), e);
    }
    lookAt(file);
  }

  /**
   * Writes files. None takes its place before all are written beside theirs, so that what can be
   * foreseen, and a disk that is full, leave everything as it was.
   *
   * @throws Overtaken if another has changed one since it was looked at
   * @throws Refusal if one cannot be written
   */
  public void write(Map<Path, byte[]> contents) {
    contents.keySet().forEach(this::expectUnchanged);
    // in one order everywhere, for each waits for its turn while it holds those before it
    write(new TreeMap<>(contents).entrySet().iterator());
  }

  private void expectUnchanged(Path file) {
    Snapshot seen = seen(file);
    if (seen == null) {
      expect(file);
    } else if (!attempt(file, seen::stillHolds)) {
      throw new Overtaken(file);
    }
  }

  private void write(Iterator<Map.Entry<Path, byte[]>> files) {
    if (!files.hasNext()) {
      return;
    }
    Map.Entry<Path, byte[]> next = files.next();
    Path file = next.getKey();
    attempt(
        file,
        () -> {
          WholeFile.write(file, seen(file), out -> out.write(next.getValue()), () -> write(files));
          return true;
        });
  }

  private Snapshot seen(Path file) {
    return before.get(WholeFile.place(file));
  }

  private boolean attempt(Path file, Attempt step) {
    try {
      return step.succeeds();
    } catch (OvertakenException e) {
      throw new Overtaken(file);
    } catch (InputException e) {
      throw Refusal.of(file.toString(), e);
    } catch (IOException e) {
      throw Refusal.of(
          file.toString(),
          MistakeCode.UNWRITABLE.about(Source.reason(e)),
          "It cannot be written: " + Source.reason(e),
          "Make room, or name another file with " + option);
    }
  }

  private interface Attempt {
    boolean succeeds() throws IOException;
  }
}
