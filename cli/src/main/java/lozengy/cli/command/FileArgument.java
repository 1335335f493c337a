package lozengy.cli.command;

import lozengy.cli.file.Source;
import picocli.CommandLine.Parameters;

/** The file that a command works on. */
final class FileArgument {

  @Parameters(paramLabel = "FILE", description = "A brief or an arrangement; - is standard input.")
  private String file;

  Source source() {
    return new Source(file);
  }
}
