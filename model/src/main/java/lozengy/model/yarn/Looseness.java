package lozengy.model.yarn;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;

/**
 * How much more yarn the hand may take, for all that is still to be worked of a yarn, before it
 * runs out; what is kept back stays untouched. Tails count as if they grew too, which is the safe
 * side.
 *
 * @param yarn its index
 * @param percent per cent of what is still to be worked; below 0 where it does not last as planned
 */
public record Looseness(int yarn, double percent) {

  /**
   * The yarn that runs out first.
   *
   * @param blanket the blanket
   * @param needs its yarns' needs
   * @return the yarn of which the hand may take the least more; empty where nothing is to be worked
   */
  public static Optional<Looseness> tightest(Blanket blanket, List<YarnNeed> needs) {
    return needs.stream()
        .filter(need -> need.work().toWorkMillimetres() > 0)
        .map(need -> of(blanket, need))
        .min(Comparator.comparingDouble(Looseness::percent));
  }

  private static Looseness of(Blanket blanket, YarnNeed need) {
    long left = blanket.yarns().usableMillimetres(need.yarn()) - need.neededMillimetres();
    return new Looseness(need.yarn(), 100.0 * left / need.work().toWorkMillimetres());
  }
}
