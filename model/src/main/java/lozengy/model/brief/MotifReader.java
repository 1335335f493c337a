package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lozengy.model.colour.Tone;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Range;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;

/** Reads motifs. */
final class MotifReader {

  static final Map<String, Tone> TONES = Words.meanings(Tone.values(), Tone::word);

  private static final Range MINUTES = Range.of("0.1", 10_000, "minutes");
  private static final String STITCHES = "stitches";

  /** Rounds that a motif has at most. */
  static final int MOST_ROUNDS = 50;

  /**
   * A millimetre at least; and so little at most that totals fit a long on any layout. Ounces,
   * yards and inches lie within the ranges of grams, metres and centimetres, in which they are
   * written.
   */
  private static final Map<String, Range> AMOUNTS = new LinkedHashMap<>();

  private static final Map<String, Range> EDGES = new LinkedHashMap<>();

  static {
    AMOUNTS.put("metres", Range.of("0.001", 1000, "metres"));
    AMOUNTS.put("yards", Range.of("0.0011", 1000, "yards"));
    AMOUNTS.put("grams", Range.of("0.001", 1000, "grams"));
    AMOUNTS.put("ounces", Range.of("0.001", 35, "ounces"));
    EDGES.put("cm", Range.of("0.1", 1000, "cm"));
    EDGES.put("in", Range.of("0.1", 390, "in"));
  }

  private MotifReader() {}

  /** The motif; empty where a mistake leaves no rounds. */
  static Optional<Motif> read(PieceKind kind, Located located, StitchReader stitches) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<Located> edge =
        switch (kind) {
          case SQUARE -> of.need("side", "side: 10 cm");
          case SIDE_TRIANGLE -> of.get("base");
          case CORNER_TRIANGLE -> Optional.empty();
        };
    Optional<Double> edgeCm =
        edge.flatMap(e -> e.quantity(EDGES, "10 cm or 3 1/2 in"))
            .map(quantity -> Amounts.cm(quantity.number(), quantity.unit()));
    Optional<Located> rounds = of.need("rounds", "rounds: [ { tone: dark, metres: 6.8 } ]");
    List<Round> read = rounds.map(list -> rounds(list, stitches)).orElse(List.of());
    of.tellUnknown();
    return read.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Motif(edgeCm.map(OptionalDouble::of).orElse(OptionalDouble.empty()), read));
  }

  private static List<Round> rounds(Located located, StitchReader stitches) {
    List<Located> items = located.items("rounds, the centre first");
    if (items.size() > MOST_ROUNDS) {
      located.wrong(
          MistakeCode.WRONG_COUNT.about("rounds", items.size(), 1, MOST_ROUNDS),
          Words.count(items.size(), "round") + " are listed",
          "List at most " + MOST_ROUNDS + " rounds");
      return List.of();
    }
    List<Round> rounds = new ArrayList<>();
    for (Located item : items) {
      rounds.add(round(item, stitches));
    }
    if (items.isEmpty()) {
      located.wrong(
          MistakeCode.WRONG_COUNT.about("rounds", 0, 1, MOST_ROUNDS),
          "There is no round",
          "List at least one round");
    }
    return rounds;
  }

  private static Round round(Located located, StitchReader stitches) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return new Round(EnumSet.allOf(Tone.class), new YarnAmount.Length(1));
    }
    Fields of = found.get();
    Set<Tone> tones = EnumSet.noneOf(Tone.class);
    Optional<Located> tone = of.get("tone");
    List<Located> words = tone.map(t -> t.itemOrItems("tones")).orElse(List.of());
    words.forEach(word -> word.word(TONES).ifPresent(tones::add));
    if (tone.isPresent() && words.isEmpty()) {
      tone.get()
          .wrong(
              MistakeCode.WRONG_COUNT.about("tones", 0, 1),
              "No tone is listed",
              "List one, or leave tone out to allow any");
    }
    RoundYarn amount = amount(of, located, stitches);
    Optional<BigDecimal> minutes = of.get("minutes").flatMap(m -> m.number(MINUTES));
    of.tellUnknown();
    return new Round(tones.isEmpty() ? EnumSet.allOf(Tone.class) : tones, amount, minutes);
  }

  private static RoundYarn amount(Fields of, Located round, StitchReader stitches) {
    List<String> given = new ArrayList<>();
    RoundYarn amount = new YarnAmount.Length(1);
    for (Map.Entry<String, Range> unit : AMOUNTS.entrySet()) {
      Optional<Located> field = of.get(unit.getKey());
      if (field.isPresent()) {
        given.add(unit.getKey());
        Optional<BigDecimal> number = field.get().number(unit.getValue());
        if (number.isPresent()) {
          amount = Amounts.of(number.get(), unit.getKey());
        }
      }
    }
    Optional<Located> counted = of.get(STITCHES);
    if (counted.isPresent()) {
      given.add(STITCHES);
      amount = stitches.counts(counted.get()).<RoundYarn>map(counts -> counts).orElse(amount);
    }
    List<String> ways = new ArrayList<>(AMOUNTS.keySet());
    ways.add(STITCHES);
    String remedy = "Give the yarn of a round in one of " + Words.or(ways);
    Mistake.Sort sort = MistakeCode.ONE_OF.about(ways, given);
    if (given.isEmpty()) {
      round.wrong(sort, "The round does not say how much yarn it takes", remedy);
    } else if (given.size() > 1) {
      round.wrong(sort, "The round gives both " + String.join(" and ", given), remedy);
    }
    return amount;
  }
}
