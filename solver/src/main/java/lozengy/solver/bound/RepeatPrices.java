package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import lozengy.model.layout.PieceKind;

/**
 * Prices of places that prove a floor under a layer's repeats.
 *
 * <p>Let E be the weight of the layer's repeats, and W(b, A) the weight that band b holds of the
 * pairs within a set A of places. Each place i shows exactly one yarn; A(c) are the places that
 * show yarn c. For any prices p(b, i) and any tolls y(c, k) by yarn and kind of piece, with s(b, i)
 * the parts of place i told in band b (sum 1 over b),
 *
 * <pre>
 * E = sum over bands b, yarns c of W(b, A(c))
 *   = sum over b, i of p(b, i) + sum over b, c of [ W(b, A(c)) - sum over i in A(c) of p(b, i) ]
 *  &gt;= sum p + sum over c of { sum over b of min over A of [ W(b, A) - p(b, A) + y(c) s(b, A) ]
 *                            - sum over k of y(c, k) n(c, k) }
 * </pre>
 *
 * since the s(b, A(c)) of places of a kind sum to n(c, k), the places of it that show c. The
 * minimum is taken over all sets that keep to the layer's tones, locks, bans and the rule for
 * borders, valid arrangements' among them, so it is never too high; {@link BandSweep} finds it
 * exactly. (A place that must show a yarn gains so much that leaving it out does not pay; if it
 * did, the minimum would only be lower.) This is the Lagrangian dual of covering the places by one
 * set for each yarn; {@link Ascent} finds good prices, tolls and shares of the pairs, and the proof
 * needs nothing of them.
 */
final class RepeatPrices {

  /** Steps to take at least, however many states they go through. */
  private static final int FEWEST = 5;

  /** How much slower tolls change than prices. */
  private static final double TOLL_UNIT = 0.15;

  /** Level of the ascent above its start, for each pair. */
  private static final double LEVEL = 0.02;

  /** What a yarn gains at a place where it must lie. */
  private static final double MUST = 1000;

  private static final int KINDS = PieceKind.values().length;

  /** Moves of tolls that are offered, for all kinds of pieces together. */
  private static final double[] STEPS = {-2, -1, -0.5, 0, 0.5, 1, 2};

  /** The same for one kind at a time. */
  private static final double[] SINGLE_STEPS = {-0.7, 0.7};

  /** Part of the weight at a place that prices start with, at least. */
  private static final double LEAST_PART = 0.02;

  private static final double GROWTH = 1.25;

  private final List<Band> bands;
  private List<YarnClass> classes;
  private final boolean shifting;
  private final PairShares shares;
  private final BandSweep[] sweeps;
  private final double[][] price;
  private final double[][] weight;
  private double[][] toll;
  private final double[][] priceSlope;
  private final double[][] weightSlope;
  private double[][] tollSlope;
  private final double[][] gain;
  private final boolean[][] chosen;
  private final int pairs;
  private Ascent ascent;

  /**
   * Starts with prices in proportion to the weight at each place.
   *
   * @param pairs how many pairs the region has
   * @param shifting whether to move shares of pairs between bands; only where no band has copies
   */
  RepeatPrices(List<Band> bands, List<YarnClass> classes, int pairs, boolean shifting) {
    this.bands = bands;
    this.classes = classes;
    this.shifting = shifting;
    this.pairs = pairs;
    int count = bands.size();
    shares = new PairShares(bands, pairs);
    sweeps = bands.stream().map(BandSweep::new).toArray(BandSweep[]::new);
    price = new double[count][];
    weight = new double[count][];
    priceSlope = new double[count][];
    weightSlope = new double[count][];
    gain = new double[count][];
    chosen = new boolean[count][];
    for (int b = 0; b < count; b++) {
      Band band = bands.get(b);
      price[b] = new double[band.places()];
      priceSlope[b] = new double[band.places()];
      gain[b] = new double[band.places()];
      chosen[b] = new boolean[band.places()];
      weight[b] = band.weight().clone();
      weightSlope[b] = new double[band.pair().length];
    }
    toll = new double[classes.size()][KINDS];
    tollSlope = new double[classes.size()][KINDS];
    startInProportion();
    begin();
  }

  private void begin() {
    ascent = new Ascent(this::climbed, packed(), LEVEL * pairs + 1e-3);
    ascent.climb(1, () -> false);
  }

  /** Goes on from the best prices with other classes; each yarn keeps its class's tolls. */
  void sort(List<YarnClass> sorted) {
    unpack(ascent.bestPoint());
    double[][] kept = new double[sorted.size()][];
    for (int k = 0; k < kept.length; k++) {
      kept[k] = toll[classOf(sorted.get(k).yarns()[0])].clone();
    }
    classes = sorted;
    toll = kept;
    tollSlope = new double[kept.length][KINDS];
    begin();
  }

  private int classOf(int yarn) {
    for (int k = 0; k < classes.size(); k++) {
      for (int member : classes.get(k).yarns()) {
        if (member == yarn) {
          return k;
        }
      }
    }
    throw new IllegalStateException("no class has yarn " + yarn);
  }

  /**
   * The value is concave in the proportion, so where it falls again it was the best. From below,
   * for the less places are worth, the fewer states a sweep goes through.
   */
  private void startInProportion() {
    double part = LEAST_PART;
    double best = inProportion(part);
    double next = inProportion(GROWTH * part);
    while (next > best && part < 1) {
      part *= GROWTH;
      best = next;
      next = inProportion(GROWTH * part);
    }
    inProportion(part);
  }

  private double inProportion(double part) {
    for (int b = 0; b < price.length; b++) {
      double[] at = bands.get(b).weightAt();
      for (int place = 0; place < at.length; place++) {
        price[b][place] = part * at[place];
      }
    }
    return value(false);
  }

  /** Variables in one row; those of a band that stands for several are scaled to count as all. */
  private double[] packed() {
    double[] point = new double[variables()];
    int at = 0;
    for (int b = 0; b < price.length; b++) {
      double root = Math.sqrt(bands.get(b).copies());
      for (double each : price[b]) {
        point[at++] = each * root;
      }
      for (int i = 0; shifting && i < weight[b].length; i++) {
        point[at++] = weight[b][i];
      }
    }
    for (double[] each : toll) {
      for (double byKind : each) {
        point[at++] = byKind / TOLL_UNIT;
      }
    }
    return point;
  }

  private int variables() {
    int variables = toll.length * KINDS;
    for (int b = 0; b < price.length; b++) {
      variables += price[b].length + (shifting ? weight[b].length : 0);
    }
    return variables;
  }

  private void unpack(double[] point) {
    int at = 0;
    for (int b = 0; b < price.length; b++) {
      double root = Math.sqrt(bands.get(b).copies());
      for (int place = 0; place < price[b].length; place++) {
        price[b][place] = point[at++] / root;
      }
      if (shifting) {
        System.arraycopy(point, at, weight[b], 0, weight[b].length);
        at += weight[b].length;
        sweeps[b].weigh(weight[b]);
      }
    }
    for (double[] each : toll) {
      for (int kind = 0; kind < KINDS; kind++) {
        each[kind] = point[at++] * TOLL_UNIT;
      }
    }
  }

  private double climbed(double[] point, double[] slope) {
    unpack(point);
    double value = value(true);
    if (shifting) {
      shares.level(weightSlope);
    }
    int at = 0;
    for (int b = 0; b < price.length; b++) {
      double root = Math.sqrt(bands.get(b).copies());
      for (double each : priceSlope[b]) {
        slope[at++] = each * root;
      }
      for (int i = 0; shifting && i < weightSlope[b].length; i++) {
        slope[at++] = weightSlope[b][i];
      }
    }
    for (double[] each : tollSlope) {
      for (double byKind : each) {
        // one class alone has no toll: it would only move all prices
        slope[at++] = tollSlope.length > 1 ? byKind * TOLL_UNIT : 0;
      }
    }
    return value;
  }

  /** The floor at the present prices if each class shows as often as wanted; slopes on request. */
  private double value(boolean slopes) {
    double value = 0;
    for (int k = 0; k < toll.length; k++) {
      for (int kind = 0; kind < KINDS; kind++) {
        double wanted = classes.get(k).yarns().length * classes.get(k).wanted()[kind];
        value -= toll[k][kind] * wanted;
        tollSlope[k][kind] = -wanted;
      }
    }
    for (int b = 0; b < price.length; b++) {
      int copies = bands.get(b).copies();
      Arrays.fill(priceSlope[b], 1);
      Arrays.fill(weightSlope[b], 0);
      for (double each : price[b]) {
        value += copies * each;
      }
      for (int k = 0; k < toll.length; k++) {
        value += copies * classes.get(k).yarns().length * least(b, k, toll[k]);
        if (slopes) {
          addSlopes(b, k);
        }
      }
    }
    return value;
  }

  private double least(int b, int k, double[] tollNow) {
    Band band = bands.get(b);
    boolean[] may = classes.get(k).may();
    boolean[] must = classes.get(k).must();
    double gained = 0;
    for (int i = 0; i < gain[b].length; i++) {
      int place = band.place()[i];
      gain[b][i] =
          may[place]
              ? price[b][i] - tollNow[band.kind()[i]] * band.share()[i]
              : Double.NEGATIVE_INFINITY;
      if (must[place]) {
        gain[b][i] += MUST;
        gained += MUST;
      }
    }
    return sweeps[b].least(gain[b]) + gained;
  }

  private void addSlopes(int b, int k) {
    Band band = bands.get(b);
    int yarns = classes.get(k).yarns().length;
    sweeps[b].mark(gain[b], chosen[b]);
    for (int place = 0; place < chosen[b].length; place++) {
      if (chosen[b][place]) {
        priceSlope[b][place] -= yarns;
        tollSlope[k][band.kind()[place]] += band.copies() * yarns * band.share()[place];
      }
    }
    for (int pair = 0; shifting && pair < weightSlope[b].length; pair++) {
      if (chosen[b][band.first()[pair]] && chosen[b][band.second()[pair]]) {
        weightSlope[b][pair] += yarns;
      }
    }
  }

  /**
   * Improves the prices by so many steps, fewer if stopped.
   *
   * @param work states after which it ends, too
   */
  void improve(int steps, long work, BooleanSupplier stop) {
    long most = work() + work;
    for (int step = 0; step < steps && (step < FEWEST || work() < most); step++) {
      ascent.climb(1, stop);
    }
  }

  /** The floor that the best prices prove if each class shows as often as wanted. */
  double best() {
    return ascent.best();
  }

  private long work() {
    long work = 0;
    for (BandSweep sweep : sweeps) {
      work += sweep.work();
    }
    return work;
  }

  /**
   * The floor that the best prices prove.
   *
   * @param total the weight of all pairs
   * @param yarns how many yarns the blanket has
   * @param unit what tolls are moved by, to offer others beside the trained ones
   */
  RepeatFloor floor(double total, int yarns, double unit) {
    unpack(ascent.bestPoint());
    double base = 0;
    for (int b = 0; b < price.length; b++) {
      for (double each : price[b]) {
        base += bands.get(b).copies() * each;
      }
    }
    double[][][] tolls = new double[yarns][0][];
    double[][] heights = new double[yarns][0];
    for (int k = 0; k < toll.length; k++) {
      double[][] offered = offered(k, unit);
      double[] height = new double[offered.length];
      for (int line = 0; line < offered.length; line++) {
        for (int b = 0; b < price.length; b++) {
          height[line] += bands.get(b).copies() * least(b, k, offered[line]);
        }
      }
      for (int yarn : classes.get(k).yarns()) {
        tolls[yarn] = offered;
        heights[yarn] = height;
      }
    }
    return new RepeatFloor(total, 0, base, tolls, heights);
  }

  /** The trained tolls, moved for all kinds together and for each that may show the class alone. */
  private double[][] offered(int k, double unit) {
    boolean[] shown = new boolean[KINDS];
    for (Band band : bands) {
      for (int i = 0; i < band.places(); i++) {
        shown[band.kind()[i]] |= classes.get(k).may()[band.place()[i]];
      }
    }
    List<double[]> offered = new ArrayList<>();
    for (double step : STEPS) {
      offered.add(moved(toll[k], step * unit, shown));
    }
    boolean several = (shown[0] ? 1 : 0) + (shown[1] ? 1 : 0) + (shown[2] ? 1 : 0) > 1;
    for (int kind = 0; kind < KINDS && several; kind++) {
      boolean[] one = new boolean[KINDS];
      one[kind] = shown[kind];
      for (double step : shown[kind] ? SINGLE_STEPS : new double[0]) {
        offered.add(moved(toll[k], step * unit, one));
      }
    }
    return offered.toArray(double[][]::new);
  }

  private static double[] moved(double[] from, double step, boolean[] kinds) {
    double[] moved = from.clone();
    for (int kind = 0; kind < moved.length; kind++) {
      moved[kind] += kinds[kind] ? step : 0;
    }
    return moved;
  }
}
