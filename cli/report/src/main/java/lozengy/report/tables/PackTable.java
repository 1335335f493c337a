package lozengy.report.tables;

import static lozengy.report.Decimals.metres;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Yarn;
import lozengy.report.pack.SizePack;
import lozengy.solver.pack.Packing.Packed;
import lozengy.solver.pack.Packing.Shade;

/** A pack as CSV. */
public final class PackTable {

  private PackTable() {}

  /** A row for every shade, in the brief's order. */
  public static String csv(Blanket blanket, Packed packed) {
    Table table =
        new Table("pack", "What the pack holds of every shade", List.of("code"), columns());
    packed.shades().forEach(shade -> table.row(cells(blanket, shade)));
    return Csv.text(table);
  }

  /** A row for every shade of every size whose pack was found, size by size. */
  public static String csv(List<SizePack> sizes) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("size", "Name of the size")));
    columns.addAll(List.of(columns()));
    Table table =
        new Table(
            "packs",
            "What the pack of every size holds of every shade",
            List.of("size", "code"),
            columns.toArray(Column[]::new));
    for (SizePack size : sizes) {
      for (Shade shade : size.packed().map(Packed::shades).orElse(List.of())) {
        List<Object> row = new ArrayList<>(List.of(size.name()));
        row.addAll(Arrays.asList(cells(size.blanket(), shade)));
        table.row(row.toArray());
      }
    }
    return Csv.text(table);
  }

  private static Column[] columns() {
    return new Column[] {
      Column.text("code", "Code of the yarn"),
      Column.text("name", "Its full name").optional(),
      Column.whole("balls", "Whole balls", 0),
      Column.number("grams", "Weight of the balls, in g"),
      Column.number("price", "What they cost; empty where not stated").optional(),
      Column.text("currency", "Currency of the price").optional(),
      Column.number("share_m", "What the shade takes by its share, in m"),
      Column.number("used_m", "What the arrangement takes of it, in m"),
      Column.number("left_m", "What is left over then, in m")
    };
  }

  private static Object[] cells(Blanket blanket, Shade shade) {
    Yarn yarn = blanket.yarn(shade.yarn());
    BigDecimal balls = BigDecimal.valueOf(shade.balls());
    return new Object[] {
      yarn.code(),
      yarn.name(),
      Long.valueOf(shade.balls()),
      yarn.ball().map(ball -> ball.grams().multiply(balls)).orElse(BigDecimal.ZERO),
      yarn.price().map(each -> each.times(shade.balls()).amount()).orElse(null),
      yarn.price().map(each -> each.currency()).orElse(null),
      metres(shade.sharedMillimetres()),
      metres(shade.usedMillimetres()),
      metres(shade.leftMillimetres())
    };
  }
}
