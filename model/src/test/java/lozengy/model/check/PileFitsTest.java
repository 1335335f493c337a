package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class PileFitsTest {

  private static PileEntry one(PieceKind kind, String... codes) {
    return new PileEntry(kind, List.of(codes), 1, Set.of());
  }

  private static int[] fitting(Blanket blanket, String place) {
    return new PileFits(blanket, RuleBook.lines(blanket))
        .fitting(blanket.layout().find(place).orElseThrow().index());
  }

  private static int[] yarns(Blanket blanket, String place, int round) {
    return RoundYarns.direct(blanket)
        .yarnsOf(blanket.layout().find(place).orElseThrow().index(), round);
  }

  /** MUD 0, SAM 1, HEA 2, REE 3, SND 4, BAR 5. */
  @Test
  void aPieceLiesWhereLocksLeaveItRoomAndThereItsYarnsMayShow() {
    Blanket blanket =
        BlanketBuilder.filled(1, 1)
            .saltmarsh()
            .motif(PieceKind.SQUARE, 2)
            .motif(PieceKind.CORNER_TRIANGLE, 2)
            .piece("top-left", PieceState.PLANNED, null, "MUD")
            .piece("top-right", PieceState.MADE, "SND", "REE")
            .begun("bottom-left", 1, "SND", null)
            .ban("bottom-right", "SND")
            .ban("bottom-right", "REE")
            .build();
    Blanket piled =
        Blanket.ofUnjudged(
            blanket
                .brief()
                .withPile(
                    List.of(
                        one(PieceKind.CORNER_TRIANGLE, "SND", "REE"),
                        one(PieceKind.CORNER_TRIANGLE, "SAM", "MUD"),
                        one(PieceKind.SQUARE, "HEA", "MUD"))));
    assertArrayEquals(new int[] {1}, fitting(piled, "top-left"));
    assertArrayEquals(new int[] {0, 1}, fitting(piled, "bottom-right"));
    assertArrayEquals(new int[] {}, fitting(piled, "top-right"), "worked");
    assertArrayEquals(new int[] {}, fitting(piled, "bottom-left"), "begun");
    assertArrayEquals(new int[] {2}, fitting(piled, "r1c1"), "of its kind");

    assertArrayEquals(new int[] {0, 1, 2, 5}, yarns(blanket, "bottom-right", 0));
    assertArrayEquals(new int[] {0, 1, 2, 4, 5}, yarns(piled, "bottom-right", 0));
    assertArrayEquals(new int[] {0, 1, 2, 3, 5}, yarns(piled, "bottom-right", 1));
    assertArrayEquals(new int[] {0}, yarns(piled, "top-left", 1));
    assertArrayEquals(new int[] {4}, yarns(piled, "top-right", 0));
  }
}
