package lozengy.model.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.ForSale;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Price;
import lozengy.model.brief.Round;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefReader;
import lozengy.model.unit.Ratio;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShadeNeedTest {

  private static Brief brief(int shades, double metres, double grams, long ballMetres) {
    List<Yarn> yarns =
        IntStream.range(0, shades)
            .mapToObj(
                i ->
                    Yarn.of("Y" + i, new Srgb(200, 10 * i, 0))
                        .withBall(Optional.of(new Ball(grams, ballMetres * 1000)))
                        .withPrice(Optional.of(new Price(new BigDecimal("4.25"), "EUR"))))
            .toList();
    Round round =
        new Round(
            EnumSet.allOf(Tone.class),
            new YarnAmount.Length(BigDecimal.valueOf(metres).movePointRight(3)));
    return Brief.of(
        "x",
        new LayoutSize(Setting.STRAIGHT, shades, 1, false, false),
        Map.of(PieceKind.SQUARE, new Motif(OptionalDouble.of(10), List.of(round))),
        yarns);
  }

  /**
   * Put-ups in common use, reckoned by hand: balls = need / metres per ball, rounded up, and grams
   * = need x grams per ball / metres per ball (the arithmetic of ISO 1144's tex, grams per 1000 m).
   * The last row: 12 x 139 m of 120 m each begin 24 balls.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 120.0, 50, 120, 0, 1, 50.0",
    "1, 120.1, 50, 120, 0, 2, 50.041666666666664",
    "1, 114.0, 50, 120, 5, 1, 47.5",
    "1, 114.1, 50, 120, 5, 2, 47.541666666666664",
    "3, 100.0, 100, 212, 0, 1, 47.16981132075472",
    "12, 139.0, 50, 120, 0, 2, 57.916666666666664"
  })
  void ballsAreRoundedUp(
      int shades, double metres, double grams, long ballMetres, double kept, long balls, double g) {
    Brief brief = brief(shades, metres, grams, ballMetres);
    Blanket blanket = Blanket.ofUnjudged(brief.withRules(brief.rules().withKeepBack(kept)));
    for (ShadeNeed need : ShadeNeed.of(blanket)) {
      assertEquals(Math.round(metres * 1000), need.millimetres());
      assertEquals(OptionalLong.of(balls), need.balls(blanket));
      assertEquals(g, need.grams(blanket).orElseThrow().doubleValue(), 1e-12);
      assertEquals(
          new Price(BigDecimal.valueOf(425 * balls, 2), "EUR"), need.price(blanket).orElseThrow());
    }
  }

  /**
   * By hand, of balls of 120 m: 109.0 m and 10 % are 119.9 m, 109.1 m and 10 % are 120.01 m; with 5
   * % kept back, 114 m of each ball serve 103.6 m and 10 %, which are 113.96 m.
   */
  @ParameterizedTest
  @CsvSource({"109.0, 0, 1", "109.1, 0, 2", "103.6, 5, 1", "103.7, 5, 2"})
  void ballsForSaleSufficeForLooserHands(double metres, double kept, long balls) {
    Brief brief = brief(1, metres, 50, 120);
    Brief sold =
        brief
            .withRules(brief.rules().withKeepBack(kept))
            .withForSale(Optional.of(new ForSale(BigDecimal.TEN)));
    Blanket blanket = Blanket.ofUnjudged(sold);
    assertEquals(OptionalLong.of(balls), ShadeNeed.of(blanket).get(0).balls(blanket));
  }

  /** Which shade gets which piece is open, but not what all take together. */
  @ParameterizedTest
  @ValueSource(strings = {"saltmarsh-throw.yaml", "cushion.yaml", "cannot-be-done.yaml"})
  void shadesAddUpToWhatAllRoundsTake(String example) {
    Brief brief = BriefReader.read(Path.of("../examples", example));
    Blanket blanket = Blanket.ofUnjudged(brief);
    long all = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        all += blanket.motifs().needMillimetres(blanket.kind(piece), round, 0);
      }
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      all += blanket.fixedUse().millimetres(yarn);
    }
    long sum =
        ShadeNeed.of(blanket).stream()
            .map(ShadeNeed::length)
            .reduce(Ratio::plus)
            .orElseThrow()
            .up();
    assertEquals(all, sum);
  }
}
