package lozengy.solver.search;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * The borders as a graph: which lie side by side on a seam, and which yarns may not meet there; or
 * the centres in the same way, of which the same can be asked. Seams between two borders that are
 * both fixed are facts, and left out.
 */
final class BorderGraph {

  private final Problem problem;
  private final boolean borders;
  private final int[][] beside;
  private final boolean[][] clash;

  private BorderGraph(Problem problem, boolean borders) {
    this.problem = problem;
    this.borders = borders;
    Slots slots = problem.slots();
    this.beside = new int[slots.orbits()][];
    Clashes clashes = problem.clashes();
    this.clash = new boolean[problem.yarns()][problem.yarns()];
    BitSet relations = new BitSet();
    for (int orbit = 0; orbit < beside.length; orbit++) {
      int slot = slot(orbit);
      IntStream.Builder others = IntStream.builder();
      for (int i = clashes.start()[slot]; i < clashes.start()[slot + 1]; i++) {
        int with = slots.orbit()[clashes.slot()[i]];
        if (with != orbit && clashes.slot()[i] == slot(with)) {
          others.add(with);
          relations.set(clashes.relation()[i]);
        }
      }
      beside[orbit] = others.build().toArray();
    }
    relations.stream().forEach(relation -> add(clashes.against()[relation]));
  }

  /** The graph of borders. */
  static BorderGraph of(Problem problem) {
    return new BorderGraph(problem, true);
  }

  /** The same of the centres, where any two of them may clash that are not borders; or null. */
  static BorderGraph ofCentres(Problem problem) {
    BorderGraph centres = new BorderGraph(problem, false);
    boolean any = Arrays.stream(centres.beside).anyMatch(others -> others.length > 0);
    return any && problem.blanket().layerCount() > 1 ? centres : null;
  }

  /** Adds the yarns that two borders may not have to those that any may not. */
  private void add(int[][] against) {
    for (int yarn = 0; yarn < clash.length; yarn++) {
      for (int other : against[yarn]) {
        clash[yarn][other] = true;
      }
    }
  }

  /** How many pieces, and so borders. */
  int size() {
    return beside.length;
  }

  /** The slot of a piece's border, or centre. */
  int slot(int orbit) {
    return borders ? problem.slots().border(orbit) : problem.slots().orbitStart()[orbit];
  }

  /** The pieces whose borders lie beside a piece's; not to be changed. */
  int[] beside(int orbit) {
    return beside[orbit];
  }

  /** Whether two yarns may not meet. */
  boolean clash(int a, int b) {
    return clash[a][b];
  }

  /** The yarns that some border may take or has. */
  int[] yarns() {
    boolean[] any = new boolean[clash.length];
    for (int orbit = 0; orbit < beside.length; orbit++) {
      for (int yarn : problem.domains().yarns(slot(orbit))) {
        any[yarn] = true;
      }
    }
    return IntStream.range(0, any.length).filter(y -> any[y]).toArray();
  }

  /** By piece 0 or 1, so that no two on a seam are of one side, where that is possible at all. */
  int[] sides() {
    int[] side = new int[beside.length];
    Arrays.fill(side, -1);
    int[] reached = new int[side.length];
    for (int first = 0; first < side.length; first++) {
      if (side[first] >= 0) {
        continue;
      }
      int end = 0;
      side[first] = 0;
      reached[end++] = first;
      for (int next = 0; next < end; next++) {
        for (int other : beside[reached[next]]) {
          if (side[other] < 0) {
            side[other] = 1 - side[reached[next]];
            reached[end++] = other;
          }
        }
      }
    }
    return side;
  }
}
