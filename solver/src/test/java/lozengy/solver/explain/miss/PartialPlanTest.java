package lozengy.solver.explain.miss;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Rows of squares of two rounds: round 0 of piece 2 is number 4. */
class PartialPlanTest {

  private static final int OPEN = Sequences.OPEN;
  private static final int A = 0;
  private static final int B = 1;
  private static final int C = 2;

  private static BlanketBuilder row(int pieces) {
    return BlanketBuilder.straight(pieces, 1)
        .motif(PieceKind.SQUARE, round(1000), round(2000))
        .yarns(3, Tone.DARK, 10_000);
  }

  private static PartialPlan plan(BlanketBuilder builder) {
    return new PartialPlan(builder.build());
  }

  private static PartialPlan plan(BlanketBuilder builder, Look look) {
    return new PartialPlan(Blanket.ofUnjudged(builder.build().brief().withLook(look)));
  }

  private static final Look LEFT_RIGHT = Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT);

  @Test
  void whatIsWorkedIsThereAndTakesItsYarn() {
    PartialPlan plan =
        plan(
            row(3)
                .ban("r1c2", "A")
                .note("r1c3", PieceState.MADE, "A", "B")
                .begun("r1c1", 1, "B", null));
    assertEquals(6, plan.slots());
    assertEquals(3, plan.yarnCount());
    boolean[] planned = {false, true, true, true, false, false};
    int[] yarns = {B, OPEN, OPEN, OPEN, A, B};
    for (int slot = 0; slot < 6; slot++) {
      assertEquals(planned[slot], plan.planned(slot), "slot " + slot);
      assertEquals(yarns[slot], plan.yarn(slot), "slot " + slot);
      assertEquals(yarns[slot], plan.sequences().yarn(slot / 2, slot % 2), "slot " + slot);
    }
    assertArrayEquals(new int[] {B, C}, plan.mayTake(2));
    assertArrayEquals(new int[] {B, C}, plan.mayTake(3));
    assertArrayEquals(new int[] {A, B, C}, plan.mayTake(1));
    assertEquals(1000, plan.need(2, C));
    assertEquals(2000, plan.need(3, C));
    assertEquals(9_000, plan.left(A));
    assertEquals(7_000, plan.left(B));
    assertEquals(10_000, plan.left(C));
  }

  @Test
  void stockGoesDownAndUpAgain() {
    PartialPlan plan = plan(row(2).joining("A", 1).keepBack(10));
    // 100 mm of seam
    assertEquals(8_900, plan.left(A));
    plan.set(3, A);
    assertEquals(6_900, plan.left(A));
    plan.set(3, C);
    assertEquals(8_900, plan.left(A));
    assertEquals(7_000, plan.left(C));
    plan.set(2, B);
    plan.set(3, OPEN);
    assertEquals(9_000, plan.left(C));
    assertEquals(8_000, plan.left(B));
    assertEquals(B, plan.sequences().yarn(1, 0));
    assertEquals(OPEN, plan.sequences().yarn(1, 1));
  }

  @Test
  void whatClashesMustBeOpenedFirstOfTheOwnPiece() {
    PartialPlan plan = plan(row(3).note("r1c3", PieceState.MADE, "A", "B"));
    assertEquals(List.of(), plan.against(3, A));
    assertNull(plan.against(3, B), "the border beside it is worked");
    plan.set(1, A);
    assertEquals(List.of(1), plan.against(3, A));
    plan.set(2, A);
    assertEquals(List.of(2, 1), plan.against(3, A));
    assertEquals(List.of(), plan.against(3, C));
    assertEquals(List.of(), plan.against(2, B));
    assertEquals(List.of(1), plan.against(0, A));
  }

  @Test
  void imagesTakeTheSameYarn() {
    PartialPlan plan = plan(row(3), LEFT_RIGHT);
    plan.set(1, C);
    assertEquals(List.of(1), plan.against(5, B));
    assertEquals(List.of(), plan.against(5, C));
    assertEquals(List.of(), plan.against(4, B));
    plan.set(4, A);
    assertEquals(List.of(1, 4), plan.against(0, C));
    assertEquals(List.of(), plan.against(2, C), "the middle has no image but itself");
  }

  @Test
  void workedImagesStay() {
    PartialPlan plan = plan(row(3).note("r1c3", PieceState.MADE, "A", "B"), LEFT_RIGHT);
    assertNull(plan.against(1, C));
    assertEquals(List.of(), plan.against(1, B));
    plan.set(0, B);
    assertEquals(List.of(0), plan.against(1, B));
  }

  /** Images beside each other whose yarns are too much alike are named once. */
  @Test
  void anImageThatClashesIsNamedOnce() {
    BlanketBuilder alike =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.DARK, new Srgb(0, 0, 0), 10_000)
            .yarn(Tone.DARK, new Srgb(9, 9, 9), 10_000)
            .minContrast(20);
    PartialPlan plan = plan(alike, LEFT_RIGHT);
    plan.set(1, B);
    assertEquals(List.of(1), plan.against(0, A));
  }

  @Test
  void noMorePiecesThanAllowedShareASequence() {
    PartialPlan plan = plan(row(5).copies(2).note("r1c5", PieceState.MADE, "A", "B"));
    plan.set(0, A);
    assertEquals(List.of(), plan.against(1, B));
    plan.set(1, B);
    plan.set(4, A);
    assertNull(plan.against(5, B));
    assertEquals(List.of(), plan.against(5, C));
    plan.set(0, OPEN);
    assertEquals(List.of(), plan.against(5, B));
    plan.set(5, B);
    assertNull(plan.against(0, A), "whichever of its rounds comes last");
    assertEquals(List.of(), plan.against(0, C));
    PartialPlan free = plan(row(5).note("r1c5", PieceState.MADE, "A", "B"));
    free.set(0, A);
    assertEquals(List.of(), free.against(1, B));
  }

  /** Images count as one piece: the first of them. */
  @Test
  void imagesAreNoCopies() {
    PartialPlan plan = plan(row(5).copies(1), LEFT_RIGHT);
    plan.set(8, A);
    plan.set(9, B);
    plan.set(4, A);
    assertEquals(List.of(), plan.against(5, B), "only an image has that sequence");
    plan.set(0, A);
    assertEquals(List.of(), plan.against(1, B));
    plan.set(1, B);
    assertNull(plan.against(5, B));
    plan.set(9, OPEN);
    plan.set(6, A);
    assertEquals(List.of(), plan.against(7, B), "the piece that it is an image of is asked");
  }

  @Test
  void countsOfTheLookAreAsked() {
    Look.Count one = new Look.Count("A", Where.BORDERS, 0, OptionalInt.of(1));
    PartialPlan plan =
        plan(row(4).note("r1c4", PieceState.MADE, "B", "A"), Look.NONE.withCounts(List.of(one)));
    assertNull(plan.against(3, A), "what is worked counts");
    assertEquals(List.of(), plan.against(3, B));
    assertEquals(List.of(), plan.against(2, A), "a centre does not count");
  }
}
