package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Node;
import lozengy.model.input.Range;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;

/** Reads the pile: finished pieces that have no place yet. */
final class PileReader {

  private static final Range COUNTS = Range.whole(1, LargeLayout.MOST_PIECES, "pieces");
  private static final Map<String, PieceKind> KINDS =
      Words.meanings(PieceKind.values(), PieceKind::word);

  private PileReader() {}

  static List<PileEntry> read(Fields of) {
    List<PileEntry> entries = new ArrayList<>();
    List<Located> items = of.get("pile").map(p -> p.items("finished pieces")).orElse(List.of());
    for (Located item : items) {
      entries.add(entry(item));
    }
    return entries;
  }

  static PileEntry entry(Located located) {
    PileEntry stopgap = new PileEntry(PieceKind.SQUARE, List.of("?"), 1, Set.of());
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return stopgap;
    }
    Fields of = found.get();
    Optional<PieceKind> kind = of.need("kind", "kind: square").flatMap(k -> k.word(KINDS));
    Optional<Located> at = of.need("rounds", "rounds: [REE, MUD]");
    List<String> rounds = at.map(PileReader::rounds).orElse(List.of());
    Optional<Located> counts = of.get("count");
    Optional<Integer> count = counts.flatMap(c -> c.number(COUNTS)).map(BigDecimal::intValueExact);
    Set<String> counted = new LinkedHashSet<>();
    of.get("counted").map(n -> n.itemOrItems("yarns' codes")).orElse(List.of()).stream()
        .map(YarnReader::code)
        .forEach(code -> code.ifPresent(counted::add));
    Range outs =
        Range.whole(0, count.orElse(counts.isPresent() ? LargeLayout.MOST_PIECES : 1), "pieces");
    Optional<Integer> out =
        of.get("out").flatMap(o -> o.number(outs)).map(BigDecimal::intValueExact);
    of.tellUnknown();
    return kind.isEmpty() || rounds.isEmpty()
        ? stopgap
        : new PileEntry(
            kind.get(), rounds, count.orElse(1), counted, Math.min(out.orElse(0), count.orElse(1)));
  }

  private static List<String> rounds(Located located) {
    List<String> rounds = new ArrayList<>();
    List<Located> items = located.items("yarns' codes, the centre first");
    for (Located item : items) {
      if (item.empty()) {
        item.wrong(
            MistakeCode.ROUND_OPEN.about(),
            "The round is open",
            "A finished piece has a yarn in every round");
      }
      rounds.add(item.empty() ? "?" : YarnReader.code(item).orElse("?"));
    }
    if (items.isEmpty() && located.node() instanceof Node.Items) {
      located.wrong(
          MistakeCode.WRONG_COUNT.about("rounds", 0, 1),
          "No round is given",
          "Give the yarn of every round, the centre first");
    }
    return rounds;
  }
}
