package lozengy.cli.process;

import java.nio.file.Path;
import lozengy.model.input.OvertakenException;

/** A file was not written, because another has changed it since it was looked at. */
public final class Overtaken extends Refusal {

  private static final long serialVersionUID = 1L;

  /** Refuses to write a file. */
  public Overtaken(Path file) {
    super(file.toString(), new OvertakenException(file).mistakes());
  }
}
