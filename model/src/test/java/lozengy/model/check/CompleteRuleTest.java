package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lozengy.model.blanket.Blanket;
import org.junit.jupiter.api.Test;

class CompleteRuleTest extends RuleTest {

  private final Blanket blanket = fiveSquares(3).build();

  @Test
  void findsNothingOpen() {
    expect(
        new CompleteRule(), blanket, "SAM,REE,MUD SAM,REE,MUD SAM,REE,MUD SAM,REE,MUD SAM,REE,MUD");
  }

  @Test
  void namesTheOpenRoundsPieceByPiece() {
    List<Fault> faults =
        expect(
            new CompleteRule(),
            blanket,
            "SAM,REE,~ ~,REE,~ SAM,REE,MUD ~,~,~ SAM,REE,MUD",
            "r1c1: round 3 has no yarn",
            "r1c2: rounds 1 and 3 have no yarn",
            "r3c1: rounds 1, 2 and 3 have no yarn");
    assertEquals(List.of(List.of(0), List.of(1), List.of(3)), pieces(faults));
  }

  private static List<List<Integer>> pieces(List<Fault> faults) {
    return faults.stream().map(Fault::pieces).toList();
  }
}
