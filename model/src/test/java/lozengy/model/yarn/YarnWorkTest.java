package lozengy.model.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** Four squares in a row, worked in one yarn; a square takes 15 m, a seam 1 m, the edging 10 m. */
class YarnWorkTest {

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Row
      layout: { setting: straight, across: 4, down: 1 }
      motifs: { square: { side: 10 cm, rounds: [ { metres: 5 }, { metres: 10 } ] } }
      yarns:
        - { code: A, colour: "#202020", ball: { grams: 50, metres: 25 }, STOCK }
        - { code: B, colour: "#f0f0f0", left: 10 m }
      joining: { yarn: A, metres-per-metre: 10 }
      edging: { yarn: A, metres-per-metre: 10 }
      look: { borders: A }
      rules: { within-piece: free, keep-back: 20 % }
      pieces:
        - { at: [r1c1, r1c2], rounds: [A, A], state: joined }
        - { at: r1c3, rounds: [A, A], state: made }
        - { at: r1c4, rounds: [A, A] }
      """;

  @Test
  void whatIsWorkedAndWhatIsToBeWorkedAddUp() {
    // outline 100 cm
    YarnNeed need = need("balls: 4");
    assertEquals(new YarnWork(46_000, 27_000, 54_000), need.work());
    assertEquals(27_000, need.work().leftMillimetres());
    assertTrue(need.purchase().isEmpty());
    // 73 m in all are four fifths of 91.25 m, of which 46 m are worked
    assertEquals(2, need.ballsNeeded().getAsLong());
  }

  @Test
  void ballsAndPurchaseAgree() {
    YarnNeed need = need("balls: 3");
    assertEquals(29_000, need.work().atHandMillimetres());
    assertEquals(16_250, need.purchase().orElseThrow().missingMillimetres());
    assertEquals(1, need.purchase().orElseThrow().balls().getAsLong());
    assertEquals(2, need.ballsNeeded().getAsLong());
  }

  @Test
  void whatWasWorkedBeforeACountIsWorkedAndNotOfThatStock() {
    YarnNeed need =
        need("counted: { left: 40 m, made: [r1c1], joined: [r1c1, r1c2], edged: 30 % }");
    // a square since, and 7 m of edging are left
    assertEquals(new YarnWork(49_000, 24_000, 25_000), need.work());
    assertEquals(39_000, need.neededMillimetres());
  }

  /** A finished square in a yarn that is not owned is a fact; work beside it must be bought. */
  @Test
  void whatThePileHoldsBeyondTheStockIsNoShortage() {
    String text =
        BRIEF
                .replace("STOCK", "left: 0 m")
                .replaceAll("(?s)joining:.*", "rules: { within-piece: free }\n")
                .replace("left: 10 m", "left: 60 m")
            + "pile: [ { kind: square, rounds: [B, A] } ]\n";
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("b.yaml", text)));
    Sequences laid = blanket.open();
    for (int piece = 0; piece < 4; piece++) {
      laid.set(piece, 0, 1);
      laid.set(piece, 1, piece == 0 ? 0 : 1);
    }
    YarnNeed owned = YarnNeed.of(blanket, laid).get(0);
    assertEquals(new YarnWork(10_000, 0, 0), owned.work());
    assertTrue(owned.purchase().isEmpty());
    assertEquals(0, owned.ballsNeeded().getAsLong());
    laid.set(1, 0, 0);
    YarnNeed more = YarnNeed.of(blanket, laid).get(0);
    assertEquals(5_000, more.work().toWorkMillimetres());
    assertEquals(15_000, more.purchase().orElseThrow().missingMillimetres());
  }

  private static YarnNeed need(String stock) {
    String text = BRIEF.replace("STOCK", stock);
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("b.yaml", text)));
    Sequences all = blanket.locks();
    List<YarnNeed> needs = YarnNeed.of(blanket, all);
    assertEquals(new YarnWork(0, 0, 10_000), needs.get(1).work());
    return needs.get(0);
  }
}
