package lozengy.model.progress;

import java.util.List;
import java.util.Optional;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;

/**
 * What has come about since the plan was made.
 *
 * @param states pieces that have come so far
 * @param worked pieces that were worked otherwise than planned
 * @param counts yarns that were counted again
 * @param edged part of the outline that has its edging, where stated
 */
public record Mark(
    List<State> states, List<Work> worked, List<Count> counts, Optional<Edged> edged) {

  /**
   * Copies the lists.
   *
   * @param states pieces that have come so far
   * @param worked pieces that were worked otherwise than planned
   * @param counts yarns that were counted again
   * @param edged part of the outline that has its edging, where stated
   */
  public Mark {
    states = List.copyOf(states);
    worked = List.copyOf(worked);
    counts = List.copyOf(counts);
  }

  /**
   * Pieces that have come so far.
   *
   * @param place what messages call it
   * @param state how far
   * @param at selectors of the pieces
   */
  public record State(String place, PieceState state, List<String> at) {}

  /**
   * Pieces and the yarns that they were really worked in.
   *
   * @param place what messages call it
   * @param note the pieces and their yarns; open where they are as planned
   */
  public record Work(String place, PieceNote note) {}

  /**
   * A count of a yarn.
   *
   * @param place what messages call it
   * @param code the yarn
   * @param left what is at hand
   */
  public record Count(String place, String code, YarnAmount left) {}

  /**
   * A part of the outline that has its edging.
   *
   * @param place what messages call it
   * @param percent the part, 0 to 100
   */
  public record Edged(String place, double percent) {}
}
