package lozengy.report.tables;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.rounded;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Price;
import lozengy.model.brief.Yarn;
import lozengy.model.colour.Lab;
import lozengy.model.colour.Tone;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.YarnLine;

/** The table of yarns. */
final class YarnTable {

  static final String YARNS = "yarns";

  private static final int LAB_DECIMALS = 4;
  private static final int BALL_DECIMALS = 3;

  private YarnTable() {}

  /** A row for every yarn, in the brief's order. */
  static Table of(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    Table table =
        new Table(
            YARNS,
            "Every yarn: its colour, what is at hand, used and left",
            List.of("code"),
            Column.text("code", "Code of the yarn"),
            Column.text("name", "Its full name").optional(),
            Column.text("colour", "sRGB as #rrggbb"),
            Column.number("lightness", "CIE L*, D65"),
            Column.number("a", "CIE a*, D65"),
            Column.number("b", "CIE b*, D65"),
            Column.word(
                "tone",
                "Its tone, stated or by its lightness",
                Arrays.stream(Tone.values()).map(Tone::word).toList()),
            Column.number("share", "How much of it is wanted, against the other yarns"),
            Column.whole("rounds", "How many rounds are in it", 0),
            Column.number(
                "available_m", "The stock as the brief tells it, or as it was counted, in m"),
            Column.number("used_m", "Used, joining and edging included, in m"),
            Column.number("worked_m", "Worked already, in m"),
            Column.number("to_work_m", "Still to be worked, in m"),
            Column.number("at_hand_m", "At hand now, in m"),
            Column.number("left_m", "Left over, in m; below 0 where it runs out"),
            Column.number("ball_g", "Weight of a ball, in g; empty where not stated").optional(),
            Column.number("ball_m", "Length on a ball, in m; empty where not stated").optional(),
            Column.number("used_balls", "Used, in balls; empty without a put-up").optional(),
            Column.number("left_balls", "Left over, in balls; empty without a put-up").optional(),
            Column.number("to_work_g", "Still to be worked, in g; empty without a put-up")
                .optional(),
            Column.number(
                    "buy_m",
                    "To be bought so that it lasts, in m, what is kept back included; empty where"
                        + " none can be")
                .optional(),
            Column.number("buy_balls", "The same in whole balls; empty without a put-up")
                .optional(),
            Column.number("buy_price", "What these balls cost; empty without a price").optional(),
            Column.text("currency", "Of the price").optional());
    long[] rounds = rounds(blanket, arrangement.sequences());
    List<YarnLine> lines = YarnLine.of(arrangement);
    List<YarnNeed> needs = YarnNeed.of(blanket, arrangement.sequences());
    for (int yarn = 0; yarn < lines.size(); yarn++) {
      YarnLine line = lines.get(yarn);
      Yarn of = line.yarn();
      Lab lab = blanket.yarns().lab(yarn);
      table.row(
          of.code(),
          of.name(),
          of.colour().hex(),
          rounded(lab.lightness(), LAB_DECIMALS),
          rounded(lab.a(), LAB_DECIMALS),
          rounded(lab.b(), LAB_DECIMALS),
          line.tone().word(),
          BigDecimal.valueOf(of.share()),
          Long.valueOf(rounds[yarn]),
          metres(line.availableMillimetres()),
          metres(line.usedMillimetres()),
          metres(line.work().workedMillimetres()),
          metres(line.work().toWorkMillimetres()),
          metres(line.work().atHandMillimetres()),
          metres(line.leftMillimetres()),
          of.ball().map(Ball::grams).orElse(null),
          of.ball().map(ball -> ball.millimetres().movePointLeft(3)).orElse(null),
          balls(line.balls(line.usedMillimetres())),
          balls(line.balls(line.leftMillimetres())),
          balls(line.grams(line.work().toWorkMillimetres())),
          missing(needs.get(yarn)),
          bought(needs.get(yarn)),
          price(of, needs.get(yarn)),
          of.price().map(Price::currency).orElse(null));
    }
    return table;
  }

  private static BigDecimal missing(YarnNeed need) {
    return need.lasts()
        ? metres(0)
        : need.purchase().map(each -> metres(each.missingMillimetres())).orElse(null);
  }

  /** Whole balls to be bought; null without a put-up, or where none can be. */
  private static BigDecimal bought(YarnNeed need) {
    if (need.ballsNeeded().isEmpty() || !need.lasts() && need.purchase().isEmpty()) {
      return null;
    }
    return BigDecimal.valueOf(need.purchase().map(each -> each.balls().getAsLong()).orElse(0L));
  }

  private static BigDecimal price(Yarn yarn, YarnNeed need) {
    BigDecimal balls = bought(need);
    return balls == null
        ? null
        : yarn.price().map(each -> each.times(balls.longValueExact()).amount()).orElse(null);
  }

  private static BigDecimal balls(OptionalDouble balls) {
    return balls.isEmpty() ? null : rounded(balls.getAsDouble(), BALL_DECIMALS);
  }

  private static long[] rounds(Blanket blanket, Sequences sequences) {
    long[] rounds = new long[blanket.yarnCount()];
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int yarn : sequences.of(piece)) {
        rounds[yarn]++;
      }
    }
    return rounds;
  }
}
