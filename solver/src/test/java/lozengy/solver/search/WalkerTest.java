package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PileEntry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** How a walk cools, what it keeps, what it leaves alone, and how it presses for stock. */
class WalkerTest {

  private static BlanketBuilder board(long stock) {
    return BlanketBuilder.straight(4, 4)
        .motif(
            PieceKind.SQUARE,
            BlanketBuilder.round(1000, Tone.LIGHT),
            BlanketBuilder.round(1000, Tone.LIGHT),
            BlanketBuilder.round(1000, Tone.DARK))
        .yarns(4, Tone.LIGHT, stock)
        .yarns(4, Tone.DARK, stock);
  }

  private static final Problem AMPLE = compiled(board(100_000).build().brief());

  private static final Problem SHORT = compiled(board(3000).build().brief());

  private static Problem compiled(Brief brief) {
    return ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
  }

  private static Walker walker(Problem problem) {
    return new Walker(problem, 1, Assertions.OFF);
  }

  @Test
  void coolsFromHotToColdByTheMovesOfTheLeg() {
    Walker walker = walker(AMPLE);
    walker.deal(100, false);
    walker.beginLeg(800, 50, 1000);
    assertEquals(800, walker.temperatureAfter(0), 1e-9);
    assertEquals(200, walker.temperatureAfter(500), 1e-9);
    assertEquals(50, walker.temperatureAfter(1000), 1e-9);
    assertEquals(50, walker.temperatureAfter(9000), 1e-9);
    walker.walk(250);
    assertEquals(400, walker.temperatureAfter(0), 1e-9);
    walker.walk(500);
    assertEquals(100, walker.temperatureAfter(0), 1e-9);
    walker.stretchLeg(1500);
    assertEquals(200, walker.temperatureAfter(0), 1e-9);
    walker.beginLeg(800, 50, 10);
    assertEquals(800, walker.temperatureAfter(0), 1e-9);
  }

  @Test
  void keepsTheBestItMetAndNeverAnInvalidOne() {
    SplittableRandom random = new SplittableRandom(1);
    Walker walker = walker(AMPLE);
    assertEquals(Long.MAX_VALUE, walker.bestCost());
    long least = Long.MAX_VALUE;
    int valid = 0;
    for (int turn = 0; turn < 60; turn++) {
      int[] yarn = RandomDraws.of(AMPLE, random, turn % 2 == 0);
      Cost cost = Cost.of(AMPLE, yarn, walker.state().stock.pressure());
      walker.restart(yarn);
      valid += cost.hard() == 0 ? 1 : 0;
      least = cost.hard() == 0 ? Math.min(least, cost.total()) : least;
      assertEquals(least, walker.bestCost());
    }
    assertTrue(valid > 5 && valid < 60, valid + " valid");
    assertEquals(least, Cost.of(AMPLE, walker.best(), 1).total());
    walker.beginLeg(AMPLE.prices().step(), AMPLE.prices().step() / 10.0, 3000);
    walker.walk(3000);
    walker.look();
    assertTrue(walker.bestCost() < least);
    assertEquals(walker.bestCost(), Cost.of(AMPLE, walker.best(), 1).total());
    assertEquals(0, Cost.of(AMPLE, walker.best(), 1).hard());
  }

  /** By so many looks alike; what presses weighs at once in the cost. */
  @Test
  void pressesHarderWhileAYarnIsOverdrawnAndMoreGentlyWhileNoneIs() {
    assertPressure(SHORT, 1.5, 30);
    assertPressure(AMPLE, 1 / 1.3, 0.1);
  }

  private static void assertPressure(Problem problem, double factor, double end) {
    State state;
    Walker walker = walker(problem);
    state = walker.state();
    state.reset(RandomDraws.of(problem, new SplittableRandom(1), false));
    double pressure = 1;
    for (int look = 1; look <= 120; look++) {
      walker.look();
      if (look % 4 == 0) {
        pressure = factor > 1 ? Math.min(end, pressure * factor) : Math.max(end, pressure / 1.3);
      }
      assertEquals(pressure, state.stock.pressure(), 1e-9, "look " + look);
      // each yarn's penalty is cut to whole units
      assertEquals(Cost.of(problem, state.yarn, state.stock.pressure()).total(), state.cost());
    }
    assertEquals(end, state.stock.pressure(), 1e-9);
  }

  @Test
  void bordersAloneMoveWhereThatIsAsked() {
    Walker walker = walker(AMPLE);
    walker.deal(100, false);
    int[] before = walker.state().yarn.clone();
    walker.bordersOnly(true);
    double step = AMPLE.prices().step();
    walker.beginLeg(4 * step, step, 1000);
    walker.walk(1000);
    assertEquals(Set.of(0), changedLayers(before, walker.state().yarn));
    walker.bordersOnly(false);
    walker.walk(1000);
    assertEquals(Set.of(0, 1, 2), changedLayers(before, walker.state().yarn));
  }

  private static Set<Integer> changedLayers(int[] before, int[] after) {
    return IntStream.range(0, before.length)
        .filter(slot -> before[slot] != after[slot])
        .map(slot -> AMPLE.slots().layer()[slot])
        .boxed()
        .collect(Collectors.toSet());
  }

  @Test
  void aDealWithinAPlanKeepsToItUntilAllAreFreed() {
    int[] planned = new int[AMPLE.slots().count()];
    Arrays.fill(planned, -1);
    for (int piece = 0; piece < 16; piece++) {
      planned[AMPLE.slots().border(piece)] = 4 + (piece % 4 + 2 * (piece / 4)) % 4;
    }
    Walker walker = walker(AMPLE);
    walker.deal(100, planned);
    double step = AMPLE.prices().step();
    walker.beginLeg(4 * step, step, 2000);
    walker.walk(1000);
    int[] yarn = walker.state().yarn.clone();
    for (int slot = 0; slot < planned.length; slot++) {
      assertTrue(planned[slot] < 0 || planned[slot] == yarn[slot]);
    }
    walker.changeAll();
    walker.walk(1000);
    assertEquals(Set.of(0, 1, 2), changedLayers(yarn, walker.state().yarn));
  }

  @Test
  void partsAloneMayChangeWhereCountsAreAsTheyShould() {
    Walker walker = walker(AMPLE);
    walker.deal(100, false);
    assertFalse(walker.canPart());
    walker.barOverdrawing(true);
    assertTrue(walker.canPart());
    assertEquals(0.08, walker.anywhere());
    Walker lacking = walker(SHORT);
    lacking.deal(100, false);
    lacking.barOverdrawing(true);
    assertTrue(lacking.state().stock.overdrawn() > 0);
    assertFalse(lacking.canPart());
    lacking.bordersOnly(true);
    assertTrue(lacking.canPart());
  }

  /** Of 64 moves the pile gets its part by rounds, 8 at least and 48 at most; or all. */
  @Test
  void aPileGetsItsShareOfMoves() {
    assertEquals(0.08 + 8 / 64.0, walker(piled(1)).anywhere(), 1e-12);
    // 12 of 48 rounds are finished, and as many as before are free to take them
    assertEquals(0.08 + 16 / 64.0, walker(piled(4)).anywhere(), 1e-12);
    assertEquals(0.08 + 48 / 64.0, walker(piled(15)).anywhere(), 1e-12);
    assertEquals(0.08 + 1, walker(piled(16)).anywhere(), 1e-12);
  }

  private static Problem piled(int pieces) {
    Brief brief = board(100_000).build().brief();
    PileEntry entry = new PileEntry(PieceKind.SQUARE, List.of("A", "B", "E"), pieces, Set.of());
    return compiled(brief.withPile(List.of(entry)));
  }

  @Test
  void reassigningKeepsWhatIsValidAndCostsNoMore() {
    Walker walker = walker(AMPLE);
    walker.deal(100, false);
    walker.mend();
    assertEquals(0, walker.state().hard());
    int[] start = walker.state().yarn.clone();
    long cost = Cost.of(AMPLE, start, 1).total();
    long spent = walker.reassign(start, 5000, () -> false);
    assertTrue(spent > 0 && walker.bestCost() < cost, spent + " spent");
    long best = walker.bestCost();
    assertEquals(0, walker.reassign(walker.best().clone(), 5000, () -> true));
    assertEquals(best, walker.bestCost());
    assertArrayEquals(walker.best(), walker.state().yarn);
  }

  /** Mending leaves nothing broken of a board where yarns are many. */
  @Test
  void mendsWhatIsBroken() {
    Walker walker = walker(AMPLE);
    State state = walker.state();
    state.reset(RandomDraws.of(AMPLE, new SplittableRandom(3), false));
    assertTrue(state.hard() > 0);
    walker.mend();
    assertEquals(0, state.hard());
    assertEquals(Cost.of(AMPLE, state.yarn, 1).total(), state.cost());
  }

  @Test
  void dealsThatGoOnStayWithinStock() {
    Problem problem = compiled(board(9000).build().brief());
    Walker walker = walker(problem);
    walker.barOverdrawing(true);
    int[] first = null;
    for (int deal = 0; deal < 6; deal++) {
      walker.dealOn(200);
      assertEquals(0, walker.state().stock.overdrawn());
      assertFalse(Arrays.equals(first, walker.state().yarn));
      first = walker.state().yarn.clone();
    }
  }
}
