package lozengy.model.check;

import java.util.Locale;

/** The rules, by the names that files and messages use. */
public enum RuleId {
  /** Every round has a yarn. */
  COMPLETE,
  /** Rounds hold what is locked or worked. */
  LOCKS,
  /** Every finished piece of the pile has a place. */
  PILE,
  /** Yarns that are banned from a piece stay out of it. */
  BANS,
  /** Rounds take yarns of the motif's tones. */
  TONES,
  /** Rounds in a zone take its yarns alone. */
  ZONES,
  /** Borders have the yarn that the look gives them. */
  BORDERS,
  /** Pieces that are each other's images are the same. */
  SYMMETRY,
  /** Two pieces on a seam have different borders. */
  NEIGHBOUR_BORDERS,
  /** Two pieces on a seam have different centres. */
  NEIGHBOUR_CENTRES,
  /** Yarns that are kept apart do not meet. */
  APART,
  /** Dye lots of one shade do not meet. */
  LOTS,
  /** Rounds of a piece differ. */
  WITHIN_PIECE,
  /** As many pieces show a yarn as the look asks for. */
  COUNTS,
  /** No more pieces share a sequence than allowed. */
  COPIES,
  /** No yarn runs out. */
  YARN_TOTALS;

  /** {@return the word used in files and on the terminal} */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
