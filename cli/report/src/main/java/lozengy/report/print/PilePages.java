package lozengy.report.print;

import lozengy.model.arrangement.Arrangement;
import lozengy.report.Markup;
import lozengy.report.PileLine;

/** Writes where finished pieces go: from the piece in hand to its place. */
final class PilePages {

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;

  PilePages(Sheet sheet, Arrangement arrangement) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
  }

  void write() {
    if (arrangement.blanket().brief().pile().isEmpty()) {
      return;
    }
    sheet.part("Pile");
    html.text("p", PileLine.title(arrangement.blanket()) + ".", "class", "quiet");
    html.open("table");
    html.open("tbody");
    for (PileLine line : PileLine.index(arrangement)) {
      html.open("tr");
      html.open("td");
      sheet.tick();
      html.words(line.kind());
      html.close();
      html.text("td", String.join(" ", line.inwards()));
      html.text("td", line.places());
      html.close();
    }
    html.close();
    html.close();
  }
}
