package lozengy.solver.explain;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.PileMatching;
import lozengy.model.blanket.Words;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;

/** Pieces of the pile that locks leave too few places between them. */
final class PileLocks implements Argument {

  /** The pile's places as some lines of a brief leave them. */
  private record Places(Asked asked, RoundYarns held, RoundYarns worked) implements PileMatching.Places {

    @Override
    public int count(Stack stack) {
      return asked.paths().contains(stack.path()) ? stack.count() : 0;
    }

    @Override
    public boolean fits(Stack stack, int piece) {
      return PileLocks.fits(asked, held, stack, piece);
    }

    @Override
    public boolean takesAny(int piece) {
      for (int round = 0; round < held.rounds(piece); round++) {
        if (held.size(piece, round) < held.yarns()) {
          return false;
        }
      }
      return true;
    }

    @Override
    public boolean takesNew(int piece) {
      for (int round = 0; round < worked.rounds(piece); round++) {
        if (worked.size(piece, round) == 0) {
          return false;
        }
      }
      return true;
    }
  }

  /** Whether a piece of a stack may lie at a place: kind and locks allow it. */
  static boolean fits(Asked asked, RoundYarns held, Stack stack, int piece) {
    boolean fits = asked.blanket().takesPile(piece) && asked.blanket().kind(piece) == stack.kind();
    for (int round = 0; fits && round < stack.yarns().length; round++) {
      fits = held.allows(piece, round, stack.yarns()[round]);
    }
    return fits;
  }

  @Override
  public List<Finding> findings(Asked asked) {
    Blanket blanket = asked.blanket();
    if (asked.stacks().isEmpty()) {
      return List.of();
    }
    PileMatching.Result matching =
        PileMatching.of(blanket, new Places(asked, asked.held(), asked.worked()));
    if (matching.complete()) {
      return List.of();
    }
    return List.of(
        Finding.of(
            words(blanket, matching),
            List.of(),
            RuleId.PILE,
            RuleId.LOCKS,
            RuleId.BANS,
            RuleId.TONES,
            RuleId.ZONES,
            RuleId.COUNTS,
            RuleId.BORDERS));
  }

  private static String words(Blanket blanket, PileMatching.Result matching) {
    if (!matching.unfilled().isEmpty()) {
      return "%s can only take finished pieces, for lock, tones, bans and zones leave a round no"
              .formatted(Words.pieces(blanket, matching.unfilled()))
          + " yarn, and the pile has too few that fit";
    }
    List<String> sorts =
        matching.tooMany().stream().map(stack -> TellPile.stack(blanket, stack)).toList();
    String where =
        matching.places().isEmpty()
            ? "nowhere: locks keep them out of all places that are not worked yet"
            : "only at %s: locks keep them out of other places"
                .formatted(Words.pieces(blanket, matching.places()));
    return "the pile's %s can lie %s".formatted(Words.list(sorts), where);
  }
}
