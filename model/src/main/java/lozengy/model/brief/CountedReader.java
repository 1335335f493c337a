package lozengy.model.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.Range;

/** Reads the count of a yarn's stock. */
final class CountedReader {

  private CountedReader() {}

  static Optional<Counted> read(Located located) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<YarnAmount> left = of.need("left", "left: 85 g").flatMap(YarnReader::amount);
    List<String> made = names(of, "made");
    List<String> joined = names(of, "joined");
    Optional<Double> edged =
        of.get("edged")
            .flatMap(e -> e.quantity(Map.of("%", Range.of(0, 100, "%")), "40 %"))
            .map(quantity -> quantity.number().doubleValue());
    List<PartWorked> partWorked =
        of.get("part-worked").map(CountedReader::partWorked).orElse(List.of());
    of.tellUnknown();
    return left.map(amount -> new Counted(amount, made, joined, partWorked, edged.orElse(0.0)));
  }

  private static List<PartWorked> partWorked(Located located) {
    List<PartWorked> all = new ArrayList<>();
    for (Located item : located.items("rounds worked of pieces")) {
      item.fields().flatMap(CountedReader::partWorked).ifPresent(all::add);
    }
    return all;
  }

  private static Optional<PartWorked> partWorked(Fields of) {
    Optional<Integer> rounds =
        of.need("rounds-worked", "rounds-worked: 2").flatMap(PieceNoteReader::someRoundsWorked);
    List<String> at = of.need("at", "at: [r3c2]").map(PieceNoteReader::names).orElse(List.of());
    of.tellUnknown();
    return rounds.map(r -> new PartWorked(r, at));
  }

  private static List<String> names(Fields of, String field) {
    List<String> names = new ArrayList<>();
    of.get(field).map(f -> f.itemOrItems("pieces or groups of pieces")).orElse(List.of()).stream()
        .map(PieceNoteReader::name)
        .forEach(name -> names.add(name.orElse("?")));
    return names;
  }
}
