package lozengy.benchmarks.peer;

import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** A general-purpose solver, which can also go on from what another has found. */
public interface Peer extends Contender {

  /**
   * Goes on from an arrangement.
   *
   * @param blanket the blanket
   * @param start a valid arrangement of it
   * @param seed seed of its random choices
   * @param limitSeconds when it must end, counted from the call
   */
  Run from(Blanket blanket, Sequences start, long seed, double limitSeconds);
}
