package lozengy.model.score;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Order;
import lozengy.model.layout.Offset;

/**
 * How regularly borders come again. For each offset d between places, of N(d) pairs of places that
 * lie so to each other a share m(d) has equal borders; e is the share that could be expected if the
 * border's target counts n were shuffled over the P pieces, sum n (n - 1) / (P (P - 1)). Then
 *
 * <p>R = sum N(d) max(0, (m(d) - e) / (1 - e))² / (e sum N(d))
 *
 * <p>is near 0 for a shuffle. A lattice colouring with k yarns, which repeats exactly at about one
 * offset in k and at no other, has e near 1/k and R near 1. An ordered look has the figure 100
 * min(1, R), a scattered one 100 less that.
 *
 * <p>Offsets are looked at beyond the reach of spread, the square root of 5 sides, up to 5 sides,
 * one of each two opposite ones: 30 on a large blanket. Two shortest vectors of a lattice with k
 * points to a period are at most 2 k / sqrt(3) long by each other (Gauss reduction); where spread
 * keeps the shorter one to sqrt(8) sides at least, the square of the longer is at most k²/6, which
 * is 24 for 12 yarns. So the periods of all lattice colourings of up to 12 yarns that spread does
 * not mind lie within 5 sides. An offset with fewer than {@value #LEAST_PAIRS} pairs is left out:
 * too few to look like a repeat.
 *
 * <p>O(pieces x offsets) to make and to count.
 */
public final class OrderMeasure {

  /** An offset with fewer pairs of places is left out. */
  static final int LEAST_PAIRS = 8;

  private static final int BEYOND_SQUARE_SIDES = 5;
  private static final int SQUARE_SIDES = 25;

  private final Order asked;
  private final List<Offset> offsets;
  private final double expected;
  private final long pairs;

  private OrderMeasure(Order asked, List<Offset> offsets, double expected) {
    this.asked = asked;
    this.offsets = offsets;
    this.expected = expected;
    this.pairs = offsets.stream().mapToLong(Offset::size).sum();
  }

  /**
   * {@return the measure of the order that a blanket's look asks for} Empty where it asks for none,
   * where it gives the borders, where no offset has pairs enough, and where no two borders, or all,
   * are to be equal.
   *
   * @param blanket the blanket
   */
  public static Optional<OrderMeasure> of(Blanket blanket) {
    Optional<Order> asked = blanket.brief().look().order();
    if (asked.isEmpty() || blanket.look().givesBorders()) {
      return Optional.empty();
    }
    List<Offset> offsets =
        blanket.layout().offsets(BEYOND_SQUARE_SIDES, SQUARE_SIDES).stream()
            .filter(offset -> offset.size() >= LEAST_PAIRS)
            .toList();
    if (offsets.isEmpty()) {
      return Optional.empty();
    }
    double expected = expected(Targets.of(blanket));
    return expected > 0 && expected < 1
        ? Optional.of(new OrderMeasure(asked.get(), offsets, expected))
        : Optional.empty();
  }

  private static double expected(Targets targets) {
    double alike = 0;
    for (int count : targets.counts()[0]) {
      alike += count * (count - 1.0);
    }
    double pieces = targets.pieces()[0];
    return alike / (pieces * (pieces - 1));
  }

  /** {@return what the look asks for} */
  public Order asked() {
    return asked;
  }

  /** {@return the offsets that are looked at, at least one} */
  public List<Offset> offsets() {
    return offsets;
  }

  /**
   * Points of order that an offset gives: its term of 100 R.
   *
   * @param offset number of the offset, from 0
   * @param equal how many of its pairs have equal borders, 0 to all of them
   * @return the points, 0 or more
   */
  public double points(int offset, int equal) {
    double all = offsets.get(offset).size();
    double beyond = Math.max(0, (equal / all - expected) / (1 - expected));
    return 100 * all * beyond * beyond / (expected * pairs);
  }

  /** {@return points that one more equal pair gives where a quarter of the way to a full repeat} */
  public double stepPoints() {
    return 50 / (expected * (1 - expected) * pairs);
  }

  /**
   * What the part loses.
   *
   * @param points the points of all offsets
   * @return 0 to 100
   */
  public double lost(double points) {
    double order = Math.min(100, points);
    return asked == Order.ORDERED ? 100 - order : order;
  }

  /**
   * Counts the pairs of an offset with equal borders.
   *
   * @param offset number of the offset, from 0
   * @param sequences the yarns of all borders
   * @return how many
   */
  public int equal(int offset, Sequences sequences) {
    Offset pairsOf = offsets.get(offset);
    int equal = 0;
    for (int pair = 0; pair < pairsOf.size(); pair++) {
      equal += equal(sequences, pairsOf, pair) ? 1 : 0;
    }
    return equal;
  }

  /** Whether a pair of places has equal borders. */
  static boolean equal(Sequences sequences, Offset offset, int pair) {
    return sequences.border(offset.from()[pair]) == sequences.border(offset.to()[pair]);
  }
}
