package lozengy.report.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.making.MakeList;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import lozengy.report.Amount;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PaceWords;
import lozengy.report.PileLine;
import lozengy.report.TimeWords;
import lozengy.report.WorkWords;
import lozengy.report.chart.ChartPage;
import lozengy.report.chart.Drawing;
import lozengy.report.chart.StripLines;

/** Writes what is to be done: the make list, the strips, and where the pile goes. */
final class WorkSections {

  /** Largest width and height of the diagram of strips. */
  private static final double MAP_MM = 190;

  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final PilePlacement laid;
  private final WorkSteps steps;

  /**
   * Writes the lists of an arrangement.
   *
   * @param steps its steps by ball
   */
  WorkSections(Markup html, Arrangement arrangement, WorkSteps steps) {
    this.steps = steps;
    this.html = html;
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.laid = PilePlacement.of(blanket, arrangement.sequences());
  }

  void pile() {
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

  void makeList() {
    MakeList list = MakeList.of(arrangement);
    List<MakeList.Batch> batches = list.batches();
    html.open("section", "id", "make", "aria-labelledby", "make-head");
    html.text("h2", "Make list", "id", "make-head");
    html.text(
        "p", BlanketWords.setting(blanket) + ": " + BlanketWords.pieces(blanket), "class", "hint");
    if (batches.isEmpty()) {
      html.text("p", "Every piece is made.");
    } else {
      PaceWords.of(arrangement).ifPresent(words -> html.text("p", words));
      TimeWords.of(arrangement.blanket(), arrangement.sequences())
          .ifPresent(words -> html.text("p", words));
      html.text("p", WorkWords.listed(list), "class", "hint");
      html.open("ol", "class", "work names");
      batches.forEach(this::batch);
      html.close();
    }
    html.close();
  }

  private void batch(MakeList.Batch batch) {
    html.open("li", "id", "step-" + batch.step());
    html.open("label");
    tick("0/" + batch.step());
    html.words(" " + batch.step() + " ");
    Swatches.yarn(html, blanket, batch.yarn());
    html.close();
    html.text("span", Figures.metres(batch.millimetres(blanket)) + " m ", "class", "m");
    html.text("button", "Show", "type", "button", "class", "see", "data-show", "0/" + batch.step());
    for (WorkWords.Line line : WorkWords.lines(blanket, batch)) {
      html.open("p");
      html.text("span", line.what() + ":");
      html.text("span", String.join(", ", line.pieces()), "class", "at");
      html.close();
    }
    html.close();
  }

  void strips() {
    html.open("section", "id", "strips", "aria-labelledby", "strips-head");
    html.text("h2", "Strips", "id", "strips-head");
    html.text(
        "p",
        "Join the pieces of a strip along its arrow, then the strip to the one before it."
            + " Yarns are given from the centre to the border.",
        "class",
        "hint");
    blanket
        .brief()
        .joiningInOneYarn()
        .ifPresent(
            use -> {
              html.open("p");
              html.words(
                  "Joining takes "
                      + Amount.metres(blanket.fixedUse().joiningMillimetres())
                      + " of ");
              Swatches.yarn(html, blanket, blanket.yarnIndex(use.yarn()));
              html.close();
            });
    if (blanket.brief().joiningInBorders().isPresent()) {
      html.text(
          "p",
          "Each seam is worked half in the border's yarn of the one piece and half in that of the"
              + " other: leave the borders' ends long.");
    }
    Drawing drawing = Drawing.of(blanket, arrangement.sequences());
    ChartPage page = ChartPage.framed(drawing, MAP_MM, MAP_MM);
    html.open("svg", "id", "strip-map", "viewBox", page.viewBox(), "role", "img");
    html.text("title", "The strips, numbered, each with an arrow in the order of joining");
    List<Strip> strips = Strips.of(blanket.layout());
    new StripLines(html, drawing, page).diagram(strips);
    html.close();
    html.open("ol", "class", "work names");
    strips.forEach(this::strip);
    edging();
    html.close();
    html.close();
  }

  private void strip(Strip strip) {
    Optional<WorkStep.Join> join =
        steps.left().stream()
            .filter(WorkStep.Join.class::isInstance)
            .map(WorkStep.Join.class::cast)
            .filter(step -> step.strip() == strip.number())
            .findFirst();
    boolean joined =
        strip.pieces().stream()
            .allMatch(place -> blanket.state(place.index()) == PieceState.JOINED);
    html.open("li", "id", "strip-" + strip.number());
    html.open("label");
    if (join.isPresent() || joined) {
      tick("1/" + strip.number());
    }
    html.text("b", "Strip " + strip.number());
    html.close();
    String words = Figures.count(strip.pieces().size(), "piece");
    if (joined) {
      words += ", joined";
    } else if (join.isEmpty()) {
      words += ", joined with the next strip";
    } else {
      words += strip.number() > 1 ? ", then to strip " + (strip.number() - 1) : "";
      words +=
          blanket.brief().joining().isPresent()
              ? ", " + Amount.metres(join.get().millimetres())
              : "";
    }
    html.text("span", words + " ", "class", "m");
    html.text("button", "Show", "type", "button", "class", "see", "data-strip", strip.number());
    html.open("ol", "class", "row");
    strip.pieces().forEach(this::piece);
    html.close();
    html.close();
  }

  /** The last step of all. */
  private void edging() {
    if (blanket.brief().edging().isEmpty()) {
      return;
    }
    List<Integer> yarns =
        blanket.brief().edging().stream()
            .map(use -> blanket.yarnIndex(use.yarn()))
            .distinct()
            .toList();
    // a yarn that comes again has one amount for all its rounds, and so no single place among them
    boolean again = yarns.size() < blanket.brief().edging().size();
    html.open("li");
    html.open("label");
    tick("2/" + steps.count());
    html.text("b", "Edging");
    html.close();
    html.open("span", "class", "m");
    String before = "all around, last of all, ";
    for (int yarn : yarns) {
      html.words(before + Amount.metres(blanket.fixedUse().edgingMillimetres(yarn)) + " of ");
      Swatches.yarn(html, blanket, yarn);
      before = again ? " and " : ", then ";
    }
    html.close();
    html.close();
  }

  /** A box for a step, which the script ticks and hears. */
  private void tick(String step) {
    html.empty("input", "type", "checkbox", "class", "tick", "data-step", step);
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
