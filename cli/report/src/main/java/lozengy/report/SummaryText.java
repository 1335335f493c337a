package lozengy.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.card.Seams;
import lozengy.model.layout.Measures;
import lozengy.model.score.WeakSpot;

/** Writes a summary for a terminal. */
final class SummaryText {

  private static final int WIDEST_NAME = 20;
  private static final int WIDEST_PLACES = 2000;
  private static final int COLUMNS = 80;

  /** The last place of a bound and of a score in an arrangement's file. */
  private static final double BOUND_STEP = 1e-6;

  /** Names are cut to this where the table of yarns is wider than the terminal. */
  private static final int NARROWEST_NAME = 5;

  /** Columns of a swatch and the space behind it. */
  private static final int SWATCH = 3;

  private static final String INDENT = "  ";

  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Brief brief;
  private final List<WeakSpot> weakSpots;
  private final Screen screen;
  private final StringBuilder text = new StringBuilder();

  SummaryText(Arrangement arrangement, List<WeakSpot> weakSpots, Screen screen) {
    this.screen = screen;
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.brief = blanket.brief();
    this.weakSpots = weakSpots;
  }

  String write(Optional<String> input, List<String> options) {
    paragraph("", brief.title());
    measures();
    text.append('\n');
    score();
    text.append('\n');
    weakSpots();
    text.append('\n');
    yarns();
    text.append('\n');
    pile();
    arrangement.solved().ifPresent(solved -> solved(solved, input, options));
    for (String caution : Cautions.of(arrangement)) {
      paragraph("", caution);
    }
    return text.toString();
  }

  private void measures() {
    Measures measures = blanket.measures();
    String size = BlanketWords.size(blanket);
    paragraph("", size + ", " + BlanketWords.setting(blanket));
    paragraph("", BlanketWords.pieces(blanket) + states());
    paragraph(
        "",
        "seams "
            + Figures.fixed(measures.seamLengthCm() / 100, 2)
            + " m, outline "
            + Figures.fixed(measures.outlineLengthCm() / 100, 2)
            + " m");
    PaceWords.of(arrangement).ifPresent(words -> paragraph("", words));
    BlanketWords.givenBorders(blanket).ifPresent(words -> paragraph("", words));
    blanket.edgeFit().ifPresent(fit -> paragraph("", BlanketWords.edge(fit)));
  }

  private String states() {
    long made = BlanketWords.inState(arrangement, PieceState.MADE);
    long joined = BlanketWords.inState(arrangement, PieceState.JOINED);
    long begun = BlanketWords.begun(blanket);
    return made + joined + begun == 0
        ? ""
        : "; "
            + made
            + " made, "
            + joined
            + " joined, "
            + planned()
            + " planned"
            + (begun == 0 ? "" : ", " + begun + " of them begun");
  }

  private long planned() {
    return BlanketWords.inState(arrangement, PieceState.PLANNED);
  }

  private void score() {
    String total = "Score " + Figures.fixed(arrangement.score().total(), 1) + " of 100";
    String bound = arrangement.bound().map(this::most).orElse(".");
    paragraph("", total + bound);
    TextTable table = new TextTable(1, WIDEST_NAME);
    for (Part part : Part.OF_TOTAL) {
      Double figure = arrangement.score().parts().get(part);
      if (figure != null) {
        double weight = brief.prefer().weight(part);
        String weighs = weight > 0 ? "weight " + Figures.shortest(weight, 2) : "left out";
        table.row(part.word(), Figures.fixed(figure, 1), weighs);
      }
    }
    lines(table);
    KeepWords.of(arrangement).ifPresent(words -> paragraph("", words));
    borders();
  }

  /** What is proved, in a sentence. */
  private String most(Arrangement.Bound bound) {
    // Rounded up, so that the sentence stays true.
    double most = Math.ceil(bound.total() * 10 - 1e-9) / 10;
    double here = Math.round(arrangement.score().total() * 10) / 10.0;
    // One that is met is met in its last place, which is rounded up as well.
    boolean met = bound.total() <= arrangement.score().total() + BOUND_STEP;
    return met || most <= here
        ? ". It is proved that no arrangement of this brief has more."
        : ". It is proved that no arrangement of this brief has more than "
            + Figures.fixed(most, 1)
            + ", so a better one could win "
            + Figures.fixed(most - here, 1)
            + " points at most.";
  }

  /** How often borders come again close by, and which of those that meet are most alike. */
  private void borders() {
    BorderWords.again(blanket, arrangement.sequences()).ifPresent(words -> paragraph("", words));
    Seams.closest(blanket, arrangement.sequences())
        .ifPresent(
            seam ->
                paragraph(
                    "",
                    "The two borders most alike that meet: "
                        + blanket.yarn(arrangement.sequences().border(seam.first())).code()
                        + " and "
                        + blanket.yarn(arrangement.sequences().border(seam.second())).code()
                        + "."));
  }

  private void weakSpots() {
    if (weakSpots.isEmpty()) {
      paragraph("", "Weakest spots: none");
      return;
    }
    paragraph("", "Weakest spots");
    for (WeakSpot spot : weakSpots) {
      String points = "costs " + Figures.fixed(spot.points(), 2) + " points";
      paragraph(INDENT, spot.words() + " (" + points + ")");
    }
  }

  private void yarns() {
    List<YarnLine> yarns = YarnLine.of(arrangement);
    boolean swatches = screen.colours() != Colours.NONE;
    int widest = WIDEST_NAME;
    List<String> lines = yarnTable(yarns, widest).lines();
    int room = screen.columns() - INDENT.length() - (swatches ? SWATCH : 0);
    while (widest > NARROWEST_NAME && lines.stream().anyMatch(line -> line.length() > room)) {
      lines = yarnTable(yarns, --widest).lines();
    }
    for (int i = 0; i < lines.size(); i++) {
      String swatch =
          i == 0 ? " ".repeat(SWATCH) : screen.colours().swatch(yarns.get(i - 1).yarn().colour());
      line(INDENT + (swatches ? swatch : ""), lines.get(i));
    }
    uses();
  }

  private TextTable yarnTable(List<YarnLine> yarns, int widest) {
    TextTable table = new TextTable(3, widest);
    boolean begun = yarns.stream().anyMatch(line -> line.work().workedMillimetres() > 0);
    if (begun) {
      table.row("yarn", "", "tone", "worked m", "at hand m", "to work m", "balls", "left m", "g");
    } else {
      table.row("yarn", "", "tone", "have m", "used m", "balls", "left m", "balls", "g");
    }
    for (YarnLine line : yarns) {
      long left = line.leftMillimetres();
      long toWork = line.work().toWorkMillimetres();
      List<String> row =
          new ArrayList<>(List.of(line.yarn().code(), line.yarn().name(), line.tone().word()));
      if (begun) {
        row.add(Figures.metres(line.work().workedMillimetres()));
      }
      row.add(line.atHandWords());
      row.add(Figures.metres(toWork));
      row.add(known(line.balls(toWork), 2));
      row.add(Figures.metres(left));
      if (!begun) {
        row.add(known(line.balls(left), 2));
      }
      row.add(known(line.grams(left), 0));
      table.row(row.toArray(String[]::new));
    }
    return table;
  }

  private void uses() {
    List<String> uses = BlanketWords.uses(arrangement);
    if (!uses.isEmpty()) {
      paragraph(INDENT, String.join(" and ", uses) + " included");
    }
    List<String> counted =
        brief.yarns().stream().filter(yarn -> yarn.counted().isPresent()).map(Yarn::code).toList();
    if (!counted.isEmpty()) {
      paragraph(
          INDENT,
          String.join(", ", counted)
              + (counted.size() == 1 ? " was" : " were")
              + " counted in mid-work");
    }
    if (brief.rules().keepBackPercent() > 0) {
      String percent = Figures.shortest(brief.rules().keepBackPercent(), 2);
      paragraph(INDENT, percent + " % of each yarn is kept back, and counted as left");
    }
  }

  private void pile() {
    List<PileLine> pile = PileLine.index(arrangement);
    if (pile.isEmpty()) {
      return;
    }
    paragraph("", PileLine.title(blanket));
    TextTable table = new TextTable(3, WIDEST_PLACES);
    for (PileLine line : pile) {
      table.row(line.kind(), String.join(" ", line.inwards()), line.places());
    }
    lines(table);
    text.append('\n');
  }

  private static String known(OptionalDouble value, int decimals) {
    return value.isPresent() ? Figures.fixed(value.getAsDouble(), decimals) : "-";
  }

  private void solved(Arrangement.Solved solved, Optional<String> input, List<String> options) {
    boolean weighed = arrangement.score().parts().containsKey(Part.KEEP);
    String optimal =
        solved.proof().equals(Arrangement.Solved.OPTIMAL)
            ? "; proved to be the best possible" + (weighed ? ", keep weighed in" : "")
            : "";
    String several =
        solved
            .choice()
            .map(
                choice ->
                    (solved.seconds().isPresent() ? "" : " each")
                        + ", as one of "
                        + choice.count()
                        + " asked for")
            .orElse("");
    String found =
        "Solved with seed "
            + solved.seed()
            + " in "
            + Figures.count(solved.moves(), "move")
            + several
            + ", version "
            + solved.version()
            + optimal
            + ".";
    // Of several, a limit in seconds leaves each with another number of moves.
    if (solved.choice().isPresent() && solved.seconds().isPresent()) {
      paragraph("", found);
      text.append('\n');
      return;
    }
    paragraph("", found + " The same again:");
    // Not wrapped: the line is to be copied.
    text.append(INDENT)
        .append(SolveLine.of(arrangement, input, options, Math.max(1, solved.moves())))
        .append(
            solved
                .choice()
                .map(
                    choice ->
                        " --count "
                            + choice.count()
                            + " --within "
                            + Figures.shortest(choice.withinPoints(), 6))
                .orElse(""))
        .append("\n\n");
  }

  /**
   * A line; on a terminal it is broken where it is wider than that. What stands before it may be a
   * swatch, whose signs take no columns.
   */
  private void line(String before, String line) {
    if (!screen.watched()) {
      text.append(before).append(line).append('\n');
      return;
    }
    int taken = before.startsWith(INDENT) ? before.equals(INDENT) ? 2 : 2 + SWATCH : 0;
    int room = Math.max(1, screen.columns() - taken);
    text.append(before);
    int columns = 0;
    for (int at = 0; at < line.length(); ) {
      int codePoint = line.codePointAt(at);
      if (columns + PlainText.columns(codePoint) > room && columns > 0) {
        text.append('\n');
        columns = 0;
        room = screen.columns();
      }
      text.appendCodePoint(codePoint);
      columns += PlainText.columns(codePoint);
      at += Character.charCount(codePoint);
    }
    text.append('\n');
  }

  private void lines(TextTable table) {
    table.lines().forEach(line -> line(INDENT, line));
  }

  /** Words, broken between lines where they are too long, with lines after the first indented. */
  private void paragraph(String indent, String words) {
    int columns = Math.min(COLUMNS, screen.columns());
    Paragraph.lines(columns, indent, indent + INDENT, words).forEach(line -> line("", line));
  }
}
