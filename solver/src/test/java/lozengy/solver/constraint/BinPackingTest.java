package lozengy.solver.constraint;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.explain.conflict.Examining;
import lozengy.solver.explain.conflict.Feasibility;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Bin packing told as a blanket of one square: an item is a round, a bin a yarn, its capacity the
 * stock. A round is in one yarn, so that as many yarns fit as there are bins that hold all items.
 *
 * <p>What does not map: balls are no bins. A round may be worked from the end of one ball and the
 * start of the next, so that the balls of one shade are counted by their sum, which is what a pack
 * does ({@code pack.Floors}); a pack is held against all choices of balls, see {@code
 * pack.PackerTest}.
 */
class BinPackingTest {

  private record Problem(String name, int capacity, int[] items, int bins) {

    static Problem parse(String[] cells) {
      int[] items = Stream.of(cells[2].split(" ")).mapToInt(Integer::parseInt).toArray();
      return new Problem(cells[0], Integer.parseInt(cells[1]), items, Integer.parseInt(cells[3]));
    }

    Blanket blanket(int yarns) {
      Round[] rounds =
          Arrays.stream(items).mapToObj(each -> round(1000L * each)).toArray(Round[]::new);
      return BlanketBuilder.straight(1, 1)
          .motif(PieceKind.SQUARE, rounds)
          .within(WithinPiece.FREE)
          .yarns(yarns, Tone.MID, 1000L * capacity)
          .build();
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Problem> problems() {
    return TableRows.of("bin_packing.csv").map(Problem::parse).toList();
  }

  @ParameterizedTest
  @MethodSource("problems")
  void asManyYarnsFitAsBins(Problem problem) {
    Blanket blanket = problem.blanket(problem.bins());
    Limits limits = Limits.of(2_000_000, 1_000_000);
    Sequences start =
        assertInstanceOf(Feasibility.Fits.class, Examining.of(blanket, 1, limits)).start();
    assertTrue(start.complete());
    assertEquals(List.of(), Check.faults(blanket, start));
  }

  @ParameterizedTest
  @MethodSource("problems")
  void theSearchFindsThem(Problem problem) {
    SolveResult result =
        Solver.solve(
            problem.blanket(problem.bins()),
            Optional.empty(),
            SolveOptions.defaults().withMoves(200_000).withThreads(1));
    assertInstanceOf(SolveResult.Found.class, result);
  }

  @ParameterizedTest
  @MethodSource("problems")
  void oneYarnLessIsProvedTooFew(Problem problem) {
    Blanket blanket = problem.blanket(problem.bins() - 1);
    Limits limits = Limits.of(2_000_000, 1_000_000);
    assertInstanceOf(Feasibility.Impossible.class, Examining.of(blanket, 1, limits));
  }
}
