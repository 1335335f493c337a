package lozengy.solver.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.TinyPiles;
import org.junit.jupiter.api.Test;

class PilePlacesTest {

  /** Three squares in a row: the first may not take B, the second is locked to B, A. */
  private static BlanketBuilder row() {
    return BlanketBuilder.straight(3, 1)
        .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(1000))
        .yarns(3, Tone.DARK, 100_000)
        .ban("r1c1", "B")
        .note("r1c2", PieceState.PLANNED, "B", "A");
  }

  private static PileEntry pieces(int count, String... codes) {
    return new PileEntry(PieceKind.SQUARE, List.of(codes), count, Set.of());
  }

  private static Problem problem(PileEntry... pile) {
    return problem(row(), pile);
  }

  private static Problem problem(BlanketBuilder builder, PileEntry... pile) {
    Brief brief = builder.build().brief().withPile(List.of(pile));
    return ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
  }

  @Test
  void pilesFitWhereLocksDo() {
    Problem problem = problem(pieces(2, "B", "C"));
    PilePlaces pile = problem.pile();
    assertEquals(2, pile.pieces());
    assertEquals(false, pile.isEmpty());
    assertEquals(
        List.of(true, false, true), where(p -> pile.fits(problem.slots(), 0, p)), "locks alone");
    assertEquals(
        List.of(true, false, true),
        where(p -> pile.mayLie(problem.slots(), problem.domains(), 0, p)));
    assertEquals(
        List.of(true, true, true),
        where(p -> pile.mayLie(problem.slots(), problem.domains(), -1, p)));
    assertEquals(false, pile.fills(PieceKind.SQUARE.ordinal()));
    assertEquals(false, pile.fills(PieceKind.values()[1].ordinal()));
  }

  /** Places of which the locks let no new piece be worked, for a ban is against them. */
  @Test
  void aPlaceWhoseLockIsBannedTakesAFinishedPieceAlone() {
    Brief brief =
        row()
            .ban("r1c2", "A")
            .build()
            .brief()
            .withPile(List.of(pieces(1, "B", "A"), pieces(1, "C", "A")));
    Problem problem = ProblemCompiler.compile(Blanket.ofUnjudged(brief), Optional.empty());
    assertEquals(
        List.of(true, false, true),
        where(p -> problem.pile().mayLie(problem.slots(), problem.domains(), -1, p)));
    assertEquals(
        Set.of(List.of(1, 0, -1), List.of(-1, 0, 1)),
        dealt(problem),
        "the first stack lies at the second place in every deal");
  }

  @Test
  void aPileThatFillsAllPlacesLeavesNothingFree() {
    Problem problem = problem(pieces(1, "A", "C"), pieces(1, "B", "A"), pieces(1, "C", "A"));
    assertEquals(true, problem.pile().fills(PieceKind.SQUARE.ordinal()));
    assertEquals(0, problem.slots().free().length);
    assertEquals(2, problem(pieces(2, "A", "C")).pile().pieces());
    assertTrue(problem(pieces(2, "A", "C")).slots().free().length > 0);
    assertEquals(Set.of(List.of(0, 1, 2), List.of(2, 1, 0)), dealt(problem));
  }

  /** A B at the last place, where it is banned, can only be a finished piece's. */
  @Test
  void liesFirstWhereNoNewPieceMay() {
    Problem problem = problem(row().ban("r1c3", "B"), pieces(1, "B", "A"));
    int a = 0;
    int b = 1;
    int c = 2;
    assertEquals(List.of(-1, 0, -1), laid(problem, a, c, b, a, c, a));
    assertEquals(List.of(-1, -1, 0), laid(problem, c, b, b, a, b, a));
    assertEquals(List.of(0, -1, -1), laid(problem, b, a, b, a, c, a), "banned at the first too");
    assertEquals(List.of(0, -1, -1), laid(problem, b, a, b, a, b, a), "the first in order");
    assertThrows(IllegalArgumentException.class, () -> laid(problem, c, a, c, a, c, a));
    Problem two = problem(row().ban("r1c3", "B"), pieces(2, "B", "A"));
    assertEquals(List.of(0, -1, 0), laid(two, b, a, b, a, b, a));
    assertEquals(List.of(-1, 0, 0), laid(two, c, a, b, a, b, a));
  }

  @Test
  void noPlaceByLocksIsAnError() {
    assertThrows(IllegalArgumentException.class, () -> problem(pieces(3, "A", "B")));
  }

  @Test
  void liesWhereTheModelSays() {
    int held = 0;
    for (long seed = 0; seed < 40; seed++) {
      Blanket blanket = TinyPiles.of(seed);
      Problem problem;
      try {
        problem = ProblemCompiler.compile(blanket, Optional.empty());
      } catch (IllegalArgumentException e) {
        continue;
      }
      SplittableRandom random = new SplittableRandom(seed);
      int[] dealt = problem.pile().deal(problem.slots(), problem.domains(), random::nextInt);
      int[] yarn = new int[problem.slots().count()];
      for (int piece = 0; piece < dealt.length; piece++) {
        int like = dealt[piece] >= 0 || dealt[0] < 0 ? dealt[piece] : 0;
        for (int round = 0; round < problem.slots().rounds(piece); round++) {
          int locked = blanket.locked(piece, round);
          boolean shown = like >= 0 && round < problem.pile().yarns()[like].length;
          yarn[problem.slots().orbitStart()[piece] + round] =
              shown && (dealt[piece] >= 0 || locked == Sequences.OPEN)
                  ? problem.pile().yarns()[like][round]
                  : Math.max(0, locked);
        }
      }
      PilePlacement placement = PilePlacement.of(blanket, problem.sequences(yarn));
      int[] laid = problem.pile().laid(problem.slots(), problem.domains(), yarn);
      for (int piece = 0; piece < laid.length; piece++) {
        assertEquals(blanket.kind(piece).ordinal(), problem.pile().kindOf()[piece]);
        assertEquals(placement.stack(piece), laid[piece], "seed " + seed + ", piece " + piece);
        held += laid[piece] >= 0 ? 1 : 0;
      }
    }
    assertTrue(held > 30, held + " held");
  }

  private static Set<List<Integer>> dealt(Problem problem) {
    Set<List<Integer>> dealt = new HashSet<>();
    for (long seed = 0; seed < 40; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      dealt.add(
          Arrays.stream(problem.pile().deal(problem.slots(), problem.domains(), random::nextInt))
              .boxed()
              .toList());
    }
    return dealt;
  }

  private static List<Integer> laid(Problem problem, int... assignment) {
    int[] laid = problem.pile().laid(problem.slots(), problem.domains(), assignment);
    return Arrays.stream(laid).boxed().toList();
  }

  private static List<Boolean> where(IntPredicate holds) {
    return IntStream.range(0, 3).mapToObj(holds::test).toList();
  }
}
