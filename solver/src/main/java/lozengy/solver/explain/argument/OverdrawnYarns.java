package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.RoundClass;
import lozengy.solver.constraint.YarnLoad;
import lozengy.solver.explain.argument.Finding.Slot;

/** Yarns of which joining, edging and rounds that can take nothing else take more than there is. */
final class OverdrawnYarns implements Argument {

  @Override
  public List<Finding> findings(Requirements asked) {
    List<Finding> findings = new ArrayList<>();
    for (YarnLoad load : asked.loads()) {
      if (load.openCapacity() < 0) {
        findings.add(finding(asked, load));
      }
    }
    return findings;
  }

  @Override
  public int fewestOpen(Blanket blanket, Finding finding) {
    return Shortfall.fewestOpen(blanket, finding);
  }

  private static Finding finding(Requirements asked, YarnLoad load) {
    List<RoundClass> classes = RoundClass.of(asked.blanket());
    List<Slot> slots = new ArrayList<>();
    for (YarnLoad.Term term : load.terms()) {
      RoundClass rounds = classes.get(term.index());
      for (int piece : rounds.pieces()) {
        if (asked.direct().only(piece, rounds.round()) == load.yarn()) {
          slots.add(new Slot(piece, rounds.round()));
        }
      }
    }
    BitSet yarn = new BitSet();
    yarn.set(load.yarn());
    return Finding.of(reason(asked.blanket(), load), slots)
        .withYarns(yarn)
        .withShortfall(
            new Shortfall(
                -load.openCapacity(),
                Map.of(load.yarn(), Shortfall.ballMillimetres(asked.blanket(), load.yarn()))));
  }

  private static Reason reason(Blanket blanket, YarnLoad load) {
    long settled =
        blanket.fixedUse().settledMillimetres(load.yarn())
            + blanket.fixedUse().pileBeyondMillimetres(load.yarn());
    return new StockReason.YarnOverdrawn(
        load.yarn(),
        blanket.fixedUse().millimetres(load.yarn()) + settled,
        load.terms().stream().mapToInt(YarnLoad.Term::fixed).sum(),
        load.fixedUse(),
        settled,
        blanket.yarns().usableMillimetres(load.yarn()),
        -load.openCapacity());
  }
}
