package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.brief.Part;
import lozengy.model.check.Check;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

  @Test
  void comparesTheTwo() {
    int changed = 0;
    for (int piece = 0; piece < first.sequences().pieces(); piece++) {
      int[] was = first.sequences().of(piece);
      int[] is = second.sequences().of(piece);
      for (int round = 0; round < is.length; round++) {
        changed += was[round] == is[round] ? 0 : 1;
      }
    }
    String printed = PRINTED.toString(StandardCharsets.UTF_8);
    assertTrue(changed >= 1, "the lock changed a border");
    assertTrue(printed.contains("Compared: " + changed + " of "), printed);
  }

  @Test
  void whatIsWrittenReadsBack(@TempDir Path folder) throws IOException {
    new PlanInCode(new PrintStream(PRINTED, true, StandardCharsets.UTF_8)).export(second, folder);
    StatedArrangement read = ArrangementReader.read(folder.resolve("cushion.arrangement.json"));
    assertEquals(second.sequences(), read.sequences());
    assertEquals(second.score(), read.scored().score());
    for (String name : List.of("cushion.svg", "cushion.html", "cushion.graphml", "pieces.csv")) {
      assertTrue(Files.size(folder.resolve(name)) > 0, name);
    }
  }
}
