package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Symmetry;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import org.junit.jupiter.api.Test;

class OrbitsTest {

  private static Blanket with(BlanketBuilder builder, Symmetry symmetry) {
    builder.saltmarsh().motif(PieceKind.SQUARE, 2);
    builder.motif(PieceKind.SIDE_TRIANGLE, 1).motif(PieceKind.CORNER_TRIANGLE, 1);
    return Blanket.ofUnjudged(builder.build().brief().withLook(Look.NONE.withSymmetry(symmetry)));
  }

  /** Whether two places are the same, or one lies where the other is turned or mirrored to. */
  private static boolean images(Blanket blanket, Symmetry symmetry, Place one, Place other) {
    int width = 2 * blanket.layout().size().across();
    int height = 2 * blanket.layout().size().down();
    boolean sameX = one.x() == other.x();
    boolean sameY = one.y() == other.y();
    boolean acrossX = one.x() + other.x() == width;
    boolean acrossY = one.y() + other.y() == height;
    boolean mirrored = acrossX && sameY;
    boolean flipped = sameX && acrossY;
    boolean turned = acrossX && acrossY;
    return sameX && sameY
        || switch (symmetry) {
          case NONE -> false;
          case LEFT_RIGHT -> mirrored;
          case TOP_BOTTOM -> flipped;
          case HALF_TURN -> turned;
          case BOTH -> mirrored || flipped || turned;
        };
  }

  @Test
  void orbitsAreTheImagesOfEachPiece() {
    List<Supplier<BlanketBuilder>> layouts =
        List.of(
            () -> BlanketBuilder.straight(3, 4),
            () -> BlanketBuilder.onPoint(3, 2),
            () -> BlanketBuilder.filled(2, 3));
    for (Supplier<BlanketBuilder> layout : layouts) {
      for (Symmetry symmetry : Symmetry.values()) {
        Blanket blanket = with(layout.get(), symmetry);
        Orbits orbits = blanket.orbits();
        assertEquals(symmetry != Symmetry.NONE, orbits.any());
        List<Integer> leads = IntStream.of(orbits.leads()).boxed().toList();
        for (Place place : blanket.layout().places()) {
          int[] expected =
              blanket.layout().places().stream()
                  .filter(other -> images(blanket, symmetry, place, other))
                  .mapToInt(Place::index)
                  .toArray();
          int lead = orbits.lead(place.index());
          assertEquals(expected[0], lead);
          assertArrayEquals(expected, orbits.members(lead));
          assertEquals(lead == place.index(), orbits.leads(place.index()));
          assertEquals(lead == place.index(), leads.contains(place.index()));
          assertEquals(-1, orbits.worked(lead));
        }
      }
    }
  }

  private static Blanket row(BlanketBuilder builder) {
    return Blanket.ofUnjudged(
        builder.build().brief().withLook(Look.NONE.withSymmetry(Symmetry.BOTH)));
  }

  private static BlanketBuilder four() {
    return BlanketBuilder.straight(2, 2).saltmarsh().motif(PieceKind.SQUARE, 2);
  }

  /** Four images: one made, one begun alike, one begun otherwise, one still to be worked. */
  @Test
  void whatIsWorkedTiesOrParts() {
    Blanket blanket =
        row(
            four()
                .piece("r1c1", PieceState.MADE, "MUD", "REE")
                .begun("r1c2", 1, "MUD", null)
                .begun("r2c1", 1, "SAM", null));
    Orbits orbits = blanket.orbits();
    assertTrue(orbits.any());
    assertArrayEquals(new int[] {0, 1, 3}, orbits.members(1));
    assertEquals(1, orbits.lead(0), "the first that is planned");
    assertEquals(0, orbits.worked(1));
    assertArrayEquals(new int[] {2}, orbits.members(2));
    assertEquals(-1, orbits.worked(2));
    assertArrayEquals(new int[] {1, 2}, orbits.leads());
    // so the images' rounds that are still to be worked are locked, and no others
    assertEquals(blanket.yarnIndex("REE"), blanket.locked(1, 1));
    assertEquals(Sequences.OPEN, blanket.stated(1, 1));
    assertEquals(blanket.yarnIndex("MUD"), blanket.locked(3, 0));
    assertEquals(Sequences.OPEN, blanket.locked(2, 1));
  }

  @Test
  void whereAllIsWorkedTheSymmetryAsksNothing() {
    Orbits orbits =
        row(BlanketBuilder.straight(2, 1)
                .saltmarsh()
                .motif(PieceKind.SQUARE, 1)
                .piece("r1c1", PieceState.MADE, "MUD")
                .piece("r1c2", PieceState.MADE, "MUD"))
            .orbits();
    assertFalse(orbits.any());
    assertEquals(0, orbits.lead(1));
    assertEquals(0, orbits.worked(0));
    Orbits parted =
        row(BlanketBuilder.straight(2, 1)
                .saltmarsh()
                .motif(PieceKind.SQUARE, 1)
                .piece("r1c1", PieceState.MADE, "MUD")
                .piece("r1c2", PieceState.MADE, "REE"))
            .orbits();
    assertArrayEquals(new int[] {0, 1}, parted.leads());
  }

  @Test
  void oneOrbitIsASymmetryThatAsks() {
    Orbits orbits =
        row(BlanketBuilder.straight(2, 1).saltmarsh().motif(PieceKind.SQUARE, 1)).orbits();
    assertTrue(orbits.any());
    assertArrayEquals(new int[] {0}, orbits.leads());
  }

  /** The second has worked only what both agree on, the third more than the first shows. */
  @Test
  void imagesAreHeldAgainstAllThatIsKnownSoFar() {
    Orbits orbits =
        row(BlanketBuilder.straight(2, 2)
                .saltmarsh()
                .motif(PieceKind.SQUARE, 3)
                .begun("r1c1", 1, "MUD", null, null)
                .begun("r1c2", 2, "MUD", "REE", null)
                .begun("r2c1", 2, "MUD", "SAM", null)
                .begun("r2c2", 1, "MUD", null, null))
            .orbits();
    assertArrayEquals(new int[] {0, 1, 3}, orbits.members(0));
    assertArrayEquals(new int[] {2}, orbits.members(2));
  }
}
