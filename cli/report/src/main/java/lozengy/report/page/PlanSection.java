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
    html.text("h2", "Blanket", "id", "plan-head");
    html.open("div", "class", "tools");
    shows();
    box("letters", "Yarn letters");
    box("names", "Piece names");
    zoom();
    html.close();
    html.text("p", "", "id", "told", "role", "status");
    html.open("div", "id", "view");
    blanket();
    html.close();
    marksKey();
    html.close();
    html.open("div", "class", "side");
    html.open("section", "id", "card", "aria-labelledby", "card-head");
    html.text("h2", "No piece chosen yet", "id", "card-head");
    html.open("div", "id", "card-body");
    html.text(
        "p",
        "Point at a piece, tap it, or walk with Tab and the arrow keys. Enter or Space picks it.",
        "class",
        "hint aloud");
    html.close();
    html.close();
    picks();
    html.close();
  }

  private void shows() {
    html.open("label");
    html.words("Show ");
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
    html.text("button", "\u2212", "type", "button", "id", "smaller", "aria-label", "Smaller");
    html.text("button", "+", "type", "button", "id", "larger", "aria-label", "Larger");
    html.close();
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

  private void picks() {
    html.open("section", "id", "picks", "aria-labelledby", "picks-head");
    html.text("h2", "Picks", "id", "picks-head");
    html.open("label");
    html.words("A tap, Enter or Space on a piece ");
    html.open("select", "id", "mode", "autocomplete", "off");
    html.text("option", "shows its card", "value", "look");
    html.text("option", "locks it", "value", "lock");
    html.text("option", "frees it", "value", "free");
    html.text("option", "marks it made", "value", "made");
    html.text("option", "marks it joined", "value", "joined");
    html.text("option", "marks it planned again", "value", "planned");
    html.close();
    html.close();
    html.text("p", "Nothing is picked.", "id", "picks-told", "role", "status");
    html.open("div", "id", "picks-out", "hidden", "hidden");
    html.open("label");
    html.words("Paste this into the terminal, or save it and run: sh picks.txt");
    html.open("textarea", "id", "line", "readonly", "readonly", "rows", "4", "spellcheck", "false");
    html.close();
    html.close();
    html.text("button", "Copy", "type", "button", "id", "copy");
    html.text("button", "Save as a file", "type", "button", "id", "save");
    html.text("button", "Drop all picks", "type", "button", "id", "drop");
    html.close();
    html.close();
  }
}
