package lozengy.report;

import java.util.List;
import java.util.Optional;

/** The command that solves a file with a seed and a number of moves, to be copied to a shell. */
final class SolveLine {

  private SolveLine() {}

  /**
   * The command, without a line break.
   *
   * @param input name of the file; may be empty
   * @param options options that changed what was asked for
   * @param moves at least 1
   */
  static String of(Optional<String> input, List<String> options, long seed, long moves) {
    StringBuilder line = new StringBuilder("./lozengy solve ");
    line.append(PlainText.oneLine(input.map(SolveLine::quoted).orElse("FILE")));
    options.forEach(option -> line.append(' ').append(PlainText.oneLine(quoted(option))));
    return line.append(" --seed ").append(seed).append(" --moves ").append(moves).toString();
  }

  /** A word as a shell takes it. */
  private static String quoted(String word) {
    return word.matches("[\\w./+=,-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
