package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Symmetry;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.input.SourceText;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Nearness;
import lozengy.solver.RandomBriefs;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** Borders in a pattern: what they cost, that there is no repeat, and what a search makes of it. */
class BorderPatternTest {

  private static final int BRIEFS = 60;

  @Test
  void cellsCostWhatTheirBordersCostAndAnnealingDoesNotDrift() {
    int annealed = 0;
    for (long seed = 1; seed <= BRIEFS; seed++) {
      Blanket blanket = Blanket.of(RandomBriefs.of(seed, 5, 6));
      Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
      if (problem.domains().anyEmpty()) {
        continue;
      }
      Draws draws = new Draws(seed);
      BorderCells single = new BorderCells(problem);
      int cells = 1 + draws.below(5);
      int[] cellOf = IntStream.range(0, single.size()).map(i -> draws.below(cells)).toArray();
      BorderCells joined = new BorderCells(single, cellOf, cells);
      joined.beginAtRandom(draws);
      long best = joined.anneal(2, 0.1, 200, draws);
      assertEquals(best, joined.cost(), "seed " + seed);
      int[] yarns = joined.yarns();
      single.begin(IntStream.of(cellOf).map(cell -> yarns[cell]).toArray());
      assertEquals(best, single.cost(), "seed " + seed);
      assertEquals(single.anneal(1, 0.1, 500, draws), single.cost(), "seed " + seed);
      annealed++;
    }
    assertTrue(annealed > BRIEFS / 3, annealed + " of " + BRIEFS);
  }

  @Test
  void nineYarnsLieWithoutARepeat() {
    Problem problem = ProblemCompiler.compile(blanket(""), Optional.empty());
    int[] planned = new BorderPattern(problem, new Draws(1)).yarns(() -> false);
    assertEquals(0, repeats(problem, planned));
    for (int slot = 0; slot < planned.length; slot++) {
      assertEquals(problem.slots().layer()[slot] > 0, planned[slot] == Sequences.OPEN);
    }
  }

  /** So that a large board neither spends more moves than there are nor outlives its time. */
  @Test
  void planningTakesNoMoreThanItIsSaidToAndEndsWhenAsked() {
    Problem problem = ProblemCompiler.compile(blanket(""), Optional.empty());
    BorderPattern pattern = new BorderPattern(problem, new Draws(1));
    pattern.yarns(() -> false);
    assertTrue(pattern.moves() > BorderPattern.mostMoves(problem) / 2, pattern.moves() + " moves");
    assertTrue(pattern.moves() <= BorderPattern.mostMoves(problem), pattern.moves() + " moves");
    assertTrue(DealSchedule.worthAPattern(pattern.moves(), 6 * pattern.moves() + 6));
    assertFalse(DealSchedule.worthAPattern(pattern.moves(), 5 * pattern.moves()));
    for (int looks : new int[] {0, 5, 1060}) {
      AtomicInteger left = new AtomicInteger(looks);
      BorderPattern stopped = new BorderPattern(problem, new Draws(1));
      int[] planned = stopped.yarns(() -> left.getAndDecrement() <= 0);
      assertTrue(stopped.moves() < pattern.moves());
      assertTrue(IntStream.of(planned).allMatch(yarn -> yarn == Sequences.OPEN), looks + " looks");
    }
  }

  /**
   * Twelve borders have sublattices of 4 to 12 cosets; each number has as many as its divisors sum.
   */
  @Test
  void planningTakesWhatItsStepsAreCountedAs() {
    Problem problem = squares(4, 3, 100_000);
    long shortSteps = 0;
    for (int cells = 4; cells <= 12; cells++) {
      for (int width = 1; width <= cells; width++) {
        shortSteps += cells % width == 0 ? (long) cells / width * cells * 20 : 0;
      }
    }
    long most = 2 * (shortSteps + 12 * 1000 * 36 + 5 * 500 * 12);
    assertEquals(most, BorderPattern.mostMoves(problem));
    BorderPattern pattern = new BorderPattern(problem, new Draws(1));
    pattern.yarns(() -> false);
    // twelve go on, of as many cosets as they have
    long longer = pattern.moves() / 2 - shortSteps - 5 * 500 * 12;
    assertTrue(longer % 1000 == 0, longer + " steps");
    assertTrue(longer >= 12 * 4 * 1000 && longer <= 12 * 12 * 1000, longer + " steps");
    // three borders are too few for any
    BorderPattern none = new BorderPattern(squares(3, 1, 100_000), new Draws(1));
    assertTrue(IntStream.of(none.yarns(() -> false)).allMatch(yarn -> yarn == Sequences.OPEN));
    assertEquals(0, none.moves());
  }

  /** Three in a hundred beside what is used, and no piece that lies in two places or none yet. */
  @Test
  void patternsAreForBoardsWithYarnToSpare() {
    // 12 borders take 12 m of 3 yarns
    int[] yarn = {0, 1, 2, 0, 1, 2, 0, 1, 2, 0, 1, 2};
    assertTrue(BorderPattern.suits(squares(4, 3, 4120), yarn));
    assertFalse(BorderPattern.suits(squares(4, 3, 4119), yarn));
    Blanket plain = squares(4, 3, 9000).blanket();
    Brief mirrored = plain.brief().withLook(Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT));
    int[] half = {0, 1, 2, 0, 1, 2};
    assertFalse(BorderPattern.suits(compiled(mirrored), half));
    PileEntry entry = new PileEntry(PieceKind.SQUARE, List.of("A"), 1, Set.of());
    assertFalse(BorderPattern.suits(compiled(plain.brief().withPile(List.of(entry))), yarn));
  }

  private static Problem squares(int across, int down, long stock) {
    return compiled(
        BlanketBuilder.straight(across, down)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
            .yarns(3, Tone.DARK, stock)
            .build()
            .brief());
  }

  private static Problem compiled(Brief brief) {
    return ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
  }

  @Test
  void aPatternGoesRoundLocks() {
    Problem problem =
        ProblemCompiler.compile(
            blanket(
                """
                pieces:
                  - {at: [r1c1, r2c2], rounds: [L0, L1, L2, L3, D0]}
                  - {at: [r5c5], rounds: [L3, L2, L1, L0, D0]}
                """),
            Optional.empty());
    int[] planned = new BorderPattern(problem, new Draws(1)).yarns(() -> false);
    for (int slot = 0; slot < planned.length; slot++) {
      assertTrue(planned[slot] == Sequences.OPEN || problem.domains().allows(slot, planned[slot]));
    }
    assertTrue(
        repeats(problem, planned) <= 8,
        "two locked borders are near each other, whatever lies beside them");
  }

  /**
   * That a pattern is tried does not depend on threads, and spoils nothing: on this board a search
   * without one comes to no repeat either, so that this tells nothing of what patterns gain.
   */
  @Test
  void aSearchThatTriesAPatternIsTheSameForAnyThreads() {
    Blanket blanket = blanket("");
    Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
    int[] one = searched(problem, 1);
    assertArrayEquals(one, searched(problem, 2));
    assertEquals(0, Check.faults(blanket, problem.sequences(one)).size());
    assertEquals(0, repeats(problem, one));
  }

  /**
   * 143 pieces on point whose borders must part in lightness: with as many moves, but no pattern,
   * three seeds end at 92.1 at most, and at 93.5 at least with one.
   */
  @Test
  void aSearchGainsByAPatternWhereBordersMustPart() {
    Problem problem = ProblemCompiler.compile(parted(), Optional.empty());
    long moves = (long) (6.2 * BorderPattern.mostMoves(problem));
    Budget budget = new Budget(OptionalLong.of(moves), OptionalDouble.empty(), () -> false);
    try (Search search = new Search(problem, 1, 2, 1, budget, () -> 0, () -> {}, Assertions.OFF)) {
      assertTrue(search.start());
      search.improve();
      double reached = 100 - search.bestCost() / problem.prices().unitsPerPoint();
      assertTrue(reached > 92.8, "only " + reached);
    }
  }

  private static int[] searched(Problem problem, int threads) {
    // just enough that the search tries a pattern
    long moves = 6 * BorderPattern.mostMoves(problem) + 1_000_000;
    Budget budget = new Budget(OptionalLong.of(moves), OptionalDouble.empty(), () -> false);
    try (Search search =
        new Search(problem, 1, 2, threads, budget, () -> 0, () -> {}, Assertions.OFF)) {
      assertTrue(search.start());
      search.improve();
      assertEquals(moves, budget.spent());
      return search.best().clone();
    }
  }

  /** Pairs of near borders with the same yarn. */
  private static int repeats(Problem problem, int[] yarnOf) {
    int repeats = 0;
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(problem.blanket().layout());
      for (int i = 0; i < pairs.size(); i++) {
        int one = yarnOf[problem.slots().border(pairs.first()[i])];
        int other = yarnOf[problem.slots().border(pairs.second()[i])];
        repeats += one == other && one != Sequences.OPEN ? 1 : 0;
      }
    }
    return repeats;
  }

  /** 81 pieces of five rounds, nine yarns for the borders and eight for all else. */
  private static Blanket blanket(String more) {
    StringBuilder yarns = new StringBuilder();
    for (int i = 0; i < 17; i++) {
      String colour =
          i < 9 ? "#%02x2030".formatted(16 + 8 * i) : "#f0%02xd0".formatted(100 + 8 * i);
      yarns.append(
          "  - {code: %s%d, name: Yarn %d, colour: '%s', balls: 0, left: %d m}%n"
              .formatted(i < 9 ? "D" : "L", i % 9, i, colour, i < 9 ? 20 : 60));
    }
    return Blanket.of(
        BriefReader.read(
            SourceText.of(
                "pattern.yaml",
                """
                format: lozengy-brief/1
                title: Pattern
                layout: {setting: straight, across: 9, down: 9}
                motifs:
                  square:
                    side: 8 cm
                    rounds:
                      - {tone: light, metres: 0.5}
                      - {tone: light, metres: 0.75}
                      - {tone: light, metres: 1}
                      - {tone: light, metres: 1.25}
                      - {tone: dark, metres: 2}
                yarns:
                """
                    + yarns
                    + more)));
  }

  /** A throw of squares and triangles with two rounds, in nine dark yarns and eight light ones. */
  private static Blanket parted() {
    String yarns =
        """
        D1 #2e220a 84
        D2 #6d4790 82
        D3 #0e6665 86
        D4 #9a3d37 89
        D5 #4f5f01 79
        D6 #022646 85
        D7 #3a1b29 81
        D8 #09371b 78
        D9 #734f17 89
        L1 #dfbbfd 122
        L2 #def4a7 124
        L3 #04c3e0 123
        L4 #e9af93 121
        L5 #dae7e7 122
        L6 #70c6a7 123
        L7 #8eb1ee 124
        L8 #ef98af 120
        """
            .lines()
            .map(
                line ->
                    "  - {code: %s, name: %1$s, colour: '%s', balls: 0, left: %s m}%n"
                        .formatted((Object[]) line.split(" ")))
            .collect(Collectors.joining());
    return Blanket.of(
        BriefReader.read(
            SourceText.of(
                "parted.yaml",
                """
                format: lozengy-brief/1
                title: Parted
                layout: {setting: on-point, across: 7, down: 9, sides: triangles, corners: triangles}
                motifs:
                  square:
                    side: 9 cm
                    rounds:
                      - {tone: light, metres: 3.83}
                      - {tone: dark, metres: 5.11}
                  triangle:
                    rounds:
                      - {tone: light, metres: 2.24}
                      - {tone: dark, metres: 2.93}
                  corner:
                    rounds:
                      - {tone: light, metres: 1.34}
                      - {tone: dark, metres: 1.72}
                tones: {dark-below: 42, light-from: 68}
                rules: {min-contrast: 22, within-piece: adjacent-differ, copies: 6, keep-back: 0 %}
                prefer: {balance: 3, spread: 3, contrast: 1, variety: 1, leeway: 1, keep: 3}
                yarns:
                """
                    + yarns)));
  }
}
