package lozengy.model.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Fade;
import lozengy.model.layout.Place;

/**
 * What single rounds lose of a fade. In each layer, the pieces whose round fades are ranked along
 * the direction, equal ones sharing their mean rank, and the yarns get the stretch of ranks that
 * their target counts fill, one after the other in their order. With d the distance of a piece's
 * rank from the middle of its yarn's stretch, both as parts of all ranks, a round loses 300 d²/N
 * points, N the number of rounds that fade. So where the layers show their target counts, the
 * figure is 50 (1 + r), with r Spearman's rank correlation of place and yarn, but for the ranks
 * that pieces of one yarn share. A yarn out of the order loses what a random place loses on
 * average, d² = 1/6.
 *
 * <p>O(pieces log pieces + layers x yarns) to make.
 */
public final class FadeMeasure {

  private static final double RANDOM = 1 / 6.0;

  private final Blanket blanket;
  private final double[][] places;
  private final double[][] shades;
  private final int rounds;

  private FadeMeasure(Blanket blanket, Fade fade) {
    this.blanket = blanket;
    this.places = new double[blanket.layerCount()][blanket.pieceCount()];
    this.shades = new double[blanket.layerCount()][blanket.yarnCount()];
    Targets targets = Targets.of(blanket);
    List<Integer> order = order(blanket, fade);
    int[] pieces =
        blanket.layout().select(fade.where().at()).stream().mapToInt(Place::index).toArray();
    int count = 0;
    for (int layer = 0; layer < places.length; layer++) {
      Arrays.fill(places[layer], Double.NaN);
      int ofLayer = layer;
      int[] fading =
          IntStream.of(pieces)
              .filter(
                  piece -> {
                    int has = blanket.roundCount(piece);
                    return ofLayer < has && fade.where().covers(has - 1 - ofLayer, has);
                  })
              .toArray();
      count += fading.length;
      rank(fade, fading, places[layer]);
      stretch(order, targets.counts()[layer], shades[layer]);
    }
    this.rounds = count;
  }

  /**
   * {@return the measure of a blanket's fade; empty where its look has none}
   *
   * @param blanket the blanket
   */
  public static Optional<FadeMeasure> of(Blanket blanket) {
    return blanket.brief().look().fade().map(fade -> new FadeMeasure(blanket, fade));
  }

  private static List<Integer> order(Blanket blanket, Fade fade) {
    if (fade.order() == Fade.Order.STATED) {
      return fade.yarns().stream().map(blanket::yarnIndex).toList();
    }
    Comparator<Integer> darkFirst =
        Comparator.comparingDouble(yarn -> blanket.yarns().lab(yarn).lightness());
    Comparator<Integer> first =
        fade.order() == Fade.Order.DARK_TO_LIGHT ? darkFirst : darkFirst.reversed();
    List<Integer> order = new ArrayList<>(IntStream.range(0, blanket.yarnCount()).boxed().toList());
    order.sort(first.thenComparing(yarn -> blanket.yarn(yarn).code()));
    return order;
  }

  private void rank(Fade fade, int[] pieces, double[] place) {
    int width = 2 * blanket.layout().size().across();
    int height = 2 * blanket.layout().size().down();
    List<Integer> sorted = new ArrayList<>(IntStream.of(pieces).boxed().toList());
    long[] along = new long[place.length];
    for (int piece : pieces) {
      Place at = blanket.place(piece);
      along[piece] = fade.towards().along(at.x(), at.y(), width, height);
    }
    sorted.sort(Comparator.comparingLong(piece -> along[piece]));
    for (int from = 0; from < sorted.size(); ) {
      int to = from;
      while (to < sorted.size() && along[sorted.get(to)] == along[sorted.get(from)]) {
        to++;
      }
      for (int i = from; i < to; i++) {
        place[sorted.get(i)] = (from + to) / 2.0 / sorted.size();
      }
      from = to;
    }
  }

  private static void stretch(List<Integer> order, int[] targets, double[] shade) {
    Arrays.fill(shade, Double.NaN);
    double all = order.stream().mapToInt(yarn -> targets[yarn]).sum();
    double before = 0;
    for (int i = 0; i < order.size(); i++) {
      int yarn = order.get(i);
      shade[yarn] = all == 0 ? (i + 0.5) / order.size() : (before + targets[yarn] / 2.0) / all;
      before += targets[yarn];
    }
  }

  /** {@return how many rounds fade} */
  public int rounds() {
    return rounds;
  }

  /**
   * Points of the part that a round loses in a yarn; 0 for one that does not fade.
   *
   * @param piece the piece's index, from 0
   * @param round from 0 at the centre
   * @param yarn the yarn's index, from 0
   * @return the points, 0 or more; 0 for a round that does not fade
   */
  public double points(int piece, int round, int yarn) {
    int layer = blanket.roundCount(piece) - 1 - round;
    double place = places[layer][piece];
    if (Double.isNaN(place)) {
      return 0;
    }
    double off = place - shades[layer][yarn];
    return 300.0 / rounds * (Double.isNaN(off) ? RANDOM : off * off);
  }
}
