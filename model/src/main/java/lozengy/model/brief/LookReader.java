package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Node;
import lozengy.model.input.Range;
import lozengy.model.input.Words;

/** Reads the look that a brief asks for. */
final class LookReader {

  private static final Range CONTRAST = Range.of(0, 100, "percent");
  private static final Map<String, Symmetry> SYMMETRIES =
      Words.meanings(Symmetry.values(), Symmetry::word);

  private static final Map<String, Fade.Towards> TOWARDS =
      Words.meanings(Fade.Towards.values(), Fade.Towards::word);

  private static final Map<String, Order> ORDERS = Words.meanings(Order.values(), Order::word);

  private static final Map<String, Fade.Order> FADE_ORDERS =
      Words.meanings(
          new Fade.Order[] {Fade.Order.DARK_TO_LIGHT, Fade.Order.LIGHT_TO_DARK}, Fade.Order::word);

  private static final Range PIECES = Range.whole(0, LargeLayout.MOST_PIECES, "pieces");
  private static final Range ROUND = Range.whole(1, 50, "");
  private static final String BORDER = "border";
  private static final String ALL = "all";

  private static final Map<String, Look.Meeting> MEETINGS =
      Words.meanings(Look.Meeting.values(), Look.Meeting::word);

  private static final Look.Pair STOPGAP = new Look.Pair("?", "?");

  private LookReader() {}

  static Look read(Fields brief) {
    Optional<Fields> found = brief.get("look").flatMap(Located::fields);
    if (found.isEmpty()) {
      return Look.NONE;
    }
    Fields of = found.get();
    Look look =
        new Look(
            of.get("symmetry").flatMap(s -> s.word(SYMMETRIES)).orElse(Symmetry.NONE),
            of.get("contrast").flatMap(LookReader::contrast).orElse(Look.NONE.contrast()),
            of.get("borders").map(LookReader::borders).orElse(List.of()),
            of.get("zones").map(LookReader::zones).orElse(List.of()),
            of.get("apart").map(LookReader::apart).orElse(List.of()),
            of.get("counts").map(LookReader::counts).orElse(List.of()),
            of.get("fade").flatMap(LookReader::fade),
            of.get("order").flatMap(order -> order.word(ORDERS)));
    of.tellUnknown();
    return look;
  }

  private static Optional<Look.Contrast> contrast(Located located) {
    if (!(located.node() instanceof Node.Mapping)) {
      return liveliness(located).map(both -> new Look.Contrast(both, both));
    }
    Fields of = located.fields().orElseThrow();
    double between = of.get("between").flatMap(LookReader::liveliness).orElse(Look.LIVELY);
    double within = of.get("within").flatMap(LookReader::liveliness).orElse(Look.LIVELY);
    of.tellUnknown();
    return Optional.of(new Look.Contrast(between, within));
  }

  private static Optional<Double> liveliness(Located located) {
    if (located.node() instanceof Node.Scalar scalar) {
      if (scalar.text().equals("calm")) {
        return Optional.of(Look.CALM);
      }
      if (scalar.text().equals("lively")) {
        return Optional.of(Look.LIVELY);
      }
    }
    return located
        .number(CONTRAST, "Write calm or lively, or give " + CONTRAST.words())
        .map(BigDecimal::doubleValue);
  }

  private static List<String> borders(Located located) {
    List<String> codes = codes(located);
    if (codes.size() > 2) {
      located.wrong(
          MistakeCode.WRONG_COUNT.about("yarns", codes.size(), 1, 2),
          codes.size() + " yarns are named",
          "Name one for all borders, or two that alternate");
      return List.of();
    }
    return codes;
  }

  private static List<Look.Zone> zones(Located located) {
    List<Look.Zone> zones = new ArrayList<>();
    for (Located item : located.items("zones, each with what it is to have only")) {
      Optional<Fields> fields = item.fields();
      List<String> only = List.of("?");
      Where where = Where.EVERYWHERE;
      if (fields.isPresent()) {
        where = where(fields.get(), Where.EVERYWHERE);
        only =
            fields
                .get()
                .need("only", "only: [MUD, REE]")
                .map(LookReader::codes)
                .filter(codes -> !codes.isEmpty())
                .orElse(only);
        fields.get().tellUnknown();
      }
      zones.add(new Look.Zone(where, only));
    }
    return zones;
  }

  private static List<Look.Pair> apart(Located located) {
    List<Look.Pair> pairs = new ArrayList<>();
    for (Located item : located.items("pairs of yarns, each such as [MUD, REE]")) {
      // a stopgap keeps the numbers of the pairs behind it
      pairs.add(
          item.node() instanceof Node.Mapping
              ? item.fields().map(LookReader::apart).orElse(STOPGAP)
              : pair(item, Look.Meeting.SEAMS));
    }
    return pairs;
  }

  private static Look.Pair apart(Fields of) {
    Optional<Located> yarns = of.need("yarns", "yarns: [MUD, REE]");
    Optional<Look.Meeting> on = of.need("on", "on: rounds").flatMap(word -> word.word(MEETINGS));
    of.tellUnknown();
    return yarns.map(two -> pair(two, on.orElse(Look.Meeting.SEAMS))).orElse(STOPGAP);
  }

  private static Look.Pair pair(Located item, Look.Meeting on) {
    List<String> codes = codes(item);
    if (codes.size() != 2 && item.node() instanceof Node.Items) {
      item.wrong(
          MistakeCode.WRONG_COUNT.about("yarns", codes.size(), 2, 2),
          codes.size() + " yarns are named",
          "Name two, such as [MUD, REE]");
    }
    return codes.size() == 2 ? new Look.Pair(codes.get(0), codes.get(1), on) : STOPGAP;
  }

  private static List<Look.Count> counts(Located located) {
    List<Look.Count> counts = new ArrayList<>();
    for (Located item : located.items("counts, each with a yarn and at-least or at-most")) {
      // a stopgap keeps the numbers of the counts behind it
      counts.add(
          item.fields()
              .map(LookReader::count)
              .orElseGet(() -> new Look.Count("?", Where.EVERYWHERE, 0, OptionalInt.empty())));
    }
    return counts;
  }

  private static Look.Count count(Fields of) {
    String yarn = of.need("yarn", "yarn: MUD").flatMap(YarnReader::code).orElse("?");
    Where where = where(of, Where.EVERYWHERE);
    Optional<Located> least = of.get("at-least");
    Optional<Located> most = of.get("at-most");
    if (least.isEmpty() && most.isEmpty()) {
      of.need("at-least", "at-least: 4, or at-most: 12");
    }
    OptionalInt atLeast = pieces(least);
    OptionalInt atMost = pieces(most);
    if (atLeast.isPresent() && atMost.isPresent() && atLeast.getAsInt() > atMost.getAsInt()) {
      least
          .get()
          .wrong(
              MistakeCode.CONTRADICTS.about(atLeast.getAsInt(), atMost.getAsInt()),
              "At least " + atLeast.getAsInt() + " is more than at most " + atMost.getAsInt(),
              "Lower at-least, or raise at-most");
      atLeast = OptionalInt.empty();
    }
    of.tellUnknown();
    return new Look.Count(yarn, where, atLeast.orElse(0), atMost);
  }

  private static OptionalInt pieces(Optional<Located> located) {
    return located
        .flatMap(each -> each.number(PIECES, "Give " + PIECES.words()))
        .map(number -> OptionalInt.of(number.intValueExact()))
        .orElse(OptionalInt.empty());
  }

  private static Optional<Fade> fade(Located located) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<Fade.Towards> towards =
        of.need("towards", "towards: bottom").flatMap(each -> each.word(TOWARDS));
    Optional<Located> order = of.get("order");
    List<String> yarns =
        order
            .filter(each -> each.node() instanceof Node.Items)
            .map(LookReader::codes)
            .orElse(List.of());
    Fade.Order asked = Fade.Order.DARK_TO_LIGHT;
    if (!yarns.isEmpty()) {
      asked = Fade.Order.STATED;
    } else if (order.isPresent() && order.get().node() instanceof Node.Scalar) {
      asked = order.get().word(FADE_ORDERS).orElse(asked);
    }
    Where where = where(of, Where.BORDERS);
    of.tellUnknown();
    return Optional.of(new Fade(towards.orElse(Fade.Towards.BOTTOM), asked, yarns, where));
  }

  /** Codes of yarns; one that is no code stands as {@code ?}, where its mistake is told. */
  private static List<String> codes(Located located) {
    List<String> codes = new ArrayList<>();
    List<Located> items = located.itemOrItems("yarns' codes");
    for (Located item : items) {
      codes.add(YarnReader.code(item).orElse("?"));
    }
    if (items.isEmpty()) {
      located.wrong(
          MistakeCode.WRONG_COUNT.about("yarns", 0, 1),
          "No yarn is named",
          "Name at least one yarn's code");
    }
    return codes;
  }

  private static Where where(Fields of, Where silent) {
    List<String> at = of.get("at").map(PieceNoteReader::names).orElse(silent.at());
    List<Integer> rounds = of.get("rounds").map(LookReader::rounds).orElse(silent.rounds());
    return new Where(at.isEmpty() ? silent.at() : at, rounds);
  }

  private static List<Integer> rounds(Located located) {
    if (located.node() instanceof Node.Scalar scalar && scalar.text().equals(ALL)) {
      return List.of();
    }
    String remedy = "Write border or all, or give numbers of rounds, 1 at the centre";
    List<Integer> rounds = new ArrayList<>();
    List<Located> items = located.itemOrItems("rounds' numbers, or border");
    for (Located item : items) {
      if (item.node() instanceof Node.Scalar scalar && scalar.text().equals(BORDER)) {
        rounds.add(Where.BORDER);
      } else {
        item.number(ROUND, remedy).ifPresent(number -> rounds.add(number.intValueExact()));
      }
    }
    if (items.isEmpty()) {
      located.wrong(MistakeCode.WRONG_COUNT.about("rounds", 0, 1), "No round is named", remedy);
    }
    return rounds;
  }
}
