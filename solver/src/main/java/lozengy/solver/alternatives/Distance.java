package lozengy.solver.alternatives;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Tone;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * How far two arrangements of one blanket are apart: the share of the rounds free to change whose
 * yarns differ, after one of them was turned or mirrored, and its yarns renamed, so that as few
 * differ as possible.
 *
 * <p>The symmetries are those of the layout that keep kinds and free rounds. A renaming exchanges
 * yarns of the same tone, whether or not the copy would score the same: so the distance to any copy
 * of an arrangement is 0, and no distance is overstated. For each symmetry the best renaming is an
 * assignment problem, which the Hungarian method of Kuhn and Munkres solves: O(symmetries x (rounds
 * + yarns cubed)).
 */
public final class Distance {

  private final Blanket blanket;
  private final List<int[]> symmetries;
  private final List<List<Integer>> tones = new ArrayList<>();

  /**
   * Distances between arrangements of a blanket.
   *
   * @param blanket the blanket
   */
  public Distance(Blanket blanket) {
    this.blanket = blanket;
    this.symmetries = Symmetries.of(blanket);
    for (Tone tone : Tone.values()) {
      List<Integer> yarns = new ArrayList<>();
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        if (blanket.yarns().tone(yarn) == tone) {
          yarns.add(yarn);
        }
      }
      tones.add(yarns);
    }
  }

  /**
   * The distance.
   *
   * @param one the one arrangement
   * @param other the other arrangement
   * @return 0 to 1; 0 where no round is free
   */
  public double between(Sequences one, Sequences other) {
    double least = 1;
    for (int[] symmetry : symmetries) {
      int[][] agree = agreements(one, other, symmetry);
      long same = 0;
      for (List<Integer> yarns : tones) {
        same += mostAgreement(agree, yarns);
      }
      least = Math.min(least, share(same, total(agree)));
    }
    return least;
  }

  /** The symmetries: where each carries every piece. */
  List<int[]> symmetries() {
    return symmetries;
  }

  private int[][] agreements(Sequences one, Sequences other, int[] symmetry) {
    int[][] agree = new int[blanket.yarnCount()][blanket.yarnCount()];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (blanket.free(piece, round)) {
          agree[one.yarn(piece, round)][other.yarn(symmetry[piece], round)]++;
        }
      }
    }
    return agree;
  }

  private static long total(int[][] agree) {
    long total = 0;
    for (int[] row : agree) {
      for (int count : row) {
        total += count;
      }
    }
    return total;
  }

  private static double share(long same, long total) {
    return total == 0 ? 0 : (double) (total - same) / total;
  }

  private static long mostAgreement(int[][] agree, List<Integer> yarns) {
    if (yarns.isEmpty()) {
      return 0;
    }
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    // yarns of the other side are numbered from behind, so that the two sides do not share names
    Set<Integer> names = new LinkedHashSet<>(yarns);
    Set<Integer> others = new LinkedHashSet<>();
    yarns.forEach(yarn -> others.add(-1 - yarn));
    names.forEach(graph::addVertex);
    others.forEach(graph::addVertex);
    for (int yarn : names) {
      for (int other : others) {
        graph.setEdgeWeight(graph.addEdge(yarn, other), -agree[yarn][-1 - other]);
      }
    }
    double weight =
        new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, names, others)
            .getMatching()
            .getWeight();
    return Math.round(-weight);
  }
}
