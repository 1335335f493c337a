package lozengy.examples;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;

/** The brief of a cushion, built in code instead of read from a file. The shades are invented. */
final class CushionBrief {

  /** A ball of 50 g with 120 m. */
  private static final Ball BALL = new Ball(50, 120_000);

  private CushionBrief() {}

  /**
   * The brief.
   *
   * @param pieces what is known of single pieces
   */
  static Brief with(List<PieceNote> pieces) {
    return Brief.of(
            "Cushion planned in code",
            new LayoutSize(Setting.ON_POINT, 3, 3, true, true),
            motifs(),
            yarns())
        .withJoining(Optional.of(new YarnUse("CRK", 3.5)))
        .withEdging(List.of(new YarnUse("CRK", 4)))
        .withRules(
            Rules.DEFAULT
                .withMinContrast(5)
                .withWithinPiece(Rules.WithinPiece.ALL_DIFFER)
                .withCopies(OptionalInt.of(1))
                .withKeepBack(5))
        .withPieces(pieces);
  }

  private static Map<PieceKind, Motif> motifs() {
    Set<Tone> light = EnumSet.of(Tone.LIGHT);
    Set<Tone> inner = EnumSet.of(Tone.LIGHT, Tone.MID);
    Set<Tone> dark = EnumSet.of(Tone.DARK);
    Motif square =
        new Motif(
            OptionalDouble.of(9),
            List.of(round(light, 1.2), round(inner, 2.5), round(inner, 3.8), round(dark, 5.3)));
    Motif triangle =
        new Motif(
            OptionalDouble.of(12), List.of(round(light, 1.4), round(inner, 2.2), round(dark, 3.1)));
    Motif corner = new Motif(OptionalDouble.empty(), List.of(round(light, 1.1), round(dark, 2.0)));
    return Map.of(
        PieceKind.SQUARE, square,
        PieceKind.SIDE_TRIANGLE, triangle,
        PieceKind.CORNER_TRIANGLE, corner);
  }

  private static Round round(Set<Tone> tones, double metres) {
    return new Round(tones, new YarnAmount.Length(Math.round(metres * 1000)));
  }

  private static List<Yarn> yarns() {
    return List.of(
        yarn("CRK", "Creek at dusk", "#1d4552", 0.5),
        yarn("PEA", "Peat", "#553527", 0.35),
        yarn("SED", "Sedge", "#3d5230", 0.35),
        yarn("MUS", "Mussel shell", "#54406b", 0.35),
        yarn("SAM", "Samphire", "#7f9440", 0.35),
        yarn("TID", "Tidewater", "#3f8a90", 0.35),
        yarn("FOA", "Foam", "#f1eee3", 0.4),
        yarn("MAR", "Marram", "#ccd48e", 0.4));
  }

  private static Yarn yarn(String code, String name, String colour, double balls) {
    return Yarn.of(code, Srgb.parse(colour))
        .withName(name)
        .withBall(Optional.of(BALL))
        .withBalls(balls);
  }
}
