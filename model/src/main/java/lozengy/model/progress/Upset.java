package lozengy.model.progress;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * How far planning again has upset the plan before.
 *
 * @param pieces the pieces whose yarns have changed
 * @param freeRounds how many rounds had a yarn before and were free to change
 * @param changedRounds how many of these have another yarn now
 * @param heldRounds how many rounds have another yarn because they are locked to it now
 * @param newRounds how many rounds had no yarn before
 */
public record Upset(
    List<Piece> pieces, int freeRounds, int changedRounds, int heldRounds, int newRounds) {

  /**
   * Copies the list.
   *
   * @param pieces the pieces whose yarns have changed
   * @param freeRounds how many rounds had a yarn before and were free to change
   * @param changedRounds how many of these have another yarn now
   * @param heldRounds how many rounds have another yarn because they are locked to it now
   * @param newRounds how many rounds had no yarn before
   */
  public Upset {
    pieces = List.copyOf(pieces);
  }

  /**
   * A piece whose yarns have changed.
   *
   * @param piece the piece
   * @param before its yarns before, centre first
   * @param after its yarns now
   */
  public record Piece(int piece, List<Integer> before, List<Integer> after) {}

  /**
   * Compares two plans of a blanket; O(pieces x rounds).
   *
   * @param blanket the blanket as it was planned last
   * @param before the plan before; open where there was none
   * @param after the plan now
   * @return what the second plan changes of the first
   */
  public static Upset of(Blanket blanket, Sequences before, Sequences after) {
    List<Piece> pieces = new ArrayList<>();
    int free = 0;
    int changed = 0;
    int held = 0;
    int added = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      boolean here = false;
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int was = before.yarn(piece, round);
        boolean differs = was != Sequences.OPEN && was != after.yarn(piece, round);
        boolean isFree = blanket.free(piece, round);
        added += was == Sequences.OPEN ? 1 : 0;
        free += was != Sequences.OPEN && isFree ? 1 : 0;
        changed += differs && isFree ? 1 : 0;
        held += differs && !isFree ? 1 : 0;
        here |= differs;
      }
      if (here) {
        pieces.add(new Piece(piece, yarns(before, piece), yarns(after, piece)));
      }
    }
    return new Upset(pieces, free, changed, held, added);
  }

  private static List<Integer> yarns(Sequences sequences, int piece) {
    List<Integer> yarns = new ArrayList<>();
    for (int yarn : sequences.of(piece)) {
      yarns.add(yarn);
    }
    return yarns;
  }
}
