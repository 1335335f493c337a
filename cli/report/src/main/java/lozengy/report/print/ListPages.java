package lozengy.report.print;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.making.MakeList;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PileLine;
import lozengy.report.TimeWords;
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
    if (blanket.brief().pile().isEmpty()) {
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
      html.text("td", line.places());
      html.close();
    }
    html.close();
    html.close();
  }

  private void makeList() {
    sheet.part("Make list");
    MakeList list = MakeList.of(arrangement);
    List<MakeList.Batch> batches = list.batches();
    if (batches.isEmpty()) {
      html.text("p", "Every piece is made.");
      return;
    }
    TimeWords.of(arrangement.blanket(), arrangement.sequences())
        .ifPresent(words -> html.text("p", words));
    html.text("p", WorkWords.listed(list), "class", "quiet");
    html.open("table");
    html.open("tbody");
    batches.forEach(this::batch);
    html.close();
    html.close();
  }

  private void batch(MakeList.Batch batch) {
    html.open("tr");
    html.open("td", "style", "width:11mm");
    sheet.tick();
    html.words(" " + batch.step());
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
