package lozengy.model.brief;

import java.util.OptionalInt;
import lozengy.model.input.Nulls;

/**
 * What must hold of every arrangement. Two borders on a seam always differ.
 *
 * @param minContrast CIEDE2000 that two borders on a seam must reach at least; 0: only the same
 *     yarn is a repeat
 * @param withinPiece which rounds of one piece must differ
 * @param centresDiffer whether the centres of two pieces on a seam must be in different yarns
 * @param lotsApart whether two dye lots of one shade must not meet: as borders on a seam, nor as
 *     rounds side by side in a piece
 * @param copies how many pieces may share a sequence, at least 1; empty: any number
 * @param keepBackPercent part of each yarn's stock that stays untouched, 0 to 100
 */
public record Rules(
    double minContrast,
    WithinPiece withinPiece,
    boolean centresDiffer,
    boolean lotsApart,
    OptionalInt copies,
    double keepBackPercent) {

  /** What holds where a brief says nothing. */
  public static final Rules DEFAULT =
      new Rules(0, WithinPiece.ADJACENT_DIFFER, false, true, OptionalInt.empty(), 0);

  /** Which rounds of one piece must be in different yarns. */
  public enum WithinPiece {
    /** Rounds beside each other. */
    ADJACENT_DIFFER("adjacent-differ"),
    /** All. */
    ALL_DIFFER("all-differ"),
    /** None. */
    FREE("free");

    private final String word;

    WithinPiece(String word) {
      this.word = word;
    }

    /** {@return the word used in files} */
    public String word() {
      return word;
    }
  }

  /**
   * Checks the ranges.
   *
   * @param minContrast CIEDE2000 that two borders on a seam must reach at least; 0: only the same
   *     yarn is a repeat
   * @param withinPiece which rounds of one piece must differ
   * @param centresDiffer whether the centres of two pieces on a seam must be in different yarns
   * @param lotsApart whether two dye lots of one shade must not meet: as borders on a seam, nor as
   *     rounds side by side in a piece
   * @param copies how many pieces may share a sequence, at least 1; empty: any number
   * @param keepBackPercent part of each yarn's stock that stays untouched, 0 to 100
   * @throws IllegalArgumentException if a number is out of its range
   */
  public Rules {
    Nulls.refuse("withinPiece copies", withinPiece, copies);
    if (!(minContrast >= 0 && minContrast <= 100)) {
      throw new IllegalArgumentException("min-contrast must be 0 to 100");
    }
    if (copies.isPresent() && copies.getAsInt() < 1) {
      throw new IllegalArgumentException("copies must be at least 1");
    }
    if (!(keepBackPercent >= 0 && keepBackPercent <= 100)) {
      throw new IllegalArgumentException("keep-back must be 0 % to 100 %");
    }
  }

  /**
   * {@return these rules with another least contrast of borders}
   *
   * @param value CIEDE2000, 0 to 100
   */
  public Rules withMinContrast(double value) {
    return new Rules(value, withinPiece, centresDiffer, lotsApart, copies, keepBackPercent);
  }

  /**
   * {@return these rules with other rounds of a piece that must differ}
   *
   * @param value which
   */
  public Rules withWithinPiece(WithinPiece value) {
    return new Rules(minContrast, value, centresDiffer, lotsApart, copies, keepBackPercent);
  }

  /**
   * {@return these rules with centres that must differ on a seam, or need not}
   *
   * @param value whether they must
   */
  public Rules withCentresDiffer(boolean value) {
    return new Rules(minContrast, withinPiece, value, lotsApart, copies, keepBackPercent);
  }

  /**
   * {@return these rules with dye lots that must not meet, or may}
   *
   * @param value whether they must not
   */
  public Rules withLotsApart(boolean value) {
    return new Rules(minContrast, withinPiece, centresDiffer, value, copies, keepBackPercent);
  }

  /**
   * {@return these rules with another number of pieces that may share a sequence}
   *
   * @param value at least 1; empty: any number
   */
  public Rules withCopies(OptionalInt value) {
    return new Rules(minContrast, withinPiece, centresDiffer, lotsApart, value, keepBackPercent);
  }

  /**
   * {@return these rules with another part of each yarn's stock kept back}
   *
   * @param percent 0 to 100
   */
  public Rules withKeepBack(double percent) {
    return new Rules(minContrast, withinPiece, centresDiffer, lotsApart, copies, percent);
  }
}
