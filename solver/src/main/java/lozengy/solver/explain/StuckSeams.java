package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.layout.Pairs;
import lozengy.solver.constraint.Domains;

/** Seams whose two borders have no pair of yarns that differ as the rules ask. */
final class StuckSeams implements Argument {

  @Override
  public List<String> reasons(Blanket blanket, Domains direct) {
    List<String> reasons = new ArrayList<>();
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int[] ofFirst = borders(blanket, direct, first);
      int[] ofSecond = borders(blanket, direct, second);
      // an empty round is told elsewhere
      if (!blanket.bordersMayMatch(first, second)
          && ofFirst.length > 0
          && ofSecond.length > 0
          && !differ(blanket, ofFirst, ofSecond)) {
        reasons.add(reason(blanket, first, second, ofFirst, ofSecond));
      }
    }
    return Tell.few(reasons);
  }

  private static int[] borders(Blanket blanket, Domains direct, int piece) {
    return direct.yarnsOf(piece, blanket.roundCount(piece) - 1);
  }

  private static boolean differ(Blanket blanket, int[] ofFirst, int[] ofSecond) {
    return IntStream.of(ofFirst)
        .anyMatch(a -> IntStream.of(ofSecond).anyMatch(b -> !blanket.bordersClash(a, b)));
  }

  private static String reason(
      Blanket blanket, int first, int second, int[] ofFirst, int[] ofSecond) {
    String where =
        "%s and %s are joined along a side"
            .formatted(Words.piece(blanket, first), Words.piece(blanket, second));
    List<Integer> a = IntStream.of(ofFirst).boxed().toList();
    List<Integer> b = IntStream.of(ofSecond).boxed().toList();
    if (a.equals(b) && a.size() == 1) {
      return where + ", and the border of both can only be " + Tell.yarns(blanket, a);
    }
    double least = blanket.brief().rules().minContrast();
    String why = least > 0 ? "less than %s apart in colour".formatted(Words.number(least)) : "";
    if (!blanket.brief().look().apart().isEmpty()) {
      why += (why.isEmpty() ? "" : " or ") + "to be kept apart";
    }
    return "%s, and their borders can only be %s and %s, %s"
        .formatted(
            where,
            String.join(" or ", a.stream().map(y -> Words.yarn(blanket, y)).toList()),
            String.join(" or ", b.stream().map(y -> Words.yarn(blanket, y)).toList()),
            why);
  }
}
