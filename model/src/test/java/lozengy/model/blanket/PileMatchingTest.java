package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** Places for the pile, held against trying every way to lay it. */
class PileMatchingTest {

  private static final String[] CODES = {"MUD", "REE"};

  private static String code(SplittableRandom random) {
    return CODES[random.nextInt(CODES.length)];
  }

  /** Corners and squares on point, locked and banned at random. */
  private static Blanket drawn(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    BlanketBuilder builder =
        BlanketBuilder.filled(1, 1)
            .yarn("MUD", "Tidal mud", "#2c2a29")
            .yarn("REE", "Reed", "#b9b57a")
            .motif(PieceKind.SQUARE, 2)
            .motif(PieceKind.CORNER_TRIANGLE, 2);
    List<String> corners = List.of("top-left", "top-right", "bottom-right", "bottom-left");
    for (String corner : corners) {
      switch (random.nextInt(7)) {
        case 0 -> builder.piece(corner, PieceState.PLANNED, code(random), null);
        case 1 -> builder.piece(corner, PieceState.PLANNED, null, code(random));
        case 2 -> builder.piece(corner, PieceState.PLANNED, code(random), code(random));
        case 3 -> builder.piece(corner, PieceState.MADE, code(random), code(random));
        case 4 -> builder.ban(corner, "MUD");
        case 5 -> builder.ban(corner, "MUD").ban(corner, "REE");
        default -> {}
      }
    }
    List<PileEntry> pile = new ArrayList<>();
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      List<String> codes = List.of(code(random), code(random));
      PieceKind kind = random.nextInt(5) == 0 ? PieceKind.SQUARE : PieceKind.CORNER_TRIANGLE;
      pile.add(new PileEntry(kind, codes, 1 + random.nextInt(2), Set.of()));
    }
    return Blanket.ofUnjudged(builder.build().brief().withPile(pile));
  }

  private static boolean fits(Blanket blanket, Stack stack, int piece) {
    if (blanket.state(piece) != PieceState.PLANNED || blanket.kind(piece) != stack.kind()) {
      return false;
    }
    for (int round = 0; round < 2; round++) {
      int lock = blanket.locked(piece, round);
      if (lock != Sequences.OPEN && lock != stack.yarns()[round]) {
        return false;
      }
    }
    return true;
  }

  /** Both yarns are banned: nothing can be worked there. */
  private static boolean onlyFinished(Blanket blanket, int piece) {
    return blanket.banned(piece, 0) && blanket.banned(piece, 1)
        || blanket.banned(piece, 0)
            && (blanket.locked(piece, 0) == 0 || blanket.locked(piece, 1) == 0);
  }

  /** Whether each place from one on can be filled or left, so that all pieces lie somewhere. */
  private static boolean canLay(Blanket blanket, int[] left, int piece) {
    if (piece == blanket.pieceCount()) {
      return Arrays.stream(left).sum() == 0;
    }
    boolean mustFill = blanket.domains().takesPile(piece) && onlyFinished(blanket, piece);
    if (!mustFill && canLay(blanket, left, piece + 1)) {
      return true;
    }
    for (int stack = 0; stack < left.length; stack++) {
      if (left[stack] > 0 && fits(blanket, blanket.pile().stacks().get(stack), piece)) {
        left[stack]--;
        boolean can = canLay(blanket, left, piece + 1);
        left[stack]++;
        if (can) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void findsPlacesWhereverThereAreSome() {
    int[] seen = new int[3];
    for (long seed = 0; seed < 250; seed++) {
      Blanket blanket = drawn(seed);
      PileMatching.Result result = PileMatching.of(blanket);
      List<Stack> stacks = blanket.pile().stacks();
      int[] left = stacks.stream().mapToInt(Stack::count).toArray();
      boolean can = canLay(blanket, left.clone(), 0);
      if (result.complete()) {
        assertTrue(can, "seed " + seed);
        for (int piece = 0; piece < blanket.pieceCount(); piece++) {
          int stack = result.stackAt()[piece];
          if (stack >= 0) {
            left[stack]--;
            assertTrue(fits(blanket, stacks.get(stack), piece), "seed " + seed);
          } else {
            boolean stuck = blanket.domains().takesPile(piece) && onlyFinished(blanket, piece);
            assertFalse(stuck, "seed " + seed);
          }
        }
        assertEquals(0, Arrays.stream(left).filter(n -> n != 0).count(), "seed " + seed);
        seen[0]++;
      } else if (result.unfilled().isEmpty()) {
        assertHall(blanket, result, "seed " + seed);
        assertFalse(can, "seed " + seed);
        seen[1]++;
      } else {
        assertFalse(can, "seed " + seed);
        assertEquals(List.of(), result.tooMany());
        for (int piece : result.unfilled()) {
          assertTrue(onlyFinished(blanket, piece) && blanket.domains().takesPile(piece));
        }
        seen[2]++;
      }
    }
    for (int count : seen) {
      assertTrue(count > 3, Arrays.toString(seen));
    }
  }

  /** The stacks have more pieces than places between them, by Hall's condition. */
  private static void assertHall(Blanket blanket, PileMatching.Result result, String told) {
    Set<Integer> places = new HashSet<>();
    int pieces = 0;
    for (int stack : result.tooMany()) {
      pieces += blanket.pile().stacks().get(stack).count();
      for (int piece = 0; piece < blanket.pieceCount(); piece++) {
        if (fits(blanket, blanket.pile().stacks().get(stack), piece)) {
          places.add(piece);
        }
      }
    }
    assertTrue(pieces > places.size(), told);
    assertEquals(places, new HashSet<>(result.places()), told);
    assertEquals(places.size(), result.places().size(), told);
  }

  @Test
  void aNewPieceNeedsAYarnForEveryRound() {
    Blanket blanket =
        BlanketBuilder.straight(5, 1)
            .saltmarsh()
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(1, Tone.values()),
                BlanketBuilder.round(1, Tone.DARK))
            .ban("r1c2", "MUD")
            .ban("r1c3", "REE")
            .piece("r1c4", PieceState.PLANNED, null, "REE")
            .piece("r1c5", PieceState.PLANNED, "REE", "MUD")
            .build();
    boolean[] takes = {true, false, true, false, true};
    for (int piece = 0; piece < takes.length; piece++) {
      assertEquals(takes[piece], PileMatching.takesNew(blanket, piece));
    }
  }

  /** The first place takes either piece, the second one of them alone. */
  @Test
  void aFinishedPieceMovesOnForAPlaceThatNoOtherFits() {
    Blanket blanket =
        Blanket.ofUnjudged(
            BlanketBuilder.straight(2, 1)
                .yarn("MUD", "Tidal mud", "#2c2a29")
                .yarn("REE", "Reed", "#b9b57a")
                .motif(PieceKind.SQUARE, 2)
                .ban("r1c1", "MUD")
                .ban("r1c1", "REE")
                .piece("r1c2", PieceState.PLANNED, "MUD", null)
                .ban("r1c2", "MUD")
                .build()
                .brief()
                .withPile(
                    List.of(
                        new PileEntry(PieceKind.SQUARE, List.of("MUD", "MUD"), 1, Set.of()),
                        new PileEntry(PieceKind.SQUARE, List.of("REE", "REE"), 1, Set.of()))));
    PileMatching.Result result = PileMatching.of(blanket);
    assertTrue(result.complete());
    assertEquals(1, result.stackAt()[0]);
    assertEquals(0, result.stackAt()[1]);
  }

  @Test
  void piecesLieAtPlacesOfTheirKindWhereNotAllAreFilled() {
    Blanket blanket =
        Blanket.ofUnjudged(
            BlanketBuilder.filled(1, 2)
                .yarn("MUD", "Tidal mud", "#2c2a29")
                .motif(PieceKind.SQUARE, 1)
                .motif(PieceKind.SIDE_TRIANGLE, 1)
                .motif(PieceKind.CORNER_TRIANGLE, 1)
                .build()
                .brief()
                .withPile(
                    List.of(
                        new PileEntry(PieceKind.CORNER_TRIANGLE, List.of("MUD"), 2, Set.of()),
                        new PileEntry(PieceKind.SQUARE, List.of("MUD"), 1, Set.of()))));
    PileMatching.Result result = PileMatching.of(blanket);
    assertTrue(result.complete());
    int laid = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int stack = result.stackAt()[piece];
      if (stack >= 0) {
        assertEquals(blanket.kind(piece), blanket.pile().stacks().get(stack).kind());
        laid++;
      }
    }
    assertEquals(3, laid);
  }
}
