package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.input.Nulls;
import lozengy.model.stitch.StartingValues;
import lozengy.model.stitch.Stitch;
import lozengy.model.stitch.Terms;
import lozengy.model.stitch.YarnWeight;
import lozengy.model.unit.Ratio;

/**
 * What turns the stitches of rounds into yarn.
 *
 * @param terms in whose terms stitches are named
 * @param yarnWeight how thick the yarns are, where told
 * @param hookMillimetres diameter of the hook in mm, where told
 * @param perStitchMillimetres yarn that stitches take, in mm, where it was measured
 * @param tailMillimetres length in mm that is left over at each end of a length of yarn, 0 or more
 * @param samples what was weighed or measured
 * @param variesPercent by how many per cent the yarn may come to more or less, where that is stated
 * @param perMinute stitches of all kinds that are worked in a minute, above 0, where that is stated
 * @param handPercent per cent of what is reckoned that the hand takes, of all yarn alike, as counts
 *     in mid-work have told; 100 where nothing else is said
 */
public record Stitching(
    Terms terms,
    Optional<YarnWeight> yarnWeight,
    Optional<BigDecimal> hookMillimetres,
    Map<Stitch, BigDecimal> perStitchMillimetres,
    BigDecimal tailMillimetres,
    List<Sample> samples,
    Optional<BigDecimal> variesPercent,
    Optional<BigDecimal> perMinute,
    BigDecimal handPercent) {

  /** The hand takes what is reckoned. */
  public static final BigDecimal AS_RECKONED = new BigDecimal(100).stripTrailingZeros();

  /** A tail of 15 cm at each end: common practice, no source. */
  public static final BigDecimal USUAL_TAIL = new BigDecimal(150);

  /** Nothing is told. */
  public static final Stitching NONE =
      new Stitching(
          Terms.US,
          Optional.empty(),
          Optional.empty(),
          Map.of(),
          USUAL_TAIL,
          List.of(),
          Optional.empty(),
          Optional.empty(),
          AS_RECKONED);

  /** {@return whether nothing is told} */
  public boolean tellsNothing() {
    // for a first comparison Java makes code, which takes some milliseconds
    return this == NONE || equals(NONE);
  }

  /**
   * Copies the collections; equal numbers are held alike.
   *
   * @param terms in whose terms stitches are named
   * @param yarnWeight how thick the yarns are, where told
   * @param hookMillimetres diameter of the hook in mm, where told
   * @param perStitchMillimetres yarn that stitches take, in mm, where it was measured
   * @param tailMillimetres length in mm that is left over at each end of a length of yarn, 0 or
   *     more
   * @param samples what was weighed or measured
   * @param variesPercent by how many per cent the yarn may come to more or less, where that is
   *     stated
   * @param perMinute stitches of all kinds that are worked in a minute, above 0, where that is
   *     stated
   * @param handPercent per cent of what is reckoned that the hand takes, of all yarn alike
   */
  public Stitching {
    Nulls.refuse(
        "terms yarnWeight hookMillimetres perStitchMillimetres tailMillimetres samples variesPercent perMinute handPercent",
        terms,
        yarnWeight,
        hookMillimetres,
        perStitchMillimetres,
        tailMillimetres,
        samples,
        variesPercent,
        perMinute,
        handPercent);
    hookMillimetres = hookMillimetres.map(BigDecimal::stripTrailingZeros);
    Map<Stitch, BigDecimal> stated = new EnumMap<>(Stitch.class);
    perStitchMillimetres.forEach((stitch, each) -> stated.put(stitch, each.stripTrailingZeros()));
    perStitchMillimetres = Collections.unmodifiableMap(stated);
    tailMillimetres = tailMillimetres.stripTrailingZeros();
    samples = List.copyOf(samples);
    variesPercent = variesPercent.map(BigDecimal::stripTrailingZeros);
    perMinute = perMinute.map(BigDecimal::stripTrailingZeros);
    handPercent = handPercent.stripTrailingZeros();
  }

  /**
   * {@return the same in another hand}
   *
   * @param percent per cent of what is reckoned that it takes, above 0
   */
  public Stitching withHand(BigDecimal percent) {
    return new Stitching(
        terms,
        yarnWeight,
        hookMillimetres,
        perStitchMillimetres,
        tailMillimetres,
        samples,
        variesPercent,
        perMinute,
        percent);
  }

  /**
   * {@return what the hand takes of a length that is reckoned}
   *
   * @param reckoned the length
   */
  public Ratio inHand(Ratio reckoned) {
    return reckoned.times(handPercent.movePointLeft(2));
  }

  /** {@return how much yarn each stitch takes before any sample} */
  public StartingValues startingValues() {
    return StartingValues.of(perStitchMillimetres, yarnWeight, hookMillimetres);
  }
}
