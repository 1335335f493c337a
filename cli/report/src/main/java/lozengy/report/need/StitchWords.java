package lozengy.report.need;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Motif;
import lozengy.model.brief.RoundLengths;
import lozengy.model.brief.RoundLengths.Basis;
import lozengy.model.brief.StitchCounts;
import lozengy.model.layout.PieceKind;
import lozengy.report.Json;

/** Tells how the stitches of rounds came to metres. */
final class StitchWords {

  private StitchWords() {}

  /** A line for each motif with rounds in stitches; none where there is no such motif. */
  static List<String> lines(Blanket blanket) {
    List<String> lines = new ArrayList<>();
    RoundLengths lengths = RoundLengths.of(blanket.brief());
    blanket
        .brief()
        .motifs()
        .forEach(
            (kind, motif) -> {
              Set<Basis> bases = bases(kind, motif, lengths);
              if (!bases.isEmpty()) {
                lines.add(
                    "  " + kind.word() + ": " + metres(blanket, kind, motif) + ", " + words(bases));
              }
            });
    if (!lines.isEmpty()) {
      lines.add(0, "Stitches come to metres like this, tails included:");
      lines.add("");
    }
    return lines;
  }

  /** What rounds that go on in one yarn leave over; none where nothing does. */
  static List<String> uncut(Blanket blanket, long[] savedMillimetres) {
    List<String> saved =
        IntStream.range(0, savedMillimetres.length)
            .filter(yarn -> savedMillimetres[yarn] > 0)
            .mapToObj(yarn -> metres(savedMillimetres[yarn]) + " of " + Words.yarn(blanket, yarn))
            .toList();
    return saved.isEmpty()
        ? List.of()
        : List.of(
            "Every round is counted as cut at both ends. Those that go on in the yarn of the round"
                + " before need no cut: "
                + Words.list(saved)
                + " will be left over.");
  }

  /** The rounds in stitches as data. */
  static List<Map<String, Object>> data(Blanket blanket) {
    List<Map<String, Object>> rounds = new ArrayList<>();
    RoundLengths lengths = RoundLengths.of(blanket.brief());
    blanket
        .brief()
        .motifs()
        .forEach(
            (kind, motif) -> {
              for (int round = 0; round < motif.rounds().size(); round++) {
                if (motif.rounds().get(round).amount() instanceof StitchCounts stitches) {
                  rounds.add(
                      Json.object(
                          "kind", kind.word(),
                          "round", round + 1,
                          "stitches", stitches.total(),
                          "metres",
                              BigDecimal.valueOf(
                                  blanket.motifs().needMillimetres(kind, round, 0), 3),
                          "from", code(lengths.basis(kind, round))));
                }
              }
            });
    return rounds;
  }

  private static String code(Basis basis) {
    return basis.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static Set<Basis> bases(PieceKind kind, Motif motif, RoundLengths lengths) {
    Set<Basis> bases = EnumSet.noneOf(Basis.class);
    for (int round = 0; round < motif.rounds().size(); round++) {
      if (lengths.basis(kind, round) != Basis.STATED) {
        bases.add(lengths.basis(kind, round));
      }
    }
    return bases;
  }

  /** The rounds of a motif and their sum; what is given by weight is told in the first yarn. */
  private static String metres(Blanket blanket, PieceKind kind, Motif motif) {
    long[] rounds =
        IntStream.range(0, motif.rounds().size())
            .mapToLong(round -> blanket.motifs().needMillimetres(kind, round, 0))
            .toArray();
    String all =
        IntStream.range(0, rounds.length)
            .mapToObj(round -> String.format(Locale.ROOT, "%.1f", rounds[round] / 1000.0))
            .collect(Collectors.joining(" + "));
    long sum = IntStream.range(0, rounds.length).mapToLong(round -> rounds[round]).sum();
    return rounds.length == 1 ? metres(sum) : all + " = " + metres(sum);
  }

  private static String words(Set<Basis> bases) {
    return bases.stream().map(StitchWords::words).collect(Collectors.joining("; "));
  }

  private static String words(Basis basis) {
    return switch (basis) {
      case SAMPLE -> "by its samples";
      case SAME_KIND -> "by samples of its other rounds";
      case OTHER_KINDS -> "by the samples of other pieces";
      case STARTING -> "by starting values, which are rough: weigh a sample";
      case STATED, UNKNOWN ->
          throw new IllegalArgumentException("no length from stitches: " + basis);
    };
  }

  private static String metres(long millimetres) {
    return String.format(Locale.ROOT, "%.1f m", millimetres / 1000.0);
  }
}
