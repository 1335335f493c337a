package lozengy.model.input;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Writes files whole or not at all. */
public final class WholeFile {

  /** The ending of what is being written. */
  private static final String PART = ".part";

  /** As many as common systems follow. */
  private static final int MOST_LINKS = 40;

  private WholeFile() {}

  /** What is written. */
  @FunctionalInterface
  public interface Content {
    /**
     * Writes all of it.
     *
     * @param out the stream
     * @throws IOException if the stream fails
     */
    void write(OutputStream out) throws IOException;
  }

  /**
   * Writes a file: first beside it, under a name of its own, then moved into its place at once. If
   * anything fails, what stood there still stands there. A link is kept, and what it leads to is
   * written. Something that is no file, such as a terminal, is written to as it is. Writers of one
   * file take turns, whatever process they are in.
   *
   * @param target the file
   * @param overwrite whether a file that is there may be replaced
   * @param content what to write
   * @throws InputException if the file is there and may not be replaced, or its folder is missing
   *     or not open to writing, or a folder stands in its place
   * @throws IOException if writing fails for another reason, such as a full disk
   */
  public static void write(Path target, boolean overwrite, Content content) throws IOException {
    write(target, overwrite, Optional.empty(), content, () -> {});
  }

  /**
   * Writes a file in the same way, but only if what stands there is still what stood there before.
   *
   * @param target the file
   * @param before what stood there; if it was a file, it may be replaced
   * @param content what to write
   * @throws OvertakenException if another has written, changed or removed the file since
   * @throws InputException if its folder is missing or not open to writing, or a folder stands in
   *     its place
   * @throws IOException if writing fails for another reason, such as a full disk
   */
  public static void write(Path target, Snapshot before, Content content) throws IOException {
    write(target, before, content, () -> {});
  }

  /**
   * Writes a file in the same way, and does something else once all of it stands beside its place:
   * where that fails, what stood there still stands there. So files that belong together are
   * written, each within the one before it.
   *
   * @param target the file
   * @param before what stood there; if it was a file, it may be replaced
   * @param content what to write
   * @param rest what is done before the file takes its place
   * @throws OvertakenException if another has written, changed or removed the file since
   * @throws InputException if its folder is missing or not open to writing, or a folder stands in
   *     its place
   * @throws IOException if writing fails for another reason, such as a full disk
   */
  public static void write(Path target, Snapshot before, Content content, Runnable rest)
      throws IOException {
    write(target, true, Optional.of(before), content, rest);
  }

  private static void write(
      Path target, boolean overwrite, Optional<Snapshot> before, Content content, Runnable rest)
      throws IOException {
    checkTarget(target, overwrite);
    if (Files.exists(target) && !Files.isRegularFile(target)) {
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(target))) {
        content.write(out);
      }
      rest.run();
      return;
    }
    Path place = place(target);
    try {
      WritersTurn turn = WritersTurn.at(place);
      try {
        replace(
            place,
            content,
            () -> {
              rest.run();
              expect(target, overwrite, before);
            });
      } finally {
        turn.close();
      }
    } catch (AccessDeniedException e) {
      throw refused(
          MistakeCode.UNWRITABLE.about(),
          "The folder of " + target + " is not open to writing",
          "Name another folder");
    }
  }

  private static void expect(Path target, boolean overwrite, Optional<Snapshot> before)
      throws IOException {
    checkTarget(target, overwrite);
    if (before.isPresent() && !before.get().stillHolds()) {
      throw new OvertakenException(target);
    }
  }

  /** What is asked last, before a file takes its place. */
  private interface Expectation {
    void hold() throws IOException;
  }

  private static void replace(Path place, Content content, Expectation expectation)
      throws IOException {
    removeStaleParts(place);
    Path part =
        place.resolveSibling(
            "." + place.getFileName() + "." + ProcessHandle.current().pid() + PART);
    try {
      writePart(part, content);
      keepPermissions(place, part);
      expectation.hold();
      move(part, place);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /**
   * Where a file lies or would lie, whatever links lead to it: two names of one file give the same.
   *
   * @param target the file, which need not be there
   * @return its absolute path, without links as far as it is there
   * @throws InputException if links lead nowhere
   */
  public static Path place(Path target) {
    Path path = target.toAbsolutePath();
    try {
      if (Files.exists(path)) {
        return Files.isRegularFile(path) ? path.toRealPath() : path;
      }
      for (int links = 0; Files.isSymbolicLink(path); links++) {
        if (links == MOST_LINKS) {
          throw refused(
              MistakeCode.UNWRITABLE.about(),
              target + " is a link that leads nowhere",
              "Name a file");
        }
        path = path.resolveSibling(Files.readSymbolicLink(path));
      }
      Path folder = path.getParent();
      return folder == null || !Files.exists(folder)
          ? path
          : folder.toRealPath().resolve(path.getFileName());
    } catch (IOException e) {
      throw refused(
          MistakeCode.UNWRITABLE.about(e.getMessage()),
          target + " cannot be reached (" + e.getMessage() + ")",
          "Name another file");
    }
  }

  /**
   * Checks, before any work is done, that a file can be written.
   *
   * @param target the file
   * @param overwrite whether a file that is there may be replaced
   * @throws InputException as {@link #write} does
   */
  public static void checkTarget(Path target, boolean overwrite) {
    if (Files.isDirectory(target)) {
      throw refused(MistakeCode.UNWRITABLE.about(), target + " is a folder", "Name a file");
    }
    Path folder = place(target).getParent();
    if (folder == null || !Files.exists(folder)) {
      throw refused(
          MistakeCode.NO_SUCH_FILE.about(folder),
          "There is no folder " + folder,
          "Make the folder first, or name another");
    }
    if (!Files.isDirectory(folder)) {
      throw refused(
          MistakeCode.UNWRITABLE.about(),
          folder + " is a file, not a folder",
          "Name another folder");
    }
    if (!overwrite && Files.isRegularFile(target)) {
      throw refused(
          MistakeCode.FILE_EXISTS.about(target),
          target + " is there already",
          "Name another file, or ask to overwrite it");
    }
    boolean writable =
        Files.exists(target) && !Files.isRegularFile(target) || Files.isWritable(folder);
    if (!writable) {
      throw refused(
          MistakeCode.UNWRITABLE.about(),
          "The folder " + folder + " is not open to writing",
          "Name another folder");
    }
  }

  /** Removes what processes that were ended while writing this file have left beside it. */
  private static void removeStaleParts(Path real) throws IOException {
    String before = "." + real.getFileName() + ".";
    try (DirectoryStream<Path> parts =
        Files.newDirectoryStream(
            real.getParent(), path -> isPart(path.getFileName().toString(), before))) {
      for (Path part : parts) {
        String name = part.getFileName().toString();
        String pid = name.substring(before.length(), name.length() - PART.length());
        if (ProcessHandle.of(Long.parseLong(pid)).isEmpty()) {
          Files.deleteIfExists(part);
        }
      }
    } catch (DirectoryIteratorException | AccessDeniedException e) {
      // What is left stays; writing itself will tell what is wrong.
    }
  }

  private static boolean isPart(String name, String before) {
    return name.startsWith(before)
        && name.substring(before.length()).matches("\\d{1,18}" + Pattern.quote(PART));
  }

  private static void writePart(Path part, Content content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            part,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16);
      content.write(out);
      out.flush();
      channel.force(true);
    }
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    if (!Files.exists(from)) {
      return;
    }
    PosixFileAttributeView of = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    PosixFileAttributeView toView = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (of != null && toView != null) {
      toView.setPermissions(of.readAttributes().permissions());
    }
  }

  private static void move(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
    try (FileChannel folder = FileChannel.open(target.getParent(), StandardOpenOption.READ)) {
      folder.force(true);
    } catch (IOException e) {
      // Some systems do not open folders; the move itself has been done.
    }
  }

  private static InputException refused(Mistake.Sort sort, String found, String remedy) {
    return new InputException(List.of(Mistake.ofWhole(sort, found, remedy)));
  }
}
