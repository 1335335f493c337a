package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class BlanketTest {

  @Test
  void aMotifThatNoPieceFollowsMakesNoLayer() {
    Blanket blanket =
        BlanketBuilder.onPoint(2, 2)
            .motif(PieceKind.SQUARE, 2)
            .motif(PieceKind.SIDE_TRIANGLE, 4)
            .yarn("A", "A", "#000000")
            .yarn("B", "B", "#ffffff")
            .build();
    assertEquals(2, blanket.layerCount());
  }
}
