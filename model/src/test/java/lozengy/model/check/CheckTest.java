package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckTest extends RuleTest {

  private final Blanket blanket = fiveSquares(2).build();

  @Test
  void hasEveryRuleOnceInOrder() {
    assertEquals(List.of(RuleId.values()), RuleBook.rules().stream().map(Rule::id).toList());
  }

  @Test
  void findsAValidArrangementWithoutFault() {
    Sequences valid = sequences(blanket, "MUD,REE SAM,REE REE,MUD HEA,SND BAR,HEA");
    assertEquals(List.of(), Check.faults(blanket, valid));
  }

  @Test
  void tellsTheFaultsRuleByRule() {
    Sequences faulty = sequences(blanket, "MUD,REE REE,REE SAM,REE ~,~ BAR,HEA");
    assertEquals(
        List.of(
            RuleId.COMPLETE,
            RuleId.NEIGHBOUR_BORDERS,
            RuleId.NEIGHBOUR_BORDERS,
            RuleId.WITHIN_PIECE),
        Check.faults(blanket, faulty).stream().map(Fault::rule).toList());
  }

  @Test
  void refusesSequencesOfAnotherNumberOfPieces() {
    expectRefusal(new Sequences(new int[] {2, 2, 2}), "sequences of 3 pieces for a blanket of 5");
  }

  @Test
  void refusesSequencesOfAnotherNumberOfRounds() {
    expectRefusal(
        new Sequences(new int[] {2, 2, 3, 2, 2}), "r2c1: 3 rounds given, its motif has 2");
  }

  @ParameterizedTest
  @ValueSource(ints = {6, -2, Integer.MIN_VALUE, Integer.MAX_VALUE})
  void refusesYarnsThatTheBriefHasNot(int yarn) {
    Sequences sequences = blanket.open();
    sequences.set(3, 1, yarn);
    expectRefusal(sequences, "r3c1: round 2 has yarn index " + yarn + ", the brief has 6 yarns");
  }

  private void expectRefusal(Sequences sequences, String words) {
    for (Rule rule : RuleBook.rules()) {
      assertEquals(
          words,
          assertThrows(IllegalArgumentException.class, () -> rule.faults(blanket, sequences))
              .getMessage());
    }
    assertThrows(IllegalArgumentException.class, () -> Check.faults(blanket, sequences));
  }
}
