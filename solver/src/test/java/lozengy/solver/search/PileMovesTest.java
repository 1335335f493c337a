package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Domains;
import lozengy.solver.problem.PilePlaces;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** Pieces of a pile lie where they fit, all of them, and get wherever they may. */
class PileMovesTest {

  /** 3 x 3 squares: one locked in its first round, one banned a yarn; two stacks of two and one. */
  private static Problem problem() {
    Blanket blanket =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(1500))
            .yarns(4, Tone.DARK, 100_000)
            .note("r1c1", PieceState.PLANNED, "B", null)
            .ban("r3c3", "C")
            .build();
    List<PileEntry> pile =
        List.of(
            new PileEntry(PieceKind.SQUARE, List.of("A", "B"), 2, Set.of()),
            new PileEntry(PieceKind.SQUARE, List.of("B", "C"), 1, Set.of()));
    return ProblemCompiler.compile(Blanket.of(blanket.brief().withPile(pile)), Optional.empty());
  }

  private static State state(Problem problem, long seed) {
    State state = new State(problem);
    state.reset(RandomDraws.of(problem, new SplittableRandom(seed), true));
    return state;
  }

  @Test
  void everyPieceIsFoundWhereItLies() {
    Problem problem = problem();
    for (long seed = 1; seed <= 10; seed++) {
      State state = state(problem, seed);
      int[] laid = problem.pile().laid(problem.slots(), problem.domains(), state.yarn);
      assertEquals(3, state.laid.pieces());
      assertLies(state, laid);
    }
  }

  private static void assertLies(State state, int[] laid) {
    Set<Integer> places = new HashSet<>();
    for (int piece = 0; piece < state.laid.pieces(); piece++) {
      int place = state.laid.place(piece);
      assertTrue(places.add(place));
      assertTrue(state.laid.holds(place));
      int[] yarns = state.problem.pile().yarns()[state.laid.stack(place)];
      int start = state.problem.slots().orbitStart()[place];
      assertArrayEquals(yarns, Arrays.copyOfRange(state.yarn, start, start + yarns.length));
      for (int slot = start; slot < start + yarns.length; slot++) {
        assertFalse(state.free(slot));
      }
    }
    for (int place = 0; place < laid.length; place++) {
      assertEquals(places.contains(place), state.laid.holds(place));
    }
    assertEquals(places.size(), IntStream.of(laid).filter(stack -> stack >= 0).count());
  }

  /** So hot that every possible exchange is made: each stack is seen wherever it fits. */
  @Test
  void piecesGetWhereverTheyFitAndYarnsStayWithThem() {
    Problem problem = problem();
    State state = state(problem, 1);
    Draws draws = new Draws(1);
    Audit audit = new Audit(Assertions.FULL, state, 1);
    PileMoves moves = new PileMoves(state, draws, new Acceptance(state, draws, audit));
    Set<Integer> seen = new HashSet<>();
    PilePlaces pile = problem.pile();
    int[] shown = shown(problem, state.yarn);
    for (int turn = 0; turn < 600; turn++) {
      moves.exchange(1e12);
      assertLies(state, pile.laid(problem.slots(), problem.domains(), state.yarn));
      assertArrayEquals(shown, shown(problem, state.yarn), "of each yarn as many rounds as before");
      for (int place = 0; place < 9; place++) {
        if (state.laid.holds(place)) {
          seen.add(10 * place + state.laid.stack(place));
        } else {
          int start = problem.slots().orbitStart()[place];
          assertTrue(problem.domains().allows(start, state.yarn[start]));
          assertTrue(problem.domains().allows(start + 1, state.yarn[start + 1]));
        }
      }
    }
    // the lock lets the second stack lie in the corner alone; all else fits
    assertFalse(seen.contains(0));
    assertTrue(seen.contains(1));
    for (int place = 1; place < 9; place++) {
      assertTrue(seen.contains(10 * place) && seen.contains(10 * place + 1), seen.toString());
    }
  }

  private static int[] shown(Problem problem, int[] yarn) {
    int[] shown = new int[2 * problem.yarns()];
    for (int slot = 0; slot < yarn.length; slot++) {
      shown[slot % 2 * problem.yarns() + yarn[slot]]++;
    }
    return shown;
  }

  /** At no temperature nothing is made that costs. */
  @Test
  void whatCostsIsNotMadeWithoutHeat() {
    Problem problem = problem();
    int made = 0;
    for (long seed = 1; seed <= 5; seed++) {
      State state = state(problem, seed);
      Draws draws = new Draws(seed);
      PileMoves moves = new PileMoves(state, draws, new Acceptance(state, draws, null));
      for (int turn = 0; turn < 100; turn++) {
        long before = state.cost();
        int[] was = state.yarn.clone();
        moves.exchange(1e-9);
        assertTrue(state.cost() <= before);
        assertEquals(Cost.of(problem, state.yarn, 1).total(), state.cost());
        made += Arrays.equals(was, state.yarn) ? 0 : 1;
      }
    }
    assertTrue(made > 5, made + " made");
  }

  /** With a plan of borders on a chessboard pieces come to lie on their side. */
  @Test
  void piecesAreExchangedUntilTheirBordersFitAPlan() {
    Problem problem = problem();
    PilePlaces pile = problem.pile();
    int[] planned = new int[problem.slots().count()];
    Arrays.fill(planned, -1);
    for (int place = 0; place < 9; place++) {
      planned[problem.slots().border(place)] = place % 2 == 0 ? 1 : 2;
    }
    Domains plan = problem.domains().narrowed(planned);
    int misfits = 0;
    for (long seed = 1; seed <= 20; seed++) {
      int[] dealt = pile.deal(problem.slots(), problem.domains(), new Draws(seed)::below);
      int[] laid = dealt.clone();
      new PileSides(problem, plan).settle(laid);
      int[] sorted = laid.clone();
      Arrays.sort(sorted);
      assertArrayEquals(new int[] {-1, -1, -1, -1, -1, -1, 0, 0, 1}, sorted);
      for (int place = 0; place < 9; place++) {
        assertTrue(pile.mayLie(problem.slots(), problem.domains(), laid[place], place));
        misfits += fits(laid, place) ? 0 : 1;
      }
      boolean all = IntStream.range(0, 9).allMatch(place -> fits(dealt, place));
      assertTrue(!all || Arrays.equals(dealt, laid), "what fits stays");
    }
    assertEquals(0, misfits);
  }

  /** The first stack has the border B, for even places, and the second C, for odd ones. */
  private static boolean fits(int[] laid, int place) {
    return laid[place] < 0 || laid[place] == place % 2;
  }

  /** An earlier plan that shows all pieces of the pile keeps them where they lay. */
  @Test
  void piecesStayWhereTheyLay() {
    Problem problem = problem();
    for (long seed = 1; seed <= 10; seed++) {
      int[] yarn = RandomDraws.of(problem, new SplittableRandom(seed), true);
      int[] laid = problem.pile().laid(problem.slots(), problem.domains(), yarn);
      int dealt = 0;
      for (int stack : laid) {
        dealt += stack >= 0 ? 1 : 0;
      }
      Problem again =
          ProblemCompiler.compile(problem.blanket(), Optional.of(problem.sequences(yarn)));
      EarlierPlan plan = EarlierPlan.of(again, new Draws(seed));
      assertEquals(3, dealt);
      // of equal pieces any, and never more of a stack than there are
      int[] shown = new int[2];
      for (int place = 0; place < 9; place++) {
        int stack = plan.laid()[place];
        if (stack >= 0) {
          shown[stack]++;
          int start = problem.slots().orbitStart()[place];
          int[] yarns = problem.pile().yarns()[stack];
          assertArrayEquals(yarns, Arrays.copyOfRange(yarn, start, start + 2), "seed " + seed);
          assertArrayEquals(yarns, Arrays.copyOfRange(plan.yarn(), start, start + 2));
        }
      }
      assertArrayEquals(new int[] {2, 1}, shown);
    }
  }
}
