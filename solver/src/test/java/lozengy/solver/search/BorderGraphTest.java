package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Round;
import lozengy.model.colour.Tone;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** The graph of borders and of centres, against the layout's own seams. */
class BorderGraphTest {

  private static final Round ROUND = BlanketBuilder.round(1000);

  private static Problem compiled(Blanket blanket) {
    return ProblemCompiler.compile(blanket, Optional.empty());
  }

  @Test
  void bordersLieBesideEachOtherOnSeamsAndClashAsTheModelSays() {
    for (long seed = 1; seed <= 12; seed++) {
      Blanket blanket = Blanket.of(FewBorderBriefs.of(seed, 40));
      Problem problem = compiled(blanket);
      if (problem.slots().tied()) {
        continue;
      }
      BorderGraph graph = BorderGraph.of(problem);
      assertEquals(blanket.pieceCount(), graph.size());
      Pairs seams = blanket.layout().seams();
      for (int piece = 0; piece < graph.size(); piece++) {
        int one = piece;
        assertEquals(problem.slots().border(piece), graph.slot(piece));
        Set<Integer> expected =
            IntStream.range(0, seams.size())
                .filter(i -> seams.first()[i] == one || seams.second()[i] == one)
                .map(i -> seams.first()[i] == one ? seams.second()[i] : seams.first()[i])
                .filter(other -> !(fixed(problem, one) && fixed(problem, other)))
                .boxed()
                .collect(Collectors.toCollection(TreeSet::new));
        int[] beside = graph.beside(piece).clone();
        Arrays.sort(beside);
        assertArrayEquals(expected.stream().mapToInt(i -> i).toArray(), beside, "seed " + seed);
      }
      for (int a = 0; a < problem.yarns(); a++) {
        for (int b = 0; b < problem.yarns(); b++) {
          assertEquals(blanket.yarns().sameBorder(a, b), graph.clash(a, b), "seed " + seed);
        }
      }
      int[] yarns =
          IntStream.range(0, problem.yarns())
              .filter(y -> IntStream.range(0, graph.size()).anyMatch(p -> may(problem, p, y)))
              .toArray();
      assertArrayEquals(yarns, graph.yarns(), "seed " + seed);
      int[] sides = graph.sides();
      for (int piece = 0; piece < graph.size(); piece++) {
        for (int other : graph.beside(piece)) {
          assertEquals(1, sides[piece] + sides[other], "seed " + seed);
          assertNotEquals(sides[piece], sides[other], "seed " + seed);
        }
      }
    }
  }

  private static boolean fixed(Problem problem, int piece) {
    return problem.slots().fixedYarn()[problem.slots().border(piece)] >= 0;
  }

  private static boolean may(Problem problem, int piece, int yarn) {
    int slot = problem.slots().border(piece);
    return Arrays.stream(problem.domains().yarns(slot)).anyMatch(each -> each == yarn);
  }

  /** Two pieces that are both made part the row in two, of which each begins with side 0. */
  @Test
  void eachPartOfTheBoardBeginsWithTheSameSide() {
    Blanket blanket =
        BlanketBuilder.straight(6, 1)
            .motif(PieceKind.SQUARE, ROUND)
            .yarns(3, Tone.DARK, 100_000)
            .note("r1c3", PieceState.MADE, "A")
            .note("r1c4", PieceState.MADE, "B")
            .build();
    BorderGraph graph = BorderGraph.of(compiled(blanket));
    assertArrayEquals(new int[] {0, 1, 0, 0, 1, 0}, graph.sides());
    assertArrayEquals(new int[] {1}, graph.beside(2));
    assertArrayEquals(new int[] {4}, graph.beside(3));
  }

  @Test
  void centresAreAGraphWhereTheyAreToDifferAndAreNoBorders() {
    Blanket two = withCentres(true, ROUND, BlanketBuilder.round(2000));
    BorderGraph centres = BorderGraph.ofCentres(compiled(two));
    assertEquals(0, centres.slot(0));
    assertEquals(4, centres.slot(2));
    for (int piece = 0; piece < 6; piece++) {
      int[] beside = centres.beside(piece).clone();
      Arrays.sort(beside);
      assertArrayEquals(BorderGraph.of(compiled(two)).beside(piece), beside);
      assertTrue(beside.length > 1);
    }
    assertTrue(centres.clash(1, 1));
    assertNull(BorderGraph.ofCentres(compiled(withCentres(true, ROUND))));
    assertNull(
        BorderGraph.ofCentres(compiled(withCentres(false, ROUND, BlanketBuilder.round(2000)))));
  }

  private static Blanket withCentres(boolean differ, Round... rounds) {
    Blanket blanket =
        BlanketBuilder.straight(3, 2)
            .motif(PieceKind.SQUARE, rounds)
            .yarns(3, Tone.DARK, 100_000)
            .build();
    return Blanket.of(blanket.brief().withRules(blanket.brief().rules().withCentresDiffer(differ)));
  }
}
