package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lozengy.model.arrangement.Arrangement.Bound;
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

  /** Weights w of variety and balance, the brief's own 1 and 3; balance may be full. */
  private static BlanketBuilder capped() {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      weights.put(part, part == Part.VARIETY ? 1.0 : part == Part.BALANCE ? 3.0 : 0.0);
    }
    return BlanketBuilder.straight(3, 3)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(2000, Tone.DARK))
        .yarns(2, Tone.DARK, PLENTY)
        .yarns(2, Tone.LIGHT, PLENTY)
        .prefer(weights);
  }

  private static Map<Part, Double> kept(double variety, double balance, OptionalDouble known) {
    Map<Part, Double> figures = new EnumMap<>(Part.class);
    figures.put(Part.VARIETY, variety);
    figures.put(Part.BALANCE, balance);
    Optional<Bound> total =
        known.isPresent() ? Optional.of(new Bound(known.getAsDouble(), "")) : Optional.empty();
    return PartBounds.othersKept(capped().build(), figures, total, new BoundLimits(0), () -> false);
  }

  /** What the others keep is taken off what all have together, at the most that a bound allows. */
  @Test
  void othersKeptLeaveWhatABoundLeaves() {
    double cap = 100 * 4 / 9.0;
    // with twice the others' weight: 6 times the cap and 3 times 100, less 3 times 90, by 6
    assertEquals(cap + 30 / 6.0, kept(40, 90, OptionalDouble.empty()).get(Part.VARIETY), 1e-4);
    assertEquals(100, kept(40, 90, OptionalDouble.empty()).get(Part.BALANCE));
    assertEquals(cap, kept(40, 100, OptionalDouble.empty()).get(Part.VARIETY), 1e-4);
    // half of the weight of variety, and what it lacks of its cap: 0.5 times 100 and 2
    Map<Part, Double> near = kept(cap, 90, OptionalDouble.empty());
    assertEquals(100, near.get(Part.BALANCE), 1e-4);
    // the total that is known leaves 4 times 78, less 3 times 90; balance the same less 40, by 3
    Map<Part, Double> known = kept(40, 90, OptionalDouble.of(78));
    assertEquals(4 * 78 - 270, known.get(Part.VARIETY), 1e-9);
    assertEquals((4 * 78 - 40) / 3.0, known.get(Part.BALANCE), 1e-9);
    // never less than what is given
    assertEquals(40, kept(40, 90, OptionalDouble.of(60)).get(Part.VARIETY));
    assertEquals(90, kept(40, 90, OptionalDouble.of(60)).get(Part.BALANCE));
  }

  /** A part that does not weigh has no share in what is known; alone, the others are none. */
  @Test
  void partsThatDoNotWeighAreBoundedByWeightsOfTheirOwn() {
    Map<Part, Double> figures = new EnumMap<>(Part.class);
    figures.put(Part.VARIETY, 40.0);
    figures.put(Part.LEEWAY, 30.0);
    Optional<Bound> known = Optional.of(new Bound(42, ""));
    Map<Part, Double> bounds =
        PartBounds.othersKept(capped().build(), figures, known, new BoundLimits(1), () -> false);
    assertEquals(42, bounds.get(Part.VARIETY), 1e-9);
    // twice variety's weight, which lacks 4.4 of its cap
    assertEquals(100, bounds.get(Part.LEEWAY), 1e-4);
    Map<Part, Double> stopped =
        PartBounds.othersKept(
            capped().build(), figures, Optional.empty(), new BoundLimits(1), () -> true);
    assertEquals(Map.of(Part.VARIETY, 100.0, Part.LEEWAY, 100.0), stopped);
  }

  /** No part is bounded below nothing, and where none can lose the bound is all. */
  @Test
  void theProofIsNamed() {
    Bound all = Bounds.of(oneOf(Part.LEEWAY), new BoundLimits(1), () -> false);
    assertEquals(new Bound(100, "no part of the score exceeds 100"), all);
    Bound variety = Bounds.of(oneOf(Part.VARIETY), new BoundLimits(1), () -> false);
    assertEquals(100 * 4 / 9.0, variety.total(), 1e-5);
    assertEquals(
        "counts, seams, stock and repeats bounded together by a convex program", variety.proof());
    Blanket none =
        BlanketBuilder.straight(1, 2)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(2, Tone.MID, 0)
            .prefer(Map.of(Part.BALANCE, 1.0, Part.SPREAD, 0.0))
            .build();
    assertEquals(0, Bounds.of(none, new BoundLimits(2), () -> false).total());
    assertThrows(IllegalArgumentException.class, () -> new BoundLimits(-1));
    assertEquals(0, new BoundLimits(0).stages());
  }

  private static Blanket oneOf(Part part) {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part each : Part.values()) {
      weights.put(each, each == part ? 1.0 : 0.0);
    }
    return capped().prefer(weights).build();
  }

  private static Map<Part, Double> only(Part... parts) {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      weights.put(part, Set.of(parts).contains(part) ? 1.0 : 0.0);
    }
    return weights;
  }

  /** Each yarn should have one of three pieces; of A there is enough for half of one. */
  @Test
  void halfAPieceCannotBeWorked() {
    Blanket blanket =
        BlanketBuilder.straight(1, 3)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.MID, 500)
            .yarns(2, Tone.MID, PLENTY)
            .prefer(only(Part.BALANCE))
            .build();
    double best = Exhaustive.best(blanket).orElseThrow();
    assertEquals(best, Bounds.of(blanket, new BoundLimits(1), () -> false).total(), 1e-3);
  }

  /** Two yarns on nine squares lie like a chessboard: every repeat is known. */
  @Test
  void aChessboardsRepeatsAreKnown() {
    Blanket blanket =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(2, Tone.MID, PLENTY)
            .prefer(only(Part.SPREAD, Part.BALANCE))
            .build();
    double best = Exhaustive.best(blanket).orElseThrow();
    assertEquals(best, Bounds.of(blanket, new BoundLimits(1), () -> false).total(), 1e-3);
  }

  /** All centres alike repeat more than is expected: spread is 0 and not below. */
  @Test
  void spreadDoesNotFallBelowNought() {
    Blanket blanket =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(1000), round(1000))
            .yarns(8, Tone.MID, PLENTY)
            .note("all", PieceState.PLANNED, "A", null)
            .prefer(only(Part.SPREAD, Part.BALANCE))
            .build();
    double bound = Bounds.of(blanket, new BoundLimits(1), () -> false).total();
    assertEquals(50 + DualBound.MARGIN, bound, 1e-9);
  }
}
