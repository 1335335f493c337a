package lozengy.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.EdgeFit;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Measures;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.unit.Units;
import lozengy.model.yarn.YarnWork;

/** Says in words how large a blanket is and what it is made of. */
public final class BlanketWords {

  /** In which yarn seams are worked, where it is no single one. */
  public static final String IN_BORDERS = " in the borders' yarns";

  private BlanketWords() {}

  /** How the squares stand: {@code on point, 6 across and 8 down}. */
  public static String setting(Blanket blanket) {
    LayoutSize size = blanket.layout().size();
    String stand = size.setting() == Setting.ON_POINT ? "on point" : "straight";
    return stand + ", " + size.across() + " across and " + size.down() + " down";
  }

  /**
   * Width and height in cm and inches, without edging; and about what is left of them along the
   * edge, where side triangles as measured draw it in or let it ruffle.
   */
  public static String size(Blanket blanket) {
    Measures measures = blanket.measures();
    String size = size(measures.widthCm(), measures.heightCm());
    return blanket
        .edgeFit()
        .filter(fit -> !fit.fits())
        .map(fit -> size + edge(measures, fit.outlinePercent()))
        .orElse(size);
  }

  private static String edge(Measures measures, double percent) {
    double part = 1 + percent / 100;
    return ", edge "
        + (percent < 0 ? "drawn in" : "ruffled")
        + " to about "
        + Figures.fixed(measures.widthCm() * part, 0)
        + " x "
        + Figures.fixed(measures.heightCm() * part, 0)
        + " cm";
  }

  private static String size(double widthCm, double heightCm) {
    return Figures.fixed(widthCm, 1)
        + " x "
        + Figures.fixed(heightCm, 1)
        + " cm ("
        + Units.quarterInches(widthCm)
        + " x "
        + Units.quarterInches(heightCm)
        + ")";
  }

  /** How many pieces of each kind: {@code 83 squares of 10 cm, 24 side triangles}. */
  public static String pieces(Blanket blanket) {
    Map<PieceKind, Integer> counts = new EnumMap<>(PieceKind.class);
    blanket.layout().places().forEach(place -> counts.merge(place.kind(), 1, Integer::sum));
    List<String> words = new ArrayList<>();
    counts.forEach((kind, count) -> words.add(Figures.count(count, noun(kind))));
    double sideCm = blanket.motif(PieceKind.SQUARE).edgeCm().orElseThrow();
    words.set(0, words.get(0) + " of " + Figures.shortest(sideCm, 2) + " cm");
    return String.join(", ", words);
  }

  /** A kind of piece, as one is called. */
  public static String noun(PieceKind kind) {
    return switch (kind) {
      case SQUARE -> "square";
      case SIDE_TRIANGLE -> "side triangle";
      case CORNER_TRIANGLE -> "corner triangle";
    };
  }

  /** How far a piece has come: its state, or {@code worked to round 2}. */
  public static String state(PieceState state, int roundsWorked) {
    return state == PieceState.PLANNED && roundsWorked > 0
        ? "worked to round " + roundsWorked
        : state.word();
  }

  /** How many planned pieces have some rounds worked. */
  public static long begun(Blanket blanket) {
    return blanket.layout().places().stream()
        .filter(place -> blanket.partWorked(place.index()))
        .count();
  }

  /** How many pieces have come that far; those from the pile are made. */
  public static long inState(Arrangement arrangement, PieceState state) {
    Blanket blanket = arrangement.blanket();
    PilePlacement laid = PilePlacement.of(blanket, arrangement.sequences());
    return blanket.layout().places().stream()
        .filter(place -> laid.state(place.index()) == state)
        .count();
  }

  /**
   * What joining and edging take, or still take of a yarn that was counted: {@code joining 67.2 m
   * of MUD}; empty where neither is stated. In the borders' yarns joining is told as a whole.
   */
  public static List<String> uses(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    List<String> words = new ArrayList<>();
    blanket
        .brief()
        .joiningInOneYarn()
        .ifPresent(use -> words.add(use("joining", use, blanket.fixedUse().joiningMillimetres())));
    if (blanket.brief().joiningInBorders().isPresent()) {
      long[] taken = new long[blanket.yarnCount()];
      for (int seam = 0; seam < blanket.layout().seams().size(); seam++) {
        YarnWork.addBorderSeam(blanket, arrangement.sequences(), seam, taken);
      }
      words.add("joining " + Figures.metres(LongStream.of(taken).sum()) + " m" + IN_BORDERS);
    }
    edging(blanket).forEach(each -> words.add("edging " + each));
    return words;
  }

  /** What edging still takes, by yarn: {@code 4.8 m of MUD}. */
  public static List<String> edging(Blanket blanket) {
    return edging(blanket, blanket.brief().edging().stream().map(YarnUse::yarn).toList());
  }

  /** What edging still takes of yarns, each told once: {@code 4.8 m of MUD}. */
  public static List<String> edging(Blanket blanket, List<String> yarns) {
    return yarns.stream()
        .distinct()
        .map(
            code ->
                Figures.metres(blanket.fixedUse().edgingMillimetres(blanket.yarnIndex(code)))
                    + " m of "
                    + code)
        .toList();
  }

  private static String use(String what, YarnUse use, long millimetres) {
    return what + " " + Figures.metres(millimetres) + " m of " + use.yarn();
  }

  /**
   * That neighbours may match by design, in words; empty where the look gives no borders.
   *
   * @return such as {@code All borders are MUD by design: where two of them meet it is no fault}
   */
  public static Optional<String> givenBorders(Blanket blanket) {
    List<String> codes = blanket.brief().look().borders();
    return switch (codes.size()) {
      case 0 -> Optional.empty();
      case 1 ->
          Optional.of(
              "All borders are "
                  + codes.get(0)
                  + " by design: where two of them meet it is no fault");
      default ->
          Optional.of(
              "Borders alternate between "
                  + String.join(" and ", codes)
                  + " by design: where two of them meet it is no fault");
    };
  }

  /** How a side triangle, as measured, fits its place. */
  public static String edge(EdgeFit fit) {
    String compared =
        String.format(
            Locale.ROOT,
            "The side triangle's long edge measures %s; on point beside a %s square it spans %s",
            Units.cmInWords(fit.measuredCm()),
            Units.cmInWords(fit.sideCm()),
            Units.cmInWords(fit.spanCm()));
    if (fit.fits()) {
      return compared + ", so the edge lies flat.";
    }
    boolean shorter = fit.measuredCm() < fit.spanCm();
    return String.format(
        Locale.ROOT,
        "%s, so the edge %s by %.1f %%. Over %d side triangles the outline comes out %s %s, or"
            + " %.1f %%.",
        compared,
        shorter ? "draws in" : "ruffles",
        Math.abs(fit.trianglePercent()),
        fit.triangles(),
        Units.cmInWords(Math.abs(fit.outlineChangeCm())),
        shorter ? "shorter" : "longer",
        Math.abs(fit.outlinePercent()));
  }
}
