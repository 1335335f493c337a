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
import lozengy.model.input.Range;

/** Reads yarn that is used along a length. */
final class UseReader {

  private static final List<String> YARNS = List.of("yarn", "yarns");
  private static final List<String> RATES = List.of("metres-per-metre", "sample");
  private static final Range ROUNDS = Range.whole(1, MotifReader.MOST_ROUNDS, "rounds");
  private static final Range MINUTES =
      new Range(new BigDecimal("0.1"), true, BigDecimal.valueOf(10_000), false, "minutes");
  private static final YarnRate STOPGAP = new YarnRate.PerMetre(1);
  private static final Range METRES =
      new Range(
          BigDecimal.ZERO, false, BigDecimal.valueOf(1000), false, "metres of yarn per metre");
  private static final Map<String, Range> LENGTHS = new LinkedHashMap<>();

  static {
    LENGTHS.put("cm", Range.of(1, 10_000, "cm"));
    LENGTHS.put("in", Range.of(1, 3_900, "in"));
  }

  private UseReader() {}

  /** What is used along the seams: in one yarn, or in the borders' yarns. */
  static Optional<Joining> joining(Fields brief) {
    Optional<Located> located = brief.get("joining");
    Optional<Fields> found = located.flatMap(Located::fields);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    boolean oneYarn = of.get("yarn").isPresent();
    Optional<Located> yarns = of.get("yarns");
    if (yarns.isEmpty()) {
      return use(located.get(), of, false).map(use -> use);
    }
    if (oneYarn) {
      located
          .get()
          .wrong(
              MistakeCode.ONE_OF.about(YARNS, new ArrayList<>(YARNS)),
              "Both yarn and yarns are given",
              "Give yarn for one yarn along all seams, or yarns: borders");
    }
    yarns.get().word(Map.of("borders", true));
    YarnRate rate = rate(of, located.get(), false);
    Optional<BigDecimal> minutes = of.get("minutes-per-metre").flatMap(m -> m.number(MINUTES));
    of.tellUnknown();
    return Optional.of(new BorderJoining(rate, minutes));
  }

  /** What is used along the outline: in one yarn, or a list, the innermost rounds first. */
  static List<YarnUse> edging(Fields brief) {
    Optional<Located> located = brief.get("edging");
    List<Located> each =
        located
            .filter(list -> list.node() instanceof Node.Items)
            .map(UseReader::rounds)
            .orElse(located.stream().toList());
    return each.stream()
        .flatMap(one -> one.fields().flatMap(of -> use(one, of, true)).stream())
        .toList();
  }

  private static List<Located> rounds(Located edging) {
    List<Located> rounds = edging.items("rounds of the edging, the innermost first");
    if (rounds.isEmpty()) {
      edging.wrong(
          MistakeCode.FIELD_EMPTY.about("edging"),
          "The list of the edging's rounds is empty",
          "Leave edging out where there is none, or give its yarn: { yarn: MUD,"
              + " metres-per-metre: 4 }");
    }
    return rounds;
  }

  private static Optional<YarnUse> use(Located located, Fields of, boolean rounds) {
    Optional<String> yarn = of.need("yarn", "yarn: MUD").flatMap(YarnReader::code);
    int count = rounds ? rounds(of) : 1;
    YarnRate rate = rate(of, located, rounds);
    Optional<BigDecimal> minutes = of.get("minutes-per-metre").flatMap(m -> m.number(MINUTES));
    of.tellUnknown();
    return yarn.map(code -> new YarnUse(code, rate, count, minutes));
  }

  private static int rounds(Fields of) {
    return of.get("rounds").flatMap(r -> r.number(ROUNDS)).map(BigDecimal::intValueExact).orElse(1);
  }

  private static YarnRate rate(Fields of, Located located, boolean rounds) {
    Optional<Located> sample = of.get("sample");
    if (sample.isEmpty()) {
      return of.need("metres-per-metre", "metres-per-metre: 3.5")
          .flatMap(m -> m.number(METRES))
          .<YarnRate>map(metres -> new YarnRate.PerMetre(metres.doubleValue()))
          .orElse(STOPGAP);
    }
    if (of.get("metres-per-metre").isPresent()) {
      located.wrong(
          MistakeCode.ONE_OF.about(RATES, new ArrayList<>(RATES)),
          "Both metres-per-metre and sample are given",
          "Give one of the two");
    }
    return sample.flatMap(strip -> strip(strip, rounds)).<YarnRate>map(s -> s).orElse(STOPGAP);
  }

  private static Optional<YarnRate.Strip> strip(Located located, boolean rounds) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<BigDecimal> length =
        of.need("length", "length: 40 cm")
            .flatMap(l -> l.quantity(LENGTHS, "40 cm"))
            .map(StitchingReader::millimetres);
    int count = rounds ? rounds(of) : 1;
    Optional<YarnAmount> takes = of.need("takes", "takes: 1.4 g").flatMap(YarnReader::amount);
    of.tellUnknown();
    return length.flatMap(
        millimetres -> takes.map(amount -> new YarnRate.Strip(millimetres, count, amount)));
  }
}
