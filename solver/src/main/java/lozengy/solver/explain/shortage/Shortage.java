package lozengy.solver.explain.shortage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lozengy.model.check.RuleId;
import lozengy.model.layout.PieceKind;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Finding.Slot;
import lozengy.solver.explain.argument.Reason;
import lozengy.solver.explain.argument.Shortfall;
import lozengy.solver.explain.argument.StockReason.YarnShort;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/**
 * Yarns that are held against all rounds that can be worked in nothing else.
 *
 * @param demand what the rounds take
 * @param supply what the yarns can give
 * @param yarns the yarns whose whole supply counts
 * @param bordersOnly further yarns that may serve borders, and only that part of them counts
 */
record Shortage(Demand demand, Supply supply, BitSet yarns, BitSet bordersOnly) {

  /** The same without a yarn. */
  Shortage without(int yarn) {
    BitSet fewer = (BitSet) yarns.clone();
    BitSet fewerBorders = (BitSet) bordersOnly.clone();
    fewer.clear(yarn);
    fewerBorders.clear(yarn);
    return new Shortage(demand, supply, fewer, fewerBorders);
  }

  /** The rounds that can take no yarn beyond these. */
  private List<Demand.Group> groups() {
    BitSet both = (BitSet) yarns.clone();
    both.or(bordersOnly);
    List<Demand.Group> groups = new ArrayList<>();
    for (Demand.Group group : demand.groups()) {
      BitSet others = (BitSet) group.yarns().clone();
      others.andNot(demand.border(group) ? both : yarns);
      if (others.isEmpty()) {
        groups.add(group);
      }
    }
    return groups;
  }

  /** By how much the yarns fall short of what the rounds take; not above 0 if they do not. */
  long missing() {
    long missing = groups().stream().mapToLong(Demand.Group::amount).sum();
    missing -= yarns.stream().mapToLong(yarn -> supply.yarns()[yarn]).sum();
    missing -= bordersOnly.stream().mapToLong(yarn -> supply.borders()[yarn]).sum();
    return missing;
  }

  /**
   * The shortage as a finding.
   *
   * @param withBorderLimits whether it counts on borders that differ
   */
  Finding finding(boolean withBorderLimits) {
    List<Slot> slots = new ArrayList<>();
    for (Demand.Group group : groups()) {
      group.pieces().forEach(piece -> slots.add(new Slot(piece, group.rounds().round())));
    }
    RuleId[] rules =
        withBorderLimits && !bordersOnly.isEmpty()
            ? new RuleId[] {RuleId.NEIGHBOUR_BORDERS}
            : new RuleId[0];
    Finding finding = Finding.of(reason(), slots, rules).withYarns(yarns);
    return supply.whole() ? finding : finding.withShortfall(shortfall());
  }

  private Shortfall shortfall() {
    Map<Integer, Long> gains = new TreeMap<>();
    yarns.stream()
        .filter(yarn -> !demand.blanket().yarn(yarn).gone())
        .forEach(
            yarn ->
                gains.put(
                    yarn, demand.up(Shortfall.ballMillimetres(demand.blanket(), yarn), yarn) + 1));
    return new Shortfall(missing(), gains);
  }

  private Reason reason() {
    Map<PieceKind, Map<Integer, List<Integer>>> served = new EnumMap<>(PieceKind.class);
    for (Demand.Group group : groups()) {
      served
          .computeIfAbsent(group.rounds().kind(), kind -> new TreeMap<>())
          .computeIfAbsent(group.rounds().round(), round -> new ArrayList<>())
          .addAll(group.pieces());
    }
    served.values().forEach(byRound -> byRound.values().forEach(pieces -> pieces.sort(null)));
    long needed = groups().stream().mapToLong(Demand.Group::amount).sum();
    Optional<YarnShort.Amounts> amounts =
        demand.inMillimetres()
            ? Optional.of(
                new YarnShort.Amounts(
                    needed,
                    yarns.stream().mapToLong(yarn -> supply.yarns()[yarn]).sum(),
                    bordersOnly.stream().mapToLong(yarn -> supply.borders()[yarn]).sum(),
                    missing()))
            : Optional.empty();
    // infinite where there is nothing at all
    double percent = 100 * (double) needed / ((double) needed - missing());
    return new YarnShort(
        served,
        yarns.stream().boxed().toList(),
        bordersOnly.stream().boxed().toList(),
        supply.whole(),
        amounts,
        percent);
  }

  /** The parts that have no yarn in common, with only the yarns that their rounds may take. */
  List<Shortage> parts() {
    // yarns are 0, 1, 2 …, groups of rounds -1, -2, …
    Graph<Integer, DefaultEdge> serve = new SimpleGraph<>(DefaultEdge.class);
    List<Demand.Group> groups = groups();
    for (int g = 0; g < groups.size(); g++) {
      int vertex = -1 - g;
      serve.addVertex(vertex);
      groups.get(g).yarns().stream()
          .forEach(
              yarn -> {
                serve.addVertex(yarn);
                serve.addEdge(vertex, yarn);
              });
    }
    List<Shortage> parts = new ArrayList<>();
    for (Set<Integer> part : new ConnectivityInspector<>(serve).connectedSets()) {
      BitSet inPart = new BitSet();
      part.stream().filter(vertex -> vertex >= 0).forEach(inPart::set);
      BitSet whole = (BitSet) inPart.clone();
      whole.and(yarns);
      inPart.and(bordersOnly);
      parts.add(new Shortage(demand, supply, whole, inPart));
    }
    return parts;
  }
}
