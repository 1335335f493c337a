package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.check.Check;
import lozengy.model.score.Points;
import lozengy.model.score.Scorer;
import lozengy.solver.bound.PieceGroups.Group;

/** The program of a tiny blanket, and the counts of arrangements put into it as rows. */
final class PinnedProgram {

  final Blanket blanket;
  final Points points;
  private final PieceGroups groups;
  private final int[] over;

  PinnedProgram(Blanket blanket) {
    this.blanket = blanket;
    this.points = Points.of(blanket);
    this.groups = PieceGroups.of(blanket);
    this.over = new int[blanket.layerCount()];
    for (int layer = 0; layer < over.length; layer++) {
      over[layer] = new WholeCounts(blanket, points.targets(), layer).over();
    }
  }

  /** The program with these floors. */
  ScoreProgram program(List<List<RepeatFloor>> floors) {
    double certain = 100 - points.ofPairs() - points.whole(Part.LEEWAY);
    return new ScoreProgram(blanket, points, groups, floors, over, certain);
  }

  /** By layer, the floor 0. */
  List<List<RepeatFloor>> noFloors() {
    List<List<RepeatFloor>> floors = new ArrayList<>();
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      int all = new Region(blanket, layer).allPairs();
      floors.add(List.of(RepeatFloor.none(all, blanket.yarnCount())));
    }
    return floors;
  }

  /** Adds the rows that say how many pieces of each group have a yarn in a round. */
  LinearProgram pinned(ScoreProgram score, int[][][] nodes) {
    for (int g = 0; g < nodes.length; g++) {
      for (int round = 0; round < nodes[g].length; round++) {
        for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
          if (score.node(g, round, yarn) != ScoreProgram.NONE) {
            score.program().equalTo(nodes[g][round][yarn]);
            score.program().put(score.node(g, round, yarn), 1);
          }
        }
      }
    }
    return score.program();
  }

  /** By group, round and yarn, how many pieces show it. */
  int[][][] nodes(Sequences sequences) {
    int[][][] nodes = new int[groups.groups().size()][][];
    for (int g = 0; g < nodes.length; g++) {
      nodes[g] = new int[groups.groups().get(g).allowed().length][blanket.yarnCount()];
    }
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int g = 0; g < nodes.length; g++) {
        if (!groups.fixed().contains(piece) && of(groups.groups().get(g), piece)) {
          for (int round = 0; round < nodes[g].length; round++) {
            nodes[g][round][sequences.yarn(piece, round)]++;
          }
        }
      }
    }
    return nodes;
  }

  private boolean of(Group group, int piece) {
    boolean of = group.kind() == blanket.kind(piece);
    for (int round = 0; of && round < group.allowed().length; round++) {
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        of &= group.allowed()[round][yarn] == blanket.domains().mayShow(piece, round, yarn);
      }
    }
    return of;
  }

  /** Shows every way to fill the open rounds by tones and bans. */
  void each(int piece, int round, Sequences sequences, BiConsumer<Sequences, Boolean> to) {
    if (piece == blanket.pieceCount()) {
      to.accept(sequences, Check.faults(blanket, sequences).isEmpty());
    } else if (round == blanket.roundCount(piece)) {
      each(piece + 1, 0, sequences, to);
    } else if (blanket.locked(piece, round) != Sequences.OPEN) {
      each(piece, round + 1, sequences, to);
    } else {
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        if (blanket.domains().mayShow(piece, round, yarn)) {
          sequences.set(piece, round, yarn);
          each(piece, round + 1, sequences, to);
        }
      }
      sequences.set(piece, round, Sequences.OPEN);
    }
  }

  /** Over all counts that valid arrangements have, how far the program's most is above the best. */
  double gap() {
    Map<String, int[][][]> counts = new LinkedHashMap<>();
    Map<String, Double> best = new LinkedHashMap<>();
    Map<String, int[][][]> tooMuch = new LinkedHashMap<>();
    each(
        0,
        0,
        blanket.locks(),
        (sequences, valid) -> {
          int[][][] nodes = nodes(sequences);
          String key = Arrays.deepToString(nodes);
          if (valid) {
            counts.put(key, nodes);
            double total = Scorer.score(blanket, sequences, Optional.empty()).total();
            best.merge(key, total, Math::max);
          } else if (lacks(sequences) || blanket.pieceCount() == 1) {
            tooMuch.put(key, nodes);
          }
        });
    assertTrue(best.size() > 1, "only " + best.size() + " ways to count");
    double gap = 0;
    for (Map.Entry<String, Double> each : best.entrySet()) {
      ScoreProgram score = program(noFloors());
      double most = ExactProgram.most(pinned(score, counts.get(each.getKey())));
      assertTrue(most >= each.getValue() - 1e-7, each + " above " + most);
      gap += most - each.getValue();
    }
    for (Map.Entry<String, int[][][]> each : tooMuch.entrySet()) {
      ScoreProgram score = program(noFloors());
      double most = ExactProgram.most(pinned(score, each.getValue()));
      assertEquals(Double.NEGATIVE_INFINITY, most, each.getKey());
    }
    return gap;
  }

  private boolean lacks(Sequences sequences) {
    long[] used = blanket.usedMillimetres(sequences);
    boolean lacks = false;
    for (int yarn = 0; yarn < used.length; yarn++) {
      lacks |= used[yarn] > blanket.yarns().usableMillimetres(yarn);
    }
    return lacks;
  }
}
