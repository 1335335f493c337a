package lozengy.cli.command;

import java.util.List;
import java.util.Optional;
import lozengy.model.brief.PartsReader;
import lozengy.model.brief.Yarn;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.SourceText;
import lozengy.model.progress.Mark;

/** Reads yarns that the command line adds. */
final class NewYarn {

  private NewYarn() {}

  /**
   * A yarn with its fields as in a brief: {@code code: RUS, colour: "#8a4b2d", left: 100 m}, in
   * braces or without.
   *
   * @param mistakes takes what is wrong with it
   */
  static Optional<Mark.Added> read(String option, String text, List<Mistake> mistakes) {
    String fields = text.strip().startsWith("{") ? text : "{ " + text + " }";
    try {
      // without a mark of YAML braces would be read as JSON
      Yarn yarn = PartsReader.yarn(SourceText.of(option, "--- " + fields));
      return Optional.of(new Mark.Added(option + " " + yarn.code(), yarn));
    } catch (InputException e) {
      e.mistakes().forEach(mistake -> mistakes.add(placed(option, mistake)));
      return Optional.empty();
    }
  }

  private static Mistake placed(String option, Mistake mistake) {
    String place = (option + " " + mistake.path()).strip();
    return Mistake.ofWish(place, mistake.sort(), mistake.found(), mistake.remedy());
  }
}
