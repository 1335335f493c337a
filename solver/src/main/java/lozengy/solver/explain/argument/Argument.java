package lozengy.solver.explain.argument;

import java.util.List;
import lozengy.model.blanket.Blanket;

/** A cheap and exact argument that nothing fits. What it does not see, it does not claim. */
public interface Argument {

  /**
   * Says why nothing fits.
   *
   * @param asked what is asked for
   * @return findings, each of which alone is a proof; empty where the argument finds nothing
   */
  List<Finding> findings(Requirements asked);

  /**
   * What a finding says of its pieces: others may say the same of other pieces, and where many do,
   * they are told together.
   *
   * @param reason what was found
   * @return what is equal for findings that say the same
   */
  default Object sort(Reason reason) {
    return reason;
  }

  /**
   * What several findings of one sort say together.
   *
   * @param reasons those that say the same of other pieces
   * @return what they say together
   */
  default Reason together(List<Reason> reasons) {
    return reasons.get(0);
  }

  /**
   * How many of a finding's rounds must be open at the least, so that the finding no longer holds,
   * whatever else is open.
   *
   * @param blanket the blanket
   * @param finding what this argument found
   * @return how many at the least; 0 where that is not known
   */
  default int fewestOpen(Blanket blanket, Finding finding) {
    return 0;
  }
}
