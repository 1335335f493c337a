package lozengy.solver.problem;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.PileMatching;
import lozengy.model.layout.PieceKind;

/**
 * The pile for the search: which finished pieces there are, and where they may lie. Immutable by
 * convention.
 *
 * @param yarns yarns of the pieces of each stack, centre first
 * @param counts how many pieces each stack has
 * @param kinds kind of each stack
 * @param places by kind, the places that its pieces may come to lie at
 * @param kindOf kind of each place
 * @param start by place, the stack whose piece may lie there when seams are left out, or -1
 */
public record PilePlaces(
    int[][] yarns, int[] counts, int[] kinds, int[][] places, int[] kindOf, int[] start) {

  static PilePlaces of(Blanket blanket) {
    List<Stack> stacks = blanket.pile().stacks();
    int kinds = PieceKind.values().length;
    int[][] places = new int[kinds][];
    for (int kind = 0; kind < kinds; kind++) {
      PieceKind wanted = PieceKind.values()[kind];
      places[kind] =
          IntStream.range(0, blanket.pieceCount())
              .filter(piece -> blanket.domains().takesPile(piece) && blanket.kind(piece) == wanted)
              .toArray();
    }
    PileMatching.Result matching = PileMatching.of(blanket);
    if (!matching.complete()) {
      throw new IllegalArgumentException("some pieces of the pile have no place by their locks");
    }
    return new PilePlaces(
        stacks.stream().map(Stack::yarns).toArray(int[][]::new),
        stacks.stream().mapToInt(Stack::count).toArray(),
        stacks.stream().mapToInt(stack -> stack.kind().ordinal()).toArray(),
        places,
        IntStream.range(0, blanket.pieceCount()).map(p -> blanket.kind(p).ordinal()).toArray(),
        matching.stackAt());
  }

  /** {@return whether there is no pile} */
  public boolean isEmpty() {
    return counts.length == 0;
  }

  /** {@return how many pieces there are} */
  public int pieces() {
    return IntStream.of(counts).sum();
  }

  /**
   * {@return whether the pile fills all places of a kind, so that nothing is left to be worked
   * there}
   *
   * @param kind the kind's ordinal
   */
  public boolean fills(int kind) {
    int pieces = 0;
    for (int stack = 0; stack < counts.length; stack++) {
      pieces += kinds[stack] == kind ? counts[stack] : 0;
    }
    return pieces > 0 && pieces == places[kind].length;
  }

  /**
   * {@return whether the locks of a place let a stack's piece lie there}
   *
   * @param slots the rounds of all pieces as slots
   * @param stack the stack's index, from 0
   * @param place the place's piece, by its index from 0
   */
  public boolean fits(Slots slots, int stack, int place) {
    int slot = slots.orbitStart()[place];
    for (int yarn : yarns[stack]) {
      int fixed = slots.fixedYarn()[slot++];
      if (fixed >= 0 && fixed != yarn) {
        return false;
      }
    }
    return true;
  }

  /**
   * Where the pile's pieces lie in an assignment: places first at which no other piece may show
   * their yarns.
   *
   * @param slots the rounds of all pieces as slots
   * @param domains what each round may take
   * @param assignment the yarn of every slot
   * @return by place the stack, or -1
   * @throws IllegalArgumentException if a piece lies nowhere
   */
  public int[] laid(Slots slots, Domains domains, int[] assignment) {
    int[] laid = new int[slots.orbits()];
    Arrays.fill(laid, -1);
    for (int stack = 0; stack < counts.length; stack++) {
      int missing = counts[stack];
      for (int turn = 0; turn < 2; turn++) {
        for (int place : places[kinds[stack]]) {
          boolean here =
              missing > 0
                  && laid[place] < 0
                  && shows(slots, assignment, place, stack)
                  && (turn == 1 || !isNew(slots, domains, place, stack));
          if (here) {
            laid[place] = stack;
            missing--;
          }
        }
      }
      if (missing > 0) {
        throw new IllegalArgumentException("a piece of the pile lies nowhere");
      }
    }
    return laid;
  }

  private boolean shows(Slots slots, int[] assignment, int place, int stack) {
    int start = slots.orbitStart()[place];
    return Arrays.equals(
        assignment, start, slots.orbitStart()[place + 1], yarns[stack], 0, yarns[stack].length);
  }

  /** Whether a piece still to be worked may show a stack's yarns at a place. */
  private boolean isNew(Slots slots, Domains domains, int place, int stack) {
    int slot = slots.orbitStart()[place];
    for (int yarn : yarns[stack]) {
      if (!domains.allows(slot++, yarn)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Deals the pieces to places at random, seams left out.
   *
   * @param slots the rounds of all pieces as slots
   * @param domains what each round may take
   * @param below gives a random number from 0 to below its argument
   * @return by place the stack, or -1
   */
  public int[] deal(Slots slots, Domains domains, IntUnaryOperator below) {
    int[] dealt = start.clone();
    for (int[] ofKind : places) {
      for (int turn = 0; turn < 4 * ofKind.length; turn++) {
        int a = ofKind[below.applyAsInt(ofKind.length)];
        int b = ofKind[below.applyAsInt(ofKind.length)];
        if (mayLie(slots, domains, dealt[a], b) && mayLie(slots, domains, dealt[b], a)) {
          int stack = dealt[a];
          dealt[a] = dealt[b];
          dealt[b] = stack;
        }
      }
    }
    return dealt;
  }

  /**
   * {@return whether a stack's piece may lie at a place, or one still to be worked}
   *
   * @param slots the rounds of all pieces as slots
   * @param domains what each round may take
   * @param stack the stack's index, from 0; -1 for a piece still to be worked
   * @param place the place's piece, by its index from 0
   */
  public boolean mayLie(Slots slots, Domains domains, int stack, int place) {
    if (stack >= 0) {
      return fits(slots, stack, place);
    }
    for (int slot = slots.orbitStart()[place]; slot < slots.orbitStart()[place + 1]; slot++) {
      if (domains.yarns(slot).length == 0) {
        return false;
      }
    }
    return true;
  }
}
