package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.check.RuleId;
import lozengy.model.layout.Pairs;
import lozengy.solver.constraint.Domains;

/**
 * What a symmetry cannot do: two pieces on a seam that are each other's images would have the same
 * border; and images that share no yarn for a round.
 */
final class StuckImages implements WholeArgument {

  @Override
  public Set<RuleId> rules() {
    return EnumSet.of(
        RuleId.SYMMETRY,
        RuleId.NEIGHBOUR_BORDERS,
        RuleId.LOCKS,
        RuleId.BANS,
        RuleId.TONES,
        RuleId.ZONES,
        RuleId.BORDERS);
  }

  @Override
  public List<String> reasons(Blanket blanket, Domains direct) {
    if (!blanket.orbits().any()) {
      return List.of();
    }
    List<String> reasons = new ArrayList<>();
    String word = blanket.brief().look().symmetry().word();
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      boolean images = blanket.orbits().lead(first) == blanket.orbits().lead(second);
      if (images && !blanket.bordersMayMatch(first, second)) {
        reasons.add(
            ("%s and %s are joined along a side across the middle and are each other's images (%s),"
                    + " so both would have the same border")
                .formatted(Words.piece(blanket, first), Words.piece(blanket, second), word));
      }
    }
    for (int lead : blanket.orbits().leads()) {
      int[] members = blanket.orbits().members(lead);
      for (int round = 0; members.length > 1 && round < direct.rounds(lead); round++) {
        if (shareNone(direct, members, round)) {
          reasons.add(
              "%s are each other's images (%s), and no yarn may be %s of them all"
                  .formatted(
                      Words.pieces(blanket, IntStream.of(members).boxed().toList()),
                      word,
                      Words.round(blanket, lead, round)));
        }
      }
    }
    return reasons;
  }

  /** Whether each may take some yarn, but all together none. */
  private static boolean shareNone(Domains direct, int[] members, int round) {
    return IntStream.of(members).allMatch(piece -> direct.size(piece, round) > 0)
        && IntStream.range(0, direct.yarns())
            .noneMatch(
                yarn -> IntStream.of(members).allMatch(piece -> direct.allows(piece, round, yarn)));
  }
}
