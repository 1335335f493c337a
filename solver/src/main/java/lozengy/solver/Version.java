package lozengy.solver;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The version of the program, as the build states it. */
public final class Version {

  private static final String TEXT = read();

  private Version() {}

  /** {@return the version, such as {@code 1.2.3}} */
  public static String text() {
    return TEXT;
  }

  private static String read() {
    try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
