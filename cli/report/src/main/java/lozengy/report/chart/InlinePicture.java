package lozengy.report.chart;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.OptionalInt;
import lozengy.model.arrangement.Arrangement;
import lozengy.report.Markup;

/** The blanket alone, as an image within a page that needs no file beside it. */
public final class InlinePicture {

  private static final ChartOptions BARE =
      new ChartOptions(false, ChartOptions.Signs.NONE, OptionalInt.empty());

  private InlinePicture() {}

  /**
   * Writes the image.
   *
   * @param html the page, within an element that may hold an image
   * @param arrangement the arrangement
   * @param sideMm width and height of the square that the blanket fits into, in mm, above 0
   * @param alt what is told to those who do not see it
   */
  public static void write(Markup html, Arrangement arrangement, double sideMm, String alt) {
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    ChartPage page = ChartPage.bare(drawing, sideMm, sideMm);
    byte[] svg = Chart.bare(arrangement, BARE, page).getBytes(StandardCharsets.UTF_8);
    String source = "data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(svg);
    html.empty("img", "src", source, "alt", alt);
  }
}
