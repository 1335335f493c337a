package lozengy.solver.bound;

import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Pairs;
import lozengy.model.score.Nearness;

/**
 * Arrangements that keep tones, locks, bans, zones and the rule for borders, and improve spread
 * greedily.
 */
final class AloofBorders {

  private AloofBorders() {}

  /** A random one, or null if borders could not be kept apart. */
  static Sequences random(Blanket blanket, SplittableRandom random) {
    Sequences sequences = blanket.locks();
    int[] order = new int[blanket.pieceCount()];
    for (int i = 0; i < order.length; i++) {
      int j = random.nextInt(i + 1);
      order[i] = order[j];
      order[j] = i;
    }
    for (int pass = 0; pass < 4; pass++) {
      for (int piece : order) {
        for (int round = 0; round < blanket.roundCount(piece); round++) {
          if (blanket.locked(piece, round) == Sequences.OPEN) {
            int best = best(blanket, sequences, piece, round, random);
            if (best < 0) {
              return null;
            }
            sequences.set(piece, round, best);
          }
        }
      }
    }
    return aloof(blanket, sequences) ? sequences : null;
  }

  private static int best(
      Blanket blanket, Sequences sequences, int piece, int round, SplittableRandom random) {
    int layer = blanket.roundCount(piece) - 1 - round;
    double[] cost = new double[blanket.yarnCount()];
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int pair = 0; pair < pairs.size(); pair++) {
        int other =
            pairs.first()[pair] == piece
                ? pairs.second()[pair]
                : pairs.second()[pair] == piece ? pairs.first()[pair] : -1;
        int at = other < 0 ? -1 : blanket.roundCount(other) - 1 - layer;
        if (at >= 0 && sequences.yarn(other, at) != Sequences.OPEN) {
          boolean apart = layer == 0 && nearness == Nearness.SEAM;
          cost[sequences.yarn(other, at)] += apart ? 1000 : nearness.weight();
        }
      }
    }
    int best = -1;
    for (int yarn = 0; yarn < cost.length; yarn++) {
      cost[yarn] += random.nextDouble();
      if (blanket.domains().mayTake(piece, round, yarn) && (best < 0 || cost[yarn] < cost[best])) {
        best = yarn;
      }
    }
    return best;
  }

  private static boolean aloof(Blanket blanket, Sequences sequences) {
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      boolean joined =
          blanket.state(first) == PieceState.JOINED && blanket.state(second) == PieceState.JOINED;
      if (!joined && sequences.border(first) == sequences.border(second)) {
        return false;
      }
    }
    return sequences.complete();
  }
}
