package lozengy.solver;

import java.util.List;
import lozengy.model.arrangement.Arrangement;

/** How a solve ended. */
public sealed interface SolveResult {

  /**
   * A valid arrangement was found.
   *
   * @param arrangement the best found, verified
   */
  record Found(Arrangement arrangement) implements SolveResult {}

  /**
   * It is proved that no arrangement fits.
   *
   * @param reasons why, in words, each sentence naming pieces, yarns and amounts; at least one
   */
  record Impossible(List<String> reasons) implements SolveResult {}

  /**
   * The budget ended before a valid arrangement was found, and nothing is proved.
   *
   * @param nearest what stood in the way of the nearest attempt, in words
   */
  record Unfinished(List<String> nearest) implements SolveResult {}
}
