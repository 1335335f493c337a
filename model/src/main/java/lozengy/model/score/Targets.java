package lozengy.model.score;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.PieceKind;

/**
 * How often each layer should show each yarn. Within a layer, the rounds that allow the same yarns
 * by tone form a group; a group's rounds are dealt to its yarns by their shares, by largest
 * remainder; a layer's target for a yarn is the sum over its groups. Of equal remainders the larger
 * share comes first, then the code that is earlier in the alphabet, so that the order of the yarns
 * in a brief makes no difference. Where all yarns of a group have share 0 they count as equal;
 * rounds that no yarn's tone fits are dealt to none. Locks, bans and stock change no target.
 *
 * <p>O(pieces + layers x kinds x yarns) and sorting, in exact arithmetic.
 *
 * @param pieces pieces that have the layer, by layer
 * @param counts wanted count by layer and yarn
 */
public record Targets(int[] pieces, int[][] counts) {

  /** A yarn's whole part of a group's rounds, and what is left of its claim. */
  private record Claim(int yarn, BigDecimal share, int whole, BigDecimal remainder) {}

  /** The targets of a blanket. */
  public static Targets of(Blanket blanket) {
    int[] piecesByKind = new int[PieceKind.values().length];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      piecesByKind[blanket.kind(piece).ordinal()]++;
    }
    int[] pieces = new int[blanket.layerCount()];
    int[][] counts = new int[blanket.layerCount()][blanket.yarnCount()];
    for (int layer = 0; layer < pieces.length; layer++) {
      Map<BitSet, Integer> groups = new LinkedHashMap<>();
      for (PieceKind kind : blanket.brief().motifs().keySet()) {
        int round = blanket.motif(kind).rounds().size() - 1 - layer;
        if (round >= 0) {
          int count = piecesByKind[kind.ordinal()];
          pieces[layer] += count;
          groups.merge(allowed(blanket, kind, round), count, Integer::sum);
        }
      }
      for (Map.Entry<BitSet, Integer> group : groups.entrySet()) {
        deal(blanket, group.getKey(), group.getValue(), counts[layer]);
      }
    }
    return new Targets(pieces, counts);
  }

  private static BitSet allowed(Blanket blanket, PieceKind kind, int round) {
    BitSet yarns = new BitSet();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      yarns.set(yarn, blanket.toneAllows(kind, round, yarn));
    }
    return yarns;
  }

  private static void deal(Blanket blanket, BitSet yarns, int rounds, int[] counts) {
    List<Claim> claims = claims(blanket, yarns, rounds);
    claims.sort(
        Comparator.comparing(Claim::remainder)
            .thenComparing(Claim::share)
            .reversed()
            .thenComparing(claim -> blanket.yarn(claim.yarn()).code()));
    int over = rounds;
    for (Claim claim : claims) {
      counts[claim.yarn()] += claim.whole();
      over -= claim.whole();
    }
    for (Claim claim : claims.subList(0, Math.min(over, claims.size()))) {
      counts[claim.yarn()]++;
    }
  }

  private static List<Claim> claims(Blanket blanket, BitSet yarns, int rounds) {
    boolean noShares = yarns.stream().allMatch(yarn -> blanket.yarn(yarn).share() == 0);
    Map<Integer, BigDecimal> shares = new LinkedHashMap<>();
    yarns.stream()
        .forEach(
            yarn ->
                shares.put(
                    yarn,
                    noShares ? BigDecimal.ONE : BigDecimal.valueOf(blanket.yarn(yarn).share())));
    BigDecimal sum = shares.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    List<Claim> claims = new ArrayList<>();
    shares.forEach(
        (yarn, share) -> {
          // the claim is rounds x share / sum; its remainder is left multiplied by the sum
          BigDecimal[] parts = share.multiply(BigDecimal.valueOf(rounds)).divideAndRemainder(sum);
          claims.add(new Claim(yarn, share, parts[0].intValueExact(), parts[1]));
        });
    return claims;
  }
}
