package lozengy.model.stitch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;

/**
 * How much yarn each stitch takes to start with. Where it is stated, so much; else its {@link
 * Stitch#loops} times the length of a loop: pi x (hook + thickness of the yarn), or, where hook or
 * yarn weight are not told, the length at which the stated stitches have their loops on average.
 *
 * @param stated stitches of which the yarn is stated, in mm, above 0
 * @param loop length of a loop in mm; empty where it is not known, and the values only tell how
 *     stitches compare
 */
public record StartingValues(Map<Stitch, BigDecimal> stated, Optional<BigDecimal> loop) {

  private static final BigDecimal PI = new BigDecimal("3.14159265358979");

  /**
   * Copies the stated values.
   *
   * @param stated stitches of which the yarn is stated, in mm, above 0
   * @param loop length of a loop in mm; empty where it is not known
   */
  public StartingValues {
    stated = Map.copyOf(stated);
  }

  /**
   * The starting values of a yarn and a hook.
   *
   * @param stated stitches of which the yarn is stated, in mm, above 0
   * @param weight how thick the yarn is, where told
   * @param hook diameter of the hook in mm, where told
   * @return the values
   */
  public static StartingValues of(
      Map<Stitch, BigDecimal> stated, Optional<YarnWeight> weight, Optional<BigDecimal> hook) {
    Optional<BigDecimal> loop =
        weight.flatMap(
            yarn -> hook.map(across -> PI.multiply(across.add(yarn.thicknessMillimetres()))));
    return new StartingValues(stated, loop.or(() -> loopOf(stated)));
  }

  private static Optional<BigDecimal> loopOf(Map<Stitch, BigDecimal> stated) {
    BigDecimal millimetres = stated.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal loops =
        stated.keySet().stream().map(Stitch::loops).reduce(BigDecimal.ZERO, BigDecimal::add);
    return stated.isEmpty()
        ? Optional.empty()
        : Optional.of(millimetres.divide(loops, MathContext.DECIMAL128));
  }

  /** {@return whether the values are lengths, and do not just tell how stitches compare} */
  public boolean known() {
    return loop.isPresent();
  }

  /**
   * {@return how much yarn a stitch takes, in mm where that is known, else in loops}
   *
   * @param stitch the stitch
   */
  public BigDecimal of(Stitch stitch) {
    BigDecimal each = stated.get(stitch);
    return each != null ? each : stitch.loops().multiply(loop.orElse(BigDecimal.ONE));
  }

  /**
   * {@return how much yarn so many stitches take, as {@link #of(Stitch)} tells it}
   *
   * @param counts how many of each
   */
  public BigDecimal of(Map<Stitch, Integer> counts) {
    return counts.entrySet().stream()
        .map(each -> of(each.getKey()).multiply(BigDecimal.valueOf(each.getValue())))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
