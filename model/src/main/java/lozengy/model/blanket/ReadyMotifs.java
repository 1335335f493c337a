package lozengy.model.blanket;

import java.util.List;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Round;
import lozengy.model.brief.RoundLengths;
import lozengy.model.brief.YarnAmount;
import lozengy.model.layout.PieceKind;
import lozengy.model.unit.Ratio;

/**
 * A brief's motifs made ready: what each round of a kind of piece takes, and which yarns it may
 * have by their tones. A kind without a motif has no rounds to ask of. Immutable.
 */
public final class ReadyMotifs {

  private static final int KINDS = PieceKind.values().length;

  private final Motif[] motifs = new Motif[KINDS];
  private final long[][][] need = new long[KINDS][][];
  private final long[][] uncut = new long[KINDS][];
  private final boolean[][][] toneAllows = new boolean[KINDS][][];

  ReadyMotifs(Brief brief, ReadyYarns yarns) {
    RoundLengths lengths = RoundLengths.of(brief);
    brief.motifs().forEach((kind, motif) -> add(kind, motif, brief, yarns, lengths));
  }

  private void add(PieceKind of, Motif motif, Brief brief, ReadyYarns yarns, RoundLengths lengths) {
    List<Round> rounds = motif.rounds();
    int kind = of.ordinal();
    int count = yarns.count();
    motifs[kind] = motif;
    need[kind] = new long[rounds.size()][count];
    uncut[kind] = new long[rounds.size()];
    toneAllows[kind] = new boolean[rounds.size()][count];
    for (int round = 0; round < rounds.size(); round++) {
      YarnAmount amount = lengths.amount(of, round);
      uncut[kind][round] = brief.stitching().inHand(Ratio.of(lengths.savedUncut(of, round))).down();
      for (int yarn = 0; yarn < count; yarn++) {
        Ball ball = brief.yarns().get(yarn).ball().orElse(null);
        need[kind][round][yarn] = brief.stitching().inHand(amount.millimetresIn(ball)).down();
        toneAllows[kind][round][yarn] = rounds.get(round).tones().contains(yarns.tone(yarn));
      }
    }
  }

  /** The motif of a kind, or null. */
  Motif motif(PieceKind kind) {
    return motifs[kind.ordinal()];
  }

  /** How many rounds a piece of a kind has. */
  int roundCount(PieceKind kind) {
    return motif(kind).rounds().size();
  }

  /**
   * {@return millimetres that a round of a kind is worked with in a yarn, joining aside; rounded
   * down}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public long needMillimetres(PieceKind kind, int round, int yarn) {
    return need[kind.ordinal()][round][yarn];
  }

  /**
   * {@return how much less a round of a kind takes, in mm, where its yarn goes on from the round
   * before it without a cut; rounded down} Totals do not count on it; 0 where one of the two rounds
   * states an amount.
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   */
  public long uncutMillimetres(PieceKind kind, int round) {
    return uncut[kind.ordinal()][round];
  }

  /**
   * {@return whether a round of a kind may take a yarn by its tone}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean toneAllows(PieceKind kind, int round, int yarn) {
    return toneAllows[kind.ordinal()][round][yarn];
  }
}
