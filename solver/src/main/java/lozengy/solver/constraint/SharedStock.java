package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import lozengy.solver.constraint.YarnLoad.Term;
import org.chocosolver.solver.variables.IntVar;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/**
 * What follows where a group of rounds and a group of yarns have only each other: the rounds take a
 * known length, so what the yarns have left over in the end is known in total, and no yarn may
 * leave more than that. At tight stock this bounds each yarn's use from below, which is what makes
 * the counts propagate. Only for rounds that take the same length in every yarn.
 */
final class SharedStock {

  private final ConstraintModel model;
  private final List<YarnLoad> loads;

  private SharedStock(ConstraintModel model, List<YarnLoad> loads) {
    this.model = model;
    this.loads = loads;
  }

  /** Posts it for all groups of a model. */
  static void post(ConstraintModel model) {
    // yarns are 0, 1, 2 …, classes of rounds -1, -2, …
    Graph<Integer, DefaultEdge> mayTake = new SimpleGraph<>(DefaultEdge.class);
    for (YarnLoad load : model.loads()) {
      mayTake.addVertex(load.yarn());
      for (Term term : load.terms()) {
        if (term.open() > 0) {
          mayTake.addVertex(-1 - term.index());
          mayTake.addEdge(load.yarn(), -1 - term.index());
        }
      }
    }
    for (Set<Integer> group : new ConnectivityInspector<>(mayTake).connectedSets()) {
      List<YarnLoad> yarns =
          model.loads().stream().filter(load -> group.contains(load.yarn())).toList();
      new SharedStock(model, yarns).post();
    }
  }

  private void post() {
    long unit = 0;
    for (YarnLoad load : loads) {
      unit = ReachableSums.gcd(unit, load.unit());
    }
    boolean overdrawn = loads.stream().anyMatch(load -> load.openCapacity() < 0);
    if (overdrawn || unit == 0 || !sameInEveryYarn()) {
      return;
    }
    long open = openLength() / unit;
    long[] most = new long[loads.size()];
    long total = 0;
    long greatest = 0;
    long size = 0;
    for (int i = 0; i < most.length; i++) {
      most[i] = loads.get(i).mostReachable() / unit;
      total += most[i];
      greatest = Math.max(greatest, most[i]);
      size += (loads.get(i).mostOpenUse() + loads.get(i).fixedUse()) / unit;
    }
    long spare = total - open;
    if (spare < 0) {
      model.model().falseConstraint().post();
    } else if (spare < greatest && size <= IntVar.MAX_INT_BOUND) {
      IntVar[] unused = new IntVar[most.length];
      for (int i = 0; i < most.length; i++) {
        unused[i] = unused(loads.get(i), unit, (int) most[i], (int) spare);
      }
      model.model().sum(unused, "=", (int) spare).post();
    }
  }

  private boolean sameInEveryYarn() {
    long[] lengths = new long[RoundClass.of(model.blanket()).size()];
    Arrays.fill(lengths, -1);
    for (YarnLoad load : loads) {
      for (Term term : load.terms()) {
        if (term.open() > 0) {
          if (lengths[term.index()] >= 0 && lengths[term.index()] != term.length()) {
            return false;
          }
          lengths[term.index()] = term.length();
        }
      }
    }
    return true;
  }

  /** What the rounds that may take one yarn or another take together, in mm. */
  private long openLength() {
    long length = 0;
    List<RoundClass> classes = RoundClass.of(model.blanket());
    boolean[] counted = new boolean[classes.size()];
    for (YarnLoad load : loads) {
      for (Term term : load.terms()) {
        if (term.open() > 0 && !counted[term.index()]) {
          counted[term.index()] = true;
          length += term.length() * model.openRounds(term.index());
        }
      }
    }
    return length;
  }

  /** What a yarn leaves of the most that it could give, in units. */
  private IntVar unused(YarnLoad load, long unit, int most, int spare) {
    // its bounds alone: of every value, of tens of thousands, a table of all counts would be made
    IntVar unused = model.model().intVar(0, Math.min(most, spare), true);
    List<IntVar> variables = new ArrayList<>(List.of(unused));
    List<Integer> lengths = new ArrayList<>(List.of(1));
    int sum = most;
    for (Term term : load.terms()) {
      if (term.open() > 0 && term.length() > 0) {
        int length = (int) (term.length() / unit);
        variables.add(model.counts(term.index())[load.yarn()]);
        lengths.add(length);
        sum += length * term.fixed();
      }
    }
    model
        .model()
        .scalar(
            variables.toArray(IntVar[]::new),
            lengths.stream().mapToInt(Integer::intValue).toArray(),
            "=",
            sum)
        .post();
    return unused;
  }
}
