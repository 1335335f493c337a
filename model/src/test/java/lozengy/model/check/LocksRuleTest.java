package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import org.junit.jupiter.api.Test;

class LocksRuleTest extends RuleTest {

  private final Blanket blanket =
      fiveSquares(3)
          .piece("r1c1", PieceState.PLANNED, null, "REE", "MUD")
          .piece("r3c2", PieceState.MADE, "SAM", "HEA", "MUD")
          .build();

  @Test
  void holdsWhereLockedRoundsKeepTheirYarns() {
    expect(new LocksRule(), blanket, "BAR,REE,MUD ~,~,~ ~,~,~ ~,~,~ SAM,HEA,MUD");
  }

  @Test
  void holdsWhereLockedRoundsAreStillOpen() {
    expect(new LocksRule(), blanket, "~,~,~ REE,REE,REE");
  }

  @Test
  void namesWhatIsThereAndWhatIsLocked() {
    List<Fault> faults =
        expect(
            new LocksRule(),
            blanket,
            "BAR,SND,HEA ~,~,~ ~,~,~ ~,~,~ REE,HEA,MUD",
            "r1c1: round 2 has Sand (SND), but is locked to Reed (REE)",
            "r1c1: the border has Heather (HEA), but is locked to Tidal mud (MUD)",
            "r3c2: round 1 has Reed (REE), but is already worked in Samphire (SAM)");
    assertEquals(
        List.of(blanket.yarnIndex("SND"), blanket.yarnIndex("REE")), faults.get(0).yarns());
  }
}
