package lozengy.solver.bound;

import java.util.List;
import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Setting;

/** Proves floors under one layer's repeats, better ones the more effort is allowed. */
final class LayerRepeats {

  /** Most places for which bands are priced one by one. */
  private static final int MOST_PLACES = 1500;

  /**
   * Places of one kind, in a line at worst, of which about one can show a yarn without a repeat.
   */
  private static final int LINED_UP = 4;

  /** Lattice units across up to which one band may span a layer. */
  private static final int MOST_SPANNED = 11;

  /** States of such a band, at most, were none left out: its sweep keeps what it goes through. */
  private static final long MOST_OF_ONE_BAND = 1_000_000;

  /** Most places times yarns for which locks and bans of single pieces are minded. */
  private static final long MOST_MASKS = 20_000;

  /** Most states of a {@link ColourSweep}. */
  private static final int MOST_STATES = 10_000;

  /** Steps of the first full stage; each further stage has thrice as many. */
  private static final int STEPS = 50;

  /**
   * States gone through at the first full stage, after which large layers take no more steps; each
   * further stage may go through thrice as many.
   */
  private static final long MOST_WORK = 10_000_000;

  /** The same for all yarns at once at the first full stage; each further one has thrice. */
  private static final long COLOUR_WORK = 8_000_000;

  private final Blanket blanket;
  private final Region region;
  private final double slopeUnit;
  private final boolean merged;
  private final boolean single;
  private RepeatPrices prices;
  private ColourShares colours;
  private RepeatFloor floor;
  private boolean idle;

  /**
   * Takes a layer.
   *
   * @param slopeUnit change of repeats that a change of one in a yarn's count is worth in balance
   */
  LayerRepeats(Blanket blanket, int layer, double slopeUnit) {
    this.blanket = blanket;
    this.slopeUnit = Math.min(8, Math.max(1, slopeUnit));
    this.region = new Region(blanket, layer);
    this.merged = region.places() > MOST_PLACES;
    this.single = (long) region.places() * blanket.yarnCount() <= MOST_MASKS;
    this.floor = RepeatFloor.none(region.allPairs(), blanket.yarnCount());
  }

  /** Gives up on repeats: they weigh nothing. */
  RepeatFloor none() {
    return floor;
  }

  /**
   * Proves a floor at a stage; stages come in order from 0.
   *
   * @param wanted by ordinal of the kind of piece and yarn, how often each is expected to show
   */
  RepeatFloor at(int stage, double[][] wanted, BooleanSupplier stop) {
    if (stage == 0) {
      begin(cover(false), wanted);
    } else if (stage == 1) {
      begin(cover(!merged), wanted);
      startColours();
    } else if (idle) {
      begin(cover(!merged), wanted);
    } else {
      prices.sort(classes(wanted));
    }
    if (!idle) {
      improve(stage, stop);
    }
    return floor;
  }

  /**
   * The bands that a layer is swept in: one where it is so narrow and short that it has few states.
   *
   * @param wide whether it is worth more than the first glance
   */
  List<Band> cover(boolean wide) {
    boolean straight = blanket.layout().size().setting() == Setting.STRAIGHT;
    int width = straight ? wide ? 10 : 8 : wide ? 7 : 6;
    int step = straight ? wide ? 6 : 4 : wide ? 4 : 3;
    List<Band> bands = new BandCover(region, width, step, merged).bands();
    if (wide && bands.size() > 1 && region.span() <= MOST_SPANNED) {
      List<Band> one = new BandCover(region, region.span(), region.span(), false).bands();
      Band all = one.get(0);
      return (long) all.places() << new Frontier(all).width() <= MOST_OF_ONE_BAND ? one : bands;
    }
    return bands;
  }

  private List<YarnClass> classes(double[][] wanted) {
    return YarnClasses.of(blanket, region, wanted, single && !merged);
  }

  private void begin(List<Band> bands, double[][] wanted) {
    List<YarnClass> classes = classes(wanted);
    idle = classes.stream().noneMatch(this::crowded);
    prices = idle ? null : new RepeatPrices(bands, classes, region.pairs(), !merged);
  }

  /** Whether a yarn may have to repeat: a ninth of the places can show one without a repeat. */
  private boolean crowded(YarnClass yarns) {
    int[] places = new int[yarns.wanted().length];
    boolean crowded = false;
    for (int place = 0; place < region.places(); place++) {
      places[region.kind(place)]++;
      crowded |= yarns.must()[place];
    }
    double wanted = 0;
    for (int kind = 0; kind < places.length; kind++) {
      wanted += yarns.wanted()[kind];
      crowded |= LINED_UP * yarns.wanted()[kind] > places[kind] + LINED_UP;
    }
    return crowded || 9 * wanted > region.places();
  }

  private void startColours() {
    int yarns = 0;
    if (idle) {
      return;
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      yarns += floor.toll()[yarn].length > 0 ? 1 : 0;
    }
    if (!merged && yarns <= 4) {
      List<Band> bands = cover(false);
      colours = ColourShares.of(bands, yarns, region.pairs(), MOST_STATES);
    }
  }

  private void improve(int stage, BooleanSupplier stop) {
    if (stage > 0) {
      int times = 1;
      for (int i = 1; i < stage; i++) {
        times *= 3;
      }
      prices.improve(STEPS * times, MOST_WORK * times, stop);
      if (colours != null) {
        long steps = 1 + COLOUR_WORK * times / Math.max(1, colours.work());
        colours.improve((int) Math.min(STEPS * times, steps), stop);
      }
    }
    double proved = Math.max(floor.least(), colours == null ? 0 : colours.best());
    floor = prices.floor(region.allPairs(), blanket.yarnCount(), slopeUnit).atLeast(proved);
  }
}
