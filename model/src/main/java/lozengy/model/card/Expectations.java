package lozengy.model.card;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.score.ColourVisionSeams;
import lozengy.model.score.Layers;
import lozengy.model.score.Points;
import lozengy.model.score.Scorer;

/**
 * Parts of the score as a random shuffle would have them on average, where there is a closed form.
 * With n(l, a) pieces of P(l) that show yarn a in layer l:
 *
 * <ul>
 *   <li>balance stays as it is: a shuffle changes no count;
 *   <li>spread: 100 (1 - E/E0), E the expected weight of repeats (Cliff and Ord) at the counts as
 *       they are; before it is cut off at 0;
 *   <li>contrast and colour vision of a seam: the mean over ordered pairs of borders of two pieces,
 *       sum over a, b of n(0, a) (n(0, b) - [a = b]) v(a, b) / (P(0) (P(0) - 1));
 *   <li>contrast of two rounds side by side: layers are shuffled apart from each other, so the sum
 *       over a, b of n(l, a) n(l + 1, b) v(a, b) / (P(l) P(l + 1));
 *   <li>keep: a free round shows its earlier yarn y with the chance n(l, y) / P(l).
 * </ul>
 *
 * O(layers x yarns squared + pieces x rounds + pairs).
 */
final class Expectations {

  private final Blanket blanket;
  private final List<LayerCard> layers;

  private Expectations(Blanket blanket, List<LayerCard> layers) {
    this.blanket = blanket;
    this.layers = layers;
  }

  static Map<Part, Chance> of(
      Blanket blanket,
      List<LayerCard> layers,
      Map<Part, Double> figures,
      Optional<Sequences> earlier) {
    Expectations all = new Expectations(blanket, layers);
    Map<Part, Chance> exact = new EnumMap<>(Part.class);
    exact.put(Part.BALANCE, Chance.exact(figures.get(Part.BALANCE)));
    exact.put(Part.SPREAD, Chance.exact(all.spread()));
    all.putContrast(exact);
    if (figures.containsKey(Part.COLOUR_VISION)) {
      Points.Value toldApart = (a, b) -> ColourVisionSeams.toldApart(blanket, a, b);
      exact.put(Part.COLOUR_VISION, Chance.exact(100 * all.seam(toldApart)));
    }
    exact.keySet().retainAll(figures.keySet());
    earlier.ifPresent(before -> exact.put(Part.KEEP, Chance.exact(all.keep(before))));
    return exact;
  }

  private double spread() {
    double expected = 0;
    for (LayerCard layer : layers) {
      expected += Layers.spreadWeight(blanket, layer.layer()) * layer.repeats().expected();
    }
    double norm = Scorer.expectedRepeats(blanket);
    return norm == 0 ? 100 : 100 * (1 - expected / norm);
  }

  private void putContrast(Map<Part, Chance> exact) {
    double steps = 0;
    double sum = 0;
    for (int layer = 0; layer + 1 < layers.size(); layer++) {
      LayerCard outer = layers.get(layer);
      LayerCard inner = layers.get(layer + 1);
      double pairs = (double) outer.pieces() * inner.pieces();
      sum += inner.pieces() * sum(outer.counts(), inner.counts(), contrast(false)) / pairs;
      steps += inner.pieces();
    }
    double within = steps == 0 ? 1 : sum / steps;
    double between = seam(contrast(true));
    boolean seams = Scorer.countedSeams(blanket).size() > 0;
    double both = steps == 0 ? between : seams ? (between + within) / 2 : within;
    exact.put(Part.CONTRAST, Chance.exact(100 * both));
    exact.put(Part.CONTRAST_BETWEEN, Chance.exact(100 * between));
    exact.put(Part.CONTRAST_WITHIN, Chance.exact(100 * within));
  }

  private Points.Value contrast(boolean onSeams) {
    return (a, b) -> Scorer.contrast(blanket, onSeams, a, b);
  }

  /** The mean over seams, 1 where none counts. */
  private double seam(Points.Value value) {
    if (Scorer.countedSeams(blanket).size() == 0) {
      return 1;
    }
    LayerCard border = layers.get(0);
    double pairs = (double) border.pieces() * (border.pieces() - 1);
    double sum = sum(border.counts(), border.counts(), value);
    for (int yarn = 0; yarn < border.counts().length; yarn++) {
      // a piece makes no seam with itself
      sum -= border.counts()[yarn] == 0 ? 0 : border.counts()[yarn] * value.of(yarn, yarn);
    }
    return sum / pairs;
  }

  private static double sum(int[] counts, int[] others, Points.Value value) {
    double sum = 0;
    for (int a = 0; a < counts.length; a++) {
      for (int b = 0; counts[a] > 0 && b < others.length; b++) {
        if (others[b] > 0) {
          sum += (double) counts[a] * others[b] * value.of(a, b);
        }
      }
    }
    return sum;
  }

  private double keep(Sequences earlier) {
    double free = 0;
    double kept = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int rounds = blanket.roundCount(piece);
      for (int round = 0; round < rounds; round++) {
        int before = earlier.yarn(piece, round);
        if (blanket.free(piece, round) && before != Sequences.OPEN) {
          LayerCard layer = layers.get(rounds - 1 - round);
          kept += (double) layer.counts()[before] / layer.pieces();
          free++;
        }
      }
    }
    return free == 0 ? 100 : 100 * kept / free;
  }
}
