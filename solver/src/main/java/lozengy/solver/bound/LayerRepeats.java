package lozengy.solver.bound;

import java.util.List;
import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Setting;

/** Proves floors under one layer's repeats, better ones the more effort is allowed. */
final class LayerRepeats {

  /** Most places for which bands are priced one by one. */
  private static final int MOST_PLACES = 1500;

  /** Most states of a {@link ColourSweep}. */
  private static final int MOST_STATES = 10_000;

  /** Steps of the first full stage; each further stage has thrice as many. */
  private static final int STEPS = 30;

  /** Most states or choices gone through in a stage, so that large layers take fewer steps. */
  private static final long MOST_WORK = 400_000_000;

  /** The same for all yarns at once at the first full stage; each further one has thrice. */
  private static final long COLOUR_WORK = 8_000_000;

  private final Blanket blanket;
  private final Region region;
  private final double slopeUnit;
  private final boolean merged;
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
    this.floor = RepeatFloor.none(region.allPairs(), blanket.yarnCount());
  }

  /** Gives up on repeats: they weigh nothing. */
  RepeatFloor none() {
    return floor;
  }

  /**
   * Proves a floor at a stage; stages come in order from 0.
   *
   * @param wanted how often each yarn is expected to show
   */
  RepeatFloor at(int stage, double[] wanted, BooleanSupplier stop) {
    if (stage == 0) {
      begin(cover(false), wanted);
    } else if (stage == 1 && !idle) {
      begin(cover(!merged), wanted);
      startColours();
    }
    if (!idle) {
      improve(stage, stop);
    }
    return floor;
  }

  private List<Band> cover(boolean wide) {
    boolean straight = blanket.layout().size().setting() == Setting.STRAIGHT;
    int width = straight ? wide ? 10 : 8 : wide ? 7 : 6;
    int step = straight ? wide ? 6 : 4 : wide ? 4 : 3;
    return new BandCover(region, width, step, merged).bands();
  }

  private void begin(List<Band> bands, double[] wanted) {
    List<YarnClass> classes =
        region.places() == 0 ? List.of() : YarnClasses.of(blanket, region, wanted);
    // a ninth of the places can always show one yarn without a repeat, so no floor is above 0
    idle = classes.stream().allMatch(each -> 9 * each.wanted() <= region.places());
    prices = idle ? null : new RepeatPrices(bands, classes, region.pairs(), !merged);
  }

  private void startColours() {
    int yarns = 0;
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
      long most = Math.max(5, MOST_WORK / Math.max(1, prices.work()));
      prices.improve((int) Math.min(STEPS * times, most), stop);
      if (colours != null) {
        long steps = 1 + COLOUR_WORK * times / Math.max(1, colours.work());
        colours.improve((int) Math.min(STEPS * times, steps), stop);
      }
    }
    double proved = Math.max(floor.least(), colours == null ? 0 : colours.best());
    floor =
        prices
            .floor(
                region.allPairs(),
                blanket.yarnCount(),
                -2 * slopeUnit,
                -slopeUnit,
                -slopeUnit / 2,
                0,
                slopeUnit / 2,
                slopeUnit,
                2 * slopeUnit)
            .atLeast(proved);
  }
}
