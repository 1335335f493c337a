package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.solver.constraint.Domains;
import lozengy.solver.constraint.YarnLoad;

/** Yarns of which joining, edging and rounds that can take nothing else take more than there is. */
final class OverdrawnYarns implements Argument {

  @Override
  public List<String> reasons(Blanket blanket, Domains direct) {
    List<String> reasons = new ArrayList<>();
    for (YarnLoad load : YarnLoad.of(blanket, direct)) {
      if (load.openCapacity() < 0) {
        reasons.add(reason(blanket, load));
      }
    }
    return reasons;
  }

  private static String reason(Blanket blanket, YarnLoad load) {
    List<String> takers = new ArrayList<>();
    long settled = blanket.settledMillimetres(load.yarn());
    long fixed = blanket.fixedUseMillimetres(load.yarn()) + settled;
    if (fixed > 0) {
      takers.add("joining and edging take " + Words.metres(fixed));
    }
    if (load.fixedUse() > 0) {
      int rounds = load.terms().stream().mapToInt(YarnLoad.Term::fixed).sum();
      takers.add(
          "%d %s no other yarn take %s%s"
              .formatted(
                  rounds,
                  rounds == 1 ? "round that may have" : "rounds that may have",
                  Words.metres(load.fixedUse()),
                  settled > 0
                      ? ", " + Words.metres(settled) + " of it before the yarn was counted"
                      : ""));
    }
    return "%s: %s; %s are there to use: %s short"
        .formatted(
            Words.yarn(blanket, load.yarn()),
            Words.list(takers),
            Words.metres(blanket.usableMillimetres(load.yarn())),
            Words.metres(-load.openCapacity()));
  }
}
