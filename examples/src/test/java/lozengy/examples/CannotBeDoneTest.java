package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.colour.Tone;
import lozengy.report.wording.Wording;
import lozengy.solver.SolveResult;
import org.junit.jupiter.api.Test;

/** The example that cannot be done. */
class CannotBeDoneTest {

  private final Blanket blanket = ExampleBriefs.blanket("cannot-be-done");

  @Test
  void isShortOfDarksAsItsCommentReckons() {
    double need = 18 * 5.9 + 24 * 0.1 * 3.5 + 24 * 0.1 * 6;
    double stock = sumOfDarks(yarn -> blanket.yarn(yarn).stockMillimetres()) / 1000.0;
    double fixed = sumOfDarks(blanket.fixedUse()::millimetres) / 1000.0;

    assertAll(
        () -> assertEquals(129.0, need, 1e-9),
        () -> assertEquals(121.0, stock, 1e-9),
        () -> assertEquals(8.4 + 14.4, fixed, 1e-9));
  }

  @Test
  void isProvedImpossibleAndTheReasonsNameTheDarks() {
    SolveResult result = SolvedExamples.solve("cannot-be-done");

    SolveResult.Impossible impossible = assertInstanceOf(SolveResult.Impossible.class, result);
    String words = String.join("\n", new Wording(blanket).of(impossible));
    assertTrue(Stream.of("SLO", "PEA", "SED").allMatch(words::contains), words);
    assertTrue(Stream.of("SAM", "HEA", "FOA", "SKY").noneMatch(words::contains), words);
  }

  private long sumOfDarks(IntToLongFunction amount) {
    return IntStream.range(0, blanket.yarnCount())
        .filter(yarn -> blanket.yarns().tone(yarn) == Tone.DARK)
        .mapToLong(amount)
        .sum();
  }
}
