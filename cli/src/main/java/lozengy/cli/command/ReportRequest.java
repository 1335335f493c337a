package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.making.WorkOrder;
import lozengy.report.GraphMl;
import lozengy.report.card.CardText;
import lozengy.report.card.FullCard;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.page.Page;
import lozengy.report.print.Booklet;
import lozengy.report.print.ChartSheets;
import lozengy.report.print.Paper;
import lozengy.report.print.Picture;

/**
 * A report of one file that is asked for.
 *
 * @param form its form, one that is a file
 * @param names whether the chart shows names
 * @param signs what the chart shows on every round
 * @param weak whether the chart marks the places that cost most
 * @param look how the chart is drawn
 * @param bare whether the chart is the blanket alone
 * @param width how wide the chart is to be, if that was said
 * @param paper the booklet's paper
 * @param order by what the booklet's steps go
 * @param date the booklet's date, if any
 * @param home where the arrangement's file lies, for the commands that the page makes
 */
record ReportRequest(
    ReportForm form,
    boolean names,
    ChartOptions.Signs signs,
    boolean weak,
    ChartOptions.Look look,
    boolean bare,
    Optional<PictureWidth> width,
    Paper paper,
    WorkOrder order,
    Optional<LocalDate> date,
    Page.Home home) {

  /** Makes the report. */
  byte[] make(Arrangement arrangement) {
    return switch (form) {
      case SVG -> utf8(chart(arrangement));
      case PNG -> Picture.png(chart(arrangement), width.orElse(PictureWidth.USUAL).pixels());
      case PDF -> Booklet.pdf(arrangement, paper, order, date);
      case SHEETS -> ChartSheets.pdf(arrangement, paper);
      case HTML -> utf8(Page.html(arrangement, home));
      case GRAPHML -> utf8(GraphMl.text(arrangement));
      case CARD -> utf8(CardText.of(FullCard.of(arrangement)));
      case TABLES -> throw new IllegalStateException("tables are several files");
    };
  }

  private String chart(Arrangement arrangement) {
    OptionalDouble widthMm =
        width.map(PictureWidth::millimetres).stream().mapToDouble(each -> each).findAny();
    return Chart.svg(arrangement, options(), widthMm);
  }

  private ChartOptions options() {
    return new ChartOptions(names, signs, OptionalInt.empty())
        .withWeak(weak)
        .withLook(look)
        .withBare(bare);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
