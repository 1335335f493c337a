package lozengy.solver.constraint;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Round;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Throws of 143 pieces in 8 dark and 12 light yarns of uneven stock, down to very tight. */
class StartTest {

  private static final Limits LIMITS = Limits.of(20_000, 20_000);

  static Blanket throwOf143(double slackPercent, long seed) {
    BlanketBuilder builder =
        BlanketBuilder.filled(7, 9)
            .motif(PieceKind.SQUARE, rounds(1600, 2900, 4100, 5400))
            .motif(PieceKind.SIDE_TRIANGLE, rounds(900, 1500, 2200, 2900))
            .motif(PieceKind.CORNER_TRIANGLE, rounds(500, 800, 1200, 1500))
            .copies(1);
    long light = 111 * 5700 + 28 * 3100 + 4 * 1700;
    long dark = 111 * 8300 + 28 * 4400 + 4 * 2300;
    SplittableRandom random = new SplittableRandom(seed);
    addYarns(builder, random, 8, Tone.DARK, dark * (1 + slackPercent / 100));
    addYarns(builder, random, 12, Tone.LIGHT, light * (1 + slackPercent / 100));
    return builder.build();
  }

  private static Round[] rounds(long a, long b, long c, long d) {
    return new Round[] {
      round(a, Tone.LIGHT), round(b, Tone.DARK), round(c, Tone.LIGHT), round(d, Tone.DARK)
    };
  }

  private static void addYarns(
      BlanketBuilder builder, SplittableRandom random, int count, Tone tone, double total) {
    double[] weights = random.doubles(count, 0.4, 1.6).toArray();
    double sum = Arrays.stream(weights).sum();
    for (double weight : weights) {
      builder.yarn(tone, (long) (total * weight / sum));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 5, 1, 0.2})
  void findsAStartHoweverTheStockIsTight(double slackPercent) {
    for (long seed = 0; seed < 3; seed++) {
      Blanket blanket = throwOf143(slackPercent, seed);
      Start.Outcome outcome = Start.find(ConstraintModel.of(blanket), seed, LIMITS);
      assertTrue(outcome instanceof Start.Solution, "seed " + seed + ": " + outcome);
      assertEquals(List.of(), Check.faults(blanket, ((Start.Solution) outcome).sequences()));
    }
  }

  @Test
  void atTheVeryLimitItIsFoundOrProvedImpossible() {
    for (long seed = 0; seed < 5; seed++) {
      Blanket blanket = throwOf143(0.05, seed);
      Start.Outcome outcome = Start.find(ConstraintModel.of(blanket), seed, LIMITS);
      if (outcome instanceof Start.Solution found) {
        assertEquals(List.of(), Check.faults(blanket, found.sequences()));
      } else {
        assertEquals(new Start.None(), outcome, "seed " + seed);
      }
    }
  }

  @Test
  void theSameSeedGivesTheSameStart() {
    Blanket blanket = throwOf143(5, 1);
    assertEquals(
        Start.find(ConstraintModel.of(blanket), 7, LIMITS),
        Start.find(ConstraintModel.of(blanket), 7, LIMITS));
  }

  @Test
  void endsWhenItIsTold() {
    Blanket blanket = throwOf143(5, 1);
    Limits stopped = new Limits(1_000_000, 1_000_000, () -> true);
    assertEquals(new Start.Limited(), Start.find(ConstraintModel.of(blanket), 1, stopped));
    assertEquals(
        new Start.Limited(), Start.find(ConstraintModel.of(blanket), 1, Limits.of(10, 1_000_000)));
  }
}
