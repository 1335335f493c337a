package lozengy.report.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.compare.Comparison;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;

/**
 * Draws several arrangements next to each other, all to one scale, as one SVG document. What
 * differs from the first is outlined, where both are planned in the same yarns; one legend serves
 * all that have the same yarns.
 */
public final class ChartsSideBySide {

  private static final double MARGIN = 6;
  private static final double GAP = 8;
  private static final double HEAD = 16;
  private static final double FONT = 3;
  private static final double LINE = 4.2;

  /** How much wider bold text is, in the widest of the common fonts. */
  private static final double BOLD = 1.2;

  /** Room in mm for the largest of them, and the least that their words get. */
  private static final double ROOM = 110;

  private static final double LEAST_WIDTH = 62;

  private static final double ENTRY = 44;
  private static final double ROW = 5;
  private static final double SWATCH = 5;

  private final List<Arrangement> arrangements;
  private final List<String> labels;
  private final List<Drawing> drawings;
  private final int scale;
  private final int columns;
  private final double cellWidth;

  private ChartsSideBySide(List<Arrangement> arrangements, List<String> labels) {
    this.arrangements = arrangements;
    this.labels = labels;
    this.drawings =
        arrangements.stream().map(each -> Drawing.of(each.blanket(), each.sequences())).toList();
    double widest = drawings.stream().mapToDouble(ChartsSideBySide::widthCm).max().orElseThrow();
    double highest = drawings.stream().mapToDouble(ChartsSideBySide::heightCm).max().orElseThrow();
    this.scale = (int) Math.max(1, Math.ceil(10 * Math.max(widest, highest) / ROOM));
    int most = (int) Math.ceil(Math.sqrt(arrangements.size() * highest / widest));
    int rows = (arrangements.size() + most - 1) / most;
    // as few columns as that many rows need, so that the last row is not left nearly empty
    this.columns = (arrangements.size() + rows - 1) / rows;
    this.cellWidth = Math.max(10 * widest / scale, LEAST_WIDTH) + GAP;
  }

  private static double widthCm(Drawing drawing) {
    return drawing.widthCm() + 2 * drawing.trim().edgingCm();
  }

  private static double heightCm(Drawing drawing) {
    return drawing.heightCm() + 2 * drawing.trim().edgingCm();
  }

  /**
   * Draws them.
   *
   * @param arrangements at least one
   * @param labels what the file of each is called
   * @return an SVG document
   */
  public static String svg(List<Arrangement> arrangements, List<String> labels) {
    return new ChartsSideBySide(arrangements, labels).write();
  }

  private String write() {
    double[] tops = tops();
    double width = 2 * MARGIN + columns * cellWidth - GAP;
    double legendTop = tops[tops.length - 1] + 3;
    Map<List<String>, List<Integer>> palettes = palettes();
    int perRow = (int) Math.max(1, (width - 2 * MARGIN) / ENTRY);
    double height = legendTop + legendHeight(palettes, perRow) + MARGIN;
    Markup svg =
        Markup.svg(
            "width",
            Markup.number(width) + "mm",
            "height",
            Markup.number(height) + "mm",
            "viewBox",
            "0 0 " + Markup.number(width) + " " + Markup.number(height),
            "role",
            "img",
            "aria-labelledby",
            "title",
            "font-family",
            Chart.FONTS);
    svg.text("title", "Charts of " + Figures.count(labels.size(), "arrangement"), "id", "title");
    svg.empty("rect", "width", "100%", "height", "100%", "fill", Ink.LIGHT);
    for (int i = 0; i < drawings.size(); i++) {
      double left = MARGIN + i % columns * cellWidth;
      chart(svg, i, left, tops[i / columns]);
    }
    String unlike = drawings.size() > 1 ? "unlike 1" : "changed";
    Optional<String> key = Optional.of(unlike).filter(words -> anyMarked());
    new StateKey(svg).write(drawings, key, width - MARGIN, legendTop);
    legend(svg, palettes, perRow, legendTop + 3);
    return svg.finish();
  }

  private boolean anyMarked() {
    return IntStream.range(0, drawings.size()).anyMatch(i -> !changed(i).isEmpty());
  }

  /** Where each row begins, and where the last one ends, in mm. */
  private double[] tops() {
    int rows = (drawings.size() + columns - 1) / columns;
    double[] tops = new double[rows + 1];
    tops[0] = MARGIN;
    for (int row = 0; row < rows; row++) {
      double highest =
          drawings.subList(row * columns, Math.min(drawings.size(), (row + 1) * columns)).stream()
              .mapToDouble(ChartsSideBySide::heightCm)
              .max()
              .orElseThrow();
      tops[row + 1] = tops[row] + HEAD + 10 * highest / scale + GAP;
    }
    return tops;
  }

  private void chart(Markup svg, int index, double left, double top) {
    Arrangement arrangement = arrangements.get(index);
    Drawing drawing = drawings.get(index);
    svg.open("g", "id", "arrangement-" + (index + 1));
    words(svg, index, left, top);
    double edging = 10 * drawing.trim().edgingCm() / scale;
    ChartPage page =
        new ChartPage(scale, cellWidth, cellWidth, left + edging, top + HEAD + edging, cellWidth);
    Coloured style = new Coloured(arrangement.blanket(), (index + 1) + "-");
    PiecesSvg pieces = new PiecesSvg(svg, arrangement.blanket(), drawing, page, style);
    pieces.pieces();
    pieces.fabric();
    pieces.marks();
    ChangedMarks.write(svg, page, drawing, changed(index));
    svg.close();
  }

  /** What differs from the first; of one alone, what differs from the plan before. */
  private Set<Integer> changed(int index) {
    if (arrangements.size() == 1) {
      return ChangedPieces.since(arrangements.get(0));
    }
    return rounds(index).entrySet().stream()
        .filter(piece -> piece.getValue() > 0)
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  private Map<Integer, Integer> rounds(int index) {
    return Comparison.changedRounds(arrangements.get(index), arrangements.get(0));
  }

  private void words(Markup svg, int index, double left, double top) {
    Arrangement arrangement = arrangements.get(index);
    String title = PlainText.oneLine(arrangement.blanket().brief().title());
    String file = PlainText.oneLine(labels.get(index)).replaceAll(".*[/\\\\]", "");
    double ems = (cellWidth - GAP) / FONT;
    List<String> below = new ArrayList<>();
    below.add(
        "score "
            + Figures.fixed(arrangement.score().total(), 2)
            + ", "
            + TextWidth.fitEnd(file, ems - TextWidth.ems("score 00.00, ")));
    below.add(state(arrangement) + compared(index));
    line(svg, TextWidth.fit((index + 1) + "  " + title, ems / BOLD), left, top + 3, true);
    for (int i = 0; i < below.size(); i++) {
      line(svg, TextWidth.fit(below.get(i), ems), left, top + 3 + (i + 1) * LINE, false);
    }
  }

  private static void line(Markup svg, String words, double x, double y, boolean bold) {
    Object[] attributes = {"x", x, "y", y, "font-size", FONT, "fill", Ink.DARK};
    svg.text("text", words, bold ? Markup.with(attributes, "font-weight", "bold") : attributes);
  }

  private static String state(Arrangement arrangement) {
    return BlanketWords.inState(arrangement, PieceState.MADE)
        + " made, "
        + BlanketWords.inState(arrangement, PieceState.JOINED)
        + " joined";
  }

  private String compared(int index) {
    if (index == 0) {
      return "";
    }
    Map<Integer, Integer> rounds = rounds(index);
    return rounds.isEmpty()
        ? "; not compared with 1"
        : "; " + Figures.count(changed(index).size(), "piece") + " unlike 1";
  }

  /** The numbers of those that have the same yarns. */
  private Map<List<String>, List<Integer>> palettes() {
    Map<List<String>, List<Integer>> palettes = new LinkedHashMap<>();
    for (int i = 0; i < arrangements.size(); i++) {
      List<String> yarns =
          arrangements.get(i).blanket().brief().yarns().stream()
              .map(yarn -> yarn.code() + " " + yarn.name() + " " + yarn.colour().hex())
              .toList();
      palettes.computeIfAbsent(yarns, each -> new ArrayList<>()).add(i);
    }
    return palettes;
  }

  private static double legendHeight(Map<List<String>, List<Integer>> palettes, int perRow) {
    return 3
        + palettes.keySet().stream()
            .mapToDouble(yarns -> LINE + (yarns.size() + perRow - 1) / perRow * ROW)
            .sum();
  }

  private void legend(
      Markup svg, Map<List<String>, List<Integer>> palettes, int perRow, double top) {
    double y = top;
    svg.open("g", "id", "legend");
    for (List<Integer> numbers : palettes.values()) {
      String which =
          numbers.stream().map(i -> Integer.toString(i + 1)).collect(Collectors.joining(", "));
      line(svg, palettes.size() == 1 ? "Yarns" : "Yarns of " + which, MARGIN, y + 3, true);
      y += LINE;
      Blanket blanket = arrangements.get(numbers.get(0)).blanket();
      List<Integer> yarns =
          IntStream.range(0, blanket.yarnCount())
              .boxed()
              .sorted(Comparator.comparing(blanket.yarns()::tone))
              .toList();
      for (int i = 0; i < yarns.size(); i++) {
        yarn(svg, blanket.yarn(yarns.get(i)), MARGIN + i % perRow * ENTRY, y + i / perRow * ROW);
      }
      y += (yarns.size() + perRow - 1) / perRow * ROW;
    }
    svg.close();
  }

  private static void yarn(Markup svg, Yarn yarn, double left, double top) {
    svg.empty(
        "rect",
        "x",
        left,
        "y",
        top + 0.5,
        "width",
        SWATCH,
        "height",
        ROW - 1,
        "fill",
        yarn.colour().hex(),
        "stroke",
        ChartFurniture.QUIET,
        "stroke-width",
        0.2);
    String words = PlainText.oneLine(yarn.code() + "  " + yarn.name());
    double ems = (ENTRY - SWATCH - 4) / FONT;
    line(svg, TextWidth.fit(words, ems), left + SWATCH + 1.5, top + 3.6, false);
  }
}
