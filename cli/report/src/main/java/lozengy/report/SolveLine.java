package lozengy.report;

import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.solver.SolveOptions;

/**
 * The command that solves a file as an arrangement was found, with a number of moves, to be copied
 * to a shell.
 */
final class SolveLine {

  private SolveLine() {}

  /**
   * The command, without a line break.
   *
   * @param input name of the file; may be empty
   * @param options options that changed what was asked for
   * @param moves at least 1
   */
  static String of(
      Arrangement arrangement, Optional<String> input, List<String> options, long moves) {
    Arrangement.Solved solved = arrangement.solved().orElseThrow();
    StringBuilder line = new StringBuilder("./lozengy solve ");
    line.append(input.map(ShellWord::of).orElse("FILE"));
    options.forEach(option -> line.append(' ').append(ShellWord.of(option)));
    line.append(" --seed ").append(solved.seed()).append(" --moves ").append(moves);
    if (solved.walkers() != SolveOptions.defaultWalkers(arrangement.blanket())) {
      line.append(" --walkers ").append(solved.walkers());
    }
    return line.toString();
  }
}
