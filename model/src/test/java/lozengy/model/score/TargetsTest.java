package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class TargetsTest {

  private static final String MUD = "#2c2a29";
  private static final String SAMPHIRE = "#5f7f4a";
  private static final String REED = "#b9b57a";

  private static BlanketBuilder row(int squares) {
    return BlanketBuilder.straight(squares, 1).motif(PieceKind.SQUARE, 1);
  }

  private static BlanketBuilder share(BlanketBuilder builder, String code, double share) {
    return builder.yarn(code, code, MUD, 0, share);
  }

  private static int[] border(BlanketBuilder builder) {
    return Targets.of(builder.build()).counts()[0];
  }

  @Test
  void dealsByShareAndLargestRemainder() {
    // claims 6.25, 2.5, 1.25 of 10
    assertArrayEquals(
        new int[] {6, 3, 1}, border(share(share(share(row(10), "A", 5), "B", 2), "C", 1)));
  }

  @Test
  void breaksTiesByTheLargerShareThenByCode() {
    // claims 7.5 and 2.5 of 10: the larger share has the last
    assertArrayEquals(new int[] {2, 8}, border(share(share(row(10), "A", 1), "B", 3)));
    // three claims of 3.33
    assertArrayEquals(
        new int[] {3, 3, 4}, border(share(share(share(row(10), "C", 1), "B", 1), "A", 1)));
    // tenths that doubles cannot hold exactly: claims 1.5, 1.5 and 2
    assertArrayEquals(
        new int[] {1, 2, 2}, border(share(share(share(row(5), "B", 0.3), "A", 0.3), "C", 0.4)));
  }

  @Test
  void givesAYarnWithoutAShareNone() {
    assertArrayEquals(
        new int[] {0, 3, 2}, border(share(share(share(row(5), "A", 0), "B", 1), "C", 1)));
  }

  @Test
  void takesSharesAsEqualWhereAllAreZero() {
    assertArrayEquals(new int[] {3, 2}, border(share(share(row(5), "A", 0), "B", 0)));
  }

  @Test
  void dealsRoundsThatAllowTheSameYarnsTogether() {
    // the borders of two squares are dark or mid, of six triangles any tone
    Blanket blanket =
        BlanketBuilder.filled(1, 2)
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(1, Tone.LIGHT),
                BlanketBuilder.round(1, Tone.DARK, Tone.MID))
            .motif(PieceKind.SIDE_TRIANGLE, BlanketBuilder.round(1, Tone.values()))
            .motif(PieceKind.CORNER_TRIANGLE, BlanketBuilder.round(1, Tone.values()))
            .yarn("MUD", "Tidal mud", MUD)
            .yarn("SAM", "Samphire", SAMPHIRE)
            .yarn("REE", "Reed", REED)
            .build();
    Targets targets = Targets.of(blanket);
    assertArrayEquals(new int[] {8, 2}, targets.pieces());
    // two squares by 1, 1; six triangles by 2, 2, 2
    assertArrayEquals(new int[] {3, 3, 2}, targets.counts()[0]);
    assertArrayEquals(new int[] {0, 0, 2}, targets.counts()[1]);
  }

  @Test
  void dealsToNoYarnWhereNoToneFits() {
    Blanket blanket =
        BlanketBuilder.straight(4, 1)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1, Tone.LIGHT))
            .yarn("MUD", "Tidal mud", MUD)
            .build();
    assertArrayEquals(new int[] {0}, Targets.of(blanket).counts()[0]);
    assertArrayEquals(new int[] {4}, Targets.of(blanket).pieces());
  }

  @Test
  void isNotChangedByLocksBansOrStock() {
    BlanketBuilder bound =
        share(share(row(4), "A", 1), "B", 1)
            .piece("r1c1", PieceState.MADE, "A")
            .piece("r1c2", PieceState.PLANNED, "A")
            .ban("r1c3", "B");
    assertArrayEquals(new int[] {2, 2}, border(bound));
  }

  @Property(seed = "21", tries = 200)
  void dealsEveryRoundOfEveryLayer(@ForAll long seed) {
    Targets targets = Targets.of(Samples.blanket(seed));
    for (int layer = 0; layer < targets.pieces().length; layer++) {
      int[] counts = targets.counts()[layer];
      assertEquals(targets.pieces()[layer], Arrays.stream(counts).sum());
      assertTrue(Arrays.stream(counts).allMatch(count -> count >= 0));
    }
  }
}
