package lozengy.report.need;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.toThree;
import static lozengy.report.TextTable.NONE;
import static lozengy.report.TextTable.count;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Price;
import lozengy.model.unit.Ratio;
import lozengy.model.unit.Units;
import lozengy.model.yarn.ShadeNeed;
import lozengy.report.Amount;
import lozengy.report.Json;
import lozengy.report.TextTable;

/**
 * What a brief needs shade by shade, by the shares that it asks for.
 *
 * @param blanket the blanket
 * @param needs its needs by shade
 */
record ShadeLines(Blanket blanket, List<ShadeNeed> needs) {

  private static final int WIDEST_NAME = 30;

  static ShadeLines of(Blanket blanket) {
    return new ShadeLines(blanket, ShadeNeed.of(blanket));
  }

  /** A row for each shade that is wanted, and all together; prices where one is stated. */
  List<String> lines() {
    boolean priced = needs.stream().anyMatch(each -> each.price(blanket).isPresent());
    TextTable table = new TextTable(1, WIDEST_NAME);
    row(table, priced, "by its share", "needed", "", "", "", "in balls", "price");
    for (ShadeNeed need : needs) {
      if (need.millimetres() > 0) {
        row(
            table,
            priced,
            Words.yarn(blanket, need.yarn()),
            Amount.metres(need.millimetres()),
            Amount.yards(need.millimetres()),
            need.grams(blanket).map(Amount::grams).orElse(NONE),
            need.grams(blanket).map(Amount::ounces).orElse(NONE),
            count(need.balls(blanket)),
            need.price(blanket).map(Amount::price).orElse(NONE));
      }
    }
    Optional<BigDecimal> grams = grams();
    row(
        table,
        priced,
        "in all",
        Amount.metres(millimetres()),
        Amount.yards(millimetres()),
        grams.map(Amount::grams).orElse(NONE),
        grams.map(Amount::ounces).orElse(NONE),
        count(balls()),
        price().map(Amount::price).orElse(NONE));
    return table.lines();
  }

  private static void row(TextTable table, boolean priced, String... cells) {
    table.row(priced ? cells : Arrays.copyOf(cells, cells.length - 1));
  }

  List<Map<String, Object>> data() {
    List<Map<String, Object>> data = new ArrayList<>();
    for (ShadeNeed need : needs) {
      Optional<BigDecimal> grams = need.grams(blanket);
      data.add(
          Json.object(
              "code",
              blanket.yarn(need.yarn()).code(),
              "name",
              blanket.yarn(need.yarn()).name(),
              "rounds",
              need.rounds(),
              "needed_m",
              metres(need.millimetres()),
              "needed_yd",
              toThree(Units.yardsOfMillimetres(need.millimetres())),
              "needed_g",
              grams.map(each -> toThree(each.doubleValue())),
              "needed_oz",
              grams.map(each -> toThree(Units.ouncesOfGrams(each.doubleValue()))),
              "balls",
              need.balls(blanket).stream().boxed().findFirst(),
              "price",
              need.price(blanket).map(Price::amount),
              "currency",
              need.price(blanket).map(Price::currency)));
    }
    return data;
  }

  /** The whole length, rounded up once. */
  long millimetres() {
    return needs.stream().map(ShadeNeed::length).reduce(Ratio::plus).orElseThrow().up();
  }

  Optional<BigDecimal> grams() {
    List<Optional<BigDecimal>> all = wanted().map(each -> each.grams(blanket)).toList();
    return all.stream().allMatch(Optional::isPresent)
        ? all.stream().map(Optional::get).reduce(BigDecimal::add)
        : Optional.empty();
  }

  OptionalLong balls() {
    List<OptionalLong> all = wanted().map(each -> each.balls(blanket)).toList();
    return all.stream().allMatch(OptionalLong::isPresent)
        ? OptionalLong.of(all.stream().mapToLong(OptionalLong::getAsLong).sum())
        : OptionalLong.empty();
  }

  Optional<Price> price() {
    return Amount.sum(wanted().map(each -> each.price(blanket)).toList());
  }

  private Stream<ShadeNeed> wanted() {
    return needs.stream().filter(each -> each.millimetres() > 0);
  }
}
