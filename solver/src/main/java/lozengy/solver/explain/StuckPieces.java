package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.RuleId;
import lozengy.solver.constraint.Domains;
import lozengy.solver.explain.Finding.Slot;

/** Planned pieces whose rounds cannot differ as the rule within a piece asks. */
final class StuckPieces implements Argument {

  /** Rounds up to which all sets of rounds are looked at. */
  private static final int MOST_ROUNDS = 12;

  @Override
  public int fewestOpen(Blanket blanket, Finding finding) {
    return (int) finding.slots().stream().map(Slot::piece).distinct().count();
  }

  @Override
  public List<Finding> findings(Asked asked) {
    Blanket blanket = asked.blanket();
    WithinPiece within = asked.withinPiece();
    if (within == WithinPiece.FREE) {
      return List.of();
    }
    Map<List<List<Integer>>, List<Integer>> alike = new LinkedHashMap<>();
    IntStream.range(0, blanket.pieceCount())
        .filter(piece -> blanket.state(piece) == PieceState.PLANNED && !blanket.takesPile(piece))
        .forEach(
            piece ->
                alike
                    .computeIfAbsent(yarns(asked.direct(), piece), y -> new ArrayList<>())
                    .add(piece));
    List<Finding> findings = new ArrayList<>();
    alike.forEach(
        (yarns, pieces) -> {
          TreeSet<Integer> stuck =
              within == WithinPiece.ALL_DIFFER ? tooFew(yarns) : sameNeighbours(yarns);
          if (!stuck.isEmpty()) {
            List<Slot> slots = new ArrayList<>();
            pieces.forEach(piece -> stuck.forEach(round -> slots.add(new Slot(piece, round))));
            List<Integer> all = List.copyOf(union(yarns, stuck));
            Reason reason =
                new Reason.RoundsAlike(List.copyOf(pieces), List.copyOf(stuck), within, all);
            findings.add(Finding.of(reason, slots, RuleId.WITHIN_PIECE));
          }
        });
    return findings;
  }

  private static List<List<Integer>> yarns(Domains direct, int piece) {
    return IntStream.range(0, direct.rounds(piece))
        .mapToObj(round -> IntStream.of(direct.yarnsOf(piece, round)).boxed().toList())
        .toList();
  }

  /** Neighbouring rounds with one and the same yarn; none if there are none. */
  private static TreeSet<Integer> sameNeighbours(List<List<Integer>> yarns) {
    for (int round = 1; round < yarns.size(); round++) {
      if (yarns.get(round).size() == 1 && yarns.get(round).equals(yarns.get(round - 1))) {
        return new TreeSet<>(List.of(round - 1, round));
      }
    }
    return new TreeSet<>();
  }

  /** A smallest set of rounds with fewer yarns than rounds (Hall 1935); none if there is none. */
  private static TreeSet<Integer> tooFew(List<List<Integer>> yarns) {
    int best = 0;
    int rounds = Math.min(yarns.size(), MOST_ROUNDS);
    for (int set = 1; set < 1 << rounds; set++) {
      boolean smaller = best == 0 || Integer.bitCount(set) < Integer.bitCount(best);
      if (smaller && union(yarns, rounds(set)).size() < Integer.bitCount(set)) {
        best = set;
      }
    }
    TreeSet<Integer> found = rounds(best);
    // an empty round is told elsewhere
    return union(yarns, found).isEmpty() ? new TreeSet<>() : found;
  }

  private static TreeSet<Integer> rounds(int set) {
    TreeSet<Integer> rounds = new TreeSet<>();
    IntStream.range(0, MOST_ROUNDS).filter(r -> (set >> r & 1) != 0).forEach(rounds::add);
    return rounds;
  }

  private static TreeSet<Integer> union(List<List<Integer>> yarns, TreeSet<Integer> rounds) {
    TreeSet<Integer> union = new TreeSet<>();
    rounds.forEach(round -> union.addAll(yarns.get(round)));
    return union;
  }
}
