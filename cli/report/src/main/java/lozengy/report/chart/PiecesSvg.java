package lozengy.report.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.report.Markup;
import lozengy.report.PlainText;

/** Writes the blanket itself: rounds, the lines between pieces, marks and labels. */
public final class PiecesSvg {

  /** Between pieces, a light line within a dark one shows beside any two colours. In mm. */
  private static final double LARGEST_LINE = 0.5;

  private static final double LINE_PER_SIDE = 0.04;
  private static final double INNER_LINE = 0.4;

  private static final double LARGEST_NAME = 2.2;
  private static final double LARGEST_CODE = 2.4;
  private static final double LARGEST_LETTER = 2.4;

  /** Smaller letters on paper, in mm, cannot be read. */
  private static final double LEAST_LETTER = 0.95;

  private static final double WELL_LEGIBLE_LETTER = 1.25;

  /** A name smaller than this within a border, in mm, stands across the piece instead. */
  private static final double LEAST_NAME = 1;

  /**
   * The line around what is begun: its dark part and dashes by its light part, and that by a line.
   */
  private static final double BEGUN_DARK = 2.2;

  private static final double BEGUN_LIGHT = 0.5;

  private static final double BEGUN_DASH = 3;

  /** Quiet yarn around a sign, as a part of its band. */
  private static final double SIGN_HALO = 0.3;

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
  private final boolean underWay;

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
    double seam = drawing.trim().seamCm();
    this.letterPlaces =
        new LetterPlaces(page.onBlanketCm(LARGEST_LETTER), this.letters.all(), seam);
    this.underWay = drawing.underWay();
  }

  /** Writes the blanket. */
  public void write(ChartOptions options) {
    svg.open("g", "id", "blanket");
    pieces();
    if (options.look() == ChartOptions.Look.FLAT) {
      new Fabric(svg, blanket, drawing, page).flat();
    } else {
      fabric();
    }
    if (options.signs() == ChartOptions.Signs.CODES) {
      codes();
    } else if (options.signs() == ChartOptions.Signs.LETTERS) {
      letters(true);
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
              new Object[] {"points", page.points(piece.rounds().get(round))},
              style.round(piece.yarns().get(round))));
    }
    svg.close();
  }

  /** Writes what makes the pieces look worked, and the seams and the edging. */
  public void fabric() {
    new Fabric(svg, blanket, drawing, page).write();
  }

  /** Covers some pieces with white, as far as told. */
  void veil(Predicate<PieceDrawing> covered, double opacity) {
    svg.open("g", "fill", Ink.LIGHT, "fill-opacity", opacity);
    drawing.pieces().stream()
        .filter(covered)
        .forEach(piece -> svg.empty("polygon", "points", page.points(piece.outline())));
    svg.close();
  }

  /** Writes the lines between pieces. */
  public void lines() {
    String path =
        drawing.pieces().stream()
            .map(piece -> "M" + page.points(piece.outline()) + "z")
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
    openSigns("codes");
    for (PieceDrawing piece : drawing.pieces()) {
      for (int round = 0; round < piece.rounds().size(); round++) {
        int yarn = piece.yarns().get(round);
        if (yarn != Sequences.OPEN) {
          label(labels.code(piece, round, code(yarn)), style.code(yarn, veiled(piece, round)));
        }
      }
    }
    svg.close();
  }

  /**
   * Writes the yarn's letter on every round, those of one size in a group that states it. A group
   * whose letters are too small to read on paper has the class {@code small}.
   */
  public void letters() {
    letters(false);
  }

  private void letters(boolean legibleOnly) {
    Map<String, List<PieceDrawing>> bySize = new LinkedHashMap<>();
    for (PieceDrawing piece : drawing.pieces()) {
      if (!legibleOnly || legible(piece)) {
        String size = Markup.number(page.onPage(letterPlaces.sizeCm(piece)));
        bySize.computeIfAbsent(size, each -> new ArrayList<>()).add(piece);
      }
    }
    openSigns("letters");
    bySize.forEach(
        (size, pieces) -> {
          Object[] attributes = {"font-size", size};
          boolean small = !legible(pieces.get(0));
          svg.open("g", small ? Markup.with(attributes, "class", "small") : attributes);
          pieces.forEach(this::letters);
          svg.close();
        });
    svg.close();
  }

  private void letters(PieceDrawing piece) {
    for (int round = 0; round < piece.rounds().size(); round++) {
      int yarn = piece.yarns().get(round);
      if (yarn != Sequences.OPEN) {
        Label label = letterPlaces.letter(piece, round, letters.of(yarn));
        Point at = page.onPage(label.centre());
        double base = at.y() + page.onPage(label.sizeCm()) * Label.CAP_HEIGHT / 2;
        Object[] place = {"x", at.x(), "y", base};
        svg.text("text", label.text(), Markup.with(place, style.code(yarn, veiled(piece, round))));
      }
    }
  }

  private boolean veiled(PieceDrawing piece, int round) {
    return underWay && round >= piece.roundsWorked();
  }

  private void openSigns(String id) {
    svg.open(
        "g",
        "id",
        id,
        "text-anchor",
        "middle",
        "font-weight",
        "bold",
        "stroke-width",
        page.onPage(drawing.pieces().get(0).bandCm()) * SIGN_HALO,
        "stroke-linejoin",
        "round",
        "paint-order",
        "stroke");
  }

  private String code(int yarn) {
    return PlainText.oneLine(blanket.yarn(yarn).code());
  }

  /** Whether a piece's letters are large enough to read on paper. */
  private boolean legible(PieceDrawing piece) {
    return page.onPage(letterPlaces.sizeCm(piece)) >= LEAST_LETTER;
  }

  static int legibleScale(Blanket blanket, Drawing drawing) {
    double side = blanket.measures().sideCm();
    List<String> all = YarnLetters.of(blanket).all();
    LetterPlaces places = new LetterPlaces(side, all, drawing.trim().seamCm());
    double least = drawing.pieces().stream().mapToDouble(places::sizeCm).min().orElse(side);
    return (int) Math.max(1, Math.floor(10 * least / WELL_LEGIBLE_LETTER));
  }

  /** How many pieces are too small on paper for letters that can be read. */
  long withoutLetters() {
    return drawing.pieces().stream().filter(piece -> !legible(piece)).count();
  }

  /**
   * Writes the pieces' names, clear of the signs on their rounds.
   *
   * @param signs what stands on the rounds
   */
  public void names(ChartOptions.Signs signs) {
    openNames();
    drawing.pieces().forEach(piece -> name(piece, signs));
    svg.close();
  }

  /** Writes the pieces' names across them, dark on any ground. */
  void namesAcross() {
    openNames();
    drawing.pieces().forEach(piece -> across(labels.name(piece, false)));
    svg.close();
  }

  private void openNames() {
    svg.open(
        "g",
        "id",
        "names",
        "text-anchor",
        "middle",
        "stroke-linejoin",
        "round",
        "paint-order",
        "stroke");
  }

  private void name(PieceDrawing piece, ChartOptions.Signs signs) {
    boolean letters = signs == ChartOptions.Signs.LETTERS && legible(piece);
    List<Box> taken = letters ? letterPlaces.boxes(piece) : List.of();
    int border = piece.yarns().get(piece.yarns().size() - 1);
    Optional<Label> onBorder =
        signs == ChartOptions.Signs.CODES || border == Sequences.OPEN
            ? Optional.empty()
            : labels.nameOnBorder(
                piece, taken, drawing.trim().seamCm(), page.onBlanketCm(LEAST_NAME));
    if (onBorder.isPresent()) {
      int last = piece.rounds().size() - 1;
      Object[] ink = style.code(border, veiled(piece, last));
      double halo = page.onPage(onBorder.get().sizeCm()) * HALO;
      label(onBorder.get(), Markup.with(ink, "stroke-width", halo));
      return;
    }
    boolean codes = signs == ChartOptions.Signs.CODES;
    across(letters ? labels.name(piece, taken) : labels.name(piece, codes));
  }

  private void across(List<Label> name) {
    for (Label label : name) {
      label(
          label,
          "fill",
          Ink.DARK,
          "stroke",
          Ink.LIGHT,
          "stroke-width",
          page.onPage(label.sizeCm()) * HALO);
    }
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

  /** Writes the line around what is worked of pieces that are begun. */
  public void marks() {
    double side = page.onPage(blanket.measures().sideCm());
    double width = Math.min(LARGEST_LINE, side * LINE_PER_SIDE) * BEGUN_LIGHT;
    for (PieceDrawing piece : drawing.pieces()) {
      if (piece.begun()) {
        begun(svg, page.points(piece.rounds().get(piece.roundsWorked() - 1)), width);
      }
    }
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
}
