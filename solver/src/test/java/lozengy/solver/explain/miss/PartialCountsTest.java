package lozengy.solver.explain.miss;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.Where;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** What counts of the look are against, while rounds are given yarns one by one. */
class PartialCountsTest {

  private static final int OPEN = Sequences.OPEN;
  private static final int A = 0;
  private static final int B = 1;

  /** Three squares of two rounds in a row, of which counts speak. */
  private static PartialCounts counts(Look.Count... counts) {
    Blanket blanket =
        BlanketBuilder.straight(3, 1)
            .motif(PieceKind.SQUARE, round(1000), round(2000))
            .yarns(3, Tone.DARK, 1_000_000)
            .build();
    Look look = Look.NONE.withCounts(List.of(counts));
    return new PartialCounts(Blanket.ofUnjudged(blanket.brief().withLook(look)));
  }

  private static Where firstTwo(Integer... rounds) {
    return new Where(List.of("r1c1", "r1c2"), List.of(rounds));
  }

  @Test
  void noMorePiecesThanAskedForShowAYarn() {
    PartialCounts counts = counts(new Look.Count("A", firstTwo(), 0, OptionalInt.of(1)));
    assertFalse(counts.bar(0, 0, A));
    counts.set(0, 0, OPEN, A);
    assertTrue(counts.bar(1, 0, A));
    assertTrue(counts.bar(1, 1, A));
    assertFalse(counts.bar(1, 0, B));
    assertFalse(counts.bar(0, 1, A), "the piece shows it already");
    assertFalse(counts.bar(2, 0, A), "nothing is said of that piece");
    counts.set(0, 1, OPEN, A);
    counts.set(0, 0, A, B);
    assertTrue(counts.bar(1, 0, A), "the border still shows it");
    counts.set(0, 1, A, OPEN);
    assertFalse(counts.bar(1, 0, A));
    counts.set(2, 0, OPEN, A);
    assertFalse(counts.bar(1, 0, A), "nothing is said of the piece that shows it");
  }

  @Test
  void asManyPiecesAsAskedForCanStillShowAYarn() {
    PartialCounts counts = counts(new Look.Count("A", firstTwo(), 1, OptionalInt.empty()));
    counts.set(0, 0, OPEN, B);
    assertFalse(counts.bar(0, 1, B), "the other piece may show it");
    counts.set(0, 1, OPEN, B);
    assertFalse(counts.bar(1, 0, B), "the border may still show it");
    counts.set(1, 0, OPEN, B);
    assertTrue(counts.bar(1, 1, B));
    assertFalse(counts.bar(1, 1, A));
    counts.set(1, 0, B, A);
    assertFalse(counts.bar(1, 1, B), "the centre shows it");
    counts.set(1, 0, A, B);
    counts.set(0, 1, B, OPEN);
    assertFalse(counts.bar(1, 1, B), "the other piece may show it again");
  }

  @Test
  void aPieceWhoseOneRoundShowsAYarnAndLosesItIsLost() {
    PartialCounts counts = counts(new Look.Count("A", firstTwo(), 1, OptionalInt.empty()));
    counts.set(0, 0, OPEN, A);
    counts.set(0, 1, OPEN, B);
    counts.set(0, 0, A, B);
    counts.set(1, 1, OPEN, B);
    assertTrue(counts.bar(1, 0, B));
  }

  @Test
  void onlyTheRoundsThatItSpeaksOfCount() {
    PartialCounts counts =
        counts(
            new Look.Count("B", firstTwo(1), 0, OptionalInt.empty()),
            new Look.Count("A", firstTwo(Where.BORDER), 2, OptionalInt.empty()));
    assertFalse(counts.bar(0, 0, B));
    assertTrue(counts.bar(0, 1, B));
    assertFalse(counts.bar(0, 1, A));
    counts.set(0, 0, OPEN, A);
    assertTrue(counts.bar(0, 1, B), "the centre does not count");
    assertFalse(counts.bar(2, 1, B));
  }
}
