package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.check.Check;
import lozengy.model.score.Part;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PlanInCodeTest {

  private static final ByteArrayOutputStream PRINTED = new ByteArrayOutputStream();
  private static Arrangement first;
  private static Arrangement second;

  @BeforeAll
  static void run() {
    List<Arrangement> both =
        new PlanInCode(new PrintStream(PRINTED, true, StandardCharsets.UTF_8)).run();
    first = both.get(0);
    second = both.get(1);
  }

  @Test
  void bothAnswersAreValid() {
    assertAll(
        () -> assertEquals(List.of(), Check.faults(first.blanket(), first.sequences())),
        () -> assertEquals(List.of(), Check.faults(second.blanket(), second.sequences())));
  }

  @Test
  void theSecondAnswerKeepsTheLockAndMostOfTheRest() {
    int piece = second.blanket().layout().find("r3c2").orElseThrow().index();
    int border = second.blanket().roundCount(piece) - 1;

    assertAll(
        () ->
            assertEquals(second.blanket().locked(piece, border), second.sequences().border(piece)),
        () -> assertNotEquals(first.sequences().border(piece), second.sequences().border(piece)),
        () -> assertTrue(second.score().parts().get(Part.KEEP) > 50, second.score().toString()));
  }

  @Test
  void printsProgressAndBothScores() {
    String printed = PRINTED.toString(StandardCharsets.UTF_8);

    assertAll(
        () -> assertTrue(printed.contains(" moves: "), printed),
        () -> assertTrue(printed.contains("First: total "), printed),
        () -> assertTrue(printed.contains("With the lock: total "), printed),
        () -> assertTrue(printed.contains("faults 0"), printed));
  }
}
