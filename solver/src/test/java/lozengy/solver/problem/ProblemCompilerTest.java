package lozengy.solver.problem;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Symmetry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Small blankets compiled, against figures reckoned by hand and against the model. */
class ProblemCompilerTest {

  private static final int A = 0;
  private static final int B = 1;
  private static final int C = 2;

  private static BlanketBuilder three(int across, int down) {
    return BlanketBuilder.straight(across, down)
        .motif(
            PieceKind.SQUARE,
            BlanketBuilder.round(1000, Tone.DARK),
            BlanketBuilder.round(2000),
            BlanketBuilder.round(3000))
        .yarn(Tone.DARK, 50_000)
        .yarn(Tone.LIGHT, 60_000)
        .yarn(Tone.DARK, 70_000);
  }

  private static Problem compile(BlanketBuilder builder) {
    return ProblemCompiler.compile(builder.build(), Optional.empty());
  }

  @Test
  void locksTonesAndBansMakeDomains() {
    Problem problem =
        compile(three(3, 1).ban("r1c1", "C").note("r1c2", PieceState.MADE, "A", "B", "C"));
    Domains domains = problem.domains();
    Slots slots = problem.slots();
    int[][] wanted = {{A}, {A, B}, {A, B}, {A}, {B}, {C}, {A, C}, {A, B, C}, {A, B, C}};
    for (int slot = 0; slot < wanted.length; slot++) {
      assertArrayEquals(wanted[slot], domains.yarns(slot), "slot " + slot);
      for (int yarn = 0; yarn < 3; yarn++) {
        boolean in = box(wanted[slot]).contains(yarn);
        assertEquals(in, domains.allows(slot, yarn), "slot " + slot);
      }
    }
    assertFalse(domains.anyEmpty());
    assertEquals(9, slots.count());
    assertEquals(3, slots.orbits());
    assertEquals(3, slots.rounds(1));
    assertEquals(5, slots.border(1));
    assertEquals(1, slots.weight(1));
    assertFalse(slots.tied());
    assertArrayEquals(new int[] {0, 1, 2, 6, 7, 8}, slots.free());
    assertArrayEquals(new int[] {-1, -1, -1, A, B, C, -1, -1, -1}, slots.fixedYarn());
    assertArrayEquals(new int[] {2, 1, 0, 2, 1, 0, 2, 1, 0}, slots.layer());
    // 1 x 2 x 2 x 2 x 3 x 3 ways, and of the last piece alone 2 x 3 x 3
    assertEquals(Math.log(72) / Math.log(2), domains.bits(slots.free()), 1e-12);
    assertEquals(Math.log(18) / Math.log(2), domains.bits(new int[] {6, 7, 8}), 1e-12);
  }

  private static List<Integer> box(int[] yarns) {
    List<Integer> list = new ArrayList<>();
    for (int yarn : yarns) {
      list.add(yarn);
    }
    return list;
  }

  @Test
  void aPieceThatMayTakeNothingHasAnEmptyDomain() {
    assertTrue(compile(three(2, 1).ban("r1c1", "A", "C")).domains().anyEmpty());
  }

  @Test
  void supplyIsInMillimetresOfTheWholeStock() {
    Problem problem = compile(three(2, 1).keepBack(10));
    YarnSupply supply = problem.supply();
    assertArrayEquals(new long[] {50_000, 60_000, 70_000}, supply.stock());
    assertArrayEquals(new long[] {45_000, 54_000, 63_000}, supply.usable());
    assertEquals(1000, supply.need(0, A));
    assertEquals(2000, supply.need(1, B));
    assertEquals(3000, supply.need(5, C));
    assertEquals(0, supply.overdrawLoss(A, 45_000));
    // 48 light repeats make a hard cost; a sixteenth of it, and 0.01 light repeats a millimetre
    assertEquals(3 * 16_384 + 163, supply.overdrawLoss(A, 45_001));
    assertEquals(3 * 16_384 + 2 * 16_384, supply.overdrawLoss(A, 45_200));
    assertEquals(3 * 16_384 + (1L << 48), supply.overdrawLoss(A, 1L << 60));
  }

  /** Squares in a ring of four, its half turn ties r1c1 to r2c2 and r1c2 to r2c1. */
  @Test
  void imagesAreOnePieceThatWeighsTwice() {
    Problem problem = compile(three(2, 2), Look.NONE.withSymmetry(Symmetry.HALF_TURN));
    Slots slots = problem.slots();
    assertTrue(slots.tied());
    assertEquals(2, slots.orbits());
    assertEquals(2, slots.weight(0));
    assertArrayEquals(new int[][] {{0, 3}, {1, 2}}, slots.members());
    assertEquals(2000, problem.supply().need(0, A));
    Clashes clashes = problem.clashes();
    // of the border of the first piece: the round within, and the border of the other, four times
    int border = slots.border(0);
    int from = clashes.start()[border];
    assertEquals(from + 2, clashes.start()[border + 1]);
    assertArrayEquals(
        new int[] {border - 1, slots.border(1)},
        new int[] {clashes.slot()[from], clashes.slot()[from + 1]});
    assertArrayEquals(
        new int[] {2, 4}, new int[] {clashes.times()[from], clashes.times()[from + 1]});
    for (int yarn = 0; yarn < 3; yarn++) {
      for (int other = 0; other < 3; other++) {
        assertEquals(yarn == other, clashes.bars(from + 1, yarn, other));
      }
    }
  }

  /** In a row of two a half turn brings each beside its image: no yarn of borders does. */
  @Test
  void noYarnMayLieBesideItsImage() {
    Problem problem = compile(three(2, 1), Look.NONE.withSymmetry(Symmetry.HALF_TURN));
    assertEquals(1, problem.slots().orbits());
    assertArrayEquals(new int[] {A, C}, problem.domains().yarns(0));
    assertArrayEquals(new int[] {A, B, C}, problem.domains().yarns(1));
    assertArrayEquals(new int[0], problem.domains().yarns(2));
  }

  /** What cannot change is a fact and no clash, whatever rules it breaks. */
  @Test
  void clashesOfTwoFixedRoundsAreLeftOut() {
    Problem problem =
        compile(
            three(3, 1)
                .note("r1c1", PieceState.MADE, "A", "A", "B")
                .note("r1c2", PieceState.MADE, "C", "A", "B"));
    Clashes clashes = problem.clashes();
    assertEquals(0, clashes.start()[5]);
    assertEquals(1, clashes.start()[6], "the border of the second, with that of the third");
    assertEquals(8, clashes.slot()[0]);
    assertEquals(1 + 1 + 2 + 2, clashes.start()[9]);
  }

  private static Problem compile(BlanketBuilder builder, Look look) {
    return ProblemCompiler.compile(
        Blanket.ofUnjudged(builder.build().brief().withLook(look)), Optional.empty());
  }

  @Test
  void whatIsNotAskedCostsNothing() {
    Problem problem = compile(three(2, 1));
    assertNull(problem.costs().unary());
    assertNull(problem.counts());
    assertNull(problem.order());
    assertEquals(Integer.MAX_VALUE, problem.copies());
    assertEquals(2, compile(three(2, 1).copies(2)).copies());
    assertTrue(problem.pile().isEmpty());
    assertEquals(0, problem.pile().pieces());
    int[] unary = new int[18];
    RoundCosts other = problem.costs().withUnary(unary).withPairs(null);
    assertEquals(new RoundCosts(null, problem.costs().inner(), unary, 0), other);
    assertEquals(other, problem.withCosts(other).costs());
    assertEquals(problem.clashes(), problem.withCosts(other).clashes());
    assertNull(problem.withClashes(null).clashes());
    assertEquals(problem.costs(), problem.withClashes(null).costs());
  }

  /** Only rounds that can change cost anything where they do. */
  @Test
  void eachChangedRoundCostsAsMuch() {
    Blanket blanket = three(2, 1).note("r1c2", PieceState.MADE, "A", "B", "C").build();
    Sequences earlier = blanket.locks();
    earlier.set(0, 0, A);
    earlier.set(0, 1, B);
    Problem problem = ProblemCompiler.compile(blanket, Optional.of(earlier));
    int keep = problem.prices().keep();
    assertTrue(keep > 0);
    int[] wanted = {0, keep, keep, keep, 0, keep, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
    assertArrayEquals(wanted, problem.costs().unary());
  }

  @Test
  void countsAreThoseOfTheModel() {
    int held = 0;
    for (long seed = 1; seed <= 200; seed++) {
      Brief drawn = RandomBriefs.of(seed, 3, 5);
      Brief brief = RandomLooks.counted(seed, drawn);
      if (seed % 2 == 0) {
        brief = brief.withLook(brief.look().withSymmetry(Symmetry.values()[(int) (seed / 2 % 4)]));
      }
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Problem problem = ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
      List<ReadyCount> ready = ReadyCount.of(problem.blanket());
      PieceCounts counts = problem.counts();
      assertEquals(ready.size(), counts.size());
      SplittableRandom random = new SplittableRandom(seed);
      int[] yarn = new int[problem.slots().count()];
      for (int turn = 0; turn < 3; turn++) {
        for (int slot = 0; slot < yarn.length; slot++) {
          yarn[slot] = random.nextInt(problem.yarns());
        }
        Sequences sequences = problem.sequences(yarn);
        for (int i = 0; i < ready.size(); i++) {
          int shown = 0;
          for (int piece : ready.get(i).pieces()) {
            shown += ready.get(i).shown(sequences, piece) ? 1 : 0;
          }
          assertEquals(shown, shown(problem, yarn, i, ready.get(i).yarn()), "seed " + seed);
          int least = ready.get(i).atLeast();
          int most = ready.get(i).atMost();
          int off = shown < least ? least - shown : shown > most ? shown - most : 0;
          assertEquals(off, counts.off(i, shown), "seed " + seed);
          held++;
        }
      }
    }
    assertTrue(held > 100, held + " counts");
  }

  /** Each pair of places lies once with either of its pieces, or is one of the constant ones. */
  @Test
  void pairsOfAnOrderAreThoseOfItsMeasure() {
    int[] held = new int[2];
    for (long seed = 1; seed <= 60; seed++) {
      Look look = Look.NONE.withOrder(Order.values()[(int) (seed % 2)]);
      Brief drawn = RandomBriefs.of(seed, 6, 5);
      int tied = seed % 4 < 2 ? 0 : 1;
      Brief brief =
          drawn
              .withPrefer(new Preferences(Map.of(Part.ORDER, 2.0)))
              .withLook(tied == 0 ? look : look.withSymmetry(Symmetry.HALF_TURN));
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Problem problem = ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
      OrderCosts order = problem.order();
      if (order == null) {
        continue;
      }
      SplittableRandom random = new SplittableRandom(seed);
      int[] yarn = random.ints(problem.slots().count(), 0, problem.yarns()).toArray();
      int[] equal = new int[order.worth().length];
      for (int piece = 0; piece < problem.slots().orbits(); piece++) {
        int border = yarn[problem.slots().border(piece)];
        for (int i = order.start()[piece]; i < order.start()[piece + 1]; i++) {
          equal[order.offset()[i]] += yarn[order.other()[i]] == border ? 1 : 0;
          boolean first = i == order.start()[piece];
          assertTrue(first || order.offset()[i - 1] <= order.offset()[i], "ascending");
        }
      }
      Sequences sequences = problem.sequences(yarn);
      for (int offset = 0; offset < equal.length; offset++) {
        int wanted = order.measure().equal(offset, sequences);
        assertEquals(2 * (wanted - order.constant()[offset]), equal[offset], "seed " + seed);
        held[tied]++;
      }
    }
    assertTrue(held[0] > 50 && held[1] > 50, held[0] + " and " + held[1]);
  }

  private static int shown(Problem problem, int[] yarn, int count, int sought) {
    PieceCounts counts = problem.counts();
    int shown = 0;
    for (int piece = 0; piece < problem.slots().orbits(); piece++) {
      boolean shows = false;
      for (int round = 0; round < problem.slots().rounds(piece); round++) {
        int slot = problem.slots().orbitStart()[piece] + round;
        boolean asks = box(counts.ofYarn()[yarn[slot]]).contains(count);
        assertEquals(yarn[slot] == sought, asks);
        shows |= asks && counts.covers()[count][slot];
      }
      shown += shows ? counts.weight()[count][piece] : 0;
    }
    return shown;
  }
}
