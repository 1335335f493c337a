package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.PieceKind;

/** Sorts the yarns of a layer into classes that are priced alike. */
final class YarnClasses {

  /** Most classes for yarns that may lie at the same kinds of pieces. */
  private static final int MOST = 3;

  private YarnClasses() {}

  /**
   * The classes of a layer.
   *
   * @param wanted how often each yarn is expected to show
   */
  static List<YarnClass> of(Blanket blanket, Region region, double[] wanted) {
    Map<List<Boolean>, List<Integer>> byKinds = new LinkedHashMap<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      List<Boolean> kinds = new ArrayList<>();
      for (PieceKind kind : PieceKind.values()) {
        kinds.add(may(blanket, region, kind, yarn));
      }
      if (kinds.contains(true)) {
        byKinds.computeIfAbsent(kinds, k -> new ArrayList<>()).add(yarn);
      }
    }
    List<YarnClass> classes = new ArrayList<>();
    byKinds.forEach((kinds, yarns) -> split(kinds, yarns, wanted, classes));
    return classes;
  }

  private static boolean may(Blanket blanket, Region region, PieceKind kind, int yarn) {
    for (int place = 0; place < region.places(); place++) {
      if (region.kind(place) == kind.ordinal()) {
        return blanket.mayShow(kind, region.round(place), yarn);
      }
    }
    return false;
  }

  private static void split(
      List<Boolean> kinds, List<Integer> yarns, double[] wanted, List<YarnClass> classes) {
    yarns.sort(Comparator.comparingDouble(yarn -> wanted[yarn]));
    double least = wanted[yarns.get(0)];
    double most = wanted[yarns.get(yarns.size() - 1)];
    double gap = Math.max(1.001, (most - least) / MOST);
    boolean[] may = new boolean[kinds.size()];
    for (int kind = 0; kind < may.length; kind++) {
      may[kind] = kinds.get(kind);
    }
    int start = 0;
    for (int i = 1; i <= yarns.size(); i++) {
      if (i == yarns.size() || wanted[yarns.get(i)] > wanted[yarns.get(start)] + gap) {
        int[] members = yarns.subList(start, i).stream().mapToInt(yarn -> yarn).toArray();
        double mean = Arrays.stream(members).mapToDouble(yarn -> wanted[yarn]).average().orElse(0);
        classes.add(new YarnClass(members, may, Math.max(0.5, mean)));
        start = i;
      }
    }
  }
}
