package lozengy.benchmarks.peer;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lozengy.model.blanket.Blanket;

/**
 * The rule on copies, and what variety loses: every piece has a label, linear in what its rounds
 * show, and labels differ. Only pieces with as many rounds can be alike. Measured against leaving
 * the rule out this slows the reference brief down by little.
 */
final class CpSatCopies {

  private final CpSatModel stated;
  private final CpModel model;
  private final Blanket blanket;
  private final long loss;

  CpSatCopies(CpSatModel stated) {
    this.stated = stated;
    this.model = stated.model();
    this.blanket = stated.blanket();
    this.loss = stated.losses().copy();
  }

  void post() {
    Map<Integer, List<Integer>> byRounds = new TreeMap<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      byRounds.computeIfAbsent(stated.rounds(piece), r -> new ArrayList<>()).add(piece);
    }
    byRounds.values().forEach(this::post);
  }

  private void post(List<Integer> pieces) {
    int allowed = blanket.brief().rules().copies().orElse(Integer.MAX_VALUE);
    if (pieces.size() < 2 || allowed >= pieces.size() && loss == 0) {
      return;
    }
    int rounds = stated.rounds(pieces.get(0));
    int[][] digits = new int[rounds][];
    long sequences = 1;
    for (int round = 0; round < rounds; round++) {
      digits[round] = digits(pieces, round);
      sequences *= digits[round][blanket.yarnCount()];
    }
    List<IntVar> labels = new ArrayList<>();
    for (int piece : pieces) {
      LinearExprBuilder code = code(piece, digits);
      if (allowed == 1) {
        IntVar label = model.newIntVar(0, sequences - 1, "");
        model.addEquality(label, code);
        labels.add(label);
      } else if (allowed < pieces.size()) {
        labels.add(numbered(code, sequences, allowed));
      } else {
        labels.add(labelled(code, sequences, labels.size()));
      }
    }
    model.addAllDifferent(labels);
  }

  /** A digit for each yarn that some of the pieces may take in a round, and how many there are. */
  private int[] digits(List<Integer> pieces, int round) {
    int[] digits = new int[blanket.yarnCount() + 1];
    int count = 0;
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      int each = yarn;
      if (pieces.stream().anyMatch(piece -> stated.shows(piece, round)[each] != null)) {
        digits[yarn] = count++;
      }
    }
    digits[blanket.yarnCount()] = count;
    return digits;
  }

  private LinearExprBuilder code(int piece, int[][] digits) {
    LinearExprBuilder code = LinearExpr.newBuilder();
    long weight = 1;
    for (int round = 0; round < digits.length; round++) {
      Literal[] shown = stated.shows(piece, round);
      for (int yarn = 0; yarn < shown.length; yarn++) {
        if (shown[yarn] != null) {
          code.addTerm(shown[yarn], weight * digits[round][yarn]);
        }
      }
      weight *= digits[round][blanket.yarnCount()];
    }
    return code;
  }

  /** The first to show a sequence counts as new, so many more may show it. */
  private IntVar numbered(LinearExprBuilder code, long sequences, int allowed) {
    IntVar which = model.newIntVar(0, allowed - 1, "");
    IntVar label = model.newIntVar(0, allowed * sequences - 1, "");
    model.addEquality(label, code.addTerm(which, sequences));
    BoolVar copy = model.newBoolVar("");
    model.addLessOrEqual(which, LinearExpr.term(copy, allowed - 1));
    stated.lose(copy, loss);
    return label;
  }

  /** One piece of each sequence counts as new, the others take a label of their own. */
  private IntVar labelled(LinearExprBuilder code, long sequences, int number) {
    BoolVar copy = model.newBoolVar("");
    stated.lose(copy, loss);
    IntVar label = model.newIntVar(0, sequences + number, "");
    model.addEquality(label, code).onlyEnforceIf(copy.not());
    model.addEquality(label, sequences + number).onlyEnforceIf(copy);
    return label;
  }
}
