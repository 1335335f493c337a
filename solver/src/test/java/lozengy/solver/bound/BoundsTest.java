package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongFunction;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Round;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.JoinedInBorders;
import lozengy.solver.RandomBriefs;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** The bound against the best of all arrangements of tiny blankets, tried one by one. */
class BoundsTest {

  private static final double MOST_WAYS = 20_000;

  @Test
  void noArrangementOfATinyBlanketExceedsTheBound() {
    exceedNoBound(seed -> RandomBriefs.of(seed, 2, 5));
  }

  @Test
  void noArrangementJoinedInTheBordersExceedsTheBound() {
    exceedNoBound(seed -> JoinedInBorders.of(RandomBriefs.of(seed, 2, 5), seed));
  }

  private static void exceedNoBound(LongFunction<Brief> briefs) {
    int held = 0;
    int tight = 0;
    for (long seed = 1; seed <= 600; seed++) {
      Brief brief = briefs.apply(seed);
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      if (Exhaustive.ways(blanket) > MOST_WAYS) {
        continue;
      }
      Optional<Sequences> earlier = seed % 3 == 0 ? Optional.of(blanket.locks()) : Optional.empty();
      OptionalDouble best = Exhaustive.best(blanket);
      if (best.isPresent()) {
        double bound = Bounds.of(blanket, new BoundLimits(2), () -> false).total();
        if (earlier.isPresent()) {
          double most = Bounds.ofObjective(blanket, earlier.get(), bound);
          double objective = Exhaustive.bestObjective(blanket, earlier).orElseThrow();
          assertTrue(most >= objective, "seed " + seed + ": " + most + " below " + objective);
        }
        assertTrue(
            bound >= best.getAsDouble(),
            "seed " + seed + ": bound " + bound + " below " + best.getAsDouble());
        held++;
        tight += bound - best.getAsDouble() < 1 ? 1 : 0;
      }
    }
    assertTrue(held > 100, "only " + held + " blankets could be tried out");
    assertTrue(tight > held / 3, "only " + tight + " of " + held + " bounds within a point");
  }

  @Test
  void roundingLeavesNoBoundBelowWhatIsReachedWithoutSpread() {
    Blanket blanket = Blanket.of(RandomBriefs.of(103_573, 2, 5));
    double best = Exhaustive.best(blanket).orElseThrow();
    double bound = Bounds.of(blanket, new BoundLimits(2), () -> false).total();
    assertTrue(bound >= best, "bound " + bound + " below " + best);
    assertEquals(best, bound, 2e-6);
  }

  @Test
  void noArrangementThatTheSearchFindsExceedsTheBound() {
    int held = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Brief brief = RandomBriefs.of(seed, 5, 10);
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      SolveOptions options =
          SolveOptions.defaults().withSeed(seed).withMoves(100_000).withThreads(1);
      if (Solver.solve(blanket, Optional.empty(), options) instanceof SolveResult.Found found) {
        double bound = Bounds.of(blanket, new BoundLimits(2), () -> false).total();
        double total = found.arrangement().score().total();
        assertTrue(bound >= total, "seed " + seed + ": bound " + bound + " below " + total);
        held++;
      }
    }
    assertTrue(held > 20, "only " + held + " briefs were solved");
  }

  @Test
  void repeatsWithoutEndLeaveTheOtherPartsTheirPoints() {
    Round any = BlanketBuilder.round(1000);
    Blanket blanket =
        BlanketBuilder.straight(8, 8)
            .motif(PieceKind.SQUARE, any, any, any, any)
            .yarns(8, Tone.MID, 1_000_000)
            .note("all", PieceState.PLANNED, "A", "B", "C", null)
            .build();
    SolveOptions options = SolveOptions.defaults().withMoves(20_000).withThreads(1);

    SolveResult.Found found =
        assertInstanceOf(SolveResult.Found.class, Solver.solve(blanket, Optional.empty(), options));

    double total = found.arrangement().score().total();
    assertTrue(total > 10, "total " + total);
    for (int stages = 0; stages <= 3; stages++) {
      Bound bound = Bounds.of(blanket, new BoundLimits(stages), () -> false);
      assertTrue(bound.total() >= total, bound + " below " + total);
    }
    assertEquals("none", found.arrangement().solved().orElseThrow().proof());
  }

  @Test
  void moreEffortNeverProvesLessAndTheSameEffortProvesTheSame() {
    for (long seed = 1; seed <= 40; seed++) {
      Brief brief = RandomBriefs.of(seed, 4, 8);
      if (BriefJudge.mistakes(brief).isEmpty()) {
        Blanket blanket = Blanket.of(brief);
        double before = 100;
        for (int stages = 0; stages <= 2; stages++) {
          BoundLimits limits = new BoundLimits(stages);
          double bound = Bounds.of(blanket, limits, () -> false).total();
          assertTrue(bound <= before, "seed " + seed + ", stages " + stages);
          before = bound;
        }
        BoundLimits limits = new BoundLimits(2);
        assertEquals(before, Bounds.of(blanket, limits, () -> false).total());
      }
    }
  }

  /** Eight yarns need not repeat close by, and stages after the second prove nothing. */
  @Test
  void noEffortIsSpentOnStagesThatProveNothing() {
    Blanket blanket = evenStock(5, 6, 8, 1.02);
    AtomicInteger few = new AtomicInteger();
    AtomicInteger many = new AtomicInteger();

    Bound three = Bounds.of(blanket, new BoundLimits(3), () -> few.incrementAndGet() < 0);
    Bound six = Bounds.of(blanket, new BoundLimits(6), () -> many.incrementAndGet() < 0);

    assertEquals(three, six);
    assertEquals(few.get(), many.get());
  }

  @Test
  void stoppedAtOnceTheBoundIsAll() {
    Blanket blanket = Blanket.ofUnjudged(RandomBriefs.of(1, 4, 8));
    assertEquals(100, Bounds.of(blanket, BoundLimits.THOROUGH, () -> true).total());
  }

  /** Every yarn has 2 % more than an even share of an even need; at best all lack alike. */
  @Test
  void leewayIsCappedByStock() {
    Blanket blanket = evenStock(5, 6, 6, 1.02);
    double lacks = 1 - 11 * (1 - 1 / 1.02);
    double leeway =
        PartBounds.of(blanket, Set.of(Part.LEEWAY), new BoundLimits(2), () -> false)
            .get(Part.LEEWAY)
            .total();
    assertTrue(leeway >= 100 * (1 - lacks * lacks), "bound " + leeway);
    assertEquals(100 * (1 - lacks * lacks), leeway, 0.2);
  }

  /** Four yarns on 50 pieces of one round: what a long search reaches is within two points. */
  @Test
  void aFewYarnsAreBoundedClosely() {
    Blanket blanket = evenStock(4, 5, 4, 1.2);
    SolveOptions options = SolveOptions.defaults().withMoves(1_000_000).withThreads(1);
    double found =
        assertInstanceOf(SolveResult.Found.class, Solver.solve(blanket, Optional.empty(), options))
            .arrangement()
            .score()
            .total();
    double bound = Bounds.of(blanket, BoundLimits.THOROUGH, () -> false).total();
    assertTrue(bound >= found, bound + " below " + found);
    assertTrue(bound - found < 2, bound + " against " + found);
  }

  private static Blanket evenStock(int across, int down, int yarnCount, double stock) {
    LayoutSize size = new LayoutSize(Setting.ON_POINT, across, down, true, true);
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    Round round = new Round(EnumSet.allOf(Tone.class), new YarnAmount.Length(5000));
    for (PieceKind kind : PieceKind.values()) {
      boolean square = kind == PieceKind.SQUARE;
      motifs.put(
          kind, new Motif(square ? OptionalDouble.of(10) : OptionalDouble.empty(), List.of(round)));
    }
    List<Yarn> yarns = new ArrayList<>();
    for (int i = 0; i < yarnCount; i++) {
      Srgb colour = new Srgb(i % 2 * 200, i / 2 % 2 * 200, i / 4 * 200);
      long have = Math.round(size.pieces() * 5000 * stock / yarnCount);
      yarns.add(
          Yarn.of("Y" + i, colour)
              .withName("Yarn " + i)
              .withLeft(Optional.of(new YarnAmount.Length(have))));
    }
    return Blanket.of(
        Brief.of("Even stock", size, motifs, yarns)
            .withPrefer(new Preferences(Map.of(Part.VARIETY, 0.0))));
  }
}
