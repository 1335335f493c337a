package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.Node;
import lozengy.model.input.Range;

/** Reads the look that a brief asks for. */
final class LookReader {

  private static final Range CONTRAST = Range.of(0, 100, "percent");
  private static final Range ROUND = Range.whole(1, 50, "");
  private static final String BORDER = "border";
  private static final String ALL = "all";

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
            of.get("contrast").flatMap(LookReader::contrast).orElse(Look.LIVELY),
            of.get("borders").map(LookReader::borders).orElse(List.of()),
            of.get("zones").map(LookReader::zones).orElse(List.of()),
            of.get("apart").map(LookReader::apart).orElse(List.of()));
    of.tellUnknown();
    return look;
  }

  private static Optional<Double> contrast(Located located) {
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
          codes.size() + " yarns are named", "Name one for all borders, or two that alternate");
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
      List<String> codes = codes(item);
      if (codes.size() != 2 && item.node() instanceof Node.Items) {
        item.wrong(codes.size() + " yarns are named", "Name two, such as [MUD, REE]");
      }
      // a stopgap keeps the numbers of the pairs behind it
      pairs.add(codes.size() == 2 ? new Look.Pair(codes.get(0), codes.get(1)) : STOPGAP);
    }
    return pairs;
  }

  /** Codes of yarns; one that is no code stands as {@code ?}, where its mistake is told. */
  private static List<String> codes(Located located) {
    List<String> codes = new ArrayList<>();
    List<Located> items = located.itemOrItems("yarns' codes");
    for (Located item : items) {
      codes.add(YarnReader.code(item).orElse("?"));
    }
    if (items.isEmpty()) {
      located.wrong("No yarn is named", "Name at least one yarn's code");
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
      located.wrong("No round is named", remedy);
    }
    return rounds;
  }
}
