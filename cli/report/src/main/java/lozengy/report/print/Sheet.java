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

  /** Longer names, in font sizes, are cut: a name is never broken between two lines. */
  private static final double LONGEST_NAME = 17;

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

  /**
   * A picture at the size of its page.
   *
   * @param alternative what it shows, for who cannot see it
   */
  void picture(String svg, ChartPage page, String alternative) {
    picture(svg, page.width(), page.height(), alternative);
  }

  /** A picture at a size in mm. */
  void picture(String svg, double widthMm, double heightMm, String alternative) {
    String name = "picture-" + pictures.size();
    pictures.put(name, svg);
    String size = "width:" + Markup.number(widthMm) + "mm;height:" + Markup.number(heightMm) + "mm";
    html.text(
        "object",
        "",
        "type",
        Pictures.TYPE,
        "data-name",
        name,
        "alt",
        PlainText.oneLine(alternative),
        "style",
        size);
  }

  /** A box to tick. */
  void tick() {
    html.text("span", "", "class", "tick");
  }

  /** A box that is ticked already. */
  void ticked() {
    html.text("span", "", "class", "tick done");
  }

  /** A piece with its box. */
  void piece(String name) {
    html.open("span", "class", "piece");
    tick();
    html.words(name);
    html.close();
    html.words(" ");
  }

  /** A yarn's swatch with its letter, its code and its name, if the font has that. */
  void yarn(Blanket blanket, int yarn) {
    html.open("span", "class", "yarn");
    swatch(blanket, yarn);
    html.words(" ");
    html.text("b", blanket.yarn(yarn).code());
    String name = Letters.shown(PlainText.oneLine(blanket.yarn(yarn).name()));
    html.words(" " + TextWidth.fit(name, LONGEST_NAME));
    html.close();
  }

  /** A yarn's swatch with its letter, and its name or else its code, cut where room is small. */
  void name(Blanket blanket, int yarn, double longest) {
    html.open("span", "class", "yarn");
    swatch(blanket, yarn);
    String name = Letters.shown(PlainText.oneLine(blanket.yarn(yarn).name()));
    html.words(" " + TextWidth.fit(name.isEmpty() ? blanket.yarn(yarn).code() : name, longest));
    html.close();
  }

  /** A yarn's swatch with its letter, and its code. */
  void code(Blanket blanket, int yarn) {
    html.open("span", "class", "yarn");
    swatch(blanket, yarn);
    html.words(" " + blanket.yarn(yarn).code());
    html.close();
  }

  private void swatch(Blanket blanket, int yarn) {
    String hex = blanket.yarn(yarn).colour().hex();
    String style = "background-color:" + hex + ";color:" + Ink.on(blanket.yarn(yarn).colour());
    html.text("span", letters.of(yarn), "class", "swatch", "style", style);
  }

  /** The head of a part. */
  void part(String title) {
    html.text("h2", title);
  }

  /** The head of a part that begins a page, for what would fit no rest of one. */
  void page(String title) {
    html.text("h2", title, "class", "page");
  }
}
