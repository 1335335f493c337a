package lozengy.report.print;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.BlanketWords;
import lozengy.report.Cautions;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.YarnLine;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.chart.ChartPage;
import lozengy.report.chart.Drawing;

/** Writes the chart, the strips beside or behind it, and the yarns with what to buy. */
final class ChartPages {

  /** Margins of the page. */
  private static final double BESIDE_MM = 28;

  private static final double ABOVE_AND_BELOW_MM = 36;

  /** Room for the title or a head, and the lines below it. */
  private static final double HEAD_MM = 27;

  /** A chart that would fill less of a page than this shares it with that of the strips. */
  private static final double FULL = 0.72;

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Drawing drawing;
  private final double roomBeside;
  private final double roomBelow;

  ChartPages(Sheet sheet, Arrangement arrangement, Drawing drawing, Paper paper) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.drawing = drawing;
    this.roomBeside = paper.widthMm() - BESIDE_MM;
    double high = paper.heightMm() - ABOVE_AND_BELOW_MM;
    double alone = ChartPage.bare(drawing, roomBeside, high - HEAD_MM).height();
    this.roomBelow = (alone > FULL * high ? high : high / 2) - HEAD_MM;
  }

  void write() {
    ChartPage page = ChartPage.bare(drawing, roomBeside, roomBelow);
    String size =
        BlanketWords.size(blanket)
            + ", "
            + BlanketWords.setting(blanket)
            + ": "
            + BlanketWords.pieces(blanket);
    html.text("p", size + ". Scale 1:" + page.scale() + ".", "class", "quiet");
    ChartOptions options = new ChartOptions(true, ChartOptions.Signs.LETTERS, OptionalInt.empty());
    sheet.picture(Chart.bare(arrangement, options, page), page, "Chart of the blanket: " + size);
    new StripPages(sheet, arrangement).write(ChartPage.framed(drawing, roomBeside, roomBelow));
    if (!new TakesPage(sheet, arrangement).write()) {
      shoppingList();
    }
    cautions();
  }

  private void shoppingList() {
    html.open("div", "class", "whole");
    sheet.part("Yarns, and what to buy");
    List<YarnNeed> needs = YarnNeed.of(blanket, arrangement.sequences());
    boolean worked = needs.stream().anyMatch(need -> need.work().workedMillimetres() > 0);
    boolean enough = needs.stream().allMatch(YarnNeed::lasts);
    html.text("p", enough ? "Nothing needs to be bought: what is at hand suffices." : "");
    html.open("table");
    html.open("thead");
    html.open("tr");
    html.text("th", "");
    html.text("th", "Yarn");
    html.text("th", "Tone");
    if (worked) {
      html.text("th", "Worked", "class", "n");
    }
    html.text("th", "Still to work", "class", "n");
    html.text("th", "In balls", "class", "n");
    html.text("th", "At hand", "class", "n");
    html.text("th", "To buy");
    html.close();
    html.close();
    html.open("tbody");
    needs.forEach(need -> yarn(need, worked));
    html.close();
    html.close();
    html.close();
    String uses = uses();
    html.text(
        "p",
        (uses.isEmpty() ? "" : "What is still to work includes " + uses + ". ")
            + "Paper shows yarn colours only roughly.",
        "class",
        "quiet");
  }

  /** What joining and edging still take. */
  private String uses() {
    List<String> uses = new ArrayList<>();
    long joining = 0;
    for (WorkStep step : WorkSteps.of(arrangement, WorkOrder.STRIP).left()) {
      joining += step instanceof WorkStep.Join join ? join.millimetres() : 0;
    }
    if (joining > 0) {
      String yarn =
          blanket
              .brief()
              .joiningInOneYarn()
              .map(use -> " of " + use.yarn())
              .orElse(BlanketWords.IN_BORDERS);
      uses.add("joining " + Figures.metres(joining) + " m" + yarn);
    }
    if (blanket.fixedUse().edgingMillimetres() > 0) {
      BlanketWords.edging(blanket).forEach(each -> uses.add("edging " + each));
    }
    return String.join(" and ", uses);
  }

  private void cautions() {
    html.text("h3", "Take care");
    html.open("ul");
    Cautions.of(arrangement).forEach(caution -> html.text("li", caution));
    html.close();
  }

  private void yarn(YarnNeed need, boolean worked) {
    html.open("tr");
    html.open("td");
    sheet.tick();
    html.close();
    html.open("td");
    sheet.yarn(blanket, need.yarn());
    html.close();
    html.text("td", blanket.yarns().tone(need.yarn()).word());
    if (worked) {
      html.text("td", Figures.metres(need.work().workedMillimetres()) + " m", "class", "n");
    }
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
