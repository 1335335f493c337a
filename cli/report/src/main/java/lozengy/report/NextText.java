package lozengy.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;

/** Tells of the step that comes next, and of the one after it. */
public final class NextText {

  private final WorkSteps steps;
  private final WorkStepWords words;

  /** Tells of an arrangement's steps. */
  public NextText(Arrangement arrangement, WorkSteps steps) {
    this.steps = steps;
    this.words = new WorkStepWords(arrangement.blanket(), arrangement.sequences());
  }

  /**
   * The next step, how to mark it, and the one after it.
   *
   * @param file the arrangement's file as a command names it
   */
  public List<String> lines(String file) {
    if (steps.left().isEmpty()) {
      return List.of("Nothing is left to do.");
    }
    WorkStep next = steps.left().get(0);
    String number = "Step " + next.number() + " of " + steps.count() + ": ";
    List<String> lines = new ArrayList<>(Paragraph.lines(number, "  ", words.title(next)));
    words.lines(next).forEach(line -> lines.addAll(Paragraph.lines("  ", "    ", line)));
    after().ifPresent(step -> lines.addAll(Paragraph.lines("Then: ", "  ", words.title(step))));
    String mark = words.mark(steps, next);
    if (!mark.isEmpty()) {
      // in one piece, to be pasted
      lines.add("When it is done: lozengy mark " + ShellWord.of(file) + " " + mark);
    }
    return lines;
  }

  /** The same as data. */
  public Map<String, Object> data() {
    return Json.object(
        "order", steps.order().word(),
        "steps", steps.count(),
        "left", steps.left().size(),
        "next", steps.left().stream().findFirst().map(words::data),
        "then", after().map(words::data));
  }

  private Optional<WorkStep> after() {
    return steps.left().stream().skip(1).findFirst();
  }
}
