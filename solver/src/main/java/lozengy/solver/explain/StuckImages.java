package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Symmetry;
import lozengy.model.check.RuleId;
import lozengy.model.layout.Pairs;
import lozengy.solver.constraint.Domains;
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
    Symmetry symmetry = blanket.brief().look().symmetry();
    List<Finding> findings = new ArrayList<>();
    if (asked.bordersDiffer()) {
      seams(blanket, symmetry, findings);
    }
    for (int lead : blanket.orbits().leads()) {
      int[] members = blanket.orbits().members(lead);
      for (int round = 0; members.length > 1 && round < asked.direct().rounds(lead); round++) {
        if (shareNone(asked.direct(), members, round)) {
          findings.add(shareNone(symmetry, members, round));
        }
      }
    }
    return findings;
  }

  private static void seams(Blanket blanket, Symmetry symmetry, List<Finding> findings) {
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int lead = blanket.orbits().lead(first);
      boolean images = lead == blanket.orbits().lead(second);
      if (images
          && blanket.state(lead) == PieceState.PLANNED
          && !blanket.bordersMayMatch(first, second)) {
        findings.add(
            Finding.of(
                new Reason.ImagesJoined(List.of(first, second), symmetry),
                List.of(),
                RuleId.SYMMETRY,
                RuleId.NEIGHBOUR_BORDERS));
      }
    }
  }

  private static Finding shareNone(Symmetry symmetry, int[] members, int round) {
    List<Integer> pieces = IntStream.of(members).boxed().toList();
    List<Slot> slots = pieces.stream().map(piece -> new Slot(piece, round)).toList();
    return Finding.of(new Reason.ImagesShareNone(pieces, round, symmetry), slots, RuleId.SYMMETRY);
  }

  /** Whether each may take some yarn, but all together none. */
  private static boolean shareNone(Domains direct, int[] members, int round) {
    return IntStream.of(members).allMatch(piece -> direct.size(piece, round) > 0)
        && IntStream.range(0, direct.yarns())
            .noneMatch(
                yarn -> IntStream.of(members).allMatch(piece -> direct.allows(piece, round, yarn)));
  }
}
