package lozengy.report.page;

import lozengy.model.blanket.Blanket;
import lozengy.report.Markup;

/** Shows a yarn: a swatch, its code and its name. */
final class Swatches {

  private Swatches() {}

  /** A yarn's swatch, code and name. */
  static void yarn(Markup html, Blanket blanket, int yarn) {
    html.open("span", "class", "yarn");
    html.text("i", "", "class", "swatch " + YarnStyle.name(yarn));
    html.text("b", blanket.yarn(yarn).code());
    html.text("span", blanket.yarn(yarn).name());
    html.close();
  }
}
