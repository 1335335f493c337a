package lozengy.solver.constraint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.check.Ground;
import lozengy.model.check.RoundPairs;
import lozengy.model.check.YarnPairs;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/**
 * Rounds that may not have some yarns together, pair by pair: as an inequality where only the same
 * yarn is barred, else as a table. Where all rounds of a piece must differ they do so at once. A
 * seam graph is bipartite and has no cliques beyond a pair, so that more is not to be had there.
 */
final class ClashPosting implements KindPosting<Ground.Clash> {

  /** From so many rounds on that all differ, they are stated at once. */
  private static final int CLIQUE = 3;

  @Override
  public Class<Ground.Clash> kind() {
    return Ground.Clash.class;
  }

  @Override
  public void post(ConstraintModel model, Ground.Clash clash) {
    RoundIndex index = model.blanket().index();
    RoundPairs pairs = clash.pairs();
    Tuples table = clash.barred().isSame() ? null : table(clash.barred());
    Map<Integer, Integer> within = within(index, pairs);
    for (int i = 0; i < pairs.size(); i++) {
      int piece = index.piece(pairs.first()[i]);
      IntVar first = model.round(pairs.first()[i]);
      IntVar second = model.round(pairs.second()[i]);
      boolean inside = piece == index.piece(pairs.second()[i]);
      IntVar[] rounds = model.rounds(piece);
      boolean clique =
          inside
              && table == null
              && model.laid(piece) == null
              && rounds.length >= CLIQUE
              && within.get(piece) == rounds.length * (rounds.length - 1) / 2;
      if (inside && model.laid(piece) != null) {
        postUnlessLaid(model.model(), model.laid(piece), first, second, clash.barred());
      } else if (clique) {
        if (pairs.first()[i] == index.centre(piece) && pairs.second()[i] == index.border(piece)) {
          model.model().allDifferent(rounds, "AC").post();
        }
      } else {
        post(model.model(), first, second, table);
      }
    }
  }

  /** Posts that two variables differ or, where there is a table, that it allows them. */
  private static void post(Model model, IntVar first, IntVar second, Tuples table) {
    if (table == null) {
      model.arithm(first, "!=", second).post();
    } else if (table.nbTuples() == 0) {
      model.falseConstraint().post();
    } else {
      model.table(first, second, table).post();
    }
  }

  /** Posts that the variables of some pairs do not clash; the graph of the pairs may be any. */
  static void post(Model model, IntVar[] variables, RoundPairs pairs, YarnPairs barred) {
    Tuples table = barred.isSame() ? null : table(barred);
    for (int i = 0; i < pairs.size(); i++) {
      post(model, variables[pairs.first()[i]], variables[pairs.second()[i]], table);
    }
  }

  /** By piece, how many pairs of its own rounds there are. */
  private static Map<Integer, Integer> within(RoundIndex index, RoundPairs pairs) {
    Map<Integer, Integer> within = new TreeMap<>();
    for (int i = 0; i < pairs.size(); i++) {
      int piece = index.piece(pairs.first()[i]);
      if (piece == index.piece(pairs.second()[i])) {
        within.merge(piece, 1, Integer::sum);
      }
    }
    return within;
  }

  /** The pairs that are allowed, or if few are not, those. */
  private static Tuples table(YarnPairs barred) {
    int yarns = barred.yarns();
    int count = IntStream.range(0, yarns).map(yarn -> barred.against(yarn).length).sum();
    boolean allowed = count >= yarns;
    Tuples table = new Tuples(allowed);
    for (int yarn = 0; yarn < yarns; yarn++) {
      for (int other = 0; other < yarns; other++) {
        if (barred.bars(yarn, other) != allowed) {
          table.add(yarn, other);
        }
      }
    }
    return table;
  }

  /** A finished piece is a fact: only one that is still to be worked must keep the rule. */
  private static void postUnlessLaid(
      Model model, IntVar laid, IntVar first, IntVar second, YarnPairs barred) {
    if (barred.isSame()) {
      model.ifThen(model.arithm(laid, "=", 0), model.arithm(first, "!=", second));
      return;
    }
    Tuples clashing = new Tuples(false);
    for (int yarn = 0; yarn < barred.yarns(); yarn++) {
      for (int other : barred.against(yarn)) {
        clashing.add(0, yarn, other);
      }
    }
    model.table(new IntVar[] {laid, first, second}, clashing).post();
  }

  /** How often a yarn can come at all where it may not meet itself, graph by graph. */
  @Override
  public void strengthen(ConstraintModel model, List<Ground.Clash> active) {
    Map<RoundPairs, YarnPairs> graphs = new LinkedHashMap<>();
    active.forEach(clash -> graphs.merge(clash.pairs(), clash.barred(), YarnPairs::and));
    graphs.forEach((pairs, barred) -> ClashLimits.post(model, pairs, barred));
  }
}
