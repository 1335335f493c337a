package lozengy.model.arrangement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.SourceText;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Arrangements written and read in one call each, and what changes no more. */
class OneCallTest {

  @TempDir Path folder;

  @Test
  void whatIsReadEqualsWhatWasWritten() throws IOException {
    Path file = folder.resolve("a.json");
    int bounded = 0;
    for (int i = 0; i < 40; i++) {
      Arrangement arrangement = consistent(ArrangementArbitraries.arrangements().sample());
      ArrangementFile.write(file, arrangement, true);
      assertEquals(arrangement, ArrangementFile.read(file));
      bounded += arrangement.bound().isPresent() ? 1 : 0;
    }
    assertTrue(bounded > 3, bounded + " had a bound");
  }

  /** With the score, the bound and the proof that follow: random ones need not. */
  private static Arrangement consistent(Arrangement random) {
    Optional<Arrangement.Bound> bound =
        random.bound().map(each -> new Arrangement.Bound(100, each.proof()).asStated());
    return new Arrangement(
        random.blanket(),
        random.sequences(),
        random.earlier(),
        Scorer.score(random.blanket(), random.sequences(), random.earlier()),
        bound,
        random.solved().map(Arrangement.Solved::unproved),
        random.diary());
  }

  @Test
  void aFileThatIsThereIsKept() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "mine");
    Arrangement arrangement = ArrangementArbitraries.arrangements().sample();
    assertThrows(InputException.class, () -> ArrangementFile.write(file, arrangement, false));
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void openRoundsAreToldByName() {
    Arrangement arrangement = consistent(ArrangementArbitraries.arrangements().sample());
    Sequences open = arrangement.sequences().copy();
    int last = open.pieces() - 1;
    boolean worked = arrangement.blanket().roundsWorked(last) > 0;
    open.set(last, 0, worked ? open.yarn(last, 0) : Sequences.OPEN);
    String text = ArrangementWriter.text(arrangement.blanket(), open);
    if (worked) {
      assertEquals(
          arrangement.sequences(), ArrangementFile.read(SourceText.of("a", text)).sequences());
      return;
    }
    List<Mistake> mistakes =
        assertThrows(InputException.class, () -> ArrangementFile.read(SourceText.of("a", text)))
            .mistakes();
    assertEquals(1, mistakes.size());
    assertEquals(MistakeCode.ROUND_OPEN, mistakes.get(0).sort().code());
    assertTrue(mistakes.get(0).found().contains(arrangement.blanket().place(last).name()));
  }

  @Test
  void sequencesHandedOutChangeNoMore() {
    Arrangement random = ArrangementArbitraries.arrangements().sample();
    Sequences own = random.sequences().copy();
    Arrangement arrangement =
        new Arrangement(
            random.blanket(),
            own,
            Optional.of(own),
            random.score(),
            random.bound(),
            random.solved());
    Sequences before = own.copy();
    own.set(0, 0, Sequences.OPEN);

    assertEquals(before, arrangement.sequences());
    assertEquals(Optional.of(before), arrangement.earlier());
    assertThrows(UnsupportedOperationException.class, () -> arrangement.sequences().set(0, 0, 0));
    assertThrows(
        UnsupportedOperationException.class, () -> arrangement.earlier().get().set(0, 0, 0));
  }

  @Test
  void sequencesOfAnotherBlanketOrWithOpenRoundsAreRefused() {
    Arrangement random = ArrangementArbitraries.arrangements().sample();
    List<Sequences> wrong =
        List.of(random.blanket().open(), new Sequences(new int[] {1, 2, 3, 4, 5, 6, 7, 8, 9}));
    for (Sequences each : wrong) {
      assertThrows(
          IllegalArgumentException.class,
          () ->
              new Arrangement(
                  random.blanket(),
                  each,
                  Optional.empty(),
                  random.score(),
                  Optional.empty(),
                  Optional.empty()));
    }
  }
}
