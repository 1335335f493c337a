package lozengy.benchmarks;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * The command line of the benchmarks; {@code benchmarks/run} calls it from the project's folder.
 */
@Command(
    name = "benchmarks/run",
    mixinStandardHelpOptions = true,
    description = "Measures Lozengy. See benchmarks/README.md.",
    subcommands = {
      DumpBriefs.class,
      WholeSolve.class,
      ColdRuns.class,
      Growth.class,
      BatchRuns.class,
      MidWork.class,
      PackRuns.class,
      Kernels.class,
      LookRuns.class,
      Pace.class,
      SeedRuns.class,
      LimitRuns.class,
      WalkerRuns.class,
      Tables.class
    })
public final class Benchmarks {

  private Benchmarks() {}

  /** Runs a command and exits with its code. */
  public static void main(String[] arguments) {
    System.exit(new CommandLine(new Benchmarks()).execute(arguments));
  }
}
