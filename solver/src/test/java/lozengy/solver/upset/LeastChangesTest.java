package lozengy.solver.upset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.progress.LeastUpset;
import lozengy.model.progress.Upset;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.TinyBlankets;
import org.junit.jupiter.api.Test;

/** The least number of changes against brute force, on tiny random blankets. */
class LeastChangesTest {

  private static final int SEEDS = 400;
  private static final long MOST_TRIED = 3_000;

  @Test
  void provesTheLeastThatBruteForceFinds() {
    int settled = 0;
    int some = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      Sequences before = before(blanket, seed);
      int[] least = {Integer.MAX_VALUE};
      Sequences[] worst = new Sequences[1];
      int[] most = {-1};
      long count =
          BruteForce.count(
              blanket,
              MOST_TRIED,
              each -> {
                int changed = Upset.of(blanket, before, each).changedRounds();
                least[0] = Math.min(least[0], changed);
                if (changed > most[0]) {
                  most[0] = changed;
                  worst[0] = each.copy();
                }
              });
      if (count == 0 || count == MOST_TRIED) {
        continue;
      }
      // told the arrangement that changes most, so that it has to find out itself
      LeastUpset told = LeastChanges.of(blanket, before, worst[0], () -> false);
      assertEquals(new LeastUpset(least[0], true), told, "seed " + seed);
      settled++;
      some += least[0] > 0 ? 1 : 0;
    }
    assertTrue(settled > 60 && some > 40, settled + " settled, " + some + " had to change");
  }

  /** Any yarns, mostly such as may be, or now and then none as after a change of size. */
  private static Sequences before(Blanket blanket, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = random.nextInt(blanket.yarnCount());
        for (int tries = 0; tries < 4 && !blanket.domains().mayTake(piece, round, yarn); tries++) {
          yarn = random.nextInt(blanket.yarnCount());
        }
        sequences.set(piece, round, random.nextInt(8) == 0 ? Sequences.OPEN : yarn);
      }
    }
    return sequences;
  }
}
