package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** What fits as a brief is written fits, to the last thousandth of an ounce. */
class ExactAmountsTest {

  private static final Map<String, String> WORDS =
      Map.of("m", "metres", "yd", "yards", "g", "grams", "oz", "ounces");

  private static String brief(int across, String round, String stock, String rules) {
    return """
        format: lozengy-brief/1
        title: To the last bit
        layout: { setting: straight, across: %d, down: 1 }
        motifs: { square: { side: 4 in, rounds: [ { %s } ] } }
        yarns: [ { code: MUD, colour: "#202020", %s } ]
        rules: { %s }
        """
        .formatted(across, round, stock, rules);
  }

  private static Blanket read(String text) {
    Brief brief = BriefReader.read(SourceText.of("b.yaml", text));
    String written = BriefWriter.text(brief);
    assertEquals(brief, BriefReader.read(SourceText.of("b.json", written)), written);
    return Blanket.ofUnjudged(brief);
  }

  private static long used(Blanket blanket) {
    Sequences all = blanket.open();
    for (int piece = 0; piece < all.pieces(); piece++) {
      all.set(piece, 0, 0);
    }
    return blanket.usedMillimetres(all)[0];
  }

  @Test
  void aHundredSquaresTakeTwoBallsToTheLastOunce() {
    String putUp = "ball: { ounces: 43.0, yards: 750 }, balls: 2";
    Blanket blanket = read(brief(100, "ounces: 0.86", putUp, ""));
    assertEquals(1_371_600, blanket.yarns().usableMillimetres(0));
    assertTrue(used(blanket) <= blanket.yarns().usableMillimetres(0));
    assertTrue(used(blanket) > blanket.yarns().usableMillimetres(0) - 100);
    Blanket more = read(brief(101, "ounces: 0.86", putUp, ""));
    assertTrue(used(more) > more.yarns().usableMillimetres(0));
  }

  @Test
  void whatIsKeptBackLeavesTheRestWhole() {
    Blanket blanket = read(brief(9, "yards: 1.9", "left: 18 yd", "keep-back: 5 %"));
    assertTrue(used(blanket) <= blanket.yarns().usableMillimetres(0));
    assertEquals(15_637, blanket.yarns().usableMillimetres(0), "17.1 yd are 15 636.24 mm");
    assertEquals(16_460, blanket.yarn(0).stockMillimetres(), "18 yd are 16 459.2 mm");
    assertEquals(9 * 1737, used(blanket), "1.9 yd are 1737.36 mm");
  }

  @Test
  void joiningAndEdgingAreRoundedDownAlone() {
    String uses =
        "joining: { yarn: MUD, metres-per-metre: 3.7 }\n"
            + "edging: { yarn: MUD, metres-per-metre: 0.33 }\n";
    Blanket blanket = read(brief(4, "metres: 1", "left: 9 m", "") + uses);
    assertEquals(1127, blanket.fixedUse().joiningMillimetres(), "3 x 101.6 mm x 3.7 = 1127.76 mm");
    assertEquals(335, blanket.fixedUse().edgingMillimetres(), "10 x 101.6 mm x 0.33 = 335.28 mm");
  }

  /** Stocks of just as much as is needed, in balls and loose, in all units. */
  @Test
  void anyStockOfJustWhatIsNeededSuffices() {
    SplittableRandom random = new SplittableRandom(7);
    List<String> weights = List.of("g", "oz");
    List<String> lengths = List.of("m", "yd");
    for (int trial = 0; trial < 2000; trial++) {
      List<String> units = random.nextBoolean() ? weights : lengths;
      String unit = units.get(random.nextInt(2));
      int squares = 1 + random.nextInt(150);
      BigDecimal each = decimal(random, 2, 3_000);
      BigDecimal balls = decimal(random, 1, 30);
      BigDecimal perBall = BigDecimal.valueOf(20 + random.nextInt(80));
      BigDecimal inBalls = balls.multiply(perBall);
      BigDecimal loose = each.multiply(BigDecimal.valueOf(squares)).subtract(inBalls);
      if (loose.signum() < 0) {
        continue;
      }
      String weight = units == weights ? WORDS.get(unit) + ": " + perBall : "grams: 50";
      String length =
          units == weights
              ? List.of("metres: ", "yards: ").get(random.nextInt(2))
                  + decimal(random, 2, 40_000).add(BigDecimal.valueOf(40))
              : WORDS.get(unit) + ": " + perBall;
      String stock =
          "ball: { %s, %s }, balls: %s, left: %s %s".formatted(weight, length, balls, loose, unit);
      String text = brief(squares, WORDS.get(unit) + ": " + each, stock, "");
      Blanket blanket = read(text);
      assertTrue(used(blanket) <= blanket.yarns().usableMillimetres(0), text);
      assertTrue(used(blanket) > blanket.yarns().usableMillimetres(0) - squares - 1, text);
    }
  }

  private static BigDecimal decimal(SplittableRandom random, int decimals, int most) {
    return BigDecimal.valueOf(110 + random.nextInt(most), decimals);
  }
}
