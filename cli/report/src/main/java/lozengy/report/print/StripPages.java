package lozengy.report.print;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Setting;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartPage;

/** Writes the chart that numbers the strips and shows which are joined. */
final class StripPages {

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;

  StripPages(Sheet sheet, Arrangement arrangement) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
  }

  void write(ChartPage page) {
    html.open("div", "class", "whole");
    sheet.part("Strips");
    html.text("p", how(), "class", "quiet");
    List<Strip> joined =
        Strips.of(blanket.layout()).stream()
            .filter(strip -> strip.pieces().stream().allMatch(at -> joined(at.index())))
            .toList();
    if (!joined.isEmpty()) {
      html.open("p");
      html.words("Joined already, in full colour: ");
      for (Strip strip : joined) {
        html.open("span", "class", "piece");
        sheet.ticked();
        html.words(String.valueOf(strip.number()));
        html.close();
        html.words(" ");
      }
      html.close();
    }
    sheet.picture(Chart.strips(arrangement, page), page, alternative(joined));
    html.close();
  }

  private boolean joined(int piece) {
    return blanket.state(piece) == PieceState.JOINED;
  }

  private String how() {
    boolean onPoint = blanket.layout().size().setting() == Setting.ON_POINT;
    return "Follow a line from its number: join the pieces of strip 1, then those of strip 2, and"
        + " join strip 2 to strip 1; go on so."
        + (onPoint && blanket.layout().size().sideTriangles()
            ? " Strips end in triangles, named after their side."
            : "");
  }

  private String alternative(List<Strip> joined) {
    return "The blanket with a numbered line through the pieces of each of its "
        + Figures.count(Strips.of(blanket.layout()).size(), "strip")
        + (joined.isEmpty()
            ? ""
            : "; joined: "
                + joined.stream()
                    .map(strip -> String.valueOf(strip.number()))
                    .collect(Collectors.joining(", ")));
  }
}
