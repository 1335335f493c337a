package lozengy.range;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Locale;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Documents;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.input.SourceText;
import lozengy.report.Markup;
import lozengy.report.chart.InlinePicture;
import org.apache.spark.sql.Row;

/** One page with the best of each size, palette and look. */
final class GalleryPage {

  /** Most pictures; more are no page that anybody looks through. */
  static final int MOST = 500;

  private static final double PICTURE_MM = 60;
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String STYLE =
      "body{font-family:sans-serif;margin:1.5rem}"
          + "main{display:grid;gap:1.5rem;grid-template-columns:repeat(auto-fill,minmax(15rem,1fr))}"
          + "figure{margin:0}img{width:100%}";

  private GalleryPage() {}

  /**
   * Writes the page.
   *
   * @param best rows of lines, see {@link SolveLines#ROW}, whose outcome is found
   */
  static String of(List<Row> best) {
    Markup html = Markup.html("lang", "en");
    html.open("head");
    html.empty("meta", "charset", "utf-8");
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.text("title", "The best of each");
    html.verbatim("style", STYLE);
    html.close();
    html.open("body");
    html.text("h1", "The best of each");
    if (best.size() == MOST) {
      html.text("p", "The first " + MOST + "; the summary has all.");
    }
    html.open("main");
    best.forEach(each -> figure(html, each));
    html.close();
    html.close();
    return html.finish();
  }

  private static void figure(Markup html, Row row) {
    String name =
        String.join(
            ", ", row.<String>getAs("size"), row.getAs("palette"), row.<String>getAs("look"));
    Arrangement arrangement = arrangement(row.getAs("result"));
    html.open("figure");
    InlinePicture.write(html, arrangement, PICTURE_MM, "The blanket, " + name);
    html.open("figcaption");
    html.text("h2", name);
    html.text(
        "p",
        String.format(
            Locale.ROOT,
            "Score %.1f, with seed %d, on line %d",
            row.<Double>getAs("objective"),
            row.<Long>getAs("seed"),
            row.<Long>getAs("line")));
    html.close();
    html.close();
  }

  private static Arrangement arrangement(String result) {
    try {
      String text = JSON.readTree(result).get("arrangement").toString();
      return ((ArrangementDocument) Documents.read(new SourceText("", text, true)))
          .arrangement()
          .scored();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A result is JSON", e);
    }
  }
}
