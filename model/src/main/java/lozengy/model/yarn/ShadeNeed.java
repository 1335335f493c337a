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
 * Targets} has it, whatever is at hand. Which kinds of pieces show it is left open: a round of a
 * layer counts as the mean of the layer's rounds that may take the shade, which is exact where they
 * take alike, and otherwise adds up rightly over the shades.
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
    int[][] targets = Targets.of(blanket).counts();
    List<ShadeNeed> needs = new ArrayList<>();
    long[][] kinds = kinds(blanket);
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      long rounds = 0;
      Ratio length = Ratio.of(BigDecimal.valueOf(blanket.fixedUseMillimetres(yarn)));
      for (int layer = 0; layer < targets.length; layer++) {
        int wanted = targets[layer][yarn];
        if (wanted > 0) {
          rounds += wanted;
          length = length.plus(mean(blanket, kinds[layer], layer, yarn).times(decimal(wanted)));
        }
      }
      needs.add(new ShadeNeed(yarn, rounds, length));
    }
    return needs;
  }

  /** Pieces by layer and kind. */
  private static long[][] kinds(Blanket blanket) {
    long[][] pieces = new long[blanket.layerCount()][PieceKind.values().length];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int layer = 0; layer < blanket.roundCount(piece); layer++) {
        pieces[layer][blanket.kind(piece).ordinal()]++;
      }
    }
    return pieces;
  }

  private static Ratio mean(Blanket blanket, long[] pieces, int layer, int yarn) {
    long[] millimetres = new long[pieces.length];
    boolean[] fits = new boolean[pieces.length];
    for (PieceKind kind : PieceKind.values()) {
      if (pieces[kind.ordinal()] > 0) {
        int round = blanket.motif(kind).rounds().size() - 1 - layer;
        millimetres[kind.ordinal()] = blanket.needMillimetres(kind, round, yarn);
        fits[kind.ordinal()] = blanket.toneAllows(kind, round, yarn);
      }
    }
    boolean any = false;
    for (boolean each : fits) {
      any |= each;
    }
    // a border that is given may show a yarn against its tone
    if (!any) {
      Arrays.fill(fits, true);
    }
    long sum = 0;
    long count = 0;
    for (int kind = 0; kind < pieces.length; kind++) {
      sum += fits[kind] ? pieces[kind] * millimetres[kind] : 0;
      count += fits[kind] ? pieces[kind] : 0;
    }
    return Ratio.of(decimal(sum)).dividedBy(decimal(count));
  }

  private static BigDecimal decimal(long number) {
    return BigDecimal.valueOf(number);
  }

  /** {@return the length in whole mm, rounded up} */
  public long millimetres() {
    return length.up();
  }

  /**
   * {@return whole balls that hold it with what is kept back; empty where no put-up is stated}
   *
   * @param blanket the blanket, of which less than all is kept back
   */
  public OptionalLong balls(Blanket blanket) {
    Ratio wanted = Purchase.withKeptBack(millimetres(), blanket.brief().rules().keepBackPercent());
    return Purchase.balls(wanted, blanket.yarn(yarn).ball());
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
