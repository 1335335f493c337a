package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.check.RuleId;
import lozengy.model.layout.Pairs;
import lozengy.solver.explain.Finding.Slot;

/** Seams whose two borders have no pair of yarns that differ as the rules ask. */
final class StuckSeams implements Argument {

  private static final String OF_BOTH = "the border of both";
  private static final String OF_ALL = "the border of all";
  private static final String THEIR = "their borders";
  private static final String AT_EACH = "the two borders at each";

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
        findings.add(finding(blanket, first, second, reason(asked, ofFirst, ofSecond)));
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
  private static String why(Asked asked, int[] ofFirst, int[] ofSecond) {
    Blanket blanket = asked.blanket();
    boolean alike = false;
    boolean apart = false;
    for (int a : ofFirst) {
      for (int b : ofSecond) {
        boolean tooAlike = asked.contrast() && blanket.sameBorder(a, b);
        alike |= a != b && tooAlike;
        apart |= a != b && !tooAlike;
      }
    }
    String least = Words.number(blanket.brief().rules().minContrast());
    return (alike ? "less than %s apart in colour".formatted(least) : "")
        + (alike && apart ? " or " : "")
        + (apart ? "which are to be kept apart" : "");
  }

  private static String either(Blanket blanket, List<Integer> yarns) {
    return String.join(" or ", yarns.stream().map(y -> Words.yarn(blanket, y)).toList());
  }

  private static Finding finding(Blanket blanket, int first, int second, String reason) {
    String where =
        "%s and %s are joined along a side, and "
            .formatted(Words.piece(blanket, first), Words.piece(blanket, second));
    return Finding.of(
            where + reason,
            List.of(border(blanket, first), border(blanket, second)),
            RuleId.NEIGHBOUR_BORDERS,
            RuleId.APART)
        .withSort(reason);
  }

  @Override
  public String together(Blanket blanket, List<Finding> findings) {
    List<Integer> pieces =
        findings.stream()
            .flatMap(finding -> finding.slots().stream().map(Slot::piece))
            .distinct()
            .sorted()
            .toList();
    String reason = findings.get(0).sort().orElseThrow();
    return "%s are joined along %d sides, and %s"
        .formatted(
            Tell.grouped(blanket, pieces),
            findings.size(),
            reason.replace(OF_BOTH, OF_ALL).replace(THEIR, AT_EACH));
  }

  private static String reason(Asked asked, int[] ofFirst, int[] ofSecond) {
    Blanket blanket = asked.blanket();
    List<Integer> a = IntStream.of(ofFirst).boxed().toList();
    List<Integer> b = IntStream.of(ofSecond).boxed().toList();
    if (a.equals(b) && a.size() == 1) {
      return OF_BOTH + " can only be " + Tell.yarns(blanket, a);
    }
    String why = why(asked, ofFirst, ofSecond);
    if (a.equals(b)) {
      return "%s can only be %s, %s".formatted(OF_BOTH, either(blanket, a), why);
    }
    return "%s can only be %s and %s, %s"
        .formatted(THEIR, either(blanket, a), either(blanket, b), why);
  }
}
