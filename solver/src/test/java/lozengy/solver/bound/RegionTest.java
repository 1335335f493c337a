package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** The places of a layer in sweeping order, and their pairs, against the layout. */
class RegionTest {

  private static BlanketBuilder motifs(BlanketBuilder builder) {
    return builder
        .motif(PieceKind.SQUARE, round(1000), round(2000), round(1000))
        .motif(PieceKind.SIDE_TRIANGLE, round(1000), round(2000))
        .motif(PieceKind.CORNER_TRIANGLE, round(1000))
        .yarns(3, Tone.MID, 1_000_000);
  }

  /** Rows of squares on point: two across and three down, so the sweep runs down. */
  @Test
  void placesComeLineByLineAlongTheLongerSide() {
    for (boolean tall : new boolean[] {true, false}) {
      Blanket blanket =
          motifs(tall ? BlanketBuilder.filled(2, 3) : BlanketBuilder.filled(3, 2)).build();
      int[] wanted = {8 + 6 + 4, 8 + 6, 8};
      for (int layer = 0; layer < 3; layer++) {
        Region region = new Region(blanket, layer);
        assertEquals(layer, region.layer());
        assertEquals(wanted[layer], region.places());
        int before = -1;
        for (int place = 0; place < region.places(); place++) {
          Place at = blanket.layout().places().get(region.piece(place));
          assertEquals(tall ? at.x() : at.y(), region.across(place));
          int order = 100 * (tall ? at.y() : at.x()) + region.across(place);
          assertTrue(order > before, "place " + place);
          before = order;
          assertEquals(at.kind().ordinal(), region.kind(place));
          assertEquals(blanket.roundCount(at.index()) - 1 - layer, region.round(place));
        }
      }
    }
  }

  /** A square blanket is swept down, as a tall one is. */
  @Test
  void aSquareBlanketIsSweptDown() {
    Region region = new Region(motifs(BlanketBuilder.straight(2, 2)).build(), 0);
    assertEquals(0, region.piece(0));
    assertEquals(1, region.piece(1));
    assertEquals(2, region.across(1) - region.across(0));
  }

  /** By how far apart two places lie: 2 is a seam, 2 each way a corner, up to 4 and 2 near. */
  @Test
  void pairsWeighByHowNearTheyLie() {
    Blanket blanket =
        motifs(BlanketBuilder.straight(4, 3))
            .note("r1c1", PieceState.JOINED, "A", "B", "A")
            .note("r1c2", PieceState.JOINED, "A", "B", "A")
            .note("r2c1", PieceState.MADE, "A", "B", "A")
            .build();
    for (int layer = 0; layer < 2; layer++) {
      Region region = new Region(blanket, layer);
      TreeMap<String, String> expected = new TreeMap<>();
      int all = 0;
      for (Place one : blanket.layout().places()) {
        for (Place other : blanket.layout().places()) {
          int x = Math.abs(one.x() - other.x()) / 2;
          int y = Math.abs(one.y() - other.y()) / 2;
          int weight = x + y == 1 ? 4 : x == 1 && y == 1 ? 2 : x + y > 0 && x + 2 * y <= 4 ? 1 : 0;
          weight = x * x + y * y > 5 ? 0 : weight == 0 && x + y > 0 ? 1 : weight;
          if (one.index() < other.index() && weight > 0) {
            boolean joined = Set.of(one.name(), other.name()).equals(Set.of("r1c1", "r1c2"));
            boolean apart = layer == 0 && weight == 4 && !joined;
            expected.put(one.index() + " " + other.index(), weight + " " + apart);
            all += weight;
          }
        }
      }
      TreeMap<String, String> found = new TreeMap<>();
      for (int pair = 0; pair < region.pairs(); pair++) {
        assertTrue(region.first(pair) < region.second(pair));
        int one = region.piece(region.first(pair));
        int other = region.piece(region.second(pair));
        found.put(
            Math.min(one, other) + " " + Math.max(one, other),
            region.weight(pair) + " " + region.apart(pair));
      }
      assertEquals(expected, found);
      assertEquals(all, region.allPairs());
      assertEquals(region.pairs(), found.size());
    }
  }

  /** Only what has the layer makes a pair in it. */
  @Test
  void piecesWithoutTheLayerAreLeftOut() {
    Blanket blanket = motifs(BlanketBuilder.filled(1, 2)).build();
    Region region = new Region(blanket, 2);
    assertEquals(2, region.places());
    assertTrue(
        IntStream.range(0, 2).allMatch(place -> blanket.roundCount(region.piece(place)) == 3));
    assertEquals(1, region.pairs());
    assertEquals(2, region.weight(0));
    assertEquals(2, region.allPairs());
  }
}
