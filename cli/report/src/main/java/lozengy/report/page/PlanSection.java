package lozengy.report.page;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.report.Markup;
import lozengy.report.chart.ChartOptions;
import lozengy.report.chart.ChartPage;
import lozengy.report.chart.Drawing;
import lozengy.report.chart.PiecesSvg;

/** Writes the blanket with what belongs to it: what to show, the card of a piece, the picks. */
final class PlanSection {

  /** Fits A4 and letter paper with margins. */
  private static final double PAPER_WIDTH_MM = 186;

  private static final double PAPER_HEIGHT_MM = 245;

  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Drawing drawing;

  PlanSection(Markup html, Arrangement arrangement, Drawing drawing) {
    this.html = html;
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.drawing = drawing;
  }

  void write() {
    html.open("section", "id", "plan", "aria-labelledby", "plan-head");
    html.open("div", "class", "tools");
    html.text("h2", "Blanket", "id", "plan-head");
    shows();
    zoom();
    html.open("details", "id", "more");
    html.text("summary", "More");
    html.open("div");
    find();
    mode();
    box("letters", "Yarn letters");
    box("names", "Piece names");
    button("share", "Picture", "Make a picture of the blanket to share");
    html.close();
    html.close();
    html.close();
    html.open("div", "class", "field");
    legend();
    html.open("div", "id", "view");
    blanket();
    html.close();
    html.open("div", "class", "told");
    html.text("p", "", "id", "told", "role", "status");
    html.text(
        "p",
        "Letters appear when you zoom in.",
        "id",
        "letters-hint",
        "class",
        "hint",
        "hidden",
        "hidden");
    html.close();
    card();
    html.close();
    marksKey();
    html.close();
  }

  private void find() {
    html.open("form", "id", "find");
    html.open("label");
    html.words("Piece ");
    html.empty("input", "id", "found", "autocomplete", "off", "spellcheck", "false");
    html.close();
    html.text("button", "Find");
    html.close();
  }

  /** Every yarn with its letter; a tap shows it alone. */
  private void legend() {
    html.open("div", "id", "legend", "role", "group", "aria-label", "Show one yarn alone");
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      html.open("button", "type", "button", "value", "yarn-" + yarn, "aria-pressed", "false");
      html.text("i", "", "class", "swatch " + YarnStyle.name(yarn));
      html.text("span", blanket.yarn(yarn).name());
      html.close();
    }
    html.close();
  }

  private void card() {
    html.open("section", "id", "card", "aria-labelledby", "card-head");
    html.open("div", "id", "card-top");
    html.text("h2", "No piece chosen yet", "id", "card-head");
    html.text(
        "button", "Back to the list", "type", "button", "id", "card-back", "hidden", "hidden");
    html.close();
    html.open("div", "id", "card-body");
    html.text(
        "p",
        "Point at a piece, tap it, or walk with Tab and the arrow keys. Enter or Space picks it;"
            + " + and - zoom around it.",
        "class",
        "hint aloud");
    html.close();
    html.close();
  }

  private void shows() {
    html.open("label");
    html.text("span", "Show ", "class", "spoken");
    html.open("select", "id", "show", "autocomplete", "off");
    html.text("option", "everything", "value", "all");
    html.text("option", "what is left to make", "value", "left");
    html.text("option", "weak spots", "value", "weak");
    if (arrangement.earlier().isPresent()) {
      html.text("option", "what changed", "value", "changed");
    }
    html.open("optgroup", "label", "One yarn");
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      html.text(
          "option",
          blanket.yarn(yarn).code() + " " + blanket.yarn(yarn).name(),
          "value",
          "yarn-" + yarn);
    }
    html.close();
    html.open("optgroup", "label", "One strip");
    List<Strip> strips = Strips.of(blanket.layout());
    for (Strip strip : strips) {
      html.text("option", "strip " + strip.number(), "value", "strip-" + strip.number());
    }
    html.close();
    html.close();
    html.close();
  }

  private void box(String id, String words) {
    html.open("label");
    html.empty("input", "type", "checkbox", "id", "show-" + id);
    html.words(words);
    html.close();
  }

  private void zoom() {
    html.open("span", "class", "zoom", "role", "group", "aria-label", "Size");
    button("smaller", "\u2212", "Smaller");
    button("larger", "+", "Larger");
    button("reset", "All", "Show the whole blanket");
    html.text(
        "button",
        "Full",
        "type",
        "button",
        "id",
        "whole",
        "aria-pressed",
        "false",
        "aria-label",
        "Full screen");
    html.close();
  }

  private void button(String id, String words, String label) {
    html.text("button", words, "type", "button", "id", id, "aria-label", label);
  }

  private void blanket() {
    ChartPage page = ChartPage.bare(drawing, PAPER_WIDTH_MM, PAPER_HEIGHT_MM);
    html.open(
        "svg",
        "id",
        "chart",
        "viewBox",
        page.viewBox(),
        "style",
        "--wide:" + Markup.number(page.width() / page.height()));
    YarnStyle style = new YarnStyle(blanket, new PieceWords(blanket));
    PiecesSvg pieces = new PiecesSvg(html, blanket, drawing, page, style);
    html.open(
        "g",
        "id",
        "pieces",
        "role",
        "listbox",
        "aria-multiselectable",
        "true",
        "aria-label",
        "Pieces");
    pieces.pieces();
    html.close();
    html.open("g", "aria-hidden", "true", "class", "over");
    pieces.fabric();
    pieces.marks();
    pieces.letters();
    html.empty("path", "id", "veil", "d", "", "vector-effect", "non-scaling-stroke");
    html.empty("path", "id", "lit", "d", "", "vector-effect", "non-scaling-stroke");
    pieces.names(ChartOptions.Signs.LETTERS);
    html.open("g", "id", "picked");
    html.close();
    html.open("g", "id", "ring");
    html.close();
    html.close();
    html.close();
  }

  private void marksKey() {
    PilePlacement laid = PilePlacement.of(blanket, arrangement.sequences());
    if (anyPiece(laid::worked)) {
      html.text(
          "p",
          "Joined pieces hold together at their seams; around made ones is white; what is still to"
              + " be worked is paler.",
          "class",
          "hint");
    }
    if (anyPiece(blanket::partWorked)) {
      html.text("p", "A piece that is begun is worked to its dashed line.", "class", "hint");
    }
  }

  private boolean anyPiece(IntPredicate test) {
    return IntStream.range(0, blanket.pieceCount()).anyMatch(test);
  }

  private void mode() {
    html.open("label");
    html.words("A tap ");
    html.open("select", "id", "mode", "autocomplete", "off");
    html.text("option", "shows the card", "value", "look");
    html.text("option", "marks it made", "value", "made");
    html.text("option", "marks it joined", "value", "joined");
    html.text("option", "locks it", "value", "lock");
    html.text("option", "frees it", "value", "free");
    html.text("option", "marks it planned again", "value", "planned");
    html.close();
    html.close();
  }
}
