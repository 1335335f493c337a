package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.PieceKind;

/**
 * One round of one kind of piece, and the pieces that have it: all of them take the same length in
 * the same yarn.
 *
 * @param kind the kind of piece
 * @param round the round, from the centre
 * @param pieces indices of the pieces of that kind, at least one
 */
public record RoundClass(PieceKind kind, int round, int[] pieces) {

  /**
   * {@return the classes of a blanket, kind by kind, centre first}
   *
   * @param blanket the blanket
   */
  public static List<RoundClass> of(Blanket blanket) {
    List<RoundClass> classes = new ArrayList<>();
    for (PieceKind kind : PieceKind.values()) {
      int[] pieces =
          IntStream.range(0, blanket.pieceCount()).filter(p -> blanket.kind(p) == kind).toArray();
      int rounds = pieces.length == 0 ? 0 : blanket.roundCount(pieces[0]);
      for (int round = 0; round < rounds; round++) {
        classes.add(new RoundClass(kind, round, pieces));
      }
    }
    return classes;
  }
}
