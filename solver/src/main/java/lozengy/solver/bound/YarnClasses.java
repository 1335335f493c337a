package lozengy.solver.bound;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** Sorts the yarns of a layer into classes that are priced alike. */
final class YarnClasses {

  /** Most classes of yarns that may lie at the same places, about. */
  private static final int MOST = 8;

  /** How far apart the counts of yarns of one class may be, where that makes few classes. */
  private static final double GAP = 1.0;

  private final Blanket blanket;
  private final Region region;
  private final double[][] wanted;

  private YarnClasses(Blanket blanket, Region region, double[][] wanted) {
    this.blanket = blanket;
    this.region = region;
    this.wanted = wanted;
  }

  /**
   * The classes of a layer.
   *
   * @param wanted by ordinal of the kind of piece and yarn, how often each is expected to show
   * @param single whether locks and bans of single pieces count; otherwise a yarn may lie wherever
   *     it may lie at some piece of the kind
   */
  static List<YarnClass> of(Blanket blanket, Region region, double[][] wanted, boolean single) {
    return new YarnClasses(blanket, region, wanted).classes(single);
  }

  private List<YarnClass> classes(boolean single) {
    Map<List<ByteBuffer>, List<Integer>> alike = new LinkedHashMap<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      byte[] may = new byte[region.places()];
      byte[] must = new byte[region.places()];
      if (mark(yarn, single, may, must)) {
        alike
            .computeIfAbsent(
                List.of(ByteBuffer.wrap(may), ByteBuffer.wrap(must)), key -> new ArrayList<>())
            .add(yarn);
      }
    }
    List<YarnClass> classes = new ArrayList<>();
    alike.forEach(
        (masks, yarns) ->
            split(yarns, flags(masks.get(0).array()), flags(masks.get(1).array()), classes));
    return classes;
  }

  private boolean mark(int yarn, boolean single, byte[] may, byte[] must) {
    boolean some = false;
    boolean[] kinds = new boolean[wanted.length];
    for (int place = 0; place < may.length; place++) {
      int locked = blanket.locked(region.piece(place), region.round(place));
      if (may(yarn, place, locked, single)) {
        may[place] = 1;
        must[place] = (byte) (single && locked == yarn ? 1 : 0);
        kinds[region.kind(place)] = true;
        some = true;
      }
    }
    for (int place = 0; place < may.length && !single; place++) {
      may[place] = (byte) (kinds[region.kind(place)] ? 1 : 0);
    }
    return some;
  }

  private boolean may(int yarn, int place, int locked, boolean single) {
    int piece = region.piece(place);
    boolean open = locked == Sequences.OPEN;
    if (!open && single || locked == yarn) {
      return locked == yarn;
    }
    int round = region.round(place);
    return single
        ? blanket.domains().mayShow(piece, round, yarn)
        : blanket.domains().mayShow(blanket.kind(piece), round, yarn);
  }

  private static boolean[] flags(byte[] marks) {
    boolean[] flags = new boolean[marks.length];
    for (int i = 0; i < flags.length; i++) {
      flags[i] = marks[i] != 0;
    }
    return flags;
  }

  private void split(List<Integer> yarns, boolean[] may, boolean[] must, List<YarnClass> classes) {
    yarns.sort(Comparator.comparingDouble(this::inAll));
    List<List<Integer>> parts = parts(yarns, GAP);
    for (double gap = 2 * GAP; parts.size() > MOST; gap *= 2) {
      parts = parts(yarns, gap);
    }
    for (List<Integer> part : parts) {
      double[] mean = new double[wanted.length];
      for (int kind = 0; kind < mean.length; kind++) {
        double[] counts = wanted[kind];
        mean[kind] = part.stream().mapToDouble(yarn -> counts[yarn]).average().orElse(0);
      }
      int[] members = part.stream().mapToInt(yarn -> yarn).toArray();
      classes.add(new YarnClass(members, may, must, mean));
    }
  }

  private List<List<Integer>> parts(List<Integer> yarns, double gap) {
    List<List<Integer>> parts = new ArrayList<>();
    for (int yarn : yarns) {
      List<Integer> near = null;
      for (List<Integer> part : parts) {
        near = near == null && near(part.get(0), yarn, gap) ? part : near;
      }
      if (near == null) {
        near = new ArrayList<>();
        parts.add(near);
      }
      near.add(yarn);
    }
    return parts;
  }

  private boolean near(int one, int other, double gap) {
    boolean near = true;
    for (double[] counts : wanted) {
      near &= Math.abs(counts[one] - counts[other]) <= gap;
    }
    return near;
  }

  private double inAll(int yarn) {
    double sum = 0;
    for (double[] counts : wanted) {
      sum += counts[yarn];
    }
    return sum;
  }
}
