package lozengy.model.yarn;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Price;
import lozengy.model.layout.PieceKind;
import lozengy.model.score.Targets;
import lozengy.model.unit.Ratio;

/**
 * How much of a shade a blanket takes where every layer shows the yarns exactly as often as {@link
 * Targets} has it, whatever is at hand. Which kinds of pieces show it is left open: a round counts
 * as the mean of those that are dealt together with it, which is exact where they take alike, and
 * otherwise adds up rightly over the shades (where rounds are given by length). Of the seams, where
 * pieces are joined in their borders' yarns, each takes the mean over the pieces of its kind.
 *
 * @param yarn its index, from 0
 * @param rounds rounds that are to be in it
 * @param length length in mm with joining and edging, exactly
 */
public record ShadeNeed(int yarn, long rounds, Ratio length) {

  /**
   * The needs of all shades; O(pieces x layers x yarns).
   *
   * @param blanket the blanket; its stock makes no difference
   * @return one for each yarn, in the brief's order
   */
  public static List<ShadeNeed> of(Blanket blanket) {
    List<Targets.Dealt> dealt = Targets.dealt(blanket);
    Ratio[] halves = seamHalves(blanket);
    List<ShadeNeed> needs = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      long rounds = 0;
      Ratio length = Ratio.of(BigDecimal.valueOf(blanket.fixedUse().millimetres(yarn)));
      for (Targets.Dealt each : dealt) {
        int wanted = each.counts()[yarn];
        if (wanted > 0) {
          rounds += wanted;
          length = length.plus(mean(blanket, each, yarn, halves).times(BigDecimal.valueOf(wanted)));
        }
      }
      needs.add(new ShadeNeed(yarn, rounds, length));
    }
    return needs;
  }

  /** By kind, halves of seams that a border takes, in the mean over the pieces of the kind. */
  private static Ratio[] seamHalves(Blanket blanket) {
    int[] sums = new int[PieceKind.values().length];
    int[] counts = new int[sums.length];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      sums[blanket.kind(piece).ordinal()] += blanket.borderSeams().halves(piece);
      counts[blanket.kind(piece).ordinal()]++;
    }
    Ratio[] halves = new Ratio[sums.length];
    Arrays.setAll(
        halves,
        kind ->
            Ratio.of(BigDecimal.valueOf(sums[kind]))
                .dividedBy(BigDecimal.valueOf(Math.max(1, counts[kind]))));
    return halves;
  }

  private static Ratio mean(Blanket blanket, Targets.Dealt dealt, int yarn, Ratio[] halves) {
    Ratio seams = Ratio.of(BigDecimal.ZERO);
    BigDecimal half =
        BigDecimal.valueOf(dealt.layer() == 0 ? blanket.borderSeams().halfMillimetres(yarn) : 0);
    long sum = 0;
    long count = 0;
    for (PieceKind kind : PieceKind.values()) {
      int pieces = dealt.kinds()[kind.ordinal()];
      if (pieces > 0) {
        int round = blanket.motif(kind).rounds().size() - 1 - dealt.layer();
        sum += pieces * blanket.motifs().needMillimetres(kind, round, yarn);
        count += pieces;
        seams = seams.plus(halves[kind.ordinal()].times(half.multiply(BigDecimal.valueOf(pieces))));
      }
    }
    return seams.plus(Ratio.of(BigDecimal.valueOf(sum))).dividedBy(BigDecimal.valueOf(count));
  }

  /** {@return the length in whole mm, rounded up} */
  public long millimetres() {
    return length.up();
  }

  /**
   * {@return whole balls that hold it with what is kept back, and for hands as loose as the brief
   * allows them to be where it is for sale; empty where no put-up is stated}
   *
   * @param blanket the blanket, of which less than all is kept back
   */
  public OptionalLong balls(Blanket blanket) {
    return blanket.yarn(yarn).ball().stream()
        .mapToLong(ball -> WholeBalls.of(blanket.brief(), ball).fewest(millimetres()))
        .findFirst();
  }

  /**
   * {@return its weight in g; empty where no put-up is stated}
   *
   * @param blanket the blanket
   */
  public Optional<BigDecimal> grams(Blanket blanket) {
    return blanket.yarn(yarn).ball().map(ball -> ball.gramsOf(millimetres()));
  }

  /**
   * {@return what its balls cost; empty where no price is stated}
   *
   * @param blanket the blanket, of which less than all is kept back
   */
  public Optional<Price> price(Blanket blanket) {
    return blanket.yarn(yarn).price().map(each -> each.times(balls(blanket).orElseThrow()));
  }
}
