package lozengy.model.progress;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PileEntries;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.unit.Ratio;

/** Changes what there is of yarns: bought, gone, counted by mistake, and dealt to dye lots. */
final class Stocks {

  /** Shares that are dealt are rounded to so many decimals. */
  private static final int SHARE_DECIMALS = 3;

  private static final int DIGITS = 9;

  private final Set<String> counted;
  private final Set<String> gone = new LinkedHashSet<>();
  private Brief brief;

  /**
   * Of a brief that says how far the pieces have come now.
   *
   * @param counted yarns that were counted just now
   */
  Stocks(Brief brief, Set<String> counted) {
    this.brief = brief;
    this.counted = new LinkedHashSet<>(counted);
  }

  /** The brief with the changes. */
  Brief brief() {
    return brief;
  }

  /**
   * Makes one change. Gone yarns come first, shares of lots last.
   *
   * @throws InputException if there is no such yarn, or the change does not go with it
   */
  void change(Mark.OfYarn wish) {
    if (wish instanceof Mark.Gone) {
      gone(wish);
    } else if (wish instanceof Mark.Bought bought) {
      buy(bought);
    } else if (wish instanceof Mark.Uncounted) {
      uncount(wish);
    }
  }

  private void gone(Mark.OfYarn wish) {
    int index = index(wish);
    tellCounted(wish, "it cannot be gone as well", "Count it, or say that it is gone, not both");
    gone.add(wish.code());
    set(index, yarn(index).withGone(true));
  }

  private void buy(Mark.Bought wish) {
    int index = index(wish);
    Yarn yarn = yarn(index);
    if (gone.contains(wish.code())) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.CONTRADICTS.about(wish.code(), "gone"),
          wish.code() + " is gone by the same mark",
          "Leave one of the two out");
    }
    tellCounted(
        wish,
        "whether that was counted with it cannot be told",
        "Mark one after the other, in the order in which they came about");
    boolean weighs = wish.loose().orElse(null) instanceof YarnAmount.Weight;
    if (yarn.ball().isEmpty() && (wish.balls() > 0 || weighs)) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.FIELD_MISSING.about("ball"),
          wish.code()
              + " has no put-up to turn "
              + (weighs ? "a weight" : "balls")
              + " into metres",
          "Give what was bought in m or yd");
    }
    Optional<YarnAmount> loose =
        wish.loose().map(more -> yarn.left().map(left -> sum(left, more, yarn)).orElse(more));
    Yarn more = yarn.withBalls(yarn.balls() + wish.balls());
    more = loose.isPresent() ? more.withLeft(loose) : more;
    if (yarn.gone()) {
      // what was worked before is settled: only what is bought now is at hand
      double edged = yarn.counted().map(Counted::edgedPercent).orElse(0.0);
      Counted now = Worked.count(Blanket.ofUnjudged(brief), new YarnAmount.Length(0), edged);
      more = more.withGone(false).withCount(Optional.of(now));
      countPile(wish.code());
    }
    Optional<Counted> count =
        more.counted().map(old -> old.withLeft(withBought(old.left(), wish, yarn)));
    set(index, more.withCount(count));
  }

  /** What was counted and bought since. */
  private static YarnAmount withBought(YarnAmount left, Mark.Bought wish, Yarn yarn) {
    return amount(wish, yarn).map(more -> sum(left, more, yarn)).orElse(left);
  }

  /** What was bought in all, each ball by its put-up; empty if that is nothing. */
  static Optional<YarnAmount> amount(Mark.Bought wish, Yarn yarn) {
    if (wish.balls() == 0) {
      return wish.loose();
    }
    BigDecimal balls = BigDecimal.valueOf(wish.balls());
    YarnAmount weight =
        new YarnAmount.Weight(yarn.ball().orElseThrow().grams().multiply(balls).movePointRight(3));
    return Optional.of(wish.loose().map(loose -> sum(weight, loose, yarn)).orElse(weight));
  }

  /**
   * Two amounts as one: of one kind as they are, else by length, to a billionth of a millimetre.
   * Put-ups have few digits, so that whole millimetres come out as they would of the two apart.
   */
  private static YarnAmount sum(YarnAmount first, YarnAmount second, Yarn yarn) {
    if (first instanceof YarnAmount.Weight weight && second instanceof YarnAmount.Weight more) {
      return new YarnAmount.Weight(weight.milligrams().add(more.milligrams()));
    }
    if (first instanceof YarnAmount.Length length && second instanceof YarnAmount.Length more) {
      return new YarnAmount.Length(length.millimetres().add(more.millimetres()));
    }
    Ball ball = yarn.ball().orElse(null);
    Ratio length = first.millimetresIn(ball).plus(second.millimetresIn(ball));
    return new YarnAmount.Length(length.over().divide(length.under(), DIGITS, RoundingMode.FLOOR));
  }

  private void uncount(Mark.OfYarn wish) {
    int index = index(wish);
    tellCounted(wish, "that cannot be a mistake as well", "Leave one of the two out");
    if (yarn(index).counted().isEmpty()) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.NOT_COUNTED.about(wish.code()),
          wish.code() + " was not counted",
          "Name a yarn that was");
    }
    set(index, yarn(index).withCount(Optional.empty()));
    PileEntries pile = new PileEntries(brief.pile());
    pile.uncount(wish.code());
    brief = brief.withPile(pile.list());
  }

  private void countPile(String code) {
    PileEntries pile = new PileEntries(brief.pile());
    pile.count(Set.of(code));
    brief = brief.withPile(pile.list());
  }

  /**
   * Deals the share of a shade to it and its new lot: by what there was of the one in all, worked
   * or at hand, and what there is of the other.
   */
  void deal(String lotCode, String shadeCode) {
    Blanket blanket = Blanket.ofUnjudged(brief);
    int lot = blanket.yarnIndex(lotCode);
    int shade = blanket.yarnIndex(shadeCode);
    double old =
        blanket.yarn(shade).stockMillimetres() + blanket.fixedUse().settledMillimetres(shade);
    double more = blanket.yarn(lot).stockMillimetres();
    if (more > 0) {
      double share = yarn(shade).share();
      double dealt =
          BigDecimal.valueOf(share * more / (old + more))
              .setScale(SHARE_DECIMALS, RoundingMode.HALF_UP)
              .doubleValue();
      set(lot, yarn(lot).withShare(dealt));
      set(
          shade,
          yarn(shade)
              .withShare(
                  BigDecimal.valueOf(share).subtract(BigDecimal.valueOf(dealt)).doubleValue()));
    }
  }

  private void tellCounted(Mark.OfYarn wish, String why, String remedy) {
    if (counted.contains(wish.code())) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.CONTRADICTS.about(wish.code(), "counted"),
          wish.code() + " is counted by the same mark: " + why,
          remedy);
    }
  }

  private int index(Mark.OfYarn wish) {
    return Selections.yarn(wish.place(), brief, wish.code());
  }

  private Yarn yarn(int index) {
    return brief.yarns().get(index);
  }

  private void set(int index, Yarn yarn) {
    List<Yarn> yarns = new ArrayList<>(brief.yarns());
    yarns.set(index, yarn);
    brief = brief.withYarns(yarns);
  }
}
