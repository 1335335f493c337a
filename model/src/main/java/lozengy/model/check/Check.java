package lozengy.model.check;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** Holds sequences against all rules, from scratch. */
public final class Check {

  private Check() {}

  /** All rules, in the order in which faults are told. */
  public static List<Rule> rules() {
    throw new UnsupportedOperationException("not written yet");
  }

  /**
   * Finds all faults of an arrangement, open rounds among them.
   *
   * @return the faults, rule by rule; empty if it is valid
   */
  public static List<Fault> faults(Blanket blanket, Sequences sequences) {
    throw new UnsupportedOperationException("not written yet");
  }
}
