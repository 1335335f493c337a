package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RuleId;
import lozengy.model.layout.Pairs;
import lozengy.solver.explain.Finding.Slot;
import lozengy.solver.explain.Reason.Clash;
import lozengy.solver.explain.Reason.SeamStuck;

/** Seams whose two borders have no pair of yarns that differ as the rules ask. */
final class StuckSeams implements Argument {

  @Override
  public List<Finding> findings(Asked asked) {
    if (!asked.rules().contains(RuleId.NEIGHBOUR_BORDERS)
        && !asked.rules().contains(RuleId.APART)) {
      return List.of();
    }
    Blanket blanket = asked.blanket();
    List<Finding> findings = new ArrayList<>();
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int[] ofFirst = borders(asked, first);
      int[] ofSecond = borders(asked, second);
      // an empty round is told elsewhere
      if (!blanket.bordersMayMatch(first, second)
          && ofFirst.length > 0
          && ofSecond.length > 0
          && !differ(asked, ofFirst, ofSecond)) {
        findings.add(finding(blanket, first, second, clash(asked, ofFirst, ofSecond)));
      }
    }
    return findings;
  }

  @Override
  public int fewestOpen(Blanket blanket, Finding finding) {
    return 1;
  }

  private static Slot border(Blanket blanket, int piece) {
    return new Slot(piece, blanket.roundCount(piece) - 1);
  }

  private static int[] borders(Asked asked, int piece) {
    return asked.direct().yarnsOf(piece, border(asked.blanket(), piece).round());
  }

  private static boolean differ(Asked asked, int[] ofFirst, int[] ofSecond) {
    return IntStream.of(ofFirst)
        .anyMatch(a -> IntStream.of(ofSecond).anyMatch(b -> !asked.bordersClash(a, b)));
  }

  /** What keeps different yarns from each other: too like in colour, or to be kept apart. */
  private static Clash clash(Asked asked, int[] ofFirst, int[] ofSecond) {
    boolean alike = false;
    boolean apart = false;
    for (int a : ofFirst) {
      for (int b : ofSecond) {
        boolean tooAlike = asked.contrast() && asked.blanket().sameBorder(a, b);
        alike |= a != b && tooAlike;
        apart |= a != b && !tooAlike;
      }
    }
    return new Clash(
        IntStream.of(ofFirst).boxed().toList(),
        IntStream.of(ofSecond).boxed().toList(),
        alike,
        apart);
  }

  private static Finding finding(Blanket blanket, int first, int second, Clash clash) {
    return Finding.of(
        new SeamStuck(List.of(first, second), 1, clash),
        List.of(border(blanket, first), border(blanket, second)),
        RuleId.NEIGHBOUR_BORDERS,
        RuleId.APART);
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
