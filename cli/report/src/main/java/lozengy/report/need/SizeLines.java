package lozengy.report.need;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.toThree;
import static lozengy.report.TextTable.NONE;
import static lozengy.report.TextTable.count;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Price;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Measures;
import lozengy.model.layout.PieceKind;
import lozengy.model.making.WorkTime;
import lozengy.model.yarn.ShadeNeed;
import lozengy.report.Amount;
import lozengy.report.Figures;
import lozengy.report.Json;
import lozengy.report.TextTable;

/** What one motif set and palette takes in several sizes, by the shares that are asked for. */
public final class SizeLines {

  private static final int WIDEST_NAME = 30;
  private static final int MINUTES_OF_HOUR = 60;

  /**
   * A size.
   *
   * @param name what it is called
   * @param blanket the brief in that size
   * @param shades what it takes by shade
   * @param measures its finished measures
   * @param minutes minutes that it takes, where the brief tells of all rounds
   */
  private record Line(
      String name,
      Blanket blanket,
      ShadeLines shades,
      Measures measures,
      Optional<BigDecimal> minutes) {}

  private final List<Line> sizes;

  private SizeLines(List<Line> sizes) {
    this.sizes = sizes;
  }

  /**
   * The sizes, at least one.
   *
   * @param blankets the briefs in their sizes, all of one palette, by what the sizes are called
   */
  public static SizeLines of(Map<String, Blanket> blankets) {
    List<Line> lines = new ArrayList<>();
    blankets.forEach(
        (name, blanket) ->
            lines.add(
                new Line(
                    name,
                    blanket,
                    new ShadeLines(blanket, ShadeNeed.of(blanket)),
                    Measures.of(
                        blanket.layout(), blanket.motif(PieceKind.SQUARE).edgeCm().orElseThrow()),
                    minutes(WorkTime.of(blanket, blanket.open())))));
    return new SizeLines(lines);
  }

  /** With joining and edging where the brief tells how long they take. */
  private static Optional<BigDecimal> minutes(WorkTime time) {
    return time.roundsMinutes()
        .map(
            rounds ->
                rounds
                    .add(time.joiningMinutes().orElse(BigDecimal.ZERO))
                    .add(time.edgingMinutes().orElse(BigDecimal.ZERO)));
  }

  /** A row for each size, then the balls of each shade in each size. */
  public List<String> lines() {
    boolean priced = sizes.stream().anyMatch(each -> each.shades().price().isPresent());
    boolean timed = sizes.stream().anyMatch(each -> each.minutes().isPresent());
    TextTable table = new TextTable(1, WIDEST_NAME);
    List<String> heads =
        new ArrayList<>(
            List.of("size", "across x down", "pieces", "cm", "yarn", "weight", "balls"));
    if (timed) {
      heads.add("hours");
    }
    if (priced) {
      heads.add("price");
    }
    table.row(heads.toArray(String[]::new));
    sizes.forEach(each -> table.row(row(each, timed, priced).toArray(String[]::new)));
    List<String> lines = new ArrayList<>(table.lines());
    lines.add("");
    lines.addAll(shades());
    lines.add("");
    lines.add(
        "Balls by the share of each shade, what is kept back included; finished sizes without"
            + " edging"
            + (timed ? "; hours with joining and edging where the brief tells of them." : "."));
    return lines;
  }

  private static List<String> row(Line line, boolean timed, boolean priced) {
    LayoutSize size = line.blanket().layout().size();
    List<String> cells =
        new ArrayList<>(
            List.of(
                line.name(),
                size.across() + " x " + size.down(),
                Long.toString(size.pieces()),
                Figures.fixed(line.measures().widthCm(), 1)
                    + " x "
                    + Figures.fixed(line.measures().heightCm(), 1),
                Amount.metres(line.shades().millimetres()),
                line.shades().grams().map(Amount::grams).orElse(NONE),
                count(line.shades().balls())));
    if (timed) {
      cells.add(
          line.minutes()
              .map(
                  minutes ->
                      minutes
                          .divide(BigDecimal.valueOf(MINUTES_OF_HOUR), 1, RoundingMode.HALF_UP)
                          .toPlainString())
              .orElse(NONE));
    }
    if (priced) {
      cells.add(line.shades().price().map(Amount::price).orElse(NONE));
    }
    return cells;
  }

  private List<String> shades() {
    TextTable table = new TextTable(1, WIDEST_NAME);
    List<String> heads = new ArrayList<>(List.of("balls"));
    sizes.forEach(each -> heads.add(each.name()));
    table.row(heads.toArray(String[]::new));
    Blanket any = sizes.get(0).blanket();
    for (int yarn = 0; yarn < any.yarnCount(); yarn++) {
      List<String> cells = new ArrayList<>(List.of(Words.yarn(any, yarn)));
      for (Line each : sizes) {
        cells.add(count(each.shades().needs().get(yarn).balls(each.blanket())));
      }
      table.row(cells.toArray(String[]::new));
    }
    return table.lines();
  }

  /** The sizes for programs; lengths of yarn in m. */
  public List<Map<String, Object>> data() {
    return sizes.stream().map(SizeLines::data).toList();
  }

  private static Map<String, Object> data(Line line) {
    LayoutSize size = line.blanket().layout().size();
    return Json.object(
        "size",
        line.name(),
        "across",
        size.across(),
        "down",
        size.down(),
        "squares",
        size.squares(),
        "pieces",
        size.pieces(),
        "width_cm",
        toThree(line.measures().widthCm()),
        "height_cm",
        toThree(line.measures().heightCm()),
        "needed_m",
        metres(line.shades().millimetres()),
        "needed_g",
        line.shades().grams().map(each -> toThree(each.doubleValue())),
        "balls",
        line.shades().balls().stream().boxed().findFirst(),
        "price",
        line.shades().price().map(Price::amount),
        "currency",
        line.shades().price().map(Price::currency),
        "minutes",
        line.minutes().map(each -> toThree(each.doubleValue())),
        "yarns",
        line.shades().data());
  }
}
