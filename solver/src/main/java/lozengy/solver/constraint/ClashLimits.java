package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.check.RoundPairs;
import lozengy.model.check.YarnPairs;
import lozengy.model.layout.Pairs;
import org.chocosolver.solver.variables.IntVar;

/**
 * How often a yarn can come at all in rounds of pieces on a seam where it may not meet itself: the
 * rounds that have it are at most a largest independent set of the graph of their pairs. The same
 * for yarns of which no two may meet, together. Posted only where all such rounds are counted
 * anyway, because yarn is short.
 */
final class ClashLimits {

  private final ConstraintModel model;
  private final Pairs pairs;
  private final YarnPairs barred;
  private final List<Integer> classes = new ArrayList<>();
  private final int[] rounds;
  private final Map<List<Integer>, Long> most = new HashMap<>();

  private ClashLimits(ConstraintModel model, RoundPairs pairs, YarnPairs barred) {
    this.model = model;
    this.pairs = new Pairs(pairs.first(), pairs.second());
    this.barred = barred;
    BitSet spokenOf = new BitSet();
    IntStream.of(pairs.first()).forEach(spokenOf::set);
    IntStream.of(pairs.second()).forEach(spokenOf::set);
    RoundIndex index = model.blanket().index();
    IntStream.Builder all = IntStream.builder();
    for (int c = 0; c < model.classes().size(); c++) {
      RoundClass of = model.classes().get(c);
      int[] numbers =
          IntStream.of(of.pieces()).map(piece -> index.number(piece, of.round())).toArray();
      if (IntStream.of(numbers).anyMatch(spokenOf::get)) {
        classes.add(c);
        IntStream.of(numbers).forEach(all::add);
      }
    }
    this.rounds = all.build().sorted().toArray();
  }

  /**
   * Posts the limits.
   *
   * @param model the model, all lines posted
   * @param pairs rounds that may not have some yarns together; those within pieces give no limits
   * @param barred which
   */
  static void post(ConstraintModel model, RoundPairs pairs, YarnPairs barred) {
    RoundIndex index = model.blanket().index();
    boolean within =
        pairs.size() == 0 || index.piece(pairs.first()[0]) == index.piece(pairs.second()[0]);
    if (within) {
      return;
    }
    ClashLimits limits = new ClashLimits(model, pairs, barred);
    if (!limits.classes.stream().allMatch(model::counted)) {
      return;
    }
    for (int yarn = 0; yarn < barred.yarns(); yarn++) {
      if (barred.bars(yarn, yarn)) {
        limits.post(List.of(yarn));
        List<Integer> alike = alike(barred, yarn);
        if (alike.size() > 1) {
          limits.post(alike);
        }
      }
    }
  }

  /** A yarn and others of which no two may meet, nor one itself. */
  private static List<Integer> alike(YarnPairs barred, int yarn) {
    List<Integer> alike = new ArrayList<>(List.of(yarn));
    for (int other = 0; other < barred.yarns(); other++) {
      int candidate = other;
      if (other != yarn
          && barred.bars(other, other)
          && alike.stream().allMatch(each -> barred.bars(each, candidate))) {
        alike.add(other);
      }
    }
    return alike;
  }

  private void post(List<Integer> yarns) {
    int[] able =
        IntStream.of(rounds)
            .filter(number -> yarns.stream().anyMatch(yarn -> model.mayTake(number, yarn)))
            .toArray();
    long[] weights = new long[model.blanket().index().count()];
    IntStream.of(able).forEach(number -> weights[number] = 1);
    List<Integer> key = IntStream.of(able).boxed().toList();
    long limit = most.computeIfAbsent(key, k -> IndependentSets.heaviest(pairs, weights));
    if (limit < able.length) {
      List<IntVar> counts = new ArrayList<>();
      for (int index : classes) {
        for (int yarn : yarns) {
          if (model.counts(index)[yarn] != null) {
            counts.add(model.counts(index)[yarn]);
          }
        }
      }
      model.model().sum(counts.toArray(IntVar[]::new), "<=", (int) limit).post();
    }
  }
}
