package lozengy.report.page;

import lozengy.report.Markup;

/** Draws bars. They repeat figures that stand beside them, so no reader needs them. */
final class Bars {

  private Bars() {}

  /**
   * A bar.
   *
   * @param part the part that is filled, from 0 to 1
   * @param over how much more than the whole is needed, from 0 to 1; drawn striped from the left
   */
  static void bar(Markup html, double part, double over) {
    html.open("span", "class", "bar", "aria-hidden", "true");
    html.text("span", "", "style", width(part));
    if (over > 0) {
      html.text("span", "", "class", "over", "style", width(over));
    }
    html.close();
  }

  private static String width(double part) {
    return "width:" + Markup.number(100 * Math.max(0, Math.min(1, part))) + "%";
  }
}
