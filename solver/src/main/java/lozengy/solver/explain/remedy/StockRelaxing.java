package lozengy.solver.explain.remedy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.BriefLine;
import lozengy.model.input.BriefPath;
import lozengy.solver.explain.argument.Shortfall;

/** Buys whole balls; of a yarn whose put-up is not stated, lengths of ten metres. */
final class StockRelaxing implements Relaxing {

  static final int BALL_UPSET = 2;

  private static final int MOST_BALLS = 40;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    if (!line.path().inItem("yarns") || blanket.yarn(Relaxing.index(line)).gone()) {
      return List.of();
    }
    int yarn = Relaxing.index(line);
    List<Move> rungs = new ArrayList<>();
    for (int balls = 1; balls <= MOST_BALLS; balls++) {
      rungs.add(move(blanket, yarn, balls));
    }
    return List.of(new Ladder(rungs));
  }

  /** Buys so many balls of a yarn. */
  static Move move(Blanket blanket, int yarn, int balls) {
    return new Move(
        new Remedy.Step(
            change(blanket, yarn, balls),
            path(blanket, yarn),
            Optional.of(value(blanket, yarn, balls))),
        BALL_UPSET * balls,
        brief -> bought(brief, yarn, balls));
  }

  /** A blanket for which so many balls of each yarn were bought. */
  static Blanket with(Blanket blanket, int[] balls) {
    Brief brief = blanket.brief();
    for (int yarn = 0; yarn < balls.length; yarn++) {
      brief = balls[yarn] > 0 ? bought(brief, yarn, balls[yarn]) : brief;
    }
    return Blanket.ofUnjudged(brief);
  }

  private static Relaxation change(Blanket blanket, int yarn, int balls) {
    return blanket.yarn(yarn).ball().isPresent()
        ? new Relaxation.BuyBalls(yarn, balls)
        : new Relaxation.BuyLength(yarn, balls * Shortfall.LENGTH_MILLIMETRES);
  }

  private static String metres(long millimetres) {
    return BigDecimal.valueOf(millimetres, 3).stripTrailingZeros().toPlainString() + " m";
  }

  private static BriefPath path(Blanket blanket, int yarn) {
    Yarn each = blanket.yarn(yarn);
    String field = each.ball().isPresent() ? "balls" : "left";
    BriefPath path = BriefPath.of("yarns").item(yarn);
    return each.counted().isPresent() ? path.field("counted").field("left") : path.field(field);
  }

  private static String value(Blanket blanket, int yarn, int balls) {
    Yarn each = blanket.yarn(yarn);
    if (each.counted().isPresent() || each.ball().isEmpty()) {
      return metres(each.stockMillimetres() + balls * Shortfall.ballMillimetres(each));
    }
    return BigDecimal.valueOf(each.balls() + balls).stripTrailingZeros().toPlainString();
  }

  private static Brief bought(Brief brief, int yarn, int balls) {
    List<Yarn> yarns = new ArrayList<>(brief.yarns());
    Yarn old = yarns.get(yarn);
    long more = balls * Shortfall.ballMillimetres(old);
    if (old.counted().isPresent()) {
      Counted counted = old.counted().get();
      YarnAmount left = new YarnAmount.Length(old.stockMillimetres() + more);
      yarns.set(yarn, old.withCount(Optional.of(counted.withLeft(left))));
    } else {
      boolean inBalls = old.ball().isPresent();
      Optional<YarnAmount> left =
          inBalls ? old.left() : Optional.of(new YarnAmount.Length(old.stockMillimetres() + more));
      yarns.set(yarn, old.withLeft(left).withBalls(old.balls() + (inBalls ? balls : 0)));
    }
    return brief.withYarns(yarns);
  }
}
