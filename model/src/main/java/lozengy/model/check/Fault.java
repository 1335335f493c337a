package lozengy.model.check;

import java.util.List;

/**
 * A rule that an arrangement breaks.
 *
 * @param rule id of the rule
 * @param pieces indices of the pieces concerned; empty where it concerns the blanket
 * @param yarns indices of the yarns concerned
 * @param words what is wrong, in words for a person, names and values first
 */
public record Fault(RuleId rule, List<Integer> pieces, List<Integer> yarns, String words) {

  /**
   * Copies the lists.
   *
   * @param rule id of the rule
   * @param pieces indices of the pieces concerned; empty where it concerns the blanket
   * @param yarns indices of the yarns concerned
   * @param words what is wrong, in words for a person, names and values first
   */
  public Fault {
    pieces = List.copyOf(pieces);
    yarns = List.copyOf(yarns);
  }
}
