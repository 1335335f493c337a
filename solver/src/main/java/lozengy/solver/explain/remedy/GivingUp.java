package lozengy.solver.explain.remedy;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleBook;

/** Gives a line up as a whole, as its rule says that it can be. */
final class GivingUp implements Relaxing {

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    return RuleBook.rule(line.rule()).easing(line).stream()
        .map(
            easing ->
                new Move(
                    new Remedy.Step(
                        new Relaxation.GiveUp(line.subject()), line.path(), easing.value()),
                    easing.upset(),
                    easing.change()))
        .map(Ladder::of)
        .toList();
  }
}
