package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Bounds reckoned by hand. */
class HandBoundsTest {

  private static final long PLENTY = 1_000_000;

  private static BlanketBuilder twoByTwo() {
    return BlanketBuilder.straight(2, 2)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(2000, Tone.DARK))
        .yarns(2, Tone.DARK, PLENTY)
        .yarns(2, Tone.LIGHT, PLENTY);
  }

  private static double bound(Blanket blanket, Part part) {
    return PartBounds.of(blanket, Set.of(part), new BoundLimits(1), () -> false).get(part).total();
  }

  /** Of eight rounds that had a yarn, those are kept whose yarn is allowed and that are free. */
  @Test
  void keepIsWhatIsStillAllowed() {
    Blanket blanket = twoByTwo().note("r1c1", PieceState.MADE, "C", "A").ban("r1c2", "A").build();
    Sequences earlier = blanket.open();
    assertEquals(100, PartBounds.keep(blanket, earlier));
    for (int piece = 0; piece < 4; piece++) {
      earlier.set(piece, 1, 0);
    }
    // A is banned from r1c2, not from r2c1 and r2c2; r1c1 is made
    assertEquals(100 * 2 / 3.0, PartBounds.keep(blanket, earlier), 1e-12);
    earlier.set(3, 0, 1);
    // B is dark and no centre
    assertEquals(100 * 2 / 4.0, PartBounds.keep(blanket, earlier), 1e-12);
  }

  /** Two of keep's three rounds, which weighs as much as the rest: a sixth is lost. */
  @Test
  void theObjectiveIsBoundedWithWhatCanBeKept() {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      weights.put(part, part == Part.KEEP || part == Part.SPREAD ? 1.0 : 0.0);
    }
    Blanket blanket = twoByTwo().ban("r1c2", "A").prefer(weights).build();
    Sequences earlier = blanket.open();
    for (int piece = 0; piece < 3; piece++) {
      earlier.set(piece, 1, 0);
    }
    assertEquals(100 * (1 - 1 / 6.0), Bounds.ofObjective(blanket, earlier, 100), 1e-9);
    assertEquals((90 + 200 / 3.0) / 2, Bounds.ofObjective(blanket, earlier, 90), 1e-9);
  }

  /** Two light and two dark yarns make four sequences for nine squares; a made one adds its own. */
  @Test
  void varietyIsCappedByTheSequencesThatThereAre() {
    BlanketBuilder nine =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(2000, Tone.DARK))
            .yarns(2, Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY);
    assertEquals(100 * 4 / 9.0, bound(nine.build(), Part.VARIETY), 1e-5);
    nine.note("r1c1", PieceState.MADE, "A", "A").note("r1c2", PieceState.MADE, "A", "A");
    assertEquals(100 * 5 / 9.0, bound(nine.build(), Part.VARIETY), 1e-5);
    // rounds side by side differ: of three yarns six sequences of two rounds, and twelve of three
    BlanketBuilder differ =
        BlanketBuilder.straight(5, 4)
            .motif(PieceKind.SQUARE, round(1000), round(2000))
            .yarns(3, Tone.DARK, PLENTY);
    assertEquals(100 * 6 / 20.0, bound(differ.build(), Part.VARIETY), 1e-5);
    BlanketBuilder three =
        BlanketBuilder.straight(5, 4)
            .motif(PieceKind.SQUARE, round(1000), round(2000), round(1000))
            .yarns(3, Tone.DARK, PLENTY);
    assertEquals(100 * 12 / 20.0, bound(three.build(), Part.VARIETY), 1e-5);
    assertEquals(100, bound(twoByTwo().build(), Part.VARIETY), 1e-5);
  }

  @Test
  void nothingIsBoundedWhereNothingWeighs() {
    Blanket blanket = Blanket.ofUnjudged(twoByTwo().build().brief().withPrefer(noWeights()));
    assertEquals(
        "no part of the score weighs", Bounds.of(blanket, new BoundLimits(2), () -> false).proof());
  }

  private static Preferences noWeights() {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      weights.put(part, 0.0);
    }
    return new Preferences(weights);
  }
}
