package lozengy.solver.explain;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.check.RuleId;
import lozengy.solver.constraint.Domains;
import lozengy.solver.problem.PileMatching;

/** Pieces of the pile that locks leave too few places between them. */
final class PileLocks implements WholeArgument {

  @Override
  public Set<RuleId> rules() {
    return EnumSet.of(
        RuleId.PILE, RuleId.LOCKS, RuleId.BANS, RuleId.TONES, RuleId.ZONES, RuleId.BORDERS);
  }

  @Override
  public List<String> reasons(Blanket blanket, Domains direct) {
    if (blanket.pile().isEmpty()) {
      return List.of();
    }
    PileMatching.Result matching = PileMatching.of(blanket);
    if (matching.complete()) {
      return List.of();
    }
    if (!matching.unfilled().isEmpty()) {
      return List.of(
          "%s can only take finished pieces, for lock, tones and bans leave a round no yarn, and the"
                  .formatted(Words.pieces(blanket, matching.unfilled()))
              + " pile has too few that fit");
    }
    List<String> sorts =
        matching.tooMany().stream().map(stack -> TellPile.stack(blanket, stack)).toList();
    String where =
        matching.places().isEmpty()
            ? "no place that is not worked yet; locks keep them out"
            : "only %s; locks keep them out of other places"
                .formatted(Words.pieces(blanket, matching.places()));
    return List.of("the pile's %s can lie at %s".formatted(Words.list(sorts), where));
  }
}
