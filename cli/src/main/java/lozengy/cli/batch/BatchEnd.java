package lozengy.cli.batch;

import java.util.List;

/**
 * How far a batch came.
 *
 * @param stopped whether it was stopped before all lines had their whole result
 * @param lastLine the last line up to which all have a result; the one before the first line where
 *     none has
 * @param cutShort lines whose search was cut short
 */
public record BatchEnd(boolean stopped, long lastLine, List<Long> cutShort) {

  /** The last line up to which all have the result that they would have had. */
  public long lastWhole() {
    return cutShort.isEmpty() ? lastLine : cutShort.get(0) - 1;
  }
}
