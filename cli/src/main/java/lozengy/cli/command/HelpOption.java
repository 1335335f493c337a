package lozengy.cli.command;

import picocli.CommandLine.Option;

/** The option that shows a command's help. */
final class HelpOption {

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;
}
