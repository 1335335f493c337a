package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Ground;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/**
 * Where no two pieces may share a sequence and there are hardly more sequences than pieces: numbers
 * the sequences, and posts that the planned pieces' numbers all differ. With so few, a pigeonhole
 * argument counts, which checking forward alone would search for without end.
 */
final class ScarceSequences {

  /** Sequences for each piece from which on they are not scarce. */
  private static final int PLENTY = 3;

  /** Most sequences to number; a table for each piece holds them all. */
  private static final int MOST = 600;

  private final ConstraintModel model;
  private final Ground.Copies copies;
  private final Map<List<Integer>, Integer> numbers = new HashMap<>();

  private ScarceSequences(ConstraintModel model, Ground.Copies copies) {
    this.model = model;
    this.copies = copies;
  }

  /** Posts it for the pieces of each length for which sequences are scarce. */
  static void post(ConstraintModel model, Ground.Copies copies) {
    Blanket blanket = model.blanket();
    Map<Integer, List<Integer>> byLength = new TreeMap<>();
    for (int piece : copies.pieces()) {
      if (blanket.orbits().worked(piece) < 0) {
        byLength.computeIfAbsent(blanket.roundCount(piece), rounds -> new ArrayList<>()).add(piece);
      }
    }
    byLength.values().forEach(pieces -> new ScarceSequences(model, copies).post(pieces));
  }

  private void post(List<Integer> pieces) {
    int most = Math.min(MOST, PLENTY * pieces.size());
    List<Tuples> tables = new ArrayList<>();
    List<List<Integer>> worked = worked();
    for (int piece : pieces) {
      List<List<Integer>> sequences = SequenceLister.list(yarnsOf(piece), within(piece), most + 1);
      if (sequences.size() > most) {
        return;
      }
      Tuples table = new Tuples(true);
      for (List<Integer> sequence : sequences) {
        if (!worked.contains(sequence)) {
          table.add(tuple(sequence));
        }
      }
      tables.add(table);
    }
    if (numbers.size() <= most) {
      post(pieces, tables);
    }
  }

  private void post(List<Integer> pieces, List<Tuples> tables) {
    IntVar[] shown = model.model().intVarArray(pieces.size(), 0, Math.max(0, numbers.size() - 1));
    for (int i = 0; i < shown.length; i++) {
      if (tables.get(i).nbTuples() == 0) {
        model.model().falseConstraint().post();
        return;
      }
      IntVar[] rounds = model.rounds(pieces.get(i));
      IntVar[] row = new IntVar[rounds.length + 1];
      System.arraycopy(rounds, 0, row, 0, rounds.length);
      row[rounds.length] = shown[i];
      model.model().table(row, tables.get(i)).post();
    }
    model.model().allDifferent(shown, "AC").post();
  }

  private int[] tuple(List<Integer> sequence) {
    Integer number = numbers.computeIfAbsent(sequence, s -> numbers.size());
    int[] tuple = new int[sequence.size() + 1];
    for (int i = 0; i < sequence.size(); i++) {
      tuple[i] = sequence.get(i);
    }
    tuple[sequence.size()] = number;
    return tuple;
  }

  private int[][] yarnsOf(int piece) {
    return IntStream.range(0, model.blanket().roundCount(piece))
        .mapToObj(round -> model.direct().yarnsOf(piece, round))
        .toArray(int[][]::new);
  }

  private SequenceLister.Within within(int piece) {
    int start = model.blanket().index().centre(piece);
    return (round, yarn, other, otherYarn) ->
        model.clashes().bars(start + round, yarn, start + other, otherYarn);
  }

  /** The sequences of worked pieces, which no planned piece may show again. */
  private List<List<Integer>> worked() {
    List<List<Integer>> worked = new ArrayList<>();
    for (int lead : copies.pieces()) {
      int piece = model.blanket().orbits().worked(lead);
      if (piece >= 0) {
        List<Integer> sequence = new ArrayList<>();
        for (int round = 0; round < model.blanket().roundCount(piece); round++) {
          sequence.add(model.direct().only(piece, round));
        }
        if (!sequence.contains(Sequences.OPEN)) {
          worked.add(sequence);
        }
      }
    }
    return worked;
  }
}
