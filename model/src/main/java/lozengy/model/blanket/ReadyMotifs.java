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
 * A brief's motifs made ready, by ordinal of the kind of piece, round and yarn; null for a kind
 * without a motif. The arrays are not to be changed.
 *
 * @param motifs the motifs
 * @param needMillimetres what a round takes in each yarn, rounded down
 * @param uncutMillimetres by kind and round, how much less a round takes where its yarn goes on
 *     from the round before it, rounded down
 * @param toneAllows whether a round may take each yarn by its tone
 */
record ReadyMotifs(
    Motif[] motifs,
    long[][][] needMillimetres,
    long[][] uncutMillimetres,
    boolean[][][] toneAllows) {

  static ReadyMotifs of(Brief brief, ReadyYarns yarns) {
    int kinds = PieceKind.values().length;
    ReadyMotifs ready =
        new ReadyMotifs(
            new Motif[kinds], new long[kinds][][], new long[kinds][], new boolean[kinds][][]);
    RoundLengths lengths = RoundLengths.of(brief);
    brief.motifs().forEach((kind, motif) -> ready.add(kind, motif, brief, yarns, lengths));
    return ready;
  }

  private void add(PieceKind of, Motif motif, Brief brief, ReadyYarns yarns, RoundLengths lengths) {
    List<Round> rounds = motif.rounds();
    int kind = of.ordinal();
    int count = yarns.tones().length;
    motifs[kind] = motif;
    needMillimetres[kind] = new long[rounds.size()][count];
    uncutMillimetres[kind] = new long[rounds.size()];
    toneAllows[kind] = new boolean[rounds.size()][count];
    for (int round = 0; round < rounds.size(); round++) {
      YarnAmount amount = lengths.amount(of, round);
      uncutMillimetres[kind][round] =
          brief.stitching().inHand(Ratio.of(lengths.savedUncut(of, round))).down();
      for (int yarn = 0; yarn < count; yarn++) {
        Ball ball = brief.yarns().get(yarn).ball().orElse(null);
        needMillimetres[kind][round][yarn] =
            brief.stitching().inHand(amount.millimetresIn(ball)).down();
        toneAllows[kind][round][yarn] = rounds.get(round).tones().contains(yarns.tones()[yarn]);
      }
    }
  }

  /** How many rounds a piece of a kind has. */
  int roundCount(PieceKind kind) {
    return motifs[kind.ordinal()].rounds().size();
  }
}
