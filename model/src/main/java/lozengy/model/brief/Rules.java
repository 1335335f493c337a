package lozengy.model.brief;

import java.util.OptionalInt;

/**
 * What must hold of every arrangement. Two borders on a seam always differ.
 *
 * @param minContrast CIEDE2000 that two borders on a seam must reach at least; 0: only the same
 *     yarn is a repeat
 * @param withinPiece which rounds of one piece must differ
 * @param copies how many pieces may share a sequence, at least 1; empty: any number
 * @param keepBackPercent part of each yarn's stock that stays untouched, 0 to 100
 */
public record Rules(
    double minContrast, WithinPiece withinPiece, OptionalInt copies, double keepBackPercent) {

  /** What holds where a brief says nothing. */
  public static final Rules DEFAULT =
      new Rules(0, WithinPiece.ADJACENT_DIFFER, OptionalInt.empty(), 0);

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
   * @param copies how many pieces may share a sequence, at least 1; empty: any number
   * @param keepBackPercent part of each yarn's stock that stays untouched, 0 to 100
   * @throws IllegalArgumentException if a number is out of its range
   */
  public Rules {
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
}
