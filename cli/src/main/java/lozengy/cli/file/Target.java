package lozengy.cli.file;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import lozengy.cli.process.Terminal;

/**
 * Where a result goes.
 *
 * @param file the file; empty for standard output
 * @param files what writes it
 */
public record Target(Optional<Path> file, WholeFiles files) {

  private static final String STANDARD = "-";

  /** A place that {@code -o} names. */
  public Target(Optional<Path> file, boolean overwrite) {
    this(file, new WholeFiles(overwrite));
  }

  /** The same place, named by another option. */
  public Target namedBy(String another) {
    return new Target(file, files.namedBy(another));
  }

  /**
   * The place that the user named.
   *
   * @param argument a path, or {@code -} for standard output
   * @throws lozengy.cli.process.Refusal if it is no path
   */
  public static Target of(String argument, boolean overwrite) {
    return argument.equals(STANDARD)
        ? standardOutput()
        : new Target(Optional.of(Source.path(argument)), overwrite);
  }

  /** Standard output. */
  public static Target standardOutput() {
    return new Target(Optional.empty(), false);
  }

  /**
   * Refuses early what {@link #write} would refuse. What stands there at this moment is what may be
   * replaced.
   *
   * @throws lozengy.cli.process.Refusal if the file is there and may not be replaced, or cannot be
   *     written
   */
  public void expect() {
    file.ifPresent(files::expect);
  }

  /**
   * Writes the result.
   *
   * @throws lozengy.cli.process.Overtaken if another has changed the file since it was expected
   * @throws lozengy.cli.process.Refusal if it cannot be written
   */
  public void write(Terminal terminal, byte[] result) {
    if (file.isPresent()) {
      files.write(Map.of(file.get(), result));
    } else {
      terminal.write(result);
    }
  }
}
