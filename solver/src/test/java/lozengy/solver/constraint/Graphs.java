package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntBinaryOperator;
import java.util.stream.IntStream;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Setting;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/** Graphs made by rule, families by the names of the table of chromatic numbers. */
final class Graphs {

  /** Whether two cells of a board, by the rows and columns between them, are a move apart. */
  private interface Move {
    boolean joins(int rows, int columns);
  }

  private Graphs() {}

  static Graph<Integer, DefaultEdge> of(String family, int... n) {
    return switch (family) {
      case "queen" -> board(n[0], n[0], (r, c) -> r == 0 || c == 0 || r == c);
      case "king" -> board(n[0], n[1], (r, c) -> r <= 1 && c <= 1);
      case "rook" -> board(n[0], n[1], (r, c) -> r == 0 || c == 0);
      case "bishop" -> board(n[0], n[0], (r, c) -> r == c);
      case "knight" -> board(n[0], n[0], (r, c) -> r * c == 2);
      case "grid" -> board(n[0], n[1], (r, c) -> r + c == 1);
      case "complete" -> circulant(n[0], IntStream.range(1, n[0]).toArray());
      case "cycle" -> circulant(n[0], 1);
      case "path" -> board(1, n[0], (r, c) -> c == 1);
      case "cycle_square" -> circulant(n[0], 1, 2);
      case "moebius_ladder" -> circulant(n[0], 1, n[0] / 2);
      case "paley" ->
          circulant(n[0], IntStream.range(1, n[0]).map(i -> i * i % n[0]).distinct().toArray());
      case "wheel" -> apex(circulant(n[0], 1));
      case "antiprism" -> circulant(2 * n[0], 1, 2);
      case "icosahedron" -> icosahedron();
      case "mycielski" -> mycielski(n[0]);
      case "kneser" -> kneser(n[0], n[1]);
      case "generalised_petersen" -> petersen(n[0], n[1]);
      case "hypercube" -> where(1 << n[0], (a, b) -> Integer.bitCount(a ^ b) == 1 ? 1 : 0);
      case "complete_multipartite" -> multipartite(n);
      case "crown" -> where(2 * n[0], (a, b) -> a % 2 != b % 2 && a / 2 != b / 2 ? 1 : 0);
      case "sudoku" -> sudoku(n[0]);
      case "onpoint_edge" -> onPoint(n[0], n[1], false);
      case "onpoint_edge_corner" -> onPoint(n[0], n[1], true);
      default -> throw new IllegalArgumentException(family);
    };
  }

  /** The edges of a graph, in the form of the seams of a layout. */
  static Pairs pairs(Graph<Integer, DefaultEdge> graph) {
    List<DefaultEdge> edges = List.copyOf(graph.edgeSet());
    return new Pairs(
        edges.stream().mapToInt(graph::getEdgeSource).toArray(),
        edges.stream().mapToInt(graph::getEdgeTarget).toArray());
  }

  private static Graph<Integer, DefaultEdge> empty(int vertices) {
    Graph<Integer, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    IntStream.range(0, vertices).forEach(graph::addVertex);
    return graph;
  }

  private static Graph<Integer, DefaultEdge> where(int vertices, IntBinaryOperator joined) {
    Graph<Integer, DefaultEdge> graph = empty(vertices);
    for (int b = 0; b < vertices; b++) {
      for (int a = 0; a < b; a++) {
        if (joined.applyAsInt(a, b) != 0) {
          graph.addEdge(a, b);
        }
      }
    }
    return graph;
  }

  private static Graph<Integer, DefaultEdge> board(int rows, int columns, Move move) {
    return where(
        rows * columns,
        (a, b) ->
            move.joins(Math.abs(a / columns - b / columns), Math.abs(a % columns - b % columns))
                ? 1
                : 0);
  }

  private static Graph<Integer, DefaultEdge> circulant(int vertices, int... offsets) {
    Graph<Integer, DefaultEdge> graph = empty(vertices);
    for (int a = 0; a < vertices; a++) {
      for (int offset : offsets) {
        graph.addEdge(a, (a + offset) % vertices);
      }
    }
    return graph;
  }

  private static Graph<Integer, DefaultEdge> apex(Graph<Integer, DefaultEdge> rim) {
    int hub = rim.vertexSet().size();
    rim.addVertex(hub);
    IntStream.range(0, hub).forEach(vertex -> rim.addEdge(hub, vertex));
    return rim;
  }

  private static Graph<Integer, DefaultEdge> icosahedron() {
    // an antiprism on five corners: the even vertices are one face, the odd ones the other
    Graph<Integer, DefaultEdge> graph = circulant(10, 1, 2);
    for (int apex = 10; apex < 12; apex++) {
      graph.addVertex(apex);
      for (int vertex = apex % 2; vertex < 10; vertex += 2) {
        graph.addEdge(apex, vertex);
      }
    }
    return graph;
  }

  private static Graph<Integer, DefaultEdge> mycielski(int times) {
    Graph<Integer, DefaultEdge> graph = circulant(2, 1);
    for (int i = 0; i < times; i++) {
      int size = graph.vertexSet().size();
      Graph<Integer, DefaultEdge> bigger = empty(2 * size + 1);
      for (DefaultEdge edge : graph.edgeSet()) {
        int a = graph.getEdgeSource(edge);
        int b = graph.getEdgeTarget(edge);
        bigger.addEdge(a, b);
        bigger.addEdge(a, size + b);
        bigger.addEdge(b, size + a);
      }
      IntStream.range(0, size).forEach(vertex -> bigger.addEdge(size + vertex, 2 * size));
      graph = bigger;
    }
    return graph;
  }

  private static Graph<Integer, DefaultEdge> kneser(int n, int k) {
    int[] sets = IntStream.range(0, 1 << n).filter(set -> Integer.bitCount(set) == k).toArray();
    return where(sets.length, (a, b) -> (sets[a] & sets[b]) == 0 ? 1 : 0);
  }

  private static Graph<Integer, DefaultEdge> petersen(int n, int k) {
    Graph<Integer, DefaultEdge> graph = empty(2 * n);
    for (int i = 0; i < n; i++) {
      graph.addEdge(i, (i + 1) % n);
      graph.addEdge(i, n + i);
      graph.addEdge(n + i, n + (i + k) % n);
    }
    return graph;
  }

  private static Graph<Integer, DefaultEdge> multipartite(int... parts) {
    List<Integer> partOf = new ArrayList<>();
    for (int part = 0; part < parts.length; part++) {
      for (int i = 0; i < parts[part]; i++) {
        partOf.add(part);
      }
    }
    return where(partOf.size(), (a, b) -> partOf.get(a).equals(partOf.get(b)) ? 0 : 1);
  }

  private static Graph<Integer, DefaultEdge> sudoku(int block) {
    int size = block * block;
    return where(
        size * size,
        (a, b) -> {
          boolean line = a / size == b / size || a % size == b % size;
          boolean sameBand = a / size / block == b / size / block;
          boolean sameStack = a % size / block == b % size / block;
          return line || sameBand && sameStack ? 1 : 0;
        });
  }

  private static Graph<Integer, DefaultEdge> onPoint(int across, int down, boolean touches) {
    Layout layout = Layout.of(new LayoutSize(Setting.ON_POINT, across, down, true, true));
    Graph<Integer, DefaultEdge> graph = empty(layout.places().size());
    for (Pairs pairs :
        touches ? List.of(layout.seams(), layout.touches()) : List.of(layout.seams())) {
      for (int i = 0; i < pairs.size(); i++) {
        graph.addEdge(pairs.first()[i], pairs.second()[i]);
      }
    }
    return graph;
  }
}
