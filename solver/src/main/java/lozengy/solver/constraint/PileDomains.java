package lozengy.solver.constraint;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.check.BriefLine;

/**
 * Which pieces of the pile may lie at which places by kind and locks, and what rounds take then.
 */
final class PileDomains {

  private final Blanket blanket;
  private final Domains locks;

  /**
   * Takes the locks from some lines of the brief.
   *
   * @param lines the lines of a model
   */
  PileDomains(Blanket blanket, List<BriefLine> lines) {
    this.blanket = blanket;
    this.locks = Domains.all(blanket);
    lines.forEach(locks::restrictPlaces);
  }

  /**
   * What rounds may take as part of a piece still to be worked or of a finished one.
   *
   * @param worked what the lines leave rounds that are still to be worked
   */
  static Domains widened(Blanket blanket, Domains worked, List<BriefLine> lines) {
    if (blanket.pile().isEmpty()) {
      return worked;
    }
    return new PileDomains(blanket, lines).widened(worked);
  }

  private Domains widened(Domains worked) {
    Domains widened = worked.copy();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int stack : fitting(piece)) {
        int[] yarns = blanket.pile().stacks().get(stack).yarns();
        for (int round = 0; round < yarns.length; round++) {
          widened.add(piece, round, yarns[round]);
        }
      }
    }
    return widened;
  }

  /** The stacks whose pieces may lie at a place. */
  int[] fitting(int piece) {
    if (!blanket.takesPile(piece)) {
      return new int[0];
    }
    List<Stack> stacks = blanket.pile().stacks();
    return IntStream.range(0, stacks.size())
        .filter(stack -> stacks.get(stack).kind() == blanket.kind(piece))
        .filter(stack -> fits(stacks.get(stack).yarns(), piece))
        .toArray();
  }

  private boolean fits(int[] yarns, int piece) {
    for (int round = 0; round < yarns.length; round++) {
      if (!locks.allows(piece, round, yarns[round])) {
        return false;
      }
    }
    return true;
  }
}
