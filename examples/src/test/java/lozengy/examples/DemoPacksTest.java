package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.solver.pack.PackGoal;
import lozengy.solver.pack.PackOptions;
import lozengy.solver.pack.Packer;
import lozengy.solver.pack.Packing.Packed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packs that the demonstration briefs take, each proved the least. */
class DemoPacksTest {

  private static final long MOVES = 200_000;

  @ParameterizedTest
  @CsvSource({"saltmarsh-throw, 21", "cushion, 9", "stash-blanket, 12"})
  void packIsTheLeast(String example, int balls) {
    Blanket blanket = ExampleBriefs.blanket(example);
    PackOptions options =
        new PackOptions(
            PackGoal.BALLS,
            OptionalDouble.empty(),
            PackOptions.USUAL_MARGIN,
            PackOptions.USUAL_BEND,
            Optional.empty(),
            1,
            OptionalLong.of(MOVES),
            1,
            () -> false,
            attempt -> {});
    Packed packed = assertInstanceOf(Packed.class, Packer.find(blanket, options));
    assertEquals(balls, packed.balls());
    assertTrue(packed.proof().least());
    Blanket from = packed.arrangement().blanket();
    assertEquals(List.of(), Check.faults(from, packed.arrangement().sequences()));
    assertEquals(balls, from.brief().yarns().stream().mapToDouble(yarn -> yarn.balls()).sum());
  }
}
