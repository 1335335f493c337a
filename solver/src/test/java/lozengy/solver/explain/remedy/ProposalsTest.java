package lozengy.solver.explain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.solver.explain.argument.Shortfall;
import lozengy.solver.explain.remedy.Proposals.Deal;
import org.junit.jupiter.api.Test;

/** Which balls are proposed for shortages that are known. */
class ProposalsTest {

  private static Proposals of(int yarns, int... gone) {
    BitSet set = new BitSet();
    IntStream.of(gone).forEach(set::set);
    return new Proposals(yarns, set);
  }

  private static String fewest(Proposals proposals, Deal deal) {
    String told = proposals.fewest(deal).map(Arrays::toString).orElse("none");
    assertTrue(proposals.complete());
    return told;
  }

  private static String ofFewShades(Proposals proposals) {
    return fewest(proposals, Deal.FEWEST_SHADES);
  }

  @Test
  void aShortageAsksForBallsOfOneShadeOrEvenly() {
    Proposals proposals = of(3);
    assertEquals("[0, 0, 0]", ofFewShades(proposals));
    proposals.add(new Shortfall(250, Map.of(0, 100L, 1, 100L)));
    assertEquals("[3, 0, 0]", ofFewShades(proposals));
    assertEquals("[2, 1, 0]", fewest(proposals, Deal.EVENLY));
    Proposals without = of(3, 0);
    without.add(new Shortfall(250, Map.of(0, 100L, 1, 100L)));
    assertEquals("[0, 3, 0]", ofFewShades(without));
    assertEquals("[0, 3, 0]", fewest(without, Deal.EVENLY));
  }

  /** 100 m and 50 m a ball, as they are counted: in parts of 100 mm, a ball rounded up. */
  @Test
  void ballsOfDifferentLength() {
    Proposals proposals = of(2);
    proposals.add(new Shortfall(150_000, Map.of(0, 100_000L, 1, 50_000L)));
    assertEquals("[2, 0]", ofFewShades(proposals));
    assertEquals("[1, 1]", fewest(proposals, Deal.EVENLY));
    proposals.add(new Shortfall(200_000, Map.of(0, 100_000L, 1, 50_000L)));
    assertEquals("[2, 0]", fewest(proposals, Deal.EVENLY));
    proposals.add(new Shortfall(200_001, Map.of(0, 100_000L, 1, 50_000L)));
    assertEquals("[2, 1]", fewest(proposals, Deal.EVENLY), "a ball more, if by a millimetre");
  }

  @Test
  void aBallThatRoundingHidesIsAskedFor() {
    Proposals proposals = of(3);
    proposals.add(new Shortfall(100_050, Map.of(2, 100_000L)));
    proposals.add(new Shortfall(250_000, Map.of(0, 100_000L, 1, 100_000L, 2, 100_000L)));
    assertEquals("[1, 0, 2]", fewest(proposals, Deal.EVENLY));
    assertEquals("[0, 0, 3]", ofFewShades(proposals));
  }

  @Test
  void shortagesWithoutAYarnInCommonAddUp() {
    Proposals proposals = of(4);
    proposals.add(new Shortfall(5, Map.of(0, 2L, 1, 2L, 2, 2L)));
    proposals.add(new Shortfall(1, Map.of(0, 1L)));
    proposals.add(new Shortfall(2, Map.of(1, 1L)));
    proposals.add(new Shortfall(4, Map.of(3, 1L)));
    assertEquals("[1, 2, 0, 4]", ofFewShades(proposals));
  }

  @Test
  void whatIsRefutedIsNotProposedAgain() {
    Proposals proposals = of(3);
    proposals.atLeast(2);
    assertEquals("[2, 0, 0]", ofFewShades(proposals));
    int[] balls = {2, 0, 0};
    proposals.refute(balls, List.of(0, 1));
    balls[0] = 0;
    assertEquals("[0, 2, 0]", ofFewShades(proposals));
    proposals.refute(new int[] {0, 2, 0}, List.of(1));
    assertEquals("[3, 0, 0]", ofFewShades(atLeast(of(3), 3)));
    assertEquals("[0, 3, 0]", ofFewShades(proposals), "more than two of the second");
    proposals.refute(new int[3], List.of());
    assertEquals("none", ofFewShades(proposals));
  }

  private static Proposals atLeast(Proposals proposals, int balls) {
    proposals.atLeast(balls);
    return proposals;
  }

  @Test
  void fortyOfAYarnAtMost() {
    assertEquals("[40, 40]", ofFewShades(atLeast(of(2), 80)));
    assertEquals("none", ofFewShades(atLeast(of(2), 81)));
    assertEquals("none", ofFewShades(atLeast(of(2, 1), 41)));
    assertEquals("[40, 0]", ofFewShades(short1(4000)));
    assertEquals("none", ofFewShades(short1(4001)));
    Proposals both = of(2);
    both.add(new Shortfall(6000, Map.of(0, 100L, 1, 100L)));
    assertEquals("[40, 20]", ofFewShades(both));
    Proposals endless = of(2);
    endless.add(new Shortfall(5, Map.of(0, 0L)));
    endless.add(new Shortfall(5, Map.of(1, 0L)));
    assertEquals("none", ofFewShades(endless));
    Proposals nothing = of(2);
    nothing.add(new Shortfall(5, Map.of()));
    assertEquals("none", ofFewShades(nothing));
  }

  private static Proposals short1(long missing) {
    Proposals proposals = of(2);
    proposals.add(new Shortfall(missing, Map.of(0, 100L)));
    return proposals;
  }

  /** Of each of seven times three yarns two must be bought, which takes long to prove. */
  @Test
  void whereTheSearchIsCutShortItIsNotComplete() {
    Proposals proposals = of(21);
    for (int first = 0; first < 21; first += 3) {
      proposals.refute(new int[21], List.of(first, first + 1));
      proposals.refute(new int[21], List.of(first, first + 2));
      proposals.refute(new int[21], List.of(first + 1, first + 2));
    }
    assertEquals(Optional.empty(), proposals.fewest(Deal.FEWEST_SHADES));
    assertFalse(proposals.complete());
    proposals.atLeast(14);
    assertEquals(14, Arrays.stream(proposals.fewest(Deal.EVENLY).orElseThrow()).sum());
    assertFalse(proposals.complete(), "what was proposed before may not have been the fewest");
  }
}
