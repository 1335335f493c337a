package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackCommandTest {

  private static final String PUT_UP = "ball: { grams: 50, metres: 120 }";

  @TempDir Path folder;

  /** A brief of which nothing is at hand, with balls so small that it takes several. */
  private String brief(String ball) {
    return Briefs.write(
        folder,
        "bare.yaml",
        Run.of("new", "--across", "2", "--down", "2")
            .out()
            .replaceAll("balls: [0-9.]+, ", "")
            .replace(PUT_UP, ball));
  }

  private static Result pack(String... arguments) {
    List<String> all = new ArrayList<>(List.of("pack"));
    all.addAll(List.of(arguments));
    all.addAll(List.of("--moves", Briefs.MOVES, "--threads", "1"));
    return Run.of(all.toArray(String[]::new));
  }

  @Test
  void packIsToldAndHoldsAnArrangement() {
    String brief = brief("ball: { grams: 10, metres: 15 }, price: 1.20 EUR");
    String written = folder.resolve("packed.arrangement.json").toString();
    Parsed packed = Parsed.of(pack(brief, "--json", "-o", written));
    assertEquals("found", packed.at("outcome"));
    double balls = packed.number("balls");
    assertEquals(balls * 10, packed.number("grams"));
    assertEquals(balls * 1.2, packed.number("price"), 1e-9);
    assertTrue(packed.number("floor") <= balls);
    assertTrue(packed.number("score") >= packed.number("wanted") - 1e-6);
    assertTrue(packed.number("wanted") >= packed.number("plenty") - 2 - 1e-6);
    for (int i = 0; i < packed.size("yarns"); i++) {
      String at = "yarns[" + i + "].";
      double used = packed.number(at + "used_m");
      double share = packed.number(at + "share_m");
      assertTrue(used <= 0.95 * 15 * packed.number(at + "balls") + 0.001, at);
      // to the next round, of which the longest takes 6.8 m
      assertTrue(used >= share * 0.5 - 6.8 && used <= share * 1.5 + 6.801, at);
    }
    // the arrangement has exactly the pack for its stock, and every yarn lasts
    Result checked = Run.of("check", written);
    assertEquals(0, checked.code(), checked.out());
    Parsed answer = Parsed.of(Briefs.text(written));
    for (int i = 0; i < packed.size("yarns"); i++) {
      assertEquals(
          packed.number("yarns[" + i + "].balls") * 15,
          answer.number("yarns[" + i + "].available_m"),
          1e-9);
    }
    assertTrue(Run.of("need", written).out().contains("Every yarn lasts"));
    Result told = pack(brief);
    assertTrue(told.out().contains("this blanket takes " + (int) balls + " balls"), told.out());
    String[] rows = pack(brief, "--csv").out().split("\r\n");
    assertEquals("code,name,balls,grams,price,currency,share_m,used_m,left_m", rows[0]);
    assertEquals(packed.size("yarns") + 1, rows.length);
    int sum = 0;
    for (int i = 1; i < rows.length; i++) {
      sum += Integer.parseInt(rows[i].split(",")[2]);
    }
    assertEquals(balls, sum);
  }

  @Test
  void cheapestIsNoDearerThanFewest() {
    String text = Briefs.text(brief("ball: { grams: 10, metres: 15 }, price: 2 EUR"));
    String brief =
        Briefs.write(folder, "two.yaml", text.replaceFirst("price: 2 EUR", "price: 9 EUR"));
    Parsed fewest = Parsed.of(pack(brief, "--within", "20", "--json"));
    Parsed cheapest = Parsed.of(pack(brief, "--least", "price", "--within", "20", "--json"));
    assertTrue(cheapest.number("price") <= fewest.number("price"), "not the cheapest");
    assertTrue(cheapest.number("price") >= cheapest.number("floor"));
  }

  @Test
  void whatCannotBeCountedIsRefused() {
    Result none = pack(brief("left: 10 m"));
    assertEquals(2, none.code());
    assertTrue(none.err().contains("yarns[0].ball: NAV has no put-up"), none.err());
    Result unpriced = pack(brief(PUT_UP), "--least", "price");
    assertEquals(2, unpriced.code());
    assertTrue(unpriced.err().contains("yarns[0].price: NAV has no price"), unpriced.err());
    Result mixed =
        pack(
            Briefs.write(
                folder,
                "mixed.yaml",
                Briefs.text(brief(PUT_UP + ", price: 2 EUR"))
                    .replaceFirst("price: 2 EUR", "price: 2 CHF")));
    assertEquals(2, mixed.code());
    assertTrue(mixed.err().contains("one currency"), mixed.err());
    assertEquals(2, pack(brief(PUT_UP), "--score", "101").code());
    assertEquals(2, pack(brief(PUT_UP), "--csv", "--json").code());
  }

  @Test
  void whatNoPackDoesIsProved() {
    Result beyond = pack(brief(PUT_UP), "--score", "100");
    assertEquals(3, beyond.code(), beyond.out());
    assertTrue(beyond.out().contains("proved"), beyond.out());
    String oneYarn = "src/test/resources/lozengy/cli/infeasible/within-piece.yaml";
    Result impossible = pack(oneYarn);
    assertEquals(3, impossible.code(), impossible.out() + impossible.err());
    assertTrue(
        impossible.out().startsWith("No pack does, however many balls it holds."),
        impossible.out());
  }

  @Test
  void packsOfSizesStandBesideEachOther() {
    String brief = brief("ball: { grams: 10, metres: 15 }, price: 1.20 EUR");
    String to = folder.resolve("packs").toString();
    String[] sizes = {"--size", "small=1x2", "--size", "large=2x2", "--within", "30"};
    Parsed each = Parsed.of(pack(with(brief, sizes, "--json")));
    assertEquals("false", each.at("one_for_all"));
    Parsed shared =
        Parsed.of(pack(with(brief, sizes, "--one-for-all", "--looser", "2%", "--json", "-o", to)));
    assertEquals("true", shared.at("one_for_all"));
    assertEquals("found", shared.at("sizes[0].outcome"));
    assertEquals("small", shared.at("sizes[0].size"));
    for (int yarn = 0; yarn < shared.size("sizes[0].yarns"); yarn++) {
      String at = "].yarns[" + yarn + "].";
      double balls = shared.number("sizes[0" + at + "balls");
      assertEquals(balls, shared.number("sizes[1" + at + "balls"));
      for (int size = 0; size < 2; size++) {
        double used = shared.number("sizes[" + size + at + "used_m");
        assertTrue(used * 1.02 <= 0.95 * 15 * balls + 0.001, size + at);
      }
    }
    assertTrue(each.number("sizes[0].balls") < each.number("sizes[1].balls"));
    assertTrue(shared.number("sizes[0].balls") >= each.number("sizes[1].balls"));
    for (String size : List.of("small", "large")) {
      String written = to + "/" + size + ".arrangement.json";
      Result checked = Run.of("check", written);
      assertEquals(0, checked.code(), checked.out());
      assertTrue(Briefs.text(written).contains("\"for-sale\": {\"looser\": \"2 %\"}"));
    }
    String[] rows = pack(with(brief, sizes, "--csv")).out().split("\r\n");
    assertEquals("size,code,name,balls,grams,price,currency,share_m,used_m,left_m", rows[0]);
    assertEquals(2 * each.size("sizes[0].yarns") + 1, rows.length);
    int sum = 0;
    for (int i = 1; i < rows.length; i++) {
      sum += rows[i].startsWith("large,") ? Integer.parseInt(rows[i].split(",")[3]) : 0;
    }
    assertEquals(each.number("sizes[1].balls"), sum);
    String told = pack(with(brief, sizes, "--one-for-all")).out();
    assertTrue(told.contains("from which each size can be worked by itself"), told);
    assertTrue(told.contains("For all sizes: "), told);
  }

  private static String[] with(String brief, String[] some, String... more) {
    List<String> all = new ArrayList<>(List.of(brief));
    all.addAll(List.of(some));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  @Test
  void onePackForAllNeedsSizes() {
    Result none = pack(brief(PUT_UP), "--one-for-all");
    assertEquals(2, none.code());
    assertTrue(none.err().contains("--size"), none.err());
    Result far = pack(brief(PUT_UP), "--size", "tiny=3x3cm");
    assertEquals(2, far.code());
    assertTrue(far.err().contains("14.1 x 14.1 cm"), far.err());
  }
}
