package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** Apart from {@link ScorerTest}, since mutation testing would run it for each mutant. */
class LargeScoreTest {

  @Test
  void scoresAHundredThousandPieces() {
    int across = 250;
    Blanket blanket =
        BlanketBuilder.straight(across, 400).saltmarsh().motif(PieceKind.SQUARE, 3).build();
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < 3; round++) {
        // each row two yarns further on
        sequences.set(piece, round, (piece % across + piece / across * 2 + round) % 6);
      }
    }
    assertEquals(100_000, sequences.pieces());
    Score score = Scorer.score(blanket, sequences, Optional.of(sequences));
    assertEquals(100.0 * 6 / 100_000, score.parts().get(Part.VARIETY), 1e-12);
    assertEquals(100, score.parts().get(Part.KEEP));
    assertEquals(100, score.parts().get(Part.LEEWAY));
    assertTrue(score.parts().get(Part.BALANCE) > 99.9);
    // a yarn comes again at offsets (x, y) with x + 2 y a multiple of 6: of those within reach only
    // at (2, -1), and in every layer a sixth of all joins would be expected
    double repeats = 248 * 399;
    double joins = 4 * (249 * 400 + 250 * 399) + 2 * 2 * (249 * 399);
    joins += 248 * 400 + 250 * 398 + 2 * 248 * 399 + 2 * 249 * 398;
    assertEquals(100 * (1 - repeats / (joins / 6)), score.parts().get(Part.SPREAD), 0.01);
    assertEquals(3, WeakSpots.of(blanket, sequences, 3).size());
  }
}
