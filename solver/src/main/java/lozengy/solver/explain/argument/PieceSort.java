package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.check.ClashGraph;

/**
 * What pieces have in common that may show the same sequences.
 *
 * @param yarns by round, the yarns that the lines leave it by themselves
 * @param clashes the clashes within the piece, each as its two rounds and what they may not have
 */
record PieceSort(List<List<Integer>> yarns, List<List<Integer>> clashes) {

  /** The sort of a piece. */
  static PieceSort of(Requirements asked, int piece) {
    RoundIndex index = asked.blanket().index();
    ClashGraph clashes = asked.clashes();
    List<List<Integer>> within = new ArrayList<>();
    for (int number = index.centre(piece); number <= index.border(piece); number++) {
      for (int entry = clashes.from(number); entry < clashes.to(number); entry++) {
        int other = clashes.other(entry);
        if (other < number && index.piece(other) == piece) {
          within.add(List.of(index.round(number), index.round(other), clashes.relation(entry)));
        }
      }
    }
    List<List<Integer>> yarns =
        IntStream.range(0, asked.direct().rounds(piece))
            .mapToObj(round -> IntStream.of(asked.direct().yarnsOf(piece, round)).boxed().toList())
            .toList();
    return new PieceSort(yarns, within);
  }

  /** Whether a piece of this sort can show nothing that one of another cannot. */
  boolean within(PieceSort wider) {
    return yarns.size() == wider.yarns.size()
        && clashes.equals(wider.clashes)
        && IntStream.range(0, yarns.size())
            .allMatch(round -> wider.yarns.get(round).containsAll(yarns.get(round)));
  }
}
