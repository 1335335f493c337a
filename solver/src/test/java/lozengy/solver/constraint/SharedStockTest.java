package lozengy.solver.constraint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;

class SharedStockTest {

  /** A sum with such a variable would be stated as a table of all counts and all its values. */
  @Test
  void whatIsLeftOverInMillimetresIsHeldByItsBoundsAlone() {
    Blanket blanket =
        BlanketBuilder.straight(4, 4)
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(2011),
                BlanketBuilder.round(3108),
                BlanketBuilder.round(5303))
            .yarns(4, Tone.MID, 45_000)
            .build();
    long left =
        Stream.of(ConstraintModel.of(blanket).model().retrieveIntVars(false))
            .filter(variable -> variable.getDomainSize() > 10_000)
            .filter(variable -> !variable.hasEnumeratedDomain())
            .count();
    assertEquals(4, left);
    long listed =
        Stream.of(ConstraintModel.of(blanket).model().retrieveIntVars(false))
            .filter(IntVar::hasEnumeratedDomain)
            .filter(variable -> variable.getDomainSize() > 10_000)
            .count();
    assertEquals(0, listed);
  }
}
