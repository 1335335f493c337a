package lozengy.solver.bound;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.solver.bound.PieceGroups.Group;

/**
 * Most distinct sequences that pieces can show: of each group no more than it has pieces, nor than
 * there are sequences of allowed yarns in which rounds side by side differ where they must; of the
 * pieces without a choice as many as are there.
 */
final class VarietyCap {

  private VarietyCap() {}

  /** The part of the pieces, 0 to 1, that distinct sequences can be at most. */
  static double of(Blanket blanket, PieceGroups groups) {
    Set<List<Integer>> certain = new HashSet<>();
    for (int piece : groups.fixed()) {
      certain.add(
          IntStream.range(0, blanket.roundCount(piece))
              .mapToObj(round -> blanket.locked(piece, round))
              .toList());
    }
    double distinct = certain.size();
    for (Group group : groups.groups()) {
      distinct += Math.min(group.count(), sequences(group));
    }
    return Math.min(1, distinct / blanket.orbits().leads().length);
  }

  private static double sequences(Group group) {
    boolean[][] allowed = group.allowed();
    double[] ending = new double[allowed[0].length];
    for (int round = 0; round < allowed.length; round++) {
      double before = 0;
      for (double each : ending) {
        before += each;
      }
      for (int yarn = 0; yarn < ending.length; yarn++) {
        double way = round == 0 ? 1 : before - (group.neighboursDiffer() ? ending[yarn] : 0);
        ending[yarn] = allowed[round][yarn] ? way : 0;
      }
    }
    double sequences = 0;
    for (double each : ending) {
      sequences += each;
    }
    return sequences;
  }
}
