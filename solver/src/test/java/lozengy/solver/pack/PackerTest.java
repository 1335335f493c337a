package lozengy.solver.pack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.ForSale;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Price;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.explain.argument.Shortfall;
import lozengy.solver.pack.Packing.Packed;
import lozengy.solver.pack.Packing.Shade;
import org.junit.jupiter.api.Test;

class PackerTest {

  private static final int TRIES = 40;

  private static final int[] COLOURS = {0xf0e0c0, 0xd0e0f8, 0xf8c8d0, 0xc8f0c8, 0xf0f0a0, 0xe0c8f0};

  private static Blanket blanket(int across, int down, double[] metres, List<Yarn> yarns) {
    List<Round> rounds = new ArrayList<>();
    for (double each : metres) {
      rounds.add(
          new Round(
              EnumSet.allOf(Tone.class),
              new YarnAmount.Length(BigDecimal.valueOf(each).movePointRight(3))));
    }
    Motif motif = new Motif(OptionalDouble.of(10), rounds);
    return Blanket.ofUnjudged(
        Brief.of(
            "tiny",
            new LayoutSize(Setting.STRAIGHT, across, down, false, false),
            Map.of(PieceKind.SQUARE, motif),
            yarns));
  }

  private static Yarn yarn(int number, double grams, double metres, String price) {
    int rgb = COLOURS[number];
    return Yarn.of("Y" + number, new Srgb(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff))
        .withBall(Optional.of(new Ball(grams, Math.round(metres * 1000))))
        .withPrice(Optional.of(new Price(new BigDecimal(price), "EUR")));
  }

  private static PackOptions options(PackGoal goal, double margin, double bend, long seed) {
    return options(goal, margin, bend, 0, seed);
  }

  private static PackOptions options(
      PackGoal goal, double margin, double bend, int looser, long seed) {
    return new PackOptions(
        goal,
        OptionalDouble.empty(),
        margin,
        bend,
        Optional.of(new BigDecimal(looser)),
        seed,
        OptionalLong.of(20_000),
        1,
        () -> false,
        attempt -> {});
  }

  /**
   * Even shares waste balls: of three shades with 40 m each, balls of 30 m hold that in two each,
   * six in all, where four hold the total of 120 m.
   */
  @Test
  void sharesBendSoThatFewerBallsAreBegun() {
    List<Yarn> yarns = List.of(yarn(0, 50, 30, "1"), yarn(1, 50, 30, "1"), yarn(2, 50, 30, "1"));
    Blanket blanket = blanket(3, 2, new double[] {10, 10}, yarns);
    Packed packed =
        assertInstanceOf(Packed.class, Packer.find(blanket, options(PackGoal.BALLS, 100, 100, 1)));
    assertEquals(4, packed.balls());
    assertTrue(packed.proof().least());
    assertEquals(4, packed.proof().floor());
    assertEquals(
        List.of(40_000L, 40_000L, 40_000L),
        packed.shades().stream().map(Shade::sharedMillimetres).toList());
    // a ball less of any shade is proved to be too few, by solving with exactly that
    for (Shade less : packed.shades()) {
      List<Yarn> poorer = new ArrayList<>();
      for (Shade shade : packed.shades()) {
        int balls = shade.balls() - (shade == less && shade.balls() > 0 ? 1 : 0);
        poorer.add(yarns.get(shade.yarn()).withBalls(balls));
      }
      SolveResult result =
          Solver.solve(
              Blanket.ofUnjudged(blanket.brief().withYarns(poorer)),
              Optional.empty(),
              SolveOptions.defaults().withMoves(20_000).withThreads(1));
      assertInstanceOf(SolveResult.Impossible.class, result);
    }
    // shares that bend by a round of 10 m at most, so to 30 m to 50 m, take five
    Packed even =
        assertInstanceOf(Packed.class, Packer.find(blanket, options(PackGoal.BALLS, 100, 0, 1)));
    assertEquals(5, even.balls());
    assertTrue(even.proof().least());
  }

  @Test
  void sameSeedAndMovesGiveTheSamePack() {
    List<Yarn> yarns = List.of(yarn(0, 50, 35, "2"), yarn(1, 50, 45, "3"), yarn(2, 50, 30, "2"));
    Blanket blanket = blanket(3, 3, new double[] {6.5, 9}, yarns);
    PackOptions options = options(PackGoal.PRICE, 5, 60, 3);
    Packed first = assertInstanceOf(Packed.class, Packer.find(blanket, options));
    Packed second = assertInstanceOf(Packed.class, Packer.find(blanket, options));
    assertEquals(first.shades(), second.shades());
    assertEquals(first.arrangement().sequences(), second.arrangement().sequences());
  }

  /** What is proved the least is the least of all packs, and nothing that is found is less. */
  @Test
  void leastPackIsThatOfBruteForce() {
    int proved = 0;
    int aboveFloor = 0;
    for (int seed = 0; seed < TRIES; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Blanket blanket = random(random);
      PackGoal goal = PackGoal.values()[random.nextInt(3)];
      double margin = random.nextInt(3) * random.nextInt(12);
      double bend = 10 * random.nextInt(8);
      int looser = 5 * Math.max(0, random.nextInt(6) - 2);
      BruteForce brute = new BruteForce(blanket, goal, margin, bend, looser);
      Packing packing = Packer.find(blanket, options(goal, margin, bend, looser, seed));
      String told = "seed " + seed + ": " + packing;
      if (packing instanceof Packed packed) {
        assertTrue(brute.least().isPresent(), told);
        assertEquals(
            List.of(),
            Check.faults(packed.arrangement().blanket(), packed.arrangement().sequences()));
        assertEquals(brute.wanted(), packed.wanted(), 1e-6, told);
        long cost = brute.cost(packed.shades().stream().mapToInt(Shade::balls).toArray());
        assertTrue(cost >= brute.least().getAsLong(), told);
        assertTrue(packed.proof().floor() <= brute.least().getAsLong(), told);
        if (packed.proof().least()) {
          assertEquals(brute.least().getAsLong(), cost, told);
          proved++;
          aboveFloor += cost > packed.proof().floor() ? 1 : 0;
        }
      } else if (packing instanceof Packing.Impossible) {
        assertTrue(brute.least().isEmpty(), told);
      }
    }
    assertTrue(proved >= TRIES / 2, "proved " + proved);
    assertTrue(aboveFloor >= 3, "above the floor " + aboveFloor);
  }

  /** One pack for two sizes is the least of all from which each can be worked by itself. */
  @Test
  void leastSharedPackIsThatOfBruteForce() {
    int proved = 0;
    for (int seed = 0; seed < TRIES; seed++) {
      SplittableRandom random = new SplittableRandom(1000 + seed);
      Blanket large = random(random);
      LayoutSize two = new LayoutSize(Setting.STRAIGHT, 1 + random.nextInt(2), 1, false, false);
      Blanket small = Blanket.ofUnjudged(large.brief().withLayout(two));
      List<Blanket> sizes = random.nextBoolean() ? List.of(large, small) : List.of(small, large);
      PackGoal goal = PackGoal.values()[random.nextInt(3)];
      double margin = random.nextInt(30);
      double bend = 20 * random.nextInt(5);
      List<BruteForce> brute =
          sizes.stream().map(size -> new BruteForce(size, goal, margin, bend, 0)).toList();
      List<Packing> packings = Packer.findShared(sizes, options(goal, margin, bend, seed));
      String told = "seed " + seed + ": " + packings;
      if (!packings.stream().allMatch(Packed.class::isInstance)) {
        assertTrue(packings.stream().noneMatch(Packed.class::isInstance), told);
        assertTrue(
            packings.stream().noneMatch(Packing.Impossible.class::isInstance)
                || BruteForce.leastShared(brute).isEmpty(),
            told);
        continue;
      }
      List<int[]> balls =
          packings.stream()
              .map(each -> ((Packed) each).shades().stream().mapToInt(Shade::balls).toArray())
              .toList();
      assertArrayEquals(balls.get(0), balls.get(1), told);
      for (Packing each : packings) {
        Packed packed = (Packed) each;
        assertEquals(
            List.of(),
            Check.faults(packed.arrangement().blanket(), packed.arrangement().sequences()));
      }
      long cost = brute.get(0).cost(balls.get(0));
      long least = BruteForce.leastShared(brute).orElseThrow();
      Packing.Proof proof = ((Packed) packings.get(0)).proof();
      assertTrue(cost >= least && proof.floor() <= least, told);
      if (proof.least()) {
        assertEquals(least, cost, told);
        proved++;
      }
    }
    assertTrue(proved >= TRIES / 2, "proved " + proved);
  }

  /**
   * The steps of the search grow while packs fail, here past the largest. That one is as good as
   * plenty, and is tried all the same; of its 48 balls those go again that nothing needs.
   */
  @Test
  void packIsFoundWhereStepsLeadPastTheLargest() {
    List<Yarn> yarns = List.of(yarn(0, 10, 15, "1"), yarn(1, 10, 15, "1"), yarn(2, 10, 15, "1"));
    List<Integer> tried = new ArrayList<>();
    PackOptions options =
        PackOptions.defaults()
            .withThreads(1)
            .withMoves(0)
            .withMargin(0)
            .withListener(attempt -> tried.add(attempt.balls()));
    Packed packed =
        assertInstanceOf(
            Packed.class, Packer.find(blanket(5, 9, new double[] {4, 6}, yarns), options));
    assertTrue(tried.contains(48), "tried " + tried);
    assertTrue(packed.balls() >= 30 && packed.balls() < 45, "450 m take " + packed.balls());
    assertTrue(packed.score() >= packed.wanted(), packed.score() + " of " + packed.wanted());
    assertFalse(packed.proof().least());
  }

  @Test
  void sizesOfSeveralPalettesShareNoPack() {
    Blanket one = blanket(2, 2, new double[] {3}, List.of(yarn(0, 50, 30, "1")));
    Blanket other = blanket(2, 2, new double[] {3}, List.of(yarn(0, 50, 31, "1")));
    PackOptions options = options(PackGoal.BALLS, 2, 50, 1);
    List<Blanket> both = List.of(one, other);
    assertThrows(IllegalArgumentException.class, () -> Packer.findShared(both, options));
  }

  /**
   * A yarn whose share bends to 210 m is held by one ball of 250 m. Where 10 m are missing, a ball
   * less of it takes 210 m away and not 250 m, so nine balls of 25 m do in its place.
   */
  @Test
  void ballOfWhichNotAllCountsIsNotReckonedWhole() {
    List<Yarn> yarns = List.of(yarn(0, 50, 250, "100"), yarn(1, 50, 25, "1"));
    Blanket blanket = blanket(5, 2, new double[] {10, 10}, yarns);
    Shades shades = new Shades(blanket, options(PackGoal.PRICE, 100, 100, 1));
    assertEquals(
        List.of(0, 1, 0, 9),
        List.of(shades.least(0), shades.most(0), shades.least(1), shades.most(1)));
    assertEquals(210_000, shades.usable(0, 1));
    Proposals proposals = new Proposals(List.of(shades));
    proposals.learn(
        shades, new int[] {1, 0}, new Shortfall(10_000, Map.of(0, 250_000L, 1, 25_000L)));
    assertArrayEquals(new int[] {0, 8}, proposals.next().orElseThrow());
  }

  /** A looser hand is a longer yarn: the balls are those of all lengths made so much longer. */
  @Test
  void looserHandsTakeMoreBalls() {
    List<Yarn> yarns = List.of(yarn(0, 50, 30, "1"), yarn(1, 50, 30, "1"));
    Blanket blanket = blanket(3, 2, new double[] {10, 10}, yarns);
    // 120 m are exactly four balls
    Packed exact =
        assertInstanceOf(
            Packed.class, Packer.find(blanket, options(PackGoal.BALLS, 100, 100, 0, 1)));
    Packed looser =
        assertInstanceOf(
            Packed.class, Packer.find(blanket, options(PackGoal.BALLS, 100, 100, 5, 1)));
    // each piece has a round of both, 60 m of each, and two balls hold 57.1 m for such a hand
    assertEquals(List.of(4, 6), List.of(exact.balls(), looser.balls()));
    assertTrue(looser.proof().least());
    assertEquals(
        Optional.of(new ForSale(new BigDecimal(5))),
        looser.arrangement().blanket().brief().forSale());
  }

  private static Blanket random(SplittableRandom random) {
    List<Yarn> yarns = new ArrayList<>();
    int count = 2 + random.nextInt(2);
    for (int i = 0; i < count; i++) {
      yarns.add(
          yarn(
                  i,
                  25 + 25 * random.nextInt(3),
                  5 + random.nextInt(12),
                  (3 + random.nextInt(5)) + ".50")
              .withShare(1 + random.nextInt(2)));
    }
    double[] metres = {1 + random.nextInt(40) / 10.0, 2 + random.nextInt(40) / 10.0};
    Blanket plain = blanket(2, 2, metres, yarns);
    Rules rules = plain.brief().rules().withKeepBack(random.nextBoolean() ? 0 : 10);
    Preferences prefer =
        random.nextBoolean() ? Preferences.DEFAULT : new Preferences(Map.of(Part.LEEWAY, 0.0));
    return Blanket.ofUnjudged(plain.brief().withRules(rules).withPrefer(prefer));
  }

  @Test
  void rulesThatNoStockSatisfiesAreProved() {
    Blanket blanket = blanket(2, 2, new double[] {3, 4}, List.of(yarn(0, 50, 30, "1")));
    Packing.Impossible none =
        assertInstanceOf(
            Packing.Impossible.class, Packer.find(blanket, options(PackGoal.BALLS, 2, 50, 1)));
    assertFalse(none.byBend());
    assertFalse(none.why().refutations().isEmpty());
  }

  @Test
  void scoreBeyondWhatPlentyGivesIsToldAsSuch() {
    List<Yarn> yarns = List.of(yarn(0, 50, 30, "1"), yarn(1, 50, 30, "1"));
    Blanket blanket = blanket(2, 2, new double[] {3, 4}, yarns);
    PackOptions usual = options(PackGoal.BALLS, 2, 50, 1);
    PackOptions asked =
        new PackOptions(
            usual.goal(),
            OptionalDouble.of(100),
            2,
            50,
            Optional.empty(),
            1,
            usual.moves(),
            1,
            usual.stop(),
            usual.listener());
    Packing.OutOfReach beyond =
        assertInstanceOf(Packing.OutOfReach.class, Packer.find(blanket, asked));
    assertTrue(beyond.reached() < 100);
    assertTrue(beyond.proved(), "a brief this small is settled: " + beyond);
  }
}
