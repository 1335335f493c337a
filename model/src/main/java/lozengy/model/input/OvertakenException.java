package lozengy.model.input;

import java.nio.file.Path;
import java.util.List;

/** A file was not replaced, because another has changed it since it was looked at. */
public final class OvertakenException extends InputException {

  private static final long serialVersionUID = 1L;

  /**
   * Makes the exception.
   *
   * @param file the file
   */
  public OvertakenException(Path file) {
    super(
        List.of(
            new Mistake(
                BriefPath.ROOT,
                0,
                MistakeCode.OVERTAKEN.about(file),
                "Another has changed " + file + " since it was read, so it was left alone",
                "Look at what it holds now, then try again")));
  }
}
