package lozengy.report.card;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.card.Chance;
import lozengy.model.card.LayerCard;
import lozengy.model.card.ScoreCard;
import lozengy.model.card.Statistic;
import lozengy.model.score.Nearness;
import lozengy.model.score.WeakSpot;
import lozengy.report.Figures;
import lozengy.report.Paragraph;
import lozengy.report.PlainText;
import lozengy.report.TextTable;

/** Writes a score card for a terminal. */
public final class CardText {

  private static final String INDENT = "  ";
  private static final int WIDEST = 40;

  private final FullCard full;
  private final ScoreCard card;
  private final Blanket blanket;
  private final List<String> lines = new ArrayList<>();

  private CardText(FullCard full) {
    this.full = full;
    this.card = full.card();
    this.blanket = full.arrangement().blanket();
  }

  /** The card as lines, each with a line break. */
  public static String of(FullCard full) {
    CardText text = new CardText(full);
    text.write();
    return String.join("\n", text.lines) + "\n";
  }

  private void write() {
    line("Score card: " + PlainText.oneLine(blanket.brief().title()));
    line("");
    parts();
    line("");
    weakSpots();
    line("");
    new CardWords(full.arrangement(), card).seams().forEach(this::sentence);
    line("");
    counts();
    line("");
    line("For statisticians");
    line("");
    joins();
  }

  private void parts() {
    TextTable table = new TextTable(1, WIDEST);
    table.row("", "here", "shuffle", "at most", "others kept", "weight", "costs");
    for (Part part : Part.OF_TOTAL) {
      Double figure = card.score().parts().get(part);
      if (figure != null) {
        table.row(
            part.word(),
            Figures.fixed(figure, 2),
            chance(card.chance().get(part)),
            ceiling(full.best().get(part).total()),
            ceiling(full.kept().get(part)),
            Figures.shortest(full.weight(part), 2),
            Figures.fixed(full.cost(part), 2));
      }
    }
    String bound =
        full.arrangement().bound().map(Arrangement.Bound::total).map(CardText::ceiling).orElse("-");
    table.row(
        "total",
        Figures.fixed(card.score().total(), 2),
        chance(card.chanceTotal()),
        bound,
        "",
        "",
        Figures.fixed(100 - card.score().total(), 2));
    full.keepAtMost().ifPresent(most -> keep(table, most));
    table(table);
    note(
        "shuffle: the rounds of each layer dealt at random over the pieces, whatever the rules."
            + " Exact on average, or where +- stands the mean of "
            + card.chanceTotal().shuffles()
            + " shuffles (seed 1) and its standard error. No shuffle changes balance. Spread is"
            + " told before it is cut off at 0.");
    note(
        "at most: proved for each part by itself, as if no other weighed; the total for all"
            + " together.");
    note(
        "others kept: proved; no arrangement has more of this part unless another that weighs"
            + " falls below what it is here.");
    note("costs: points of the total that the part lacks.");
    if (full.keepAtMost().isPresent()) {
      note(
          "keep: what stands as planned before, beside the total; planning again maximises both by"
              + " their weights, here "
              + Figures.fixed(card.score().objective(), 2)
              + ".");
    }
  }

  private void keep(TextTable table, double most) {
    table.row(
        Part.KEEP.word(),
        Figures.fixed(card.score().parts().get(Part.KEEP), 2),
        chance(card.chance().get(Part.KEEP)),
        ceiling(most),
        "",
        Figures.shortest(full.weight(Part.KEEP), 2),
        "");
  }

  private static String chance(Chance chance) {
    String mean = Figures.fixed(chance.mean(), 2);
    return chance.exact() ? mean : mean + " +- " + Figures.fixed(chance.standardError(), 2);
  }

  /** Rounded up, so that it stays true. */
  private static String ceiling(double bound) {
    return Figures.fixed(Math.ceil(bound * 100 - 1e-6) / 100, 2);
  }

  private void weakSpots() {
    line("Where it loses most (report --as svg --weak marks these places)");
    if (card.weakSpots().isEmpty()) {
      line(INDENT + "nowhere");
    }
    int number = 0;
    for (WeakSpot spot : card.weakSpots()) {
      number++;
      String points = " (" + Figures.fixed(spot.points(), 3) + " points)";
      String first = INDENT + number + ". ";
      lines.addAll(Paragraph.lines(first, INDENT + INDENT, spot.words() + points));
    }
  }

  private void joins() {
    line("The same yarn on both sides, against chance (Cliff & Ord, counts as they are)");
    TextTable table = new TextTable(2, WIDEST);
    table.row("layer", "pairs", "here", "expected", "variance", "z");
    for (LayerCard layer : card.layers()) {
      for (Nearness nearness : Nearness.values()) {
        row(
            table,
            CardWords.name(layer),
            nearness.name().toLowerCase(java.util.Locale.ROOT),
            layer.joins().get(nearness));
      }
      row(table, CardWords.name(layer), "weighed", layer.repeats());
    }
    row(table, "all", "weighed", card.repeats());
    table(table);
    line("");
    note(
        "Lightness beside lightness on seams (Moran's I of L*; below what is expected, lights lie"
            + " beside darks)");
    TextTable moran = new TextTable(1, WIDEST);
    moran.row("layer", "I", "expected", "variance", "z");
    for (LayerCard layer : card.layers()) {
      Statistic i = layer.lightness();
      if (i.varies()) {
        moran.row(
            CardWords.name(layer),
            Figures.fixed(i.observed(), 4),
            Figures.fixed(i.expected(), 4),
            Figures.fixed(i.variance(), 6),
            Figures.fixed(i.z(), 2));
      } else {
        moran.row(CardWords.name(layer), "-", "-", "-", "-");
      }
    }
    table(moran);
  }

  private static void row(TextTable table, String layer, String pairs, Statistic statistic) {
    table.row(
        layer,
        pairs,
        Figures.shortest(statistic.observed(), 2),
        Figures.fixed(statistic.expected(), 2),
        Figures.fixed(statistic.variance(), 2),
        statistic.varies() ? Figures.fixed(statistic.z(), 2) : "-");
  }

  private void counts() {
    line("Pieces that show each yarn, by layer: here/wanted");
    TextTable table = new TextTable(1, WIDEST);
    List<String> head = new ArrayList<>(List.of(""));
    card.layers().forEach(layer -> head.add(CardWords.name(layer)));
    table.row(head.toArray(String[]::new));
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      List<String> row = new ArrayList<>(List.of(blanket.yarn(yarn).code()));
      for (LayerCard layer : card.layers()) {
        int here = layer.counts()[yarn];
        int wanted = layer.targets()[yarn];
        row.add(here + wanted == 0 ? "-" : here + "/" + wanted);
      }
      table.row(row.toArray(String[]::new));
    }
    table(table);
  }

  private void table(TextTable table) {
    table.lines().forEach(each -> line(INDENT + each));
  }

  /** A sentence; its second part comes on a line of its own. */
  private void sentence(List<String> parts) {
    for (int i = 0; i < parts.size(); i++) {
      lines.addAll(Paragraph.lines(i == 0 ? "" : INDENT, INDENT + INDENT, parts.get(i)));
    }
  }

  /** Words, broken between lines where they are too long. */
  private void note(String words) {
    lines.addAll(Paragraph.lines("", INDENT, words));
  }

  private void line(String words) {
    lines.add(words);
  }
}
