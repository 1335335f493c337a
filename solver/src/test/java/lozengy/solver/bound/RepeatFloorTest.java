package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.model.score.LayerDetail;
import lozengy.model.score.Scorer;
import lozengy.solver.RandomBriefs;
import org.junit.jupiter.api.Test;

/** Floors under repeats against what arrangements show, counted by the model. */
class RepeatFloorTest {

  /** Random rounds by tone improve pair by pair, so that many lie close to the floor. */
  @Test
  void noLayerHasFewerRepeatsThanItsFloor() {
    int held = 0;
    for (long seed = 1; seed <= 120; seed++) {
      Brief brief = RandomBriefs.of(seed, 5, 12);
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      RepeatFloor[] floors = new RepeatFloor[blanket.layerCount()];
      for (int layer = 0; layer < floors.length; layer++) {
        double[][] wanted = new double[PieceKind.values().length][blanket.yarnCount()];
        for (double[] counts : wanted) {
          Arrays.setAll(counts, yarn -> yarn % 3 * blanket.pieceCount() / 4.0);
        }
        LayerRepeats repeats = new LayerRepeats(blanket, layer, 1);
        for (int stage = 0; stage <= 2; stage++) {
          floors[layer] = repeats.at(stage, wanted, () -> false);
        }
      }
      SplittableRandom random = new SplittableRandom(seed);
      for (int arrangement = 0; arrangement < 20; arrangement++) {
        Sequences sequences = AloofBorders.random(blanket, random);
        if (sequences != null) {
          for (LayerDetail detail : Scorer.layers(blanket, sequences)) {
            int[][] counts = counts(blanket, sequences, detail.layer());
            double floor = floor(floors[detail.layer()], counts);
            assertTrue(
                detail.repeats() >= floor - 1e-6,
                "seed %d, layer %d: %d repeats, floor %f"
                    .formatted(seed, detail.layer(), detail.repeats(), floor));
          }
          held++;
        }
      }
    }
    assertTrue(held > 300, "only " + held + " arrangements");
  }

  /** By kind of piece and yarn, how many places show it in a layer. */
  private static int[][] counts(Blanket blanket, Sequences sequences, int layer) {
    int[][] counts = new int[PieceKind.values().length][blanket.yarnCount()];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int round = blanket.roundCount(piece) - 1 - layer;
      if (round >= 0) {
        counts[blanket.kind(piece).ordinal()][sequences.yarn(piece, round)]++;
      }
    }
    return counts;
  }

  /** What a floor says of so many places by kind of piece and yarn. */
  static double floor(RepeatFloor floor, int[][] counts) {
    double sum = floor.base();
    for (int yarn = 0; yarn < counts[0].length; yarn++) {
      double most = floor.toll()[yarn].length == 0 ? 0 : Double.NEGATIVE_INFINITY;
      for (int line = 0; line < floor.toll()[yarn].length; line++) {
        double height = floor.height()[yarn][line];
        for (int kind = 0; kind < counts.length; kind++) {
          height -= floor.toll()[yarn][line][kind] * counts[kind][yarn];
        }
        most = Math.max(most, height);
      }
      sum += most;
    }
    return Math.max(sum, floor.least());
  }
}
