package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.JoinedInBorders;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import lozengy.solver.explain.conflict.Root;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** The ladder of assertions: quiet on sound problems, loud on corrupted ones, level by level. */
class LadderTest {

  /** Random briefs, most of them with every part, rule and kind of piece. */
  @Test
  void fullAssertionsFindNoDriftOnRandomBriefs() {
    int walked = 0;
    for (long seed = 1; seed <= 150; seed++) {
      Brief brief = RandomBriefs.of(seed, 3, 9);
      // one in five is joined in the borders, which take by their seams then
      brief = seed % 5 == 0 ? JoinedInBorders.of(brief, seed) : brief;
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
      if (!everySlotHasYarns(problem) || problem.slots().free().length == 0) {
        continue;
      }
      walk(problem, seed, Assertions.FULL, 250);
      // Once more with the part keep, looking back to the deal of another seed.
      Sequences earlier = problem.sequences(new CountPlan(problem, new Draws(seed + 1)).deal(300));
      walk(ProblemCompiler.compile(blanket, Optional.of(earlier)), seed, Assertions.FULL, 100);
      walked++;
    }
    assertTrue(walked > 80, "only " + walked + " briefs could be walked");
  }

  /** Random briefs of which some pieces, picked from a deal, lie finished on a pile. */
  @Test
  void fullAssertionsFindNoDriftWithAPile() {
    int walked = 0;
    for (long seed = 1; seed <= 120; seed++) {
      Brief brief = RandomBriefs.of(seed, 3, 9);
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      brief = seed % 3 == 0 ? JoinedInBorders.of(brief, seed) : brief;
      Blanket bare = Blanket.of(brief);
      Problem whole = ProblemCompiler.compile(bare, Optional.empty());
      if (!everySlotHasYarns(whole) || whole.slots().free().length == 0) {
        continue;
      }
      Sequences dealt = whole.sequences(new CountPlan(whole, new Draws(seed)).deal(100));
      List<PileEntry> pile = pile(bare, dealt, seed);
      if (pile.isEmpty()) {
        continue;
      }
      Brief piled = brief.withPile(pile);
      if (!BriefJudge.mistakes(piled).isEmpty()) {
        continue; // what is begun leaves too few places for it
      }
      if (seed % 4 == 0 && BriefJudge.mistakes(RandomLooks.counted(seed, piled)).isEmpty()) {
        piled = RandomLooks.counted(seed, piled);
      }
      Problem problem =
          ProblemCompiler.compile(
              Blanket.of(piled), seed % 2 == 0 ? Optional.of(dealt) : Optional.empty());
      walk(problem, seed, Assertions.FULL, 250);
      walked++;
    }
    assertTrue(walked > 60, "only " + walked + " briefs could be walked");
  }

  /** Some of the pieces that are planned, as they were dealt. */
  private static List<PileEntry> pile(Blanket bare, Sequences dealt, long seed) {
    List<PileEntry> pile = new ArrayList<>();
    for (int piece = 0; piece < bare.pieceCount(); piece++) {
      boolean onPile = seed % 3 == 0 || (piece * 7 + seed) % 3 == 0;
      if (onPile && bare.roundsWorked(piece) == 0) {
        List<String> codes =
            Arrays.stream(dealt.of(piece)).mapToObj(yarn -> bare.yarn(yarn).code()).toList();
        pile.add(new PileEntry(bare.kind(piece), codes, 1, Set.of()));
      }
    }
    return pile;
  }

  /** Borders scattered and ordered on layouts large enough, plain, symmetric and with a pile. */
  @Test
  void fullAssertionsFindNoDriftWithAnOrder() {
    int[] walked = new int[3];
    for (long seed = 1; seed <= 120; seed++) {
      int way = (int) (seed % 3);
      Brief drawn = RandomBriefs.of(seed, 6, 9);
      Map<Part, Double> weights = new EnumMap<>(drawn.prefer().weights());
      weights.put(Part.ORDER, 1.0 + seed % 7);
      Look look = Look.NONE.withOrder(Order.values()[(int) (seed / 3 % 2)]);
      if (way == 1) {
        look = look.withSymmetry(Symmetry.values()[(int) (1 + seed / 6 % 4)]);
      }
      Brief brief = drawn.withLook(look).withPrefer(new Preferences(weights));
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
      if (problem.order() == null
          || problem.slots().free().length == 0
          || !everySlotHasYarns(problem)
          || way == 1 && !Root.arguments(blanket).isEmpty()) {
        continue;
      }
      if (way == 2) {
        Sequences dealt = problem.sequences(new CountPlan(problem, new Draws(seed)).deal(100));
        Brief piled = brief.withPile(pile(blanket, dealt, seed));
        problem = ProblemCompiler.compile(Blanket.of(piled), Optional.empty());
      }
      walk(problem, seed, Assertions.FULL, 150);
      walked[way]++;
    }
    assertTrue(
        walked[0] > 5 && walked[1] > 5 && walked[2] > 5, "walked " + Arrays.toString(walked));
  }

  /** An order that is compiled to the wrong worth is consistent in itself: the model tells. */
  @Test
  void onlyFullReportsAnOrderThatIsCompiledWrong() {
    Brief brief = RandomBriefs.of(1, 3, 9);
    for (long seed = 1; brief.look().equals(Look.NONE); seed++) {
      Brief drawn = RandomBriefs.of(seed, 6, 9);
      Brief asked =
          drawn
              .withLook(Look.NONE.withOrder(Order.ORDERED))
              .withPrefer(new Preferences(Map.of(Part.ORDER, 3.0)));
      boolean large = drawn.layout().pieces() > 30 && BriefJudge.mistakes(asked).isEmpty();
      if (large && everySlotHasYarns(compiled(asked)) && compiled(asked).order() != null) {
        Walker walker = walk(compiled(asked), 1, Assertions.OFF, 20_000);
        brief = walker.bestCost() < Long.MAX_VALUE ? asked : brief;
      }
    }
    Problem problem = compiled(brief);
    for (long[] worth : problem.order().worth()) {
      for (int equal = 0; equal < worth.length; equal++) {
        worth[equal] = worth[equal] / 2 + 40 * equal;
      }
    }
    walk(problem, 1, Assertions.STEP, 3000);
    DriftException full =
        assertThrows(DriftException.class, () -> walk(problem, 1, Assertions.FULL, 20_000));
    assertTrue(full.getMessage().contains("by the model"), full.getMessage());
  }

  private static Problem compiled(Brief brief) {
    return ProblemCompiler.compile(Blanket.ofUnjudged(brief), Optional.empty());
  }

  /** The same of random briefs that ask for a look. */
  @Test
  void fullAssertionsFindNoDriftOnRandomLooks() {
    int walked = 0;
    for (long seed = 1; seed <= 500; seed++) {
      Brief brief = RandomLooks.of(seed, RandomBriefs.of(seed, 3, 9));
      if (brief.look().equals(Look.NONE) || !BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      if (!Root.arguments(blanket).isEmpty()) {
        continue;
      }
      Optional<Sequences> earlier = seed % 3 == 0 ? Optional.of(blanket.locks()) : Optional.empty();
      Problem problem = ProblemCompiler.compile(blanket, earlier);
      if (everySlotHasYarns(problem) && problem.slots().free().length > 0) {
        walk(problem, seed, Assertions.FULL, 250);
        walked++;
      }
    }
    assertTrue(walked > 80, "only " + walked + " briefs could be walked");
  }

  /** The same of symmetric briefs in which images of each other are worked. */
  @Test
  void fullAssertionsFindNoDriftWhereImagesAreWorked() {
    int walked = 0;
    for (long seed = 1; seed <= 250; seed++) {
      Brief brief = RandomLooks.symmetricWorked(seed, RandomBriefs.of(seed, 3, 9));
      if (BriefJudge.mistakes(brief).isEmpty()) {
        Blanket blanket = Blanket.of(brief);
        if (Root.arguments(blanket).isEmpty()) {
          Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
          if (everySlotHasYarns(problem) && problem.slots().free().length > 0) {
            walk(problem, seed, Assertions.FULL, 200);
            walked++;
          }
        }
      }
    }
    assertTrue(walked > 40, "only " + walked + " briefs could be walked");
  }

  @Test
  void walksAreTheSameAtEveryLevel() {
    Problem problem = demo();
    int[] off = walk(problem, 5, Assertions.OFF, 2000).state().yarn;
    int[] full = walk(problem, 5, Assertions.FULL, 2000).state().yarn;
    assertArrayEquals(off, full);
  }

  /** A seam's cost that depends on the order of its pieces: deltas no longer add up. */
  @Test
  void stepAndFullReportDeltasThatDoNotAddUp() {
    Problem problem = demo();
    PairCosts pairs = problem.costs().pairs();
    int[] lopsided = pairs.seamCost().clone();
    for (int a = 0; a < problem.yarns(); a++) {
      for (int b = 0; b < a; b++) {
        lopsided[a * problem.yarns() + b] += 5000;
      }
    }
    Problem corrupted =
        problem.withCosts(
            problem
                .costs()
                .withPairs(
                    new PairCosts(
                        pairs.lightStart(),
                        pairs.lightSlot(),
                        pairs.lightCost(),
                        pairs.seamStart(),
                        pairs.seamSlot(),
                        lopsided)));
    walk(corrupted, 1, Assertions.OFF, 2000);
    DriftException step =
        assertThrows(DriftException.class, () -> walk(corrupted, 1, Assertions.STEP, 2000));
    assertTrue(
        step.getMessage()
            .matches("Drift after .* of [a-z-]+\\d*.*seed 1, step \\d+: cost kept .*"));
    assertThrows(DriftException.class, () -> walk(corrupted, 1, Assertions.FULL, 2000));
  }

  /** A rule that compiles to a wrong price is consistent in itself: only the model can tell. */
  @Test
  void onlyFullReportsARuleThatIsCompiledWrong() {
    Problem problem = demo();
    Clashes clashes = problem.clashes();
    Problem corrupted =
        problem.withClashes(
            new Clashes(
                new int[clashes.start().length],
                new int[0],
                new int[0],
                new int[0],
                clashes.bars(),
                clashes.against()));
    walk(corrupted, 1, Assertions.OFF, 3000);
    walk(corrupted, 1, Assertions.STEP, 3000);
    DriftException full =
        assertThrows(DriftException.class, () -> walk(corrupted, 1, Assertions.FULL, 3000));
    assertTrue(full.getMessage().contains("the model"), full.getMessage());
  }

  @Test
  void stepReportsAKeptTableThatWasSpoilt() {
    Problem problem = demo();
    Walker walker = new Walker(problem, 3, Assertions.STEP);
    walker.deal(300, false);
    walker.state().spoilPairCost(problem.slots().free()[0], 7);
    walker.beginLeg(problem.prices().step(), problem.prices().step() / 10.0, 5000);
    assertThrows(DriftException.class, () -> walker.walk(5000));
  }

  private static Problem demo() {
    for (long seed = 1; ; seed++) {
      Blanket blanket = Blanket.ofUnjudged(RandomBriefs.of(seed, 4, 9));
      Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
      boolean rich =
          everySlotHasYarns(problem)
              && blanket.brief().rules().withinPiece() == WithinPiece.ADJACENT_DIFFER
              && blanket.layerCount() > 1
              && blanket.layout().seams().size() > 10;
      if (rich) {
        Walker walker = walk(problem, 1, Assertions.OFF, 20_000);
        if (walker.bestCost() < Long.MAX_VALUE) {
          return problem;
        }
      }
    }
  }

  private static boolean everySlotHasYarns(Problem problem) {
    for (int slot : problem.slots().free()) {
      if (problem.domains().yarns(slot).length == 0) {
        return false;
      }
    }
    return true;
  }

  private static Walker walk(Problem problem, long seed, Assertions level, long moves) {
    Walker walker = new Walker(problem, seed, level);
    walker.deal(300, false);
    walker.beginLeg(2.0 * problem.prices().step(), problem.prices().step() / 10.0, moves);
    walker.walk(moves);
    walker.look();
    Cost fresh = Cost.of(problem, walker.state().yarn, walker.state().stock.pressure());
    if (level != Assertions.OFF) {
      assertEquals(fresh.total(), walker.state().cost(), "seed " + seed);
      assertEquals(fresh.hard(), walker.state().hard(), "seed " + seed);
    }
    assertNotNull(walker.best());
    return walker;
  }
}
