package lozengy.report.pack;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.toSix;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.ForSale;
import lozengy.model.brief.Price;
import lozengy.report.Json;
import lozengy.report.ReasonData;
import lozengy.solver.pack.PackGoal;
import lozengy.solver.pack.Packing;
import lozengy.solver.pack.Packing.Failed;
import lozengy.solver.pack.Packing.Packed;

/** Packs as {@code --json} prints them; lengths in m. */
public final class PackData {

  private PackData() {}

  /**
   * How the search for a pack has ended.
   *
   * @param blanket the brief
   * @param goal what the pack was to have least of
   */
  public static Map<String, Object> of(Blanket blanket, PackGoal goal, Packing packing) {
    String title = blanket.brief().title();
    if (packing instanceof Packed packed) {
      return packed(blanket, goal, packed);
    }
    if (packing instanceof Packing.Impossible impossible) {
      return Json.object(
          "title",
          title,
          "outcome",
          "impossible",
          "by_bend",
          impossible.byBend(),
          "causes",
          ReasonData.of(impossible.blanket(), impossible.why()));
    }
    if (packing instanceof Packing.OutOfReach beyond) {
      return Json.object(
          "title",
          title,
          "outcome",
          "out-of-reach",
          "proved",
          beyond.proved(),
          "wanted",
          toSix(beyond.asked()),
          "plenty",
          toSix(beyond.reached()),
          "bound",
          toSix(beyond.bound()));
    }
    return Json.object("title", title, "outcome", "unfinished");
  }

  /**
   * The packs of several sizes of one palette.
   *
   * @param shared whether one pack serves whichever of them is worked
   * @param goal what packs were to have least of
   */
  public static Map<String, Object> of(List<SizePack> sizes, boolean shared, PackGoal goal) {
    return Json.object(
        "one_for_all",
        shared,
        "sizes",
        sizes.stream()
            .map(
                size -> {
                  Map<String, Object> data = Json.object("size", size.name());
                  data.putAll(of(size.blanket(), goal, size.packing()));
                  return data;
                })
            .toList());
  }

  private static Map<String, Object> packed(Blanket blanket, PackGoal goal, Packed packed) {
    List<Map<String, Object>> shades =
        packed.shades().stream()
            .map(
                shade ->
                    Json.object(
                        "code",
                        blanket.yarn(shade.yarn()).code(),
                        "name",
                        blanket.yarn(shade.yarn()).name(),
                        "balls",
                        shade.balls(),
                        "grams",
                        PackText.grams(blanket, shade),
                        "price",
                        PackText.price(blanket, shade).map(Price::amount),
                        "share_m",
                        metres(shade.sharedMillimetres()),
                        "used_m",
                        metres(shade.usedMillimetres()),
                        "left_m",
                        metres(shade.leftMillimetres())))
            .toList();
    return Json.object(
        "title",
        blanket.brief().title(),
        "outcome",
        "found",
        "least_of",
        goal.name().toLowerCase(Locale.ROOT),
        "balls",
        packed.balls(),
        "grams",
        PackText.grams(blanket, packed),
        "price",
        PackText.price(blanket, packed).map(Price::amount),
        "currency",
        PackText.price(blanket, packed).map(Price::currency),
        "looser_percent",
        packed.arrangement().blanket().brief().forSale().map(ForSale::looserPercent),
        "score",
        toSix(packed.score()),
        "wanted",
        toSix(packed.wanted()),
        "plenty",
        toSix(packed.plenty()),
        "proved_least",
        packed.proof().least(),
        "floor",
        floor(goal, packed.proof().floor()),
        "tried_in_vain",
        packed.proof().failed().stream().map(PackData::failed).toList(),
        "yarns",
        shades);
  }

  /** In balls, in the currency, or in g. */
  private static BigDecimal floor(PackGoal goal, long floor) {
    return switch (goal) {
      case BALLS -> BigDecimal.valueOf(floor);
      case PRICE -> BigDecimal.valueOf(floor, 4);
      case WEIGHT -> BigDecimal.valueOf(floor, 3);
    };
  }

  private static Map<String, Object> failed(Failed failed) {
    return Json.object("balls", failed.balls(), "proved", failed.proved());
  }
}
