package lozengy.report.need;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Diary;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Brief;
import lozengy.model.brief.HandRange;
import lozengy.model.progress.LearnedHand;
import lozengy.model.yarn.Looseness;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.Amount;
import lozengy.report.Json;

/** Tells how much hands may differ before a yarn runs out, and what counts tell of the hand. */
public final class HandWords {

  private static final double AS_RECKONED = 100;

  private HandWords() {}

  /** How much looser the hand may be, and whether it is by the samples. */
  static List<String> lines(Blanket blanket, List<YarnNeed> needs) {
    List<String> lines = new ArrayList<>();
    Optional<Looseness> tightest = Looseness.tightest(blanket, needs).filter(t -> t.percent() >= 0);
    tightest.ifPresent(
        yarn ->
            lines.add(
                "Your hand may be "
                    + percent(floored(yarn.percent()))
                    + " looser before anything runs out: tightest is "
                    + Words.yarn(blanket, yarn.yarn())
                    + "."));
    HandRange.of(blanket.brief())
        .ifPresent(
            hand ->
                lines.add(
                    (hand.stated() ? "As stated, hands differ" : "By your samples, hands differ")
                        + " from "
                        + signed(hand.lowPercent())
                        + " to "
                        + signed(hand.highPercent())
                        + (tightest.isPresent()
                            ? tightest.get().percent() >= hand.highPercent()
                                ? ": every yarn lasts through that."
                                : ": at the most, yarn runs out."
                            : ".")));
    return lines;
  }

  /**
   * What the counts in a diary tell of the hand, and what that does to the rest; nothing where it
   * is reckoned with already.
   */
  public static List<String> counted(Blanket blanket, Sequences sequences, Diary diary) {
    double now = blanket.brief().stitching().handPercent().doubleValue();
    List<String> lines = new ArrayList<>();
    if (now != AS_RECKONED) {
      lines.add("Reckoned in your hand, which " + takes(now) + ".");
    }
    Optional<LearnedHand> learned =
        LearnedHand.of(diary).filter(hand -> hand.percent().doubleValue() != now);
    if (learned.isPresent()) {
      lines.addAll(told(blanket, sequences, learned.get()));
    }
    return lines;
  }

  private static List<String> told(Blanket blanket, Sequences sequences, LearnedHand learned) {
    List<String> lines = new ArrayList<>();
    for (LearnedHand.Told count : learned.counts()) {
      lines.add(
          "Of "
              + name(blanket, count.code())
              + " "
              + Amount.metres(count.goneMillimetres())
              + " were gone when it was counted, and "
              + Amount.metres(count.reckonedMillimetres())
              + " were reckoned for what was worked.");
    }
    if (!learned.contradicting().isEmpty() || !learned.possible()) {
      lines.add(
          (learned.possible() ? "These counts contradict each other" : "That can hardly be")
              + ": is all marked that is worked, and all that was bought?");
      return lines;
    }
    double percent = learned.percent().doubleValue();
    lines.add(
        "By that your hand " + takes(percent) + ". " + effect(inHand(blanket, sequences, learned)));
    lines.add("'lozengy mark --hand counted' reckons the rest so.");
    return lines;
  }

  /** A yarn by its code, which another brief may have dropped. */
  private static String name(Blanket blanket, String code) {
    int yarn = blanket.yarnIndex(code);
    return yarn < 0 ? code : Words.yarn(blanket, yarn);
  }

  private static String takes(double percent) {
    double more = percent - AS_RECKONED;
    return more == 0
        ? "takes what the brief says"
        : "takes " + signed(more) + " than the brief says";
  }

  /** The same arrangement in the hand that counts tell of. */
  private static Arranged inHand(Blanket now, Sequences sequences, LearnedHand learned) {
    Brief brief = now.brief();
    Blanket blanket =
        Blanket.ofUnjudged(brief.withStitching(brief.stitching().withHand(learned.percent())));
    return new Arranged(blanket, YarnNeed.of(blanket, sequences));
  }

  private record Arranged(Blanket blanket, List<YarnNeed> needs) {
    List<YarnNeed> running() {
      return needs.stream().filter(need -> !need.lasts()).toList();
    }
  }

  private static String effect(Arranged then) {
    List<YarnNeed> running = then.running();
    if (running.isEmpty()) {
      return "Every yarn still lasts"
          + Looseness.tightest(then.blanket(), then.needs())
              .map(t -> "; tightest is " + Words.yarn(then.blanket(), t.yarn()) + ".")
              .orElse(".");
    }
    return "Then too little is there: "
        + running.stream()
            .map(
                need ->
                    Amount.metres(missing(then.blanket(), need))
                        + " of "
                        + Words.yarn(then.blanket(), need.yarn()))
            .collect(Collectors.joining(", "))
        + ".";
  }

  private static long missing(Blanket blanket, YarnNeed need) {
    return need.neededMillimetres() - blanket.yarns().usableMillimetres(need.yarn());
  }

  /** What counts tell, as data; nothing where none does. */
  public static Optional<Map<String, Object>> countedData(
      Blanket blanket, Sequences sequences, Diary diary) {
    return LearnedHand.of(diary)
        .map(
            learned -> {
              boolean sound = learned.contradicting().isEmpty() && learned.possible();
              Arranged then = inHand(blanket, sequences, learned);
              return Json.object(
                  "percent",
                  learned.percent(),
                  "contradictory",
                  !sound,
                  "counts",
                  learned.counts().stream()
                      .map(
                          count ->
                              Json.object(
                                  "code", count.code(),
                                  "gone_m", BigDecimal.valueOf(count.goneMillimetres(), 3),
                                  "reckoned_m", BigDecimal.valueOf(count.reckonedMillimetres(), 3)))
                      .toList(),
                  "short",
                  then.running().stream()
                      .map(
                          need ->
                              Json.object(
                                  "code",
                                  then.blanket().yarn(need.yarn()).code(),
                                  "metres",
                                  BigDecimal.valueOf(missing(then.blanket(), need), 3)))
                      .toList());
            });
  }

  /** The same as data. */
  static Map<String, Object> data(Blanket blanket, List<YarnNeed> needs) {
    Optional<Looseness> tightest = Looseness.tightest(blanket, needs);
    Optional<HandRange> hand = HandRange.of(blanket.brief());
    return Json.object(
        "reckoned_percent", blanket.brief().stitching().handPercent(),
        "looser_percent", tightest.map(yarn -> floored(yarn.percent())),
        "tightest", tightest.map(yarn -> blanket.yarn(yarn.yarn()).code()),
        "from_percent", hand.map(HandRange::lowPercent).map(HandWords::rounded),
        "to_percent", hand.map(HandRange::highPercent).map(HandWords::rounded));
  }

  /** What a length may come to, such as {@code 98.1 to 104.6 m}. */
  static String range(HandRange hand, long millimetres) {
    return String.format(
        Locale.ROOT,
        "%.1f to %.1f m",
        millimetres / 1000.0 * (1 + hand.lowPercent() / 100),
        millimetres / 1000.0 * (1 + hand.highPercent() / 100));
  }

  /** Tenths of a per cent, rounded down: what is told can be had. */
  private static double floored(double percent) {
    return Math.floor(percent * 10) / 10;
  }

  private static double rounded(double percent) {
    return Math.round(percent * 10) / 10.0;
  }

  private static String percent(double percent) {
    return String.format(Locale.ROOT, "%.1f %%", percent);
  }

  private static String signed(double percent) {
    double tenths = rounded(percent);
    return percent(Math.abs(tenths)) + (tenths < 0 ? " less" : " more");
  }
}
