package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class YarnTotalsRuleTest extends RuleTest {

  private static final String ALL_MUD = "MUD MUD MUD MUD MUD";

  /** Five squares of one round of 74.48 m: 372.40 m. */
  private static BlanketBuilder builder(long mudMillimetres, double keepBackPercent) {
    return BlanketBuilder.onPoint(2, 2)
        .yarn("MUD", "Tidal mud", "#2c2a29", mudMillimetres, 1)
        .yarn("REE", "REE", "#b9b57a", 100_000, 1)
        .motif(PieceKind.SQUARE, BlanketBuilder.round(74_480, Tone.values()))
        .rules(0, WithinPiece.FREE, OptionalInt.empty(), keepBackPercent);
  }

  @Test
  void allowsTheLastMillimetre() {
    expect(new YarnTotalsRule(), builder(372_400, 0).build(), ALL_MUD);
  }

  @Test
  void tellsAShortfallOfAMillimetre() {
    List<Fault> faults =
        expect(
            new YarnTotalsRule(),
            builder(372_399, 0).build(),
            ALL_MUD,
            "Tidal mud (MUD): 372.40 m needed, 372.399 m at hand: 0.001 m short");
    assertEquals(List.of(0), faults.get(0).yarns());
    assertEquals(List.of(), faults.get(0).pieces());
  }

  @Test
  void keepsBackAPartOfTheStock() {
    expect(new YarnTotalsRule(), builder(392_000, 5).build(), ALL_MUD);
    expect(
        new YarnTotalsRule(),
        builder(360_000, 5).build(),
        ALL_MUD,
        "Tidal mud (MUD): 372.40 m needed, 342.00 m usable (360 m at hand less 5 % kept back):"
            + " 30.40 m short");
  }

  @Test
  void countsOnlyWhatIsSet() {
    Blanket blanket = builder(360_000, 0).build();
    expect(new YarnTotalsRule(), blanket, "MUD MUD MUD MUD ~");
    expect(
        new YarnTotalsRule(),
        blanket,
        "~ REE ~ REE ~",
        "REE: 148.96 m needed, 100.00 m at hand: 48.96 m short");
  }

  @Test
  void countsPiecesThatAreWorked() {
    Blanket joined =
        builder(140_000, 0)
            .piece("r1c1", PieceState.JOINED, "MUD")
            .piece("r2c1", PieceState.MADE, "MUD")
            .build();
    expect(
        new YarnTotalsRule(),
        joined,
        "MUD ~ MUD",
        "Tidal mud (MUD): 148.96 m needed, 140.00 m at hand: 8.96 m short");
  }

  @Test
  void countsJoining() {
    // four seams of 10 cm at 3.5 m a metre: 1.40 m
    expect(
        new YarnTotalsRule(),
        builder(1_000, 0).joining("MUD", 3.5).build(),
        "~",
        "Tidal mud (MUD): 1.40 m needed, 1.00 m at hand: 0.40 m short");
  }
}
