package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class LeewayMeasureTest {

  /** Ample is an eleventh: of 11 m, 10 m leave just enough, 10.5 m half of it. */
  @Test
  void aYarnLosesTheSquareOfItsTightness() {
    assertEquals(0, LeewayMeasure.loss(11_000, 0));
    assertEquals(0, LeewayMeasure.loss(11_000, 10_000), 1e-12);
    assertEquals(0, LeewayMeasure.loss(11_000, 9_000));
    assertEquals(0.25, LeewayMeasure.loss(11_000, 10_500), 1e-12);
    assertEquals(0.81, LeewayMeasure.loss(11_000, 10_900), 1e-12);
    assertEquals(1, LeewayMeasure.loss(11_000, 11_000));
    assertEquals(1, LeewayMeasure.loss(11_000, 12_000));
    assertEquals(0, LeewayMeasure.loss(0, 0));
    assertEquals(0, LeewayMeasure.loss(1_000, -1));
    assertEquals(1, LeewayMeasure.loss(0, 1));
  }

  @Test
  void tightnessGrowsEvenlyAndTellsWhatCanBeUsed() {
    assertEquals(1 / 1000.0, LeewayMeasure.tightens(11_000), 1e-15);
    assertEquals(10_000, LeewayMeasure.used(11_000, 0), 1e-9);
    assertEquals(10_500, LeewayMeasure.used(11_000, 0.5), 1e-9);
    assertEquals(11_000, LeewayMeasure.used(11_000, 1), 1e-9);
  }

  @Test
  void aYarnThatIsUsedToItsEndHasNothingLeftAndIsNotShort() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .yarn("A", "Yarn A", "#404040", 2_000, 1)
            .yarn("B", "Yarn B", "#505050")
            .motif(PieceKind.SQUARE, 1)
            .build();
    List<Loss> losses = new LeewayPart(blanket, BlanketBuilder.sequences(blanket, "A A")).losses();
    assertEquals(50, losses.get(0).points(), 1e-9);
    assertEquals("Yarn A has only 0.00 m left over", losses.get(0).words().get());
  }
}
