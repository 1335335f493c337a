package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.colour.ToneLimits;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Nearest;
import lozengy.model.input.Node;
import lozengy.model.input.Range;
import lozengy.model.input.Words;

/**
 * Reads what a brief says of the blanket as a whole: rules, preferences, tones, joining, edging.
 */
final class RulesReader {

  private static final Map<String, WithinPiece> WITHIN_PIECE =
      Words.meanings(WithinPiece.values(), WithinPiece::word);

  private static final Map<String, Boolean> NEIGHBOUR_CENTRES =
      Words.meanings(new Boolean[] {true, false}, differ -> differ ? "differ" : "free");

  private static final Map<String, Boolean> LOTS =
      Words.meanings(new Boolean[] {true, false}, apart -> apart ? "apart" : "free");

  private static final Range COPIES = Range.whole(1, 1_000_000, "pieces");

  private static final Range WEIGHTS = Range.of(0, 1000, "");

  private static final Map<String, Weight> WEIGHT_WORDS =
      Words.meanings(Weight.values(), Weight::word);

  private static final String WEIGHT_REMEDY =
      "Give " + WEIGHTS.words() + ", or write " + Words.or(WEIGHT_WORDS.keySet());

  private RulesReader() {}

  static ToneLimits tones(Fields brief) {
    Optional<Located> located = brief.get("tones");
    Optional<Fields> found = located.flatMap(Located::fields);
    if (found.isEmpty()) {
      return ToneLimits.DEFAULT;
    }
    Fields of = found.get();
    double darkBelow = lightness(of, "dark-below", ToneLimits.DEFAULT.darkBelow());
    double lightFrom = lightness(of, "light-from", ToneLimits.DEFAULT.lightFrom());
    of.tellUnknown();
    if (darkBelow > lightFrom) {
      located
          .get()
          .wrong(
              MistakeCode.CONTRADICTS.about(number(darkBelow), number(lightFrom)),
              "dark-below " + number(darkBelow) + " is above light-from " + number(lightFrom),
              "Give dark-below the smaller number");
      return ToneLimits.DEFAULT;
    }
    return new ToneLimits(darkBelow, lightFrom);
  }

  private static double lightness(Fields of, String name, double silent) {
    return of.get(name)
        .flatMap(l -> l.number(Range.of(0, 100, "")))
        .map(BigDecimal::doubleValue)
        .orElse(silent);
  }

  private static String number(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  static Rules rules(Fields brief) {
    Optional<Fields> found = brief.get("rules").flatMap(Located::fields);
    if (found.isEmpty()) {
      return Rules.DEFAULT;
    }
    Fields of = found.get();
    of.get("neighbour-borders").ifPresent(always -> always.word(Map.of("differ", true)));
    Optional<Double> minContrast =
        of.get("min-contrast")
            .flatMap(m -> m.number(Range.of(0, 100, "")))
            .map(BigDecimal::doubleValue);
    Optional<WithinPiece> withinPiece = of.get("within-piece").flatMap(w -> w.word(WITHIN_PIECE));
    Optional<Boolean> centres =
        of.get("neighbour-centres").flatMap(word -> word.word(NEIGHBOUR_CENTRES));
    Optional<Boolean> lots = of.get("lots").flatMap(word -> word.word(LOTS));
    OptionalInt copies = of.get("copies").map(RulesReader::copies).orElse(Rules.DEFAULT.copies());
    Optional<Double> keepBack =
        of.get("keep-back")
            .filter(kept -> !forHand(kept))
            .flatMap(k -> k.quantity(Map.of("%", Range.of(0, 100, "%")), "5 %"))
            .map(quantity -> quantity.number().doubleValue());
    of.tellUnknown();
    return new Rules(
        minContrast.orElse(Rules.DEFAULT.minContrast()),
        withinPiece.orElse(Rules.DEFAULT.withinPiece()),
        centres.orElse(Rules.DEFAULT.centresDiffer()),
        lots.orElse(Rules.DEFAULT.lotsApart()),
        copies,
        keepBack.orElse(Rules.DEFAULT.keepBackPercent()));
  }

  /** What is said to be kept back, where it is as much as the hand may take more. */
  static Optional<Located> keptForHand(Fields brief) {
    return brief
        .get("rules")
        .filter(rules -> rules.node() instanceof Node.Mapping)
        .flatMap(Located::fields)
        .flatMap(rules -> rules.get("keep-back"))
        .filter(RulesReader::forHand);
  }

  private static boolean forHand(Located kept) {
    return kept.node() instanceof Node.Scalar scalar && scalar.text().equals("hand");
  }

  private static OptionalInt copies(Located located) {
    if (located.node() instanceof Node.Scalar scalar && scalar.text().equals("free")) {
      return OptionalInt.empty();
    }
    return located
        .number(COPIES, "Give " + COPIES.words() + ", or write free")
        .map(number -> OptionalInt.of(number.intValueExact()))
        .orElse(OptionalInt.empty());
  }

  static Preferences preferences(Fields brief) {
    Optional<Fields> found = brief.get("prefer").flatMap(Located::fields);
    if (found.isEmpty()) {
      return Preferences.DEFAULT;
    }
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    Map<Part, Weight> words = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      Optional<Located> given = found.get().get(part.word());
      given.flatMap(RulesReader::weightWord).ifPresent(word -> words.put(part, word));
      if (words.containsKey(part)) {
        weights.put(part, words.get(part).number());
      } else {
        given
            .flatMap(weight -> weight.number(WEIGHTS, weightRemedy(weight)))
            .ifPresent(weight -> weights.put(part, weight.doubleValue()));
      }
    }
    found.get().tellUnknown();
    return new Preferences(weights, words);
  }

  /** What would be right, and the word that is nearest to what stands there, if one is. */
  private static String weightRemedy(Located given) {
    return given.node() instanceof Node.Scalar scalar
        ? Nearest.to(scalar.text().strip(), WEIGHT_WORDS.keySet())
            .map(word -> "Maybe " + word + " is meant. " + WEIGHT_REMEDY)
            .orElse(WEIGHT_REMEDY)
        : WEIGHT_REMEDY;
  }

  private static Optional<Weight> weightWord(Located given) {
    return given.node() instanceof Node.Scalar scalar
        ? Optional.ofNullable(WEIGHT_WORDS.get(scalar.text()))
        : Optional.empty();
  }
}
