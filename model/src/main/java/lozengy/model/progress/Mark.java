package lozengy.model.progress;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
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
 * @param yarns yarns that came or went
 * @param hand what the hand takes of what is reckoned, where that is to change
 * @param on when it is made, where that is known
 */
public record Mark(
    List<State> states,
    List<Rounds> rounds,
    List<Step> steps,
    List<Work> worked,
    List<Count> counts,
    Optional<Edged> edged,
    List<OfYarn> yarns,
    Optional<Hand> hand,
    Optional<Day> on) {

  /** Says nothing yet. */
  public static final Mark NONE =
      new Mark(
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty());

  /**
   * Copies the lists.
   *
   * @param states pieces that have come so far
   * @param rounds pieces of which so many rounds are worked
   * @param steps steps of the make list that are done
   * @param worked pieces that were worked otherwise than planned
   * @param counts yarns that were counted again
   * @param edged part of the outline that has its edging, where stated
   * @param yarns yarns that came or went
   * @param hand what the hand takes of what is reckoned, where that is to change
   * @param on when it is made, where that is known
   */
  public Mark {
    states = List.copyOf(states);
    rounds = List.copyOf(rounds);
    steps = List.copyOf(steps);
    worked = List.copyOf(worked);
    counts = List.copyOf(counts);
    yarns = List.copyOf(yarns);
  }

  /**
   * {@return this mark with other states}
   *
   * @param other pieces that have come so far
   */
  public Mark withStates(List<State> other) {
    return new Mark(other, rounds, steps, worked, counts, edged, yarns, hand, on);
  }

  /**
   * {@return this mark with other rounds}
   *
   * @param other pieces of which so many rounds are worked
   */
  public Mark withRounds(List<Rounds> other) {
    return new Mark(states, other, steps, worked, counts, edged, yarns, hand, on);
  }

  /**
   * {@return this mark with other steps}
   *
   * @param other steps of the make list that are done
   */
  public Mark withSteps(List<Step> other) {
    return new Mark(states, rounds, other, worked, counts, edged, yarns, hand, on);
  }

  /**
   * {@return this mark with other yarns of pieces}
   *
   * @param other pieces that were worked otherwise than planned
   */
  public Mark withWorked(List<Work> other) {
    return new Mark(states, rounds, steps, other, counts, edged, yarns, hand, on);
  }

  /**
   * {@return this mark with other counts}
   *
   * @param other yarns that were counted again
   */
  public Mark withCounts(List<Count> other) {
    return new Mark(states, rounds, steps, worked, other, edged, yarns, hand, on);
  }

  /**
   * {@return this mark with other edging}
   *
   * @param other part of the outline that has its edging
   */
  public Mark withEdged(Optional<Edged> other) {
    return new Mark(states, rounds, steps, worked, counts, other, yarns, hand, on);
  }

  /**
   * {@return this mark with other yarns}
   *
   * @param other yarns that came or went
   */
  public Mark withYarns(List<OfYarn> other) {
    return new Mark(states, rounds, steps, worked, counts, edged, other, hand, on);
  }

  /**
   * {@return this mark with another hand}
   *
   * @param other what the hand takes of what is reckoned
   */
  public Mark withHand(Optional<Hand> other) {
    return new Mark(states, rounds, steps, worked, counts, edged, yarns, other, on);
  }

  /**
   * {@return this mark of another day}
   *
   * @param other when it is made
   */
  public Mark withOn(Optional<Day> other) {
    return new Mark(states, rounds, steps, worked, counts, edged, yarns, hand, other);
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

  /**
   * What the hand takes of what is reckoned, from now on.
   *
   * @param place what messages call it
   * @param percent per cent, 50 to 200; empty for what the counts tell
   */
  public record Hand(String place, Optional<BigDecimal> percent) {}

  /** A yarn that came or went. */
  public sealed interface OfYarn {

    /** {@return what messages call it} */
    String place();

    /** {@return the yarn's code} */
    String code();
  }

  /**
   * A shade that the brief does not know yet.
   *
   * @param place what messages call it
   * @param yarn the yarn, with what is at hand of it
   */
  public record Added(String place, Yarn yarn) implements OfYarn {
    @Override
    public String code() {
      return yarn.code();
    }
  }

  /**
   * Another dye lot of a shade: a yarn like it of which nothing is at hand but what is bought or
   * counted with the same mark. The share of the shade is dealt to the two by what there is of
   * them.
   *
   * @param place what messages call it
   * @param code the lot's code, which is new
   * @param of code of the shade
   */
  public record Lot(String place, String code, String of) implements OfYarn {}

  /**
   * Yarn that was bought; a yarn that was gone is there again.
   *
   * @param place what messages call it
   * @param code the yarn
   * @param balls whole or part balls, 0 or more
   * @param loose loose yarn beside them, where there is some
   */
  public record Bought(String place, String code, double balls, Optional<YarnAmount> loose)
      implements OfYarn {}

  /**
   * A yarn that is there no more.
   *
   * @param place what messages call it
   * @param code the yarn
   */
  public record Gone(String place, String code) implements OfYarn {}

  /**
   * A yarn whose count was a mistake: as if it had never been counted.
   *
   * @param place what messages call it
   * @param code the yarn
   */
  public record Uncounted(String place, String code) implements OfYarn {}
}
