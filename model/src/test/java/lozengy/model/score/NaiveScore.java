package lozengy.model.score;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.colour.ColourDifference;
import lozengy.model.colour.Deficiency;
import lozengy.model.colour.Lab;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;

/**
 * The score's definition a second time, by other means: every pair of pieces by the distance of
 * their lattice points, plain loops, no sharing of work.
 */
final class NaiveScore {

  private final Blanket blanket;
  private final Sequences sequences;

  NaiveScore(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.sequences = sequences;
  }

  Map<Part, Double> parts(Optional<Sequences> earlier) {
    Map<Part, Double> parts = new EnumMap<>(Part.class);
    parts.put(Part.SPREAD, spread());
    parts.put(Part.BALANCE, balance());
    parts.put(Part.CONTRAST, contrast(true, true));
    if (blanket.brief().prefer().weight(Part.CONTRAST_BETWEEN) > 0) {
      parts.put(Part.CONTRAST_BETWEEN, contrast(true, false));
      parts.put(Part.CONTRAST_WITHIN, contrast(false, true));
    }
    parts.put(Part.VARIETY, variety());
    parts.put(Part.LEEWAY, leeway());
    earlier.ifPresent(before -> parts.put(Part.KEEP, keep(before)));
    if (blanket.brief().prefer().weight(Part.COLOUR_VISION) > 0) {
      parts.put(Part.COLOUR_VISION, colourVision());
    }
    return parts;
  }

  /** Squared distance in sides: 1 a seam, 2 a touch, up to 5 near. */
  static int pairWeight(Blanket blanket, int first, int second) {
    Place a = blanket.place(first);
    Place b = blanket.place(second);
    int square = (a.x() - b.x()) * (a.x() - b.x()) + (a.y() - b.y()) * (a.y() - b.y());
    int unitsToASide = blanket.layout().size().setting() == Setting.ON_POINT ? 2 : 4;
    int sides = square / unitsToASide;
    return sides == 1 ? 4 : sides == 2 ? 2 : sides <= 5 ? 1 : 0;
  }

  /** A yarn by layer, or null where the piece has no such layer. */
  private Integer yarn(int piece, int layer) {
    int[] yarns = sequences.of(piece);
    return layer < yarns.length ? Integer.valueOf(yarns[yarns.length - 1 - layer]) : null;
  }

  double repeats() {
    double repeats = 0;
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      for (int a = 0; a < blanket.pieceCount(); a++) {
        for (int b = 0; b < a; b++) {
          if (yarn(a, layer) != null && yarn(a, layer).equals(yarn(b, layer))) {
            repeats += (layer == 0 ? 2 : 1) * pairWeight(blanket, a, b);
          }
        }
      }
    }
    return repeats;
  }

  private double spread() {
    Targets targets = Targets.of(blanket);
    double expected = 0;
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      double weight = 0;
      for (int a = 0; a < blanket.pieceCount(); a++) {
        for (int b = 0; b < a; b++) {
          boolean have = yarn(a, layer) != null && yarn(b, layer) != null;
          weight += have ? pairWeight(blanket, a, b) : 0;
        }
      }
      double pieces = targets.pieces()[layer];
      for (double n : targets.counts()[layer]) {
        if (n > 1) {
          expected += (layer == 0 ? 2 : 1) * weight * n * (n - 1) / (pieces * (pieces - 1));
        }
      }
    }
    return expected == 0 ? 100 : Math.max(0, 100 * (1 - repeats() / expected));
  }

  private double balance() {
    Targets targets = Targets.of(blanket);
    double sum = 0;
    double weights = 0;
    for (int l = 0; l < blanket.layerCount(); l++) {
      int layer = l;
      double off = 0;
      for (int y = 0; y < blanket.yarnCount(); y++) {
        int yarn = y;
        long count =
            IntStream.range(0, blanket.pieceCount())
                .filter(piece -> Integer.valueOf(yarn).equals(yarn(piece, layer)))
                .count();
        off += Math.abs(count - targets.counts()[layer][yarn]);
      }
      double weight = layer == 0 ? 2 : 1;
      sum += weight * 100 * (1 - off / (2.0 * targets.pieces()[layer]));
      weights += weight;
    }
    return sum / weights;
  }

  private double wanted(double wanted, int yarn, int other) {
    double contrast = Math.min(1, blanket.yarns().difference(yarn, other) / 40);
    double target = wanted / 100;
    return 1 - Math.abs(contrast - target) / Math.max(target, 1 - target);
  }

  private double contrast(boolean between, boolean within) {
    Look.Contrast look = blanket.brief().look().contrast();
    Moments seams = new Moments();
    Moments steps = new Moments();
    for (int a = 0; a < blanket.pieceCount(); a++) {
      for (int b = 0; b < a; b++) {
        if (pairWeight(blanket, a, b) == 4) {
          seams.add(wanted(look.between(), yarn(a, 0), yarn(b, 0)));
        }
      }
      int[] yarns = sequences.of(a);
      for (int round = 0; round + 1 < yarns.length; round++) {
        steps.add(wanted(look.within(), yarns[round], yarns[round + 1]));
      }
    }
    List<Moments> means =
        between && within ? List.of(seams, steps) : List.of(between ? seams : steps);
    return means.stream()
        .filter(moments -> moments.count() > 0)
        .mapToDouble(moments -> 100 * moments.mean())
        .average()
        .orElse(100);
  }

  private double colourVision() {
    Moments seams = new Moments();
    for (int a = 0; a < blanket.pieceCount(); a++) {
      for (int b = 0; b < a; b++) {
        if (pairWeight(blanket, a, b) == 4) {
          double least = 5;
          for (Deficiency deficiency : Deficiency.values()) {
            Lab one = deficiency.seen(blanket.yarn(yarn(a, 0)).colour());
            Lab other = deficiency.seen(blanket.yarn(yarn(b, 0)).colour());
            least = Math.min(least, ColourDifference.ciede2000(one, other));
          }
          seams.add(least / 5);
        }
      }
    }
    return seams.count() == 0 ? 100 : 100 * seams.mean();
  }

  private double variety() {
    Set<String> distinct = new HashSet<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      distinct.add(java.util.Arrays.toString(sequences.of(piece)));
    }
    return 100.0 * distinct.size() / blanket.pieceCount();
  }

  private double leeway() {
    double lost = 0;
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      double used = blanket.fixedUse().millimetres(yarn);
      for (int piece = 0; piece < blanket.pieceCount(); piece++) {
        int[] yarns = sequences.of(piece);
        for (int round = 0; round < yarns.length; round++) {
          if (yarns[round] == yarn) {
            used += blanket.motifs().needMillimetres(blanket.kind(piece), round, yarn);
          }
        }
      }
      if (used > 0) {
        double stock = blanket.yarn(yarn).stockMillimetres();
        double left = Math.max(0, stock - used);
        double lacks = used < stock ? Math.max(0, stock / 11 - left) / (stock / 11) : 1;
        lost += lacks * lacks;
      }
    }
    return 100 * (1 - lost / blanket.yarnCount());
  }

  private double keep(Sequences earlier) {
    double free = 0;
    double kept = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (blanket.free(piece, round) && earlier.yarn(piece, round) >= 0) {
          free++;
          kept += sequences.yarn(piece, round) == earlier.yarn(piece, round) ? 1 : 0;
        }
      }
    }
    return free == 0 ? 100 : 100 * kept / free;
  }
}
