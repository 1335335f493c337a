package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class CopiesRuleTest extends RuleTest {

  private static final String THREE_ALIKE = "MUD,REE SAM,REE MUD,REE MUD,REE SAM,REE";

  private static BlanketBuilder allowing(OptionalInt copies) {
    return fiveSquares(2).rules(0, WithinPiece.FREE, copies, 0);
  }

  @Test
  void asksNothingWhereCopiesAreFree() {
    expect(new CopiesRule(), allowing(OptionalInt.empty()).build(), THREE_ALIKE);
  }

  @Test
  void allowsAsManyAsAskedFor() {
    expect(new CopiesRule(), allowing(OptionalInt.of(3)).build(), THREE_ALIKE);
    expect(
        new CopiesRule(),
        allowing(OptionalInt.of(2)).build(),
        THREE_ALIKE,
        "r1c1, r2c1 and r3c1 share the sequence Tidal mud (MUD), Reed (REE): 3 pieces, 2 allowed");
  }

  @Test
  void tellsOneFaultForEachSequence() {
    List<Fault> faults =
        expect(
            new CopiesRule(),
            allowing(OptionalInt.of(1)).build(),
            THREE_ALIKE,
            "r1c1, r2c1 and r3c1 share the sequence Tidal mud (MUD), Reed (REE): 3 pieces, 1"
                + " allowed",
            "r1c2 and r3c2 share the sequence Samphire (SAM), Reed (REE): 2 pieces, 1 allowed");
    assertEquals(List.of(1, 4), faults.get(1).pieces());
  }

  @Test
  void countsOnlyCompletePieces() {
    expect(new CopiesRule(), allowing(OptionalInt.of(1)).build(), "MUD,~ MUD,~ ~,~ ~,~ MUD,REE");
  }

  @Test
  void findsNoFaultWhereAllCopiesAreWorked() {
    BlanketBuilder builder =
        allowing(OptionalInt.of(1))
            .piece("r1c1", PieceState.MADE, "MUD", "REE")
            .piece("r2c1", PieceState.JOINED, "MUD", "REE");
    expect(new CopiesRule(), builder.build(), "MUD,REE ~,~ MUD,REE");
    expect(
        new CopiesRule(),
        builder.build(),
        "MUD,REE ~,~ MUD,REE ~,~ MUD,REE",
        "r1c1, r2c1 and r3c2 share the sequence Tidal mud (MUD), Reed (REE): 3 pieces, 1 allowed");
  }

  @Test
  void comparesSequencesWhateverTheKindOfPiece() {
    Blanket filled =
        BlanketBuilder.filled(1, 1)
            .saltmarsh()
            .motif(PieceKind.SQUARE, 1)
            .motif(PieceKind.CORNER_TRIANGLE, 1)
            .rules(0, WithinPiece.FREE, OptionalInt.of(1), 0)
            .build();
    expect(
        new CopiesRule(),
        filled,
        "MUD SAM MUD HEA REE",
        "r1c1 and top-right share the sequence Tidal mud (MUD): 2 pieces, 1 allowed");
  }

  @Test
  void cutsALongListShort() {
    Blanket many =
        BlanketBuilder.straight(5, 2)
            .saltmarsh()
            .motif(PieceKind.SQUARE, 1)
            .rules(0, WithinPiece.FREE, OptionalInt.of(1), 0)
            .build();
    expect(
        new CopiesRule(),
        many,
        "MUD MUD MUD MUD MUD MUD MUD MUD MUD MUD",
        "r1c1, r1c2, r1c3, r1c4, r1c5, r2c1, r2c2, r2c3 and 2 more share the sequence Tidal mud"
            + " (MUD): 10 pieces, 1 allowed");
  }

  /** Two pairs of images, of each of which one is made. */
  @Test
  void anOrbitOfWhichAPieceIsMadeIsAFact() {
    Brief plain =
        BlanketBuilder.straight(4, 1)
            .saltmarsh()
            .motif(PieceKind.SQUARE, 1)
            .rules(0, WithinPiece.FREE, OptionalInt.of(1), 0)
            .piece("r1c1", PieceState.MADE, "MUD")
            .piece("r1c2", PieceState.MADE, "MUD")
            .build()
            .brief();
    Blanket mirrored =
        Blanket.ofUnjudged(plain.withLook(Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT)));
    expect(new CopiesRule(), mirrored, "MUD MUD MUD MUD");
  }
}
