package lozengy.model.check;

import java.util.BitSet;

/**
 * What a line of a brief comes down to for single rounds: one of few kinds, which all that plans a
 * blanket works by. Rounds go by their numbers in {@link lozengy.model.blanket.Blanket#index()},
 * pieces and yarns by their indices. The arrays are shared, for speed: read them only.
 *
 * <p>What has been worked is a fact. A rule leaves made and joined pieces out of what it comes down
 * to, as it says itself; where a finished piece of the pile will lie is not known before, and so
 * each kind says what holds of such a piece.
 */
public sealed interface Ground {

  /**
   * Rounds that may take some yarns and no others.
   *
   * @param rounds the rounds
   * @param yarns the yarns
   * @param ofPlace whether it also holds where a finished piece of the pile comes to lie
   */
  record May(int[] rounds, BitSet yarns, boolean ofPlace) implements Ground {}

  /**
   * Pairs of rounds that may not have some pairs of yarns together. Of two rounds of one piece it
   * does not hold where a finished piece of the pile comes to lie, which is a fact; of rounds of
   * two pieces it always holds.
   *
   * @param pairs the rounds
   * @param barred the pairs of yarns
   */
  record Clash(RoundPairs pairs, YarnPairs barred) implements Ground {}

  /**
   * Pairs of rounds that have the same yarn.
   *
   * @param pairs the rounds
   */
  record Same(RoundPairs pairs) implements Ground {}

  /**
   * How many pieces show a yarn: a piece once, in whichever of its rounds.
   *
   * @param yarn the yarn
   * @param rounds by piece that is counted, the rounds that may show it, at least one
   * @param least the least number of pieces
   * @param most the largest number of pieces
   */
  record Count(int yarn, int[][] rounds, int least, int most) implements Ground {}

  /**
   * All rounds in a yarn together take at most what there is of it, less what others take of it.
   *
   * @param yarn the yarn
   * @param millimetres what there is for all rounds, worked ones included
   */
  record Stock(int yarn, long millimetres) implements Ground {}

  /**
   * What is taken off a yarn before the rounds.
   *
   * @param yarn the yarn
   * @param millimetres how much
   */
  record Taken(int yarn, long millimetres) implements Ground {}

  /**
   * Beside its round each border takes what {@link lozengy.model.blanket.Blanket#takenMillimetres}
   * says of its seams; without it, a round alone.
   */
  record Seams() implements Ground {}

  /**
   * How often a sequence may come. Pieces that are all worked, or of the pile, are a fact.
   *
   * @param pieces the pieces that count
   * @param most how many of them may share a sequence
   */
  record Copies(int[] pieces, int most) implements Ground {}

  /**
   * Every finished piece of a stack of the pile lies somewhere: the one kind that asks of no round,
   * but which whole sequences there are.
   *
   * @param stack index of the stack in the pile
   */
  record Lay(int stack) implements Ground {}
}
