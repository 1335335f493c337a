package lozengy.report.pack;

import static lozengy.report.TextTable.NONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.report.Amount;
import lozengy.report.Figures;
import lozengy.report.PlainText;
import lozengy.report.TextTable;
import lozengy.solver.pack.PackGoal;
import lozengy.solver.pack.Packing.Packed;
import lozengy.solver.pack.Packing.Shade;

/** Tells of the packs of several sizes in lines for a person. */
public final class SizePacksText {

  private static final int WIDEST_NAME = 30;

  private SizePacksText() {}

  /**
   * A table of shades by sizes, and what is known of each pack.
   *
   * @param sizes the sizes, all of one palette
   * @param shared whether one pack serves whichever of them is worked
   * @param goal what packs were to have least of
   */
  public static List<String> lines(List<SizePack> sizes, boolean shared, PackGoal goal) {
    List<String> lines = new ArrayList<>();
    if (sizes.stream().anyMatch(size -> size.packed().isPresent())) {
      lines.add(headline(sizes, shared));
      lines.add("");
      lines.addAll(table(sizes));
      lines.add("");
    }
    for (SizePack size : sizes) {
      size.packed()
          .ifPresentOrElse(
              packed ->
                  lines.add(
                      size.name()
                          + ": "
                          + PackText.reached(packed)
                          + (shared
                              ? ""
                              : " " + PackText.verdict(size.blanket(), goal, packed.proof()))),
              () ->
                  PackText.lines(size.blanket(), goal, size.packing())
                      .forEach(line -> lines.add(size.name() + ": " + line)));
    }
    if (shared) {
      sizes
          .get(0)
          .packed()
          .ifPresent(
              packed ->
                  lines.add(
                      "For all sizes: "
                          + PackText.verdict(sizes.get(0).blanket(), goal, packed.proof())));
    }
    sizes.stream()
        .flatMap(size -> size.packed().stream())
        .findFirst()
        .ifPresent(packed -> lines.addAll(PackText.included(packed.arrangement().blanket())));
    return lines;
  }

  private static String headline(List<SizePack> sizes, boolean shared) {
    String title = PlainText.oneLine(sizes.get(0).blanket().brief().title());
    return shared
        ? title
            + ": one pack of "
            + Figures.count(sizes.get(0).packed().orElseThrow().balls(), "ball")
            + ", from which each size can be worked by itself"
        : title + ": a pack for each size";
  }

  /** Of each size two columns: balls, and what is left over. */
  private static List<String> table(List<SizePack> sizes) {
    TextTable table = new TextTable(1, WIDEST_NAME);
    row(table, "", sizes, size -> List.of(size.name(), "left over"));
    Blanket any = sizes.get(0).blanket();
    IntStream.range(0, any.yarnCount())
        .filter(yarn -> sizes.stream().anyMatch(size -> balls(size, yarn) > 0))
        .forEach(
            yarn ->
                row(
                    table,
                    Words.yarn(any, yarn),
                    sizes,
                    size ->
                        size.packed()
                            .map(packed -> cells(packed.shades().get(yarn)))
                            .orElse(List.of(NONE, NONE))));
    row(
        table,
        "in all",
        sizes,
        size ->
            of(
                size,
                packed ->
                    List.of(
                        Integer.toString(packed.balls()),
                        Amount.metres(
                            packed.shades().stream().mapToLong(Shade::leftMillimetres).sum()))));
    row(
        table,
        "weight",
        sizes,
        size ->
            of(size, packed -> List.of(Amount.grams(PackText.grams(size.blanket(), packed)), "")));
    if (sizes.stream().anyMatch(size -> price(size).isPresent())) {
      row(table, "price", sizes, size -> List.of(price(size).orElse(NONE), ""));
    }
    return table.lines();
  }

  private static int balls(SizePack size, int yarn) {
    return size.packed().map(packed -> packed.shades().get(yarn).balls()).orElse(0);
  }

  private static List<String> cells(Shade shade) {
    return List.of(Integer.toString(shade.balls()), Amount.metres(shade.leftMillimetres()));
  }

  private static List<String> of(SizePack size, Function<Packed, List<String>> cells) {
    return size.packed().map(cells).orElse(List.of(NONE, ""));
  }

  private static Optional<String> price(SizePack size) {
    return size.packed()
        .flatMap(packed -> PackText.price(size.blanket(), packed))
        .map(Amount::price);
  }

  private static void row(
      TextTable table, String head, List<SizePack> sizes, Function<SizePack, List<String>> cells) {
    List<String> row = new ArrayList<>(List.of(head));
    sizes.forEach(size -> row.addAll(cells.apply(size)));
    table.row(row.toArray(String[]::new));
  }
}
