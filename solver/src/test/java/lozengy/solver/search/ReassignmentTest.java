package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.RandomBriefs;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;

/** Exchanges of many rounds at once are the best of their kind and keep what is to stay. */
class ReassignmentTest {

  /** Beside JGraphT's Kuhn-Munkres, which shares no code with ours. */
  @Test
  void theCheapestAssignmentCostsWhatAnotherLibrarysDoes() {
    SplittableRandom random = new SplittableRandom(7);
    for (int round = 0; round < 300; round++) {
      int size = 1 + random.nextInt(9);
      long spread = random.nextInt(2) == 0 ? 4 : 1_000_000;
      long[][] cost = new long[size + 2][size + 2];
      for (long[] row : cost) {
        for (int column = 0; column < row.length; column++) {
          row[column] = random.nextLong(-spread, spread);
        }
      }
      int[] columns = CheapestAssignment.of(cost, size);
      assertArrayEquals(
          IntStream.range(0, size).toArray(), IntStream.of(columns).sorted().toArray());
      long sum = IntStream.range(0, size).mapToLong(row -> cost[row][columns[row]]).sum();
      assertEquals(byJGraphT(cost, size), sum, "round " + round);
    }
  }

  private static long byJGraphT(long[][] cost, int size) {
    SimpleWeightedGraph<String, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    List<String> rows = new ArrayList<>();
    List<String> columns = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      rows.add("row " + i);
      columns.add("column " + i);
    }
    rows.forEach(graph::addVertex);
    columns.forEach(graph::addVertex);
    // the same shift for all, for it takes no negative costs
    long shift = 1_000_000;
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        graph.setEdgeWeight(
            graph.addEdge(rows.get(row), columns.get(column)), cost[row][column] + shift);
      }
    }
    double weight =
        new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(
                graph, new LinkedHashSet<>(rows), new LinkedHashSet<>(columns))
            .getMatching()
            .getWeight();
    return Math.round(weight) - shift * size;
  }

  @Test
  void whatIsBetteredKeepsCountsAndStockAndCostsWhatItSays() {
    int tried = 0;
    int bettered = 0;
    for (long seed = 1; seed <= 120; seed++) {
      Problem problem = RandomDraws.problem(RandomBriefs.of(seed, 4, 9)).orElse(null);
      if (problem == null) {
        continue;
      }
      Draws draws = new Draws(seed);
      State state = new State(problem);
      Acceptance acceptance = new Acceptance(state, draws, new Audit(Assertions.STEP, state, seed));
      state.reset(new CountPlan(problem, draws).deal(300));
      long before = state.cost();
      int[] dealt = state.yarn.clone();
      long spent =
          new Reassignment(state, draws, acceptance, problem.slots().free())
              .improve(20_000, () -> false);
      assertTrue(state.cost() <= before, "seed " + seed);
      assertTrue(spent <= 20_000 + 48 * 48, "seed " + seed + " spent " + spent);
      Cost fresh = Cost.of(problem, state.yarn, state.stock.pressure());
      assertEquals(fresh.total(), state.cost(), "seed " + seed);
      assertEquals(fresh.hard(), state.hard(), "seed " + seed);
      assertArrayEquals(shown(problem, dealt), shown(problem, state.yarn), "seed " + seed);
      tried++;
      bettered += state.cost() < before ? 1 : 0;
    }
    assertTrue(tried > 50, "only " + tried + " deals");
    assertTrue(bettered * 4 > tried, "only " + bettered + " of " + tried + " got better");
  }

  /** How many rounds of each layer show each yarn, and how much of each is used. */
  private static long[] shown(Problem problem, int[] yarn) {
    int layers = problem.balance().cost().length;
    long[] shown = new long[(layers + 1) * problem.yarns()];
    for (int slot = 0; slot < yarn.length; slot++) {
      shown[problem.slots().layer()[slot] * problem.yarns() + yarn[slot]]++;
      shown[layers * problem.yarns() + yarn[slot]] += problem.supply().need(slot, yarn[slot]);
    }
    return shown;
  }

  /** Three lone rounds in a ring: no exchange of two pays, the ring does. */
  @Test
  void findsARingWhereNoExchangeOfTwoPays() {
    long[][] cost = {{0, -3, 5}, {5, 0, -3}, {-3, 5, 0}};
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < a; b++) {
        assertTrue(cost[a][b] + cost[b][a] > 0);
      }
    }
    assertArrayEquals(new int[] {1, 2, 0}, CheapestAssignment.of(cost, 3));
  }

  /** Three centres too far apart to be pairs, each with costs of its own: as few as are taken. */
  @Test
  void threeRoundsGoRoundInARing() {
    BlanketBuilder builder =
        BlanketBuilder.straight(7, 1)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(900))
            .yarns(5, Tone.DARK, 100_000)
            .within(WithinPiece.FREE)
            .prefer(Map.of(Part.SPREAD, 0.0, Part.CONTRAST, 0.0, Part.BALANCE, 1.0));
    for (int piece = 0; piece < 7; piece++) {
      String centre = piece % 3 == 0 ? null : "A";
      builder.note("r1c" + (piece + 1), PieceState.PLANNED, centre, piece % 2 == 0 ? "D" : "E");
    }
    Problem plain = ProblemCompiler.compile(builder.build(), Optional.empty());
    int[] free = plain.slots().free();
    assertArrayEquals(new int[] {0, 6, 12}, free);
    int[] own = new int[plain.slots().count() * plain.yarns()];
    int[][] ring = {{0, -300, 500}, {500, 0, -300}, {-300, 500, 0}};
    int[] yarn = plain.slots().fixedYarn().clone();
    for (int i = 0; i < 3; i++) {
      System.arraycopy(ring[i], 0, own, free[i] * plain.yarns(), 3);
      yarn[free[i]] = i;
    }
    Problem problem = plain.withCosts(plain.costs().withUnary(own));
    State state = new State(problem);
    state.reset(yarn);
    long before = state.cost();
    Draws draws = new Draws(1);
    Acceptance acceptance = new Acceptance(state, draws, new Audit(Assertions.STEP, state, 1));
    assertEquals(
        0, new Reassignment(state, draws, acceptance, free).improve(0, () -> false), "no moves");
    assertEquals(before, state.cost());
    long spent = new Reassignment(state, draws, acceptance, free).improve(1000, () -> false);
    assertEquals(List.of(1, 2, 0), IntStream.of(free).mapToObj(slot -> state.yarn[slot]).toList());
    assertEquals(before - 900, state.cost());
    // one pass that wins and one that does not, of nine costs each, three to a move
    assertEquals(2 * 9 / 3, spent);
    assertEquals(
        0, new Reassignment(state, draws, acceptance, free).improve(1000, () -> true), "ended");
  }
}
