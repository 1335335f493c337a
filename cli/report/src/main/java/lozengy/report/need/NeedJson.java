package lozengy.report.need;

import static java.math.RoundingMode.HALF_UP;
import static lozengy.report.Decimals.metres;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Diary;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Price;
import lozengy.model.colour.Tone;
import lozengy.model.making.WorkTime;
import lozengy.model.yarn.Purchase;
import lozengy.model.yarn.ToneNeeds;
import lozengy.model.yarn.UncutRounds;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.Json;
import lozengy.report.wording.DoubtWords;
import lozengy.solver.explain.remedy.Buying;

/** Needs of yarn as {@code --json} prints them; lengths in m. */
public final class NeedJson {

  private NeedJson() {}

  public static Map<String, Object> ofYarns(
      Blanket blanket, Sequences sequences, Diary diary, List<YarnNeed> needs) {
    YarnLines lines = new YarnLines(blanket, needs);
    long[] uncut = UncutRounds.savedMillimetres(blanket, sequences);
    return Json.object(
        "title",
        blanket.brief().title(),
        "enough",
        needs.stream().allMatch(each -> each.purchase().isEmpty()),
        "stitches",
        StitchWords.data(blanket),
        "hand",
        HandWords.data(blanket, needs),
        "counted_hand",
        HandWords.countedData(blanket, sequences, diary),
        "time",
        time(WorkTime.of(blanket, sequences)),
        "uncut",
        IntStream.range(0, uncut.length)
            .filter(yarn -> uncut[yarn] > 0)
            .mapToObj(
                yarn ->
                    Json.object("code", blanket.yarn(yarn).code(), "metres", metres(uncut[yarn])))
            .toList(),
        "yarns",
        lines.data(),
        "buy_price",
        lines.price().map(Price::amount),
        "currency",
        lines.price().map(Price::currency));
  }

  /**
   * A brief's needs.
   *
   * @param sought what to buy; empty where nothing at all is at hand, which leaves it unsettled
   */
  public static Map<String, Object> ofTones(
      Blanket blanket, ToneNeeds needs, Optional<Buying> sought) {
    Buying buying = sought.orElse(new Buying.Unsettled());
    boolean settled = !(buying instanceof Buying.Unsettled);
    boolean byTotals = buying instanceof Buying.NoHelp || !settled;
    Optional<Buying.Amounts> buys =
        buying instanceof Buying.Amounts amounts ? Optional.of(amounts) : Optional.empty();
    List<Map<String, Object>> demands =
        needs.demands().stream()
            .map(
                each ->
                    Json.object(
                        "tones", tones(each.tones()),
                        "rounds", each.rounds(),
                        "needed_m", metres(each.leastMillimetres()),
                        "usable_m", metres(each.usableMillimetres())))
            .toList();
    List<Map<String, Object>> shortages =
        needs.shortages().stream()
            .map(
                each ->
                    Json.object(
                        "tones",
                        tones(each.tones()),
                        "needed_m",
                        metres(each.neededMillimetres()),
                        "usable_m",
                        metres(each.usableMillimetres()),
                        "missing_m",
                        metres(each.missingMillimetres()),
                        "buy",
                        purchase(each.purchase())))
            .toList();
    return Json.object(
        "title",
        blanket.brief().title(),
        "doubts",
        DoubtWords.data(blanket),
        "shades",
        ShadeLines.of(blanket).data(),
        "enough",
        byTotals ? needs.enough() : buys.isEmpty(),
        "settled",
        settled,
        "fits_if_bought",
        settled ? Optional.of(!(buying instanceof Buying.NoHelp)) : Optional.empty(),
        "buy",
        buys.map(each -> amounts(blanket, each)),
        "fewest",
        buys.map(Buying.Amounts::fewest),
        "open",
        demands,
        "missing_m",
        metres(needs.missingMillimetres()),
        "shortages",
        shortages,
        "held",
        new YarnLines(blanket, needs.held()).data());
  }

  private static Map<String, Object> time(WorkTime time) {
    Map<String, Object> perPiece = new LinkedHashMap<>();
    time.perPieceMinutes()
        .forEach((kind, minutes) -> perPiece.put(kind.word(), minutes.setScale(1, HALF_UP)));
    return Json.object(
        "left_minutes", time.allMinutes().map(minutes -> minutes.setScale(1, HALF_UP)),
        "joining_minutes", time.joiningMinutes().map(minutes -> minutes.setScale(1, HALF_UP)),
        "edging_minutes", time.edgingMinutes().map(minutes -> minutes.setScale(1, HALF_UP)),
        "per_piece_minutes", perPiece,
        "ends", time.ends());
  }

  private static List<Map<String, Object>> amounts(Blanket blanket, Buying.Amounts buys) {
    return buys.amounts().stream()
        .map(
            each ->
                Json.object(
                    "code",
                    blanket.yarn(each.yarn()).code(),
                    "name",
                    blanket.yarn(each.yarn()).name(),
                    "metres",
                    metres(each.millimetres()),
                    "balls",
                    blanket.yarn(each.yarn()).ball().map(ball -> each.balls())))
        .toList();
  }

  static Map<String, Object> purchase(Purchase purchase) {
    return Json.object(
        "metres", metres(purchase.missingMillimetres()), "balls", boxed(purchase.balls()));
  }

  private static Optional<Long> boxed(OptionalLong number) {
    return number.stream().boxed().findFirst();
  }

  private static List<String> tones(Set<Tone> tones) {
    return tones.stream().map(Tone::word).toList();
  }
}
