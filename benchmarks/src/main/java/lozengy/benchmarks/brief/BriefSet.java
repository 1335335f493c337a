package lozengy.benchmarks.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import lozengy.benchmarks.brief.BriefSpec.Known;
import lozengy.benchmarks.brief.BriefSpec.Stock;
import lozengy.benchmarks.brief.BriefSpec.YarnCounts;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Setting;

/**
 * The named set of briefs that is measured: from a cushion to a double bed, 3 to 12 border yarns,
 * even and odd stock, 20 % to 0.05 % more yarn than needed, locks, min-contrast.
 */
public final class BriefSet {

  /** No two pieces alike, adjacent rounds differ. */
  private static final Rules UNLIKE = Rules.DEFAULT.withCopies(OptionalInt.of(1));

  /** A min-contrast by which the first and the fourth of four darks count as the same. */
  private static final Rules THREE_CLASSES_OF_FOUR =
      Rules.DEFAULT.withMinContrast(29).withCopies(OptionalInt.of(1));

  /** A min-contrast by which two of three darks count as the same. */
  private static final double TWO_CLASSES_OF_THREE = 32.1;

  /** Slack where there is far more yarn than needed. */
  private static final double AMPLE_PERCENT = 300;

  private static final List<BriefSpec> ALL =
      List.of(
          new BriefSpec(
              "cushion",
              onPoint(3, 3),
              "LID",
              new YarnCounts(3, 2, 4),
              10,
              Stock.EVEN,
              Known.NOTHING,
              UNLIKE,
              true),
          new BriefSpec(
              "cushion-tight",
              onPoint(4, 4),
              "LLID",
              new YarnCounts(4, 3, 5),
              0.2,
              Stock.ODD,
              Known.NOTHING,
              UNLIKE,
              false),
          new BriefSpec(
              "lap-all-differ",
              onPoint(4, 5),
              "ALIID",
              new YarnCounts(5, 4, 6),
              8,
              Stock.EVEN,
              Known.NOTHING,
              Rules.DEFAULT
                  .withWithinPiece(WithinPiece.ALL_DIFFER)
                  .withCopies(OptionalInt.of(1))
                  .withKeepBack(5),
              true),
          new BriefSpec(
              "baby",
              onPoint(5, 6),
              "LILD",
              new YarnCounts(5, 4, 6),
              5,
              Stock.EVEN,
              Known.NOTHING,
              Rules.DEFAULT,
              false),
          new BriefSpec(
              "baby-odd",
              onPoint(5, 7),
              "LLID",
              new YarnCounts(6, 4, 8),
              2,
              Stock.ODD,
              Known.NOTHING,
              UNLIKE,
              true),
          new BriefSpec(
              "throw-locks",
              onPoint(6, 8),
              "LILID",
              new YarnCounts(7, 5, 8),
              3,
              Stock.EVEN,
              new Known(14, 20),
              UNLIKE,
              true),
          reference("reference", 5),
          reference("reference-0.2", 0.2),
          reference("reference-0.05", 0.05),
          new BriefSpec(
              "throw-contrast",
              onPoint(7, 9),
              "LILD",
              new YarnCounts(9, 6, 8),
              5,
              Stock.EVEN,
              Known.NOTHING,
              Rules.DEFAULT.withMinContrast(22).withCopies(OptionalInt.of(2)),
              false),
          new BriefSpec(
              "stash-straight",
              straight(12, 15),
              "AAAA",
              new YarnCounts(4, 4, 4),
              1,
              Stock.ODD_WITH_SHARES,
              Known.NOTHING,
              Rules.DEFAULT,
              true),
          new BriefSpec(
              "throw-odd-ample",
              onPoint(7, 9),
              "LLID",
              new YarnCounts(10, 4, 10),
              20,
              Stock.ODD,
              Known.NOTHING,
              UNLIKE,
              false),
          new BriefSpec(
              "single-bed",
              onPoint(9, 13),
              "LIILD",
              new YarnCounts(6, 6, 10),
              2,
              Stock.EVEN,
              Known.NOTHING,
              UNLIKE,
              true),
          new BriefSpec(
              "double-bed",
              onPoint(13, 15),
              "LLIID",
              new YarnCounts(12, 8, 12),
              5,
              Stock.EVEN,
              Known.NOTHING,
              UNLIKE,
              true),
          new BriefSpec(
              "double-bed-odd",
              straight(18, 20),
              "LIID",
              new YarnCounts(10, 8, 14),
              0.5,
              Stock.ODD,
              Known.NOTHING,
              UNLIKE,
              false));

  private BriefSet() {}

  /** All specifications of the set, small ones first. */
  public static List<BriefSpec> all() {
    return ALL;
  }

  /**
   * The specification of that name, of the set, of those for growth or of few
   * borders.
   *
   * @throws IllegalArgumentException naming all there are, if there is none
   */
  public static BriefSpec named(String name) {
    return Stream.of(ALL, growth(), few(), heldOut(), ample())
        .flatMap(List::stream)
        .filter(spec -> spec.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "there is no brief "
                        + name
                        + ", but "
                        + ALL.stream().map(BriefSpec::name).toList()
                        + " and "
                        + growth().stream().map(BriefSpec::name).toList()
                        + " and "
                        + Stream.of(few(), heldOut(), ample())
                            .flatMap(List::stream)
                            .map(BriefSpec::name)
                            .toList()));
  }

  /**
   * Briefs for growth: about 1,000, 10,000 and 100,000 pieces, all else equal. Six rounds, so that
   * even of 100,000 pieces no two need be alike.
   */
  public static List<BriefSpec> growth() {
    return List.of(
        growth("growth-1000", 21, 23),
        growth("growth-10000", 69, 71),
        growth("growth-100000", 222, 224));
  }

  /**
   * The family of few borders: 2, 3 and 4 border yarns, and 4 that min-contrast joins into 3
   * classes, on about 100, 400, 1,000 and 2,000 pieces of five rounds; even stock with 5 % slack
   * and odd stock with 2 %.
   */
  public static List<BriefSpec> few() {
    YarnCounts inner = new YarnCounts(0, 6, 10);
    return Stream.of(
            few("few", "100", onPoint(6, 7), inner),
            few("few", "400", onPoint(13, 14), inner),
            few("few", "1000", onPoint(21, 23), inner),
            few("few", "2000", onPoint(30, 32), inner))
        .flatMap(List::stream)
        .toList();
  }

  /**
   * The same family drawn once more on other layouts with other yarns: nothing in the search was
   * chosen by these.
   */
  public static List<BriefSpec> heldOut() {
    YarnCounts inner = new YarnCounts(0, 5, 8);
    return Stream.of(
            few("held", "100", onPoint(5, 9), inner),
            few("held", "400", onPoint(11, 17), inner),
            few("held", "1000", onPoint(20, 24), inner),
            few("held", "2000", onPoint(29, 33), inner))
        .flatMap(List::stream)
        .toList();
  }

  /**
   * Few borders with far more yarn than needed and all rules as they come, and one where
   * min-contrast joins two of three border yarns.
   */
  public static List<BriefSpec> ample() {
    Rules joined = Rules.DEFAULT.withMinContrast(TWO_CLASSES_OF_THREE);
    return List.of(
        ample("ample-2-9x12", onPoint(9, 12), 2, Rules.DEFAULT),
        ample("ample-2-12x16", onPoint(12, 16), 2, Rules.DEFAULT),
        ample("ample-3-9x12", onPoint(9, 12), 3, Rules.DEFAULT),
        ample("ample-3-9x12-contrast", onPoint(9, 12), 3, joined),
        ample("ample-3-12x16", onPoint(12, 16), 3, Rules.DEFAULT),
        ample("ample-3-20x24", onPoint(20, 24), 3, Rules.DEFAULT));
  }

  private static BriefSpec ample(String name, LayoutSize layout, int borders, Rules rules) {
    return few(name, layout, new YarnCounts(borders, 0, 8), AMPLE_PERCENT, Stock.EVEN, rules);
  }

  private static List<BriefSpec> few(
      String family, String size, LayoutSize layout, YarnCounts inner) {
    List<BriefSpec> few = new ArrayList<>();
    for (int borders = 2; borders <= 4; borders++) {
      YarnCounts yarns = new YarnCounts(borders, inner.mid(), inner.light());
      String name = "%s-%d-%s".formatted(family, borders, size);
      few.add(few(name, layout, yarns, 5, Stock.EVEN, UNLIKE));
      few.add(few(name + "-odd", layout, yarns, 2, Stock.ODD, UNLIKE));
    }
    YarnCounts yarns = new YarnCounts(4, inner.mid(), inner.light());
    String name = "%s-contrast-%s".formatted(family, size);
    few.add(few(name, layout, yarns, 5, Stock.EVEN, THREE_CLASSES_OF_FOUR));
    return few;
  }

  private static BriefSpec few(
      String name, LayoutSize layout, YarnCounts yarns, double slack, Stock stock, Rules rules) {
    return new BriefSpec(name, layout, "LIILD", yarns, slack, stock, Known.NOTHING, rules, false);
  }

  /** 7 x 9 on point with triangles: 143 pieces, four rounds, 8 dark and 12 light yarns. */
  private static BriefSpec reference(String name, double slackPercent) {
    return new BriefSpec(
        name,
        onPoint(7, 9),
        "LLLD",
        new YarnCounts(8, 0, 12),
        slackPercent,
        Stock.EVEN,
        Known.NOTHING,
        UNLIKE,
        false);
  }

  private static BriefSpec growth(String name, int across, int down) {
    return new BriefSpec(
        name,
        onPoint(across, down),
        "LLLLLD",
        new YarnCounts(8, 0, 12),
        5,
        Stock.EVEN,
        Known.NOTHING,
        UNLIKE,
        false);
  }

  private static LayoutSize onPoint(int across, int down) {
    return new LayoutSize(Setting.ON_POINT, across, down, true, true);
  }

  private static LayoutSize straight(int across, int down) {
    return new LayoutSize(Setting.STRAIGHT, across, down, false, false);
  }
}
