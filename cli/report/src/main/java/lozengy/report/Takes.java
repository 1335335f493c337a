package lozengy.report;

import static lozengy.report.TextTable.NONE;
import static lozengy.report.TextTable.count;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Ball;
import lozengy.model.brief.ForSale;
import lozengy.model.brief.Price;
import lozengy.model.yarn.ShadeTaken;

/**
 * What a blanket that is for sale takes, told to whoever begins with nothing.
 *
 * @param headline what it takes in all
 * @param heads heads of the columns beside the shades
 * @param shades the shades that it takes
 * @param all what all shades come to, in the same columns
 * @param notes what is to be known beside
 */
public record Takes(
    String headline, List<String> heads, List<Shade> shades, List<String> all, List<String> notes) {

  /**
   * A shade.
   *
   * @param yarn its index, from 0
   * @param cells its columns
   */
  public record Shade(int yarn, List<String> cells) {}

  /** What an arrangement takes; empty where its plan is not for sale. */
  public static Optional<Takes> of(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    return blanket
        .brief()
        .forSale()
        .map(sale -> of(arrangement, ShadeTaken.of(blanket, arrangement.sequences()), sale));
  }

  private static Takes of(Arrangement arrangement, List<ShadeTaken> taken, ForSale sale) {
    Blanket blanket = arrangement.blanket();
    List<ShadeTaken> wanted = taken.stream().filter(each -> each.millimetres() > 0).toList();
    boolean priced =
        wanted.stream().anyMatch(each -> blanket.yarn(each.yarn()).price().isPresent());
    List<String> heads =
        new ArrayList<>(List.of("Balls", "Each", "Weight", "Takes", "Which weighs"));
    if (priced) {
      heads.add("Price");
    }
    List<Shade> shades =
        wanted.stream().map(each -> new Shade(each.yarn(), cells(blanket, each, priced))).toList();
    OptionalLong balls = balls(wanted);
    long millimetres = wanted.stream().mapToLong(ShadeTaken::millimetres).sum();
    List<String> all =
        new ArrayList<>(
            List.of(
                count(balls),
                "",
                grams(wanted.stream().map(each -> each.ballGrams(blanket)).toList()),
                Amount.metres(millimetres),
                grams(wanted.stream().map(each -> each.grams(blanket)).toList())));
    if (priced) {
      all.add(
          Amount.sum(wanted.stream().map(each -> price(blanket, each)).toList())
              .map(Amount::price)
              .orElse(NONE));
    }
    String headline =
        "This blanket takes "
            + (balls.isPresent() ? Figures.count(balls.getAsLong(), "ball") + " of " : "")
            + Figures.count(wanted.size(), "shade")
            + ": "
            + Amount.metres(millimetres)
            + " ("
            + Amount.yards(millimetres)
            + ") of yarn.";
    return new Takes(headline, heads, shades, all, notes(arrangement, sale));
  }

  private static List<String> cells(Blanket blanket, ShadeTaken taken, boolean priced) {
    Optional<Ball> ball = blanket.yarn(taken.yarn()).ball();
    List<String> cells =
        new ArrayList<>(
            List.of(
                count(taken.balls()),
                ball.map(Takes::putUp).orElse(NONE),
                taken.ballGrams(blanket).map(Amount::grams).orElse(NONE),
                Amount.metres(taken.millimetres()),
                taken.grams(blanket).map(Amount::grams).orElse(NONE)));
    if (priced) {
      cells.add(price(blanket, taken).map(Amount::price).orElse(NONE));
    }
    return cells;
  }

  private static String putUp(Ball ball) {
    return Figures.shortest(ball.grams().doubleValue(), 1)
        + " g, "
        + Figures.shortest(ball.millimetres().movePointLeft(3).doubleValue(), 1)
        + " m";
  }

  private static Optional<Price> price(Blanket blanket, ShadeTaken taken) {
    return blanket.yarn(taken.yarn()).price().map(each -> each.times(taken.balls().orElseThrow()));
  }

  private static OptionalLong balls(List<ShadeTaken> taken) {
    return taken.stream().allMatch(each -> each.balls().isPresent())
        ? OptionalLong.of(taken.stream().mapToLong(each -> each.balls().getAsLong()).sum())
        : OptionalLong.empty();
  }

  private static String grams(List<Optional<BigDecimal>> all) {
    return all.stream().allMatch(Optional::isPresent)
        ? Amount.grams(
            all.stream().map(Optional::get).reduce(BigDecimal::add).orElse(BigDecimal.ZERO))
        : NONE;
  }

  private static List<String> notes(Arrangement arrangement, ForSale sale) {
    Blanket blanket = arrangement.blanket();
    List<String> notes = new ArrayList<>();
    List<String> uses = BlanketWords.uses(arrangement);
    if (!uses.isEmpty()) {
      notes.add("The yarn includes " + String.join(" and ", uses) + ".");
    }
    double keepBack = blanket.brief().rules().keepBackPercent();
    if (keepBack > 0) {
      notes.add("The balls leave at least " + Words.number(keepBack) + " % of each shade over.");
    }
    if (sale.looserPercent().signum() > 0) {
      String looser = Words.number(sale.looserPercent().doubleValue());
      notes.add("They suffice for a hand that takes up to " + looser + " % more than this.");
    }
    return notes;
  }
}
