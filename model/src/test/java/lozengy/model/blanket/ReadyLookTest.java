package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Where;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** Given borders, zones, wanted contrast and counts, made ready. */
class ReadyLookTest {

  private static Blanket looking(BlanketBuilder builder, Look look) {
    builder.saltmarsh().motif(PieceKind.SQUARE, 2);
    builder.motif(PieceKind.SIDE_TRIANGLE, 2).motif(PieceKind.CORNER_TRIANGLE, 1);
    return Blanket.ofUnjudged(builder.build().brief().withLook(look));
  }

  /** On any layout two alternating borders never meet on a seam; MUD is 0, REE 3. */
  @Test
  void givenBordersAlternate() {
    Look two = Look.NONE.withBorders("MUD", "REE");
    for (BlanketBuilder builder :
        List.of(
            BlanketBuilder.straight(3, 2),
            BlanketBuilder.onPoint(2, 3),
            BlanketBuilder.filled(2, 2))) {
      Blanket blanket = looking(builder, two);
      assertTrue(blanket.look().givesBorders());
      assertEquals(0, blanket.look().border(0));
      for (int seam = 0; seam < blanket.layout().seams().size(); seam++) {
        int first = blanket.look().border(blanket.layout().seams().first()[seam]);
        int second = blanket.look().border(blanket.layout().seams().second()[seam]);
        assertEquals(3, first + second);
        assertNotEquals(first, second);
      }
      Blanket one = Blanket.ofUnjudged(blanket.brief().withLook(Look.NONE.withBorders("REE")));
      assertEquals(3, one.look().border(blanket.pieceCount() - 1));
      Blanket none = Blanket.ofUnjudged(blanket.brief().withLook(Look.NONE));
      assertFalse(none.look().givesBorders());
      assertEquals(Sequences.OPEN, none.look().border(0));
    }
  }

  @Test
  void givenBordersAreLockedWhereNothingElseIs() {
    Blanket blanket =
        looking(
            BlanketBuilder.straight(4, 1)
                .piece("r1c2", PieceState.MADE, "SAM", "SND")
                .piece("r1c3", PieceState.PLANNED, null, "SND")
                .begun("r1c4", 1, "SAM", null),
            Look.NONE.withBorders("MUD"));
    int sand = blanket.yarnIndex("SND");
    int[] locked = {0, sand, sand, 0};
    for (int piece = 0; piece < 4; piece++) {
      assertEquals(locked[piece], blanket.locked(piece, 1));
      assertEquals(locked[piece] == 0 ? Sequences.OPEN : sand, blanket.stated(piece, 1));
      assertEquals(piece == 0 || piece == 2, blanket.locked(piece, 0) == Sequences.OPEN);
    }
    assertTrue(blanket.bordersMayMatch(0, 3));
    assertFalse(blanket.bordersMayMatch(0, 2));
    assertFalse(blanket.bordersMayMatch(2, 0));
    assertTrue(blanket.free(0, 0));
    assertFalse(blanket.free(0, 1), "locked");
    assertFalse(blanket.free(3, 0), "worked");
    assertEquals(Sequences.OPEN, blanket.locks().yarn(0, 0));
    assertEquals(0, blanket.locks().yarn(0, 1));
  }

  private static Look.Zone zone(List<Integer> rounds, List<String> at, String... only) {
    return new Look.Zone(new Where(at, rounds), Arrays.asList(only));
  }

  @Test
  void zonesLetRoundsHaveTheirYarnsAlone() {
    Blanket blanket =
        looking(
            BlanketBuilder.straight(4, 1),
            Look.NONE.withZones(
                List.of(
                    zone(List.of(Where.BORDER), List.of("r1c1", "r1c2"), "MUD", "SAM"),
                    zone(List.of(), List.of("r1c2", "r1c3"), "SAM", "REE"))));
    boolean[][] mud = {{true, true}, {false, false}, {false, false}, {true, true}};
    boolean[][] sam = {{true, true}, {true, true}, {true, true}, {true, true}};
    boolean[][] ree = {{true, false}, {true, false}, {true, true}, {true, true}};
    for (int piece = 0; piece < 4; piece++) {
      for (int round = 0; round < 2; round++) {
        assertEquals(mud[piece][round], blanket.look().allows(piece, round, 2, 0));
        assertEquals(sam[piece][round], blanket.look().allows(piece, round, 2, 1));
        assertEquals(ree[piece][round], blanket.look().allows(piece, round, 2, 3));
        assertEquals(ree[piece][round], blanket.domains().mayTake(piece, round, 3));
      }
    }
    int[] groups = new int[4];
    Arrays.setAll(groups, blanket.look()::zoneGroup);
    assertEquals(4, Arrays.stream(groups).distinct().count());
    Blanket one =
        looking(
            BlanketBuilder.straight(4, 1),
            Look.NONE.withZones(List.of(zone(List.of(), List.of("r1c2", "r1c4"), "MUD"))));
    assertEquals(one.look().zoneGroup(0), one.look().zoneGroup(2));
    assertEquals(one.look().zoneGroup(1), one.look().zoneGroup(3));
    assertNotEquals(one.look().zoneGroup(0), one.look().zoneGroup(1));
    Blanket none = looking(BlanketBuilder.straight(4, 1), Look.NONE);
    assertTrue(none.look().allows(0, 0, 2, 0));
    assertEquals(0, none.look().zoneGroup(3));
    assertEquals(Look.NONE, none.look().asked());
  }

  @Test
  void contrastIsHeldAgainstWhatIsWanted() {
    ReadyLook look =
        looking(BlanketBuilder.straight(1, 1), Look.NONE.withContrast(30, Look.CALM)).look();
    assertEquals(1, look.wanted(true, 0.3), 1e-12);
    assertEquals(1 - 0.2 / 0.7, look.wanted(true, 0.5), 1e-12);
    assertEquals(0, look.wanted(true, 1), 1e-12);
    assertEquals(1 - 0.3 / 0.7, look.wanted(true, 0), 1e-12);
    assertEquals(0.75, look.wanted(false, 0.25), 1e-12);
    ReadyLook high = looking(BlanketBuilder.straight(1, 1), Look.NONE.withContrast(80, 80)).look();
    assertEquals(0.75, high.wanted(true, 0.6), 1e-12);
    ReadyLook plain = looking(BlanketBuilder.straight(1, 1), Look.NONE).look();
    assertEquals(0.4, plain.wanted(true, 0.4));
    assertEquals(0.4, plain.wanted(false, 0.4));
  }

  private static ReadyCount ready(Brief brief, Look.Count count) {
    Look look = Look.NONE.withCounts(List.of(count));
    return ReadyCount.of(Blanket.ofUnjudged(brief.withLook(look))).get(0);
  }

  @Test
  void aCountLooksAtItsRoundsAndPiecesThatHaveSome() {
    // corners have one round
    Look.Count second =
        new Look.Count("REE", new Where(List.of("all"), List.of(2)), 1, OptionalInt.of(3));
    Blanket blanket = looking(BlanketBuilder.filled(1, 2), Look.NONE.withCounts(List.of(second)));
    ReadyCount count = ReadyCount.of(blanket).get(0);
    assertEquals(3, count.yarn());
    assertArrayEquals(new int[] {0, 1, 2, 3}, count.pieces());
    assertEquals(1, count.atLeast());
    assertEquals(3, count.atMost());
    assertTrue(count.asksAtLeast() && count.asksAtMost());
    assertEquals("look.counts[0].at-least", count.atLeastPath().toString());
    assertEquals("look.counts[0].at-most", count.atMostPath().toString());
    assertTrue(count.covers(1, 2));
    assertFalse(count.covers(0, 2));
    for (int i = 0; i < 4; i++) {
      assertArrayEquals(new int[] {blanket.index().border(i)}, count.rounds(blanket)[i]);
    }
    Sequences sequences = BlanketBuilder.sequences(blanket, "REE,MUD ~,REE REE,~");
    assertFalse(count.shown(sequences, 0));
    assertFalse(count.open(sequences, 0));
    assertTrue(count.shown(sequences, 1));
    assertFalse(count.open(sequences, 1));
    assertFalse(count.shown(sequences, 2));
    assertTrue(count.open(sequences, 2));
  }

  @Test
  void whatIsWorkedBoundsACount() {
    Look.Count two = new Look.Count("MUD", Where.BORDERS, 2, OptionalInt.of(2));
    Look.Count none = new Look.Count("MUD", Where.BORDERS, 0, OptionalInt.of(0));
    Brief brief =
        looking(
                BlanketBuilder.straight(4, 1)
                    .piece("r1c1", PieceState.MADE, "SND", "MUD")
                    .piece("r1c2", PieceState.PLANNED, "MUD", "MUD")
                    .begun("r1c3", 1, "MUD", null),
                Look.NONE)
            .brief();
    assertEquals(1, ready(brief, none).atMost(), "one is made; a lock is no fact");
    assertTrue(ready(brief, none).asksAtMost());
    assertFalse(ready(brief, none).asksAtLeast());
    assertEquals(2, ready(brief, two).atLeast());
    Look.Count many = new Look.Count("MUD", Where.BORDERS, 0, OptionalInt.of(9));
    assertEquals(4, ready(brief, many).atMost());
    assertFalse(ready(brief, many).asksAtMost());
    Look.Count centres =
        new Look.Count("MUD", new Where(List.of("all"), List.of(1)), 1, OptionalInt.of(1));
    assertEquals(1, ready(brief, centres).atMost());
    Look.Count worked =
        new Look.Count("REE", new Where(List.of("r1c1"), List.of()), 1, OptionalInt.empty());
    assertEquals(0, ready(brief, worked).atLeast(), "nothing is left to work");
    Look.Count begunOnly =
        new Look.Count("REE", new Where(List.of("r1c3"), List.of(1)), 1, OptionalInt.empty());
    assertEquals(0, ready(brief, begunOnly).atLeast());
    Look.Count begunBorder =
        new Look.Count("REE", new Where(List.of("r1c3"), List.of(2)), 1, OptionalInt.empty());
    assertEquals(1, ready(brief, begunBorder).atLeast());
  }

  @Test
  void locksOfRoundsThatAreNotWorkedBoundNoCount() {
    Look.Count none = new Look.Count("MUD", Where.BORDERS, 0, OptionalInt.of(0));
    Brief brief =
        looking(
                BlanketBuilder.straight(4, 1)
                    .piece("r1c1", PieceState.MADE, "SND", "MUD")
                    .piece("r1c2", PieceState.MADE, "REE", "MUD")
                    .piece("r1c3", PieceState.PLANNED, "SND", "MUD"),
                Look.NONE)
            .brief();
    assertEquals(2, ready(brief, none).atMost());
  }

  @Test
  void theLastPieceShowsAYarnInItsOwnRoundsOrNot() {
    Look.Count mud = new Look.Count("MUD", Where.BORDERS, 0, OptionalInt.of(1));
    Blanket blanket = looking(BlanketBuilder.straight(2, 1), Look.NONE.withCounts(List.of(mud)));
    Sequences sequences = BlanketBuilder.sequences(blanket, "MUD,REE MUD,REE");
    ReadyCount count = ReadyCount.of(blanket).get(0);
    assertFalse(count.shown(sequences, 1));
    assertFalse(count.open(sequences, 1));
    sequences.set(1, 1, 0);
    assertTrue(count.shown(sequences, 1));
  }
}
