package lozengy.report.chart;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.report.Markup;

/**
 * What makes coloured shapes look worked: the relief of stitches, seams in the joining's yarn, the
 * edging. As long as the work is under way only what is worked has relief; what is planned lies
 * under a veil, made pieces lie apart, and joined ones are held together by their seams.
 */
final class Fabric {

  /** How far white covers what is not worked yet. */
  static final double VEIL = 0.36;

  /** Widths as multiples of a seam's. */
  private static final double SHADOW = 2;

  private static final double APART = 2.6;
  private static final double OPEN_SEAM = 1.1;
  private static final double OPEN_SEAM_LIGHT = 0.55;

  /** Stitches of a seam: how long and how far apart, by its width. */
  private static final double SEAM_STITCH = 1.5;

  private static final double SEAM_GAP = 0.45;

  /** Narrower seams on the page, in mm, show no stitches; narrower bands no relief. */
  private static final double LEAST_STITCHED_SEAM = 0.2;

  private static final double LEAST_RELIEF = 0.22;

  private static final String NOTHING = "none";

  private final Markup svg;
  private final Blanket blanket;
  private final Drawing drawing;
  private final ChartPage page;
  private final SideLines sides;
  private final boolean underWay;

  Fabric(Markup svg, Blanket blanket, Drawing drawing, ChartPage page) {
    this.svg = svg;
    this.blanket = blanket;
    this.drawing = drawing;
    this.page = page;
    this.sides = SideLines.of(drawing.pieces());
    this.underWay = drawing.underWay();
  }

  void write() {
    svg.open("g", "class", "fabric", "pointer-events", NOTHING);
    veil();
    relief();
    if (underWay) {
      seams("joined-seams", Fabric::joined);
      openSeams();
      apart();
    } else {
      seams("seams", (one, other) -> true);
    }
    edging();
    svg.close();
  }

  /** Writes the diagram: flat bands between plain lines, with the states of the pieces. */
  void flat() {
    svg.open("g", "class", "fabric", "pointer-events", NOTHING);
    veil();
    plain(path((one, other) -> !underWay || !joined(one, other)), seamWidth());
    if (underWay) {
      seams("joined-seams", Fabric::joined);
      apart();
    }
    outline();
    svg.close();
  }

  private static boolean joined(PieceDrawing one, PieceDrawing other) {
    return one.state() == PieceState.JOINED && other.state() == PieceState.JOINED;
  }

  /** Over all that is not worked yet while other things are. */
  private void veil() {
    PathData path = new PathData();
    for (PieceDrawing piece : drawing.pieces()) {
      if (underWay && piece.roundsWorked() < piece.rounds().size()) {
        add(path, piece.outline());
        if (piece.begun()) {
          add(path, piece.rounds().get(piece.roundsWorked() - 1));
        }
      }
    }
    if (!path.isEmpty()) {
      svg.empty(
          "path",
          "class",
          "veil",
          "fill",
          Ink.LIGHT,
          "fill-opacity",
          VEIL,
          "fill-rule",
          "evenodd",
          "d",
          path);
    }
  }

  private void add(PathData path, Polygon polygon) {
    path.ring(polygon.corners().stream().map(page::onPage).toList());
  }

  private void relief() {
    Map<String, String> ids = new LinkedHashMap<>();
    svg.open("g", "class", "relief");
    for (PieceDrawing piece : drawing.pieces()) {
      int rounds = underWay ? piece.roundsWorked() : piece.rounds().size();
      boolean legible = page.onPage(piece.bandCm()) >= LEAST_RELIEF;
      if (rounds == 0 || !legible || piece.yarns().subList(0, rounds).contains(Sequences.OPEN)) {
        continue;
      }
      StitchRelief.Form form = StitchRelief.Form.of(piece);
      String shape = form.key() + " " + rounds + " 1:" + page.scale();
      String id = ids.get(shape);
      if (id == null) {
        // by what it looks like, so that drawings within one document do not disturb each other
        id = "worked-" + Integer.toHexString(shape.hashCode());
        ids.put(shape, id);
        svg.open("defs");
        new StitchRelief(page, piece, form).write(svg, id, rounds);
        svg.close();
      }
      Point at = page.onPage(piece.centre());
      String turn = form.quarters() == 0 ? "" : "rotate(" + 90 * form.quarters() + ")";
      String place = "translate(" + Markup.number(at.x()) + " " + Markup.number(at.y()) + ")";
      svg.empty("use", "xlink:href", "#" + id, "transform", place + turn);
    }
    svg.close();
  }

  private void seams(String kind, BiPredicate<PieceDrawing, PieceDrawing> which) {
    PathData path = path(which);
    if (path.isEmpty()) {
      return;
    }
    double width = seamWidth();
    int yarn = drawing.trim().seamYarn();
    if (yarn == Sequences.OPEN) {
      plain(path, width);
      return;
    }
    svg.open("g", "class", kind, "fill", NOTHING, "stroke-linecap", "square");
    shade(path, "#000", 0.3, SHADOW * width);
    svg.empty(
        "path", "stroke", blanket.yarn(yarn).colour().hex(), "stroke-width", width, "d", path);
    if (width >= LEAST_STITCHED_SEAM) {
      svg.empty(
          "path",
          "stroke",
          Ink.on(blanket.yarn(yarn).colour()),
          "stroke-opacity",
          0.34,
          "stroke-width",
          0.34 * width,
          "stroke-linecap",
          "butt",
          "stroke-dasharray",
          Markup.number(SEAM_STITCH * width) + " " + Markup.number(SEAM_GAP * width),
          "d",
          path);
    }
    svg.close();
  }

  private double seamWidth() {
    return page.onPage(drawing.trim().seamCm());
  }

  private PathData path(BiPredicate<PieceDrawing, PieceDrawing> which) {
    PathData path = new PathData();
    for (List<Point> line : sides.seams(which)) {
      Point from = page.onPage(line.get(0));
      Point to = page.onPage(line.get(1));
      path.move(from.x(), from.y()).line(to.x(), to.y());
    }
    return path;
  }

  private void shade(Object path, String colour, double opacity, double width) {
    svg.empty(
        "path", "stroke", colour, "stroke-opacity", opacity, "stroke-width", width, "d", path);
  }

  /** A light line within a dark one shows beside any two colours. */
  private void plain(PathData path, double width) {
    if (path.isEmpty()) {
      return;
    }
    svg.open("g", "class", "open-seams", "fill", NOTHING);
    svg.empty("path", "stroke", Ink.DARK, "stroke-width", OPEN_SEAM * width, "d", path);
    svg.empty("path", "stroke", Ink.LIGHT, "stroke-width", OPEN_SEAM_LIGHT * width, "d", path);
    svg.close();
  }

  private void openSeams() {
    plain(path((one, other) -> !joined(one, other)), seamWidth());
  }

  /** Made pieces are not held by anything yet: white shows around them. */
  private void apart() {
    PathData path = new PathData();
    drawing.pieces().stream()
        .filter(piece -> piece.state() == PieceState.MADE)
        .forEach(piece -> add(path, piece.outline()));
    if (!path.isEmpty()) {
      double width = seamWidth();
      svg.open("g", "class", "apart", "fill", NOTHING, "stroke-linejoin", "round");
      svg.empty("path", "stroke", Ink.DARK, "stroke-width", (APART + 0.9) * width, "d", path);
      svg.empty("path", "stroke", Ink.LIGHT, "stroke-width", APART * width, "d", path);
      svg.close();
    }
  }

  /** A thin line around all. */
  private void outline() {
    PathData path = new PathData();
    sides.outline().forEach(ring -> path.ring(ring.corners().stream().map(page::onPage).toList()));
    svg.empty(
        "path", "fill", NOTHING, "stroke", Ink.DARK, "stroke-width", 0.4 * seamWidth(), "d", path);
  }

  private void edging() {
    List<Trim.Band> bands = drawing.trim().edging();
    if (bands.isEmpty()) {
      outline();
    }
    // the outermost first, so that those within lie on it
    for (int i = bands.size() - 1; i >= 0; i--) {
      edging(bands.get(i));
    }
  }

  private void edging(Trim.Band band) {
    int yarn = band.yarn();
    boolean faint = underWay;
    Scallops scallops = new Scallops(page, band.reachCm());
    sides.outline().forEach(scallops::around);
    double width = page.onPage(band.reachCm());
    Object[] group = {"class", "edging", "stroke-linecap", "round"};
    svg.open("g", faint ? Markup.with(group, "opacity", 1 - VEIL) : group);
    String colour = blanket.yarn(yarn).colour().hex();
    svg.empty("path", "fill", colour, "d", scallops.path());
    svg.open("g", "fill", NOTHING);
    shade(scallops.path(), "#000", 0.35, 0.05 * width);
    shade(scallops.foot(), "#000", 0.3, 0.1 * width);
    shade(scallops.foot(), "#fff", 0.14, 0.05 * width);
    if (width >= LEAST_STITCHED_SEAM * 3) {
      String ink = Ink.on(blanket.yarn(yarn).colour()).equals(Ink.DARK) ? "#000" : "#fff";
      shade(scallops.rays(), ink, 0.22, 0.06 * width);
    }
    svg.close();
    svg.close();
  }
}
