package lozengy.cli.file;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import lozengy.cli.Terminal;

/**
 * Where a result goes.
 *
 * @param file the file; empty for standard output
 * @param overwrite whether the file may be replaced if it is there
 * @param option the option that names it, for remedies
 */
public record Target(Optional<Path> file, boolean overwrite, String option) {

  private static final String STANDARD = "-";
  private static final String USUAL_OPTION = "-o";

  /** A place that {@code -o} names. */
  public Target(Optional<Path> file, boolean overwrite) {
    this(file, overwrite, USUAL_OPTION);
  }

  /** The same place, named by another option. */
  public Target namedBy(String another) {
    return new Target(file, overwrite, another);
  }

  /**
   * The place that the user named.
   *
   * @param argument a path, or {@code -} for standard output
   * @throws lozengy.cli.Refusal if it is no path
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
   * Refuses early what {@link #write} would refuse.
   *
   * @throws lozengy.cli.Refusal if the file is there and may not be replaced, or cannot be written
   */
  public void expect() {
    file.ifPresent(new WholeFiles(overwrite, option)::expect);
  }

  /**
   * Writes the result.
   *
   * @throws lozengy.cli.Refusal if it cannot be written
   */
  public void write(Terminal terminal, byte[] result) {
    if (file.isPresent()) {
      new WholeFiles(overwrite, option).write(Map.of(file.get(), result));
    } else {
      terminal.write(result);
    }
  }
}
