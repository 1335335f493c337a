package lozengy.model.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

class SubstituteTest {

  private static final int OLD = 0;
  private static final int THIN = 1;
  private static final int NEAR = 2;

  /** Two squares, the inner round by weight; of the first that round is worked in OLD. */
  private static Blanket blanket() {
    return Blanket.ofUnjudged(
        BriefReader.read(
            SourceText.of(
                "brief.yaml",
                """
                format: lozengy-brief/1
                title: Two
                layout: { setting: straight, across: 2, down: 1 }
                motifs: { square: { side: 10 cm, rounds: [ { grams: 2 }, { metres: 3 } ] } }
                yarns:
                  - { code: OLD, colour: "#8a8a45", balls: 1, ball: { grams: 50, metres: 100 } }
                  - { code: THIN, colour: "#b9b57a", tone: mid, left: 12 m, ball: { grams: 50, metres: 200 } }
                  - { code: NEAR, colour: "#8a8a50", left: 7 m, ball: { grams: 50, metres: 100 } }
                  - { code: DARK, colour: "#101010", left: 70 m, ball: { grams: 50, metres: 100 } }
                  - { code: AWAY, colour: "#8a8a46", left: 70 m, gone: true, ball: { grams: 50, metres: 100 } }
                joining: { yarn: OLD, metres-per-metre: 3 }
                rules: { keep-back: 10 % }
                pieces: [ { at: r1c1, rounds: [OLD, ~], rounds-worked: 1 } ]
                """)));
  }

  private static Sequences plan(Blanket blanket) {
    Sequences plan = blanket.locks().copy();
    plan.set(0, 1, NEAR);
    plan.set(1, 0, OLD);
    plan.set(1, 1, THIN);
    return plan;
  }

  @Test
  void whatIsStillToBeWorkedIsTakenInTheOtherYarnsLength() {
    Blanket blanket = blanket();
    Optional<Sequences> plan = Optional.of(plan(blanket));
    // 2 g are 4 m of OLD and 8 m of THIN; a seam of 10 cm takes 0.3 m of either
    assertEquals(4_300, Substitute.needMillimetres(blanket, plan, OLD));
    List<Substitute> found = Substitute.of(blanket, plan, OLD, new BitSet());
    assertEquals(List.of(NEAR, THIN), found.stream().map(Substitute::yarn).toList());
    Substitute near = found.get(0);
    assertEquals(4_300, near.needMillimetres());
    assertEquals(6_300 - 3_000, near.spareMillimetres());
    assertFalse(near.enough());
    // 1 m is lacking, 10 % of what is bought are kept back
    assertEquals(1_112, near.lacks(blanket).orElseThrow().missingMillimetres());
    Substitute thin = found.get(1);
    assertEquals(8_300, thin.needMillimetres());
    assertEquals(10_800 - 3_000, thin.spareMillimetres());
    assertEquals(OptionalLong.of(1), thin.ballsToTake());
  }

  @Test
  void whatIsToBuyIsEnough() {
    Blanket blanket = blanket();
    BitSet toBuy = new BitSet();
    toBuy.set(NEAR);
    Substitute near = Substitute.of(blanket, Optional.of(plan(blanket)), OLD, NEAR, toBuy);
    assertTrue(near.enough());
    assertEquals(Optional.empty(), near.lacks(blanket));
    assertEquals(4_778, near.wholeMillimetres(blanket));
  }
}
