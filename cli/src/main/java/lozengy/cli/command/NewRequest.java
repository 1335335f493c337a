package lozengy.cli.command;

import java.util.ArrayList;
import java.util.List;
import lozengy.cli.file.Target;
import lozengy.cli.process.Refusal;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.layout.Setting;

/**
 * A brief that is asked for.
 *
 * @param setting how the squares stand
 * @param across squares in the first row, at least 1
 * @param down rows, at least 1
 * @param target where it goes
 */
record NewRequest(Setting setting, int across, int down, Target target) {

  /**
   * Checks the numbers.
   *
   * @throws Refusal if one is below 1
   */
  NewRequest {
    List<Mistake> mistakes = new ArrayList<>();
    if (across < 1) {
      mistakes.add(tooFew("--across", across));
    }
    if (down < 1) {
      mistakes.add(tooFew("--down", down));
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
  }

  private static Mistake tooFew(String option, int found) {
    return Mistake.ofWish(
        option,
        MistakeCode.OUT_OF_RANGE.about(found, 1),
        Integer.toString(found),
        "Give a whole number, 1 or more");
  }
}
