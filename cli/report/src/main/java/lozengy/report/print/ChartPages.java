package lozengy.report.print;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.BlanketWords;
import lozengy.report.Cautions;
import lozengy.report.Chart;
import lozengy.report.ChartOptions;
import lozengy.report.ChartPage;
import lozengy.report.Drawing;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.YarnLine;

/** Writes the chart on a page of its own, and the yarns with what to buy. */
final class ChartPages {

  /** Margins of the page, and room for the title and the line below it. */
  private static final double BESIDE_MM = 28;

  private static final double ABOVE_AND_BELOW_MM = 62;

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Drawing drawing;
  private final Paper paper;

  ChartPages(Sheet sheet, Arrangement arrangement, Drawing drawing, Paper paper) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.drawing = drawing;
    this.paper = paper;
  }

  void write() {
    ChartPage page =
        ChartPage.bare(drawing, paper.widthMm() - BESIDE_MM, paper.heightMm() - ABOVE_AND_BELOW_MM);
    html.text(
        "p",
        BlanketWords.size(drawing.widthCm(), drawing.heightCm())
            + ", "
            + BlanketWords.setting(blanket)
            + ": "
            + BlanketWords.pieces(blanket)
            + ". Scale 1:"
            + page.scale()
            + ".",
        "class",
        "quiet");
    ChartOptions options = new ChartOptions(true, ChartOptions.Signs.LETTERS, OptionalInt.empty());
    sheet.picture(Chart.bare(arrangement, options, page), page);
    if (!new TakesPage(sheet, arrangement).write()) {
      shoppingList();
    }
    cautions();
  }

  private void shoppingList() {
    sheet.part("Yarns, and what to buy");
    List<YarnNeed> needs = YarnNeed.of(blanket, arrangement.sequences());
    boolean enough = needs.stream().allMatch(YarnNeed::lasts);
    html.text("p", enough ? "Nothing needs to be bought: what is at hand suffices." : "");
    html.open("table");
    html.open("thead");
    html.open("tr");
    html.text("th", "");
    html.text("th", "Yarn");
    html.text("th", "Tone");
    html.text("th", "Worked", "class", "n");
    html.text("th", "Still to work", "class", "n");
    html.text("th", "In balls", "class", "n");
    html.text("th", "At hand", "class", "n");
    html.text("th", "To buy");
    html.close();
    html.close();
    html.open("tbody");
    needs.forEach(this::yarn);
    html.close();
    html.close();
    List<String> uses = BlanketWords.uses(blanket);
    String included =
        uses.isEmpty() ? "" : "The work includes " + String.join(" and ", uses) + ". ";
    html.text("p", included + "Paper shows yarn colours only roughly.", "class", "quiet");
  }

  private void cautions() {
    html.text("h3", "Take care");
    html.open("ul");
    Cautions.of(arrangement).forEach(caution -> html.text("li", caution));
    html.close();
  }

  private void yarn(YarnNeed need) {
    html.open("tr");
    html.open("td");
    sheet.tick();
    html.close();
    html.open("td");
    sheet.yarn(blanket, need.yarn());
    html.close();
    html.text("td", blanket.tone(need.yarn()).word());
    html.text("td", Figures.metres(need.work().workedMillimetres()) + " m", "class", "n");
    html.text("td", Figures.metres(need.work().toWorkMillimetres()) + " m", "class", "n");
    html.text(
        "td",
        need.ballsNeeded().isPresent() ? String.valueOf(need.ballsNeeded().getAsLong()) : "-",
        "class",
        "n");
    boolean gone = blanket.yarn(need.yarn()).gone();
    html.text(
        "td",
        gone ? YarnLine.GONE : Figures.metres(need.work().atHandMillimetres()) + " m",
        "class",
        "n");
    html.text(
        "td",
        need.purchase()
            .map(
                buy ->
                    (buy.balls().isPresent()
                            ? Figures.count(buy.balls().getAsLong(), "ball") + ": "
                            : "")
                        + Figures.metres(buy.toldMillimetres())
                        + " m")
            .orElse("-"));
    html.close();
  }
}
