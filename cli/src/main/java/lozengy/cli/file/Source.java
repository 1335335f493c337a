package lozengy.cli.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.SourceText;

/**
 * An input as it is named on the command line.
 *
 * @param argument a path, or {@code -} for standard input
 */
public record Source(String argument) {

  private static final String STANDARD = "-";

  /** Stands where bytes of an argument were no letter. */
  private static final char UNREADABLE = '\ufffd';

  /** Whether it is standard input. */
  public boolean isStandardInput() {
    return argument.equals(STANDARD);
  }

  /** What messages call it. */
  public String label() {
    return isStandardInput() ? "standard input" : argument;
  }

  /**
   * Its path.
   *
   * @throws Refusal if the argument is no path
   * @throws IllegalStateException if it is standard input
   */
  public Path path() {
    if (isStandardInput()) {
      throw new IllegalStateException("standard input has no path");
    }
    return path(argument);
  }

  static Path path(String argument) {
    try {
      return Path.of(argument);
    } catch (InvalidPathException e) {
      throw Refusal.of(
          argument,
          MistakeCode.MALFORMED.about(argument),
          "This is no file name: " + e.getReason(),
          "Name a file; what cannot be named can come as standard input, -");
    }
  }

  /**
   * Reads all of it.
   *
   * @throws Refusal if it cannot be read, is far too large or is not text
   */
  public SourceText read(Terminal terminal) {
    try (InputStream in = open(terminal)) {
      return SourceText.read(isStandardInput() ? label() : argument, in);
    } catch (InputException e) {
      throw Refusal.of(label(), e);
    } catch (IOException e) {
      throw Refusal.of(
          label(),
          MistakeCode.UNREADABLE.about(reason(e)),
          "It cannot be read: " + reason(e),
          "Check that you may read it");
    }
  }

  /**
   * Opens it.
   *
   * @throws Refusal if it cannot be read
   */
  public InputStream open(Terminal terminal) {
    if (isStandardInput()) {
      return terminal.in();
    }
    Path path = path();
    if (Files.isDirectory(path)) {
      throw Refusal.of(
          argument,
          MistakeCode.UNREADABLE.about(),
          "This is a folder",
          "Name a brief or an arrangement in it");
    }
    try {
      return Files.newInputStream(path);
    } catch (NoSuchFileException e) {
      throw Refusal.of(
          argument,
          MistakeCode.NO_SUCH_FILE.about(argument),
          "There is no such file",
          argument.indexOf(UNREADABLE) < 0
              ? "Check its name and its folder"
              : "Its name is no UTF-8: rename it, or give it as standard input, -");
    } catch (IOException e) {
      throw Refusal.of(
          label(),
          MistakeCode.UNREADABLE.about(reason(e)),
          "It cannot be read: " + reason(e),
          "Check that you may read it");
    }
  }

  static String reason(IOException failure) {
    return failure instanceof java.nio.file.AccessDeniedException
        ? "permission denied"
        : String.valueOf(failure.getMessage());
  }
}
