package lozengy.report.page;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.brief.Part;
import lozengy.model.card.LayerCard;
import lozengy.model.card.ScoreCard;
import lozengy.model.card.Statistic;
import lozengy.model.score.WeakSpot;
import lozengy.report.Figures;
import lozengy.report.KeepWords;
import lozengy.report.Markup;
import lozengy.report.card.CardWords;

/** Writes the score, part by part, and the weakest spots. */
final class ScoreSection {

  private final Markup html;
  private final Arrangement arrangement;
  private final ScoreCard card;

  ScoreSection(Markup html, Arrangement arrangement) {
    this.html = html;
    this.arrangement = arrangement;
    this.card = ScoreCard.of(arrangement.blanket(), arrangement.sequences(), arrangement.earlier());
  }

  void write() {
    html.open("details", "id", "score", "class", "part");
    html.open("summary");
    html.text(
        "h2",
        "Score: " + Figures.fixed(arrangement.score().total(), 1) + " of 100",
        "id",
        "score-head");
    html.close();
    arrangement
        .bound()
        .ifPresent(
            bound ->
                html.text(
                    "p",
                    "It is proved that no plan of this brief can have more than "
                        + Figures.fixed(Math.ceil(bound.total() * 10 - 1e-9) / 10, 1)
                        + "."));
    html.open("table");
    html.open("thead");
    html.open("tr");
    html.text("th", "Part", "scope", "col");
    html.text("th", "Weight", "scope", "col", "class", "n");
    html.text("th", "Of 100", "scope", "col", "class", "n");
    html.text("th", "Shuffled", "scope", "col", "class", "n");
    html.text("td", "");
    html.close();
    html.close();
    html.open("tbody");
    for (Part part : Part.OF_TOTAL) {
      Double figure = arrangement.score().parts().get(part);
      if (figure != null) {
        row(part, figure);
      }
    }
    html.close();
    html.close();
    html.text(
        "p",
        "Shuffled: what the same rounds would have on average, dealt at random over the pieces.",
        "class",
        "hint");
    KeepWords.of(arrangement).ifPresent(words -> html.text("p", words + "."));
    weakSpots();
    chance();
    html.close();
  }

  private void row(Part part, double figure) {
    double weight = arrangement.blanket().brief().prefer().weight(part);
    html.open("tr");
    html.text("th", part.word(), "scope", "row");
    html.text("td", weight > 0 ? Figures.shortest(weight, 2) : "left out", "class", "n");
    html.text("td", Figures.fixed(figure, 1), "class", "n");
    html.text("td", Figures.fixed(card.chance().get(part).mean(), 1), "class", "n");
    html.open("td", "class", "wide");
    Bars.bar(html, figure / 100, 0);
    html.close();
    html.close();
  }

  /** The figures of the score card, layer by layer. */
  private void chance() {
    html.open("details");
    html.open("summary");
    html.text("h3", "For statisticians: against chance");
    html.close();
    arrangement
        .bound()
        .ifPresent(bound -> html.text("p", "The proof of the most it can have: " + bound.proof()));
    html.open("table", "class", "figures");
    html.open("thead");
    html.open("tr");
    for (String head : List.of("Layer", "Repeats", "expected", "z", "Moran's I", "z")) {
      html.text("th", head, "scope", "col", "class", head.equals("Layer") ? "" : "n");
    }
    html.close();
    html.close();
    html.open("tbody");
    for (LayerCard layer : card.layers()) {
      html.open("tr");
      html.text("th", CardWords.name(layer), "scope", "row");
      statistic(layer.repeats());
      Statistic lightness = layer.lightness();
      cell(lightness.varies() ? Figures.fixed(lightness.observed(), 2) : "-");
      cell(z(lightness));
      html.close();
    }
    html.open("tr");
    html.text("th", "all", "scope", "row");
    statistic(card.repeats());
    cell("");
    cell("");
    html.close();
    html.close();
    html.close();
    html.text(
        "p",
        "Repeats: pairs within reach that show the same yarn, by their weights, and what a shuffle"
            + " has on average. Moran's I: lightness beside lightness on seams; below 0, lights lie"
            + " beside darks. z: standard deviations from what is expected.",
        "class",
        "hint");
    CardWords words = new CardWords(arrangement, card);
    words.seams().forEach(each -> html.text("p", String.join("; ", each)));
    html.text("p", words.offTarget());
    html.close();
  }

  private void statistic(Statistic statistic) {
    cell(Figures.shortest(statistic.observed(), 2));
    cell(Figures.fixed(statistic.expected(), 0));
    cell(z(statistic));
  }

  private static String z(Statistic statistic) {
    return statistic.varies() ? Figures.fixed(statistic.z(), 1) : "-";
  }

  private void cell(String words) {
    html.text("td", words, "class", "n");
  }

  private void weakSpots() {
    html.text("h3", "Weakest spots");
    List<WeakSpot> spots = PageData.weakSpots(arrangement);
    if (spots.isEmpty()) {
      html.text("p", "None.");
      return;
    }
    html.open("ul");
    for (int i = 0; i < spots.size(); i++) {
      html.open("li");
      String points = Figures.fixed(spots.get(i).points(), 2);
      html.words(spots.get(i).words() + " (costs " + points + " points) ");
      if (!spots.get(i).pieces().isEmpty()) {
        html.text("button", "Show", "type", "button", "class", "see", "data-weak", i);
      }
      html.close();
    }
    html.close();
  }
}
