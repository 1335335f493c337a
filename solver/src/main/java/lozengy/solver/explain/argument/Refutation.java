package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A reason why nothing fits, as it is told: many that say the same of other pieces in one.
 *
 * @param reason the reason, or what they say together
 * @param first the reason, or the first of those that it stands for, which alone is a proof too
 * @param merged how many it stands for beside the first
 * @param left how many like it there are that are not told
 */
public record Refutation(Reason reason, Reason first, int merged, int left) {

  /** So many that say the same are told one by one. */
  private static final int FEW = 3;

  /** More of one argument than this are left untold. */
  private static final int MOST = 5;

  /**
   * {@return what is told of an argument's findings, in their order}
   *
   * @param argument the argument
   * @param reasons what it found
   */
  public static List<Refutation> of(Argument argument, List<Reason> reasons) {
    Map<Object, List<Reason>> sorts = new LinkedHashMap<>();
    reasons.forEach(
        reason ->
            sorts.computeIfAbsent(argument.sort(reason), sort -> new ArrayList<>()).add(reason));
    List<Refutation> refutations = new ArrayList<>();
    for (List<Reason> sort : sorts.values()) {
      if (sort.size() <= FEW) {
        sort.forEach(reason -> refutations.add(new Refutation(reason, reason, 0, 0)));
      } else {
        refutations.add(new Refutation(argument.together(sort), sort.get(0), sort.size() - 1, 0));
      }
    }
    return refutations;
  }

  /**
   * {@return the first of them; the last of these says how many are left}
   *
   * @param refutations all
   */
  public static List<Refutation> few(List<Refutation> refutations) {
    if (refutations.size() <= MOST) {
      return refutations;
    }
    List<Refutation> few = new ArrayList<>(refutations.subList(0, MOST));
    Refutation last = few.get(MOST - 1);
    few.set(
        MOST - 1,
        new Refutation(last.reason(), last.first(), last.merged(), refutations.size() - MOST));
    return few;
  }
}
