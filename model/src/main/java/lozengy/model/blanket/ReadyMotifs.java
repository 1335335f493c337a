package lozengy.model.blanket;

import java.util.List;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Round;
import lozengy.model.layout.PieceKind;

/**
 * A brief's motifs made ready, by ordinal of the kind of piece, round and yarn; null for a kind
 * without a motif. The arrays are not to be changed.
 *
 * @param motifs the motifs
 * @param needMillimetres what a round takes in each yarn, rounded down
 * @param toneAllows whether a round may take each yarn by its tone
 */
record ReadyMotifs(Motif[] motifs, long[][][] needMillimetres, boolean[][][] toneAllows) {

  static ReadyMotifs of(Brief brief, ReadyYarns yarns) {
    int kinds = PieceKind.values().length;
    ReadyMotifs ready =
        new ReadyMotifs(new Motif[kinds], new long[kinds][][], new boolean[kinds][][]);
    brief.motifs().forEach((kind, motif) -> ready.add(kind.ordinal(), motif, brief, yarns));
    return ready;
  }

  private void add(int kind, Motif motif, Brief brief, ReadyYarns yarns) {
    List<Round> rounds = motif.rounds();
    int count = yarns.tones().length;
    motifs[kind] = motif;
    needMillimetres[kind] = new long[rounds.size()][count];
    toneAllows[kind] = new boolean[rounds.size()][count];
    for (int round = 0; round < rounds.size(); round++) {
      for (int yarn = 0; yarn < count; yarn++) {
        Ball ball = brief.yarns().get(yarn).ball().orElse(null);
        needMillimetres[kind][round][yarn] = rounds.get(round).amount().millimetresIn(ball).down();
        toneAllows[kind][round][yarn] = rounds.get(round).tones().contains(yarns.tones()[yarn]);
      }
    }
  }

  /** How many rounds a piece of a kind has. */
  int roundCount(PieceKind kind) {
    return motifs[kind.ordinal()].rounds().size();
  }
}
