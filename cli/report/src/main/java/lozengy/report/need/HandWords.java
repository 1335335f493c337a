package lozengy.report.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.yarn.HandRange;
import lozengy.model.yarn.Looseness;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.Json;

/** Tells how much hands may differ before a yarn runs out. */
final class HandWords {

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

  /** The same as data. */
  static Map<String, Object> data(Blanket blanket, List<YarnNeed> needs) {
    Optional<Looseness> tightest = Looseness.tightest(blanket, needs);
    Optional<HandRange> hand = HandRange.of(blanket.brief());
    return Json.object(
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
