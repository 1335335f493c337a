package lozengy.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The program's version, as the build wrote it down. */
public final class Version {

  private static final String RESOURCE = "version.txt";

  private Version() {}

  /** The version, such as {@code 1.2.3}. */
  public static String text() {
    try (InputStream in = Version.class.getResourceAsStream(RESOURCE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
