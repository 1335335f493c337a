package lozengy.model.check;

import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import org.junit.jupiter.api.Test;

class BansRuleTest extends RuleTest {

  private final Blanket blanket =
      fiveSquares(2)
          .ban("r1c2", "HEA")
          .ban("r2c1", "HEA")
          .piece("r2c1", PieceState.MADE, "HEA", "MUD")
          .build();

  @Test
  void keepsABannedYarnOutOfItsPieceOnly() {
    expect(new BansRule(), blanket, "HEA,HEA REE,~");
  }

  @Test
  void namesARoundInABannedYarn() {
    expect(
        new BansRule(),
        blanket,
        "~,~ HEA,HEA",
        "r1c2: round 1 has Heather (HEA), which is banned from this piece",
        "r1c2: the border has Heather (HEA), which is banned from this piece");
  }

  @Test
  void findsNoFaultWithWhatIsMade() {
    expect(new BansRule(), blanket, "~,~ ~,~ HEA,MUD");
  }
}
