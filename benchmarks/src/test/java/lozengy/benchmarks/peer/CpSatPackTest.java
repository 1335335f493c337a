package lozengy.benchmarks.peer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Setting;
import lozengy.solver.pack.PackGoal;
import lozengy.solver.pack.PackOptions;
import lozengy.solver.pack.Packer;
import lozengy.solver.pack.Packing.Packed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where any score will do, the least pack is CP-SAT's optimum, and a ball less is impossible. */
class CpSatPackTest {

  private static final BriefSpec SMALL =
      new BriefSpec(
          "small",
          new LayoutSize(Setting.STRAIGHT, 3, 3, false, false),
          "LD",
          new BriefSpec.YarnCounts(3, 0, 3),
          10,
          BriefSpec.Stock.EVEN,
          BriefSpec.Known.NOTHING,
          Rules.DEFAULT.withCopies(OptionalInt.empty()),
          false);

  @ParameterizedTest
  @ValueSource(ints = {9, 14, 20})
  void leastPackIsTheOptimum(int metres) {
    Brief brief = PlantedBrief.of(SMALL).blanket().brief();
    List<Yarn> yarns = new ArrayList<>();
    for (Yarn yarn : brief.yarns()) {
      yarns.add(yarn.withLeft(Optional.empty()).withBall(Optional.of(new Ball(10, metres * 1000))));
    }
    Blanket blanket = Blanket.ofUnjudged(brief.withYarns(yarns));
    PackOptions any =
        new PackOptions(
            PackGoal.BALLS,
            OptionalDouble.of(0),
            0,
            PackOptions.USUAL_BEND,
            Optional.empty(),
            1,
            OptionalLong.of(20_000),
            1,
            () -> false,
            attempt -> {});
    Packed packed = assertInstanceOf(Packed.class, Packer.find(blanket, any));
    assertTrue(packed.proof().least());
    CpSatPack.Answer peer = answer(blanket, OptionalLong.empty());
    assertEquals(Contender.Proof.OPTIMAL, peer.proof());
    assertEquals(OptionalLong.of(packed.balls()), peer.balls());
    assertEquals(
        Contender.Proof.IMPOSSIBLE, answer(blanket, OptionalLong.of(packed.balls() - 1L)).proof());
  }

  private static CpSatPack.Answer answer(Blanket blanket, OptionalLong most) {
    return CpSatPack.fewest(blanket, PackOptions.USUAL_BEND, most, Optional.empty(), 1, 60);
  }
}
