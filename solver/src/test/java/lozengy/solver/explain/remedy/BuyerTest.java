package lozengy.solver.explain.remedy;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Yarn;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.explain.conflict.ExplainOptions;
import lozengy.solver.explain.remedy.Buying.Amount;
import org.junit.jupiter.api.Test;

/** What must be bought for few long rounds, reckoned by hand. */
class BuyerTest {

  private static final ExplainOptions OPTIONS = ExplainOptions.of(1, () -> false);

  /** Squares of one dark round in a row. */
  private static BlanketBuilder row(int pieces, long millimetres) {
    return BlanketBuilder.straight(pieces, 1)
        .motif(PieceKind.SQUARE, round(millimetres, Tone.DARK));
  }

  /** The same in balls of other lengths, in mm; 0 for a yarn that is gone. */
  private static Blanket inBalls(BlanketBuilder builder, long... millimetres) {
    Blanket blanket = builder.build();
    List<Yarn> yarns = new ArrayList<>();
    for (Yarn yarn : blanket.brief().yarns()) {
      long length = millimetres[yarns.size()];
      yarns.add(
          yarn.withGone(length == 0).withBall(Optional.of(new Ball(50, Math.max(1000, length)))));
    }
    return Blanket.ofUnjudged(blanket.brief().withYarns(yarns));
  }

  private static void assertBuys(Blanket blanket, boolean fewest, Amount... amounts) {
    Buying.Amounts buys = assertInstanceOf(Buying.Amounts.class, Buying.of(blanket, OPTIONS));
    assertEquals(List.of(amounts), buys.amounts());
    assertEquals(fewest, buys.fewest());
    assertEquals(List.of(), Check.faults(Blanket.of(buys.brief()), buys.witness()));
    for (Amount amount : amounts) {
      assertEquals(
          blanket.yarn(amount.yarn()).stockMillimetres() + amount.millimetres(),
          buys.brief().yarns().get(amount.yarn()).stockMillimetres());
    }
  }

  @Test
  void nothingIsBoughtWhereThereIsEnough() {
    Buying buying = Buying.of(row(2, 1000).yarns(2, Tone.DARK, 1000).build(), OPTIONS);
    Buying.Nothing nothing = assertInstanceOf(Buying.Nothing.class, buying);
    assertEquals(2, nothing.witness().pieces());
  }

  @Test
  void nothingHelpsWhereAToneIsMissing() {
    Buying buying = Buying.of(row(2, 1000).yarns(2, Tone.LIGHT, 1000).build(), OPTIONS);
    assertEquals(new Buying.NoHelp(), buying);
    // the only yarn of the tone is gone
    assertEquals(
        new Buying.NoHelp(), Buying.of(inBalls(row(1, 5000).yarn(Tone.DARK, 1000), 0), OPTIONS));
  }

  @Test
  void nothingIsSaidWithoutTime() {
    Blanket blanket = row(2, 1000).yarns(2, Tone.DARK, 500).build();
    assertEquals(new Buying.Unsettled(), Buying.of(blanket, ExplainOptions.of(1, () -> true)));
  }

  @Test
  void upToTwentyBallsOfAYarnAreProvedToBeTheFewest() {
    assertBuys(
        inBalls(row(1, 2_010_000).yarn(Tone.DARK, 10_000), 100_000),
        true,
        new Amount(0, 20, 2_000_000));
    // what is more is bought in bulk
    assertBuys(
        inBalls(row(1, 2_110_000).yarn(Tone.DARK, 10_000), 100_000),
        false,
        new Amount(0, 21, 2_100_000));
    assertBuys(
        inBalls(row(1, 6_010_000).yarn(Tone.DARK, 10_000), 100_000),
        false,
        new Amount(0, 60, 6_000_000));
  }

  @Test
  void whatIsMissingByFarIsSharedAmongYarns() {
    // 3 km of each of both
    assertBuys(
        inBalls(row(2, 3_000_000).yarns(2, Tone.DARK, 0), 100_000, 110_000),
        false,
        new Amount(0, 30, 3_000_000),
        new Amount(1, 28, 3_080_000));
  }

  @Test
  void whatManyRoundsMissIsSharedAmongYarns() {
    // 24 rounds of 125 m of each of both, of which there are 130 m and 140 m
    assertBuys(
        BallsTest.chessboard(), false, new Amount(0, 29, 2_900_000), new Amount(1, 26, 2_860_000));
  }

  @Test
  void ballsTooShortToBeChosenAreReckonedFromAnArrangement() {
    // a round of 1 km of each, of which one is in balls of 1 m and the other in balls of 100 m
    assertBuys(
        inBalls(row(2, 1_000_000).yarn(Tone.DARK, 40_000).yarn(Tone.DARK, 0), 1_000, 100_000),
        false,
        new Amount(0, 960, 960_000),
        new Amount(1, 10, 1_000_000));
    // a tenth is kept back; of the third nothing can be had
    assertBuys(
        inBalls(
            row(2, 900_000).yarns(2, Tone.DARK, 0).yarn(Tone.DARK, 0).keepBack(10),
            1_000,
            100_000,
            0),
        false,
        new Amount(0, 1000, 1_000_000),
        new Amount(1, 10, 1_000_000));
  }
}
