package lozengy.report.page;

import lozengy.model.making.WorkOrder;
import lozengy.report.Markup;

/**
 * Writes the frame of the view for whoever has the hook in hand: one step at a time. The script
 * fills it with steps; without one it stays hidden, and the lists below say the same.
 */
final class WorkView {

  private final Markup html;

  WorkView(Markup html) {
    this.html = html;
  }

  void write() {
    html.open("section", "id", "work", "aria-labelledby", "work-title", "hidden", "hidden");
    html.open("div", "class", "work-top");
    html.text("h2", "At work", "id", "work-title");
    html.text("button", "Large", "type", "button", "id", "work-large", "aria-pressed", "false");
    html.open("fieldset", "id", "work-order");
    html.text("legend", "By");
    for (WorkOrder order : WorkOrder.values()) {
      html.open("label");
      html.empty("input", "type", "radio", "name", "order", "value", order.word());
      html.words(order.word());
      html.close();
    }
    html.close();
    html.close();
    html.text("p", "All is done.", "id", "work-empty", "hidden", "hidden");
    html.open("div", "id", "work-step");
    html.text("p", "", "id", "work-count", "role", "status");
    html.text("h3", "Step", "id", "work-head");
    html.text("p", "", "id", "work-note");
    html.text("svg", "", "id", "work-map", "aria-hidden", "true");
    html.open("div", "id", "work-list", "tabindex", "0", "role", "group", "aria-label", "Boxes");
    html.close();
    html.open("div", "id", "work-acts");
    button("work-back", "Back", "");
    button("work-done", "Done, next", "");
    button("work-skip", "Skip", "");
    button("work-undo", "Undo", "undo");
    button("work-show", "On the blanket", "");
    html.close();
    html.text("p", "", "id", "work-then", "class", "hint");
    html.text(
        "p", "The screen stays awake.", "id", "work-awake", "class", "hint", "hidden", "hidden");
    html.close();
    html.close();
  }

  private void button(String id, String words, String style) {
    html.text("button", words, "type", "button", "id", id, "class", style);
  }
}
