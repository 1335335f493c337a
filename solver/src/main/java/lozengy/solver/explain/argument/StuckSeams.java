package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.check.ClashGraph;
import lozengy.model.check.RuleId;
import lozengy.model.check.Subject.SeamPart;
import lozengy.solver.explain.argument.Finding.Slot;
import lozengy.solver.explain.argument.SeamReason.Clash;
import lozengy.solver.explain.argument.SeamReason.SeamStuck;

/** Rounds of two pieces on a seam that clash whatever they take. */
final class StuckSeams implements Argument {

  @Override
  public List<Finding> findings(Requirements asked) {
    RuleId[] rules = asked.clashRules(false);
    if (rules.length == 0) {
      return List.of();
    }
    RoundIndex index = asked.blanket().index();
    ClashGraph clashes = asked.clashes();
    List<Finding> findings = new ArrayList<>();
    for (int number = 0; number < index.count(); number++) {
      for (int entry = clashes.from(number); entry < clashes.to(number); entry++) {
        int other = clashes.other(entry);
        boolean between = other > number && index.piece(number) != index.piece(other);
        if (between && asked.stuck(number, entry)) {
          findings.add(finding(asked, number, other, rules));
        }
      }
    }
    return findings;
  }

  @Override
  public int fewestOpen(Blanket blanket, Finding finding) {
    return 1;
  }

  /** What keeps different yarns from each other: too like in colour, or to be kept apart. */
  private static Clash clash(Requirements asked, int number, int other) {
    int[] ofFirst = asked.yarnsOf(number);
    int[] ofSecond = asked.yarnsOf(other);
    SeamPart part = part(asked, number, other);
    boolean alike = false;
    boolean apart = false;
    for (int a : ofFirst) {
      for (int b : ofSecond) {
        boolean tooAlike =
            part == SeamPart.BORDERS
                && asked.contrast()
                && asked.blanket().yarns().sameBorder(a, b);
        alike |= a != b && tooAlike;
        apart |= a != b && !tooAlike;
      }
    }
    return new Clash(
        part,
        IntStream.of(ofFirst).boxed().toList(),
        IntStream.of(ofSecond).boxed().toList(),
        alike,
        apart);
  }

  private static SeamPart part(Requirements asked, int number, int other) {
    RoundIndex index = asked.blanket().index();
    boolean borders =
        index.border(index.piece(number)) == number && index.border(index.piece(other)) == other;
    return borders ? SeamPart.BORDERS : SeamPart.CENTRES;
  }

  private static Finding finding(Requirements asked, int number, int other, RuleId[] rules) {
    RoundIndex index = asked.blanket().index();
    int first = index.piece(number);
    int second = index.piece(other);
    return Finding.of(
        new SeamStuck(List.of(first, second), 1, clash(asked, number, other)),
        List.of(new Slot(first, index.round(number)), new Slot(second, index.round(other))),
        rules);
  }

  @Override
  public Object sort(Reason reason) {
    return ((SeamStuck) reason).clash();
  }

  @Override
  public Reason together(List<Reason> reasons) {
    List<Integer> pieces =
        reasons.stream().flatMap(reason -> reason.pieces().stream()).distinct().sorted().toList();
    return new SeamStuck(pieces, reasons.size(), ((SeamStuck) reasons.get(0)).clash());
  }
}
