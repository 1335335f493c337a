package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;

/**
 * No yarn runs out: the rounds in it, joining and edging take at most the stock less what is kept
 * back. Always counts every piece, worked or not. O(pieces x rounds + yarns).
 */
public final class YarnTotalsRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.YARN_TOTALS;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    long[] used = blanket.usedMillimetres(sequences);
    for (int yarn = 0; yarn < used.length; yarn++) {
      long usable = blanket.usableMillimetres(yarn);
      if (used[yarn] > usable) {
        faults.add(
            new Fault(
                id(), List.of(), List.of(), List.of(yarn), new Fault.RunsOut(used[yarn], usable)));
      }
    }
    return faults;
  }
}
