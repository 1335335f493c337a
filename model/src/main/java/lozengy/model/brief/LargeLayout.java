package lozengy.model.brief;

import java.util.Locale;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;

/** Says of a layout that is too large what it would need. */
final class LargeLayout {

  /** The largest layout that is planned, in pieces. */
  static final int MOST_PIECES = 250_000;

  /** The same in rounds of all pieces together; the files of such a layout can still be read. */
  static final int MOST_ROUNDS = 1_500_000;

  /**
   * Memory that a piece takes while its arrangement is read, in bytes: 250 for its place and
   * neighbours, 800 for its line in the file. Measured with 100,801 pieces of five rounds.
   */
  private static final long BYTES_PER_PIECE = 1050;

  /** The same for a round. */
  private static final long BYTES_PER_ROUND = 40;

  private LargeLayout() {}

  /** How many pieces of a kind a brief's layout has; does not build the layout. */
  static long count(Brief brief, PieceKind kind) {
    long triangles = 2L * (brief.layout().across() + (long) brief.layout().down() - 2);
    return switch (kind) {
      case SQUARE -> brief.layout().squares();
      case SIDE_TRIANGLE -> brief.layout().sideTriangles() ? triangles : 0;
      case CORNER_TRIANGLE -> brief.layout().cornerTriangles() ? 4 : 0;
    };
  }

  private static double rounds(Brief brief) {
    double rounds = 0;
    for (PieceKind kind : brief.motifs().keySet()) {
      rounds += (double) count(brief, kind) * brief.motifs().get(kind).rounds().size();
    }
    return rounds;
  }

  static boolean tooLarge(Brief brief) {
    return brief.layout().pieces() > MOST_PIECES || rounds(brief) > MOST_ROUNDS;
  }

  static Mistake.Sort sort(Brief brief) {
    return MistakeCode.TOO_LARGE.about("pieces", MOST_PIECES, brief.layout().pieces());
  }

  static String found(Brief brief) {
    double pieces = brief.layout().pieces();
    double rounds = rounds(brief);
    return String.format(
        Locale.ROOT,
        "%,d across and %,d down make %,.0f pieces with %,.0f rounds; they would need at least"
            + " %,.1f GB of memory",
        brief.layout().across(),
        brief.layout().down(),
        pieces,
        rounds,
        (pieces * BYTES_PER_PIECE + rounds * BYTES_PER_ROUND) / 1e9);
  }

  static String remedy() {
    return "At most "
        + Words.number(MOST_PIECES)
        + " pieces with "
        + Words.number(MOST_ROUNDS)
        + " rounds are planned; plan in parts, or give smaller numbers";
  }
}
