package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;
import lozengy.model.layout.Pairs;
import lozengy.solver.explain.Finding.Slot;

/**
 * What a symmetry cannot do: two pieces on a seam that are each other's images would have the same
 * border; and images that share no yarn for a round.
 */
final class StuckImages implements Argument {

  @Override
  public List<Finding> findings(Asked asked) {
    Blanket blanket = asked.blanket();
    if (!blanket.orbits().any() || !asked.rules().contains(RuleId.SYMMETRY)) {
      return List.of();
    }
    String word = blanket.brief().look().symmetry().word();
    List<Finding> findings = new ArrayList<>();
    if (asked.bordersDiffer()) {
      seams(blanket, word, findings);
    }
    for (int lead : blanket.orbits().leads()) {
      int[] members = blanket.orbits().members(lead);
      for (int round = 0; members.length > 1 && round < asked.direct().rounds(lead); round++) {
        if (shareNone(asked.direct(), members, round)) {
          findings.add(shareNone(blanket, word, members, round));
        }
      }
    }
    return findings;
  }

  private static void seams(Blanket blanket, String word, List<Finding> findings) {
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int lead = blanket.orbits().lead(first);
      boolean images = lead == blanket.orbits().lead(second);
      if (images
          && blanket.state(lead) == PieceState.PLANNED
          && !blanket.bordersMayMatch(first, second)) {
        String words =
            "%s and %s are joined along a side across the middle and are each other's images (%s),"
                + " so both would have the same border";
        findings.add(
            Finding.of(
                words.formatted(Words.piece(blanket, first), Words.piece(blanket, second), word),
                List.of(),
                RuleId.SYMMETRY,
                RuleId.NEIGHBOUR_BORDERS));
      }
    }
  }

  private static Finding shareNone(Blanket blanket, String word, int[] members, int round) {
    List<Integer> pieces = IntStream.of(members).boxed().toList();
    String words =
        "%s are each other's images (%s), and no yarn may be %s of %s"
            .formatted(
                Words.pieces(blanket, pieces),
                word,
                Words.round(blanket, members[0], round),
                members.length == 2 ? "both" : "them all");
    List<Slot> slots = pieces.stream().map(piece -> new Slot(piece, round)).toList();
    return Finding.of(words, slots, RuleId.SYMMETRY);
  }

  /** Whether each may take some yarn, but all together none. */
  private static boolean shareNone(RoundYarns direct, int[] members, int round) {
    return IntStream.of(members).allMatch(piece -> direct.size(piece, round) > 0)
        && IntStream.range(0, direct.yarns())
            .noneMatch(
                yarn -> IntStream.of(members).allMatch(piece -> direct.allows(piece, round, yarn)));
  }
}
