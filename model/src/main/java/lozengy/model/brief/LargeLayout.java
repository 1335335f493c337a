package lozengy.model.brief;

import java.util.Map;
import lozengy.model.input.Words;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;

/** Says of a layout that is too large what it would need. */
final class LargeLayout {

  /** The largest layout that is planned, in pieces. */
  static final int MOST_PIECES = 250_000;

  /**
   * Bytes of memory that a piece takes at least while it is planned: its place, its name and its
   * entry by name (200), its pairs and neighbours (200), its state and note (100).
   */
  private static final long BYTES_PER_PIECE = 500;

  /** The same for a round: its lock, its yarn now, at best and in the file read and written. */
  private static final long BYTES_PER_ROUND = 60;

  private LargeLayout() {}

  static boolean tooLarge(LayoutSize size) {
    return size.pieces() > MOST_PIECES;
  }

  static String found(Brief brief) {
    LayoutSize size = brief.layout();
    long squares = size.squares();
    long sides = size.sideTriangles() ? 2L * (size.across() + (long) size.down() - 2) : 0;
    long corners = size.cornerTriangles() ? 4 : 0;
    Map<PieceKind, Long> counts =
        Map.of(
            PieceKind.SQUARE,
            squares,
            PieceKind.SIDE_TRIANGLE,
            sides,
            PieceKind.CORNER_TRIANGLE,
            corners);
    double rounds = 0;
    for (Map.Entry<PieceKind, Motif> motif : brief.motifs().entrySet()) {
      rounds += (double) counts.get(motif.getKey()) * motif.getValue().rounds().size();
    }
    double gigabytes = ((double) size.pieces() * BYTES_PER_PIECE + rounds * BYTES_PER_ROUND) / 1e9;
    return String.format(
        java.util.Locale.ROOT,
        "%,d across and %,d down make %,d pieces with %,.0f rounds, which would need some %,.1f GB of"
            + " memory",
        size.across(),
        size.down(),
        size.pieces(),
        rounds,
        gigabytes);
  }

  static String remedy() {
    return "The largest layout planned has "
        + Words.number(MOST_PIECES)
        + " pieces; plan it in parts, or give smaller numbers";
  }
}
