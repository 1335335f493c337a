package lozengy.solver.bound;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;

/** Figures that parts of the score, one by one, exceed in no valid arrangement. */
public final class PartBounds {

  /** How much more than all others together the part weighs in the sums that are bounded. */
  private static final double[] TIMES_THE_OTHERS = {0.5, 2};

  private static final double MOST = 100;

  /** Points that a quick bound must say more than is known, for more effort to be spent on it. */
  private static final double WORTH = 1;

  private PartBounds() {}

  /**
   * {@return the part keep at most, 0 to 100: of the rounds free to change that had a yarn before,
   * those whose yarn is still allowed there}
   *
   * @param blanket the blanket
   * @param earlier the sequences that would be solved from
   */
  public static double keep(Blanket blanket, Sequences earlier) {
    int free = 0;
    int kept = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = earlier.yarn(piece, round);
        if (blanket.free(piece, round) && yarn != Sequences.OPEN) {
          free++;
          kept += blanket.domains().mayShow(piece, round, yarn) ? 1 : 0;
        }
      }
    }
    return free == 0 ? MOST : MOST * kept / free;
  }

  /**
   * Bounds parts one by one, the others left aside: the bound of the same brief with no other part
   * weighing.
   *
   * @param blanket the blanket
   * @param parts the parts, of those that make up the total
   * @param limits how much effort to spend on each
   * @param stop asked now and then; once true, what is proved so far is given
   * @return a bound for each of the parts
   */
  public static Map<Part, Bound> of(
      Blanket blanket, Set<Part> parts, BoundLimits limits, BooleanSupplier stop) {
    Map<Part, Bound> bounds = new EnumMap<>(Part.class);
    for (Part part : parts) {
      Map<Part, Double> alone = new EnumMap<>(Part.class);
      for (Part each : Part.values()) {
        alone.put(each, each == part ? 1.0 : 0.0);
      }
      bounds.put(part, bound(blanket, alone, limits, stop));
    }
    return bounds;
  }

  /**
   * Bounds parts one by one over the arrangements in which every other part that weighs is at least
   * as good as in a given one. With weights w, the given figures h and a bound B on the weighted
   * sum of all parts, such an arrangement has w(p) x(p) &lt;= B - sum over other q of w(q) x(q)
   * &lt;= B - sum w(q) h(q). This holds for any weights: it is tried with the brief's own, where
   * their bound is known, and with some that let the part weigh more; the least figure is taken.
   * All are tried quickly, and only the one that then says most, if that is a point or more beyond
   * what was known, with the effort that is allowed.
   *
   * @param blanket the blanket
   * @param figures the given arrangement's parts, of those that make up the total
   * @param known a bound on the brief's own total, if there is one
   * @param limits how much effort to spend on each
   * @param stop asked now and then; once true, what is proved so far is given
   * @return figures from the given ones up to 100
   */
  public static Map<Part, Double> othersKept(
      Blanket blanket,
      Map<Part, Double> figures,
      Optional<Bound> known,
      BoundLimits limits,
      BooleanSupplier stop) {
    Preferences prefer = blanket.brief().prefer();
    Map<Part, Double> own = new EnumMap<>(Part.class);
    for (Part each : Part.values()) {
      own.put(each, figures.containsKey(each) ? prefer.weight(each) : 0.0);
    }
    Map<Part, Double> bounds = new EnumMap<>(Part.class);
    for (Map.Entry<Part, Double> figure : figures.entrySet()) {
      Part part = figure.getKey();
      double least =
          known
              .filter(bound -> own.get(part) > 0)
              .map(bound -> left(own, figures, part, bound.total()))
              .orElse(MOST);
      double others = sum(own) - own.get(part);
      double before = Math.min(MOST, least);
      Map<Part, Double> telling = own;
      for (double times : TIMES_THE_OTHERS) {
        if (figure.getValue() < MOST && others > 0 && !stop.getAsBoolean()) {
          Map<Part, Double> heavier = new EnumMap<>(own);
          heavier.put(part, times * others);
          double total = bound(blanket, heavier, BoundLimits.QUICK, stop).total();
          double left = left(heavier, figures, part, total);
          telling = left < least ? heavier : telling;
          least = Math.min(least, left);
        }
      }
      if (before - least >= WORTH && limits.stages() > 0) {
        double total = bound(blanket, telling, limits, stop).total();
        least = Math.min(least, left(telling, figures, part, total));
      }
      bounds.put(part, Math.max(figure.getValue(), Math.min(MOST, least)));
    }
    return bounds;
  }

  /** What a bound on the weighted mean leaves to a part, the others being as they are. */
  private static double left(
      Map<Part, Double> weights, Map<Part, Double> figures, Part part, double bound) {
    double points = sum(weights) * bound;
    for (Map.Entry<Part, Double> figure : figures.entrySet()) {
      points -= figure.getKey() == part ? 0 : weights.get(figure.getKey()) * figure.getValue();
    }
    return points / weights.get(part);
  }

  private static double sum(Map<Part, Double> weights) {
    return weights.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  private static Bound bound(
      Blanket blanket, Map<Part, Double> weights, BoundLimits limits, BooleanSupplier stop) {
    Blanket weighed = Blanket.ofUnjudged(blanket.brief().withPrefer(new Preferences(weights)));
    return Bounds.of(weighed, limits, stop);
  }
}
