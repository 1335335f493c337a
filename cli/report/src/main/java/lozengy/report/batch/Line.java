package lozengy.report.batch;

/**
 * A line with a brief or an arrangement.
 *
 * @param number from 1
 * @param bytes without its line break; what was kept of it if it is too long
 * @param tooLong whether there were more than {@link #MOST_BYTES}
 */
public record Line(long number, byte[] bytes, boolean tooLong) {

  /** Longest line in bytes; the brief of a large layout stays far below. */
  public static final int MOST_BYTES = 16 << 20;

  /** Whether it holds nothing but white space. */
  public boolean blank() {
    for (byte each : bytes) {
      if (each != ' ' && each != '\t' && each != '\r') {
        return false;
      }
    }
    return true;
  }
}
