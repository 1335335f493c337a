package lozengy.model.brief;

import static java.math.MathContext.DECIMAL128;
import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import lozengy.model.layout.PieceKind;

/**
 * What every round of a brief takes, in plain amounts. A round in stitches takes their starting
 * values times a factor, which is how much more yarn this hand takes, and two tails; a slip stitch
 * that joins its yarn is one of its stitches. Samples tell the factor: what is weighed, less the
 * tails and the rounds whose yarn is known otherwise, is that of the other rounds. Of two samples
 * the one of fewer rounds is heard first, so that a round weighed by itself and the whole piece
 * both come out as weighed. Rounds of no sample take the factor of their kind's others, or else of
 * all kinds'; without any sample it is 1.
 *
 * <p>A sample's amounts are reckoned back to within one part in 10^30, and the length of a round is
 * rounded to a millionth of a millimetre.
 */
public final class RoundLengths {

  /** Where the length of a round comes from. */
  public enum Basis {
    /** The brief states an amount. */
    STATED,
    /** A sample that it is in. */
    SAMPLE,
    /** Samples of other rounds of its kind. */
    SAME_KIND,
    /** Samples of other kinds. */
    OTHER_KINDS,
    /** Starting values alone, which are rough. */
    STARTING,
    /** Nothing: there is neither a sample nor a starting value. */
    UNKNOWN
  }

  /**
   * An amount of a sample, held against what its rounds take now that all samples are heard.
   *
   * @param sample index of the sample in the brief
   * @param amount index of the amount in the sample
   * @param weighed what was weighed or measured, in mg or mm
   * @param tails how much of that the tails of its rounds in stitches take
   * @param reckoned what its rounds take, tails included; 0 where that is not known
   */
  public record Held(
      int sample, int amount, BigDecimal weighed, BigDecimal tails, BigDecimal reckoned) {

    /** {@return how much was weighed or measured to each that is reckoned, such as 1.04} */
    public double ratio() {
      return weighed.divide(reckoned, DECIMAL128).doubleValue();
    }
  }

  private static final int DECIMALS_OF_MILLIMETRE = 6;

  private final Brief brief;
  private final HeardSamples heard;

  private RoundLengths(Brief brief) {
    this.brief = brief;
    this.heard = new HeardSamples(brief);
  }

  /**
   * The lengths of a brief's rounds; O(rounds x samples).
   *
   * @param brief the brief, whose samples are of rounds and yarns that it has
   * @return the lengths
   */
  public static RoundLengths of(Brief brief) {
    return new RoundLengths(brief);
  }

  /**
   * {@return what a round takes, cut at both its ends}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   */
  public YarnAmount amount(PieceKind kind, int round) {
    if (heard.yarn(kind, round) instanceof YarnAmount amount) {
      return amount;
    }
    return new YarnAmount.Length(
        heard
            .stitches(kind, round, true)
            .add(heard.tails())
            .setScale(DECIMALS_OF_MILLIMETRE, HALF_EVEN));
  }

  /**
   * {@return how much less a round takes, in mm, where its yarn goes on from the round before it:
   * there are no tails between them and no join; 0 where one of the two states an amount}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   */
  public BigDecimal savedUncut(PieceKind kind, int round) {
    boolean bothCounted =
        round > 0
            && heard.yarn(kind, round) instanceof StitchCounts
            && heard.yarn(kind, round - 1) instanceof StitchCounts;
    return bothCounted
        ? heard
            .tails()
            .add(heard.stitches(kind, round, true))
            .subtract(heard.stitches(kind, round, false))
        : BigDecimal.ZERO;
  }

  /**
   * {@return where the length of a round comes from}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   */
  public Basis basis(PieceKind kind, int round) {
    return heard.basis(kind, round);
  }

  /** {@return all amounts of all samples held against what is reckoned, in the brief's order} */
  public List<Held> held() {
    List<Held> held = new ArrayList<>();
    for (int i = 0; i < brief.stitching().samples().size(); i++) {
      Sample sample = brief.stitching().samples().get(i);
      for (int j = 0; j < sample.takes().size(); j++) {
        held.add(heard.held(i, j));
      }
    }
    return held;
  }

  /** {@return amounts that leave nothing for the stitches, in the order they were heard} */
  List<Held> tooLight() {
    return heard.tooLight();
  }
}
