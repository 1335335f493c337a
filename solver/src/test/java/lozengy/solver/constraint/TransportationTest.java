package lozengy.solver.constraint;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Reason;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.conflict.Examining;
import lozengy.solver.explain.conflict.Feasibility;
import lozengy.solver.explain.conflict.Root;
import lozengy.solver.explain.shortage.Capacity;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Transportation problems told as blankets: a supplier is a light yarn, a unit of demand the inner
 * round of a square, the border is dark and plenty. The yarn-total rule must let through what
 * supply can serve, refuse what it cannot, and leave the published optimum in reach.
 *
 * <p>What maps: supplies and demands, a cell that may not be used (a ban), and whether the rest of
 * the cells can serve all demand, which is a maximum flow. What does not: a cost. No part of the
 * core knows what a round costs in one yarn or another, so that costs are either added to the
 * constraint model here, or kept here as dual prices, while the core says by its cuts alone whether
 * the cells of reduced cost 0 suffice.
 */
class TransportationTest {

  /** A problem in its greatest common unit. */
  private record Problem(
      String name,
      int unit,
      int[] supply,
      int[] demand,
      int[][] cost,
      double costUnit,
      double optimum) {

    static Problem parse(String[] cells) {
      int[] supplies = numbers(cells[1]);
      int[] demands = numbers(cells[2]);
      int unit =
          IntStream.concat(IntStream.of(supplies), IntStream.of(demands))
              .reduce(0, (a, b) -> (int) ReachableSums.gcd(a, b));
      double[][] costs =
          Stream.of(cells[3].split("\\|"))
              .map(row -> Stream.of(row.split(" ")).mapToDouble(Double::parseDouble).toArray())
              .toArray(double[][]::new);
      boolean whole = Arrays.stream(costs).flatMapToDouble(DoubleStream::of).allMatch(c -> c >= 1);
      double costUnit = whole ? 1 : 0.001;
      int[][] wholeCosts =
          Stream.of(costs)
              .map(row -> DoubleStream.of(row).mapToInt(c -> (int) Math.round(c / costUnit)))
              .map(IntStream::toArray)
              .toArray(int[][]::new);
      return new Problem(
          cells[0],
          unit,
          IntStream.of(supplies).map(s -> s / unit).toArray(),
          IntStream.of(demands).map(d -> d / unit).toArray(),
          wholeCosts,
          costUnit,
          Double.parseDouble(cells[4]));
    }

    @Override
    public String toString() {
      return name;
    }

    private static int[] numbers(String list) {
      return Stream.of(list.split(" ")).mapToInt(Integer::parseInt).toArray();
    }

    int units() {
      return IntStream.of(demand).sum();
    }

    /** Squares in a row, as many as there are units of demand. */
    Blanket blanket() {
      BlanketBuilder builder =
          BlanketBuilder.straight(units(), 1)
              .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(1, Tone.DARK));
      IntStream.of(supply).forEach(s -> builder.yarn(Tone.LIGHT, 1000L * s));
      return builder.yarns(2, Tone.DARK, 1_000_000).build();
    }

    /** The same with a supply so far cut that demand is one unit above. */
    Problem cut(int supplier) {
      int[] less = supply.clone();
      less[supplier] -= IntStream.of(supply).sum() - units() + 1;
      return new Problem(name, unit, less, demand, cost, costUnit, optimum);
    }
  }

  static Stream<Problem> problems() {
    return TableRows.of("transportation.csv").map(Problem::parse);
  }

  /** Those whose least cost is soon proved round by round. */
  static Stream<Problem> smallProblems() {
    return problems().filter(problem -> problem.units() <= 40);
  }

  @ParameterizedTest
  @MethodSource("problems")
  void supplyServesDemandToTheLastUnit(Problem problem) {
    Blanket blanket = problem.blanket();
    Feasibility.Answer answer = Examining.of(blanket, 1, Limits.of(100_000, 10_000));
    assertTrue(answer instanceof Feasibility.Fits, answer.toString());
    Sequences start = ((Feasibility.Fits) answer).start();
    long[] used = blanket.usedMillimetres(start);
    long served = IntStream.range(0, problem.supply().length).mapToLong(i -> used[i]).sum();
    assertEquals(1000L * problem.units(), served);
  }

  @ParameterizedTest
  @MethodSource("problems")
  void oneUnitLessOfAnySupplyIsToldToTheMetre(Problem problem) {
    for (int supplier = 0; supplier < problem.supply().length; supplier++) {
      Blanket blanket = problem.cut(supplier).blanket();
      Reason reason = Root.arguments(blanket).get(0).reason();
      assertEquals(1000L, reason.lengths().get("short"), reason.toString());
      assertEquals(
          new Start.None(), Start.find(ConstraintModel.of(blanket), 1, Limits.of(100_000, 10_000)));
    }
  }

  @ParameterizedTest
  @MethodSource("smallProblems")
  void theLeastCostIsThePublishedOne(Problem problem) {
    ConstraintModel constraints = ConstraintModel.of(problem.blanket());
    Model model = constraints.model();
    IntVar[] items =
        Stream.of(constraints.pieces()).map(rounds -> rounds[0]).toArray(IntVar[]::new);
    IntVar[] costs = new IntVar[items.length];
    int item = 0;
    for (int to = 0; to < problem.demand().length; to++) {
      int destination = to;
      int[] bySupplier = Stream.of(problem.cost()).mapToInt(row -> row[destination]).toArray();
      for (int unit = 0; unit < problem.demand()[to]; unit++, item++) {
        costs[item] = model.intVar(0, IntStream.of(bySupplier).max().orElseThrow());
        model.element(costs[item], bySupplier, items[item]).post();
        if (unit > 0) {
          // units for one place are alike
          model.arithm(items[item - 1], "<=", items[item]).post();
        }
      }
    }
    IntVar total = model.intVar(0, 1_000_000);
    model.sum(costs, "=", total).post();
    model.setObjective(Model.MINIMIZE, total);
    Solver solver = model.getSolver();
    solver.setSearch(
        Search.inputOrderLBSearch(items), Search.inputOrderLBSearch(constraints.borders()));
    solver.limitNode(2_000_000);
    int best = Integer.MAX_VALUE;
    while (solver.solve()) {
      best = total.getValue();
    }
    assertTrue(Start.ended(solver), "nothing proved");
    assertEquals(problem.optimum(), best * problem.costUnit() * problem.unit(), 1e-9);
  }

  /** With what is supplied in vain as one more demand, which costs nothing. */
  private static Problem balanced(Problem problem) {
    int over = IntStream.of(problem.supply()).sum() - problem.units();
    int[] demand = Arrays.copyOf(problem.demand(), problem.demand().length + 1);
    demand[demand.length - 1] = over;
    int[][] cost =
        Stream.of(problem.cost())
            .map(row -> Arrays.copyOf(row, row.length + 1))
            .toArray(int[][]::new);
    return over == 0
        ? problem
        : new Problem(
            problem.name(),
            problem.unit(),
            problem.supply(),
            demand,
            cost,
            problem.costUnit(),
            problem.optimum());
  }

  /** The problem with all cells banned but those of reduced cost 0. */
  private static Blanket tight(Problem problem, int[] rows, int[] columns) {
    BlanketBuilder builder =
        BlanketBuilder.straight(problem.units(), 1)
            .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(1, Tone.DARK));
    IntStream.of(problem.supply()).forEach(s -> builder.yarn(Tone.LIGHT, 1000L * s));
    int first = 1;
    for (int to = 0; to < columns.length; to++) {
      int destination = to;
      String[] banned =
          IntStream.range(0, rows.length)
              .filter(from -> problem.cost()[from][destination] > rows[from] + columns[destination])
              .mapToObj(from -> String.valueOf((char) ('A' + from)))
              .toArray(String[]::new);
      int last = first + problem.demand()[to] - 1;
      if (banned.length > 0) {
        builder.ban("r1c" + first + "..r1c" + last, banned);
      }
      first = last + 1;
    }
    return builder.yarns(2, Tone.DARK, 1_000_000).build();
  }

  /**
   * The primal-dual method (Ford and Fulkerson, 1957; from memory) with the core's minimum cut for
   * its flows. Where the cut says that cells of reduced cost 0 cannot serve some demands, prices of
   * these rise and those of the yarns that they share fall, until it says that all is served. Were
   * one of its answers wrong, the dual prices would end below the published optimum, or beyond it.
   */
  @ParameterizedTest
  @MethodSource("problems")
  void cutsLeadToThePublishedCost(Problem published) {
    Problem problem = balanced(published);
    int[] rows = new int[problem.supply().length];
    int[] columns = new int[problem.demand().length];
    Arrays.setAll(
        columns, to -> Stream.of(problem.cost()).mapToInt(row -> row[to]).min().orElseThrow());
    int cuts = 0;
    while (true) {
      Blanket blanket = tight(problem, rows, columns);
      List<Finding> findings = Capacity.STOCK.findings(Requirements.all(blanket));
      if (findings.isEmpty()) {
        break;
      }
      Finding cut = findings.get(0);
      BitSet shortOf = new BitSet();
      cut.slots().forEach(slot -> shortOf.set(destination(problem, slot.piece())));
      int least = Integer.MAX_VALUE;
      for (int from = 0; from < rows.length; from++) {
        for (int to = shortOf.nextSetBit(0); to >= 0; to = shortOf.nextSetBit(to + 1)) {
          if (!cut.yarns().get(from)) {
            least = Math.min(least, problem.cost()[from][to] - rows[from] - columns[to]);
          }
        }
      }
      assertTrue(least > 0 && least < Integer.MAX_VALUE, "no demand is served by other cells");
      for (int to = shortOf.nextSetBit(0); to >= 0; to = shortOf.nextSetBit(to + 1)) {
        columns[to] += least;
      }
      for (int from = 0; from < rows.length; from++) {
        rows[from] -= cut.yarns().get(from) ? least : 0;
      }
      assertTrue(++cuts < 1000, "prices do not settle");
    }
    long dual = 0;
    for (int from = 0; from < rows.length; from++) {
      dual += (long) rows[from] * problem.supply()[from];
    }
    for (int to = 0; to < columns.length; to++) {
      dual += (long) columns[to] * problem.demand()[to];
    }
    assertEquals(published.optimum(), dual * problem.costUnit() * problem.unit(), 1e-9);
  }

  private static int destination(Problem problem, int piece) {
    int last = 0;
    for (int to = 0; to < problem.demand().length; to++) {
      last += problem.demand()[to];
      if (piece < last) {
        return to;
      }
    }
    throw new IllegalArgumentException("no demand has unit " + piece);
  }
}
