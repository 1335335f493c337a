package lozengy.report.print;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.making.MakeList;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PileLine;
import lozengy.report.WorkWords;

/** Writes where finished pieces go, and the make list, with a box for every step. */
final class ListPages {

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;

  ListPages(Sheet sheet, Arrangement arrangement) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
  }

  void write() {
    pile();
    makeList();
  }

  /** From the piece in hand to its place. */
  private void pile() {
    if (blanket.pile().stacks().isEmpty()) {
      return;
    }
    sheet.part("Pile");
    html.text("p", PileLine.title(blanket) + ".", "class", "quiet");
    html.open("table");
    html.open("tbody");
    for (PileLine line : PileLine.index(arrangement)) {
      html.open("tr");
      html.open("td");
      sheet.tick();
      html.words(" " + line.kind());
      html.close();
      html.text("td", String.join(" ", line.inwards()));
      html.text("td", String.join(", ", line.at()));
      html.close();
    }
    html.close();
    html.close();
  }

  private void makeList() {
    sheet.part("Make list");
    List<MakeList.Batch> batches = MakeList.of(arrangement).batches();
    if (batches.isEmpty()) {
      html.text("p", "Every piece is made.");
      return;
    }
    html.text(
        "p",
        "Take up one yarn, work all that is listed, take up the next: "
            + Figures.count(batches.size(), "step")
            + ", in an order that picks each yarn up seldom.",
        "class",
        "quiet");
    html.open("table");
    html.open("tbody");
    for (int i = 0; i < batches.size(); i++) {
      batch(i + 1, batches.get(i));
    }
    html.close();
    html.close();
  }

  private void batch(int step, MakeList.Batch batch) {
    html.open("tr");
    html.open("td", "style", "width:11mm");
    sheet.tick();
    html.words(" " + step);
    html.close();
    html.open("td", "style", "width:42mm");
    sheet.yarn(blanket, batch.yarn());
    html.close();
    html.text("td", Figures.metres(batch.millimetres(blanket)) + " m", "class", "n");
    html.open("td");
    for (WorkWords.Line line : WorkWords.lines(blanket, batch)) {
      html.open("p");
      html.text("span", line.what() + ":", "class", "quiet");
      html.words(" " + String.join(", ", line.pieces()));
      html.close();
    }
    html.close();
    html.close();
  }
}
