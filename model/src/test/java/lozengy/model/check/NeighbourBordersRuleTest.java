package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class NeighbourBordersRuleTest extends RuleTest {

  private final Blanket blanket = fiveSquares(2).build();

  @Test
  void asksOnlyBordersOnASeamToDiffer() {
    expect(new NeighbourBordersRule(), blanket, "MUD,REE MUD,REE REE,MUD MUD,REE REE,REE");
  }

  @Test
  void namesBothPiecesAndTheBorder() {
    List<Fault> faults =
        expect(
            new NeighbourBordersRule(),
            blanket,
            "MUD,REE SAM,HEA HEA,REE ~,~ SND,REE",
            "r1c1 and r2c1 are joined along a side and both have the border Reed (REE)",
            "r2c1 and r3c2 are joined along a side and both have the border Reed (REE)");
    assertEquals(List.of(0, 2), faults.get(0).pieces());
    assertEquals(List.of(blanket.yarnIndex("REE")), faults.get(0).yarns());
  }

  @Test
  void countsShadesThatLookAlikeAsTheSameUnderMinContrast() {
    Blanket asking = fiveSquares(2).rules(2.5, WithinPiece.FREE, OptionalInt.empty(), 0).build();
    double difference = asking.yarns().difference(asking.yarnIndex("SND"), asking.yarnIndex("BAR"));
    assertEquals(1.8, difference, 0.05);
    expect(new NeighbourBordersRule(), blanket, "~,SND ~,MUD ~,BAR");
    expect(
        new NeighbourBordersRule(),
        asking,
        "~,SND ~,MUD ~,BAR",
        String.format(
            Locale.ROOT,
            "r1c1 and r2c1 are joined along a side and their borders Sand (SND) and Barley (BAR)"
                + " differ by %.1f (CIEDE2000), less than the 2.5 asked for",
            Math.floor(difference * 10) / 10));
  }

  @Test
  void acceptsADifferenceOfJustTheMinimum() {
    double exactly = blanket.yarns().difference(blanket.yarnIndex("SND"), blanket.yarnIndex("BAR"));
    Blanket asking =
        fiveSquares(2).rules(exactly, WithinPiece.FREE, OptionalInt.empty(), 0).build();
    expect(new NeighbourBordersRule(), asking, "~,SND ~,~ ~,BAR");
  }

  @Test
  void findsNoFaultBetweenTwoJoinedPiecesButOneWithAThird() {
    Blanket joined =
        fiveSquares(2)
            .piece("r1c1", PieceState.JOINED, "MUD", "REE")
            .piece("r2c1", PieceState.JOINED, "SAM", "REE")
            .piece("r3c1", PieceState.MADE, "SAM", "REE")
            .build();
    expect(
        new NeighbourBordersRule(),
        joined,
        "MUD,REE ~,~ SAM,REE SAM,REE",
        "r2c1 and r3c1 are joined along a side and both have the border Reed (REE)");
  }

  @Test
  void holdsTrianglesToItToo() {
    Blanket filled =
        BlanketBuilder.filled(1, 2)
            .saltmarsh()
            .motif(PieceKind.SQUARE, 2)
            .motif(PieceKind.SIDE_TRIANGLE, 1)
            .motif(PieceKind.CORNER_TRIANGLE, 1)
            .build();
    // r1c1 r3c1, then right1 left1, then the corners
    expect(
        new NeighbourBordersRule(),
        filled,
        "MUD,REE MUD,SAM REE SAM MUD REE",
        "r1c1 and right1 are joined along a side and both have the border Reed (REE)",
        "r1c1 and top-right are joined along a side and both have the border Reed (REE)",
        "r3c1 and left1 are joined along a side and both have the border Samphire (SAM)");
  }
}
