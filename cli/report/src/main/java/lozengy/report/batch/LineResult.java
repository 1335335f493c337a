package lozengy.report.batch;

import java.util.Optional;

/**
 * What became of a line.
 *
 * @param line its number, from 1
 * @param bytes the line that answers it; empty where it was not begun before the batch was stopped
 * @param cutShort whether it was stopped before its end
 */
public record LineResult(long line, Optional<byte[]> bytes, boolean cutShort) {}
