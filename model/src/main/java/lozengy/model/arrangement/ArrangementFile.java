package lozengy.model.arrangement;

import java.io.IOException;
import java.nio.file.Path;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.BriefPath;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.SourceText;
import lozengy.model.input.WholeFile;
import lozengy.model.layout.Place;

/**
 * Reads and writes arrangements whole: what is read is equal to what was written, if its bound is
 * {@link Arrangement.Bound#asStated}, as that of a solved one is. For what a file says that was
 * edited by hand, open rounds and false figures included, see {@link ArrangementReader}.
 */
public final class ArrangementFile {

  private ArrangementFile() {}

  /**
   * Reads an arrangement.
   *
   * @param file the file, JSON in UTF-8
   * @return the arrangement, scored from scratch; whether it breaks a rule is for {@code Check} to
   *     say
   * @throws InputException with all mistakes, if there is one; open rounds are
   */
  public static Arrangement read(Path file) {
    return read(SourceText.read(file));
  }

  /**
   * Reads an arrangement.
   *
   * @param source the text and what messages call it
   * @return the arrangement, scored from scratch
   * @throws InputException with all mistakes, if there is one; open rounds are
   */
  public static Arrangement read(SourceText source) {
    StatedArrangement stated = ArrangementReader.read(source);
    tellOpen(stated.blanket(), stated.sequences());
    return stated.scored();
  }

  private static void tellOpen(Blanket blanket, Sequences sequences) {
    Mistakes mistakes = new Mistakes();
    for (Place place : blanket.layout().places()) {
      for (int round : sequences.openRounds(place.index())) {
        mistakes.add(
            BriefPath.of("pieces"),
            0,
            MistakeCode.ROUND_OPEN.about(place.name(), round + 1),
            "Round " + (round + 1) + " of " + place.name() + " has no yarn yet",
            "Solve it again, which fills it");
      }
    }
    mistakes.throwIfAny();
  }

  /**
   * Writes an arrangement: whole or not at all, see {@link WholeFile#write}. Also on a thread that
   * was interrupted before, as that is which has been handed the best so far; it stays interrupted.
   *
   * @param file the file
   * @param arrangement the arrangement
   * @param overwrite whether a file that is there may be replaced
   * @throws InputException if the file is there and may not be replaced, or cannot be written there
   * @throws IOException if writing fails for another reason, such as a full disk
   */
  public static void write(Path file, Arrangement arrangement, boolean overwrite)
      throws IOException {
    // an interrupted thread would find each channel closed
    boolean interrupted = Thread.interrupted();
    try {
      WholeFile.write(file, overwrite, out -> ArrangementWriter.write(out, arrangement));
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
