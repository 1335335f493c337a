package lozengy.solver.explain.argument;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.PileMatching;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;

/** Pieces of the pile that locks leave too few places between them. */
final class PileLocks implements Argument {

  /** The pile's places as some lines of a brief leave them. */
  private record Places(Requirements asked, RoundYarns held, RoundYarns worked)
      implements PileMatching.Places {

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
  static boolean fits(Requirements asked, RoundYarns held, Stack stack, int piece) {
    boolean fits =
        asked.blanket().domains().takesPile(piece) && asked.blanket().kind(piece) == stack.kind();
    for (int round = 0; fits && round < stack.yarns().length; round++) {
      fits = held.allows(piece, round, stack.yarns()[round]);
    }
    return fits;
  }

  @Override
  public List<Finding> findings(Requirements asked) {
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
            reason(matching),
            List.of(),
            RuleId.PILE,
            RuleId.LOCKS,
            RuleId.BANS,
            RuleId.TONES,
            RuleId.ZONES,
            RuleId.COUNTS,
            RuleId.BORDERS));
  }

  private static Reason reason(PileMatching.Result matching) {
    return matching.unfilled().isEmpty()
        ? new PileReason.PileKeptOut(matching.tooMany(), matching.places())
        : new PileReason.PlacesUnfilled(matching.unfilled());
  }
}
