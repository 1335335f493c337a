package lozengy.report.print;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.report.Markup;
import lozengy.report.Takes;

/** Writes what a blanket for sale takes, in place of what is to buy beside a stock. */
final class TakesPage {

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;

  TakesPage(Sheet sheet, Arrangement arrangement) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
  }

  /** Whether the plan is for sale; nothing is written otherwise. */
  boolean write() {
    Takes.of(arrangement).ifPresent(this::write);
    return arrangement.blanket().brief().forSale().isPresent();
  }

  private void write(Takes takes) {
    sheet.part("This blanket takes");
    html.text("p", takes.headline());
    html.open("table");
    html.open("thead");
    html.open("tr");
    html.text("th", "");
    html.text("th", "Yarn");
    takes.heads().forEach(head -> html.text("th", head, "class", "n"));
    html.close();
    html.close();
    html.open("tbody");
    for (Takes.Shade shade : takes.shades()) {
      html.open("tr");
      html.open("td");
      sheet.tick();
      html.close();
      html.open("td");
      sheet.yarn(arrangement.blanket(), shade.yarn());
      html.close();
      cells(shade.cells());
      html.close();
    }
    html.open("tr");
    html.text("td", "");
    html.text("td", "In all");
    cells(takes.all());
    html.close();
    html.close();
    html.close();
    takes.notes().forEach(note -> html.text("p", note, "class", "quiet"));
    html.text("p", "Paper shows yarn colours only roughly.", "class", "quiet");
  }

  private void cells(List<String> cells) {
    cells.forEach(cell -> html.text("td", cell, "class", "n"));
  }
}
