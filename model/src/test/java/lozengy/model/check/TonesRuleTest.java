package lozengy.model.check;

import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class TonesRuleTest extends RuleTest {

  private final Blanket blanket =
      BlanketBuilder.onPoint(2, 2)
          .saltmarsh()
          .motif(
              PieceKind.SQUARE,
              BlanketBuilder.round(1000, Tone.LIGHT, Tone.MID),
              BlanketBuilder.round(1000, Tone.DARK))
          .piece("r2c1", PieceState.JOINED, "MUD", "REE")
          .build();

  @Test
  void takesYarnsOfTheTonesAskedFor() {
    expect(new TonesRule(), blanket, "REE,MUD SAM,MUD ~,~ ~,MUD BAR,~");
  }

  @Test
  void namesAYarnsToneAndWhatTheRoundTakes() {
    expect(
        new TonesRule(),
        blanket,
        "MUD,REE SAM,HEA",
        "r1c1: round 1 has Tidal mud (MUD), which is dark, but takes mid or light",
        "r1c1: the border has Reed (REE), which is light, but takes dark",
        "r1c2: the border has Heather (HEA), which is mid, but takes dark");
  }

  @Test
  void findsNoFaultWithWhatIsJoined() {
    expect(new TonesRule(), blanket, "~,~ ~,~ MUD,REE");
  }
}
