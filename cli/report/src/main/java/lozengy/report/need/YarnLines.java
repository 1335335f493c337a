package lozengy.report.need;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.toThree;
import static lozengy.report.TextTable.NONE;
import static lozengy.report.TextTable.count;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Ball;
import lozengy.model.brief.HandRange;
import lozengy.model.brief.Price;
import lozengy.model.unit.Units;
import lozengy.model.yarn.Purchase;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.Amount;
import lozengy.report.Figures;
import lozengy.report.TextTable;
import lozengy.report.YarnLine;

/**
 * What an arrangement needs yarn by yarn, in metric and imperial units, and what is to be bought.
 *
 * @param blanket the blanket
 * @param needs its yarns' needs
 */
record YarnLines(Blanket blanket, List<YarnNeed> needs) {

  private static final int WIDEST_NAME = 30;

  /**
   * Two tables: how much is worked and to work of each yarn, and what is there and to be bought.
   */
  List<String> lines() {
    List<String> lines = new ArrayList<>(needed());
    lines.add("");
    lines.addAll(bought());
    return lines;
  }

  private List<String> needed() {
    TextTable table = new TextTable(1, WIDEST_NAME);
    boolean worked = needs.stream().anyMatch(need -> need.work().workedMillimetres() > 0);
    Optional<HandRange> range = HandRange.of(blanket.brief());
    List<String> head = new ArrayList<>(List.of("yarn"));
    if (worked) {
      head.add("worked");
    }
    head.addAll(List.of(worked ? "to work" : "needed", "", "", ""));
    range.ifPresent(hand -> head.add("from, to"));
    table.row(head.toArray(String[]::new));
    for (YarnNeed need : needs) {
      long toWork = need.work().toWorkMillimetres();
      List<String> row = new ArrayList<>(List.of(Words.yarn(blanket, need.yarn())));
      if (worked) {
        row.add(Amount.metres(need.work().workedMillimetres()));
      }
      row.addAll(amounts(toWork, grams(need.yarn(), toWork)));
      range.ifPresent(hand -> row.add(HandWords.range(hand, toWork)));
      table.row(row.toArray(String[]::new));
    }
    long all = needs.stream().mapToLong(need -> need.work().toWorkMillimetres()).sum();
    List<String> row = new ArrayList<>(List.of("in all"));
    if (worked) {
      row.add(
          Amount.metres(needs.stream().mapToLong(need -> need.work().workedMillimetres()).sum()));
    }
    row.addAll(amounts(all, grams()));
    range.ifPresent(hand -> row.add(HandWords.range(hand, all)));
    table.row(row.toArray(String[]::new));
    return table.lines();
  }

  private static List<String> amounts(long millimetres, Optional<BigDecimal> grams) {
    return List.of(
        Amount.metres(millimetres),
        Amount.yards(millimetres),
        grams.map(Amount::grams).orElse(NONE),
        grams.map(Amount::ounces).orElse(NONE));
  }

  /** A row for each yarn; prices where one is stated. */
  private List<String> bought() {
    boolean priced = needs.stream().anyMatch(need -> blanket.yarn(need.yarn()).price().isPresent());
    TextTable table = new TextTable(1, WIDEST_NAME);
    List<String> head = new ArrayList<>(List.of("yarn", "in balls", "at hand", "", "to buy"));
    if (priced) {
      head.add("price");
    }
    table.row(head.toArray(String[]::new));
    for (YarnNeed need : needs) {
      boolean gone = blanket.yarn(need.yarn()).gone();
      long atHand = need.work().atHandMillimetres();
      List<String> row =
          new ArrayList<>(
              List.of(
                  Words.yarn(blanket, need.yarn()),
                  count(need.ballsNeeded()),
                  gone ? YarnLine.GONE : Amount.metres(atHand),
                  gone ? "" : Amount.yards(atHand),
                  need.purchase().map(YarnLines::words).orElse(NONE)));
      if (priced) {
        row.add(price(need).map(Amount::price).orElse(NONE));
      }
      table.row(row.toArray(String[]::new));
    }
    if (priced && needs.stream().filter(need -> need.purchase().isPresent()).count() > 1) {
      table.row("in all", "", "", "", balls(), price().map(Amount::price).orElse(NONE));
    }
    return table.lines();
  }

  private String balls() {
    List<Optional<Purchase>> all = needs.stream().map(YarnNeed::purchase).toList();
    boolean known = all.stream().flatMap(Optional::stream).allMatch(p -> p.balls().isPresent());
    return known
        ? Figures.count(
            all.stream().flatMap(Optional::stream).mapToLong(p -> p.balls().getAsLong()).sum(),
            "ball")
        : NONE;
  }

  /** The needs as data. */
  List<Map<String, Object>> data() {
    return needs.stream().map(this::data).toList();
  }

  private Map<String, Object> data(YarnNeed need) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("code", blanket.yarn(need.yarn()).code());
    data.put("name", blanket.yarn(need.yarn()).name());
    if (blanket.yarn(need.yarn()).gone()) {
      data.put("gone", true);
    }
    data.put("needed_m", metres(need.neededMillimetres()));
    data.put("worked_m", metres(need.work().workedMillimetres()));
    long toWork = need.work().toWorkMillimetres();
    data.put("to_work_m", metres(toWork));
    data.put("to_work_yd", toThree(Units.yardsOfMillimetres(toWork)));
    grams(need.yarn(), toWork)
        .map(BigDecimal::doubleValue)
        .ifPresent(
            grams -> {
              data.put("to_work_g", toThree(grams));
              data.put("to_work_oz", toThree(Units.ouncesOfGrams(grams)));
            });
    data.put("at_hand_m", metres(need.work().atHandMillimetres()));
    need.ballsNeeded().ifPresent(balls -> data.put("balls", balls));
    data.put("available_m", metres(need.stockMillimetres()));
    need.purchase()
        .ifPresent(
            purchase -> {
              Map<String, Object> buy = new LinkedHashMap<>(NeedJson.purchase(purchase));
              price(need)
                  .ifPresent(
                      price -> {
                        buy.put("price", price.amount());
                        buy.put("currency", price.currency());
                      });
              data.put("buy", buy);
            });
    return data;
  }

  /** What all that is to be bought costs; empty where a price is missing or nothing is to buy. */
  Optional<Price> price() {
    return Amount.sum(
        needs.stream().filter(n -> n.purchase().isPresent()).map(this::price).toList());
  }

  private Optional<Price> price(YarnNeed need) {
    OptionalLong balls = need.purchase().map(Purchase::balls).orElse(OptionalLong.empty());
    return balls.isPresent()
        ? blanket.yarn(need.yarn()).price().map(each -> each.times(balls.getAsLong()))
        : Optional.empty();
  }

  private Optional<BigDecimal> grams(int yarn, long millimetres) {
    Optional<Ball> ball = blanket.yarn(yarn).ball();
    return ball.map(each -> each.gramsOf(millimetres));
  }

  private Optional<BigDecimal> grams() {
    BigDecimal sum = BigDecimal.ZERO;
    for (YarnNeed need : needs) {
      long toWork = need.work().toWorkMillimetres();
      Optional<BigDecimal> each =
          toWork == 0 ? Optional.of(BigDecimal.ZERO) : grams(need.yarn(), toWork);
      if (each.isEmpty()) {
        return each;
      }
      sum = sum.add(each.get());
    }
    return Optional.of(sum);
  }

  private static String words(Purchase purchase) {
    String metres = Amount.metres(purchase.toldMillimetres());
    return purchase.balls().isEmpty()
        ? metres
        : metres + " = " + Figures.count(purchase.balls().getAsLong(), "ball");
  }
}
