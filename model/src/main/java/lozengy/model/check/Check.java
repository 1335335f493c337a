package lozengy.model.check;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** Holds sequences against all rules, from scratch. */
public final class Check {

  private Check() {}

  /**
   * Finds all faults of an arrangement, open rounds among them.
   *
   * @param blanket the blanket, whose rules are held against them
   * @param sequences the yarns of its pieces' rounds
   * @return the faults, rule by rule; empty if it is valid
   * @throws IllegalArgumentException if the sequences have not the blanket's pieces and rounds, or
   *     name a yarn that it has not
   */
  public static List<Fault> faults(Blanket blanket, Sequences sequences) {
    return RuleBook.rules().stream()
        .flatMap(rule -> rule.faults(blanket, sequences).stream())
        .toList();
  }
}
