package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Yarns of a layer sorted by hand. */
class YarnClassesTest {

  private static double[][] wanted(double... ofSquares) {
    double[][] wanted = new double[PieceKind.values().length][ofSquares.length];
    wanted[0] = ofSquares;
    return wanted;
  }

  private static List<String> yarns(List<YarnClass> classes) {
    return classes.stream().map(each -> Arrays.toString(each.yarns())).toList();
  }

  private static BlanketBuilder row(int pieces, int yarns) {
    return BlanketBuilder.straight(1, pieces)
        .motif(PieceKind.SQUARE, round(1000))
        .yarns(yarns, Tone.MID, 1_000_000);
  }

  /** Rarer yarns first; yarns wanted up to one time more often than the rarest are with it. */
  @Test
  void yarnsThatAreWantedAboutAsOftenAreOneClass() {
    Blanket blanket = row(9, 5).build();
    Region region = new Region(blanket, 0);
    List<YarnClass> classes = YarnClasses.of(blanket, region, wanted(5, 2, 3, 3.5, 4.5), true);
    assertEquals(List.of("[1, 2]", "[3, 4]", "[0]"), yarns(classes));
    assertArrayEquals(new double[] {2.5, 0, 0}, classes.get(0).wanted());
    assertArrayEquals(new double[] {4, 0, 0}, classes.get(1).wanted());
    // of two kinds, each counts by itself
    double[][] kinds = wanted(2, 3, 2.5, 2, 2);
    kinds[2] = new double[] {0, 2, 0.5, 0, 1};
    List<YarnClass> byKind = YarnClasses.of(blanket, region, kinds, true);
    assertEquals(List.of("[0, 3, 2, 4]", "[1]"), yarns(byKind));
    assertArrayEquals(new double[] {8.5 / 4, 0, 1.5 / 4}, byKind.get(0).wanted());
  }

  /**
   * Nine yarns a time and a half apart are too many classes; two apart, two and two go together.
   */
  @Test
  void noMoreThanEightClassesAreKeptApart() {
    Blanket blanket = row(9, 9).build();
    Region region = new Region(blanket, 0);
    double[] counts = new double[9];
    Arrays.setAll(counts, yarn -> 1.5 * yarn);
    assertEquals(
        List.of("[0, 1]", "[2, 3]", "[4, 5]", "[6, 7]", "[8]"),
        yarns(YarnClasses.of(blanket, region, wanted(counts), true)));
    double[] eight = Arrays.copyOf(counts, 9);
    eight[8] = eight[7];
    assertEquals(8, YarnClasses.of(blanket, region, wanted(eight), true).size());
  }

  @Test
  void locksAndBansMakeClassesOfTheirOwnWherePiecesAreMindedOneByOne() {
    Blanket blanket =
        row(4, 4).note("r1c1", PieceState.MADE, "A").ban("r2c1", "B").ban("r3c1", "D").build();
    Region region = new Region(blanket, 0);
    List<YarnClass> classes = YarnClasses.of(blanket, region, wanted(1, 1, 1, 1), true);
    assertEquals(List.of("[0]", "[1]", "[2]", "[3]"), yarns(classes));
    boolean[][] may = {
      {true, true, true, true},
      {false, false, true, true},
      {false, true, true, true},
      {false, true, false, true}
    };
    for (int yarn = 0; yarn < 4; yarn++) {
      assertArrayEquals(may[yarn], classes.get(yarn).may());
      assertEquals(yarn == 0, classes.get(yarn).must()[0]);
      assertFalse(classes.get(yarn).must()[1]);
    }
    List<YarnClass> all = YarnClasses.of(blanket, region, wanted(1, 1, 1, 1), false);
    assertEquals(List.of("[0, 1, 2, 3]"), yarns(all));
    assertArrayEquals(new boolean[] {true, true, true, true}, all.get(0).may());
    assertArrayEquals(new boolean[4], all.get(0).must());
  }

  /** A made piece may have a tone that planned ones may not. */
  @Test
  void tonesKeepYarnsOutButNotOfWhatIsMade() {
    BlanketBuilder builder =
        BlanketBuilder.straight(1, 3)
            .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT))
            .yarn(Tone.LIGHT, 1_000_000)
            .yarn(Tone.DARK, 1_000_000)
            .yarn(Tone.DARK, 1_000_000)
            .note("r3c1", PieceState.MADE, "B");
    Blanket blanket = builder.build();
    Region region = new Region(blanket, 0);
    List<YarnClass> single = YarnClasses.of(blanket, region, wanted(1, 1, 1), true);
    assertEquals(List.of("[0]", "[1]"), yarns(single));
    assertArrayEquals(new boolean[] {true, true, false}, single.get(0).may());
    assertArrayEquals(new boolean[] {false, false, true}, single.get(1).may());
    assertArrayEquals(new boolean[] {false, false, true}, single.get(1).must());
    List<YarnClass> all = YarnClasses.of(blanket, region, wanted(1, 1, 1), false);
    assertEquals(List.of("[0, 1]"), yarns(all));
    assertTrue(all.get(0).may()[0] && all.get(0).may()[2]);
  }
}
