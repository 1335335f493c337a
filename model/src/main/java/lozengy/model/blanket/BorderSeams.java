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
 * seam is open still, the other takes both. Immutable.
 */
public final class BorderSeams {

  private final Brief brief;
  private final Layout layout;
  private final ReadyMotifs motifs;
  private final KnownPieces known;
  private final long[] half;
  private final int[] halves;
  private final byte[] halvesOfFirst;

  BorderSeams(
      Brief brief, Measures measures, Layout layout, ReadyMotifs motifs, KnownPieces known) {
    this.brief = brief;
    this.layout = layout;
    this.motifs = motifs;
    this.known = known;
    this.half = new long[brief.yarns().size()];
    this.halves = new int[layout.places().size()];
    this.halvesOfFirst = new byte[brief.joiningInBorders().isPresent() ? layout.seams().size() : 0];
    brief.joiningInBorders().ifPresent(joining -> share(joining, measures));
  }

  private void share(BorderJoining joining, Measures measures) {
    BigDecimal millimetres =
        BigDecimal.valueOf(measures.sideCm()).movePointRight(1).divide(BigDecimal.valueOf(2));
    Arrays.setAll(
        half,
        yarn -> {
          Ball ball = brief.yarns().get(yarn).ball().orElse(null);
          return brief.stitching().inHand(joining.rate().along(millimetres, ball)).down();
        });
    Pairs seams = layout.seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      boolean open =
          known.states()[first] != PieceState.JOINED || known.states()[second] != PieceState.JOINED;
      boolean without = open && gone(first);
      boolean otherWithout = open && gone(second);
      halvesOfFirst[seam] = (byte) (without == otherWithout ? 1 : without ? 0 : 2);
      halves[first] += halvesOfFirst[seam];
      halves[second] += 2 - halvesOfFirst[seam];
    }
  }

  /** Whether a border is worked in a yarn that is gone. */
  private boolean gone(int piece) {
    int rounds = motifs.roundCount(layout.places().get(piece).kind());
    return known.roundsWorked()[piece] == rounds
        && brief.yarns().get(known.locks().yarn(piece, rounds - 1)).gone();
  }

  /**
   * {@return millimetres of a yarn that half a seam takes, rounded down; 0 where pieces are not
   * joined in their borders' yarns}
   *
   * @param yarn the yarn's index, from 0
   */
  public long halfMillimetres(int yarn) {
    return half[yarn];
  }

  /**
   * {@return how many halves of seams the yarn of a piece's border takes; 0 where pieces are not
   * joined in their borders' yarns}
   *
   * @param piece the piece's index, from 0
   */
  public int halves(int piece) {
    return halves[piece];
  }

  /**
   * {@return how many of a seam's two halves the border of its first piece takes, where pieces are
   * joined in their borders' yarns; the second takes the others}
   *
   * @param seam the seam's number in {@link Layout#seams}
   */
  public int halvesOfFirst(int seam) {
    return halvesOfFirst[seam];
  }
}
