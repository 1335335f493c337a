package lozengy.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
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
    html.open("li", "id", "change-" + place.index());
    html.text("b", place.name());
    for (int round : changes(earlier, place.index())) {
      html.open("span", "class", "yarn");
      html.words("round " + (round + 1) + " ");
      yarn(earlier.yarn(place.index(), round));
      html.words(" \u2192 ");
      yarn(arrangement.sequences().yarn(place.index(), round));
      html.close();
    }
    html.text("button", "Show", "type", "button", "class", "see", "data-piece", place.index());
    html.close();
  }

  private void yarn(int yarn) {
    if (yarn == Sequences.OPEN) {
      html.words("open");
      return;
    }
    html.text("i", "", "class", "swatch " + YarnStyle.name(yarn));
    html.text("span", blanket.yarn(yarn).code());
  }

  /** The rounds of a piece that have another yarn now. */
  private List<Integer> changes(Sequences earlier, int piece) {
    Sequences now = arrangement.sequences();
    return IntStream.range(0, now.rounds(piece))
        .filter(round -> now.yarn(piece, round) != earlier.yarn(piece, round))
        .boxed()
        .toList();
  }
}
