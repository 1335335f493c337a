package lozengy.solver.constraint;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Ground;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.events.IntEventType;
import org.chocosolver.util.ESat;

/**
 * At most so many pieces share a sequence, unless all that share it are worked already. Sequences
 * are compared as lists of yarns, whatever the kind of piece; images of each other count as one.
 *
 * <p>Checks forward: once a sequence is used up, a piece with one open round loses the yarn that
 * would repeat it. An int for each sequence would need domains of yarns^rounds values and filter no
 * better, for the sequences of an unfinished piece are seldom few. A completed piece costs O(pieces
 * x rounds).
 */
final class CopiesPropagator extends Propagator<IntVar> {

  private final IntVar[][] pieces;
  private final IntVar[] laid;
  private final boolean[] planned;
  private final int[] pieceOf;
  private final int allowed;

  /**
   * Complete pieces by sequence. Entries outlive backtracking and are dropped when they are next
   * met, so that nothing needs restoring.
   */
  private final Map<List<Integer>, Set<Integer>> complete = new HashMap<>();

  private final Deque<Integer> waiting = new ArrayDeque<>();

  CopiesPropagator(ConstraintModel model, Ground.Copies copies) {
    super(variables(model, copies), PropagatorPriority.VERY_SLOW, true);
    Blanket blanket = model.blanket();
    int[] counted = copies.pieces();
    this.pieces = counted(model, copies);
    this.laid = new IntVar[pieces.length];
    this.allowed = copies.most();
    this.planned = new boolean[pieces.length];
    this.pieceOf = new int[vars.length];
    int index = 0;
    for (int piece = 0; piece < pieces.length; piece++) {
      planned[piece] = blanket.orbits().worked(counted[piece]) < 0;
      for (int round = 0; round < pieces[piece].length; round++) {
        pieceOf[index++] = piece;
      }
    }
    for (int piece = 0; piece < pieces.length; piece++) {
      laid[piece] = model.laid(counted[piece]);
      if (laid[piece] != null) {
        pieceOf[index++] = piece;
      }
    }
  }

  private static IntVar[] variables(ConstraintModel model, Ground.Copies copies) {
    return Stream.concat(
            Stream.of(counted(model, copies)).flatMap(Arrays::stream), Stream.of(model.allLaid()))
        .toArray(IntVar[]::new);
  }

  /** Whether a piece is certain to be still to be worked: no piece of the pile lies there. */
  private boolean planned(int piece) {
    return planned[piece] && (laid[piece] == null || laid[piece].isInstantiatedTo(0));
  }

  /** The rounds of the pieces that count: of images of each other one. */
  private static IntVar[][] counted(ConstraintModel model, Ground.Copies copies) {
    return Arrays.stream(copies.pieces()).mapToObj(model::rounds).toArray(IntVar[][]::new);
  }

  @Override
  public int getPropagationConditions(int variable) {
    return IntEventType.instantiation();
  }

  @Override
  public void propagate(int events) throws ContradictionException {
    for (int piece = 0; piece < pieces.length; piece++) {
      waiting.add(piece);
    }
    work();
  }

  @Override
  public void propagate(int variable, int mask) throws ContradictionException {
    waiting.add(pieceOf[variable]);
    work();
  }

  private void work() throws ContradictionException {
    try {
      while (!waiting.isEmpty()) {
        look(waiting.poll());
      }
    } finally {
      waiting.clear();
    }
  }

  private void look(int piece) throws ContradictionException {
    int open = openRound(piece);
    if (open == COMPLETE) {
      List<Integer> sequence = sequence(piece, 0, pieces[piece][0].getValue());
      complete.computeIfAbsent(sequence, s -> new LinkedHashSet<>()).add(piece);
      Set<Integer> sharing = sharing(sequence);
      if (sharing.size() > allowed && sharing.stream().anyMatch(this::planned)) {
        fails();
      }
      for (int other = 0; other < pieces.length; other++) {
        int last = openRound(other);
        if (last >= 0 && pieces[other].length == sequence.size()) {
          filter(other, last, sequence.get(last));
        }
      }
    } else if (open >= 0) {
      IntVar variable = pieces[piece][open];
      int yarn = variable.getLB();
      // once one yarn is left the piece is complete, and would be taken for its own copy
      while (yarn != Integer.MAX_VALUE && !variable.isInstantiated()) {
        filter(piece, open, yarn);
        yarn = variable.nextValue(yarn);
      }
    }
  }

  /** Takes the yarn out of the one open round if a piece too many would share the sequence. */
  private void filter(int piece, int open, int yarn) throws ContradictionException {
    Set<Integer> sharing = sharing(sequence(piece, open, yarn));
    if (sharing.size() >= allowed
        && (planned(piece) || sharing.stream().anyMatch(this::planned))
        && pieces[piece][open].removeValue(yarn, this)
        && pieces[piece][open].isInstantiated()) {
      waiting.add(piece);
    }
  }

  private Set<Integer> sharing(List<Integer> sequence) {
    Set<Integer> sharing = complete.getOrDefault(sequence, Set.of());
    if (!sharing.isEmpty()) {
      sharing.removeIf(piece -> !shows(piece, sequence));
    }
    return sharing;
  }

  private boolean shows(int piece, List<Integer> sequence) {
    for (int round = 0; round < sequence.size(); round++) {
      if (!pieces[piece][round].isInstantiatedTo(sequence.get(round))) {
        return false;
      }
    }
    return true;
  }

  private static final int COMPLETE = -1;
  private static final int SEVERAL = -2;

  /** The one open round of a piece, or {@link #COMPLETE}, or {@link #SEVERAL}. */
  private int openRound(int piece) {
    int open = COMPLETE;
    for (int round = 0; round < pieces[piece].length; round++) {
      if (!pieces[piece][round].isInstantiated()) {
        if (open >= 0) {
          return SEVERAL;
        }
        open = round;
      }
    }
    return open;
  }

  private List<Integer> sequence(int piece, int open, int yarn) {
    List<Integer> sequence = new ArrayList<>(pieces[piece].length);
    for (int round = 0; round < pieces[piece].length; round++) {
      sequence.add(round == open ? yarn : pieces[piece][round].getValue());
    }
    return sequence;
  }

  /** Counts from the variables alone, without what propagation remembers. */
  @Override
  public ESat isEntailed() {
    Map<List<Integer>, List<Integer>> groups = new HashMap<>();
    boolean all = true;
    for (int piece = 0; piece < pieces.length; piece++) {
      if (openRound(piece) == COMPLETE) {
        List<Integer> sequence = sequence(piece, 0, pieces[piece][0].getValue());
        groups.computeIfAbsent(sequence, s -> new ArrayList<>()).add(piece);
      } else {
        all = false;
      }
      all &= laid[piece] == null || laid[piece].isInstantiated();
    }
    boolean broken =
        groups.values().stream()
            .anyMatch(group -> group.size() > allowed && group.stream().anyMatch(this::planned));
    return broken ? ESat.FALSE : all ? ESat.TRUE : ESat.UNDEFINED;
  }
}
