package lozengy.solver.constraint;

import java.util.List;
import java.util.Random;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import org.chocosolver.solver.search.strategy.selectors.values.IntValueSelector;
import org.chocosolver.solver.variables.IntVar;

/**
 * Lays at a place a piece of the pile whose border most of the pile shares, for these are hardest
 * to keep apart; a piece still to be worked only where nothing else can lie.
 */
final class PileValueSelector implements IntValueSelector {

  private final int[] sharing;
  private final Random random;

  PileValueSelector(Blanket blanket, Random random) {
    List<Stack> stacks = blanket.pile().stacks();
    this.random = random;
    this.sharing =
        stacks.stream()
            .mapToInt(
                stack ->
                    stacks.stream()
                        .filter(other -> other.border() == stack.border())
                        .mapToInt(Stack::count)
                        .sum())
            .toArray();
  }

  @Override
  public int selectValue(IntVar laid) {
    int best = laid.getLB();
    double bestSharing = -1;
    for (int value = laid.getLB(); value != Integer.MAX_VALUE; value = laid.nextValue(value)) {
      double each = value == 0 ? 0 : sharing[value - 1];
      each += random.nextDouble();
      if (each > bestSharing) {
        bestSharing = each;
        best = value;
      }
    }
    return best;
  }
}
