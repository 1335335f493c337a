package lozengy.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import lozengy.model.brief.PieceState;
import lozengy.report.Markup;
import lozengy.report.TextWidth;

/**
 * Shows how pieces of each state are drawn, and of one blanket how many there are; nothing where
 * all are alike.
 */
final class StateKey {

  private static final double FONT = 2.6;
  private static final double SIDE = 3;
  private static final double GAP = 1.2;
  private static final double LINE = 0.16;
  private static final String YARN = "#7d6a55";
  private static final String INNER_YARN = "#c9b79b";

  /** A state, in a word, and which pieces are in it. */
  private enum Kind {
    JOINED("joined", piece -> piece.state() == PieceState.JOINED),
    MADE("made", piece -> piece.state() == PieceState.MADE),
    BEGUN("worked to the line", PieceDrawing::begun),
    PLANNED("planned", piece -> piece.state() == PieceState.PLANNED && !piece.begun());

    final String words;
    final Predicate<PieceDrawing> holds;

    Kind(String words, Predicate<PieceDrawing> holds) {
      this.words = words;
      this.holds = holds;
    }
  }

  private record Entry(Kind kind, String words) {}

  private final Markup svg;

  StateKey(Markup svg) {
    this.svg = svg;
  }

  /** Writes it so that it ends at the right. */
  void write(List<Drawing> drawings, Optional<String> changed, double right, double y) {
    List<Entry> entries = new ArrayList<>();
    List<Drawing> underWay = drawings.stream().filter(Drawing::underWay).toList();
    for (Kind kind : Kind.values()) {
      long count = underWay.stream().mapToLong(each -> count(each, kind)).sum();
      if (count > 0) {
        String words = drawings.size() == 1 ? kind.words + " (" + count + ")" : kind.words;
        entries.add(new Entry(kind, words));
      }
    }
    changed.ifPresent(words -> entries.add(new Entry(null, words)));
    double at = right - entries.stream().mapToDouble(StateKey::width).sum();
    svg.open("g", "id", "states");
    for (Entry entry : entries) {
      if (entry.kind == null) {
        ChangedMarks.outline(svg, inset(at + SIDE, top(y), SIDE / 10), SIDE / 10);
      } else {
        sample(entry.kind, at, y);
      }
      svg.text(
          "text",
          entry.words,
          "x",
          at + 2 * SIDE + GAP,
          "y",
          y,
          "font-size",
          FONT,
          "fill",
          ChartFurniture.QUIET);
      at += width(entry);
    }
    svg.close();
  }

  private static long count(Drawing drawing, Kind kind) {
    return drawing.pieces().stream().filter(kind.holds).count();
  }

  private static double width(Entry entry) {
    return 2 * SIDE + GAP + TextWidth.ems(entry.words) * FONT + GAP;
  }

  private static double top(double y) {
    return y + FONT * Label.CAP_HEIGHT / -2 - SIDE / 2;
  }

  /** Two squares side by side, as they are drawn. */
  private void sample(Kind kind, double left, double y) {
    double top = top(y);
    svg.open("g", "class", kind.name().toLowerCase(Locale.ROOT));
    for (int i = 0; i < 2; i++) {
      double x = left + i * SIDE;
      boolean worked = kind == Kind.MADE || kind == Kind.JOINED;
      rect(x, top, 0, YARN, worked ? 1 : 1 - Fabric.VEIL);
      boolean inner = worked || kind == Kind.BEGUN;
      rect(x, top, SIDE / 4, INNER_YARN, inner ? 1 : 1 - Fabric.VEIL);
      if (kind == Kind.BEGUN) {
        PiecesSvg.begun(svg, inset(x, top, SIDE / 4), LINE);
      }
    }
    String seam = "M" + number(left + SIDE) + " " + number(top) + "v" + number(SIDE);
    switch (kind) {
      case JOINED -> line(seam, Ink.DARK, 2.2 * LINE);
      case MADE -> line(ring(left, top) + ring(left + SIDE, top), Ink.LIGHT, 4 * LINE);
      default -> line(seam, Ink.LIGHT, LINE);
    }
    svg.close();
  }

  private static String number(double value) {
    return Markup.number(value);
  }

  private static String ring(double x, double y) {
    return "M"
        + number(x)
        + " "
        + number(y)
        + "h"
        + number(SIDE)
        + "v"
        + number(SIDE)
        + "h"
        + number(-SIDE)
        + "z";
  }

  private static String inset(double x, double y, double in) {
    double right = x + SIDE - in;
    double bottom = y + SIDE - in;
    return number(x + in)
        + ","
        + number(y + in)
        + " "
        + number(right)
        + ","
        + number(y + in)
        + " "
        + number(right)
        + ","
        + number(bottom)
        + " "
        + number(x + in)
        + ","
        + number(bottom);
  }

  private void rect(double x, double y, double in, String fill, double opacity) {
    svg.empty(
        "rect",
        "x",
        x + in,
        "y",
        y + in,
        "width",
        SIDE - 2 * in,
        "height",
        SIDE - 2 * in,
        "fill",
        fill,
        "fill-opacity",
        opacity);
  }

  private void line(String path, String colour, double width) {
    svg.empty("path", "d", path, "fill", "none", "stroke", colour, "stroke-width", width);
  }
}
