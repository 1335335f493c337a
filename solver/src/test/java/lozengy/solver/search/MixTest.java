package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Operators are drawn as often as their weights say. */
class MixTest {

  private static final int MANY = 40_000;

  @Test
  void operatorsAreDrawnByTheirWeights() {
    assertDrawn(
        Mix.ANY,
        Map.of(
            Operator.CHANGE, 24,
            Operator.EXCHANGE_IN_LAYER, 28,
            Operator.EXCHANGE_ACROSS, 4,
            Operator.EXCHANGE_WITHIN, 3,
            Operator.EXCHANGE_SEQUENCES, 4,
            Operator.CHAIN, 1));
    assertDrawn(
        Mix.COUNTS_KEPT,
        Map.of(
            Operator.EXCHANGE_ALIKE, 40,
            Operator.CHANGE, 4,
            Operator.EXCHANGE_IN_LAYER, 8,
            Operator.EXCHANGE_ACROSS, 4,
            Operator.EXCHANGE_WITHIN, 3,
            Operator.EXCHANGE_SEQUENCES, 4,
            Operator.CHAIN, 1));
    assertDrawn(
        Mix.BESIDE_PARTS,
        Map.of(
            Operator.CHANGE, 4,
            Operator.EXCHANGE_IN_LAYER, 8,
            Operator.EXCHANGE_ACROSS, 4,
            Operator.EXCHANGE_WITHIN, 3,
            Operator.CHAIN, 1));
    assertDrawn(Mix.BORDERS, Map.of(Operator.CHAIN, 1, Operator.BORDER, 7));
  }

  private static void assertDrawn(Mix mix, Map<Operator, Integer> weights) {
    Draws draws = new Draws(1);
    Map<Operator, Integer> drawn = new EnumMap<>(Operator.class);
    for (int i = 0; i < MANY; i++) {
      drawn.merge(mix.draw(draws), 1, Integer::sum);
    }
    assertEquals(weights.keySet(), drawn.keySet());
    int all = weights.values().stream().mapToInt(Integer::intValue).sum();
    weights.forEach(
        (operator, weight) -> {
          double expected = MANY * (double) weight / all;
          assertEquals(
              expected, drawn.get(operator), 4 * Math.sqrt(expected), mix + " " + operator);
        });
  }
}
