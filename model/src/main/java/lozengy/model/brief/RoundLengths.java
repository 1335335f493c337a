package lozengy.model.brief;

import static java.math.MathContext.DECIMAL128;
import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.layout.PieceKind;
import lozengy.model.stitch.StartingValues;
import lozengy.model.stitch.Stitch;
import lozengy.model.unit.Ratio;

/**
 * What every round of a brief takes, in plain amounts. A round in stitches takes their starting
 * values times a factor, which is how much more yarn this hand takes, and two tails; a slip stitch
 * that joins its yarn is one of its stitches. Samples tell the factor: what is weighed, less the
 * tails and the rounds whose yarn is known otherwise, is that of the other rounds. Of two samples
 * the one of fewer rounds is heard first, so that a round weighed by itself and the whole piece
 * both come out as weighed. Rounds of no sample take the factor of their kind's others, or else of
 * all kinds'; without any sample it is 1.
 *
 * <p>A sample's amounts are reckoned back to within one part in 10^30, and the length of a round is
 * rounded to a millionth of a millimetre.
 */
public final class RoundLengths {

  /** Where the length of a round comes from. */
  public enum Basis {
    /** The brief states an amount. */
    STATED,
    /** A sample that it is in. */
    SAMPLE,
    /** Samples of other rounds of its kind. */
    SAME_KIND,
    /** Samples of other kinds. */
    OTHER_KINDS,
    /** Starting values alone, which are rough. */
    STARTING,
    /** Nothing: there is neither a sample nor a starting value. */
    UNKNOWN
  }

  /**
   * An amount of a sample, held against what its rounds take now that all samples are heard.
   *
   * @param sample index of the sample in the brief
   * @param amount index of the amount in the sample
   * @param weighed what was weighed or measured, in mg or mm
   * @param tails how much of that the tails of its rounds in stitches take
   * @param reckoned what its rounds take, tails included; 0 where that is not known
   */
  public record Held(
      int sample, int amount, BigDecimal weighed, BigDecimal tails, BigDecimal reckoned) {

    /** {@return how much was weighed or measured to each that is reckoned, such as 1.04} */
    public double ratio() {
      return weighed.divide(reckoned, DECIMAL128).doubleValue();
    }
  }

  /** What the rounds of one piece of a sample take: tails, what is known else, what is not. */
  private record Expected(BigDecimal tails, BigDecimal known, BigDecimal open) {}

  private static final int DECIMALS_OF_MILLIMETRE = 6;
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final BigDecimal MILLIGRAMS_PER_GRAM = BigDecimal.valueOf(1000);

  private final Brief brief;
  private final StartingValues starting;
  private final Map<PieceKind, BigDecimal[]> factors = new EnumMap<>(PieceKind.class);
  private final Map<PieceKind, Basis[]> bases = new EnumMap<>(PieceKind.class);

  /** Samples whose tails and known rounds take all that was weighed, with the amount's index. */
  private final List<int[]> tooLight = new ArrayList<>();

  private RoundLengths(Brief brief) {
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

  /**
   * The lengths of a brief's rounds; O(rounds x samples).
   *
   * @param brief the brief, whose samples are of rounds and yarns that it has
   * @return the lengths
   */
  public static RoundLengths of(Brief brief) {
    return new RoundLengths(brief);
  }

  /**
   * {@return what a round takes, cut at both its ends}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   */
  public YarnAmount amount(PieceKind kind, int round) {
    if (yarn(kind, round) instanceof YarnAmount amount) {
      return amount;
    }
    return new YarnAmount.Length(
        stitches(kind, round, true).add(tails()).setScale(DECIMALS_OF_MILLIMETRE, HALF_EVEN));
  }

  /**
   * {@return how much less a round takes, in mm, where its yarn goes on from the round before it:
   * there are no tails between them and no join; 0 where one of the two states an amount}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   */
  public BigDecimal savedUncut(PieceKind kind, int round) {
    boolean bothCounted =
        round > 0
            && yarn(kind, round) instanceof StitchCounts
            && yarn(kind, round - 1) instanceof StitchCounts;
    return bothCounted
        ? tails().add(stitches(kind, round, true)).subtract(stitches(kind, round, false))
        : BigDecimal.ZERO;
  }

  /**
   * {@return where the length of a round comes from}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   */
  public Basis basis(PieceKind kind, int round) {
    return bases.get(kind)[round];
  }

  /** {@return all amounts of all samples held against what is reckoned, in the brief's order} */
  public List<Held> held() {
    List<Held> held = new ArrayList<>();
    for (int i = 0; i < brief.stitching().samples().size(); i++) {
      Sample sample = brief.stitching().samples().get(i);
      for (int j = 0; j < sample.takes().size(); j++) {
        held.add(held(i, j));
      }
    }
    return held;
  }

  /** {@return amounts that leave nothing for the stitches, in the order they were heard} */
  List<Held> tooLight() {
    return tooLight.stream().map(at -> held(at[0], at[1])).toList();
  }

  private Held held(int index, int amount) {
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

  private RoundYarn yarn(PieceKind kind, int round) {
    return brief.motifs().get(kind).rounds().get(round).amount();
  }

  /** Length of a round's stitches in mm, in this hand. */
  private BigDecimal stitches(PieceKind kind, int round, boolean joined) {
    return start(kind, round, joined).multiply(factors.get(kind)[round]);
  }

  /** Starting value of a round's stitches, with the one that joins a new yarn or without. */
  private BigDecimal start(PieceKind kind, int round, boolean joined) {
    BigDecimal counted = starting.of(((StitchCounts) yarn(kind, round)).counts());
    return joined ? counted.add(starting.of(Stitch.SLIP_STITCH)) : counted;
  }

  private BigDecimal tails() {
    return brief.stitching().tailMillimetres().multiply(TWO);
  }
}
