package lozengy.model.brief;

import java.util.List;
import lozengy.model.input.Nulls;
import lozengy.model.layout.PieceKind;

/**
 * Work that was weighed, or of which the yarn was measured before and after; tails are in it.
 *
 * @param of the kind of its pieces
 * @param rounds the rounds that were weighed or measured, from 1 at the centre, ascending; empty
 *     for whole pieces
 * @param count how many pieces each amount holds, at least 1
 * @param takes the amounts, at least one; several tell how pieces differ
 * @param yarns codes of its yarns: one for all its rounds, worked on without a cut, or one for each
 *     of its rounds; empty where each round has a yarn of its own and any will do
 */
public record Sample(
    PieceKind of, List<Integer> rounds, int count, List<YarnAmount> takes, List<String> yarns) {

  /**
   * Copies the lists.
   *
   * @param of the kind of its pieces
   * @param rounds the rounds that were weighed or measured, from 1 at the centre, ascending; empty
   *     for whole pieces
   * @param count how many pieces each amount holds, at least 1
   * @param takes the amounts, at least one; several tell how pieces differ
   * @param yarns codes of its yarns: one for all its rounds, worked on without a cut, or one for
   *     each of its rounds; empty where each round has a yarn of its own and any will do
   * @throws IllegalArgumentException if there is no amount or no piece
   */
  public Sample {
    Nulls.refuse("of rounds takes yarns", of, rounds, takes, yarns);
    rounds = List.copyOf(rounds);
    takes = List.copyOf(takes);
    yarns = List.copyOf(yarns);
    if (takes.isEmpty() || count < 1) {
      throw new IllegalArgumentException("a sample needs an amount and a piece");
    }
  }
}
