package lozengy.solver.problem;

import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.layout.Offset;
import lozengy.model.score.OrderMeasure;
import lozengy.model.score.Points;

/**
 * What the order of borders costs, frozen to ints: by offset and number of pairs with equal borders
 * the worth of the offset's regularity, rounded once, so that sums do not depend on their order.
 * Immutable by convention. O(pieces x offsets) memory.
 *
 * @param measure what it comes from
 * @param ordered whether regularity is wanted, rather than the lack of it
 * @param most units of the whole part
 * @param worth units by offset and number of equal pairs
 * @param constant by offset, pairs of images of one piece, which are always equal
 * @param start first entry of each piece, and the number of entries at the end
 * @param other by entry, the border slot of another piece; an entry for every pair of places that
 *     the two pieces stand for
 * @param offset by entry, the number of the offset at which they lie; ascending within a piece
 */
public record OrderCosts(
    OrderMeasure measure,
    boolean ordered,
    long most,
    long[][] worth,
    int[] constant,
    int[] start,
    int[] other,
    int[] offset) {

  /** The costs of a blanket's order, or null where nothing is asked. */
  static OrderCosts of(Blanket blanket, Slots slots, Points points, CostScale scale) {
    if (points.order().isEmpty()) {
      return null;
    }
    OrderMeasure measure = points.order().get();
    int[] pieceOf = new int[blanket.pieceCount()];
    for (int piece = 0; piece < slots.orbits(); piece++) {
      for (int member : slots.members()[piece]) {
        pieceOf[member] = piece;
      }
    }
    List<Offset> offsets = measure.offsets();
    double unitsPerPoint = points.share(Part.ORDER) * scale.unitsPerPoint;
    long[][] worth = new long[offsets.size()][];
    int[] constant = new int[worth.length];
    int[] start = new int[slots.orbits() + 1];
    for (int number = 0; number < worth.length; number++) {
      Offset pairs = offsets.get(number);
      worth[number] = new long[pairs.size() + 1];
      for (int equal = 0; equal <= pairs.size(); equal++) {
        worth[number][equal] = Math.round(unitsPerPoint * measure.points(number, equal));
      }
      for (int pair = 0; pair < pairs.size(); pair++) {
        int from = pieceOf[pairs.from()[pair]];
        int to = pieceOf[pairs.to()[pair]];
        if (from == to) {
          constant[number]++;
        } else {
          start[from + 1]++;
          start[to + 1]++;
        }
      }
    }
    Arrays.parallelPrefix(start, Integer::sum);
    int[] other = new int[start[slots.orbits()]];
    int[] offset = new int[other.length];
    int[] next = start.clone();
    for (int number = 0; number < worth.length; number++) {
      Offset pairs = offsets.get(number);
      for (int pair = 0; pair < pairs.size(); pair++) {
        int from = pieceOf[pairs.from()[pair]];
        int to = pieceOf[pairs.to()[pair]];
        if (from != to) {
          offset[next[from]] = number;
          other[next[from]++] = slots.border(to);
          offset[next[to]] = number;
          other[next[to]++] = slots.border(from);
        }
      }
    }
    boolean ordered = measure.asked() == Order.ORDERED;
    return new OrderCosts(
        measure, ordered, Math.round(100 * unitsPerPoint), worth, constant, start, other, offset);
  }

  /**
   * What a sum of worths costs.
   *
   * @param sum the worth of all offsets, in units
   * @return units, 0 to the whole part
   */
  public long lost(long sum) {
    long order = Math.min(most, sum);
    return ordered ? most - order : order;
  }
}
