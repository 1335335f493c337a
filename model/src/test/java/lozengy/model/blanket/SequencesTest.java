package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** Sequences, the numbers of their rounds, and what guards their shape. */
class SequencesTest {

  private static Sequences filled() {
    Sequences sequences = new Sequences(new int[] {2, 1, 3});
    int yarn = 0;
    for (int piece = 0; piece < 3; piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        sequences.set(piece, round, yarn++);
      }
    }
    return sequences;
  }

  @Test
  void everyRoundHasItsOwnYarn() {
    Sequences sequences = filled();
    assertEquals(3, sequences.pieces());
    assertEquals(3, sequences.rounds(2));
    assertArrayEquals(new int[] {0, 1}, sequences.of(0));
    assertArrayEquals(new int[] {2}, sequences.of(1));
    assertArrayEquals(new int[] {3, 4, 5}, sequences.of(2));
    assertEquals(4, sequences.yarn(2, 1));
    assertEquals(1, sequences.border(0));
    assertEquals(5, sequences.border(2));
    assertTrue(sequences.complete());
    sequences.set(2, 2, Sequences.OPEN);
    assertFalse(sequences.complete());
    sequences.of(0)[0] = 9;
    assertEquals(0, sequences.yarn(0, 0));
    assertArrayEquals(new int[] {-1, -1}, new Sequences(new int[] {2}).of(0));
  }

  @Test
  void copiesChangeOnTheirOwnAndFrozenOnesNotAtAll() {
    Sequences sequences = filled();
    Sequences copy = sequences.copy();
    assertEquals(sequences, copy);
    assertEquals(sequences.hashCode(), copy.hashCode());
    copy.set(1, 0, 7);
    assertEquals(2, sequences.yarn(1, 0));
    assertNotEquals(sequences, copy);
    assertNotEquals(sequences.hashCode(), copy.hashCode());
    Sequences frozen = sequences.frozen();
    assertNotSame(sequences, frozen);
    assertSame(frozen, frozen.frozen());
    assertThrows(UnsupportedOperationException.class, () -> frozen.set(0, 0, 1));
    frozen.copy().set(0, 0, 1);
    assertEquals(0, frozen.yarn(0, 0));
    Sequences otherShape = new Sequences(new int[] {1, 2});
    assertNotEquals(new Sequences(new int[] {2, 1}), otherShape, "of as many rounds");
  }

  @Test
  void roundsAreNumberedThrough() {
    int[] counts = {2, 1, 3};
    RoundIndex index = new RoundIndex(3, piece -> counts[piece]);
    assertEquals(6, index.count());
    int number = 0;
    for (int piece = 0; piece < 3; piece++) {
      assertEquals(number, index.centre(piece));
      for (int round = 0; round < counts[piece]; round++) {
        assertEquals(number, index.number(piece, round));
        assertEquals(piece, index.piece(number));
        assertEquals(round, index.round(number));
        number++;
      }
      assertEquals(number - 1, index.border(piece));
    }
  }

  @Test
  void aShapeIsHeldAgainstTheBlankets() {
    Blanket blanket = BlanketBuilder.straight(2, 1).saltmarsh().motif(PieceKind.SQUARE, 2).build();
    Sequences sequences = blanket.open();
    Shape.require(blanket, sequences);
    sequences.set(1, 1, 5);
    sequences.set(1, 0, 0);
    Shape.require(blanket, sequences);
    expect("r1c1: round 1 has no yarn", blanket, sequences);
    sequences.set(0, 0, 0);
    sequences.set(0, 1, 0);
    Shape.requireComplete(blanket, sequences);
    sequences.set(0, 1, 6);
    expect("r1c1: round 2 has yarn index 6, the brief has 6 yarns", blanket, sequences);
    sequences.set(0, 1, -2);
    expect("r1c1: round 2 has yarn index -2, the brief has 6 yarns", blanket, sequences);
    expect("sequences of 1 pieces for a blanket of 2", blanket, new Sequences(new int[] {2}));
    expect("r1c2: 1 rounds given, its motif has 2", blanket, new Sequences(new int[] {2, 1}));
  }

  private static void expect(String words, Blanket blanket, Sequences sequences) {
    Throwable thrown =
        assertThrows(
            IllegalArgumentException.class, () -> Shape.requireComplete(blanket, sequences));
    assertEquals(words, thrown.getMessage());
  }
}
