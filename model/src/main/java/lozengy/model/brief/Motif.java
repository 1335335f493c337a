package lozengy.model.brief;

import java.util.List;
import java.util.OptionalDouble;
import lozengy.model.input.Nulls;

/**
 * The recipe of one kind of piece.
 *
 * @param edgeCm for a square, the length of its side in cm; for a side triangle, its measured long
 *     edge (the brief's {@code base}) in cm, where stated; for a corner triangle empty
 * @param rounds its rounds, centre first, at least one
 */
public record Motif(OptionalDouble edgeCm, List<Round> rounds) {

  /**
   * Copies the rounds.
   *
   * @param edgeCm for a square, the length of its side in cm; for a side triangle, its measured
   *     long edge (the brief's {@code base}) in cm, where stated; for a corner triangle empty
   * @param rounds its rounds, centre first, at least one
   * @throws IllegalArgumentException if there is no round, or the edge is not above 0
   */
  public Motif {
    Nulls.refuse("edgeCm rounds", edgeCm, rounds);
    rounds = List.copyOf(rounds);
    if (rounds.isEmpty()) {
      throw new IllegalArgumentException("a motif needs at least one round");
    }
    if (edgeCm.isPresent() && !(edgeCm.getAsDouble() > 0 && edgeCm.getAsDouble() < 1e6)) {
      throw new IllegalArgumentException("a motif's edge must be above 0 cm");
    }
  }
}
