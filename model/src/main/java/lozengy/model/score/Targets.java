package lozengy.model.score;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyLook;
import lozengy.model.layout.PieceKind;

/**
 * How often each layer should show each yarn. Within a layer, the rounds that allow the same yarns
 * by tone and by the look's zones and borders form a group; a group's rounds are dealt to its yarns
 * by their shares, by largest remainder; a layer's target for a yarn is the sum over its groups. Of
 * equal remainders the larger share comes first, then the code that is earlier in the alphabet, so
 * that the order of the yarns in a brief makes no difference. Where all yarns of a group have share
 * 0 they count as equal; rounds that no yarn's tone fits are dealt to none. Locks, bans and stock
 * change no target.
 *
 * <p>O(pieces + layers x kinds x yarns) and sorting, in exact arithmetic.
 *
 * @param pieces pieces that have the layer, by layer
 * @param counts wanted count by layer and yarn
 */
public record Targets(int[] pieces, int[][] counts) {

  /** A yarn's whole part of a group's rounds, and what is left of its claim. */
  private record Claim(int yarn, BigDecimal share, int whole, BigDecimal remainder) {}

  /**
   * {@return the targets of a blanket}
   *
   * @param blanket the blanket
   */
  public static Targets of(Blanket blanket) {
    int[] pieces = new int[blanket.layerCount()];
    int[][] counts = new int[blanket.layerCount()][blanket.yarnCount()];
    Collection<List<Integer>> alike = alike(blanket);
    for (int layer = 0; layer < pieces.length; layer++) {
      Map<BitSet, Integer> groups = new LinkedHashMap<>();
      for (List<Integer> some : alike) {
        int piece = some.get(0);
        int round = blanket.roundCount(piece) - 1 - layer;
        if (round >= 0) {
          pieces[layer] += some.size();
          groups.merge(allowed(blanket, piece, round), some.size(), Integer::sum);
        }
      }
      for (Map.Entry<BitSet, Integer> group : groups.entrySet()) {
        deal(blanket, group.getKey(), group.getValue(), counts[layer]);
      }
    }
    return new Targets(pieces, counts);
  }

  /** Pieces of one kind of which the look asks the same. */
  private static Collection<List<Integer>> alike(Blanket blanket) {
    Map<Long, List<Integer>> alike = new LinkedHashMap<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      long look = blanket.look().border(piece) + 1L << 32 | blanket.look().zoneGroup(piece);
      long key = look * PieceKind.values().length + blanket.kind(piece).ordinal();
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(piece);
    }
    return alike.values();
  }

  private static BitSet allowed(Blanket blanket, int piece, int round) {
    ReadyLook look = blanket.look();
    int rounds = blanket.roundCount(piece);
    BitSet yarns = new BitSet();
    if (look.givesBorders() && round == rounds - 1) {
      yarns.set(look.border(piece));
      return yarns;
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      yarns.set(
          yarn,
          blanket.toneAllows(blanket.kind(piece), round, yarn)
              && look.allows(piece, round, rounds, yarn));
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
