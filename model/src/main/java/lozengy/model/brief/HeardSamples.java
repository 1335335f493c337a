package lozengy.model.brief;

import static java.math.MathContext.DECIMAL128;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.brief.RoundLengths.Basis;
import lozengy.model.brief.RoundLengths.Held;
import lozengy.model.layout.PieceKind;
import lozengy.model.stitch.StartingValues;
import lozengy.model.stitch.Stitch;
import lozengy.model.unit.Ratio;

/**
 * By what factor each round's stitches take more than their starting values, as {@link
 * RoundLengths} says: the samples heard one after the other, those of fewer rounds first.
 */
final class HeardSamples {

  /** What the rounds of one piece of a sample take: tails, what is known else, what is not. */
  private record Expected(BigDecimal tails, BigDecimal known, BigDecimal open) {}

  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final BigDecimal MILLIGRAMS_PER_GRAM = BigDecimal.valueOf(1000);

  private final Brief brief;
  private final StartingValues starting;
  private final Map<PieceKind, BigDecimal[]> factors = new EnumMap<>(PieceKind.class);
  private final Map<PieceKind, Basis[]> bases = new EnumMap<>(PieceKind.class);

  /** Samples whose tails and known rounds take all that was weighed, with the amount's index. */
  private final List<int[]> tooLight = new ArrayList<>();

  /** Hears all samples of a brief; O(rounds x samples). */
  HeardSamples(Brief brief) {
    this.brief = brief;
    this.starting = brief.stitching().startingValues();
    brief
        .motifs()
        .forEach(
            (kind, motif) -> {
              factors.put(kind, new BigDecimal[motif.rounds().size()]);
              bases.put(kind, new Basis[motif.rounds().size()]);
            });
    samplesByRounds().values().forEach(this::hear);
    brief.motifs().keySet().forEach(this::fill);
  }

  /** Where the length of a round comes from. */
  Basis basis(PieceKind kind, int round) {
    return bases.get(kind)[round];
  }

  /** Amounts that leave nothing for the stitches, in the order they were heard. */
  List<Held> tooLight() {
    return tooLight.stream().map(at -> held(at[0], at[1])).toList();
  }

  /** An amount of a sample held against what is reckoned. */
  Held held(int index, int amount) {
    Sample sample = brief.stitching().samples().get(index);
    YarnAmount taken = sample.takes().get(amount);
    Expected expected = expected(sample, taken);
    BigDecimal count = BigDecimal.valueOf(sample.count());
    return new Held(
        index,
        amount,
        thousandths(taken),
        expected.tails.multiply(count),
        expected.tails.add(expected.known).multiply(count));
  }

  /** Samples by what they are of, those of fewer rounds first. */
  private Map<List<Object>, List<Integer>> samplesByRounds() {
    List<Sample> samples = brief.stitching().samples();
    Map<List<Object>, List<Integer>> byRounds = new LinkedHashMap<>();
    IntStream.range(0, samples.size())
        .boxed()
        .sorted(Comparator.comparingInt(i -> rounds(samples.get(i)).size()))
        .forEach(
            i ->
                byRounds
                    .computeIfAbsent(
                        List.of(samples.get(i).of(), rounds(samples.get(i))),
                        same -> new ArrayList<>())
                    .add(i));
    return byRounds;
  }

  /** The rounds of a sample, from 0. */
  private List<Integer> rounds(Sample sample) {
    return sample.rounds().isEmpty()
        ? IntStream.range(0, brief.motifs().get(sample.of()).rounds().size()).boxed().toList()
        : sample.rounds().stream().map(round -> round - 1).toList();
  }

  /** Takes the factor of the rounds that are still without one from samples of the same rounds. */
  private void hear(List<Integer> samples) {
    BigDecimal sum = BigDecimal.ZERO;
    long pieces = 0;
    for (int index : samples) {
      Sample sample = brief.stitching().samples().get(index);
      BigDecimal count = BigDecimal.valueOf(sample.count());
      for (int j = 0; j < sample.takes().size(); j++) {
        Expected expected = expected(sample, sample.takes().get(j));
        if (expected.open.signum() == 0) {
          return; // all its rounds are known by now
        }
        BigDecimal each = thousandths(sample.takes().get(j)).divide(count, DECIMAL128);
        BigDecimal left = each.subtract(expected.tails).subtract(expected.known);
        if (left.signum() <= 0) {
          tooLight.add(new int[] {index, j});
        }
        sum = sum.add(left.divide(expected.open, DECIMAL128).multiply(count));
        pieces += sample.count();
      }
    }
    BigDecimal factor = sum.divide(BigDecimal.valueOf(pieces), DECIMAL128);
    Sample first = brief.stitching().samples().get(samples.get(0));
    for (int round : rounds(first)) {
      if (factors.get(first.of())[round] == null
          && yarn(first.of(), round) instanceof StitchCounts) {
        factors.get(first.of())[round] = factor;
        bases.get(first.of())[round] = Basis.SAMPLE;
      }
    }
  }

  /**
   * What the rounds of one piece of a sample take, in mg or in mm as it was weighed or measured.
   */
  private Expected expected(Sample sample, YarnAmount as) {
    BigDecimal tails = BigDecimal.ZERO;
    BigDecimal known = BigDecimal.ZERO;
    BigDecimal open = BigDecimal.ZERO;
    List<Integer> rounds = rounds(sample);
    for (int i = 0; i < rounds.size(); i++) {
      int round = rounds.get(i);
      Ball ball = yarn(sample, i).flatMap(Yarn::ball).orElse(null);
      if (yarn(sample.of(), round) instanceof YarnAmount amount) {
        Ratio millimetres = amount.millimetresIn(ball);
        BigDecimal length = millimetres.over().divide(millimetres.under(), DECIMAL128);
        known = known.add(per(length, as, ball));
        continue;
      }
      boolean cut = i == 0 || rounds.get(i - 1) < round - 1 || !sameYarn(sample, i);
      tails = cut ? tails.add(per(tails(), as, ball)) : tails;
      BigDecimal factor = factors.get(sample.of())[round];
      BigDecimal stitches = per(start(sample.of(), round, cut), as, ball);
      if (factor == null) {
        open = open.add(stitches);
      } else {
        known = known.add(factor.multiply(stitches));
      }
    }
    return new Expected(tails, known, open);
  }

  private static BigDecimal per(BigDecimal millimetres, YarnAmount as, Ball ball) {
    return as instanceof YarnAmount.Length
        ? millimetres
        : millimetres
            .multiply(ball.grams())
            .multiply(MILLIGRAMS_PER_GRAM)
            .divide(ball.millimetres(), DECIMAL128);
  }

  /** Whether a round of a sample goes on in the yarn of the one before. */
  private static boolean sameYarn(Sample sample, int round) {
    List<String> yarns = sample.yarns();
    return yarns.size() == 1 || yarns.size() > 1 && yarns.get(round).equals(yarns.get(round - 1));
  }

  /** The yarn of a round of a sample; any where none is told. */
  private Optional<Yarn> yarn(Sample sample, int round) {
    List<String> codes = sample.yarns();
    String code = codes.isEmpty() ? null : codes.get(codes.size() == 1 ? 0 : round);
    return brief.yarns().stream()
        .filter(yarn -> code == null || yarn.code().equals(code))
        .findFirst();
  }

  private static BigDecimal thousandths(YarnAmount amount) {
    return amount instanceof YarnAmount.Length length
        ? length.millimetres()
        : ((YarnAmount.Weight) amount).milligrams();
  }

  /** Gives the rounds of a kind that are in no sample the factor of others. */
  private void fill(PieceKind kind) {
    Optional<BigDecimal> ofKind = pooled(List.of(kind));
    Optional<BigDecimal> ofAll = pooled(List.copyOf(brief.motifs().keySet()));
    for (int round = 0; round < bases.get(kind).length; round++) {
      if (!(yarn(kind, round) instanceof StitchCounts)) {
        bases.get(kind)[round] = Basis.STATED;
      } else if (bases.get(kind)[round] == null) {
        bases.get(kind)[round] =
            ofKind.isPresent()
                ? Basis.SAME_KIND
                : ofAll.isPresent()
                    ? Basis.OTHER_KINDS
                    : starting.known() ? Basis.STARTING : Basis.UNKNOWN;
        factors.get(kind)[round] = ofKind.or(() -> ofAll).orElse(BigDecimal.ONE);
      }
    }
  }

  /** The factor of all sampled rounds of some kinds together. */
  private Optional<BigDecimal> pooled(List<PieceKind> kinds) {
    BigDecimal starts = BigDecimal.ZERO;
    BigDecimal lengths = BigDecimal.ZERO;
    for (PieceKind kind : kinds) {
      for (int round = 0; round < bases.get(kind).length; round++) {
        if (bases.get(kind)[round] == Basis.SAMPLE) {
          starts = starts.add(start(kind, round, true));
          lengths = lengths.add(stitches(kind, round, true));
        }
      }
    }
    return starts.signum() == 0
        ? Optional.empty()
        : Optional.of(lengths.divide(starts, DECIMAL128));
  }

  /** What a round says of its yarn. */
  RoundYarn yarn(PieceKind kind, int round) {
    return brief.motifs().get(kind).rounds().get(round).amount();
  }

  /** Length of a round's stitches in mm, in this hand. */
  BigDecimal stitches(PieceKind kind, int round, boolean joined) {
    return start(kind, round, joined).multiply(factors.get(kind)[round]);
  }

  /** Starting value of a round's stitches, with the one that joins a new yarn or without. */
  private BigDecimal start(PieceKind kind, int round, boolean joined) {
    BigDecimal counted = starting.of(((StitchCounts) yarn(kind, round)).counts());
    return joined ? counted.add(starting.of(Stitch.SLIP_STITCH)) : counted;
  }

  /** Length in mm of the two tails of a length of yarn. */
  BigDecimal tails() {
    return brief.stitching().tailMillimetres().multiply(TWO);
  }
}
