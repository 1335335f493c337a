package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.PieceKind;
import lozengy.model.wording.FaultWords;

/**
 * What the rules' tests share: small blankets of five squares on point, r2c1 in the middle on a
 * seam with each of r1c1, r1c2, r3c1 and r3c2.
 */
abstract class RuleTest {

  static BlanketBuilder fiveSquares(int rounds) {
    return BlanketBuilder.onPoint(2, 2).saltmarsh().motif(PieceKind.SQUARE, rounds);
  }

  static Sequences sequences(Blanket blanket, String text) {
    return BlanketBuilder.sequences(blanket, text);
  }

  /** Expects these faults, in words, and that each bears the rule's id. */
  static List<Fault> expect(Rule rule, Blanket blanket, String sequences, String... words) {
    List<Fault> faults = rule.faults(blanket, sequences(blanket, sequences));
    assertEquals(List.of(words), faults.stream().map(new FaultWords(blanket)::of).toList());
    faults.forEach(fault -> assertEquals(rule.id(), fault.rule()));
    return faults;
  }
}
