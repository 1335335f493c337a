package lozengy.benchmarks.brief;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Round;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;

/**
 * The motifs of generated briefs: a square of 9 cm and the triangles cut from it. A round takes
 * what a plain round of that size would, measured to the centimetre; a triangle a little more than
 * its part of the square, for its ends.
 */
final class Recipe {

  private static final double SIDE_CM = 9;

  /** Millimetres by round of a square, a side triangle and a corner triangle. */
  private static final int[][] MILLIMETRES = {
    {1270, 2580, 3830, 5110, 6370, 7640},
    {860, 1570, 2240, 2930, 3580, 4270},
    {550, 980, 1340, 1720, 2090, 2460}
  };

  private Recipe() {}

  /** The motifs that a layout needs, all with the same rounds. */
  static Map<PieceKind, Motif> motifs(LayoutSize layout, String rounds) {
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    motifs.put(PieceKind.SQUARE, motif(PieceKind.SQUARE, OptionalDouble.of(SIDE_CM), rounds));
    if (layout.setting() == Setting.ON_POINT) {
      for (PieceKind kind : List.of(PieceKind.SIDE_TRIANGLE, PieceKind.CORNER_TRIANGLE)) {
        motifs.put(kind, motif(kind, OptionalDouble.empty(), rounds));
      }
    }
    return motifs;
  }

  private static Motif motif(PieceKind kind, OptionalDouble edgeCm, String letters) {
    List<Round> rounds = new ArrayList<>();
    for (int round = 0; round < letters.length(); round++) {
      int millimetres = MILLIMETRES[kind.ordinal()][round];
      rounds.add(new Round(tones(letters.charAt(round)), new YarnAmount.Length(millimetres)));
    }
    return new Motif(edgeCm, rounds);
  }

  private static Set<Tone> tones(char letter) {
    return switch (letter) {
      case 'D' -> EnumSet.of(Tone.DARK);
      case 'M' -> EnumSet.of(Tone.MID);
      case 'L' -> EnumSet.of(Tone.LIGHT);
      case 'I' -> EnumSet.of(Tone.LIGHT, Tone.MID);
      case 'A' -> EnumSet.allOf(Tone.class);
      default -> throw new IllegalArgumentException("no tones are meant by " + letter);
    };
  }
}
