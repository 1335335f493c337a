package lozengy.benchmarks.peer;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.score.Nearness;
import lozengy.model.score.Points;

/**
 * What the score loses by each thing that an arrangement falls short in, in whole units, so that a
 * solver over integers can add it up: total = 100 - units / unitsPerPoint, but for the rounding of
 * each amount to whole units. One difference remains: spread does not fall below 0, these losses
 * do; that is so only of arrangements that repeat more than a random shuffle.
 */
final class Losses {

  private final Points points;
  private final double unitsPerPoint;

  /**
   * Makes them for a blanket.
   *
   * @param blanket the blanket
   * @param earlier sequences to stay close to, where planning again
   * @param unitsPerPoint how many units make a point of the total
   */
  Losses(Blanket blanket, Optional<Sequences> earlier, double unitsPerPoint) {
    this.points = Points.of(blanket, earlier);
    this.unitsPerPoint = unitsPerPoint;
  }

  /** The total that a sum of losses leaves. */
  double total(double units) {
    return 100 - units / unitsPerPoint;
  }

  /** How often a layer should show a yarn. */
  int target(int layer, int yarn) {
    return points.targets().counts()[layer][yarn];
  }

  /** Spread: a pair of pieces that show the same yarn in a layer. */
  long repeat(int layer, Nearness nearness) {
    return units(points.repeat(layer) * nearness.weight());
  }

  /** Balance: one of a yarn over its target in a layer, and so one of another under. */
  long overTarget(int layer) {
    return units(2 * points.balance(layer));
  }

  /** All that two borders on a seam lose. */
  long seam(int yarn, int other) {
    return sideBySide(true, yarn, other);
  }

  /** All that two adjacent rounds of a piece lose. */
  long step(int yarn, int other) {
    return sideBySide(false, yarn, other);
  }

  private long sideBySide(boolean onSeams, int yarn, int other) {
    return points.pairs().stream()
        .filter(pair -> pair.onSeams() == onSeams)
        .mapToLong(pair -> units(pair.lost(yarn, other)))
        .sum();
  }

  /** Variety: a piece whose sequence an earlier piece has. */
  long copy() {
    return units(points.copy());
  }

  /** Keep: a round that has another yarn than before, of those that count. */
  long changed() {
    return units(points.changed());
  }

  /** Leeway: nothing left of a yarn. */
  long noLeeway() {
    return units(points.leeway());
  }

  private long units(double lost) {
    return Math.round(lost * unitsPerPoint);
  }
}
