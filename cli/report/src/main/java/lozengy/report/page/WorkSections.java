package lozengy.report.page;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.making.MakeList;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PaceWords;
import lozengy.report.PileLine;
import lozengy.report.TimeWords;
import lozengy.report.WorkWords;

/** Writes what is to be done: the make list and the strips. */
final class WorkSections {

  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final PilePlacement laid;

  WorkSections(Markup html, Arrangement arrangement) {
    this.html = html;
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.laid = PilePlacement.of(blanket, arrangement.sequences());
  }

  void write() {
    pile();
    makeList();
    strips();
  }

  private void pile() {
    if (blanket.brief().pile().isEmpty()) {
      return;
    }
    html.open("section", "id", "pile", "aria-labelledby", "pile-head");
    html.text("h2", PileLine.title(blanket), "id", "pile-head");
    html.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "Pile");
    html.open("table");
    html.open("thead");
    html.open("tr");
    html.text("th", "Piece", "scope", "col");
    html.text("th", "Border, and inwards", "scope", "col");
    html.text("th", "Place", "scope", "col");
    html.close();
    html.close();
    html.open("tbody");
    for (PileLine line : PileLine.index(arrangement)) {
      html.open("tr");
      html.text("td", line.kind());
      html.open("td");
      int border = blanket.yarnIndex(line.inwards().get(0));
      html.text("i", "", "class", "swatch " + YarnStyle.name(border));
      html.words(" " + String.join(" ", line.inwards()));
      html.close();
      html.text("td", line.places());
      html.close();
    }
    html.close();
    html.close();
    html.close();
    html.close();
  }

  private void makeList() {
    MakeList list = MakeList.of(arrangement);
    List<MakeList.Batch> batches = list.batches();
    html.open("section", "id", "make", "aria-labelledby", "make-head");
    html.text("h2", "Make list", "id", "make-head");
    if (batches.isEmpty()) {
      html.text("p", "Every piece is made.");
    } else {
      PaceWords.of(arrangement).ifPresent(words -> html.text("p", words));
      TimeWords.of(arrangement.blanket(), arrangement.sequences())
          .ifPresent(words -> html.text("p", words));
      html.text("p", WorkWords.listed(list), "class", "hint");
      html.open("ol", "class", "work");
      batches.forEach(this::batch);
      html.close();
    }
    html.close();
  }

  private void batch(MakeList.Batch batch) {
    html.open("li");
    html.open("label");
    html.empty("input", "type", "checkbox", "class", "tick");
    html.words(" " + batch.step() + " ");
    Swatches.yarn(html, blanket, batch.yarn());
    html.close();
    html.text("span", Figures.metres(batch.millimetres(blanket)) + " m", "class", "m");
    for (WorkWords.Line line : WorkWords.lines(blanket, batch)) {
      html.open("p");
      html.text("span", line.what() + ":");
      html.text("span", String.join(", ", line.pieces()), "class", "at");
      html.close();
    }
    html.close();
  }

  private void strips() {
    html.open("section", "id", "strips", "aria-labelledby", "strips-head");
    html.text("h2", "Strips", "id", "strips-head");
    html.text(
        "p",
        "Join the pieces of a strip from left to right, then each strip to the one before it."
            + " Yarns are given from the centre to the border.",
        "class",
        "hint");
    html.open("ol", "class", "work");
    for (Strip strip : Strips.of(blanket.layout())) {
      html.open("li", "id", "strip-" + strip.number());
      html.open("p");
      html.text("b", "Strip " + strip.number());
      html.text("span", Figures.count(strip.pieces().size(), "piece"), "class", "m");
      html.close();
      html.open("ul", "class", "row");
      strip.pieces().forEach(this::piece);
      html.close();
      html.close();
    }
    html.close();
    html.close();
  }

  private void piece(Place place) {
    int piece = place.index();
    html.open("li");
    int border = arrangement.sequences().border(piece);
    html.text("i", "", "class", "swatch " + YarnStyle.name(border));
    html.text("b", place.name());
    String codes =
        Arrays.stream(arrangement.sequences().of(piece))
            .mapToObj(yarn -> blanket.yarn(yarn).code())
            .collect(Collectors.joining(" "));
    int worked = laid.roundsWorked(piece);
    String state = worked == 0 ? "" : ", " + BlanketWords.state(laid.state(piece), worked);
    html.text("small", codes + state);
    html.close();
  }
}
