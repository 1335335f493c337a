package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NeedCommandTest {

  @TempDir Path folder;

  @Test
  void arrangementIsToldYarnByYarn() {
    String file = Briefs.solve(folder);
    Result result = Run.of("need", file);
    assertEquals(0, result.code());
    assertTrue(result.out().contains("Navy (NAV)"), result.out());
    assertTrue(result.out().contains("Every yarn lasts with 5 % kept back."), result.out());
    Parsed answer = Parsed.of(Briefs.text(file));
    Parsed parsed = Parsed.of(Run.of("need", file, "--json"));
    assertEquals("true", parsed.at("enough"));
    assertEquals(answer.size("yarns"), parsed.size("yarns"));
    for (int yarn = 0; yarn < answer.size("yarns"); yarn++) {
      String at = "yarns[" + yarn + "].";
      double used = answer.number(at + "used_m");
      assertEquals(used, parsed.number(at + "needed_m"));
      assertEquals(Math.ceil(used / 0.95 / 120), parsed.number(at + "balls"));
    }
  }

  @Test
  void yarnThatRunsOutIsToBeBought() {
    String text = Briefs.text(Briefs.solve(folder));
    Parsed answer = Parsed.of(text);
    double used = answer.number("yarns[0].used_m");
    assertEquals("NAV", answer.at("yarns[0].code"));
    // A tenth of a ball of Navy, 12 m, of which 95 % may be used.
    String poor =
        Briefs.write(
            folder,
            "poor.json",
            text.replaceFirst("(\"code\": ?\"NAV\".*\"balls\": ?)[0-9.]+", "$10.1"));
    Result result = Run.of("need", poor, "--json");
    Parsed parsed = Parsed.of(result);
    assertEquals("false", parsed.at("enough"), result.out());
    double missing = used / 0.95 - 12;
    assertEquals(missing, parsed.number("yarns[0].buy.metres"), 0.002);
    assertEquals(Math.ceil(missing / 120), parsed.number("yarns[0].buy.balls"));
    assertTrue(Run.of("need", poor).out().contains("Not enough with 5 % kept back: Navy (NAV)."));
  }

  @Test
  void briefIsToldByTone() {
    String brief = Briefs.write(folder);
    Result result = Run.of("need", brief);
    assertEquals(0, result.code());
    assertTrue(result.out().contains("Enough: an arrangement"), result.out());
    Parsed parsed = Parsed.of(Run.of("need", brief, "--json"));
    assertEquals("true", parsed.at("enough"));
    // 5 squares, 4 side triangles and 4 corners, each with one dark border.
    assertEquals("dark", parsed.at("open[0].tones[0]"));
    assertEquals("13", parsed.at("open[0].rounds"));
    assertEquals(5 * 6.8 + 4 * 4.3 + 4 * 2.4, parsed.number("open[0].needed_m"), 1e-9);
    assertEquals("9", parsed.at("open[3].rounds"));
  }

  /** Shade by shade from the shares alone, where no yarn says what is at hand. */
  @Test
  void briefWithoutStockIsToldByShade() {
    String text = Briefs.text(Briefs.write(folder)).replaceAll("balls: [0-9.]+, ", "");
    String priced = text.replaceAll("(grams: 50, metres: 120 })", "$1, price: 4.25 EUR");
    String brief = Briefs.write(folder, "nothing.yaml", priced);
    Result solved = Run.of("solve", brief, "-o", folder.resolve("none.json").toString());
    assertEquals(2, solved.code());
    assertEquals(1, solved.err().lines().count(), solved.err());
    assertTrue(solved.err().contains("No yarn says what is at hand"), solved.err());
    Result result = Run.of("need", brief);
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Nothing is at hand yet."), result.out());
    Parsed parsed = Parsed.of(Run.of("need", brief, "--json"));
    double metres = 0;
    for (int i = 0; i < parsed.size("shades"); i++) {
      String at = "shades[" + i + "].";
      double needed = parsed.number(at + "needed_m");
      metres += needed;
      // 50 g with 120 m, 5 % kept back, 0.9144 m in a yard and 28.349523125 g in an ounce
      assertEquals(needed / 120 * 50, parsed.number(at + "needed_g"), 0.001);
      assertEquals(needed / 0.9144, parsed.number(at + "needed_yd"), 0.001);
      assertEquals(needed / 120 * 50 / 28.349523125, parsed.number(at + "needed_oz"), 0.001);
      double balls = Math.ceil(needed / 0.95 / 120);
      assertEquals(balls, parsed.number(at + "balls"));
      assertEquals(balls * 4.25, parsed.number(at + "price"), 1e-9);
    }
    double all = 0;
    for (int i = 0; i < parsed.size("open"); i++) {
      all += parsed.number("open[" + i + "].needed_m");
    }
    for (int i = 0; i < parsed.size("held"); i++) {
      all += parsed.number("held[" + i + "].needed_m");
    }
    assertEquals(all, metres, 0.001 * parsed.size("shades"));
  }

  @Test
  void toneThatDoesNotSufficeIsToldWithWhatToBuy() {
    String brief =
        Briefs.write(
            folder,
            "poor.yaml",
            Briefs.text(Briefs.write(folder))
                .replaceAll(
                    "(colour: \"#(?:f0e8d2|a9cbe3|e3cf86|ecc4bd)\", balls: )[0-9.]+", "$10.01"));
    Result result = Run.of("need", brief);
    assertEquals(0, result.code());
    String[] told = {
      "Not enough: 12.6 m are missing in all",
      "  12.6 m: the light yarns have 4.6 m for rounds that need 17.2 m"
    };
    for (String line : told) {
      assertTrue(result.out().contains(line), result.out());
    }
    assertFalse(result.out().contains("Enough"), result.out());
    assertTrue(result.out().contains("To buy, so that an arrangement fits"), result.out());
    Parsed parsed = Parsed.of(Run.of("need", brief, "--json"));
    assertEquals("false", parsed.at("enough"));
    assertEquals("light", parsed.at("shortages[0].tones[0]"));
    assertEquals("1", parsed.at("shortages[0].buy.balls"));
  }

  /** What is told is bought as it is told, written into the file, and the file passes. */
  @Test
  void whatIsToldIsBoughtAndSuffices() {
    String poor =
        Briefs.write(
            folder,
            "poor.yaml",
            Briefs.text(Briefs.write(folder)).replaceAll("balls: [0-9.]+", "balls: 0.05"));
    Parsed told = Parsed.of(Run.of("need", poor, "--json"));
    assertEquals("false", told.at("enough"));
    assertEquals("true", told.at("fits_if_bought"));
    String bought = Briefs.text(poor);
    for (int i = 0; i < told.size("buy"); i++) {
      String at = "buy[" + i + "].";
      String balls = Double.toString(0.05 + told.number(at + "balls"));
      bought =
          bought.replaceFirst("(code: " + told.at(at + "code") + ",.*balls: )0.05", "$1" + balls);
    }
    String rich = Briefs.write(folder, "rich.yaml", bought);
    Parsed now = Parsed.of(Run.of("need", rich, "--json"));
    assertEquals("true", now.at("enough"));
    String to = folder.resolve("rich.json").toString();
    assertEquals(0, Run.of("solve", rich, "--moves", "100000", "-o", to).code());
    assertEquals(0, Run.of("check", to).code());
  }

  @Test
  void keepingBackEverythingLeavesNothingToReckon() {
    String brief =
        Briefs.write(
            folder,
            "all.yaml",
            Briefs.text(Briefs.write(folder)).replace("keep-back: 5 %", "keep-back: 100 %"));
    Result result = Run.of("need", brief);
    assertEquals(2, result.code());
    assertTrue(result.err().contains("Keep back less"), result.err());
  }

  @Test
  void stitchesAreToldWithWhatTheyCameToAndHowMuchLooserTheHandMayBe() {
    String brief = Path.of("../examples/counted-throw.yaml").toString();
    String to = folder.resolve("counted.json").toString();
    assertEquals(0, Run.of("solve", brief, "--moves", "20000", "-o", to).code());

    String before = Run.of("need", brief).out();
    String after = Run.of("need", to).out();
    Parsed parsed = Parsed.of(Run.of("need", to, "--json"));

    // three squares of 4.4 g on average, with 120 m to 50 g; two triangles of 5 g
    for (String told : new String[] {before, after}) {
      assertTrue(told.contains("square: 1.5 + 2.3 + 2.9 + 3.8 = 10.6 m, by its samples"), told);
      assertTrue(told.contains("= 6.0 m, by its samples"), told);
    }
    assertEquals("sample", parsed.at("stitches[7].from"));
    assertEquals("33", parsed.at("stitches[7].stitches"));
    double tightest = Double.MAX_VALUE;
    for (int yarn = 0; yarn < parsed.size("yarns"); yarn++) {
      String at = "yarns[" + yarn + "].";
      double needed = parsed.number(at + "needed_m");
      tightest = Math.min(tightest, parsed.number(at + "available_m") * 0.95 / needed - 1);
    }
    assertEquals(100 * tightest, parsed.number("hand.looser_percent"), 0.1);
    assertTrue(
        after.contains("Your hand may be " + parsed.at("hand.looser_percent") + " % looser"),
        after);
    assertEquals("2.3", parsed.at("hand.to_percent"));
  }

  /** Three squares of 100 yd each: 1 1/2 balls of 150 yd are at hand, 300 yd are needed. */
  @Test
  void anArrangementIsToldInBothUnitsWithWhatMustBeBoughtBesidePartBalls() {
    String brief =
        Briefs.write(
            folder,
            "yards.yaml",
            """
            format: lozengy-brief/1
            title: In yards
            layout: { setting: straight, across: 3, down: 1 }
            motifs: { square: { side: 4 in, rounds: [ { yards: 50 }, { yards: 50 } ] } }
            yarns:
              - { code: A, colour: "#2c2a29", balls: 2, ball: { ounces: 1.75, yards: 150 }, price: 6.50 USD }
              - { code: B, colour: "#b9b57a", balls: 2, ball: { ounces: 1.75, yards: 150 }, price: 7 USD }
            """);
    String to = folder.resolve("yards.json").toString();
    assertEquals(0, Run.of("solve", brief, "-o", to, "--moves", "2000").code());
    String poor =
        Briefs.write(
            folder, "poor.json", Briefs.text(to).replaceAll("\"balls\": ?2", "\"balls\": 0.5"));
    Result result = Run.of("need", poor);
    Parsed parsed = Parsed.of(Run.of("need", poor, "--json"));

    // 3 or 2 rounds in each: 150 yd = 1.75 oz; 75 yd are there
    assertEquals(2, parsed.size("yarns"));
    double yards = 0;
    for (int yarn = 0; yarn < 2; yarn++) {
      String at = "yarns[" + yarn + "].";
      double needed = parsed.number(at + "to_work_yd");
      yards += needed;
      assertEquals(needed * 1.75 / 150, parsed.number(at + "to_work_oz"), 0.001);
      assertEquals(needed * 0.9144, parsed.number(at + "to_work_m"), 0.002);
      double balls = Math.ceil(Math.round((needed - 75) / 150 * 1e4) / 1e4);
      assertEquals(balls, parsed.number(at + "buy.balls"), result.out());
      assertEquals(balls * (yarn == 0 ? 6.5 : 7), parsed.number(at + "buy.price"));
      assertEquals("USD", parsed.at(at + "buy.currency"));
    }
    assertEquals(300, yards, 0.01);
    assertEquals(
        parsed.number("yarns[0].buy.price") + parsed.number("yarns[1].buy.price"),
        parsed.number("buy_price"));
    assertTrue(result.out().contains("in all  274.3 m  300.0 yd  99.2 g  3.50 oz"), result.out());
  }
}
