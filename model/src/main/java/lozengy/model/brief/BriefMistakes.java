package lozengy.model.brief;

import java.util.List;
import lozengy.model.input.Mistake;

/**
 * Judges whether the parts of a brief fit together: codes that are used are there and unique, every
 * kind of piece has a motif, pieces that are named are there, locks do not break a rule, and so on.
 */
public final class BriefMistakes {

  private BriefMistakes() {}

  /**
   * Finds all mistakes of a brief.
   *
   * @param brief the brief
   * @return the mistakes with their paths and without lines, in the brief's order; empty if none
   */
  public static List<Mistake> of(Brief brief) {
    throw new UnsupportedOperationException("not written yet");
  }
}
