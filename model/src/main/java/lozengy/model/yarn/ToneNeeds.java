package lozengy.model.yarn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PileMatching;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Round;
import lozengy.model.colour.Tone;

/**
 * What a blanket needs before it is arranged: rounds that hold a yarn already by that yarn, others
 * by the tones that they may take.
 *
 * <p>As far as totals go, the stock suffices if and only if for every set of tones the rounds that
 * may take no other tone need no more than the yarns of these tones have (Hall's condition, for
 * yarn that can be divided at will). Whether whole rounds come out, and the other rules, only
 * solving shows.
 *
 * @param held what rounds that hold a yarn already, the pile, joining and edging need, by yarn
 * @param demands what the other rounds need, by the tones that they may take; dark before light,
 *     single tones before several
 * @param shortages the sets of tones whose yarns do not suffice; empty if all do
 */
public record ToneNeeds(
    List<YarnNeed> held, List<ToneDemand> demands, List<ToneShortage> shortages) {

  private static final Comparator<Set<Tone>> ORDER =
      Comparator.<Set<Tone>>comparingInt(Set::size).thenComparing(ToneNeeds::bits);

  /**
   * The needs of a blanket; O(pieces x rounds x yarns).
   *
   * @param blanket the blanket
   * @return what it needs of each yarn and of each set of tones, in mm
   */
  public static ToneNeeds of(Blanket blanket) {
    Sequences known = known(blanket);
    long[] held = blanket.usedMillimetres(known);
    Map<Set<Tone>, long[]> demands = demands(blanket, known);
    List<ToneDemand> rows = new ArrayList<>();
    demands.forEach(
        (tones, sums) ->
            rows.add(new ToneDemand(tones, sums[0], sums[1], usable(blanket, held, tones))));
    return new ToneNeeds(YarnNeed.of(blanket, known), rows, shortages(blanket, held, demands));
  }

  /** What rounds hold already, with the pile's pieces at places that they might take. */
  private static Sequences known(Blanket blanket) {
    Sequences known = blanket.locks();
    int[] stackAt = PileMatching.of(blanket).stackAt();
    for (int piece = 0; piece < stackAt.length; piece++) {
      for (int round = 0; stackAt[piece] >= 0 && round < known.rounds(piece); round++) {
        known.set(piece, round, blanket.pile().stacks().get(stackAt[piece]).yarns()[round]);
      }
    }
    return known;
  }

  /** {@return whether the stock suffices as far as totals go} */
  public boolean enough() {
    return shortages.isEmpty() && held.stream().allMatch(each -> each.purchase().isEmpty());
  }

  /** {@return whether any yarn is at hand, of whatever shade} */
  public boolean atHand() {
    return held.stream().anyMatch(each -> each.stockMillimetres() > 0);
  }

  /**
   * {@return length in mm that is missing in all, of rounds that hold no yarn yet, 0 or more} So
   * much must be bought at the least beyond what single yarns lack.
   */
  public long missingMillimetres() {
    return shortages.stream().mapToLong(ToneShortage::missingMillimetres).sum();
  }

  /** By tones: how many rounds, and their least length in mm. */
  private static Map<Set<Tone>, long[]> demands(Blanket blanket, Sequences known) {
    Map<Set<Tone>, long[]> demands = new TreeMap<>(ORDER);
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      List<Round> rounds = blanket.motif(blanket.kind(piece)).rounds();
      for (int round = 0; round < rounds.size(); round++) {
        if (known.yarn(piece, round) == Sequences.OPEN) {
          Set<Tone> tones = EnumSet.copyOf(rounds.get(round).tones());
          long[] sums = demands.computeIfAbsent(tones, each -> new long[2]);
          sums[0]++;
          sums[1] += leastMillimetres(blanket, piece, round);
        }
      }
    }
    return demands;
  }

  private static long leastMillimetres(Blanket blanket, int piece, int round) {
    return IntStream.range(0, blanket.yarnCount())
        .filter(yarn -> blanket.motifs().toneAllows(blanket.kind(piece), round, yarn))
        .mapToLong(yarn -> blanket.takenMillimetres(piece, round, yarn))
        .min()
        .orElseGet(() -> blanket.takenMillimetres(piece, round, 0));
  }

  private static List<ToneShortage> shortages(
      Blanket blanket, long[] held, Map<Set<Tone>, long[]> demands) {
    List<ToneShortage> found = new ArrayList<>();
    for (Set<Tone> tones : toneSets()) {
      long needed =
          demands.entrySet().stream()
              .filter(each -> tones.containsAll(each.getKey()))
              .mapToLong(each -> each.getValue()[1])
              .sum();
      long usable = usable(blanket, held, tones);
      long told =
          found.stream()
              .filter(each -> tones.containsAll(each.tones()))
              .mapToLong(ToneShortage::missingMillimetres)
              .sum();
      long missing = needed - usable - told;
      if (missing > 0) {
        Purchase purchase =
            Purchase.of(
                missing, blanket.brief().rules().keepBackPercent(), shortestBall(blanket, tones));
        found.add(new ToneShortage(tones, needed, usable, missing, purchase));
      }
    }
    return found;
  }

  private static int bits(Set<Tone> tones) {
    return tones.stream().mapToInt(tone -> 1 << tone.ordinal()).sum();
  }

  /** Every set of tones but the empty one, smaller sets first. */
  private static List<Set<Tone>> toneSets() {
    List<Set<Tone>> sets = new ArrayList<>();
    Tone[] tones = Tone.values();
    for (int bits = 1; bits < 1 << tones.length; bits++) {
      Set<Tone> set = EnumSet.noneOf(Tone.class);
      for (Tone tone : tones) {
        if ((bits >> tone.ordinal() & 1) == 1) {
          set.add(tone);
        }
      }
      sets.add(set);
    }
    sets.sort(ORDER);
    return sets;
  }

  private static long usable(Blanket blanket, long[] held, Set<Tone> tones) {
    return yarns(blanket, tones)
        .mapToLong(yarn -> Math.max(0, blanket.yarns().usableMillimetres(yarn) - held[yarn]))
        .sum();
  }

  private static Optional<Ball> shortestBall(Blanket blanket, Set<Tone> tones) {
    return yarns(blanket, tones)
        .mapToObj(yarn -> blanket.yarn(yarn).ball())
        .flatMap(Optional::stream)
        .min(Comparator.comparing(Ball::millimetres));
  }

  private static IntStream yarns(Blanket blanket, Set<Tone> tones) {
    return IntStream.range(0, blanket.yarnCount())
        .filter(yarn -> tones.contains(blanket.yarns().tone(yarn)));
  }
}
