package lozengy.benchmarks.brief;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;

/**
 * Writes a generated brief as the YAML file that a person would hand in. Covers what generated
 * briefs have: loose yarn by length, the usual preferences, planned pieces.
 */
public final class BriefFile {

  private BriefFile() {}

  /** The text of the file. */
  public static String text(Brief brief) {
    StringBuilder text = new StringBuilder();
    line(text, "format: %s", Brief.FORMAT);
    line(text, "title: %s", brief.title());
    line(text, "layout: { %s }", layout(brief.layout()));
    line(text, "motifs:");
    brief.motifs().forEach((kind, motif) -> motif(text, kind, motif));
    line(text, "yarns:");
    brief.yarns().forEach(yarn -> yarn(text, yarn));
    brief.joining().ifPresent(use -> line(text, "joining: { %s }", use(use)));
    brief.edging().ifPresent(use -> line(text, "edging: { %s }", use(use)));
    rules(text, brief.rules());
    if (!brief.pieces().isEmpty()) {
      line(text, "pieces:");
      brief.pieces().forEach(note -> note(text, note));
    }
    return text.toString();
  }

  private static void line(StringBuilder text, String format, Object... values) {
    text.append(format.formatted(values)).append('\n');
  }

  private static String layout(LayoutSize size) {
    String counts =
        "setting: %s, across: %d, down: %d"
            .formatted(size.setting().word(), size.across(), size.down());
    if (size.setting() == Setting.STRAIGHT) {
      return counts;
    }
    return "%s, sides: %s, corners: %s"
        .formatted(counts, filled(size.sideTriangles()), filled(size.cornerTriangles()));
  }

  private static String filled(boolean triangles) {
    return triangles ? "triangles" : "open";
  }

  private static void motif(StringBuilder text, PieceKind kind, Motif motif) {
    line(text, "  %s:", kind.word());
    motif
        .edgeCm()
        .ifPresent(
            cm ->
                line(
                    text,
                    "    %s: %s cm",
                    kind == PieceKind.SQUARE ? "side" : "base",
                    plain(BigDecimal.valueOf(cm))));
    line(text, "    rounds:");
    for (Round round : motif.rounds()) {
      String tones =
          round.tones().stream().sorted().map(Tone::word).collect(Collectors.joining(", "));
      line(text, "      - { tone: [%s], metres: %s }", tones, metres(round.amount()));
    }
  }

  private static void yarn(StringBuilder text, Yarn yarn) {
    line(
        text,
        "  - { code: %s, name: %s, colour: \"%s\", left: %s m, share: %s }",
        yarn.code(),
        yarn.name(),
        yarn.colour().hex(),
        metres(yarn.left().orElseThrow()),
        plain(BigDecimal.valueOf(yarn.share())));
  }

  private static String metres(YarnAmount amount) {
    return plain(BigDecimal.valueOf(amount.millimetres(null), 3));
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }

  private static String use(YarnUse use) {
    return "yarn: %s, metres-per-metre: %s"
        .formatted(use.yarn(), plain(BigDecimal.valueOf(use.metresPerMetre())));
  }

  private static void rules(StringBuilder text, Rules rules) {
    line(text, "rules:");
    line(text, "  min-contrast: %s", plain(BigDecimal.valueOf(rules.minContrast())));
    line(text, "  within-piece: %s", rules.withinPiece().word());
    line(
        text,
        "  copies: %s",
        rules.copies().isPresent() ? Integer.toString(rules.copies().getAsInt()) : "free");
    line(text, "  keep-back: %s %%", plain(BigDecimal.valueOf(rules.keepBackPercent())));
  }

  private static void note(StringBuilder text, PieceNote note) {
    Map<String, List<String>> parts =
        Map.of(
            "rounds", note.rounds().stream().map(Optional::orElseThrow).toList(),
            "not", List.copyOf(note.not()));
    String known =
        parts.entrySet().stream()
            .filter(part -> !part.getValue().isEmpty())
            .map(part -> "%s: [%s]".formatted(part.getKey(), String.join(", ", part.getValue())))
            .collect(Collectors.joining(", "));
    line(text, "  - { at: [%s], %s }", String.join(", ", note.at()), known);
  }
}
