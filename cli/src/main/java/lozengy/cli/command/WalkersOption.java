package lozengy.cli.command;

import lozengy.solver.SolveOptions;
import picocli.CommandLine.Option;

/** The option that says how many walkers share a solve's moves. */
final class WalkersOption {

  @Option(
      names = "--walkers",
      paramLabel = "N",
      description =
          "Share the moves among that many walkers, 1 to "
              + SolveOptions.MOST_WALKERS
              + "; by the blanket's size if not said. With the seed and the moves they fix the"
              + " result.")
  private Integer walkers;

  /** How many; null if not said. */
  Integer wanted() {
    return walkers;
  }
}
