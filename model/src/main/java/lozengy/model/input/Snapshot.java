package lozengy.model.input;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;

/**
 * What stood at a place at a moment: a file with its content, or none. It is told by a digest of
 * the content, since a clock may not tell two changes apart.
 */
public final class Snapshot {

  private static final byte[] NO_FILE = {};

  private final Path target;
  private final Path place;
  private final byte[] digest;

  private Snapshot(Path target) throws IOException {
    this.target = target;
    this.place = WholeFile.place(target);
    this.digest = digest(place);
  }

  /**
   * Looks at a place. O(size of the file).
   *
   * @param target the file, which need not be there
   * @return what stands there now
   * @throws IOException if the file cannot be read
   * @throws InputException if links lead nowhere
   */
  public static Snapshot of(Path target) throws IOException {
    return new Snapshot(target);
  }

  /**
   * {@return whether the same still stands there} O(size of the file).
   *
   * @throws IOException if the file cannot be read
   */
  public boolean stillHolds() throws IOException {
    Snapshot now = new Snapshot(target);
    return now.place.equals(place) && Arrays.equals(now.digest, digest);
  }

  private static byte[] digest(Path place) throws IOException {
    if (!Files.isRegularFile(place)) {
      return NO_FILE;
    }
    try (InputStream in = Files.newInputStream(place);
        DigestInputStream digesting =
            new DigestInputStream(in, MessageDigest.getInstance("SHA-256"))) {
      digesting.transferTo(OutputStream.nullOutputStream());
      return digesting.getMessageDigest().digest();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
