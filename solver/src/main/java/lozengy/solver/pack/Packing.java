package lozengy.solver.pack;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.solver.SolveResult;

/** How the search for a pack has ended. */
public sealed interface Packing {

  /**
   * A pack was found, and an arrangement from exactly that, held against all rules.
   *
   * @param shades what it holds, in the yarns' order
   * @param arrangement an arrangement whose brief has the pack for its stock
   * @param score its score, leeway aside, 0 to 100
   * @param wanted the score that was to be reached
   * @param plenty the score that plenty of yarn gave
   * @param proof what is known of smaller packs
   */
  record Packed(
      List<Shade> shades,
      Arrangement arrangement,
      double score,
      double wanted,
      double plenty,
      Proof proof)
      implements Packing {
    /**
     * Copies the list.
     *
     * @param shades what it holds, in the yarns' order
     * @param arrangement an arrangement whose brief has the pack for its stock
     * @param score its score, leeway aside, 0 to 100
     * @param wanted the score that was to be reached
     * @param plenty the score that plenty of yarn gave
     * @param proof what is known of smaller packs
     */
    public Packed {
      shades = List.copyOf(shades);
    }

    /** {@return balls in all} */
    public int balls() {
      return shades.stream().mapToInt(Shade::balls).sum();
    }
  }

  /**
   * What is known of packs that cost less than the one found.
   *
   * @param least whether it is proved that none of them does
   * @param floor by totals alone no pack does with less, in balls, in the currency's
   *     ten-thousandth, or in mg
   * @param failed packs that were tried and from which no such arrangement was found
   */
  record Proof(boolean least, long floor, List<Failed> failed) {
    /**
     * Copies the list.
     *
     * @param least whether it is proved that none of them does
     * @param floor by totals alone no pack does with less
     * @param failed packs that were tried and from which no such arrangement was found
     */
    public Proof {
      failed = List.copyOf(failed);
    }
  }

  /**
   * A shade of a pack.
   *
   * @param yarn its index, from 0
   * @param balls whole balls, 0 or more
   * @param sharedMillimetres length in mm that it would be used by its share
   * @param usedMillimetres length in mm that the arrangement takes, joining and edging included
   * @param leftMillimetres length in mm that is left of the balls then
   */
  record Shade(
      int yarn, int balls, long sharedMillimetres, long usedMillimetres, long leftMillimetres) {}

  /**
   * A pack that was tried in vain.
   *
   * @param balls how many balls it had
   * @param proved whether it is proved that it does not do
   */
  record Failed(int balls, boolean proved) {}

  /**
   * It is proved that no pack does, however many balls it has.
   *
   * @param blanket the brief with plenty of yarn
   * @param why why nothing fits
   * @param byBend whether only the limits of shares stand in the way
   */
  record Impossible(Blanket blanket, SolveResult.Impossible why, boolean byBend)
      implements Packing {}

  /**
   * The score is more than plenty of yarn was seen to give.
   *
   * @param asked the score
   * @param reached the best that was found with plenty
   * @param bound what no arrangement exceeds, 0 to 100: a proof where it is less than the score
   */
  record OutOfReach(double asked, double reached, double bound) implements Packing {

    /** {@return whether it is proved that no arrangement has the score} */
    public boolean proved() {
      return bound < asked;
    }
  }

  /** No pack was found within the limits, and nothing is proved. */
  record Unfinished() implements Packing {}
}
