package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Node;
import lozengy.model.input.Quantity;
import lozengy.model.input.Range;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;
import lozengy.model.stitch.Stitch;
import lozengy.model.stitch.Terms;
import lozengy.model.stitch.YarnWeight;
import lozengy.model.unit.Units;

/** Reads what turns stitches into yarn, and samples. */
public final class StitchingReader {

  private static final Map<String, PieceKind> KINDS =
      Words.meanings(PieceKind.values(), PieceKind::word);

  private static final Range ROUNDS = Range.whole(1, MotifReader.MOST_ROUNDS, "rounds");
  private static final Range PIECES = Range.whole(1, 10_000, "pieces");
  private static final Map<String, Range> HOOKS =
      Map.of("mm", new Range(new BigDecimal("0.5"), true, BigDecimal.valueOf(50), false, "mm"));
  private static final Range PER_MINUTE =
      new Range(new BigDecimal("0.1"), true, BigDecimal.valueOf(300), false, "stitches");
  private static final Map<String, Range> PERCENT = Map.of("%", Range.of(0, 100, "%"));
  private static final Map<String, Range> HANDS = Map.of("%", Range.of(50, 200, "%"));
  private static final Map<String, Range> TAILS = new LinkedHashMap<>();
  private static final Map<String, Range> PER_STITCH = new LinkedHashMap<>();
  private static final Map<String, YarnWeight> WEIGHTS = new LinkedHashMap<>();

  static {
    TAILS.put("cm", Range.of(0, 100, "cm"));
    TAILS.put("in", Range.of(0, 39, "in"));
    PER_STITCH.put(
        "cm", new Range(new BigDecimal("0.1"), true, BigDecimal.valueOf(100), false, "cm"));
    PER_STITCH.put(
        "in", new Range(new BigDecimal("0.1"), true, BigDecimal.valueOf(39), false, "in"));
    for (YarnWeight weight : YarnWeight.values()) {
      WEIGHTS.put(weight.word(), weight);
      WEIGHTS.put(Integer.toString(weight.category()), weight);
    }
  }

  private StitchingReader() {}

  /**
   * The terms that a brief says, where it says them; US where what it says is wrong, so that no
   * name is doubted for that. Mistakes of other fields are left to {@link #read}.
   */
  static Optional<Terms> terms(Fields brief) {
    return brief
        .get("stitches")
        .flatMap(Located::fields)
        .flatMap(of -> of.get("terms"))
        .map(terms -> terms.word(StitchReader.TERMS).orElse(Terms.US));
  }

  /**
   * What is said of stitches.
   *
   * @param said the terms that the brief says, as {@link #terms} has read them
   */
  static Stitching read(Fields brief, Optional<Terms> said) {
    Optional<Fields> found =
        brief
            .get("stitches")
            .filter(s -> s.node() instanceof Node.Mapping)
            .flatMap(Located::fields);
    if (found.isEmpty()) {
      return Stitching.NONE;
    }
    Fields of = found.get();
    of.get("terms");
    Optional<YarnWeight> weight = of.get("yarn-weight").flatMap(w -> w.word(WEIGHTS));
    Optional<BigDecimal> hook =
        of.get("hook").flatMap(h -> h.quantity(HOOKS, "3.5 mm")).map(Quantity::number);
    Map<Stitch, BigDecimal> perStitch =
        of.get("per-stitch")
            .map(
                each ->
                    new StitchReader(said)
                        .each(
                            each,
                            yarn ->
                                yarn.quantity(PER_STITCH, "6.4 cm")
                                    .map(StitchingReader::millimetres)))
            .orElse(Map.of());
    Optional<BigDecimal> tail =
        of.get("tail").flatMap(t -> t.quantity(TAILS, "15 cm")).map(StitchingReader::millimetres);
    List<Sample> samples = new ArrayList<>();
    for (Located sample : of.get("samples").map(s -> s.items("samples")).orElse(List.of())) {
      sample(sample).ifPresent(samples::add);
    }
    Optional<BigDecimal> varies =
        of.get("varies").flatMap(v -> v.quantity(PERCENT, "6 %")).map(Quantity::number);
    Optional<BigDecimal> perMinute = of.get("per-minute").flatMap(m -> m.number(PER_MINUTE));
    Optional<BigDecimal> hand = of.get("hand").flatMap(StitchingReader::hand);
    of.tellUnknown();
    return new Stitching(
        said.orElse(Terms.US),
        weight,
        hook,
        perStitch,
        tail.orElse(Stitching.USUAL_TAIL),
        samples,
        varies,
        perMinute,
        hand.orElse(Stitching.AS_RECKONED));
  }

  /**
   * Reads what a hand takes of what is reckoned.
   *
   * @param located the value, such as {@code 104 %}
   * @return the per cent, 50 to 200, with equal numbers held alike; empty where it is none, which
   *     is told
   */
  public static Optional<BigDecimal> hand(Located located) {
    return located
        .quantity(HANDS, "104 %")
        .map(Quantity::number)
        .map(BigDecimal::stripTrailingZeros);
  }

  /** A length of cloth or of a tail in mm. */
  static BigDecimal millimetres(Quantity length) {
    BigDecimal cm =
        length.unit().equals("in") ? Units.cmOfInches(length.number()) : length.number();
    return cm.movePointRight(1);
  }

  private static Optional<Sample> sample(Located located) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<PieceKind> kind = of.need("of", "of: square").flatMap(k -> k.word(KINDS));
    List<Integer> rounds = of.get("rounds").map(StitchingReader::rounds).orElse(List.of());
    int count =
        of.get("count").flatMap(c -> c.number(PIECES)).map(BigDecimal::intValueExact).orElse(1);
    List<String> yarns = new ArrayList<>();
    of.get("yarn")
        .map(yarn -> yarn.itemOrItems("yarns"))
        .orElse(List.of())
        .forEach(yarn -> YarnReader.code(yarn).ifPresent(yarns::add));
    List<YarnAmount> takes = takes(of);
    of.tellUnknown();
    return kind.isEmpty() || takes.isEmpty()
        ? Optional.empty()
        : Optional.of(new Sample(kind.get(), rounds, count, takes, yarns));
  }

  private static List<Integer> rounds(Located located) {
    List<Integer> rounds = new ArrayList<>();
    for (Located item : located.itemOrItems("rounds")) {
      Optional<Integer> round = item.number(ROUNDS).map(BigDecimal::intValueExact);
      if (round.isPresent() && !rounds.isEmpty() && rounds.get(rounds.size() - 1) >= round.get()) {
        item.wrong(
            MistakeCode.MALFORMED.about(round.get()),
            "Round " + round.get() + " comes after round " + rounds.get(rounds.size() - 1),
            "List the rounds once each, the centre first");
      } else {
        round.ifPresent(rounds::add);
      }
    }
    return rounds;
  }

  /** What was weighed or measured: at once, or before and after. */
  private static List<YarnAmount> takes(Fields of) {
    List<YarnAmount> amounts = new ArrayList<>();
    Optional<Located> before = of.get("before");
    Optional<Located> after = of.get("after");
    if (before.isEmpty() && after.isEmpty()) {
      of.need("takes", "takes: 26.4 g, or before: 50 g and after: 23.6 g")
          .map(takes -> takes.itemOrItems("amounts"))
          .orElse(List.of())
          .forEach(item -> YarnReader.amount(item).ifPresent(amounts::add));
      return amounts;
    }
    of.get("takes")
        .ifPresent(
            takes ->
                takes.wrong(
                    MistakeCode.ONE_OF.about(
                        List.of("takes", "before"), List.of("takes", "before")),
                    "The sample gives both takes and what was there before and after",
                    "Give one of the two"));
    Optional<YarnAmount> first = of.need("before", "before: 50 g").flatMap(YarnReader::amount);
    Optional<YarnAmount> last = of.need("after", "after: 23.6 g").flatMap(YarnReader::amount);
    if (first.isPresent() && last.isPresent()) {
      Optional<YarnAmount> used = difference(first.get(), last.get());
      used.ifPresent(amounts::add);
      if (used.isEmpty()) {
        after
            .get()
            .wrong(
                MistakeCode.CONTRADICTS.about(
                    BriefWriter.amount(last.get()), BriefWriter.amount(first.get())),
                BriefWriter.amount(first.get())
                    + " before and "
                    + BriefWriter.amount(last.get())
                    + " after leave nothing that the sample takes",
                "Weigh or measure both times, in the same way, and give the smaller after");
      }
    }
    return amounts;
  }

  /** What was used; empty where it is nothing, or the one is a weight and the other a length. */
  private static Optional<YarnAmount> difference(YarnAmount before, YarnAmount after) {
    if (before instanceof YarnAmount.Length first && after instanceof YarnAmount.Length last) {
      BigDecimal used = first.millimetres().subtract(last.millimetres());
      return Optional.of(used).filter(u -> u.signum() > 0).map(YarnAmount.Length::new);
    }
    if (before instanceof YarnAmount.Weight first && after instanceof YarnAmount.Weight last) {
      BigDecimal used = first.milligrams().subtract(last.milligrams());
      return Optional.of(used).filter(u -> u.signum() > 0).map(YarnAmount.Weight::new);
    }
    return Optional.empty();
  }
}
