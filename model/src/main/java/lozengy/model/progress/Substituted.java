package lozengy.model.progress;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Yarn;
import lozengy.model.input.InputException;

/**
 * What is asked for once shades are gone and others stand in for them: as if the new ones had been
 * added and the old ones marked as gone, and then swapped.
 */
public final class Substituted {

  /** Shares that are dealt are rounded to so many decimals. */
  private static final int SHARE_DECIMALS = 3;

  private Substituted() {}

  /**
   * What stands in for a shade.
   *
   * @param place what messages call it
   * @param gone code of the shade
   * @param parts what stands in for it, the one first that takes its place in the plan, in joining
   *     and in edging; empty for nothing
   */
  public record Instead(String place, String gone, List<Part> parts) {
    /**
     * Copies the list.
     *
     * @param place what messages call it
     * @param gone code of the shade
     * @param parts what stands in for it
     */
    public Instead {
      parts = List.copyOf(parts);
    }
  }

  /**
   * One of several shades that stand in for another.
   *
   * @param code the shade
   * @param part which part of the other's share it gets, above 0; they come to 1
   */
  public record Part(String code, double part) {}

  /**
   * The brief with shades that it does not know yet.
   *
   * @param brief the brief
   * @param shades the shades
   * @return the brief, with them behind its own
   * @throws InputException if one of them does not fit it
   */
  public static Brief with(Brief brief, List<Mark.Added> shades) {
    return NewYarns.added(brief, List.copyOf(shades));
  }

  /**
   * What is asked for then. Whether locks still hold is for the solver to say.
   *
   * @param current how things stand
   * @param shades shades that the brief does not know yet, and that stand in
   * @param instead what stands in for what is gone
   * @return what is to be solved next
   * @throws InputException if a shade is not there or does not fit the brief
   */
  public static Changed of(CurrentPlan current, List<Mark.Added> shades, List<Instead> instead) {
    Stocks stocks = new Stocks(with(current.brief(), shades), Set.of());
    instead.forEach(each -> stocks.change(new Mark.Gone(each.place(), each.gone())));
    List<Yarn> yarns = new ArrayList<>(stocks.brief().yarns());
    List<Change> swaps = new ArrayList<>();
    for (Instead each : instead) {
      for (int i = 1; i < each.parts().size(); i++) {
        deal(stocks.brief(), yarns, each, each.parts().get(i));
      }
      if (!each.parts().isEmpty()) {
        swaps.add(new Change.Swap(each.place(), each.gone(), each.parts().get(0).code()));
        keep(stocks.brief(), yarns, each);
      }
    }
    Brief brief = stocks.brief().withYarns(yarns);
    return Changes.applyUnjudged(new CurrentPlan(brief, current.sequences()), swaps);
  }

  /** Adds a part of a shade's share to another's. */
  private static void deal(Brief brief, List<Yarn> yarns, Instead instead, Part part) {
    int to = Selections.yarn(instead.place(), brief, part.code());
    int from = Selections.yarn(instead.place(), brief, instead.gone());
    double more = part(brief.yarns().get(from).share(), part);
    yarns.set(to, yarns.get(to).withShare(yarns.get(to).share() + more));
  }

  /** Leaves a shade the part of its share that the first in its place takes over with the swap. */
  private static void keep(Brief brief, List<Yarn> yarns, Instead instead) {
    int from = Selections.yarn(instead.place(), brief, instead.gone());
    double share = part(brief.yarns().get(from).share(), instead.parts().get(0));
    yarns.set(from, yarns.get(from).withShare(share));
  }

  private static double part(double share, Part part) {
    return BigDecimal.valueOf(share)
        .multiply(BigDecimal.valueOf(part.part()))
        .setScale(SHARE_DECIMALS, RoundingMode.HALF_UP)
        .doubleValue();
  }
}
