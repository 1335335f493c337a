package lozengy.model.brief;

import java.util.List;
import java.util.Optional;

/**
 * A look that is asked for: what a designer means a blanket to be beyond the rules of its making.
 * What is silent here asks for nothing.
 *
 * @param symmetry how the blanket is the same as its own image
 * @param contrast the contrast wanted of borders on a seam and of rounds side by side, 0 (calm) to
 *     100 (lively) percent of what counts as full; {@link #LIVELY} where nothing is said
 * @param borders codes of the yarns that all borders take: none for any, one for a fixed border,
 *     two that alternate like the squares of a chessboard
 * @param zones where only some yarns may lie
 * @param apart pairs of yarns that never meet on a seam
 * @param fade yarns in an order along a direction, where asked for
 */
public record Look(
    Symmetry symmetry,
    double contrast,
    List<String> borders,
    List<Zone> zones,
    List<Pair> apart,
    Optional<Fade> fade) {

  /** The contrast of a calm blanket. */
  public static final double CALM = 0;

  /** The contrast of a lively blanket, and of one of which nothing is said. */
  public static final double LIVELY = 100;

  /** Asks for nothing. */
  public static final Look NONE =
      new Look(Symmetry.NONE, LIVELY, List.of(), List.of(), List.of(), Optional.empty());

  /**
   * Where only some yarns may lie.
   *
   * @param where the rounds it speaks of
   * @param only codes of the yarns that they may take, at least one
   */
  public record Zone(Where where, List<String> only) {

    /**
     * Copies the codes.
     *
     * @param where the rounds it speaks of
     * @param only codes of the yarns that they may take, at least one
     */
    public Zone {
      only = List.copyOf(only);
    }
  }

  /**
   * Two yarns.
   *
   * @param first a code
   * @param second another code
   */
  public record Pair(String first, String second) {}

  /**
   * Checks the ranges and copies the lists.
   *
   * @param symmetry how the blanket is the same as its own image
   * @param contrast the contrast wanted of borders on a seam and of rounds side by side, 0 (calm)
   *     to 100 (lively) percent of what counts as full; {@link #LIVELY} where nothing is said
   * @param borders codes of the yarns that all borders take: none for any, one for a fixed border,
   *     two that alternate like the squares of a chessboard
   * @param zones where only some yarns may lie
   * @param apart pairs of yarns that never meet on a seam
   * @param fade yarns in an order along a direction, where asked for
   * @throws IllegalArgumentException if contrast is not 0 to 100, or more than two borders are
   *     named
   */
  public Look {
    if (!(contrast >= 0 && contrast <= 100)) {
      throw new IllegalArgumentException("contrast must be 0 to 100");
    }
    if (borders.size() > 2) {
      throw new IllegalArgumentException("at most two borders alternate");
    }
    borders = List.copyOf(borders);
    zones = List.copyOf(zones);
    apart = List.copyOf(apart);
  }

  /**
   * {@return this look with another symmetry}
   *
   * @param other what stands in its place
   */
  public Look withSymmetry(Symmetry other) {
    return new Look(other, contrast, borders, zones, apart, fade);
  }

  /**
   * {@return this look with another contrast}
   *
   * @param other what stands in its place
   */
  public Look withContrast(double other) {
    return new Look(symmetry, other, borders, zones, apart, fade);
  }

  /**
   * {@return this look with other borders}
   *
   * @param codes yarns' codes: none, one for all borders, or two that alternate
   */
  public Look withBorders(String... codes) {
    return new Look(symmetry, contrast, List.of(codes), zones, apart, fade);
  }

  /**
   * {@return this look with other zones}
   *
   * @param others what stands in their place
   */
  public Look withZones(List<Zone> others) {
    return new Look(symmetry, contrast, borders, others, apart, fade);
  }

  /**
   * {@return this look with other pairs of yarns apart}
   *
   * @param others what stands in their place
   */
  public Look withApart(List<Pair> others) {
    return new Look(symmetry, contrast, borders, zones, others, fade);
  }

  /**
   * {@return this look with another fade}
   *
   * @param other what stands in its place
   */
  public Look withFade(Fade other) {
    return new Look(symmetry, contrast, borders, zones, apart, Optional.of(other));
  }
}
