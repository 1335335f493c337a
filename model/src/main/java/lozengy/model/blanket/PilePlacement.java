package lozengy.model.blanket;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.PieceKind;

/**
 * Where the pile's pieces lie in sequences: on planned places of their kind that show their yarns.
 * Where more places show them than the pile holds, those come first at which tones, bans or zones
 * let no piece still to be worked show them, since only a finished piece may lie there; then the
 * first in order. Which of the others they are makes no difference. O(pieces x rounds), with
 * hashing.
 */
public final class PilePlacement {

  private final Blanket blanket;
  private final int[] stackOf;
  private final int[] missing;
  private final Sequences sequences;

  private PilePlacement(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.sequences = sequences;
    this.stackOf = new int[blanket.pieceCount()];
    Arrays.fill(stackOf, -1);
    List<Stack> stacks = blanket.pile().stacks();
    this.missing = stacks.stream().mapToInt(Stack::count).toArray();
    if (stacks.isEmpty()) {
      return;
    }
    Map<PieceKind, Map<IntBuffer, Integer>> known = new HashMap<>();
    for (int stack = 0; stack < missing.length; stack++) {
      known
          .computeIfAbsent(stacks.get(stack).kind(), kind -> new HashMap<>())
          .put(IntBuffer.wrap(stacks.get(stack).yarns()), stack);
    }
    lay(sequences, known, true);
    lay(sequences, known, false);
  }

  /**
   * Finds where the pile's pieces lie.
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds; rounds may be open
   * @return where they lie
   */
  public static PilePlacement of(Blanket blanket, Sequences sequences) {
    return new PilePlacement(blanket, sequences);
  }

  private void lay(
      Sequences sequences, Map<PieceKind, Map<IntBuffer, Integer>> known, boolean onlyFinished) {
    for (int piece = 0; piece < stackOf.length; piece++) {
      if (!blanket.domains().takesPile(piece) || stackOf[piece] >= 0) {
        continue;
      }
      int[] yarns = sequences.of(piece);
      Integer stack = known.get(blanket.kind(piece)).get(IntBuffer.wrap(yarns));
      if (stack != null && missing[stack] > 0 && (!onlyFinished || !mayBeWorked(piece, yarns))) {
        stackOf[piece] = stack;
        missing[stack]--;
      }
    }
  }

  private boolean mayBeWorked(int piece, int[] yarns) {
    return IntStream.range(0, yarns.length)
        .allMatch(round -> blanket.domains().mayTake(piece, round, yarns[round]));
  }

  /**
   * {@return the stack whose piece lies at a place, by its index in the pile; or -1}
   *
   * @param piece the piece's index, from 0
   */
  public int stack(int piece) {
    return stackOf[piece];
  }

  /**
   * {@return how many rounds of what is at a place are worked, from the centre}
   *
   * @param piece the piece's index, from 0
   */
  public int roundsWorked(int piece) {
    return holds(piece) ? blanket.roundCount(piece) : blanket.roundsWorked(piece);
  }

  /**
   * {@return whether a piece of the pile lies at a place}
   *
   * @param piece the piece's index, from 0
   */
  public boolean holds(int piece) {
    return stackOf[piece] >= 0;
  }

  /**
   * {@return whether what is at a place is worked: made, joined, or from the pile}
   *
   * @param piece the piece's index, from 0
   */
  public boolean worked(int piece) {
    return stackOf[piece] >= 0 || blanket.state(piece) != PieceState.PLANNED;
  }

  /**
   * {@return how far what is at a place has come: a piece from the pile is made}
   *
   * @param piece the piece's index, from 0
   */
  public PieceState state(int piece) {
    return holds(piece) ? PieceState.MADE : blanket.state(piece);
  }

  /**
   * {@return whether what is at a place is certain to be still to be worked, if only in part: it is
   * planned, and neither from the pile nor, where rounds are open, can it come to be}
   *
   * @param piece the piece's index, from 0
   */
  public boolean toWork(int piece) {
    return !worked(piece)
        && !(blanket.domains().takesPile(piece)
            && blanket.pile().stacks().stream().anyMatch(stack -> canBecome(piece, stack)));
  }

  /**
   * {@return whether a round is certain to be still to be worked: its piece is, and it is none of
   * those that are worked of it}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public boolean toWork(int piece, int round) {
    return !blanket.worked(piece, round) && toWork(piece);
  }

  private boolean canBecome(int piece, Stack stack) {
    boolean open = false;
    boolean fits = stack.kind() == blanket.kind(piece);
    for (int round = 0; fits && round < stack.yarns().length; round++) {
      int yarn = sequences.yarn(piece, round);
      open |= yarn == Sequences.OPEN;
      fits = yarn == Sequences.OPEN || yarn == stack.yarns()[round];
    }
    return open && fits;
  }

  /**
   * {@return how many pieces of a stack have found no place}
   *
   * @param stack the stack's index in the pile, from 0
   */
  public int missing(int stack) {
    return missing[stack];
  }

  /** {@return the pieces from the pile, in order of their places} */
  public List<Integer> pieces() {
    List<Integer> pieces = new ArrayList<>();
    for (int piece = 0; piece < stackOf.length; piece++) {
      if (stackOf[piece] >= 0) {
        pieces.add(piece);
      }
    }
    return pieces;
  }
}
