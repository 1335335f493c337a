package lozengy.solver.explain.argument;

import static org.junit.jupiter.api.Assertions.assertTrue;

import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.RoundYarns;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.TinyBlankets;
import org.junit.jupiter.api.Test;

class LongRoundsTest {

  private static final int SEEDS = 200;

  @Test
  void filteringTakesOutNothingThatAnArrangementHas() {
    int removed = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      String place = "seed " + seed;
      Requirements asked = Requirements.all(blanket);
      RoundYarns domains = asked.direct().copy();
      LongRounds.filter(asked, domains);
      removed += domains.equals(asked.direct()) ? 0 : 1;
      BruteForce.count(blanket, 2_000, sequences -> assertInside(sequences, domains, place));
    }
    assertTrue(removed > 0, "nothing was ever filtered");
  }

  private static void assertInside(Sequences sequences, RoundYarns domains, String place) {
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        assertTrue(domains.allows(piece, round, sequences.yarn(piece, round)), place);
      }
    }
  }
}
