package lozengy.solver;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.BorderJoining;
import lozengy.model.brief.Brief;
import lozengy.model.brief.YarnRate;

/** Blankets of other tests, joined in their borders' yarns, so that places of a kind may differ. */
public final class JoinedInBorders {

  private JoinedInBorders() {}

  /** The brief; the seed tells how much a seam takes. */
  public static Brief of(Brief brief, long seed) {
    YarnRate rate = new YarnRate.PerMetre(1 + seed % 8);
    return brief.withJoining(Optional.of(new BorderJoining(rate, Optional.empty())));
  }

  /** The blanket; the seed tells how much a seam takes. */
  public static Blanket of(Blanket blanket, long seed) {
    return Blanket.ofUnjudged(of(blanket.brief(), seed));
  }
}
