package lozengy.model.arrangement;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;

/**
 * What a check of an arrangement's file finds, worked out from scratch.
 *
 * @param score its score; empty if a round is open
 * @param faults the rules that it breaks
 * @param contradictions what the file states otherwise than follows from the rest of it
 */
public record Verdict(
    Optional<Score> score, List<Fault> faults, List<Contradiction> contradictions) {

  /**
   * Copies the lists.
   *
   * @param score its score; empty if a round is open
   * @param faults the rules that it breaks
   * @param contradictions what the file states otherwise than follows from the rest of it
   */
  public Verdict {
    faults = List.copyOf(faults);
    contradictions = List.copyOf(contradictions);
  }

  /**
   * Checks an arrangement.
   *
   * @param stated what its file says
   * @return what is found
   */
  public static Verdict of(StatedArrangement stated) {
    Blanket blanket = stated.blanket();
    Optional<Score> score =
        stated.sequences().complete()
            ? Optional.of(Scorer.score(blanket, stated.sequences(), stated.earlier()))
            : Optional.empty();
    return new Verdict(score, Check.faults(blanket, stated.sequences()), Contradictions.of(stated));
  }

  /** {@return whether nothing is wrong} */
  public boolean valid() {
    return faults.isEmpty() && contradictions.isEmpty();
  }
}
