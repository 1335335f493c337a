package lozengy.model.progress;

import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * What changes have come to.
 *
 * @param blanket what is asked for now, made ready
 * @param earlier the plan to stay close to: the plan so far, with yarns swapped as asked; open
 *     where the layout has grown
 * @param before the plan so far on the same layout, without the swaps
 * @param wishes what messages call the changes that brought notes on pieces, by the note's index in
 *     the brief
 */
public record Changed(
    Blanket blanket,
    Optional<Sequences> earlier,
    Optional<Sequences> before,
    Map<Integer, String> wishes) {
  /**
   * Copies the map.
   *
   * @param blanket what is asked for now, made ready
   * @param earlier the plan to stay close to
   * @param before the plan so far on the same layout
   * @param wishes what messages call the changes that brought notes on pieces
   */
  public Changed {
    wishes = Map.copyOf(wishes);
  }
}
