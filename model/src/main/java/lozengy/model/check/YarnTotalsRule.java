package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.blanket.Words;

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
        String words =
            "%s: %s needed, %s: %s short"
                .formatted(
                    Words.yarn(blanket, yarn),
                    Words.metres(used[yarn]),
                    available(blanket, yarn),
                    Words.metres(used[yarn] - usable));
        faults.add(new Fault(id(), List.of(), List.of(yarn), words));
      }
    }
    return faults;
  }

  private static String available(Blanket blanket, int yarn) {
    double keepBackPercent = blanket.brief().rules().keepBackPercent();
    long stock = blanket.stockMillimetres(yarn);
    if (keepBackPercent == 0) {
      return Words.metres(stock) + " at hand";
    }
    return "%s usable (%s m at hand less %s %% kept back)"
        .formatted(
            Words.metres(blanket.usableMillimetres(yarn)),
            Words.number(stock / 1000.0),
            Words.number(keepBackPercent));
  }
}
