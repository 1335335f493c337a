package lozengy.model.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;

/**
 * What one step of each part's measure is worth, in points of the total of a blanket, or of the
 * objective where it is planned again: the part's share of the weights times the slope of its
 * formula. Whoever counts losses in a unit of its own takes them from here.
 *
 * <p>A part whose measure is about two rounds side by side is a {@link Pair} and reaches from here
 * the search, the exact loss and the bound. O(layers x pairs) to make.
 */
public final class Points {

  /** How well two yarns go side by side, 0 to 1. */
  @FunctionalInterface
  public interface Value {

    /**
     * {@return the value, 0 to 1}
     *
     * @param yarn a yarn's index, from 0
     * @param other the other yarn's index, from 0
     */
    double of(int yarn, int other);
  }

  /**
   * What a part says of two rounds side by side.
   *
   * @param onSeams whether the rounds are the borders on a seam, rather than two of one piece
   * @param points points of full value, above 0
   * @param value how much of it two yarns have
   */
  public record Pair(boolean onSeams, double points, Value value) {

    /**
     * {@return the points that two yarns gain}
     *
     * @param yarn a yarn's index, from 0
     * @param other the other yarn's index, from 0
     */
    public double gained(int yarn, int other) {
      return points * value.of(yarn, other);
    }

    /**
     * {@return the points that two yarns lose}
     *
     * @param yarn a yarn's index, from 0
     * @param other the other yarn's index, from 0
     */
    public double lost(int yarn, int other) {
      return points * (1 - value.of(yarn, other));
    }
  }

  private final Blanket blanket;
  private final boolean again;
  private final double weights;
  private final Targets targets;
  private final double expected;
  private final List<Pair> pairs = new ArrayList<>();
  private final int seams;
  private final int steps;
  private final double changed;
  private final Optional<FadeMeasure> fade;
  private final Optional<OrderMeasure> order;

  private Points(Blanket blanket, Optional<Sequences> earlier) {
    this.blanket = blanket;
    this.again = earlier.isPresent();
    double sum = 0;
    for (Part part : Part.values()) {
      sum += weight(part);
    }
    this.weights = sum;
    this.targets = Targets.of(blanket);
    this.expected = SpreadPart.expected(blanket, targets);
    this.seams = Scorer.countedSeams(blanket).size();
    this.steps = Scorer.steps(blanket);
    Value onSeams = (a, b) -> Scorer.contrast(blanket, true, a, b);
    Value inPieces = (a, b) -> Scorer.contrast(blanket, false, a, b);
    int means = seams > 0 && steps > 0 ? 2 : 1;
    addPairs(true, whole(Part.CONTRAST) / means, onSeams);
    addPairs(false, whole(Part.CONTRAST) / means, inPieces);
    addPairs(true, whole(Part.COLOUR_VISION), (a, b) -> ColourVisionSeams.toldApart(blanket, a, b));
    addPairs(true, whole(Part.CONTRAST_BETWEEN), onSeams);
    addPairs(false, whole(Part.CONTRAST_WITHIN), inPieces);
    this.changed =
        earlier.map(before -> each(Part.KEEP, Keep.counted(blanket, before))).orElse(0.0);
    this.fade = whole(Part.FADE) > 0 ? FadeMeasure.of(blanket) : Optional.empty();
    this.order = whole(Part.ORDER) > 0 ? OrderMeasure.of(blanket) : Optional.empty();
  }

  /**
   * {@return points of a blanket's total}
   *
   * @param blanket the blanket
   */
  public static Points of(Blanket blanket) {
    return of(blanket, Optional.empty());
  }

  /**
   * {@return points of what is maximised: of the objective, with {@link Part#KEEP} among the parts,
   * where there are earlier sequences, else of the total}
   *
   * @param blanket the blanket
   * @param earlier the sequences it is planned again from
   */
  public static Points of(Blanket blanket, Optional<Sequences> earlier) {
    return new Points(blanket, earlier);
  }

  /** A mean of what pairs of rounds count, over all seams or over all rounds side by side. */
  private void addPairs(boolean onSeams, double ofMean, Value value) {
    int count = onSeams ? seams : steps;
    if (ofMean > 0 && count > 0) {
      pairs.add(new Pair(onSeams, ofMean / count, value));
    }
  }

  private double weight(Part part) {
    Preferences prefer = blanket.brief().prefer();
    return part != Part.KEEP || again ? prefer.weight(part) : 0;
  }

  private double each(Part part, double steps) {
    return steps > 0 ? whole(part) / steps : 0;
  }

  /**
   * {@return what a point of a part is worth, 0 to 1: its share of the weights}
   *
   * @param part the part
   */
  public double share(Part part) {
    return weights > 0 ? weight(part) / weights : 0;
  }

  /**
   * {@return what a part is worth in full, 0 to 100}
   *
   * @param part the part
   */
  public double whole(Part part) {
    return weights > 0 ? 100 * weight(part) / weights : 0;
  }

  /** {@return the targets that balance and spread are measured by} */
  public Targets targets() {
    return targets;
  }

  /**
   * {@return what balance loses by a round too many or too few of a yarn in a layer}
   *
   * @param layer the layer, from 0 at the border
   */
  public double balance(int layer) {
    int pieces = targets.pieces()[layer];
    return pieces == 0
        ? 0
        : whole(Part.BALANCE) * Layers.weight(layer) / (2.0 * pieces * Layers.weights(targets));
  }

  /** {@return what spread loses by a unit of the weight of repeats; 0 where none is expected} */
  public double repeat() {
    return each(Part.SPREAD, expected);
  }

  /**
   * {@return what spread loses by a repeat in a layer of two pieces whose nearness weighs 1}
   *
   * @param layer the layer, from 0 at the border
   */
  public double repeat(int layer) {
    return expected > 0 ? whole(Part.SPREAD) * Layers.spreadWeight(blanket, layer) / expected : 0;
  }

  /** {@return what parts that weigh say of two rounds side by side} */
  public List<Pair> pairs() {
    return Collections.unmodifiableList(pairs);
  }

  /**
   * {@return the points that two borders on a seam, or two rounds side by side in a piece, gain}
   *
   * @param onSeams whether they are borders on a seam
   * @param yarn a yarn's index, from 0
   * @param other the other yarn's index, from 0
   */
  public double gained(boolean onSeams, int yarn, int other) {
    double gained = 0;
    for (Pair pair : pairs) {
      gained += pair.onSeams() == onSeams ? pair.gained(yarn, other) : 0;
    }
    return gained;
  }

  /** {@return what all pairs would gain together if each had full value} */
  public double ofPairs() {
    return pairs.stream().mapToDouble(p -> p.points() * (p.onSeams() ? seams : steps)).sum();
  }

  /** {@return what variety loses by a piece with the sequence of an earlier one} */
  public double copy() {
    return each(Part.VARIETY, blanket.orbits().leads().length);
  }

  /** {@return what leeway loses by a yarn of which nothing is left} */
  public double leeway() {
    return each(Part.LEEWAY, blanket.yarnCount());
  }

  /** {@return what keep loses by a round that has another yarn than before} */
  public double changed() {
    return changed;
  }

  /**
   * {@return the measure of the fade, if it weighs and there is one; its points are of the part}
   */
  public Optional<FadeMeasure> fade() {
    return fade;
  }

  /**
   * {@return the measure of the order, if it weighs and there is one; its points are of the part}
   */
  public Optional<OrderMeasure> order() {
    return order;
  }
}
