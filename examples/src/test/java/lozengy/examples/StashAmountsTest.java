package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lozengy.model.blanket.Blanket;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The stash blanket's amounts against figures worked out apart from the program, in exact fractions
 * with 1 oz = 28.349523125 g and 1 yd = 0.9144 m. The program reckons in whole millimetres and
 * milligrams; half a milligram is at most 1.3 mm of these yarns.
 */
class StashAmountsTest {

  private static final double TOLERANCE_MM = 2;

  private final Blanket blanket = ExampleBriefs.blanket("stash-blanket");

  @ParameterizedTest
  @CsvSource({
    "WRK, 240", // 1 ball of 240 m
    "HUL, 224.2", // 118 m, and 45 g of 50 g = 118 m
    "NET, 187.5", // one ball and a half of 125 m
    "BUO, 98.7552", // 1.4 oz of 3.5 oz = 270 yd: 108 yd
    "ROP, 105", // 42 g of 100 g = 250 m
    "CRB, 119.7864", // 131 yd
    "PUR, 151.28", // 122 m, and 12 g of 50 g = 122 m
    "AST, 65", // stated in m
    "STA, 68.58", // stated in yd: 75 yd
    "GUL, 154.01942775" // 120 m, and 0.5 oz of 50 g = 120 m
  })
  void stockFollowsFromBallsAndWhatIsLeft(String code, double metres) {
    long stock = blanket.yarn(blanket.yarnIndex(code)).stockMillimetres();

    assertEquals(metres * 1000, stock, TOLERANCE_MM);
  }

  @ParameterizedTest
  @CsvSource({
    // metres of the rounds of 0.9, 1.9, 2.8 and 3.8 g
    "WRK, 2.16, 4.56, 6.72, 9.12", // 100 g = 240 m
    "HUL, 2.124, 4.484, 6.608, 8.968", // 50 g = 118 m
    "BUO, 2.2393846, 4.7275897, 6.9669743, 9.4551795", // 3.5 oz = 270 yd
    "CRB, 2.1730325, 4.5875130, 6.7605455, 9.1750260", // 1.75 oz = 131 yd
    "AST, 2.16, 4.56, 6.72, 9.12", // 25 g = 60 m
    "STA, 2.07, 4.37, 6.44, 8.74" // 50 g = 115 m
  })
  void roundsByWeightTakeEachYarnsOwnLength(
      String code, double first, double second, double third, double fourth) {
    int yarn = blanket.yarnIndex(code);
    double[] metres = {first, second, third, fourth};

    for (int round = 0; round < metres.length; round++) {
      long need = blanket.motifs().needMillimetres(PieceKind.SQUARE, round, yarn);
      assertEquals(metres[round] * 1000, need, TOLERANCE_MM, code + ", round " + round);
    }
  }
}
