package lozengy.report.print;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.making.MakeList;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import lozengy.report.Amount;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.TimeWords;
import lozengy.report.WorkStepWords;
import lozengy.report.WorkWords;
import lozengy.report.wording.Phrases;

/** Writes the steps of an order that goes by yarns, with a box for every piece and every join. */
final class StepPages {

  /** A step of more rounds may go on over the page. */
  private static final int LARGE = 30;

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final WorkStepWords words;

  StepPages(Sheet sheet, Arrangement arrangement) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.words = new WorkStepWords(blanket, arrangement.sequences());
  }

  void write(WorkSteps steps) {
    boolean work = steps.left().stream().anyMatch(WorkStep.Work.class::isInstance);
    boolean byBall = steps.order() == WorkOrder.BALL;
    sheet.part(work ? byBall ? "Make list" : "Round by round" : "What is left to do");
    if (steps.left().isEmpty()) {
      html.text("p", "Everything is done.");
      return;
    }
    TimeWords.of(blanket, arrangement.sequences()).ifPresent(time -> html.text("p", time));
    int done = steps.count() - steps.left().size();
    html.text(
        "p",
        (work ? "Take up one yarn, work all that is listed, take up the next. " : "")
            + Figures.count(steps.count(), "step")
            + (done == 0 ? "" : ", " + done + " of them done and left out here")
            + ".",
        "class",
        "quiet");
    html.open("table", "class", "steps");
    html.open("tbody");
    steps.left().forEach(this::step);
    html.close();
    html.close();
  }

  private void step(WorkStep step) {
    boolean large = step instanceof WorkStep.Work work && work.tasks().size() > LARGE;
    html.open("tr", "class", large ? "large" : "small");
    html.open("td", "class", "number");
    if (!(step instanceof WorkStep.Work)) {
      sheet.tick();
    }
    html.words(String.valueOf(step.number()));
    html.close();
    if (step instanceof WorkStep.Work work) {
      work(work);
    } else {
      html.open("td", "colspan", "2");
      html.text("p", Phrases.capital(words.title(step)));
      for (String line : words.lines(step)) {
        html.text("p", line, "class", "quiet");
      }
      html.close();
    }
    html.close();
  }

  private void work(WorkStep.Work work) {
    MakeList.Task first = work.tasks().get(0);
    html.open("td", "class", "what");
    sheet.yarn(blanket, arrangement.sequences().yarn(first.piece(), first.round()));
    html.text("p", Amount.metres(words.millimetres(work)), "class", "quiet");
    html.close();
    html.open("td");
    for (WorkWords.Line line : WorkWords.lines(blanket, work.tasks())) {
      html.open("p");
      html.text("span", line.what() + ":", "class", "quiet");
      html.words(" ");
      List<String> pieces = line.pieces();
      pieces.forEach(sheet::piece);
      html.close();
    }
    html.close();
  }
}
