package lozengy.solver.constraint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import lozengy.model.check.RoundPairs;
import lozengy.model.check.YarnPairs;
import lozengy.model.layout.Pairs;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import org.jgrapht.Graph;
import org.jgrapht.alg.clique.BronKerboschCliqueFinder;
import org.jgrapht.alg.color.SaturationDegreeColoring;
import org.jgrapht.graph.DefaultEdge;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The neighbour-border rule as a colouring engine, on graphs that are no blanket's: with as many
 * colours as the chromatic number it finds a colouring, with one less it proves that there is none.
 */
class GraphColouringTest {

  /** A row of the table. */
  private record Row(
      String id, Graph<Integer, DefaultEdge> graph, int vertices, int edges, int chi) {
    static Row of(String[] cells) {
      int[] numbers = Stream.of(cells[2].split(" ")).mapToInt(Integer::parseInt).toArray();
      int vertices = Integer.parseInt(cells[3]);
      int edges = Integer.parseInt(cells[4]);
      return new Row(
          cells[0], Graphs.of(cells[1], numbers), vertices, edges, Integer.parseInt(cells[5]));
    }

    @Override
    public String toString() {
      return id;
    }
  }

  static Stream<Row> rows() {
    return TableRows.of("graph-colouring.csv").map(Row::of);
  }

  static Stream<Row> smallRows() {
    return rows().filter(row -> row.vertices() <= 25);
  }

  private static final long MOST_NODES = 200_000;

  @ParameterizedTest
  @MethodSource("rows")
  void findsAColouringAndProvesThatOneColourLessWillNotDo(Row row) {
    assertEquals(row.vertices(), row.graph().vertexSet().size());
    assertEquals(row.edges(), row.graph().edgeSet().size());
    int greedy = new SaturationDegreeColoring<>(row.graph()).getColoring().getNumberColors();
    assertTrue(greedy >= row.chi());
    assertColourable(row.graph(), row.chi(), 1);
    assertNotColourable(row.graph(), row.chi() - 1, 1);
  }

  /** Twice as many values, two of which look alike at a time, are no more colours. */
  @ParameterizedTest
  @MethodSource("smallRows")
  void looksThatAreAlikeAreNoFurtherColours(Row row) {
    assertColourable(row.graph(), row.chi(), 2);
    assertNotColourable(row.graph(), row.chi() - 1, 2);
  }

  private static void assertColourable(Graph<Integer, DefaultEdge> graph, int colours, int alike) {
    IntVar[] borders = borders(graph, colours, alike);
    Solver solver = borders[0].getModel().getSolver();
    assertTrue(solver.solve(), "no colouring found in " + solver.getNodeCount() + " nodes");
    for (DefaultEdge edge : graph.edgeSet()) {
      int a = borders[graph.getEdgeSource(edge)].getValue();
      int b = borders[graph.getEdgeTarget(edge)].getValue();
      assertNotEquals(a / alike, b / alike);
    }
  }

  private static void assertNotColourable(
      Graph<Integer, DefaultEdge> graph, int colours, int alike) {
    Solver solver = borders(graph, colours, alike)[0].getModel().getSolver();
    assertTrue(!solver.solve(), "coloured with too few colours");
    assertTrue(Start.ended(solver), "nothing proved in " + solver.getNodeCount() + " nodes");
  }

  private static IntVar[] borders(Graph<Integer, DefaultEdge> graph, int colours, int alike) {
    Model model = new Model();
    IntVar[] borders = model.intVarArray(graph.vertexSet().size(), 0, colours * alike - 1);
    Pairs pairs = Graphs.pairs(graph);
    ClashPosting.post(
        model,
        borders,
        new RoundPairs(pairs.first(), pairs.second()),
        YarnPairs.of(colours * alike, (a, b) -> a / alike == b / alike));
    // colours may change their names: those of a largest clique are given beforehand
    List<Integer> clique =
        List.copyOf(new BronKerboschCliqueFinder<>(graph).maximumIterator().next());
    for (int i = 0; i < Math.min(clique.size(), colours); i++) {
      model.arithm(borders[clique.get(i)], "=", i * alike).post();
    }
    Solver solver = model.getSolver();
    solver.setSearch(Search.lastConflict(Search.domOverWDegSearch(borders)));
    solver.limitNode(MOST_NODES);
    return borders;
  }
}
