package lozengy.cli.command;

import java.util.Optional;
import java.util.function.Supplier;
import lozengy.cli.file.FolderTarget;
import lozengy.cli.file.Target;
import lozengy.cli.file.WholeFiles;
import picocli.CommandLine.Option;

/** The options that say where a result goes. */
final class OutputOptions {

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Where the result goes; - is standard output.")
  private String output;

  @Option(names = "--overwrite", description = "Replace a file that is there already.")
  private boolean overwrite;

  /** What the call names, as it stands there. */
  Optional<String> names() {
    return Optional.ofNullable(output);
  }

  /** Whether files that are there may be replaced. */
  boolean overwrite() {
    return overwrite;
  }

  /** What writes the results. */
  WholeFiles files() {
    return new WholeFiles(overwrite);
  }

  /** The place that was named, or else a usual one. */
  Target targetOr(Supplier<Target> usual) {
    return output == null ? usual.get() : Target.of(output, overwrite);
  }

  /** The folder that was named, or else a usual one; {@code -} is standard output. */
  FolderTarget folderOr(Supplier<FolderTarget> usual) {
    return output == null
        ? usual.get()
        : new FolderTarget(Target.of(output, overwrite).file(), files());
  }
}
