package lozengy.model.blanket;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.layout.PieceKind;

/**
 * Finds each piece of the pile a place that its locks leave open to it, seams left out: a matching
 * of pieces and places by augmenting paths (Kuhn 1955), or pieces that have too few places between
 * them (Hall 1935). Places without locks take any piece, so that paths are only looked for where
 * these run out.
 */
public final class PileMatching {

  private final Blanket blanket;
  private final Places places;
  private final List<Stack> stacks;
  private final int[] stackAt;
  private final int[] left;
  private final boolean[] seen;

  private PileMatching(Blanket blanket, Places places) {
    this.blanket = blanket;
    this.places = places;
    this.stacks = blanket.pile().stacks();
    this.stackAt = new int[blanket.pieceCount()];
    Arrays.fill(stackAt, -1);
    this.left = stacks.stream().mapToInt(places::count).toArray();
    this.seen = new boolean[stackAt.length];
  }

  /**
   * What was found.
   *
   * @param stackAt by piece, the stack whose piece may lie there, or -1
   * @param tooMany stacks of which a piece has found no place, with those in its way; empty where
   *     all have
   * @param places all places that these stacks' pieces may take
   * @param unfilled places that only a finished piece could fill, and none is left that fits
   */
  public record Result(
      int[] stackAt, List<Integer> tooMany, List<Integer> places, List<Integer> unfilled) {

    /**
     * {@return whether all pieces have a place, and all places a piece or yarns to be worked in}
     */
    public boolean complete() {
      return tooMany.isEmpty() && unfilled.isEmpty();
    }
  }

  /**
   * Looks for places; O(pieces) where few places are locked.
   *
   * @param blanket the blanket
   * @return which stack may lie where, and what finds no place
   */
  public static Result of(Blanket blanket) {
    return of(blanket, new AllAsked(blanket));
  }

  /**
   * Looks for places where only a part of what the brief asks for holds.
   *
   * @param blanket the blanket
   * @param places what places may hold then
   * @return which stack may lie where, and what finds no place
   */
  public static Result of(Blanket blanket, Places places) {
    return new PileMatching(blanket, places).find();
  }

  /** What places may hold. */
  public interface Places {

    /**
     * {@return how many pieces of a stack are to lie somewhere}
     *
     * @param stack a stack of the pile
     */
    int count(Stack stack);

    /**
     * {@return whether a piece of a stack may lie at a place}
     *
     * @param stack a stack of the pile
     * @param piece the place's piece, by its index from 0
     */
    boolean fits(Stack stack, int piece);

    /**
     * {@return whether any piece of its kind may lie at a place}
     *
     * @param piece the place's piece, by its index from 0
     */
    boolean takesAny(int piece);

    /**
     * {@return whether a new piece could be worked at a place}
     *
     * @param piece the place's piece, by its index from 0
     */
    boolean takesNew(int piece);
  }

  /** All that the brief asks for. */
  private record AllAsked(Blanket blanket) implements Places {

    @Override
    public int count(Stack stack) {
      return stack.count();
    }

    @Override
    public boolean fits(Stack stack, int piece) {
      boolean fits = blanket.domains().takesPile(piece) && blanket.kind(piece) == stack.kind();
      for (int round = 0; fits && round < stack.yarns().length; round++) {
        int lock = blanket.locked(piece, round);
        fits = lock == Sequences.OPEN || lock == stack.yarns()[round];
      }
      return fits;
    }

    @Override
    public boolean takesAny(int piece) {
      return IntStream.range(0, blanket.roundCount(piece))
          .allMatch(round -> blanket.locked(piece, round) == Sequences.OPEN);
    }

    @Override
    public boolean takesNew(int piece) {
      return PileMatching.takesNew(blanket, piece);
    }
  }

  private Result find() {
    List<Integer> unfilled = new ArrayList<>();
    for (int piece = 0; piece < stackAt.length; piece++) {
      if (blanket.domains().takesPile(piece) && !places.takesNew(piece)) {
        if (!fill(piece, new boolean[left.length])) {
          unfilled.add(piece);
        }
      }
    }
    if (!unfilled.isEmpty()) {
      return new Result(stackAt, List.of(), List.of(), unfilled);
    }
    for (PieceKind kind : PieceKind.values()) {
      List<Integer> open = open(kind);
      int next = 0;
      for (int stack = 0; stack < left.length; stack++) {
        while (left[stack] > 0 && stacks.get(stack).kind() == kind) {
          if (next < open.size()) {
            stackAt[open.get(next++)] = stack;
          } else {
            Arrays.fill(seen, false);
            if (!lay(stack)) {
              return tooMany(stack);
            }
          }
          left[stack]--;
        }
      }
    }
    return new Result(stackAt, List.of(), List.of(), List.of());
  }

  /** Places of a kind that are still empty and take any piece. */
  private List<Integer> open(PieceKind kind) {
    return IntStream.range(0, stackAt.length)
        .filter(p -> blanket.domains().takesPile(p) && blanket.kind(p) == kind && stackAt[p] < 0)
        .filter(places::takesAny)
        .boxed()
        .toList();
  }

  /**
   * {@return whether the brief leaves every round of a planned piece a yarn that it could be worked
   * in}
   *
   * @param blanket the blanket
   * @param piece the piece, by its index from 0
   */
  public static boolean takesNew(Blanket blanket, int piece) {
    for (int round = 0; round < blanket.roundCount(piece); round++) {
      boolean any = false;
      for (int yarn = 0; yarn < blanket.yarnCount() && !any; yarn++) {
        int lock = blanket.locked(piece, round);
        any =
            (lock == Sequences.OPEN || lock == yarn)
                && blanket.domains().mayTake(piece, round, yarn);
      }
      if (!any) {
        return false;
      }
    }
    return true;
  }

  private boolean fits(int stack, int piece) {
    return places.fits(stacks.get(stack), piece);
  }

  /** Finds a piece for a place that only a finished one can fill, moving others on if need be. */
  private boolean fill(int piece, boolean[] tried) {
    for (int stack = 0; stack < left.length; stack++) {
      if (tried[stack] || !fits(stack, piece)) {
        continue;
      }
      tried[stack] = true;
      if (left[stack] > 0) {
        left[stack]--;
        stackAt[piece] = stack;
        return true;
      }
      for (int other = 0; other < stackAt.length; other++) {
        if (stackAt[other] == stack && other != piece && fill(other, tried)) {
          stackAt[piece] = stack;
          return true;
        }
      }
    }
    return false;
  }

  private boolean lay(int stack) {
    for (int piece = 0; piece < stackAt.length; piece++) {
      if (!seen[piece] && fits(stack, piece)) {
        seen[piece] = true;
        if (stackAt[piece] < 0 || lay(stackAt[piece])) {
          stackAt[piece] = stack;
          return true;
        }
      }
    }
    return false;
  }

  private Result tooMany(int stack) {
    List<Integer> taken = new ArrayList<>();
    boolean[] in = new boolean[left.length];
    in[stack] = true;
    for (int piece = 0; piece < seen.length; piece++) {
      if (seen[piece]) {
        taken.add(piece);
        in[stackAt[piece]] = true;
      }
    }
    return new Result(
        stackAt,
        IntStream.range(0, in.length).filter(s -> in[s]).boxed().toList(),
        taken,
        List.of());
  }
}
