package lozengy.model.progress;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * How far planning again has upset the plan before.
 *
 * @param pieces the pieces whose yarns have changed
 * @param changedRounds how many rounds have another yarn than before
 * @param newRounds how many rounds had no yarn before
 * @param freeRounds how many rounds were free to change
 */
public record Upset(List<Piece> pieces, int changedRounds, int newRounds, int freeRounds) {

  /** Copies the list. */
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
   */
  public static Upset of(Blanket blanket, Sequences before, Sequences after) {
    List<Piece> pieces = new ArrayList<>();
    int changed = 0;
    int added = 0;
    int free = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int changedHere = 0;
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        free += blanket.free(piece, round) ? 1 : 0;
        int was = before.yarn(piece, round);
        if (was == Sequences.OPEN) {
          added++;
        } else if (was != after.yarn(piece, round)) {
          changedHere++;
        }
      }
      if (changedHere > 0) {
        pieces.add(new Piece(piece, yarns(before, piece), yarns(after, piece)));
        changed += changedHere;
      }
    }
    return new Upset(pieces, changed, added, free);
  }

  private static List<Integer> yarns(Sequences sequences, int piece) {
    List<Integer> yarns = new ArrayList<>();
    for (int yarn : sequences.of(piece)) {
      yarns.add(yarn);
    }
    return yarns;
  }
}
