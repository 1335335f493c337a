package lozengy.report.pack;

import static lozengy.report.TextTable.NONE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.ForSale;
import lozengy.model.brief.Price;
import lozengy.report.Amount;
import lozengy.report.Figures;
import lozengy.report.PlainText;
import lozengy.report.TextTable;
import lozengy.report.solve.SolveText;
import lozengy.solver.pack.PackGoal;
import lozengy.solver.pack.Packing;
import lozengy.solver.pack.Packing.Failed;
import lozengy.solver.pack.Packing.Packed;
import lozengy.solver.pack.Packing.Proof;
import lozengy.solver.pack.Packing.Shade;

/** Tells of a pack in lines for a person. */
public final class PackText {

  private static final int WIDEST_NAME = 30;

  private PackText() {}

  /**
   * How the search for a pack has ended.
   *
   * @param blanket the brief
   * @param goal what the pack was to have least of
   */
  public static List<String> lines(Blanket blanket, PackGoal goal, Packing packing) {
    if (packing instanceof Packed packed) {
      return packed(blanket, goal, packed);
    }
    if (packing instanceof Packing.Impossible impossible) {
      return impossible(impossible);
    }
    if (packing instanceof Packing.OutOfReach beyond) {
      return List.of(
          "No pack was found: plenty of yarn gives "
              + score(beyond.reached())
              + " points, and "
              + score(beyond.asked())
              + " are asked for.",
          beyond.proved()
              ? "No arrangement has more than " + score(beyond.bound()) + ", proved."
              : "More may be within reach, for "
                  + score(beyond.bound())
                  + " are not ruled out: try more --moves, or ask for less.");
    }
    return List.of(
        "No pack was found within the limits, and nothing is proved. More --moves, a wider --within"
            + " or a wider --bend may find one.");
  }

  private static List<String> impossible(Packing.Impossible impossible) {
    List<String> lines = new ArrayList<>();
    lines.add(
        impossible.byBend()
            ? "No pack does while shares bend no further: with plenty of yarn something fits, but not"
                + " within these limits. A wider --bend helps."
            : "No pack does, however many balls it holds.");
    SolveText.notFound(impossible.blanket(), impossible.why()).lines().forEach(lines::add);
    return lines;
  }

  private static List<String> packed(Blanket blanket, PackGoal goal, Packed packed) {
    List<String> lines = new ArrayList<>();
    lines.add(
        PlainText.oneLine(blanket.brief().title())
            + ": this blanket takes "
            + Figures.count(packed.balls(), "ball"));
    lines.add("");
    lines.addAll(table(blanket, packed));
    lines.add("");
    lines.add(reached(packed));
    lines.addAll(included(packed.arrangement().blanket()));
    lines.add(verdict(blanket, goal, packed.proof()));
    return lines;
  }

  /** What an arrangement from a pack reaches. */
  static String reached(Packed packed) {
    return "An arrangement from exactly this was found: "
        + score(packed.score())
        + " points, leeway aside ("
        + score(packed.wanted())
        + " wanted); plenty of yarn gives "
        + score(packed.plenty())
        + ".";
  }

  /** What beside the arrangement's use is in a pack. */
  static List<String> included(Blanket blanket) {
    List<String> lines = new ArrayList<>();
    double keepBack = blanket.brief().rules().keepBackPercent();
    if (keepBack > 0) {
      lines.add(
          Words.number(keepBack) + " % of each yarn is kept back; it is among what is left over.");
    }
    double looser =
        blanket.brief().forSale().map(ForSale::looserPercent).orElseThrow().doubleValue();
    if (looser > 0) {
      lines.add(
          "It suffices for hands that take up to "
              + Words.number(looser)
              + " % more than is reckoned.");
    }
    return lines;
  }

  private static List<String> table(Blanket blanket, Packed packed) {
    boolean priced = price(blanket, packed).isPresent();
    TextTable table = new TextTable(1, WIDEST_NAME);
    row(table, priced, "yarn", "balls", "weight", "used", "by its share", "left over", "price");
    for (Shade shade : packed.shades()) {
      if (shade.balls() > 0 || shade.sharedMillimetres() > 0) {
        row(
            table,
            priced,
            Words.yarn(blanket, shade.yarn()),
            Integer.toString(shade.balls()),
            Amount.grams(grams(blanket, shade)),
            Amount.metres(shade.usedMillimetres()),
            Amount.metres(shade.sharedMillimetres()),
            Amount.metres(shade.leftMillimetres()),
            price(blanket, shade).map(Amount::price).orElse(NONE));
      }
    }
    row(
        table,
        priced,
        "in all",
        Integer.toString(packed.balls()),
        Amount.grams(grams(blanket, packed)),
        Amount.metres(packed.shades().stream().mapToLong(Shade::usedMillimetres).sum()),
        "",
        Amount.metres(packed.shades().stream().mapToLong(Shade::leftMillimetres).sum()),
        price(blanket, packed).map(Amount::price).orElse(NONE));
    return table.lines();
  }

  private static void row(TextTable table, boolean priced, String... cells) {
    table.row(priced ? cells : Arrays.copyOf(cells, cells.length - 1));
  }

  /** What a shade's balls weigh, in g. */
  static BigDecimal grams(Blanket blanket, Shade shade) {
    return blanket
        .yarn(shade.yarn())
        .ball()
        .map(ball -> ball.grams().multiply(BigDecimal.valueOf(shade.balls())))
        .orElse(BigDecimal.ZERO);
  }

  /** What all balls weigh, in g. */
  static BigDecimal grams(Blanket blanket, Packed packed) {
    return packed.shades().stream()
        .map(shade -> grams(blanket, shade))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** What a shade's balls cost, where a price is stated. */
  static Optional<Price> price(Blanket blanket, Shade shade) {
    return blanket.yarn(shade.yarn()).price().map(each -> each.times(shade.balls()));
  }

  /** What all balls cost, where all that are packed have a price. */
  static Optional<Price> price(Blanket blanket, Packed packed) {
    return Amount.sum(
        packed.shades().stream()
            .filter(shade -> shade.balls() > 0)
            .map(shade -> price(blanket, shade))
            .toList());
  }

  /** Whether less would do. */
  static String verdict(Blanket blanket, PackGoal goal, Proof packed) {
    String smaller = smaller(goal);
    if (packed.least()) {
      return "No " + smaller + " pack does, proved.";
    }
    long proved = packed.failed().stream().filter(Failed::proved).count();
    long open = packed.failed().size() - proved;
    String floor =
        switch (goal) {
          case BALLS -> Figures.count(packed.floor(), "ball");
          case PRICE -> Amount.price(currency(blanket, packed.floor()));
          case WEIGHT -> Amount.grams(BigDecimal.valueOf(packed.floor(), 3));
        };
    return "Whether a "
        + smaller
        + " pack does is not proved: totals alone ask for "
        + floor
        + " at the least; "
        + Figures.count(open, "pack")
        + " tried in between fell short of what is wanted"
        + (proved > 0 ? ", " + proved + " more provably do" : "")
        + ".";
  }

  private static Price currency(Blanket blanket, long tenThousandths) {
    return blanket.brief().yarns().stream()
        .flatMap(yarn -> yarn.price().stream())
        .findFirst()
        .map(each -> new Price(BigDecimal.valueOf(tenThousandths, 4), each.currency()))
        .orElseThrow();
  }

  private static String smaller(PackGoal goal) {
    return switch (goal) {
      case BALLS -> "smaller";
      case PRICE -> "cheaper";
      case WEIGHT -> "lighter";
    };
  }

  private static String score(double points) {
    return Figures.fixed(points, 1);
  }
}
