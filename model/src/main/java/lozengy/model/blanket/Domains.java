package lozengy.model.blanket;

import lozengy.model.layout.Layout;
import lozengy.model.layout.PieceKind;

/**
 * Which yarns rounds may take or show, each by itself: what their tones, bans, zones and the pile
 * leave them. Locks are not among it. Immutable.
 */
public final class Domains {

  private final Layout layout;
  private final ReadyMotifs motifs;
  private final KnownPieces known;
  private final boolean[][][] pileShows;

  Domains(Layout layout, ReadyMotifs motifs, KnownPieces known, boolean[][][] pileShows) {
    this.layout = layout;
    this.motifs = motifs;
    this.known = known;
    this.pileShows = pileShows;
  }

  /**
   * {@return whether a round that is free may take a yarn, by its tone, by bans and by zones}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean mayTake(int piece, int round, int yarn) {
    PieceKind kind = kind(piece);
    return motifs.toneAllows(kind, round, yarn)
        && !known.banned(piece, yarn)
        && known.look().allows(piece, round, motifs.roundCount(kind), yarn);
  }

  /**
   * {@return whether a piece of the pile may come to lie at a place: nothing of the place's own
   * piece is worked, and the pile has some of its kind}
   *
   * @param piece the piece's index, from 0
   */
  public boolean takesPile(int piece) {
    return known.roundsWorked()[piece] == 0 && pileShows[kind(piece).ordinal()] != null;
  }

  /**
   * {@return whether a planned piece of a kind can show a yarn in a round: by its tone, or because
   * a piece of the pile does}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean mayShow(PieceKind kind, int round, int yarn) {
    return motifs.toneAllows(kind, round, yarn) || pileShows(kind, round, yarn);
  }

  /**
   * {@return whether a planned piece that is not locked can show a yarn in a round: as {@link
   * #mayTake} says, or because a piece of the pile does}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean mayShow(int piece, int round, int yarn) {
    return mayTake(piece, round, yarn) || pileShows(kind(piece), round, yarn);
  }

  private boolean pileShows(PieceKind kind, int round, int yarn) {
    boolean[][] shows = pileShows[kind.ordinal()];
    return shows != null && shows[round][yarn];
  }

  private PieceKind kind(int piece) {
    return layout.places().get(piece).kind();
  }
}
