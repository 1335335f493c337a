package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.problem.Slots;
import org.junit.jupiter.api.Test;

/** All that may be drawn is drawn, and nothing else. */
class NeighbourhoodTest {

  private static final int MANY = 3000;

  /** Squares of three rounds and triangles of two; one square made, one round of another locked. */
  private static final Problem PROBLEM =
      ProblemCompiler.compile(
          BlanketBuilder.filled(2, 2)
              .motif(
                  PieceKind.SQUARE,
                  BlanketBuilder.round(500),
                  BlanketBuilder.round(700),
                  BlanketBuilder.round(1000))
              .motif(PieceKind.SIDE_TRIANGLE, BlanketBuilder.round(500), BlanketBuilder.round(400))
              .motif(
                  PieceKind.CORNER_TRIANGLE, BlanketBuilder.round(200), BlanketBuilder.round(100))
              .yarns(3, Tone.DARK, 100_000)
              .note("r1c1", PieceState.MADE, "A", "B", "C")
              .note("r1c2", PieceState.PLANNED, null, "B", null)
              .build(),
          Optional.empty());

  private static final Slots SLOTS = PROBLEM.slots();

  private static Set<Integer> drawn(IntSupplier draw) {
    return IntStream.range(0, MANY)
        .map(i -> draw.getAsInt())
        .boxed()
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<Integer> those(int[] of, IntPredicate are) {
    return Arrays.stream(of).filter(are).boxed().collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void drawsAllOfAKindAndNothingElse() {
    int[] free = SLOTS.free();
    Neighbourhood all = new Neighbourhood(PROBLEM, new Draws(1), free);
    assertEquals(free.length, all.size());
    assertEquals(those(free, slot -> true), drawn(all::slot));
    assertEquals(
        those(free, slot -> SLOTS.border(SLOTS.orbit()[slot]) == slot), drawn(all::border));
    assertTrue(all.hasBorders());
    for (int slot = 0; slot < SLOTS.count(); slot++) {
      int each = slot;
      assertEquals(Arrays.stream(free).anyMatch(other -> other == each), all.has(slot));
    }
    for (int slot : free) {
      assertEquals(
          those(free, other -> SLOTS.layer()[other] == SLOTS.layer()[slot]),
          drawn(() -> all.ofLayer(slot)));
      assertEquals(
          those(
              free,
              other -> PROBLEM.supply().slotClass()[other] == PROBLEM.supply().slotClass()[slot]),
          drawn(() -> all.alike(slot)));
    }
  }

  @Test
  void drawsPiecesOfAKindOfWhichEveryRoundIsFree() {
    Neighbourhood all = new Neighbourhood(PROBLEM, new Draws(1), SLOTS.free());
    for (int piece = 0; piece < SLOTS.orbits(); piece++) {
      int one = piece;
      PieceKind kind = PROBLEM.blanket().kind(piece);
      int[] like =
          IntStream.range(0, SLOTS.orbits())
              .filter(other -> PROBLEM.blanket().kind(other) == kind)
              .filter(NeighbourhoodTest::allFree)
              .toArray();
      boolean some = allFree(piece) && like.length > 1;
      Set<Integer> expected = some ? those(like, other -> true) : Set.of(-1);
      assertEquals(expected, drawn(() -> all.pieceLike(one)), "piece " + piece);
    }
  }

  private static boolean allFree(int piece) {
    return IntStream.range(SLOTS.orbitStart()[piece], SLOTS.orbitStart()[piece + 1])
        .allMatch(slot -> SLOTS.fixedYarn()[slot] < 0);
  }

  @Test
  void fewSlotsAreDrawnFromAlone() {
    int[] inner = Arrays.stream(SLOTS.free()).filter(slot -> SLOTS.layer()[slot] > 0).toArray();
    Neighbourhood some = new Neighbourhood(PROBLEM, new Draws(1), inner);
    assertEquals(those(inner, slot -> true), drawn(some::slot));
    assertFalse(some.hasBorders());
    assertFalse(some.has(SLOTS.border(3)));
    assertEquals(-1, some.pieceLike(3));
    // a part of it has what lies within its pieces
    Neighbourhood all = new Neighbourhood(PROBLEM, new Draws(1), SLOTS.free());
    int[] pieces = {0, 3, 4, 5};
    Neighbourhood part = new Neighbourhood(all, pieces, new Draws(2));
    Set<Integer> within =
        those(
            SLOTS.free(),
            slot -> Arrays.stream(pieces).anyMatch(piece -> SLOTS.orbit()[slot] == piece));
    assertEquals(within.size(), part.size());
    assertEquals(within, drawn(part::slot));
    for (int slot : within) {
      assertTrue(within.containsAll(drawn(() -> part.alike(slot))));
      assertTrue(drawn(() -> part.alike(slot)).contains(slot));
    }
    int[] borders = within.stream().mapToInt(i -> i).toArray();
    assertEquals(
        those(borders, slot -> SLOTS.border(SLOTS.orbit()[slot]) == slot), drawn(part::border));
  }

  @Test
  void aWindowGoesOnAtTheBeginning() {
    int[] free = SLOTS.free();
    Neighbourhood all = new Neighbourhood(PROBLEM, new Draws(1), free);
    all.keepTo(0.5, 0.25);
    int length = (int) (0.25 * free.length);
    int from = (int) (0.5 * free.length);
    assertEquals(window(free, from, length), drawn(all::slot));
    int late = (int) (0.9 * free.length);
    all.keepTo(0.9, 0.25);
    assertEquals(window(free, late, length), drawn(all::slot));
    assertTrue(drawn(all::slot).contains(free[0]));
    // two at least, so that there is something to exchange
    all.keepTo(0, 0.001);
    assertEquals(window(free, 0, 2), drawn(all::slot));
    all.keepTo(0, 1);
    assertEquals(free.length, drawn(all::slot).size());
  }

  private static Set<Integer> window(int[] free, int from, int length) {
    return IntStream.range(from, from + length)
        .map(i -> free[i % free.length])
        .boxed()
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
