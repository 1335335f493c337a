package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.brief.PieceState;
import lozengy.model.check.ClashGraph;
import lozengy.model.check.RuleId;
import lozengy.model.check.YarnPairs;
import lozengy.solver.explain.argument.Finding.Slot;

/** Planned pieces whose rounds clash whatever they take. */
final class StuckPieces implements Argument {

  /** Rounds up to which all sets of rounds are looked at. */
  private static final int MOST_ROUNDS = 12;

  @Override
  public int fewestOpen(Blanket blanket, Finding finding) {
    return (int) finding.slots().stream().map(Slot::piece).distinct().count();
  }

  @Override
  public List<Finding> findings(Requirements asked) {
    Blanket blanket = asked.blanket();
    RuleId[] rules = asked.clashRules(true);
    if (rules.length == 0) {
      return List.of();
    }
    Map<PieceSort, List<Integer>> alike = new LinkedHashMap<>();
    IntStream.range(0, blanket.pieceCount())
        .filter(
            piece ->
                blanket.state(piece) == PieceState.PLANNED && !blanket.domains().takesPile(piece))
        .forEach(
            piece ->
                alike
                    .computeIfAbsent(PieceSort.of(asked, piece), s -> new ArrayList<>())
                    .add(piece));
    List<Finding> findings = new ArrayList<>();
    alike.forEach(
        (sort, pieces) -> {
          TreeSet<Integer> stuck = stuck(asked, pieces.get(0), sort.yarns());
          if (!stuck.isEmpty()) {
            List<Slot> slots = new ArrayList<>();
            pieces.forEach(piece -> stuck.forEach(round -> slots.add(new Slot(piece, round))));
            List<Integer> all = List.copyOf(union(sort.yarns(), stuck));
            Reason reason =
                new RoundReason.RoundsAlike(
                    List.copyOf(pieces),
                    List.copyOf(stuck),
                    blanket.brief().rules().withinPiece(),
                    all.size() >= stuck.size(),
                    all);
            findings.add(Finding.of(reason, slots, rules));
          }
        });
    return findings;
  }

  /** Two rounds of a piece that clash whatever they take, or more that have too few yarns. */
  private static TreeSet<Integer> stuck(Requirements asked, int piece, List<List<Integer>> yarns) {
    RoundIndex index = asked.blanket().index();
    ClashGraph clashes = asked.clashes();
    int[] differ = new int[MOST_ROUNDS];
    for (int number = index.centre(piece); number <= index.border(piece); number++) {
      for (int entry = clashes.from(number); entry < clashes.to(number); entry++) {
        int other = clashes.other(entry);
        if (other >= number || index.piece(other) != piece) {
          continue;
        }
        int round = index.round(number);
        int with = index.round(other);
        if (asked.stuck(number, entry)) {
          return new TreeSet<>(List.of(with, round));
        }
        YarnPairs barred = clashes.barred(entry);
        boolean same = yarns.get(round).stream().allMatch(yarn -> barred.bars(yarn, yarn));
        if (same && round < MOST_ROUNDS) {
          differ[round] |= 1 << with;
          differ[with] |= 1 << round;
        }
      }
    }
    return tooFew(yarns, differ);
  }

  /**
   * A smallest set of rounds of which no two may have the same yarn, with fewer yarns than rounds
   * (Hall 1935); none if there is none, or if a round has none, which is told elsewhere.
   */
  private static TreeSet<Integer> tooFew(List<List<Integer>> yarns, int[] differ) {
    int best = 0;
    int rounds = Math.min(yarns.size(), MOST_ROUNDS);
    boolean any = yarns.stream().noneMatch(List::isEmpty);
    for (int set = 1; any && set < 1 << rounds; set++) {
      boolean smaller = best == 0 || Integer.bitCount(set) < Integer.bitCount(best);
      if (smaller
          && allDiffer(set, differ)
          && union(yarns, rounds(set)).size() < Integer.bitCount(set)) {
        best = set;
      }
    }
    return rounds(best);
  }

  private static boolean allDiffer(int set, int[] differ) {
    for (int left = set; left != 0; left &= left - 1) {
      int round = Integer.numberOfTrailingZeros(left);
      if ((set & ~(differ[round] | 1 << round)) != 0) {
        return false;
      }
    }
    return true;
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
