package lozengy.report.chart;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.report.Markup;
import lozengy.report.PlainText;

/** Writes the blanket itself: rounds, the lines between pieces, marks and labels. */
public final class PiecesSvg {

  /** Between pieces, a light line within a dark one shows beside any two colours. In mm. */
  private static final double LARGEST_LINE = 0.5;

  private static final double LINE_PER_SIDE = 0.04;
  private static final double INNER_LINE = 0.4;

  private static final double LARGEST_NAME = 2.6;
  private static final double LARGEST_CODE = 2.4;
  private static final double LARGEST_LETTER = 2.4;

  /** A narrower band than this in mm holds no letter that can be read. */
  private static final double LEAST_LEGIBLE_BAND = 0.9;

  /** Radius of a mark in mm, and its line as a part of that. */
  static final double MARK_RADIUS = 0.7;

  private static final double MARK_LINE = 0.45;

  /**
   * The line around what is begun: its dark part and dashes by its light part, and that by a line.
   */
  private static final double BEGUN_DARK = 2.2;

  private static final double BEGUN_LIGHT = 0.5;

  private static final double BEGUN_DASH = 3;

  /** Stroke around a name, as a part of the font size. */
  private static final double HALO = 0.24;

  private final Markup svg;
  private final Blanket blanket;
  private final Drawing drawing;
  private final ChartPage page;
  private final Labels labels;
  private final YarnLetters letters;
  private final LetterPlaces letterPlaces;
  private final PieceStyle style;

  /**
   * Makes a writer.
   *
   * @param svg where it writes
   * @param blanket the blanket
   * @param drawing the same as polygons
   * @param page how large it is drawn, and where
   * @param style what the elements are marked with
   */
  public PiecesSvg(Markup svg, Blanket blanket, Drawing drawing, ChartPage page, PieceStyle style) {
    this.style = style;
    this.svg = svg;
    this.blanket = blanket;
    this.drawing = drawing;
    this.page = page;
    this.labels = new Labels(page.onBlanketCm(LARGEST_NAME), page.onBlanketCm(LARGEST_CODE));
    this.letters = YarnLetters.of(blanket);
    this.letterPlaces = new LetterPlaces(page.onBlanketCm(LARGEST_LETTER), this.letters.longest());
  }

  /** Writes the blanket. */
  public void write(ChartOptions options) {
    svg.open("g", "id", "blanket");
    pieces();
    lines();
    boolean codes = options.signs() == ChartOptions.Signs.CODES;
    if (codes) {
      codes();
    } else if (options.signs() == ChartOptions.Signs.LETTERS && lettersLegible()) {
      letters();
    }
    if (options.names()) {
      names(options.signs());
    }
    marks();
    svg.close();
  }

  /** Writes every piece, round by round, within the element that is open. */
  public void pieces() {
    drawing.pieces().forEach(this::piece);
  }

  private void piece(PieceDrawing piece) {
    svg.open("g", style.piece(piece));
    style.title(piece).ifPresent(title -> svg.text("title", title));
    for (int round = piece.rounds().size() - 1; round >= 0; round--) {
      svg.empty(
          "polygon",
          Markup.with(
              new Object[] {"points", points(piece.rounds().get(round))},
              style.round(piece.yarns().get(round))));
    }
    svg.close();
  }

  private String points(Polygon polygon) {
    return polygon.corners().stream()
        .map(page::onPage)
        .map(at -> Markup.number(at.x()) + "," + Markup.number(at.y()))
        .collect(Collectors.joining(" "));
  }

  /** Covers some pieces with white, as far as told. */
  void veil(Predicate<PieceDrawing> covered, double opacity) {
    svg.open("g", "fill", Ink.LIGHT, "fill-opacity", opacity);
    drawing.pieces().stream()
        .filter(covered)
        .forEach(piece -> svg.empty("polygon", "points", points(piece.outline())));
    svg.close();
  }

  /** Writes the lines between pieces. */
  public void lines() {
    String path =
        drawing.pieces().stream()
            .map(piece -> "M" + points(piece.outline()) + "z")
            .collect(Collectors.joining());
    double side = page.onPage(blanket.measures().sideCm());
    double width = Math.min(LARGEST_LINE, side * LINE_PER_SIDE);
    svg.open("g", "id", "lines", "fill", "none", "stroke-linejoin", "round");
    svg.empty("path", "stroke", Ink.DARK, "stroke-width", width, "d", path);
    svg.empty("path", "stroke", Ink.LIGHT, "stroke-width", width * INNER_LINE, "d", path);
    svg.close();
  }

  /** Writes the yarn's code on every round. */
  private void codes() {
    signs("codes", (piece, round, yarn) -> labels.code(piece, round, code(yarn)));
  }

  /** Writes the yarn's letter on every round. */
  public void letters() {
    signs("letters", (piece, round, yarn) -> letterPlaces.letter(piece, round, letters.of(yarn)));
  }

  /** What tells a round's yarn. */
  private interface Sign {
    Label of(PieceDrawing piece, int round, int yarn);
  }

  private void signs(String id, Sign sign) {
    svg.open("g", "id", id, "text-anchor", "middle", "font-weight", "bold");
    for (PieceDrawing piece : drawing.pieces()) {
      for (int round = 0; round < piece.rounds().size(); round++) {
        int yarn = piece.yarns().get(round);
        if (yarn != Sequences.OPEN) {
          label(sign.of(piece, round, yarn), style.code(yarn));
        }
      }
    }
    svg.close();
  }

  private String code(int yarn) {
    return PlainText.oneLine(blanket.yarn(yarn).code());
  }

  /** Whether letters are large enough to read on paper, in the bands of the smallest kind. */
  public boolean lettersLegible() {
    return drawing.pieces().stream()
        .allMatch(piece -> page.onPage(piece.bandCm()) >= LEAST_LEGIBLE_BAND);
  }

  /**
   * Writes the pieces' names, clear of the signs on their rounds.
   *
   * @param signs what stands on the rounds
   */
  public void names(ChartOptions.Signs signs) {
    svg.open(
        "g",
        "id",
        "names",
        "text-anchor",
        "middle",
        "fill",
        Ink.DARK,
        "stroke",
        Ink.LIGHT,
        "stroke-linejoin",
        "round",
        "paint-order",
        "stroke");
    boolean letters = signs == ChartOptions.Signs.LETTERS && lettersLegible();
    for (PieceDrawing piece : drawing.pieces()) {
      List<Label> name =
          letters
              ? labels.name(piece, letterPlaces.boxes(piece))
              : labels.name(piece, signs == ChartOptions.Signs.CODES);
      for (Label label : name) {
        label(label, "stroke-width", page.onPage(label.sizeCm()) * HALO);
      }
    }
    svg.close();
  }

  private void label(Label label, Object... attributes) {
    double size = page.onPage(label.sizeCm());
    Point at = page.onPage(label.centre());
    String turn = label.degrees() == 0 ? "" : " rotate(" + Markup.number(label.degrees()) + ")";
    svg.text(
        "text",
        label.text(),
        Markup.with(
            new Object[] {
              "transform",
              "translate(" + Markup.number(at.x()) + " " + Markup.number(at.y()) + ")" + turn,
              "y",
              size * Label.CAP_HEIGHT / 2,
              "font-size",
              size
            },
            attributes));
  }

  /** Writes the marks of pieces that are begun, made or joined. */
  public void marks() {
    drawing.pieces().forEach(this::mark);
  }

  /** In the lowest corner, so far in that the mark keeps clear of the sides. */
  private void mark(PieceDrawing piece) {
    if (piece.begun()) {
      double side = page.onPage(blanket.measures().sideCm());
      double width = Math.min(LARGEST_LINE, side * LINE_PER_SIDE) * BEGUN_LIGHT;
      begun(svg, points(piece.rounds().get(piece.roundsWorked() - 1)), width);
      return;
    }
    List<Point> corners = piece.outline().corners();
    Point lowest = corners.get(0);
    for (Point corner : corners) {
      lowest = corner.y() > lowest.y() + 1e-9 ? corner : lowest;
    }
    // At this part of the way from the centre to a corner, the rest is the distance to the sides.
    double inradius = page.onPage(piece.outline().inradiusCm());
    double way = Math.max(0, 1 - 2 * MARK_RADIUS / inradius);
    Point at = page.onPage(lowest.towards(piece.centre(), way));
    mark(svg, piece.state(), at, Math.min(MARK_RADIUS, inradius / 2));
  }

  /** A broken line around what is worked of a piece, dark and light so as to show on any colour. */
  static void begun(Markup svg, String points, double width) {
    for (boolean dark : new boolean[] {true, false}) {
      svg.empty(
          "polygon",
          "class",
          "begun",
          "points",
          points,
          "fill",
          "none",
          "stroke",
          dark ? Ink.DARK : Ink.LIGHT,
          "stroke-width",
          dark ? BEGUN_DARK * width : width,
          "stroke-dasharray",
          Markup.number(BEGUN_DASH * width));
    }
  }

  /** A disc for a made piece, a square for a joined one; they show on any colour. */
  static void mark(Markup svg, PieceState state, Point at, double radius) {
    if (state == PieceState.PLANNED) {
      return;
    }
    // A disc or a square: a difference of colour alone could not be told on every yarn.
    double corner = state == PieceState.MADE ? radius : 0;
    svg.empty(
        "rect",
        "class",
        state.word(),
        "x",
        at.x() - radius,
        "y",
        at.y() - radius,
        "width",
        2 * radius,
        "height",
        2 * radius,
        "rx",
        corner,
        "fill",
        Ink.LIGHT,
        "stroke",
        Ink.DARK,
        "stroke-width",
        radius * MARK_LINE);
  }
}
