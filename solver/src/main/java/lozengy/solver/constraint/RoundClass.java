package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.PieceKind;

/**
 * One round of one kind of piece, and pieces that have it: all of them take the same length in the
 * same yarn. These are all pieces of the kind; but of a border that takes part in seams, those with
 * as many seams.
 *
 * @param kind the kind of piece
 * @param round the round, from the centre
 * @param pieces indices of the pieces, at least one
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
      for (int round = 0; round < rounds - 1; round++) {
        classes.add(new RoundClass(kind, round, pieces));
      }
      Map<Integer, List<Integer>> bySeams = new TreeMap<>();
      for (int piece : pieces) {
        bySeams
            .computeIfAbsent(blanket.borderSeams().halves(piece), s -> new ArrayList<>())
            .add(piece);
      }
      for (List<Integer> alike : bySeams.values()) {
        int[] members = alike.stream().mapToInt(Integer::intValue).toArray();
        classes.add(new RoundClass(kind, rounds - 1, members));
      }
    }
    return classes;
  }

  /**
   * {@return the length in mm that each of them takes in a yarn}
   *
   * @param blanket the blanket
   * @param yarn the yarn
   * @param seams whether borders take what they do of their seams
   */
  public long millimetres(Blanket blanket, int yarn, boolean seams) {
    return seams
        ? blanket.takenMillimetres(pieces[0], round, yarn)
        : blanket.motifs().needMillimetres(kind, round, yarn);
  }

  /**
   * {@return whether these are all pieces of the kind}
   *
   * @param blanket the blanket
   */
  boolean wholeKind(Blanket blanket) {
    return pieces.length
        == IntStream.range(0, blanket.pieceCount()).filter(p -> blanket.kind(p) == kind).count();
  }
}
