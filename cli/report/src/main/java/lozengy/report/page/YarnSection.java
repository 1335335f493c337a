package lozengy.report.page;

import java.util.List;
import java.util.OptionalDouble;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.yarn.YarnWork;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.YarnLine;

/** Writes the table of yarns, with bars for what is used and left. */
final class YarnSection {

  private final Markup html;
  private final Arrangement arrangement;

  YarnSection(Markup html, Arrangement arrangement) {
    this.html = html;
    this.arrangement = arrangement;
  }

  void write() {
    html.open("section", "id", "yarns", "aria-labelledby", "yarns-head");
    html.text("h2", "Yarns", "id", "yarns-head");
    html.open(
        "div",
        "class",
        "scroll",
        "tabindex",
        "0",
        "role",
        "region",
        "aria-label",
        "Table of yarns");
    List<YarnLine> lines = YarnLine.of(arrangement);
    boolean begun = lines.stream().anyMatch(line -> line.work().workedMillimetres() > 0);
    html.open("table", "class", begun ? "begun" : "fresh");
    html.open("thead");
    html.open("tr");
    html.text("th", "Yarn", "scope", "col");
    html.text("th", "Tone", "scope", "col", "class", "tone");
    html.text("th", "At hand", "scope", "col", "class", "n");
    if (begun) {
      html.text("th", "Worked", "scope", "col", "class", "n");
    }
    html.text("th", "To work", "scope", "col", "class", "n");
    html.text("th", "Left", "scope", "col", "class", "n");
    html.text("th", "To work, of what is at hand", "scope", "col", "class", "wide");
    html.close();
    html.close();
    html.open("tbody");
    for (int yarn = 0; yarn < lines.size(); yarn++) {
      row(yarn, lines.get(yarn), begun);
    }
    html.close();
    html.close();
    html.close();
    List<String> uses = BlanketWords.uses(arrangement);
    if (!uses.isEmpty()) {
      html.text("p", "The work includes " + String.join(" and ", uses) + ".", "class", "hint");
    }
    double keptBack = arrangement.blanket().brief().rules().keepBackPercent();
    if (keptBack > 0) {
      html.text(
          "p",
          Figures.shortest(keptBack, 2) + " % of each yarn is kept back, and counted as left.",
          "class",
          "hint");
    }
    html.text("p", "Screen and paper show yarn colours only roughly.", "class", "hint");
    html.close();
  }

  private void row(int yarn, YarnLine line, boolean begun) {
    html.open("tr");
    html.open("th", "scope", "row");
    Swatches.yarn(html, arrangement.blanket(), yarn);
    html.close();
    html.text("td", line.tone().word(), "class", "tone");
    YarnWork work = line.work();
    if (line.yarn().gone()) {
      html.text("td", YarnLine.GONE, "class", "n");
    } else {
      amount(work.atHandMillimetres(), line.balls(work.atHandMillimetres()));
    }
    if (begun) {
      amount(work.workedMillimetres(), line.balls(work.workedMillimetres()));
    }
    amount(work.toWorkMillimetres(), line.balls(work.toWorkMillimetres()));
    amount(line.leftMillimetres(), line.balls(line.leftMillimetres()));
    html.open("td", "class", "wide");
    double available = Math.max(1, work.atHandMillimetres());
    double over = line.leftMillimetres() < 0 ? -line.leftMillimetres() / available : 0;
    Bars.bar(html, work.toWorkMillimetres() / available, over);
    html.close();
    html.close();
  }

  private void amount(long millimetres, OptionalDouble balls) {
    html.open("td", "class", "n");
    html.words(Figures.metres(millimetres) + " m");
    if (balls.isPresent()) {
      html.text("small", Figures.fixed(balls.getAsDouble(), 2) + " balls");
    }
    html.close();
  }
}
