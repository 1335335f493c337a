package lozengy.cli.command;

import picocli.CommandLine.Option;

/** The option that asks for a result that programs can read. */
final class JsonOption {

  @Option(
      names = "--json",
      description = "Print the result, or what is wrong, as JSON on standard output.")
  private boolean json;

  boolean wanted() {
    return json;
  }
}
