package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;
import lozengy.solver.constraint.SequenceLister;
import lozengy.solver.explain.argument.Finding.Slot;

/** More planned pieces than their rounds allow sequences, where copies are limited. */
final class FewSequences implements Argument {

  /** Sorts of pieces up to which each is held against each. */
  private static final int MOST_COMPARED = 300;

  @Override
  public List<Finding> findings(Requirements asked) {
    Blanket blanket = asked.blanket();
    RoundYarns direct = asked.direct();
    if (asked.copies().isEmpty()) {
      return List.of();
    }
    int allowed = asked.copies().getAsInt();
    Map<PieceSort, List<Integer>> alike = new LinkedHashMap<>();
    Map<List<Integer>, Integer> worked = new HashMap<>();
    for (int piece : blanket.orbits().leads()) {
      if (blanket.domains().takesPile(piece)) {
        continue;
      }
      int fact = blanket.orbits().worked(piece);
      if (fact < 0) {
        alike.computeIfAbsent(PieceSort.of(asked, piece), s -> new ArrayList<>()).add(piece);
      } else {
        worked.merge(worked(direct, fact), 1, Integer::sum);
      }
    }
    boolean few = alike.size() <= MOST_COMPARED;
    List<Finding> findings = new ArrayList<>();
    for (PieceSort sort : alike.keySet()) {
      if (sort.yarns().contains(List.<Integer>of())) {
        // an empty round is told elsewhere
        continue;
      }
      SequenceLister.Within within = within(asked, alike.get(sort).get(0));
      List<Integer> pieces = new ArrayList<>();
      alike.forEach(
          (narrower, with) -> {
            if (narrower == sort || few && narrower.within(sort)) {
              pieces.addAll(with);
            }
          });
      int room = room(within, sort.yarns(), allowed, worked, pieces.size());
      if (room < pieces.size()) {
        pieces.sort(null);
        Reason reason =
            new CountReason.TooFewSequences(List.copyOf(pieces), allowed, room, !worked.isEmpty());
        findings.add(Finding.of(reason, slots(blanket, pieces), rules(asked)));
      }
    }
    return findings;
  }

  private static RuleId[] rules(Requirements asked) {
    return Stream.concat(Stream.of(RuleId.COPIES), Stream.of(asked.clashRules(true)))
        .toArray(RuleId[]::new);
  }

  /** All rounds of the pieces, and of what is worked already. */
  private static List<Slot> slots(Blanket blanket, List<Integer> pieces) {
    List<Slot> slots = new ArrayList<>();
    Set<Integer> concerned = new HashSet<>(pieces);
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      if (blanket.state(piece) != PieceState.PLANNED || concerned.contains(piece)) {
        for (int round = 0; round < blanket.roundCount(piece); round++) {
          slots.add(new Slot(piece, round));
        }
      }
    }
    return slots;
  }

  /** A worked piece's sequence, with open rounds where nothing is known of them. */
  private static List<Integer> worked(RoundYarns direct, int piece) {
    return IntStream.range(0, direct.rounds(piece))
        .mapToObj(round -> direct.only(piece, round))
        .toList();
  }

  private static SequenceLister.Within within(Requirements asked, int piece) {
    int centre = asked.blanket().index().centre(piece);
    return (round, yarn, other, otherYarn) ->
        asked.clashes().bars(centre + round, yarn, centre + other, otherYarn);
  }

  /** How many planned pieces find a sequence among these; at least {@code enough} if so many do. */
  private static int room(
      SequenceLister.Within within,
      List<List<Integer>> yarns,
      int allowed,
      Map<List<Integer>, Integer> worked,
      int enough) {
    int[][] rounds =
        yarns.stream()
            .map(round -> round.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
    int mostListed = enough + worked.size();
    long room = 0;
    for (List<Integer> sequence : SequenceLister.list(rounds, within, mostListed)) {
      room += Math.max(0, allowed - worked.getOrDefault(sequence, 0));
    }
    return (int) Math.min(room, enough);
  }
}
