package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import org.junit.jupiter.api.Test;

class WithinPieceRuleTest extends RuleTest {

  private static Blanket blanket(WithinPiece asked) {
    return fiveSquares(5)
        .rules(0, asked, OptionalInt.empty(), 0)
        .piece("r2c1", PieceState.MADE, "MUD", "MUD", "MUD", "MUD", "MUD")
        .build();
  }

  @Test
  void asksNothingWhereRoundsAreFree() {
    expect(new WithinPieceRule(), blanket(WithinPiece.FREE), "MUD,MUD,MUD,MUD,MUD");
  }

  @Test
  void findsRunsOfRoundsSideBySide() {
    expect(
        new WithinPieceRule(),
        blanket(WithinPiece.ADJACENT_DIFFER),
        "MUD,REE,MUD,REE,MUD SAM,SAM,REE,REE,REE ~,~,~,~,~ ~,~,SND,~,SND HEA,~,~,BAR,BAR",
        "r1c2: rounds 1 and 2 are both Samphire (SAM), but rounds side by side must differ",
        "r1c2: rounds 3, 4 and 5 are all Reed (REE), but rounds side by side must differ",
        "r3c2: rounds 4 and 5 are both Barley (BAR), but rounds side by side must differ");
  }

  @Test
  void findsRepeatsAnywhereWhereAllMustDiffer() {
    expect(
        new WithinPieceRule(),
        blanket(WithinPiece.ALL_DIFFER),
        "MUD,REE,MUD,REE,MUD SAM,BAR,REE,SND,HEA ~,~,~,~,~ SND,~,~,~,SND",
        "r1c1: rounds 1, 3 and 5 are all Tidal mud (MUD), but all rounds of a piece must differ",
        "r1c1: rounds 2 and 4 are both Reed (REE), but all rounds of a piece must differ",
        "r3c1: rounds 1 and 5 are both Sand (SND), but all rounds of a piece must differ");
  }

  @Test
  void findsNoFaultWithWhatIsMade() {
    String made = "~,~,~,~,~ ~,~,~,~,~ MUD,MUD,MUD,MUD,MUD";
    expect(new WithinPieceRule(), blanket(WithinPiece.ADJACENT_DIFFER), made);
    expect(new WithinPieceRule(), blanket(WithinPiece.ALL_DIFFER), made);
  }

  /** Of three rounds two are worked. */
  @Test
  void whatIsWorkedOfABegunPieceIsAFactAmongItself() {
    for (WithinPiece asked : List.of(WithinPiece.ADJACENT_DIFFER, WithinPiece.ALL_DIFFER)) {
      Blanket begun =
          fiveSquares(3)
              .rules(0, asked, OptionalInt.empty(), 0)
              .begun("r1c1", 2, "MUD", "MUD", null)
              .begun("r1c2", 2, "SAM", "MUD", null)
              .build();
      List<Fault> faults =
          new WithinPieceRule().faults(begun, sequences(begun, "MUD,MUD,SAM SAM,MUD,MUD"));
      assertEquals(List.of(List.of(1)), faults.stream().map(Fault::pieces).toList());
      assertEquals(List.of(1, 2), faults.get(0).rounds());
      assertEquals(new Fault.Alike(asked), faults.get(0).detail());
    }
  }
}
