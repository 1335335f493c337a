package lozengy.solver.explain.shortage;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * A minimum cut of the network source, groups of rounds, (yarns as borders,) yarns, sink: the
 * groups on the source's side are short of yarn if the cut is smaller than the demand.
 */
final class Cut {

  private static final int SOURCE = -1;
  private static final int SINK = -2;

  private final Demand demand;
  private final Supply supply;
  private final BitSet endless;
  private final Graph<Integer, DefaultWeightedEdge> network =
      new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);

  /**
   * Sets up a network.
   *
   * @param endless yarns to be taken for endless
   */
  Cut(Demand demand, Supply supply, BitSet endless) {
    this.demand = demand;
    this.supply = supply;
    this.endless = endless;
  }

  /** A set of rounds that is short of yarn, none of its yarns to spare; null if there is none. */
  Shortage find() {
    int yarns = demand.yarns();
    long total = demand.total();
    network.addVertex(SOURCE);
    network.addVertex(SINK);
    for (int yarn = 0; yarn < yarns; yarn++) {
      // a yarn is its number, the yarn as border comes behind all yarns
      arc(yarn, SINK, endless.get(yarn) ? total : supply.yarns()[yarn]);
      arc(yarns + yarn, yarn, endless.get(yarn) ? total : supply.borders()[yarn]);
    }
    List<Demand.Group> groups = demand.groups();
    for (int g = 0; g < groups.size(); g++) {
      int vertex = 2 * yarns + g;
      Demand.Group group = groups.get(g);
      arc(SOURCE, vertex, group.amount());
      int first = demand.border(group) ? yarns : 0;
      group.yarns().stream().forEach(yarn -> arc(vertex, first + yarn, total));
    }
    PushRelabelMFImpl<Integer, DefaultWeightedEdge> flow = new PushRelabelMFImpl<>(network);
    if (Math.round(flow.calculateMinCut(SOURCE, SINK)) >= total) {
      return null;
    }
    Set<Integer> side = flow.getSourcePartition();
    BitSet whole = new BitSet();
    BitSet bordersOnly = new BitSet();
    for (int yarn = 0; yarn < yarns; yarn++) {
      if (!endless.get(yarn)) {
        whole.set(yarn, side.contains(yarn));
        bordersOnly.set(yarn, side.contains(yarns + yarn) && !side.contains(yarn));
      }
    }
    return smallest(new Shortage(demand, supply, whole, bordersOnly));
  }

  private void arc(int from, int to, long capacity) {
    network.addVertex(from);
    network.addVertex(to);
    network.setEdgeWeight(network.addEdge(from, to), capacity);
  }

  /** Leaves out what it can as long as the rest is still short; null if it is not short at all. */
  private static Shortage smallest(Shortage start) {
    Shortage best = null;
    for (Shortage part : start.parts()) {
      best = best == null && part.missing() > 0 ? part : best;
    }
    if (best == null) {
      return null;
    }
    BitSet yarns = (BitSet) best.yarns().clone();
    yarns.or(best.bordersOnly());
    for (int yarn = yarns.length() - 1; yarn >= 0; yarn--) {
      Shortage without = yarns.get(yarn) ? smallest(best.without(yarn)) : null;
      if (without != null) {
        return without;
      }
    }
    return best;
  }
}
