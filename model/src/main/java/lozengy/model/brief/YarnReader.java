package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Node;
import lozengy.model.input.Quantity;
import lozengy.model.input.Range;
import lozengy.model.input.Words;
import lozengy.model.unit.Units;

/** Reads yarns. */
final class YarnReader {

  private static final int MOST_CODE_CHARACTERS = 12;
  private static final int MOST_NAME_CHARACTERS = 100;

  /** What a code is made of. */
  static final String CODE_REMEDY =
      "Use 1 to " + MOST_CODE_CHARACTERS + " letters, digits, hyphens and underscores";

  private static final Srgb STOPGAP_COLOUR = new Srgb(128, 128, 128);

  // Ranges in which yarn is sold, widely; totals then fit a long on any layout. Ounces and yards
  // lie within those of grams and metres, in which they are written.
  private static final Range BALL_GRAMS = Range.of("1", 10_000, "grams");
  private static final Range BALL_OUNCES = Range.of("0.05", 350, "ounces");
  private static final Range BALL_METRES = Range.of("1", 100_000, "metres");
  private static final Range BALL_YARDS = Range.of("1.1", 100_000, "yards");
  private static final Map<String, Boolean> YES_OR_NO =
      Words.meanings(new Boolean[] {true, false}, yes -> Boolean.toString(yes));
  private static final Map<String, Range> LEFT = new LinkedHashMap<>();

  static {
    LEFT.put("g", Range.of(0, 1_000_000, "g"));
    LEFT.put("m", Range.of(0, 10_000_000, "m"));
    LEFT.put("oz", Range.of(0, 35_000, "oz"));
    LEFT.put("yd", Range.of(0, 10_000_000, "yd"));
  }

  private YarnReader() {}

  /**
   * Reads a yarn.
   *
   * @param position its position among the yarns, for a stopgap code
   * @param stockWanted whether it must say what is at hand of it
   */
  static Yarn read(Located located, int position, boolean stockWanted) {
    String stopgap = "?" + position;
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return yarn(stopgap, STOPGAP_COLOUR);
    }
    Fields of = found.get();
    Optional<String> code = of.need("code", "code: MUD").flatMap(YarnReader::code);
    Optional<String> name = of.get("name").flatMap(n -> n.text(MOST_NAME_CHARACTERS));
    Optional<Srgb> colour =
        of.need("colour", "colour: \"#2c2a29\" (in quotes: a plain # begins a comment)")
            .flatMap(YarnReader::colour);
    Optional<Located> putUp = of.get("ball");
    Optional<Ball> ball = putUp.flatMap(YarnReader::ball);
    Optional<Located> balls = of.get("balls");
    double ballCount =
        balls
            .flatMap(b -> b.numberOrFraction(Range.of(0, 100_000, "balls")))
            .map(BigDecimal::doubleValue)
            .orElse(0.0);
    Optional<Located> left = of.get("left");
    Optional<YarnAmount> leftAmount = left.flatMap(YarnReader::amount);
    Optional<Located> count = of.get("counted");
    Optional<Counted> counted = count.flatMap(CountedReader::read);
    double share =
        of.get("share")
            .flatMap(s -> s.number(Range.of(0, 1000, "")))
            .map(BigDecimal::doubleValue)
            .orElse(1.0);
    Optional<Tone> tone = of.get("tone").flatMap(t -> t.word(MotifReader.TONES));
    Optional<String> lotOf = of.get("lot-of").flatMap(YarnReader::code);
    boolean gone = of.get("gone").flatMap(g -> g.word(YES_OR_NO)).orElse(false);
    Optional<Located> asked = of.get("price");
    Optional<Price> price = asked.flatMap(Price::read);
    of.tellUnknown();
    if (stockWanted && !gone && balls.isEmpty() && left.isEmpty() && count.isEmpty()) {
      of.lacks(
          "balls",
          "The yarn does not say what is at hand of it",
          "Add balls: 2, or left: 85 g, or both");
    }
    boolean weighed =
        leftAmount.orElse(null) instanceof YarnAmount.Weight
            || counted.map(Counted::left).orElse(null) instanceof YarnAmount.Weight;
    boolean needsBall = ballCount > 0 || weighed || asked.isPresent();
    if (needsBall && putUp.isEmpty()) {
      String has = ballCount > 0 ? "balls" : weighed ? "a weight left" : "a price";
      of.lacks(
          "ball",
          "The yarn has " + has + " but no put-up",
          "Add what is on a full ball, such as ball: { grams: 50, metres: 120 }");
    }
    if (needsBall && ball.isEmpty()) {
      return yarn(code.orElse(stopgap), colour.orElse(STOPGAP_COLOUR));
    }
    return new Yarn(
        code.orElse(stopgap),
        name.or(() -> code).orElse(stopgap),
        colour.orElse(STOPGAP_COLOUR),
        ball,
        ballCount,
        leftAmount,
        share,
        tone,
        counted,
        lotOf,
        gone,
        price);
  }

  /** Whether a yarn says what is at hand of it. */
  static boolean saysStock(Located located) {
    return located.node() instanceof Node.Mapping of
        && Stream.of("balls", "left", "counted")
            .map(of::get)
            .anyMatch(value -> value != null && !(value instanceof Node.Scalar s && s.empty()));
  }

  /** An amount of loose yarn. */
  static Optional<YarnAmount> amount(String text) {
    return Quantity.parse(text)
        .filter(q -> LEFT.containsKey(q.unit()) && LEFT.get(q.unit()).holds(q.number()))
        .map(q -> Amounts.of(q.number(), q.unit()));
  }

  /** An amount of loose yarn. */
  static Optional<YarnAmount> amount(Located located) {
    return located.quantity(LEFT, "85 g").map(q -> Amounts.of(q.number(), q.unit()));
  }

  private static Yarn yarn(String code, Srgb colour) {
    return Yarn.of(code, colour);
  }

  /** A code, as written: a code such as {@code 101} or {@code NO} is a text all the same. */
  static Optional<String> code(Located located) {
    Optional<String> code = located.text(MOST_CODE_CHARACTERS);
    if (code.isPresent() && !isCode(code.get())) {
      located.wrong(
          MistakeCode.MALFORMED.about(code.get()),
          located.shown() + " is not a yarn's code",
          CODE_REMEDY);
      return Optional.empty();
    }
    return code;
  }

  static boolean isCode(String text) {
    return !text.isEmpty()
        && text.length() <= MOST_CODE_CHARACTERS
        && text.codePoints().allMatch(YarnReader::fitForCode);
  }

  private static boolean fitForCode(int character) {
    return Character.isLetterOrDigit(character) || character == '-' || character == '_';
  }

  private static Optional<Srgb> colour(Located located) {
    String remedy = "Give it as \"#rrggbb\", six hexadecimal digits, in quotes";
    Optional<String> text = located.scalar(remedy);
    if (text.isPresent() && !text.get().matches("#[0-9a-fA-F]{6}")) {
      located.wrong(
          MistakeCode.MALFORMED.about(text.get()),
          Words.quoted(text.get()) + " is not a colour",
          remedy);
      return Optional.empty();
    }
    return text.map(Srgb::parse);
  }

  private static Optional<Ball> ball(Located located) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<Located> grams = of.get("grams");
    Optional<Located> ounces = of.get("ounces");
    Optional<Located> metres = of.get("metres");
    Optional<Located> yards = of.get("yards");
    of.tellUnknown();
    tellUnlessOne(located, "grams", grams, "ounces", ounces);
    tellUnlessOne(located, "metres", metres, "yards", yards);
    Optional<BigDecimal> milligrams =
        grams
            .flatMap(g -> g.number(BALL_GRAMS))
            .map(Units::milligramsOfGrams)
            .or(() -> ounces.flatMap(o -> o.number(BALL_OUNCES)).map(Units::milligramsOfOunces));
    Optional<BigDecimal> millimetres =
        metres
            .flatMap(m -> m.number(BALL_METRES))
            .map(Units::millimetresOfMetres)
            .or(() -> yards.flatMap(y -> y.number(BALL_YARDS)).map(Units::millimetresOfYards));
    return milligrams.flatMap(
        weight -> millimetres.map(length -> new Ball(weight.movePointLeft(3), length)));
  }

  private static void tellUnlessOne(
      Located ball, String name, Optional<?> first, String other, Optional<?> second) {
    if (first.isPresent() == second.isPresent()) {
      ball.wrong(
          MistakeCode.ONE_OF.about(
              List.of(name, other), first.isPresent() ? List.of(name, other) : List.of()),
          "The put-up gives "
              + (first.isPresent() ? "both " : "neither ")
              + name
              + (first.isPresent() ? " and " : " nor ")
              + other,
          "Give either " + name + " or " + other + " of a full ball");
    }
  }
}
