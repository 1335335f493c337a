package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementFile;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Check;
import lozengy.model.input.SourceText;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples that can be done, solved, then judged from scratch. */
class SolvedExamplesTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"saltmarsh-throw", "cushion", "stash-blanket", "locked-throw", "counted-throw"})
  void isSolvedAndPassesTheCheckFromScratch(String name) {
    Arrangement arrangement = SolvedExamples.of(name);

    assertEquals(List.of(), Check.faults(ExampleBriefs.blanket(name), arrangement.sequences()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"saltmarsh-throw", "cushion", "stash-blanket", "locked-throw", "counted-throw"})
  void bearsTheScoreThatScoringFromScratchGives(String name) {
    Arrangement arrangement = SolvedExamples.of(name);

    assertEquals(
        Scorer.score(ExampleBriefs.blanket(name), arrangement.sequences(), Optional.empty()),
        arrangement.score());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"saltmarsh-throw", "cushion", "stash-blanket", "locked-throw", "counted-throw"})
  void readsBackAsItWasWritten(String name) {
    Arrangement arrangement = SolvedExamples.of(name);
    String written = ArrangementWriter.text(arrangement);

    StatedArrangement read = ArrangementReader.read(SourceText.of(name + ".json", written));

    assertAll(
        () -> assertEquals(arrangement.blanket().brief(), read.blanket().brief()),
        () -> assertEquals(arrangement.sequences(), read.sequences()),
        () -> assertEquals(written, ArrangementWriter.text(read.scored())),
        () ->
            assertEquals(
                arrangement, ArrangementFile.read(SourceText.of(name + ".json", written))));
  }

  @Test
  void noTwoPiecesOfTheDemoAreAlikeAndNoTwoBordersMeet() {
    // worked out here again, without the rules' own checks
    Arrangement arrangement = SolvedExamples.of("saltmarsh-throw");
    Blanket blanket = arrangement.blanket();
    Sequences sequences = arrangement.sequences();
    Map<List<Integer>, Integer> pieces = new HashMap<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      List<Integer> sequence = new ArrayList<>();
      for (int yarn : sequences.of(piece)) {
        sequence.add(yarn);
      }
      pieces.merge(sequence, 1, Integer::sum);
    }
    List<String> meetings = new ArrayList<>();
    int[] first = blanket.layout().seams().first();
    int[] second = blanket.layout().seams().second();
    for (int seam = 0; seam < first.length; seam++) {
      String one = shade(blanket, sequences.border(first[seam]));
      if (one.equals(shade(blanket, sequences.border(second[seam])))) {
        meetings.add(blanket.place(first[seam]).name() + " " + blanket.place(second[seam]).name());
      }
    }

    assertAll(
        () -> assertEquals(111, pieces.size()),
        () -> assertEquals(192, first.length),
        () -> assertEquals(List.of(), meetings));
  }

  @Test
  void workedPiecesOfTheHalfWayThrowStayAsTheyAre() {
    Arrangement arrangement = SolvedExamples.of("locked-throw");
    Blanket blanket = arrangement.blanket();

    assertAll(
        () -> assertEquals(9, inState(blanket, PieceState.JOINED)),
        () -> assertEquals(2, inState(blanket, PieceState.MADE)),
        () -> assertEquals("SKY TID HEA GLA", codes(arrangement, "r2c1")),
        () -> assertEquals("HEA SAM FOA PEA", codes(arrangement, "r4c2")),
        () -> assertEquals("CRK", codes(arrangement, "r9c4").split(" ")[3]),
        () -> assertEquals("SED", codes(arrangement, "bottom-left").split(" ")[1]));
  }

  /** The two dye lots of sloe are one shade. */
  private static String shade(Blanket blanket, int yarn) {
    String code = blanket.yarn(yarn).code();
    return code.equals("SL2") ? "SLO" : code;
  }

  private static long inState(Blanket blanket, PieceState state) {
    return blanket.layout().places().stream()
        .filter(place -> blanket.state(place.index()) == state)
        .count();
  }

  private static String codes(Arrangement arrangement, String piece) {
    Blanket blanket = arrangement.blanket();
    int index = blanket.layout().find(piece).orElseThrow().index();
    List<String> codes = new ArrayList<>();
    for (int yarn : arrangement.sequences().of(index)) {
      codes.add(blanket.yarn(yarn).code());
    }
    return String.join(" ", codes);
  }
}
