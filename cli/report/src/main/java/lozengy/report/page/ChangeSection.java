package lozengy.report.page;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Place;
import lozengy.report.Figures;
import lozengy.report.Markup;

/** Writes what changed since the arrangement that this one was solved from. */
final class ChangeSection {

  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;

  ChangeSection(Markup html, Arrangement arrangement) {
    this.html = html;
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
  }

  void write() {
    arrangement.earlier().ifPresent(this::write);
  }

  private void write(Sequences earlier) {
    html.open("section", "id", "changes", "aria-labelledby", "changes-head");
    html.text("h2", "Changes since the last arrangement", "id", "changes-head");
    List<Place> changed = new ArrayList<>();
    int rounds = 0;
    for (Place place : blanket.layout().places()) {
      int changes = changes(earlier, place.index()).size();
      rounds += changes;
      if (changes > 0) {
        changed.add(place);
      }
    }
    if (changed.isEmpty()) {
      html.text("p", "Nothing changed.");
    } else {
      html.text(
          "p", Figures.count(rounds, "round") + " in " + Figures.count(changed.size(), "piece"));
      html.open("ul", "class", "changes");
      changed.forEach(place -> piece(earlier, place));
      html.close();
    }
    html.close();
  }

  private void piece(Sequences earlier, Place place) {
    html.open("li");
    html.text("b", place.name());
    html.text("span", String.join("; ", changes(earlier, place.index())));
    html.close();
  }

  private List<String> changes(Sequences earlier, int piece) {
    List<String> changes = new ArrayList<>();
    Sequences now = arrangement.sequences();
    for (int round = 0; round < now.rounds(piece); round++) {
      if (now.yarn(piece, round) != earlier.yarn(piece, round)) {
        changes.add(
            "round "
                + (round + 1)
                + " "
                + code(earlier.yarn(piece, round))
                + " \u2192 "
                + code(now.yarn(piece, round)));
      }
    }
    return changes;
  }

  private String code(int yarn) {
    return yarn == Sequences.OPEN ? "open" : blanket.yarn(yarn).code();
  }
}
