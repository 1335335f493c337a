package lozengy.model.blanket;

import java.math.BigDecimal;
import java.util.Arrays;
import lozengy.model.brief.Ball;
import lozengy.model.brief.BorderJoining;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Measures;
import lozengy.model.layout.Pairs;

/**
 * What borders' yarns take of the seams, where pieces are joined in these: of each seam the border
 * of either piece takes one half. Where one of the two is worked in a yarn that is gone and the
 * seam is open still, the other takes both.
 *
 * @param halfMillimetres by yarn, length in mm of half a seam, rounded down; 0 in all where pieces
 *     are not joined in their borders' yarns
 * @param halves by piece, how many halves its border takes
 * @param halvesOfFirst by seam, how many of its two halves the first piece's border takes
 */
record BorderSeams(long[] halfMillimetres, int[] halves, byte[] halvesOfFirst) {

  static BorderSeams of(
      Brief brief, Measures measures, Layout layout, ReadyMotifs motifs, KnownPieces known) {
    long[] half = new long[brief.yarns().size()];
    int[] halves = new int[layout.places().size()];
    Pairs seams = layout.seams();
    byte[] ofFirst = new byte[brief.joiningInBorders().isPresent() ? seams.size() : 0];
    if (brief.joiningInBorders().isPresent()) {
      BorderJoining joining = brief.joiningInBorders().get();
      BigDecimal millimetres =
          BigDecimal.valueOf(measures.sideCm()).movePointRight(1).divide(BigDecimal.valueOf(2));
      Arrays.setAll(
          half,
          yarn -> {
            Ball ball = brief.yarns().get(yarn).ball().orElse(null);
            return brief.stitching().inHand(joining.rate().along(millimetres, ball)).down();
          });
      for (int seam = 0; seam < seams.size(); seam++) {
        int first = seams.first()[seam];
        int second = seams.second()[seam];
        boolean open =
            known.states()[first] != PieceState.JOINED
                || known.states()[second] != PieceState.JOINED;
        boolean without = open && gone(brief, layout, motifs, known, first);
        boolean otherWithout = open && gone(brief, layout, motifs, known, second);
        ofFirst[seam] = (byte) (without == otherWithout ? 1 : without ? 0 : 2);
        halves[first] += ofFirst[seam];
        halves[second] += 2 - ofFirst[seam];
      }
    }
    return new BorderSeams(half, halves, ofFirst);
  }

  /** Whether a border is worked in a yarn that is gone. */
  private static boolean gone(
      Brief brief, Layout layout, ReadyMotifs motifs, KnownPieces known, int piece) {
    int rounds = motifs.roundCount(layout.places().get(piece).kind());
    return known.roundsWorked()[piece] == rounds
        && brief.yarns().get(known.locks().yarn(piece, rounds - 1)).gone();
  }
}
