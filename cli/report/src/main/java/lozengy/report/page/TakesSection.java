package lozengy.report.page;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.report.Markup;
import lozengy.report.Takes;

/** Writes what a blanket for sale takes. */
final class TakesSection {

  private final Markup html;
  private final Arrangement arrangement;

  TakesSection(Markup html, Arrangement arrangement) {
    this.html = html;
    this.arrangement = arrangement;
  }

  void write() {
    Takes.of(arrangement).ifPresent(this::write);
  }

  private void write(Takes takes) {
    html.open("section", "id", "takes", "aria-labelledby", "takes-head");
    html.text("h2", "This blanket takes", "id", "takes-head");
    html.text("p", takes.headline());
    html.open(
        "div",
        "class",
        "scroll",
        "tabindex",
        "0",
        "role",
        "region",
        "aria-label",
        "Table of what the blanket takes");
    html.open("table");
    html.open("thead");
    html.open("tr");
    html.text("th", "Yarn", "scope", "col");
    takes.heads().forEach(head -> html.text("th", head, "scope", "col", "class", "n"));
    html.close();
    html.close();
    html.open("tbody");
    for (Takes.Shade shade : takes.shades()) {
      html.open("tr");
      html.open("th", "scope", "row");
      Swatches.yarn(html, arrangement.blanket(), shade.yarn());
      html.close();
      cells(shade.cells());
      html.close();
    }
    html.open("tr");
    html.text("th", "In all", "scope", "row");
    cells(takes.all());
    html.close();
    html.close();
    html.close();
    html.close();
    takes.notes().forEach(note -> html.text("p", note, "class", "hint"));
    html.close();
  }

  private void cells(List<String> cells) {
    cells.forEach(cell -> html.text("td", cell, "class", "n"));
  }
}
