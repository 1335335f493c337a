package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.check.RuleId;
import lozengy.model.layout.PieceKind;
import lozengy.solver.explain.Finding.Slot;
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
    Finding finding = Finding.of(words(), slots, rules).withYarns(yarns);
    return supply.whole() ? finding : finding.withShortfall(shortfall());
  }

  private Shortfall shortfall() {
    Map<Integer, Long> gains = new TreeMap<>();
    yarns.stream()
        .forEach(
            yarn ->
                gains.put(
                    yarn, demand.up(Shortfall.ballMillimetres(demand.blanket(), yarn), yarn) + 1));
    return new Shortfall(missing(), gains);
  }

  /** The shortage as a sentence. */
  String words() {
    Blanket blanket = demand.blanket();
    Map<PieceKind, Map<Integer, List<Integer>>> rounds = new EnumMap<>(PieceKind.class);
    for (Demand.Group group : groups()) {
      rounds
          .computeIfAbsent(group.rounds().kind(), kind -> new TreeMap<>())
          .computeIfAbsent(group.rounds().round(), round -> new ArrayList<>())
          .addAll(group.pieces());
    }
    rounds.values().forEach(byRound -> byRound.values().forEach(pieces -> pieces.sort(null)));
    String what = Tell.rounds(blanket, rounds);
    return demand.inMillimetres() ? inMetres(blanket, what) : inParts(blanket, what);
  }

  private String inMetres(Blanket blanket, String what) {
    List<String> servers = new ArrayList<>();
    if (!yarns.isEmpty()) {
      long held = yarns.stream().mapToLong(yarn -> supply.yarns()[yarn]).sum();
      String most = supply.whole() ? "in whole rounds at most " : "";
      String all = yarns.cardinality() > 1 ? " in all" : "";
      String amount = most + Words.metres(held) + (supply.whole() ? "" : all);
      servers.add(named(blanket, yarns) + " (" + amount + fixedPart(blanket) + ")");
    }
    if (!bordersOnly.isEmpty()) {
      long held = bordersOnly.stream().mapToLong(yarn -> supply.borders()[yarn]).sum();
      servers.add(
          "%s (at most %s as borders, for borders on a seam differ)"
              .formatted(named(blanket, bordersOnly), Words.metres(held)));
    }
    return "%s: %s needed; only %s can serve: %s short"
        .formatted(
            what,
            Words.metres(groups().stream().mapToLong(Demand.Group::amount).sum()),
            Words.list(servers),
            Words.metres(missing()));
  }

  private String inParts(Blanket blanket, String what) {
    double need = groups().stream().mapToLong(Demand.Group::amount).sum();
    if (need <= missing()) {
      return "%s: only %s can serve, and nothing is left of %s%s"
          .formatted(
              what,
              named(blanket, all()),
              all().cardinality() == 1 ? "it" : "them",
              fixedPart(blanket));
    }
    double percent = 100 * need / (need - missing());
    return "%s: only %s can serve, and at least %s %% of what %s would be needed%s"
        .formatted(
            what,
            named(blanket, all()),
            // rounded so that it never seems to fit
            String.format(Locale.ROOT, "%.2f", Math.ceil(percent * 100) / 100),
            all().cardinality() == 1 ? "it can give" : "they can give",
            fixedPart(blanket));
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

  private BitSet all() {
    BitSet all = (BitSet) yarns.clone();
    all.or(bordersOnly);
    return all;
  }

  private static String named(Blanket blanket, BitSet yarns) {
    return Tell.yarnsOrTones(blanket, yarns.stream().boxed().toList());
  }

  private String fixedPart(Blanket blanket) {
    List<Integer> served = all().stream().boxed().toList();
    List<String> less = new ArrayList<>(Tell.uses(blanket, served));
    if (served.stream().anyMatch(y -> blanket.usableMillimetres(y) < blanket.stockMillimetres(y))) {
      less.add("what is kept back");
    }
    return less.isEmpty() ? "" : " after " + Words.list(less);
  }
}
