package lozengy.report.card;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.card.AlikeSeams;
import lozengy.model.card.ClosestSeam;
import lozengy.model.card.LayerCard;
import lozengy.model.card.ScoreCard;
import lozengy.report.Figures;
import lozengy.report.PlainText;

/** Sentences of a score card, the same wherever it is told. */
public final class CardWords {

  private final Arrangement arrangement;
  private final ScoreCard card;
  private final Blanket blanket;

  /** Words for an arrangement's card. */
  public CardWords(Arrangement arrangement, ScoreCard card) {
    this.arrangement = arrangement;
    this.card = card;
    this.blanket = arrangement.blanket();
  }

  /** What to call a layer. */
  public static String name(LayerCard layer) {
    return layer.layer() == 0 ? "border" : layer.layer() + " in";
  }

  /**
   * Seams whose borders are close in colour, a sentence each, in one part or two; nothing where
   * there is no seam.
   */
  public List<List<String>> seams() {
    List<List<String>> lines = new ArrayList<>();
    card.closest()
        .ifPresent(
            seam ->
                lines.add(List.of("Closest borders on a seam: " + seam(seam) + " (CIEDE2000)")));
    if (card.alike().isEmpty() && card.closest().isPresent()) {
      lines.add(List.of("Borders on every seam can be told apart with any type of colour vision."));
    }
    for (AlikeSeams alike : card.alike()) {
      lines.add(
          List.of(
              "Hard to tell apart with a "
                  + alike.deficiency().word()
                  + " deficiency of colour vision: "
                  + Figures.count(alike.seams(), "seam"),
              "closest " + seam(alike.closest()) + " (CIEDE2000 as seen)"));
    }
    return lines;
  }

  private String seam(ClosestSeam seam) {
    int first = arrangement.sequences().border(seam.first());
    int second = arrangement.sequences().border(seam.second());
    return PlainText.oneLine(blanket.yarn(first).name() + " and " + blanket.yarn(second).name())
        + ", "
        + Figures.fixed(Math.floor(seam.difference() * 100) / 100, 2)
        + " apart at "
        + blanket.place(seam.first()).name()
        + ", "
        + blanket.place(seam.second()).name();
  }

  /** The counts that are not as wanted. */
  public String offTarget() {
    List<String> off = new ArrayList<>();
    for (LayerCard layer : card.layers()) {
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        int here = layer.counts()[yarn];
        int wanted = layer.targets()[yarn];
        if (here != wanted) {
          String code = PlainText.oneLine(blanket.yarn(yarn).code());
          off.add(code + " " + here + "/" + wanted + " (" + name(layer) + ")");
        }
      }
    }
    return off.isEmpty()
        ? "Every layer shows each yarn as often as wanted."
        : "Pieces that show a yarn, here/wanted, where they differ: " + String.join(", ", off);
  }
}
