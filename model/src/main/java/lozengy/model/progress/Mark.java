package lozengy.model.progress;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;

/**
 * What has come about since the plan was made.
 *
 * @param states pieces that have come so far
 * @param rounds pieces of which so many rounds are worked
 * @param steps steps of the make list that are done
 * @param worked pieces that were worked otherwise than planned
 * @param counts yarns that were counted again
 * @param edged part of the outline that has its edging, where stated
 * @param on when it is made, where that is known
 */
public record Mark(
    List<State> states,
    List<Rounds> rounds,
    List<Step> steps,
    List<Work> worked,
    List<Count> counts,
    Optional<Edged> edged,
    Optional<Day> on) {

  /**
   * Copies the lists.
   *
   * @param states pieces that have come so far
   * @param rounds pieces of which so many rounds are worked
   * @param steps steps of the make list that are done
   * @param worked pieces that were worked otherwise than planned
   * @param counts yarns that were counted again
   * @param edged part of the outline that has its edging, where stated
   * @param on when it is made, where that is known
   */
  public Mark {
    states = List.copyOf(states);
    rounds = List.copyOf(rounds);
    steps = List.copyOf(steps);
    worked = List.copyOf(worked);
    counts = List.copyOf(counts);
  }

  /**
   * A mark without rounds and steps, of which it is not known when it was made.
   *
   * @param states pieces that have come so far
   * @param worked pieces that were worked otherwise than planned
   * @param counts yarns that were counted again
   * @param edged part of the outline that has its edging, where stated
   */
  public Mark(List<State> states, List<Work> worked, List<Count> counts, Optional<Edged> edged) {
    this(states, List.of(), List.of(), worked, counts, edged, Optional.empty());
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
   * The day of a mark.
   *
   * @param place what messages call it
   * @param day the day
   */
  public record Day(String place, LocalDate day) {}

  /**
   * Pieces of which so many rounds are worked, from the centre.
   *
   * @param place what messages call it
   * @param worked how many, at least 1
   * @param at selectors of the pieces
   */
  public record Rounds(String place, int worked, List<String> at) {}

  /**
   * Steps of the make list that are done.
   *
   * @param place what messages call it
   * @param from the first step's number, from 1
   * @param to the last step's
   * @param at selectors of the pieces it is done for; empty where it is done for all that are in it
   */
  public record Step(String place, int from, int to, List<String> at) {}

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
