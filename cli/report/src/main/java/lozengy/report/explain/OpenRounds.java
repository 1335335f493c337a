package lozengy.report.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;

/**
 * Pieces with the same rounds open.
 *
 * @param rounds the rounds, from the centre
 * @param pieces the pieces
 */
record OpenRounds(List<Integer> rounds, List<Integer> pieces) {

  /** The open rounds of an arrangement. */
  static List<OpenRounds> of(Blanket blanket, Sequences sequences) {
    Map<List<Integer>, List<Integer>> byRounds = new LinkedHashMap<>();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      List<Integer> open = sequences.openRounds(piece);
      if (!open.isEmpty()) {
        byRounds.computeIfAbsent(open, rounds -> new ArrayList<>()).add(piece);
      }
    }
    List<OpenRounds> all = new ArrayList<>();
    byRounds.forEach((rounds, pieces) -> all.add(new OpenRounds(rounds, pieces)));
    return all;
  }

  /** Which rounds of which pieces, in words. */
  String words(Blanket blanket) {
    return Words.rounds(rounds) + " of " + Words.pieces(blanket, pieces);
  }
}
