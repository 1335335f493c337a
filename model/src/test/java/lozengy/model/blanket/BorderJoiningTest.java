package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.brief.BorderJoining;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import lozengy.model.yarn.ShadeNeed;
import lozengy.model.yarn.YarnWork;
import org.junit.jupiter.api.Test;

/**
 * Three squares of 10 cm in a row, in A, B and A, joined in their borders' yarns at 4 m a metre:
 * half a seam takes 20 cm. A square takes 3 m, the border 2 m of it.
 */
class BorderJoiningTest {

  private static final String ROW =
      """
      format: lozengy-brief/1
      title: Row
      layout: { setting: straight, across: 3, down: 1 }
      motifs: { square: { side: 10 cm, rounds: [ { metres: 1 }, { metres: 2 } ] } }
      yarns:
        - { code: A, colour: "#202020", left: 100 m, ball: { grams: 50, metres: 100 } }
        - { code: B, colour: "#f0f0f0", left: 100 m, ball: { grams: 50, metres: 200 } }
      joining: { yarns: borders, metres-per-metre: 4 }
      rules: { within-piece: free }
      pieces:
        - { at: [r1c1, r1c3], rounds: [A, A], STATE }
        - { at: r1c2, rounds: [B, B], STATE }
      """;

  private static Brief read(String text) {
    return BriefReader.read(SourceText.of("brief.yaml", text));
  }

  private static List<YarnWork> work(String state) {
    Blanket blanket = row(state);
    return YarnWork.of(blanket, blanket.locks());
  }

  private static Blanket row(String state) {
    return Blanket.of(read(ROW.replace("STATE", state)));
  }

  @Test
  void aBorderTakesHalfOfEachSeam() {
    Blanket blanket = row("state: planned");
    assertArrayEquals(new long[] {6_400, 3_400}, blanket.usedMillimetres(blanket.locks()));
    assertEquals(1_000, blanket.takenMillimetres(0, 0, 0));
    assertEquals(2_200, blanket.takenMillimetres(0, 1, 0));
    assertEquals(2_400, blanket.takenMillimetres(1, 1, 1));
    assertEquals(2_000, blanket.motifs().needMillimetres(PieceKind.SQUARE, 1, 1));
    assertEquals(blanket.brief(), read(BriefWriter.text(blanket.brief())));
  }

  /** On point and filled, every square has four seams, a side triangle two and a corner one. */
  @Test
  void aFilledLayoutHasAsManySeamsForEachPieceOfAKind() {
    String text =
        ROW.replaceAll("pieces:(?s).*", "")
            .replace("straight, across: 3, down: 1", "on-point, across: 3, down: 2")
            .replace(
                "] } }\n",
                "] }, triangle: { rounds: [ { metres: 1 } ] },"
                    + " corner: { rounds: [ { metres: 1 } ] } }\n");
    Blanket blanket = Blanket.of(read(text));
    Map<PieceKind, Integer> seams =
        Map.of(PieceKind.SQUARE, 4, PieceKind.SIDE_TRIANGLE, 2, PieceKind.CORNER_TRIANGLE, 1);
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      assertEquals(seams.get(blanket.kind(piece)), blanket.borderSeams().halves(piece));
    }
    // shares of equal yarns come to all rounds and all 24 seams
    long needed = ShadeNeed.of(blanket).stream().mapToLong(ShadeNeed::millimetres).sum();
    long rounds = 8 * 3_000 + 6 * 1_000 + 4 * 1_000;
    assertEquals(rounds + 24 * 400, needed, 1);
  }

  /** Half a strip's weight is another length in each yarn: 1 g are 2 m of A, 4 m of B. */
  @Test
  void aWeighedStripIsALengthInEachYarn() {
    String text =
        ROW.replace("STATE", "state: planned")
            .replace("metres-per-metre: 4", "sample: { length: 50 cm, takes: 1 g }");
    Blanket blanket = Blanket.of(read(text));
    assertEquals(200, blanket.borderSeams().halfMillimetres(0));
    assertEquals(400, blanket.borderSeams().halfMillimetres(1));
    InputException wrong =
        assertThrows(
            InputException.class,
            () -> read(text.replace(", ball: { grams: 50, metres: 200 }", "")));
    assertEquals("yarns[1].ball", wrong.mistakes().get(0).path().toString());
  }

  @Test
  void aSeamIsWorkedAtJoining() {
    assertEquals(
        List.of(new YarnWork(6_000, 400, 94_000), new YarnWork(3_000, 400, 97_000)),
        work("state: made"));
    assertEquals(
        List.of(new YarnWork(6_400, 0, 93_600), new YarnWork(3_400, 0, 96_600)),
        work("state: joined"));
  }

  @Test
  void whatWasJoinedBeforeACountDoesNotCount() {
    String counted =
        ROW.replace("STATE", "state: joined")
            .replace(
                "left: 100 m, ball: { grams: 50, metres: 200 }",
                "ball: { grams: 50, metres: 200 },"
                    + " counted: { left: 9 m, made: [r1c2], joined: [r1c1, r1c2] }");
    Blanket blanket = Blanket.of(read(counted));
    // the seam to r1c3 is worked since
    assertEquals(200, blanket.usedMillimetres(blanket.locks())[1]);
    assertEquals(new YarnWork(3_400, 0, 8_800), YarnWork.of(blanket, blanket.locks()).get(1));
  }

  /** What is finished in a yarn that is gone is joined in its neighbours' yarns. */
  @Test
  void aBorderInAYarnThatIsGoneTakesNothingMore() {
    String gone = ROW.replace("left: 100 m, ball: { grams: 50, metres: 200 }", "gone: true");
    Blanket blanket = Blanket.of(read(gone.replace("STATE", "state: made")));
    assertArrayEquals(new long[] {6_800, 0}, blanket.usedMillimetres(blanket.locks()));
    assertEquals(
        List.of(800L, 0L),
        YarnWork.of(blanket, blanket.locks()).stream().map(YarnWork::toWorkMillimetres).toList());
    Blanket joined = Blanket.of(read(gone.replace("STATE", "state: joined")));
    assertArrayEquals(new long[] {6_400, 0}, joined.usedMillimetres(joined.locks()));
  }

  @Test
  void joiningAStripTakesItsOpenSeams() {
    Blanket blanket = row("state: made");
    Arrangement arrangement =
        new Arrangement(
            blanket,
            blanket.locks(),
            Optional.empty(),
            Scorer.score(blanket, blanket.locks(), Optional.empty()),
            Optional.empty(),
            Optional.empty());
    List<WorkStep> left = WorkSteps.of(arrangement, WorkOrder.STRIP).left();
    assertEquals(new WorkStep.Join(1, 1, List.of(0, 1, 2), 800), left.get(0));
  }

  @Test
  void oneYarnOrTheBordersAreGiven() {
    InputException both =
        assertThrows(
            InputException.class,
            () -> read(ROW.replace("yarns: borders", "yarn: A, yarns: borders")));
    assertTrue(
        both.mistakes().stream().anyMatch(m -> m.sort().code() == MistakeCode.ONE_OF),
        both::getMessage);
    InputException word =
        assertThrows(InputException.class, () -> read(ROW.replace("borders", "border")));
    assertEquals("joining.yarns", word.mistakes().get(0).path().toString());
    assertTrue(row("state: made").brief().joining().orElseThrow() instanceof BorderJoining);
  }
}
