package lozengy.report.print;

import java.util.LinkedHashMap;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.report.Markup;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;
import lozengy.report.chart.ChartPage;
import lozengy.report.chart.Ink;
import lozengy.report.chart.YarnLetters;

/** The booklet's HTML as it grows, and the pictures in it. */
final class Sheet {

  /** Longer names, in font sizes, are cut. */
  private static final double LONGEST_NAME = 24;

  private final Markup html;
  private final YarnLetters letters;
  private final Map<String, String> pictures = new LinkedHashMap<>();

  Sheet(Markup html, Blanket blanket) {
    this.html = html;
    this.letters = YarnLetters.of(blanket);
  }

  Markup html() {
    return html;
  }

  /** Pictures in SVG by the names that stand for them. */
  Map<String, String> pictures() {
    return pictures;
  }

  /** A picture at the size of its page. */
  void picture(String svg, ChartPage page) {
    picture(svg, page.width(), page.height());
  }

  /** A picture at a size in mm. */
  void picture(String svg, double widthMm, double heightMm) {
    String name = "picture-" + pictures.size();
    pictures.put(name, svg);
    String size = "width:" + Markup.number(widthMm) + "mm;height:" + Markup.number(heightMm) + "mm";
    html.text("object", "", "type", Pictures.TYPE, "data-name", name, "style", size);
  }

  /** A box to tick. */
  void tick() {
    html.text("span", "", "class", "tick");
  }

  /** A box that is ticked already. */
  void ticked() {
    html.text("span", "", "class", "tick done");
  }

  /** A yarn's swatch with its letter, its code and its name, if the font has that. */
  void yarn(Blanket blanket, int yarn) {
    String hex = blanket.yarn(yarn).colour().hex();
    String style = "background-color:" + hex + ";color:" + Ink.on(blanket.yarn(yarn).colour());
    html.text("span", letters.of(yarn), "class", "swatch", "style", style);
    html.words(" ");
    html.text("b", blanket.yarn(yarn).code());
    String name = Letters.shown(PlainText.oneLine(blanket.yarn(yarn).name()));
    html.words(" " + TextWidth.fit(name, LONGEST_NAME));
  }

  /** A head of a part that begins a page. */
  void part(String title) {
    html.text("h2", title, "class", "part");
  }
}
