package lozengy.solver.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.brief.Where;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.score.Points;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** How many units the steps of each part are, where it weighs alone or beside another. */
class CostScaleTest {

  private static final int STEP = 16_384;

  private static Points points(boolean again, Map<Part, Double> weights) {
    Map<Part, Double> all = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      all.put(part, weights.getOrDefault(part, 0.0));
    }
    Blanket plain =
        BlanketBuilder.straight(6, 6)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(2000))
            .yarns(4, Tone.DARK, 500_000)
            .prefer(all)
            .build();
    Fade fade =
        new Fade(
            Fade.Towards.values()[0],
            Fade.Order.values()[0],
            List.of(),
            new Where(List.of("all"), List.of()));
    Look look = Look.NONE.withOrder(Order.ORDERED).withFade(fade);
    Blanket blanket = Blanket.ofUnjudged(plain.brief().withLook(look));
    if (!again) {
      return Points.of(blanket);
    }
    Sequences earlier = blanket.open();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      earlier.set(piece, 0, piece % 4);
      earlier.set(piece, 1, (piece + 1) % 4);
    }
    return Points.of(blanket, Optional.of(earlier));
  }

  private static int units(Points points, double ofPoints) {
    return new CostScale(points).units(ofPoints);
  }

  @Test
  void theLightestRepeatIsAStep() {
    Points points = points(false, Map.of(Part.SPREAD, 1.0));
    assertEquals(STEP, units(points, points.repeat()));
  }

  @Test
  void withoutRepeatsTheLargestOtherStepIsFour() {
    Points balance = points(false, Map.of(Part.BALANCE, 1.0));
    assertEquals(4 * STEP, units(balance, Math.max(balance.balance(0), balance.balance(1))));
    Points variety = points(false, Map.of(Part.VARIETY, 1.0));
    assertEquals(4 * STEP, units(variety, variety.copy()));
    Points keep = points(true, Map.of(Part.KEEP, 1.0, Part.LEEWAY, 1.0));
    assertEquals(4 * STEP, units(keep, keep.changed()));
    Points contrast = points(false, Map.of(Part.CONTRAST, 1.0));
    assertEquals(
        4 * STEP,
        units(
            contrast, contrast.pairs().stream().mapToDouble(Points.Pair::points).max().orElse(0)));
    Points fade = points(false, Map.of(Part.FADE, 1.0, Part.LEEWAY, 3.0));
    assertEquals(4 * STEP, units(fade, 3.0 / 4 / fade.fade().orElseThrow().rounds()));
    Points order = points(false, Map.of(Part.ORDER, 1.0, Part.LEEWAY, 3.0));
    assertEquals(4 * STEP, units(order, order.order().orElseThrow().stepPoints() / 4));
  }

  @Test
  void besideRepeatsTheLargestOtherStepIsSixteen() {
    Points points = points(false, Map.of(Part.SPREAD, 0.001, Part.VARIETY, 5.0));
    assertEquals(16 * STEP, units(points, points.copy()));
    assertTrue(units(points, points.repeat()) < STEP);
  }

  @Test
  void withoutAnyStepAPointIsOne() {
    assertEquals(STEP, units(points(false, Map.of(Part.LEEWAY, 1.0)), 1));
  }

  /** A thousand points are 2^53 units at most, so that they are told apart in a double. */
  @Test
  void stepsOfAlmostNoWeightAreNoFinerThanADoubleTells() {
    Points points = points(false, Map.of(Part.SPREAD, 1e-15, Part.LEEWAY, 1.0));
    assertEquals(
        (double) (1L << 53), 1000 * new CostScale(points).unitsPerPoint, 1e-6 * (1L << 53));
  }
}
