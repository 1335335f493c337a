package lozengy.benchmarks.peer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntBinaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.Pairs;
import lozengy.model.score.LeewayMeasure;
import lozengy.model.score.Nearness;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * A blanket's rules and score for Choco, with the constraints of its library alone: a variable for
 * every round, whose values are yarns. The objective, to be minimised, is the score's loss in
 * units; each yarn's leeway counts in steps of {@link #LEEWAY_STEP}.
 */
final class ChocoModel {

  /** Units of the objective in a point of the score; a total of 100 points must fit an int. */
  static final double UNITS_PER_POINT = 1e5;

  /** Units of a step in which leeway counts. */
  private static final int LEEWAY_STEP = 50;

  private final Blanket blanket;
  private final Losses losses;

  /** Sums are not to become tables: those that number the sequences would fill gigabytes. */
  private final Model model =
      new Model("blanket", Settings.init().setWarnUser(false).setEnableTableSubstitution(false));

  private final IntVar[][] rounds;
  private final List<IntVar> lost = new ArrayList<>();
  private final List<Integer> units = new ArrayList<>();

  /**
   * States a blanket.
   *
   * @throws IllegalArgumentException if a piece is worked: that is not modelled
   */
  ChocoModel(Blanket blanket) {
    this.blanket = blanket;
    this.losses = new Losses(blanket, Optional.empty(), UNITS_PER_POINT);
    this.rounds = new IntVar[blanket.pieceCount()][];
    for (int piece = 0; piece < rounds.length; piece++) {
      if (blanket.state(piece) != PieceState.PLANNED) {
        throw new IllegalArgumentException(blanket.place(piece).name() + " is worked already");
      }
      rounds[piece] = new IntVar[blanket.roundCount(piece)];
      for (int round = 0; round < rounds[piece].length; round++) {
        rounds[piece][round] = model.intVar(RoundDomain.of(blanket, piece, round));
      }
    }
    neighbourBorders();
    withinPiece();
    spread();
    balance();
    stock();
    copies();
    IntVar loss = model.intVar("loss", 0, IntVar.MAX_INT_BOUND);
    int[] weights = units.stream().mapToInt(Integer::intValue).toArray();
    model.scalar(lost.toArray(IntVar[]::new), weights, "=", loss).post();
    model.setObjective(Model.MINIMIZE, loss);
  }

  Model model() {
    return model;
  }

  Losses losses() {
    return losses;
  }

  /** All rounds' variables, those to decide on. */
  IntVar[] all() {
    List<IntVar> all = new ArrayList<>();
    for (IntVar[] piece : rounds) {
      all.addAll(List.of(piece));
    }
    return all.toArray(IntVar[]::new);
  }

  /** The solution that the variables hold now. */
  Sequences sequences() {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < rounds.length; piece++) {
      for (int round = 0; round < rounds[piece].length; round++) {
        sequences.set(piece, round, rounds[piece][round].getValue());
      }
    }
    return sequences;
  }

  /** An arrangement as a solution of all rounds' variables. */
  Solution solution(Sequences sequences) {
    Solution solution = new Solution(model, all());
    for (int piece = 0; piece < rounds.length; piece++) {
      for (int round = 0; round < rounds[piece].length; round++) {
        solution.setIntVal(rounds[piece][round], sequences.yarn(piece, round));
      }
    }
    return solution;
  }

  private void lose(IntVar what, long unitsOfOne) {
    if (unitsOfOne > 0) {
      lost.add(what);
      units.add(Math.toIntExact(unitsOfOne));
    }
  }

  private IntVar border(int piece) {
    return rounds[piece][rounds[piece].length - 1];
  }

  private void neighbourBorders() {
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      pair(
          border(seams.first()[seam]),
          border(seams.second()[seam]),
          (a, b) -> blanket.yarns().sameBorder(a, b) ? -1 : Math.toIntExact(losses.seam(a, b)));
    }
  }

  private void withinPiece() {
    WithinPiece within = blanket.brief().rules().withinPiece();
    for (IntVar[] piece : rounds) {
      for (int round = 1; round < piece.length; round++) {
        pair(
            piece[round - 1],
            piece[round],
            (a, b) ->
                a == b && within != WithinPiece.FREE ? -1 : Math.toIntExact(losses.step(a, b)));
      }
      if (within == WithinPiece.ALL_DIFFER) {
        model.allDifferent(piece).post();
      }
    }
  }

  /**
   * A pair of rounds by a table of its yarns and what they lose; what is below 0 may not be. The
   * table holds the losses by rank, for its memory grows with the largest value in it.
   */
  private void pair(IntVar first, IntVar second, IntBinaryOperator loses) {
    TreeSet<Integer> amounts = new TreeSet<>();
    List<int[]> allowed = new ArrayList<>();
    for (int a = first.getLB(); a <= first.getUB(); a = first.nextValue(a)) {
      for (int b = second.getLB(); b <= second.getUB(); b = second.nextValue(b)) {
        int loss = loses.applyAsInt(a, b);
        if (loss >= 0) {
          allowed.add(new int[] {a, b, loss});
          amounts.add(loss);
        }
      }
    }
    List<Integer> ranks = List.copyOf(amounts);
    Tuples tuples = new Tuples(true);
    allowed.forEach(pair -> tuples.add(pair[0], pair[1], ranks.indexOf(pair[2])));
    IntVar rank = model.intVar(0, Math.max(0, ranks.size() - 1));
    model.table(new IntVar[] {first, second, rank}, tuples).post();
    if (!amounts.isEmpty() && amounts.last() > 0) {
      int[] byRank = ranks.stream().mapToInt(Integer::intValue).toArray();
      IntVar loss = model.intVar(0, amounts.last(), true);
      model.element(loss, byRank, rank).post();
      lose(loss, 1);
    }
  }

  private void spread() {
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int pair = 0; pair < pairs.size(); pair++) {
        IntVar[] first = rounds[pairs.first()[pair]];
        IntVar[] second = rounds[pairs.second()[pair]];
        int shared = Math.min(first.length, second.length);
        // on a seam no border is repeated
        for (int layer = nearness == Nearness.SEAM ? 1 : 0; layer < shared; layer++) {
          BoolVar same = model.boolVar();
          model.reifyXeqY(first[first.length - 1 - layer], second[second.length - 1 - layer], same);
          lose(same, losses.repeat(layer, nearness));
        }
      }
    }
  }

  private void balance() {
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      List<IntVar> shown = new ArrayList<>();
      for (IntVar[] piece : rounds) {
        if (layer < piece.length) {
          shown.add(piece[piece.length - 1 - layer]);
        }
      }
      IntVar[] all = shown.toArray(IntVar[]::new);
      for (int each = 0; each < blanket.yarnCount(); each++) {
        int yarn = each;
        if (shown.stream().noneMatch(round -> round.contains(yarn))) {
          continue;
        }
        int target = losses.target(layer, yarn);
        IntVar count = model.intVar(0, all.length);
        model.count(yarn, all, count).post();
        IntVar over = model.intVar(0, all.length);
        model.max(over, model.offset(count, -target), model.intVar(0)).post();
        lose(over, losses.overTarget(layer));
      }
    }
  }

  private void stock() {
    int whole = Math.toIntExact(losses.noLeeway());
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      List<BoolVar> shown = new ArrayList<>();
      List<Integer> needs = new ArrayList<>();
      for (int piece = 0; piece < rounds.length; piece++) {
        for (int round = 0; round < rounds[piece].length; round++) {
          if (rounds[piece][round].contains(yarn)) {
            shown.add(model.isEq(rounds[piece][round], yarn));
            needs.add(Math.toIntExact(blanket.takenMillimetres(piece, round, yarn)));
          }
        }
      }
      int fixed = Math.toIntExact(blanket.fixedUse().millimetres(yarn));
      IntVar used =
          model.intVar(0, Math.toIntExact(blanket.yarns().usableMillimetres(yarn)) - fixed);
      int[] millimetres = needs.stream().mapToInt(Integer::intValue).toArray();
      model.scalar(shown.toArray(IntVar[]::new), millimetres, "=", used).post();
      if (whole > 0) {
        // with so many steps of leeway lost, no more may be used
        int allSteps = (whole + LEEWAY_STEP - 1) / LEEWAY_STEP;
        IntVar step = model.intVar(0, allSteps);
        int[] most = new int[allSteps + 1];
        for (int steps = 0; steps <= allSteps; steps++) {
          double tightness = Math.sqrt(Math.min(1, (double) steps * LEEWAY_STEP / whole));
          long stock = blanket.yarn(yarn).stockMillimetres();
          most[steps] = (int) LeewayMeasure.used(stock, tightness) - fixed;
        }
        IntVar limit = model.intVar(0, Math.max(0, most[allSteps]));
        model.element(limit, most, step).post();
        model.arithm(used, "<=", limit).post();
        lose(step, LEEWAY_STEP);
      }
    }
  }

  private void copies() {
    Map<Integer, List<Integer>> byRounds = new TreeMap<>();
    for (int piece = 0; piece < rounds.length; piece++) {
      byRounds.computeIfAbsent(rounds[piece].length, r -> new ArrayList<>()).add(piece);
    }
    byRounds.values().forEach(this::copies);
  }

  /** Tells pieces of as many rounds apart by a number for each sequence. */
  private void copies(List<Integer> pieces) {
    int allowed = blanket.brief().rules().copies().orElse(Integer.MAX_VALUE);
    if (pieces.size() < 2 || allowed >= pieces.size() && losses.copy() == 0) {
      return;
    }
    int[] weights = new int[rounds[pieces.get(0)].length];
    int offset = 0;
    int sequences = 1;
    for (int round = 0; round < weights.length; round++) {
      int least = Integer.MAX_VALUE;
      int most = 0;
      for (int piece : pieces) {
        least = Math.min(least, rounds[piece][round].getLB());
        most = Math.max(most, rounds[piece][round].getUB());
      }
      weights[round] = sequences;
      offset += sequences * least;
      sequences = Math.multiplyExact(sequences, most - least + 1);
    }
    IntVar[] labels = new IntVar[pieces.size()];
    for (int i = 0; i < labels.length; i++) {
      IntVar code = model.intVar(offset, offset + sequences - 1, true);
      model.scalar(rounds[pieces.get(i)], weights, "=", code).post();
      if (allowed == 1) {
        labels[i] = code;
      } else if (allowed < pieces.size()) {
        labels[i] = numbered(code, sequences, allowed);
      } else {
        labels[i] = labelled(code, offset + sequences + i);
      }
    }
    model.allDifferent(labels, "NEQS").post();
  }

  /** The first to show a sequence counts as new, so many more may show it. */
  private IntVar numbered(IntVar code, int sequences, int allowed) {
    IntVar which = model.intVar(0, allowed - 1);
    lose(model.isGeq(which, 1), losses.copy());
    IntVar label = model.intVar(code.getLB(), code.getUB() + (allowed - 1) * sequences, true);
    model.scalar(new IntVar[] {code, which}, new int[] {1, sequences}, "=", label).post();
    return label;
  }

  /** One piece of each sequence counts as new, the others take a label of their own. */
  private IntVar labelled(IntVar code, int own) {
    BoolVar copy = model.boolVar();
    lose(copy, losses.copy());
    IntVar label = model.intVar(code.getLB(), own, true);
    model.ifThenElse(copy, model.arithm(label, "=", own), model.arithm(label, "=", code));
    return label;
  }
}
