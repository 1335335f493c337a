package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;

/**
 * How findings of an argument are told: many that say the same of other pieces in one sentence.
 *
 * @param words a sentence
 * @param first the finding, or the first of those that it is about
 * @param more how many it is about beside the first
 */
record Told(String words, Finding first, int more) {

  /** So many that say the same are told one by one. */
  private static final int FEW = 3;

  /** What is told of an argument's findings, in their order. */
  static List<Told> of(Argument argument, Blanket blanket, List<Finding> findings) {
    Map<String, List<Finding>> sorts = new LinkedHashMap<>();
    for (Finding finding : findings) {
      sorts
          .computeIfAbsent(finding.sort().orElse(finding.words()), sort -> new ArrayList<>())
          .add(finding);
    }
    List<Told> told = new ArrayList<>();
    for (List<Finding> sort : sorts.values()) {
      if (sort.size() <= FEW) {
        sort.forEach(finding -> told.add(new Told(finding.words(), finding, 0)));
      } else {
        String words = Tell.sentence(argument.together(blanket, sort));
        told.add(new Told(words, sort.get(0), sort.size() - 1));
      }
    }
    return told;
  }
}
