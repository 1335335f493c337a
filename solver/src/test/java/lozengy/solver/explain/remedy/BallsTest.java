package lozengy.solver.explain.remedy;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Yarn;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.ExplainOptions;
import lozengy.solver.explain.remedy.Balls.Bought;
import org.junit.jupiter.api.Test;

/** The turns in which the fewest balls are found, of tiny random blankets. */
class BallsTest {

  private static final Limits SCANT = Limits.of(1, 1);

  /** A tiny blanket with part of its yarn and balls of a metre or two. */
  private static Blanket tiny(long seed) {
    return Blanket.of(PurchaseTest.inBalls(TinyBlankets.of(seed).brief(), seed));
  }

  private static Limits ample(Blanket blanket) {
    return ExplainOptions.of(1, () -> false).each(blanket);
  }

  private static String found(Blanket blanket, long seed, Limits limits) {
    Optional<Bought> bought = new Balls(blanket, new ConsistencyOracle(seed, limits)).find();
    if (bought.isEmpty()) {
      return seed + ": none";
    }
    int[] balls = bought.get().balls();
    Blanket with = StockRelaxing.with(blanket, balls);
    assertEquals(List.of(), Check.faults(with, bought.get().witness()), "seed " + seed);
    assertEquals(Arrays.stream(balls).sum(), bought.get().count());
    return seed + ": " + Arrays.toString(balls) + (bought.get().fewest() ? " fewest" : "");
  }

  /**
   * What is found is kept here. That no fewer do where that is said, and that it does, is held
   * against all other purchases elsewhere.
   */
  @Test
  void whatIsRefutedIsLearntUntilWhatIsProposedDoes() {
    List<String> found = new ArrayList<>();
    for (long seed : new long[] {17, 24, 26, 32, 54, 77, 144, 163, 186}) {
      Blanket blanket = tiny(seed);
      found.add(found(blanket, seed, ample(blanket)));
    }
    assertEquals(
        List.of(
            "17: [1, 1] fewest",
            "24: [0, 3] fewest",
            "26: [1, 1] fewest",
            "32: [2, 1, 2] fewest",
            "54: [0, 1] fewest",
            "77: [3, 2] fewest",
            "144: [0, 1, 1] fewest",
            "163: [1, 1, 0] fewest",
            "186: [2, 1, 1] fewest"),
        found);
  }

  @Test
  void wherePurchasesOfANumberDoNotDoMoreIsBoughtAndTheNeedlessLeftOut() {
    List<String> found = new ArrayList<>();
    for (long seed : new long[] {7, 27, 75, 93, 96, 108, 138, 183}) {
      Blanket blanket = tiny(seed);
      found.add(found(blanket, seed, ample(blanket)));
    }
    assertEquals(
        List.of(
            "7: [1, 2]",
            "27: [0, 9]",
            "75: [0, 1, 1]",
            "93: [1, 2, 0, 0]",
            "96: [0, 2, 1, 1]",
            "108: none",
            "138: [4, 2]",
            "183: [2, 1, 1, 0]"),
        found);
  }

  @Test
  void ofAYarnThatIsGoneNothingIsBought() {
    List<String> found = new ArrayList<>();
    for (long seed : new long[] {17, 75, 93, 142, 163, 183}) {
      Blanket blanket = tiny(seed);
      List<Yarn> yarns = new ArrayList<>(blanket.brief().yarns());
      yarns.set(1, yarns.get(1).withGone(true));
      Blanket gone = Blanket.ofUnjudged(blanket.brief().withYarns(yarns));
      found.add(found(gone, seed, ample(gone)));
    }
    assertEquals(
        List.of(
            "17: none",
            "75: none",
            "93: [1, 0, 2, 0]",
            "142: none",
            "163: [1, 0, 0] fewest",
            "183: [2, 0, 1, 1]"),
        found);
  }

  /** 24 rounds of 125 m of each of two yarns: turns do not go ball by ball. */
  @Test
  void manyBallsAreFoundInFewTurns() {
    assertEquals("1: [29, 26] fewest", found(chessboard(), 1, ample(chessboard())));
  }

  static Blanket chessboard() {
    return BlanketBuilder.straight(8, 6)
        .motif(PieceKind.SQUARE, round(125_000, Tone.DARK))
        .yarn(Tone.DARK, 130_000)
        .yarn(Tone.DARK, 140_000)
        .build();
  }

  /** Of one number it is not known that it does not do: only what has no more is the fewest. */
  @Test
  void whatIsNotProvedIsNotSaidToBeTheFewest() {
    assertEquals("163: [1, 1, 0]", found(tiny(163), 163, SCANT));
    assertEquals("17: [1, 1] fewest", found(tiny(17), 17, SCANT));
  }

  /** A square of 1 m in A, of which balls hold 100 m, or in B. */
  private static Blanket square() {
    return BlanketBuilder.straight(1, 1)
        .motif(PieceKind.SQUARE, round(1000))
        .yarns(2, Tone.DARK, 0)
        .build();
  }

  @Test
  void ballsThatAreNotNeededAreLeftOut() {
    Sequences witness = square().open();
    witness.set(0, 0, 0);
    AtomicInteger asked = new AtomicInteger();
    Balls balls = new Balls(square(), new ConsistencyOracle(1, ample(square())));
    assertArrayEquals(
        new int[] {0, 1},
        balls.withoutNeedless(new Bought(new int[] {2, 1}, true, witness)).balls());
    Bought less = balls.withoutNeedless(new Bought(new int[] {3, 0}, false, witness));
    assertArrayEquals(new int[] {1, 0}, less.balls());
    assertEquals(false, less.fewest());
    // twelve are tried
    Bought many = balls.withoutNeedless(new Bought(new int[] {11, 4}, true, witness));
    assertArrayEquals(new int[] {0, 3}, many.balls());
    assertEquals(1, many.witness().yarn(0, 0));
    assertEquals(true, many.fewest());
    Limits stopped = new Limits(1, 1, () -> asked.incrementAndGet() > 0);
    Balls none = new Balls(square(), new ConsistencyOracle(1, stopped));
    assertArrayEquals(
        new int[] {2, 0},
        none.withoutNeedless(new Bought(new int[] {2, 0}, true, witness)).balls());
    assertEquals(1, asked.get());
    assertEquals(Optional.empty(), none.find());
    assertEquals(2, asked.get());
  }
}
