package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntBinaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.layout.Pairs;
import lozengy.model.score.FadeMeasure;
import lozengy.model.score.Layers;
import lozengy.model.score.LeewayMeasure;
import lozengy.model.score.Nearness;
import lozengy.model.score.Points;
import lozengy.model.score.Scorer;
import lozengy.model.score.Targets;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * What an arrangement's total, or its objective where it is solved from an earlier one, lacks of
 * 100 points, as a variable of whole units. Every term is rounded down, so the variable is never
 * more than the true loss; it is less by hardly more than {@link #rounding} units. For small
 * blankets: it takes a variable for every pair of places within reach.
 */
final class ScoreLoss {

  /** Units to a point; 100 points must stay within Choco's bounds. */
  static final int UNITS_PER_POINT = 100_000;

  private static final long MOST_UNITS = IntVar.MAX_INT_BOUND;

  private final ConstraintModel constraints;
  private final Blanket blanket;
  private final Model model;
  private final Points points;
  private final Map<List<IntVar>, BoolVar> equal = new HashMap<>();
  private final List<IntVar> terms = new ArrayList<>();
  private int rounding;

  private ScoreLoss(ConstraintModel constraints, Optional<Sequences> earlier) {
    this.constraints = constraints;
    this.blanket = constraints.blanket();
    this.model = constraints.model();
    this.points = Points.of(blanket, earlier);
  }

  /**
   * Whether the loss of a model's arrangements can be stated: it has no order to measure, and no
   * leeway of yarns whose use is beyond Choco's bounds.
   */
  static boolean states(ConstraintModel constraints) {
    Blanket blanket = constraints.blanket();
    Points points = Points.of(blanket);
    boolean ordered = points.order().isPresent();
    boolean countable =
        points.leeway() == 0
            || constraints.loads().stream().allMatch(load -> load.mostUnits() <= MOST_UNITS);
    return !ordered && countable;
  }

  /** States the loss of a model's arrangements. */
  static ScoreLoss of(ConstraintModel constraints, Optional<Sequences> earlier) {
    ScoreLoss loss = new ScoreLoss(constraints, earlier);
    if (loss.points.whole(Part.BALANCE) > 0) {
      loss.addBalance();
    }
    if (loss.points.repeat() > 0) {
      loss.addSpread();
    }
    loss.points.pairs().forEach(loss::addPairs);
    loss.points.fade().ifPresent(loss::addFade);
    if (loss.points.copy() > 0) {
      loss.addVariety();
    }
    if (loss.points.leeway() > 0) {
      loss.addLeeway();
    }
    if (loss.points.changed() > 0) {
      loss.addKeep(earlier.orElseThrow());
    }
    return loss;
  }

  /** The sum of all terms, in units. */
  IntVar total() {
    IntVar total = model.intVar(0, 100 * UNITS_PER_POINT + terms.size());
    model.sum(terms.toArray(IntVar[]::new), "=", total).post();
    return total;
  }

  /** By how many units the sum of the terms may be below the true loss. */
  int rounding() {
    return terms.size() + rounding;
  }

  private void addBalance() {
    Targets targets = points.targets();
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      IntVar[] shown = layer(layer);
      IntVar[] off = new IntVar[blanket.yarnCount()];
      for (int yarn = 0; yarn < off.length; yarn++) {
        IntVar count = model.intVar(0, shown.length);
        model.count(yarn, shown, count).post();
        off[yarn] = model.intVar(0, 2 * shown.length);
        model.distance(count, model.intVar(targets.counts()[layer][yarn]), "=", off[yarn]).post();
      }
      IntVar all = model.intVar(0, 2 * shown.length);
      model.sum(off, "=", all).post();
      double each = points.balance(layer);
      addTerm(all, lost -> each * lost);
    }
  }

  /** The rounds of a layer, of all pieces that have it. */
  private IntVar[] layer(int layer) {
    return Arrays.stream(constraints.pieces())
        .filter(rounds -> layer < rounds.length)
        .map(rounds -> rounds[rounds.length - 1 - layer])
        .toArray(IntVar[]::new);
  }

  private void addSpread() {
    List<IntVar> repeats = new ArrayList<>();
    List<Integer> weights = new ArrayList<>();
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int i = 0; i < pairs.size(); i++) {
        IntVar[] first = constraints.rounds(pairs.first()[i]);
        IntVar[] second = constraints.rounds(pairs.second()[i]);
        for (int layer = 0; layer < Math.min(first.length, second.length); layer++) {
          repeats.add(same(first[first.length - 1 - layer], second[second.length - 1 - layer]));
          weights.add(nearness.weight() * Layers.spreadWeight(blanket, layer));
        }
      }
    }
    if (!repeats.isEmpty()) {
      int[] each = weights.stream().mapToInt(Integer::intValue).toArray();
      IntVar weighted = model.intVar(0, IntStream.of(each).sum());
      model.scalar(repeats.toArray(IntVar[]::new), each, "=", weighted).post();
      addTerm(weighted, lost -> Math.min(points.whole(Part.SPREAD), lost * points.repeat()));
    }
  }

  private BoolVar same(IntVar first, IntVar second) {
    List<IntVar> key =
        first.getId() < second.getId() ? List.of(first, second) : List.of(second, first);
    return equal.computeIfAbsent(key, pair -> model.arithm(first, "=", second).reify());
  }

  private void addPairs(Points.Pair pair) {
    IntBinaryOperator lost = (a, b) -> units(pair.lost(a, b));
    if (pair.onSeams()) {
      Pairs seams = Scorer.countedSeams(blanket);
      IntVar[] borders = constraints.borders();
      for (int i = 0; i < seams.size(); i++) {
        addPair(borders[seams.first()[i]], borders[seams.second()[i]], lost);
      }
      return;
    }
    for (IntVar[] rounds : constraints.pieces()) {
      for (int round = 1; round < rounds.length; round++) {
        addPair(rounds[round - 1], rounds[round], lost);
      }
    }
  }

  /** Adds what two rounds lose together, by their yarns. */
  private void addPair(IntVar first, IntVar second, IntBinaryOperator unitsLost) {
    // tables need small numbers, so it holds places in a list of the losses that occur
    TreeMap<Integer, List<int[]>> pairsByLoss = new TreeMap<>();
    for (int a = first.getLB(); a != Integer.MAX_VALUE; a = first.nextValue(a)) {
      for (int b = second.getLB(); b != Integer.MAX_VALUE; b = second.nextValue(b)) {
        int lost = unitsLost.applyAsInt(a, b);
        pairsByLoss.computeIfAbsent(lost, units -> new ArrayList<>()).add(new int[] {a, b});
      }
    }
    int[] losses = pairsByLoss.keySet().stream().mapToInt(Integer::intValue).toArray();
    Tuples table = new Tuples(true);
    for (int place = 0; place < losses.length; place++) {
      for (int[] pair : pairsByLoss.get(losses[place])) {
        table.add(pair[0], pair[1], place);
      }
    }
    IntVar place = model.intVar(0, losses.length - 1);
    model.table(new IntVar[] {first, second, place}, table, "CT+").post();
    IntVar lost = model.intVar(losses[0], losses[losses.length - 1]);
    model.element(lost, losses, place).post();
    terms.add(lost);
  }

  /** Adds what rounds lose of a fade; whole units of a sum that is cut off at 100 points. */
  private void addFade(FadeMeasure fade) {
    List<IntVar> lost = new ArrayList<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int[] units = new int[blanket.yarnCount()];
        for (int yarn = 0; yarn < units.length; yarn++) {
          units[yarn] = units(points.share(Part.FADE) * fade.points(piece, round, yarn));
        }
        IntVar loss = model.intVar(0, IntStream.of(units).max().orElse(0));
        model.element(loss, units, constraints.rounds(piece)[round]).post();
        lost.add(loss);
      }
    }
    rounding += lost.size();
    int most = (int) Math.ceil(points.whole(Part.FADE) * UNITS_PER_POINT);
    IntVar all = model.intVar(0, lost.stream().mapToInt(IntVar::getUB).sum());
    model.sum(lost.toArray(IntVar[]::new), "=", all).post();
    IntVar cut = model.intVar(0, most);
    model.min(cut, all, model.intVar(most)).post();
    terms.add(cut);
  }

  private void addVariety() {
    IntVar[][] pieces =
        Arrays.stream(blanket.orbits().leads())
            .mapToObj(constraints::rounds)
            .toArray(IntVar[][]::new);
    List<BoolVar> again = new ArrayList<>();
    for (int piece = 0; piece < pieces.length; piece++) {
      List<BoolVar> twins = new ArrayList<>();
      for (int other = 0; other < piece; other++) {
        if (pieces[other].length == pieces[piece].length) {
          twins.add(sameSequence(pieces[other], pieces[piece]));
        }
      }
      if (!twins.isEmpty()) {
        BoolVar any = model.boolVar();
        model.addClausesBoolOrArrayEqVar(twins.toArray(BoolVar[]::new), any);
        again.add(any);
      }
    }
    if (!again.isEmpty()) {
      IntVar copies = model.intVar(0, again.size());
      model.sum(again.toArray(BoolVar[]::new), "=", copies).post();
      addTerm(copies, lost -> points.copy() * lost);
    }
  }

  private BoolVar sameSequence(IntVar[] first, IntVar[] second) {
    BoolVar[] rounds = new BoolVar[first.length];
    for (int round = 0; round < first.length; round++) {
      rounds[round] = same(first[round], second[round]);
    }
    BoolVar all = model.boolVar();
    model.addClausesBoolAndArrayEqVar(rounds, all);
    return all;
  }

  private void addLeeway() {
    constraints.loads().forEach(load -> terms.add(leewayLost(load)));
  }

  private IntVar leewayLost(YarnLoad load) {
    long unit = Math.max(1, load.unit());
    long fixed = blanket.fixedUse().millimetres(load.yarn()) + load.fixedUse();
    long stock = blanket.yarn(load.yarn()).stockMillimetres();
    double each = points.leeway();
    int most = (int) (load.mostOpenUse() / unit);
    List<IntVar> counts = new ArrayList<>();
    List<Integer> lengths = new ArrayList<>();
    int constant = 0;
    for (YarnLoad.Term term : load.terms()) {
      if (term.open() > 0 && term.length() > 0) {
        counts.add(constraints.counts(term.index())[load.yarn()]);
        lengths.add((int) (term.length() / unit));
        constant += (int) (term.length() / unit) * term.fixed();
      }
    }
    IntVar used = model.intVar(0, most, true);
    counts.add(used);
    lengths.add(-1);
    int[] times = lengths.stream().mapToInt(Integer::intValue).toArray();
    model.scalar(counts.toArray(IntVar[]::new), times, "=", constant).post();
    IntVar lost = model.intVar(0, 100 * UNITS_PER_POINT, true);
    new Constraint(
            "leeway",
            new LeewayPropagator(
                used, lost, units -> units(each * LeewayMeasure.loss(stock, fixed + units * unit))))
        .post();
    return lost;
  }

  private void addKeep(Sequences earlier) {
    List<BoolVar> changed = new ArrayList<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (blanket.free(piece, round) && earlier.yarn(piece, round) != Sequences.OPEN) {
          IntVar variable = constraints.rounds(piece)[round];
          changed.add(model.arithm(variable, "!=", earlier.yarn(piece, round)).reify());
        }
      }
    }
    IntVar count = model.intVar(0, changed.size());
    model.sum(changed.toArray(BoolVar[]::new), "=", count).post();
    addTerm(count, lost -> points.changed() * lost);
  }

  /** Adds a term that is a function of a variable from 0. */
  private void addTerm(IntVar variable, IntToDoubleFunction lost) {
    int[] units =
        IntStream.rangeClosed(0, variable.getUB())
            .map(value -> units(lost.applyAsDouble(value)))
            .toArray();
    IntVar term = model.intVar(0, IntStream.of(units).max().orElseThrow());
    model.element(term, units, variable).post();
    terms.add(term);
  }

  /** Points as whole units, rounded down, and down again for the rounding of doubles. */
  private int units(double points) {
    return (int) Math.max(0, Math.floor(UNITS_PER_POINT * points - 1e-3));
  }
}
