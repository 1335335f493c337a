package lozengy.model.score;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.score.Targets.Group;

/**
 * Deals the rounds of groups to their yarns by share, and keeps to what the look's counts ask.
 *
 * <p>A count that asks for at most n pieces with a yarn wants no more than n rounds of it among the
 * rounds that it speaks of, one that asks for at least n no fewer. As long as the deal breaks a
 * count, the one that speaks of the fewest rounds is mended, the first of equal ones: a round at a
 * time is taken off its yarn in the group of which that yarn has the largest part, or added where
 * it has the smallest and another yarn can yield, the first of equal groups, and never so that
 * another count of the yarn that holds would break. What its yarn has in the rounds that counts
 * speak of then stays, and the rest of these groups is dealt anew to the other yarns by share. A
 * count that cannot be kept to is kept to as far as can be.
 */
final class CountedDeal {

  private static final int UNPINNED = -1;

  private final Blanket blanket;
  private final List<ReadyCount> asked;
  private final List<Group> groups;
  private final int[] rounds;
  private final int[][] pinned;
  private final int[][] dealt;
  private final BitSet mended = new BitSet();

  private CountedDeal(Blanket blanket, List<ReadyCount> asked, Map<Group, Integer> sizes) {
    this.blanket = blanket;
    this.asked = asked;
    this.groups = List.copyOf(sizes.keySet());
    this.rounds = groups.stream().mapToInt(sizes::get).toArray();
    this.pinned = new int[rounds.length][blanket.yarnCount()];
    this.dealt = new int[rounds.length][];
    for (int group = 0; group < rounds.length; group++) {
      Arrays.fill(pinned[group], UNPINNED);
      deal(group);
    }
  }

  /**
   * Deals.
   *
   * @param asked the look's counts
   * @param sizes how many rounds each group has
   * @return how often each group should show each yarn
   */
  static Map<Group, int[]> of(Blanket blanket, List<ReadyCount> asked, Map<Group, Integer> sizes) {
    CountedDeal deal = new CountedDeal(blanket, asked, sizes);
    deal.mendAll();
    Map<Group, int[]> dealt = new LinkedHashMap<>();
    for (int group = 0; group < deal.rounds.length; group++) {
      dealt.put(deal.groups.get(group), deal.dealt[group]);
    }
    return dealt;
  }

  private void mendAll() {
    for (int next = nextBroken(); next < asked.size(); next = nextBroken()) {
      pin(asked.get(next).yarn());
      while (off(next) != 0 && step(next, off(next) > 0 ? -1 : 1)) {
        // a step at a time
      }
      for (int group = 0; group < rounds.length; group++) {
        if (groups.get(group).counts().get(next)) {
          deal(group);
        }
      }
      mended.set(next);
    }
  }

  /**
   * The count that the deal breaks and that speaks of the fewest rounds, those left out that were
   * mended as far as can be.
   */
  private int nextBroken() {
    int next = asked.size();
    int fewest = Integer.MAX_VALUE;
    for (int count = 0; count < asked.size(); count++) {
      int spokenOf = 0;
      for (int group = 0; group < rounds.length; group++) {
        spokenOf += groups.get(group).counts().get(count) ? rounds[group] : 0;
      }
      if (!mended.get(count) && off(count) != 0 && spokenOf < fewest) {
        next = count;
        fewest = spokenOf;
      }
    }
    return next;
  }

  /** How many rounds too many, above 0, or too few, below 0, the deal has for a count. */
  private int off(int count) {
    int sum = sum(count);
    int most = asked.get(count).asked().atMost().orElse(sum);
    return sum > most ? sum - most : Math.min(0, sum - asked.get(count).asked().atLeast());
  }

  /** Fixes what a yarn has in all groups that counts of it speak of. */
  private void pin(int yarn) {
    for (int group = 0; group < rounds.length; group++) {
      boolean counted =
          groups.get(group).counts().stream().anyMatch(count -> asked.get(count).yarn() == yarn);
      if (counted && pinned[group][yarn] == UNPINNED) {
        pinned[group][yarn] = dealt[group][yarn];
      }
    }
  }

  /**
   * Takes a round off a count's yarn, or adds one, where it suits best; whether that was possible.
   */
  private boolean step(int count, int by) {
    int yarn = asked.get(count).yarn();
    int best = -1;
    for (int group = 0; group < rounds.length; group++) {
      if (!groups.get(group).counts().get(count) || !possible(group, yarn, by)) {
        continue;
      }
      // parts of the groups, held against each other without division
      long part = best < 0 ? 0 : (long) pinned[group][yarn] * rounds[best];
      long bestPart = best < 0 ? 0 : (long) pinned[best][yarn] * rounds[group];
      if (best < 0 || (by < 0 ? part > bestPart : part < bestPart)) {
        best = group;
      }
    }
    if (best >= 0) {
      pinned[best][yarn] += by;
    }
    return best >= 0;
  }

  private boolean possible(int group, int yarn, int by) {
    int all = Arrays.stream(pinned[group]).filter(pin -> pin != UNPINNED).sum();
    boolean room =
        by < 0
            ? pinned[group][yarn] > 0
            : all < rounds[group] && groups.get(group).yarns().get(yarn);
    return room
        && groups.get(group).counts().stream()
            .filter(other -> asked.get(other).yarn() == yarn)
            .allMatch(other -> staysWhole(other, by));
  }

  /**
   * Whether a count that holds still holds after a step, and one that was mended as far as can be
   * gets no worse. One that is still to be mended has no say.
   */
  private boolean staysWhole(int count, int by) {
    int off = off(count);
    int sum = sum(count);
    int most = asked.get(count).asked().atMost().orElse(Integer.MAX_VALUE);
    int least = asked.get(count).asked().atLeast();
    return off == 0
        ? sum + by >= least && sum + by <= most
        : !mended.get(count) || off > 0 == by < 0;
  }

  /** How many rounds the deal has for a count. */
  private int sum(int count) {
    int yarn = asked.get(count).yarn();
    int sum = 0;
    for (int group = 0; group < rounds.length; group++) {
      if (groups.get(group).counts().get(count)) {
        int pin = pinned[group][yarn];
        sum += pin == UNPINNED ? dealt[group][yarn] : pin;
      }
    }
    return sum;
  }

  /** A yarn's whole part of a group's rounds, and what is left of its claim. */
  private record Claim(int yarn, BigDecimal share, int whole, BigDecimal remainder) {}

  /** Deals the rounds of a group that no yarn has for certain. */
  private void deal(int group) {
    BitSet yarns = (BitSet) groups.get(group).yarns().clone();
    int[] counts = new int[blanket.yarnCount()];
    int over = rounds[group];
    for (int yarn = 0; yarn < counts.length; yarn++) {
      if (pinned[group][yarn] != UNPINNED) {
        yarns.clear(yarn);
        counts[yarn] = pinned[group][yarn];
        over -= counts[yarn];
      }
    }
    List<Claim> claims = claims(yarns, over);
    claims.sort(
        Comparator.comparing(Claim::remainder)
            .thenComparing(Claim::share)
            .reversed()
            .thenComparing(claim -> blanket.yarn(claim.yarn()).code()));
    for (Claim claim : claims) {
      counts[claim.yarn()] += claim.whole();
      over -= claim.whole();
    }
    for (Claim claim : claims.subList(0, Math.min(over, claims.size()))) {
      counts[claim.yarn()]++;
    }
    dealt[group] = counts;
  }

  private List<Claim> claims(BitSet yarns, int rounds) {
    boolean noShares = yarns.stream().allMatch(yarn -> blanket.yarn(yarn).wanted() == 0);
    Map<Integer, BigDecimal> shares = new LinkedHashMap<>();
    yarns.stream()
        .forEach(
            yarn ->
                shares.put(
                    yarn,
                    noShares ? BigDecimal.ONE : BigDecimal.valueOf(blanket.yarn(yarn).wanted())));
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
