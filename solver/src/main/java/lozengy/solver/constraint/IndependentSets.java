package lozengy.solver.constraint;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import lozengy.model.layout.Pairs;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.jgrapht.graph.SimpleGraph;
import org.jgrapht.traverse.BreadthFirstIterator;

/**
 * Heaviest sets of pieces of which no two share a seam. In a bipartite graph their weight is the
 * whole weight less that of a lightest vertex cover, which is a maximum flow (König 1931, with
 * weights).
 */
public final class IndependentSets {

  private IndependentSets() {}

  /**
   * {@return the weight of a heaviest independent set: exact for a bipartite graph, else the whole
   * weight, which no set exceeds; never less than any set weighs} One maximum flow over the pieces
   * with a weight.
   *
   * @param seams pairs of pieces that share a seam
   * @param weights weight by piece, 0 or more, 0 for one that may not be taken; their sum at most
   *     2^53
   */
  public static long heaviest(Pairs seams, long[] weights) {
    long all = LongStream.of(weights).sum();
    Graph<Integer, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    for (int i = 0; i < seams.size(); i++) {
      int first = seams.first()[i];
      int second = seams.second()[i];
      if (weights[first] > 0 && weights[second] > 0) {
        graph.addVertex(first);
        graph.addVertex(second);
        graph.addEdge(first, second);
      }
    }
    Set<Integer> left = evenDepths(graph);
    boolean bipartite =
        graph.edgeSet().stream()
            .allMatch(
                edge ->
                    left.contains(graph.getEdgeSource(edge))
                        != left.contains(graph.getEdgeTarget(edge)));
    if (!bipartite) {
      return all;
    }
    return all - packed(graph, left, weights);
  }

  /** The pieces at even depths of a walk in breadth: one side, if the graph is bipartite. */
  private static Set<Integer> evenDepths(Graph<Integer, DefaultEdge> graph) {
    Set<Integer> even = new HashSet<>();
    BreadthFirstIterator<Integer, DefaultEdge> walk = new BreadthFirstIterator<>(graph);
    while (walk.hasNext()) {
      int piece = walk.next();
      if (walk.getDepth(piece) % 2 == 0) {
        even.add(piece);
      }
    }
    return even;
  }

  /** The size of a packing of the seams: a flow on each, at no piece more than its weight. */
  private static long packed(Graph<Integer, DefaultEdge> graph, Set<Integer> left, long[] weights) {
    Graph<Integer, DefaultWeightedEdge> network =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    int source = -1;
    int sink = -2;
    network.addVertex(source);
    network.addVertex(sink);
    for (int piece : graph.vertexSet()) {
      network.addVertex(piece);
      DefaultWeightedEdge arc =
          left.contains(piece) ? network.addEdge(source, piece) : network.addEdge(piece, sink);
      network.setEdgeWeight(arc, weights[piece]);
    }
    for (DefaultEdge edge : graph.edgeSet()) {
      int a = graph.getEdgeSource(edge);
      int b = graph.getEdgeTarget(edge);
      DefaultWeightedEdge arc = left.contains(a) ? network.addEdge(a, b) : network.addEdge(b, a);
      network.setEdgeWeight(arc, Math.min(weights[a], weights[b]));
    }
    long[] room = weights.clone();
    long packed = 0;
    Map<DefaultWeightedEdge, Double> flow =
        new PushRelabelMFImpl<>(network).getMaximumFlow(source, sink).getFlowMap();
    for (Map.Entry<DefaultWeightedEdge, Double> arc : flow.entrySet()) {
      int from = network.getEdgeSource(arc.getKey());
      int to = network.getEdgeTarget(arc.getKey());
      if (from >= 0 && to >= 0) {
        // counted again in whole numbers, so that the bound holds whatever the flow is worth
        long taken = Math.min(Math.round(arc.getValue()), Math.min(room[from], room[to]));
        room[from] -= taken;
        room[to] -= taken;
        packed += taken;
      }
    }
    return packed;
  }
}
