package lozengy.cli.process;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * Standard output that never throws: after a failure it swallows the rest. A reader that has left
 * ({@code | head}) is no failure.
 */
final class Pipe extends OutputStream {

  private static final int BUFFER_BYTES = 1 << 16;

  private final OutputStream target;
  private boolean closed;
  private Optional<String> failure = Optional.empty();

  Pipe(OutputStream target) {
    this.target = new BufferedOutputStream(target, BUFFER_BYTES);
  }

  @Override
  public void write(int b) {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) {
    attempt(() -> target.write(bytes, offset, length));
  }

  @Override
  public void flush() {
    attempt(target::flush);
  }

  /** Whether nothing more is written. */
  boolean closed() {
    return closed;
  }

  /** Why writing failed, if it did. */
  Optional<String> failure() {
    return failure;
  }

  private void attempt(Writing writing) {
    if (closed) {
      return;
    }
    try {
      writing.run();
    } catch (IOException e) {
      closed = true;
      String why = String.valueOf(e.getMessage());
      boolean readerLeft = why.toLowerCase(Locale.ROOT).contains("pipe");
      failure = readerLeft ? Optional.empty() : Optional.of(why);
    }
  }

  private interface Writing {
    void run() throws IOException;
  }
}
