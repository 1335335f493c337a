package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.solver.explain.argument.Finding.Slot;

/** So much kept back that nothing is left to work with: the cause, where all else would follow. */
final class KeptBack implements Argument {

  private static final double ALL = 100;

  @Override
  public List<Finding> findings(Requirements asked) {
    Blanket blanket = asked.blanket();
    double percent = blanket.brief().rules().keepBackPercent();
    if (percent < ALL) {
      return List.of();
    }
    List<Slot> slots = new ArrayList<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (!blanket.worked(piece, round) && takesUsable(asked, piece, round)) {
          slots.add(new Slot(piece, round));
        }
      }
    }
    if (slots.isEmpty()) {
      return List.of();
    }
    BitSet yarns = new BitSet();
    yarns.set(0, blanket.yarnCount());
    return List.of(Finding.of(new StockReason.AllKeptBack(percent), slots).withYarns(yarns));
  }

  /** Whether a round takes yarn, whatever it is worked in, and all of that is kept back. */
  private static boolean takesUsable(Requirements asked, int piece, int round) {
    return IntStream.range(0, asked.blanket().yarnCount())
        .allMatch(
            yarn ->
                asked.takenMillimetres(piece, round, yarn) > asked.loads().get(yarn).capacity());
  }
}
