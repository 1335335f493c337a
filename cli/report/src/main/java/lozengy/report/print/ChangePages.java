package lozengy.report.print;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Place;
import lozengy.report.Figures;
import lozengy.report.Markup;

/** Writes what planning again has changed, on pages that can be laid beside an older booklet. */
final class ChangePages {

  private static final int ACROSS = 2;

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;

  ChangePages(Sheet sheet, Arrangement arrangement) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
  }

  void write() {
    arrangement.earlier().ifPresent(this::write);
  }

  private void write(Sequences earlier) {
    List<Place> changed =
        blanket.layout().places().stream()
            .filter(place -> changes(earlier, place.index()) > 0)
            .toList();
    if (changed.isEmpty()) {
      return;
    }
    html.open("div", "class", "alone");
    sheet.part("Changed since it was planned before");
    int rounds = changed.stream().mapToInt(place -> changes(earlier, place.index())).sum();
    html.text(
        "p",
        Figures.count(rounds, "round")
            + " in "
            + Figures.count(changed.size(), "piece")
            + "; all other pieces stay as an older booklet has them.",
        "class",
        "quiet");
    html.open("table", "class", "changes");
    html.open("tbody");
    for (int i = 0; i < changed.size(); i += ACROSS) {
      html.open("tr");
      for (int j = i; j < i + ACROSS; j++) {
        html.open("td");
        if (j < changed.size()) {
          piece(earlier, changed.get(j));
        }
        html.close();
      }
      html.close();
    }
    html.close();
    html.close();
    html.close();
  }

  private int changes(Sequences earlier, int piece) {
    int changes = 0;
    for (int round = 0; round < blanket.roundCount(piece); round++) {
      changes += earlier.yarn(piece, round) == now(piece, round) ? 0 : 1;
    }
    return changes;
  }

  private int now(int piece, int round) {
    return arrangement.sequences().yarn(piece, round);
  }

  private void piece(Sequences earlier, Place place) {
    html.open("p");
    sheet.tick();
    html.text("b", place.name());
    html.close();
    for (int round = 0; round < blanket.roundCount(place.index()); round++) {
      int before = earlier.yarn(place.index(), round);
      int now = now(place.index(), round);
      if (before != now) {
        html.open("p", "class", "change");
        html.words("round " + (round + 1) + ": ");
        if (before == Sequences.OPEN) {
          html.words("open");
        } else {
          sheet.code(blanket, before);
        }
        html.words(" \u2192 ");
        sheet.yarn(blanket, now);
        html.close();
      }
    }
  }
}
