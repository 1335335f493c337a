package lozengy.model.brief;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import lozengy.model.input.Nulls;

/**
 * A look that is asked for: what a designer means a blanket to be beyond the rules of its making.
 * What is silent here asks for nothing.
 *
 * @param symmetry how the blanket is the same as its own image
 * @param contrast the contrast wanted of borders on a seam and of rounds side by side
 * @param borders codes of the yarns that all borders take: none for any, one for a fixed border,
 *     two that alternate like the squares of a chessboard
 * @param zones where only some yarns may lie
 * @param apart pairs of yarns that never meet on a seam
 * @param counts how many pieces show a yarn, at least or at most
 * @param fade yarns in an order along a direction, where asked for
 * @param order whether borders come again regularly, where anything is asked
 */
public record Look(
    Symmetry symmetry,
    Contrast contrast,
    List<String> borders,
    List<Zone> zones,
    List<Pair> apart,
    List<Count> counts,
    Optional<Fade> fade,
    Optional<Order> order) {

  /** The contrast of a calm blanket. */
  public static final double CALM = 0;

  /** The contrast of a lively blanket, and of one of which nothing is said. */
  public static final double LIVELY = 100;

  /** Asks for nothing. */
  public static final Look NONE =
      new Look(
          Symmetry.NONE,
          new Contrast(LIVELY, LIVELY),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          Optional.empty(),
          Optional.empty());

  /** {@return whether nothing is asked} */
  public boolean asksNothing() {
    // for a first comparison Java makes code, which takes some milliseconds
    return this == NONE || equals(NONE);
  }

  /**
   * The contrast wanted, in percent of what counts as full: 0 (calm) to 100 (lively).
   *
   * @param between of two borders on a seam; {@link #LIVELY} where nothing is said
   * @param within of two rounds side by side in a piece; {@link #LIVELY} where nothing is said
   */
  public record Contrast(double between, double within) {

    /**
     * Checks the ranges.
     *
     * @param between of two borders on a seam
     * @param within of two rounds side by side in a piece
     * @throws IllegalArgumentException if one is not 0 to 100
     */
    public Contrast {
      if (!(between >= 0 && between <= 100 && within >= 0 && within <= 100)) {
        throw new IllegalArgumentException("contrast must be 0 to 100");
      }
    }

    /**
     * {@return what is wanted of one of the two}
     *
     * @param onSeams whether of borders on a seam, rather than of rounds in a piece
     */
    public double wanted(boolean onSeams) {
      return onSeams ? between : within;
    }
  }

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
      Nulls.refuse("where only", where, only);
      only = List.copyOf(only);
    }
  }

  /**
   * Two yarns.
   *
   * @param first a code
   * @param second another code
   * @param on where they do not
   */
  public record Pair(String first, String second, Meeting on) {

    /**
     * Refuses null.
     *
     * @param first a code
     * @param second another code
     * @param on where they do not
     */
    public Pair {
      Nulls.refuse("first second on", first, second, on);
    }

    /**
     * Two yarns that do not meet on seams.
     *
     * @param first a code
     * @param second another code
     */
    public Pair(String first, String second) {
      this(first, second, Meeting.SEAMS);
    }
  }

  /** Where two yarns can meet. */
  public enum Meeting {
    /** As borders on a seam. */
    SEAMS,
    /** As rounds side by side in a piece. */
    ROUNDS,
    /** Both. */
    BOTH;

    /** {@return the word used in files} */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** {@return whether it speaks of seams} */
    public boolean seams() {
      return this != ROUNDS;
    }

    /** {@return whether it speaks of rounds within a piece} */
    public boolean rounds() {
      return this != SEAMS;
    }
  }

  /**
   * How many pieces show a yarn. A piece counts once, however many of the rounds show the yarn.
   *
   * @param yarn the yarn's code
   * @param where the pieces it speaks of, and the rounds of which one must show the yarn
   * @param atLeast the least number of pieces, 0 or more
   * @param atMost the largest number of pieces, not below atLeast; empty for any number
   */
  public record Count(String yarn, Where where, int atLeast, OptionalInt atMost) {

    /**
     * Checks the numbers.
     *
     * @param yarn the yarn's code
     * @param where the pieces it speaks of, and the rounds of which one must show the yarn
     * @param atLeast the least number of pieces, 0 or more
     * @param atMost the largest number of pieces, not below atLeast; empty for any number
     * @throws IllegalArgumentException if atLeast is below 0 or above atMost
     */
    public Count {
      Nulls.refuse("yarn where atMost", yarn, where, atMost);
      if (atLeast < 0 || atMost.orElse(atLeast) < atLeast) {
        throw new IllegalArgumentException("0 <= at least <= at most");
      }
    }

    /**
     * The same with other numbers.
     *
     * @param least the least number of pieces
     * @param most the largest number of pieces; empty for any number
     * @return the count
     */
    public Count with(int least, OptionalInt most) {
      return new Count(yarn, where, least, most);
    }
  }

  /**
   * Checks the ranges and copies the lists.
   *
   * @param symmetry how the blanket is the same as its own image
   * @param contrast the contrast wanted of borders on a seam and of rounds side by side
   * @param borders codes of the yarns that all borders take: none for any, one for a fixed border,
   *     two that alternate like the squares of a chessboard
   * @param zones where only some yarns may lie
   * @param apart pairs of yarns that never meet on a seam
   * @param counts how many pieces show a yarn, at least or at most
   * @param fade yarns in an order along a direction, where asked for
   * @param order whether borders come again regularly, where anything is asked
   * @throws IllegalArgumentException if more than two borders are named
   */
  public Look {
    Nulls.refuse(
        "symmetry contrast borders zones apart counts fade order",
        symmetry,
        contrast,
        borders,
        zones,
        apart,
        counts,
        fade,
        order);
    if (borders.size() > 2) {
      throw new IllegalArgumentException("at most two borders alternate");
    }
    borders = List.copyOf(borders);
    zones = List.copyOf(zones);
    apart = List.copyOf(apart);
    counts = List.copyOf(counts);
  }

  /**
   * {@return whether the look asks for what a part of the score measures}
   *
   * @param part a part that is scored only if asked for; of others the look asks nothing
   */
  public boolean asksFor(Part part) {
    return part == Part.FADE && fade.isPresent() || part == Part.ORDER && order.isPresent();
  }

  /**
   * {@return this look with another symmetry}
   *
   * @param other what stands in its place
   */
  public Look withSymmetry(Symmetry other) {
    return new Look(other, contrast, borders, zones, apart, counts, fade, order);
  }

  /**
   * {@return this look with another contrast}
   *
   * @param between of borders on a seam, 0 to 100
   * @param within of rounds side by side in a piece, 0 to 100
   */
  public Look withContrast(double between, double within) {
    Contrast other = new Contrast(between, within);
    return new Look(symmetry, other, borders, zones, apart, counts, fade, order);
  }

  /**
   * {@return this look with other borders}
   *
   * @param codes yarns' codes: none, one for all borders, or two that alternate
   */
  public Look withBorders(String... codes) {
    return new Look(symmetry, contrast, List.of(codes), zones, apart, counts, fade, order);
  }

  /**
   * {@return this look with other zones}
   *
   * @param others what stands in their place
   */
  public Look withZones(List<Zone> others) {
    return new Look(symmetry, contrast, borders, others, apart, counts, fade, order);
  }

  /**
   * {@return this look with other pairs of yarns apart}
   *
   * @param others what stands in their place
   */
  public Look withApart(List<Pair> others) {
    return new Look(symmetry, contrast, borders, zones, others, counts, fade, order);
  }

  /**
   * This look with other counts.
   *
   * @param others the counts
   * @return the look
   */
  public Look withCounts(List<Count> others) {
    return new Look(symmetry, contrast, borders, zones, apart, others, fade, order);
  }

  /**
   * {@return this look with another fade}
   *
   * @param other what stands in its place
   */
  public Look withFade(Fade other) {
    return new Look(symmetry, contrast, borders, zones, apart, counts, Optional.of(other), order);
  }

  /**
   * {@return this look with another order of borders}
   *
   * @param other what stands in its place
   */
  public Look withOrder(Order other) {
    return new Look(symmetry, contrast, borders, zones, apart, counts, fade, Optional.of(other));
  }
}
