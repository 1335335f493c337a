package lozengy.report.page;

import lozengy.report.Markup;

/**
 * Writes how what is ticked on the page comes into the arrangement's file, or to another device.
 */
final class TickSection {

  private final Markup html;

  TickSection(Markup html) {
    this.html = html;
  }

  void write() {
    html.open("section", "id", "picks", "aria-labelledby", "picks-head");
    html.text("h2", "To the file", "id", "picks-head");
    html.text(
        "p",
        "What is ticked stays in this browser. Planning again, summary and booklet know of it once"
            + " it is marked in the arrangement's file.",
        "class",
        "hint");
    html.text("p", "", "id", "picks-told", "role", "status");
    html.open("div", "id", "picks-out", "hidden", "hidden");
    html.open("label");
    html.words("Paste this into the terminal, or save it and run: sh picks.txt");
    html.open("textarea", "id", "line", "readonly", "readonly", "rows", "4", "spellcheck", "false");
    html.close();
    html.close();
    button("copy", "Copy");
    button("save", "Save as a file");
    button("drop", "Drop all ticks");
    html.close();
    html.text("h3", "To another device, or to keep");
    html.open("div", "class", "row-of-buttons");
    button("export", "Save ticks");
    html.open("label", "class", "file");
    html.words("Load ticks");
    html.empty("input", "type", "file", "id", "import", "accept", ".json,application/json");
    html.close();
    html.text(
        "button",
        "Undo",
        "type",
        "button",
        "id",
        "picks-undo",
        "class",
        "undo",
        "disabled",
        "disabled");
    html.close();
    html.close();
  }

  private void button(String id, String words) {
    html.text("button", words, "type", "button", "id", id);
  }
}
