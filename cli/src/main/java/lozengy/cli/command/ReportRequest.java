package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lozengy.cli.report.Chart;
import lozengy.cli.report.ChartOptions;
import lozengy.cli.report.GraphMl;
import lozengy.cli.report.page.Page;
import lozengy.cli.report.print.Booklet;
import lozengy.cli.report.print.Paper;
import lozengy.cli.report.print.Picture;
import lozengy.model.arrangement.Arrangement;

/**
 * A report of one file that is asked for.
 *
 * @param form its form, one that is a file
 * @param names whether the chart shows names
 * @param codes whether the chart shows a code on every round
 * @param width how wide the chart is to be, if that was said
 * @param paper the booklet's paper
 * @param date the booklet's date, if any
 * @param file name of the arrangement's file, for the commands that the page makes
 */
record ReportRequest(
    ReportForm form,
    boolean names,
    boolean codes,
    Optional<PictureWidth> width,
    Paper paper,
    Optional<LocalDate> date,
    String file) {

  /** Makes the report. */
  byte[] make(Arrangement arrangement) {
    return switch (form) {
      case SVG -> utf8(chart(arrangement));
      case PNG -> Picture.png(chart(arrangement), width.orElse(PictureWidth.USUAL).pixels());
      case PDF -> Booklet.pdf(arrangement, paper, date);
      case HTML -> utf8(Page.html(arrangement, file));
      case GRAPHML -> utf8(GraphMl.text(arrangement));
      case TABLES -> throw new IllegalStateException("tables are several files");
    };
  }

  private String chart(Arrangement arrangement) {
    OptionalDouble widthMm =
        width.map(PictureWidth::millimetres).stream().mapToDouble(each -> each).findAny();
    return Chart.svg(arrangement, new ChartOptions(names, codes, OptionalInt.empty()), widthMm);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
