package lozengy.model.check;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;

/**
 * Which pieces of the pile may lie at which places by kind and locks, and what rounds take then.
 */
public final class PileFits {

  private final Blanket blanket;
  private final RoundYarns locks;

  /**
   * Takes the locks from some lines of the brief.
   *
   * @param blanket the blanket
   * @param lines the lines that hold
   */
  public PileFits(Blanket blanket, List<BriefLine> lines) {
    this.blanket = blanket;
    this.locks = RoundYarns.ofPlaces(blanket, lines);
  }

  /**
   * {@return what rounds may take as part of a piece still to be worked or of a finished one}
   *
   * @param blanket the blanket
   * @param worked what the lines leave rounds that are still to be worked
   * @param lines the lines that hold
   */
  public static RoundYarns widened(Blanket blanket, RoundYarns worked, List<BriefLine> lines) {
    if (blanket.pile().isEmpty()) {
      return worked;
    }
    return new PileFits(blanket, lines).widened(worked);
  }

  private RoundYarns widened(RoundYarns worked) {
    RoundYarns widened = worked.copy();
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

  /**
   * {@return the stacks whose pieces may lie at a place}
   *
   * @param piece index of the place's piece
   */
  public int[] fitting(int piece) {
    if (!blanket.domains().takesPile(piece)) {
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
