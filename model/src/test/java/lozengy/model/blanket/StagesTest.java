package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lozengy.model.brief.PieceState;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class StagesTest {

  private static BlanketBuilder row() {
    return BlanketBuilder.straight(4, 1)
        .saltmarsh()
        .motif(PieceKind.SQUARE, 3)
        .piece("r1c1", PieceState.MADE, "MUD", "REE", "MUD")
        .begun("r1c2", 2, "MUD", "REE", null);
  }

  @Test
  void aScaleFromNoRoundToJoined() {
    Stages stages = Stages.of(row().piece("r1c3", PieceState.JOINED, "MUD", "REE", "MUD").build());
    assertEquals(4, stages.pieces());
    int[] expected = {3, 2, 4, 0};
    int[] worked = {3, 2, 3, 0};
    PieceState[] states = {
      PieceState.MADE, PieceState.PLANNED, PieceState.JOINED, PieceState.PLANNED
    };
    for (int piece = 0; piece < 4; piece++) {
      assertEquals(expected[piece], stages.stage(piece));
      assertEquals(worked[piece], stages.roundsWorked(piece));
      assertEquals(states[piece], stages.state(piece));
      assertEquals(
          states[piece] == PieceState.PLANNED ? 0 : expected[piece],
          stages.stage(piece, states[piece]));
    }
    assertTrue(stages.anyJoined());
    assertFalse(Stages.of(row().build()).anyJoined());
  }

  @Test
  void stagesAreSetByStateByRoundsAndByNumber() {
    Stages stages = Stages.of(row().build());
    Stages copy = stages.copy();
    stages.set(3, PieceState.JOINED);
    assertEquals(4, stages.stage(3));
    stages.set(3, PieceState.MADE);
    assertEquals(PieceState.MADE, stages.state(3));
    stages.setRounds(3, 3);
    assertEquals(PieceState.MADE, stages.state(3));
    stages.setRounds(3, 0);
    assertEquals(PieceState.PLANNED, stages.state(3));
    stages.set(3, 4);
    assertTrue(stages.anyJoined());
    assertEquals(0, copy.stage(3));
    assertEquals(
        "4 of 3 rounds",
        assertThrows(IllegalArgumentException.class, () -> stages.setRounds(3, 4)).getMessage());
    assertThrows(IllegalArgumentException.class, () -> stages.setRounds(3, -1));
  }
}
