package lozengy.solver.pack;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.ForSale;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Weight;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.unit.Ratio;
import lozengy.model.yarn.ShadeNeed;
import lozengy.model.yarn.ShadeTaken;
import lozengy.model.yarn.WholeBalls;

/**
 * What can be packed of each yarn: how many balls at the least and at the most, what of them may be
 * used, and what they cost. What is used of a shade stays within what its share may bend to, to the
 * next round; so the most is told the solver as a shorter stock, and fewer balls than hold the
 * least are not packed.
 */
final class Shades {

  private static final BigDecimal HUNDRED = new BigDecimal(100);
  private static final int PRICE_DECIMALS = 4;

  private final Blanket bare;
  private final PackGoal goal;
  private final long[] shared;
  private final long[] held;
  private final long[] lowest;
  private final long[] highest;
  private final int[] least;
  private final int[] most;

  Shades(Blanket stocked, PackOptions options) {
    Brief brief = ShadeTaken.atNothing(stocked.brief());
    this.bare = Blanket.ofUnjudged(brief.withForSale(Optional.of(sale(brief, options))));
    this.goal = options.goal();
    double bendPercent = options.bendPercent();
    int yarns = bare.yarnCount();
    this.shared = ShadeNeed.of(bare).stream().mapToLong(ShadeNeed::millimetres).toArray();
    this.held = bare.usedMillimetres(bare.locks());
    this.lowest = new long[yarns];
    this.highest = new long[yarns];
    this.least = new int[yarns];
    this.most = new int[yarns];
    for (int yarn = 0; yarn < yarns; yarn++) {
      boolean gone = bare.yarn(yarn).gone();
      double bend = bendPercent / 100;
      long round = longest(yarn);
      long low = (long) Math.ceil(shared[yarn] * (1 - bend)) - round;
      long high = (long) (shared[yarn] * (1 + bend)) + round;
      lowest[yarn] = gone ? 0 : Math.max(0, low);
      // of a small size a share may come to no round, and still bends to the next
      boolean unwanted = shared[yarn] == 0 && bare.yarn(yarn).share() == 0;
      highest[yarn] = gone ? 0 : Math.max(held[yarn], unwanted ? 0 : high);
      least[yarn] = balls(yarn, Math.max(held[yarn], lowest[yarn]));
      most[yarn] = Math.max(least[yarn], balls(yarn, highest[yarn]));
    }
  }

  /** For hands as loose as is asked, or else as the brief says of whoever buys it, or of all. */
  private static ForSale sale(Brief brief, PackOptions options) {
    return options
        .looserPercent()
        .or(() -> brief.forSale().map(ForSale::looserPercent))
        .or(() -> brief.stitching().variesPercent())
        .map(ForSale::new)
        .orElse(new ForSale(BigDecimal.ZERO));
  }

  /** Packs of one palette for several sizes hold what each of them needs. */
  static void widen(List<Shades> sizes) {
    for (int yarn = 0; yarn < sizes.get(0).count(); yarn++) {
      int at = yarn;
      int least = sizes.stream().mapToInt(size -> size.least(at)).max().orElseThrow();
      int most = sizes.stream().mapToInt(size -> size.most(at)).max().orElseThrow();
      for (Shades size : sizes) {
        size.least[yarn] = least;
        size.most[yarn] = most;
      }
    }
  }

  /** The longest round that a yarn may have, in mm: shares bend to whole rounds. */
  private long longest(int yarn) {
    long longest = 0;
    for (int piece = 0; piece < bare.pieceCount(); piece++) {
      for (int round = 0; round < bare.roundCount(piece); round++) {
        if (bare.motifs().toneAllows(bare.kind(piece), round, yarn)) {
          longest = Math.max(longest, bare.takenMillimetres(piece, round, yarn));
        }
      }
    }
    return longest;
  }

  private int balls(int yarn, long millimetres) {
    return millimetres <= 0 || bare.yarn(yarn).gone() ? 0 : (int) balls(yarn).fewest(millimetres);
  }

  private WholeBalls balls(int yarn) {
    return WholeBalls.of(bare.brief(), ball(yarn));
  }

  /** What may be used of so many balls, in mm, rounded up as the model does. */
  private long whole(int yarn, int balls) {
    return balls(yarn).usableMillimetres(balls);
  }

  private Ball ball(int yarn) {
    return bare.yarn(yarn).ball().orElseThrow();
  }

  /** The brief without any stock. */
  Blanket bare() {
    return bare;
  }

  int count() {
    return least.length;
  }

  int least(int yarn) {
    return least[yarn];
  }

  int most(int yarn) {
    return most[yarn];
  }

  /** What rounds that hold it already, joining and edging take of a yarn, in mm. */
  long held(int yarn) {
    return held[yarn];
  }

  /** What a yarn is used by its share, in mm. */
  long shared(int yarn) {
    return shared[yarn];
  }

  /** What of so many balls may be used, in mm, and is no more than its share may bend to. */
  long usable(int yarn, int balls) {
    return balls == 0 ? 0 : Math.min(highest[yarn], whole(yarn, balls));
  }

  /** Whether more balls than so many give no more to use. */
  boolean capped(int yarn, int balls) {
    return bare.yarn(yarn).gone() || whole(yarn, balls) >= highest[yarn];
  }

  /** What a length of stock, in mm, gives looser hands, as it is reckoned. */
  double reckoned(double length) {
    return length / (1 + looserPercent().doubleValue() / 100);
  }

  private BigDecimal looserPercent() {
    return bare.brief().forSale().orElseThrow().looserPercent();
  }

  /** The fewest balls that hold what is used of each yarn. */
  int[] fewest(long[] used) {
    int[] fewest = new int[used.length];
    for (int yarn = 0; yarn < used.length; yarn++) {
      fewest[yarn] = balls(yarn, used[yarn]);
    }
    return fewest;
  }

  /** Whether what is used of each yarn is as much at the least as its share may bend to. */
  boolean bentWithin(long[] used) {
    for (int yarn = 0; yarn < used.length; yarn++) {
      if (used[yarn] < lowest[yarn]) {
        return false;
      }
    }
    return true;
  }

  /** What a ball of a yarn costs: 1, the price in ten-thousandths, or mg. */
  long cost(int yarn) {
    if (bare.yarn(yarn).gone()) {
      return 1;
    }
    return switch (goal) {
      case BALLS -> 1;
      case PRICE ->
          bare.yarn(yarn)
              .price()
              .orElseThrow()
              .amount()
              .movePointRight(PRICE_DECIMALS)
              .longValueExact();
      case WEIGHT -> Math.max(1, ball(yarn).grams().movePointRight(3).longValue());
    };
  }

  long cost(int[] balls) {
    long sum = 0;
    for (int yarn = 0; yarn < balls.length; yarn++) {
      sum += balls[yarn] * cost(yarn);
    }
    return sum;
  }

  /** More of everything than is used; within what shares may bend to, or else without limits. */
  Blanket plenty(boolean bent) {
    long all = everything();
    return trial(yarn -> bent ? highest[yarn] : all, yarn -> 0);
  }

  /** What all rounds, joining and edging take in whichever yarns, in mm, and more. */
  private long everything() {
    long sum = Arrays.stream(held).map(Math::abs).sum();
    for (int piece = 0; piece < bare.pieceCount(); piece++) {
      for (int round = 0; round < bare.roundCount(piece); round++) {
        long most = 0;
        for (int yarn = 0; yarn < count(); yarn++) {
          most = Math.max(most, bare.takenMillimetres(piece, round, yarn));
        }
        sum += most;
      }
    }
    return 2 * sum;
  }

  /** The brief with a pack; leeway weighs nothing, for a pack is there to be used up. */
  Blanket trial(int[] balls) {
    return trial(
        yarn -> {
          long whole = whole(yarn, balls[yarn]);
          return whole > highest[yarn] || looserPercent().signum() > 0
              ? Math.min(whole, highest[yarn])
              : -1;
        },
        yarn -> balls[yarn]);
  }

  private interface Length {
    long of(int yarn);
  }

  private interface Count {
    int of(int yarn);
  }

  private Blanket trial(Length limits, Count balls) {
    List<Yarn> yarns = new ArrayList<>();
    for (int yarn = 0; yarn < count(); yarn++) {
      Yarn each = bare.yarn(yarn);
      if (!each.gone()) {
        long limit = limits.of(yarn);
        each =
            limit < 0
                ? each.withBalls(balls.of(yarn))
                : each.withLeft(Optional.of(new YarnAmount.Length(stock(limit))));
      }
      yarns.add(each);
    }
    Brief brief = bare.brief();
    Map<Part, Double> weights = new EnumMap<>(brief.prefer().weights());
    Map<Part, Weight> words = new EnumMap<>(Part.class);
    words.putAll(brief.prefer().words());
    words.remove(Part.LEEWAY);
    weights.put(Part.LEEWAY, 0.0);
    return Blanket.ofUnjudged(brief.withYarns(yarns).withPrefer(new Preferences(weights, words)));
  }

  /** The stock of which so much may be used, in mm. */
  private long stock(long usable) {
    BigDecimal percent =
        HUNDRED.subtract(BigDecimal.valueOf(bare.brief().rules().keepBackPercent()));
    return Ratio.of(BigDecimal.valueOf(usable).multiply(HUNDRED)).dividedBy(percent).down();
  }

  /** The brief as it is, with a pack for its stock. */
  Blanket packed(int[] balls) {
    List<Yarn> yarns = new ArrayList<>();
    for (int yarn = 0; yarn < count(); yarn++) {
      yarns.add(bare.yarn(yarn).withBalls(balls[yarn]));
    }
    return Blanket.ofUnjudged(bare.brief().withYarns(yarns));
  }
}
