package lozengy.report.print;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartPage;
import lozengy.report.chart.Drawing;

/** Writes the strips: a chart that numbers them, and the pieces of each in order. */
final class StripPages {

  private static final double BESIDE_MM = 28;
  private static final double ABOVE_AND_BELOW_MM = 66;

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Drawing drawing;
  private final Paper paper;

  StripPages(Sheet sheet, Arrangement arrangement, Drawing drawing, Paper paper) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.drawing = drawing;
    this.paper = paper;
  }

  void write() {
    List<Strip> strips = Strips.of(blanket.layout());
    boolean onPoint = blanket.layout().size().setting() == Setting.ON_POINT;
    sheet.part("Strips");
    html.text(
        "p",
        "Follow a line from its number: join the pieces of strip 1, then those of strip 2, and join"
            + " strip 2 to strip 1; go on so."
            + (onPoint && blanket.layout().size().sideTriangles()
                ? " Strips end in triangles, named after their side."
                : ""),
        "class",
        "quiet");
    ChartPage page =
        ChartPage.framed(
            drawing, paper.widthMm() - BESIDE_MM, paper.heightMm() - ABOVE_AND_BELOW_MM);
    sheet.picture(Chart.strips(arrangement, page), page);
    html.text("h3", "Strip by strip", "class", "part");
    html.open("table");
    html.open("tbody");
    strips.forEach(this::strip);
    html.close();
    html.close();
  }

  private void strip(Strip strip) {
    boolean joined =
        strip.pieces().stream()
            .allMatch(place -> blanket.state(place.index()) == PieceState.JOINED);
    html.open("tr");
    html.open("td", "style", "width:11mm");
    sheet.tick();
    html.words(" " + strip.number());
    html.close();
    html.text("td", Figures.count(strip.pieces().size(), "piece"), "class", "tight");
    html.text(
        "td",
        strip.pieces().stream().map(Place::name).collect(Collectors.joining(" \u2013 "))
            + (joined ? " (joined)" : ""));
    html.close();
  }
}
