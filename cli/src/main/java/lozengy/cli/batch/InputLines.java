package lozengy.cli.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import lozengy.report.batch.Line;

/** Splits a stream into lines of bytes, and skips what is too long without keeping it. */
final class InputLines {

  private final InputStream in;
  private final byte[] buffer = new byte[1 << 16];
  private int at;
  private int end;
  private long number;

  InputLines(InputStream in) {
    this.in = in;
  }

  /** The next line, or null at the end. */
  Line next() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    boolean any = false;
    boolean tooLong = false;
    while (fill()) {
      any = true;
      int from = at;
      while (at < end && buffer[at] != '\n') {
        at++;
      }
      tooLong |= line.size() + (at - from) > Line.MOST_BYTES;
      if (!tooLong) {
        line.write(buffer, from, at - from);
      }
      if (at < end) {
        at++;
        break;
      }
    }
    return any ? new Line(++number, line.toByteArray(), tooLong) : null;
  }

  private boolean fill() throws IOException {
    if (at < end) {
      return true;
    }
    at = 0;
    end = Math.max(0, in.read(buffer));
    return end > 0;
  }
}
