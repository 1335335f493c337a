package lozengy.model.score;

import lozengy.model.blanket.Blanket;

/**
 * How often each layer should show each yarn. Within a layer, the rounds that allow the same yarns
 * by tone form a group; a group's rounds are dealt to its yarns by their shares, by largest
 * remainder (ties: the yarn earlier in the brief); a layer's target for a yarn is the sum over its
 * groups.
 *
 * @param pieces pieces that have the layer, by layer
 * @param counts wanted count by layer and yarn
 */
public record Targets(int[] pieces, int[][] counts) {

  /** The targets of a blanket. */
  public static Targets of(Blanket blanket) {
    throw new UnsupportedOperationException("not written yet");
  }
}
