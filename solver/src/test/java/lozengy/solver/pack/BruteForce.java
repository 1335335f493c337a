package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;
import lozengy.model.score.Targets;

/**
 * The least pack of a tiny brief of squares alone, from all its arrangements: each takes at the
 * least the balls that hold what it uses, and as many as hold the least that shares bend to.
 */
final class BruteForce {

  private final Blanket blanket;
  private final PackGoal goal;
  private final double[] share;
  private final double bend;
  private final double wanted;
  private final double looser;

  /** Balls by yarn of which each is the fewest for some arrangement that will do. */
  private final Set<List<Integer>> packs = new LinkedHashSet<>();

  /** An arrangement's score without leeway, and what it uses of each yarn. */
  private record Entry(double score, long[] used) {}

  BruteForce(
      Blanket brief, PackGoal goal, double margin, double bendPercent, double looserPercent) {
    this.blanket = plenty(brief.brief());
    this.goal = goal;
    this.bend = bendPercent / 100;
    this.looser = looserPercent / 100;
    this.share = share();
    List<Entry> all = new ArrayList<>();
    fill(blanket.open(), 0, all);
    double most =
        all.stream().filter(this::belowMost).mapToDouble(Entry::score).max().orElse(Double.NaN);
    this.wanted = Math.max(0, most - margin);
    all.stream()
        .filter(this::belowMost)
        .filter(entry -> entry.score() >= wanted - 1e-9)
        .filter(this::aboveLeast)
        .forEach(entry -> packs.add(Arrays.stream(balls(entry.used())).boxed().toList()));
  }

  /** What the least pack costs from which whichever of some sizes can be worked. */
  static OptionalLong leastShared(List<BruteForce> sizes) {
    Set<List<Integer>> shared = sizes.get(0).packs;
    for (BruteForce size : sizes.subList(1, sizes.size())) {
      Set<List<Integer>> both = new LinkedHashSet<>();
      for (List<Integer> one : shared) {
        for (List<Integer> other : size.packs) {
          both.add(
              IntStream.range(0, one.size())
                  .mapToObj(yarn -> Math.max(one.get(yarn), other.get(yarn)))
                  .toList());
        }
      }
      shared = both;
    }
    return shared.stream()
        .mapToLong(pack -> sizes.get(0).cost(pack.stream().mapToInt(n -> n).toArray()))
        .min();
  }

  private static Blanket plenty(Brief brief) {
    Map<Part, Double> weights = new EnumMap<>(brief.prefer().weights());
    weights.put(Part.LEEWAY, 0.0);
    List<Yarn> yarns =
        brief.yarns().stream()
            .map(yarn -> yarn.withLeft(Optional.of(new YarnAmount.Length(1_000_000))))
            .toList();
    return Blanket.ofUnjudged(brief.withYarns(yarns).withPrefer(new Preferences(weights)));
  }

  private double[] share() {
    int[][] targets = Targets.of(blanket).counts();
    double[] share = new double[blanket.yarnCount()];
    for (int layer = 0; layer < targets.length; layer++) {
      for (int yarn = 0; yarn < share.length; yarn++) {
        int round = targets.length - 1 - layer;
        share[yarn] +=
            targets[layer][yarn]
                * (double) blanket.motifs().needMillimetres(blanket.kind(0), round, yarn);
      }
    }
    return share;
  }

  private void fill(Sequences sequences, int slot, List<Entry> all) {
    int rounds = blanket.roundCount(0);
    if (slot == blanket.pieceCount() * rounds) {
      if (Check.faults(blanket, sequences).isEmpty()) {
        all.add(
            new Entry(
                Scorer.score(blanket, sequences, Optional.empty()).total(),
                blanket.usedMillimetres(sequences)));
      }
      return;
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      sequences.set(slot / rounds, slot % rounds, yarn);
      fill(sequences, slot + 1, all);
    }
    sequences.set(slot / rounds, slot % rounds, Sequences.OPEN);
  }

  private boolean belowMost(Entry entry) {
    for (int yarn = 0; yarn < share.length; yarn++) {
      if (entry.used()[yarn] > share[yarn] * (1 + bend) + longest()) {
        return false;
      }
    }
    return true;
  }

  private boolean aboveLeast(Entry entry) {
    for (int yarn = 0; yarn < share.length; yarn++) {
      if (entry.used()[yarn] < share[yarn] * (1 - bend) - longest()) {
        return false;
      }
    }
    return true;
  }

  private long longest() {
    long longest = 0;
    for (int round = 0; round < blanket.roundCount(0); round++) {
      longest = Math.max(longest, blanket.motifs().needMillimetres(blanket.kind(0), round, 0));
    }
    return longest;
  }

  /** The fewest balls that hold what is used; so many are never more than shares may bend to. */
  private int[] balls(long[] used) {
    int[] balls = new int[used.length];
    double usable = 1 - blanket.brief().rules().keepBackPercent() / 100;
    for (int yarn = 0; yarn < used.length; yarn++) {
      double ball = blanket.yarn(yarn).ball().orElseThrow().millimetres().doubleValue() * usable;
      balls[yarn] = (int) Math.ceil(used[yarn] * (1 + looser) / ball - 1e-9);
    }
    return balls;
  }

  /** What a pack costs: balls, ten-thousandths, or mg. */
  long cost(int[] balls) {
    long sum = 0;
    for (int yarn = 0; yarn < balls.length; yarn++) {
      Yarn each = blanket.yarn(yarn);
      sum +=
          balls[yarn]
              * switch (goal) {
                case BALLS -> 1L;
                case PRICE -> Math.round(each.price().orElseThrow().amount().doubleValue() * 1e4);
                case WEIGHT -> Math.round(each.ball().orElseThrow().grams().doubleValue() * 1e3);
              };
    }
    return sum;
  }

  double wanted() {
    return wanted;
  }

  OptionalLong least() {
    return leastShared(List.of(this));
  }
}
