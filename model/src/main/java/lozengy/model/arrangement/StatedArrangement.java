package lozengy.model.arrangement;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;

/**
 * What an arrangement file says, which need not be so where it was edited by hand: rounds may be
 * open, rules broken, and the score and the totals those of another arrangement. The brief in it,
 * with the states and yarns of what has been worked, is the truth; the pieces' rounds are the plan
 * of what has not; all else follows, and {@link Contradictions} tells where it does not.
 *
 * @param blanket the brief in the file made ready
 * @param sequences every piece's yarns, open where the file leaves them so
 * @param earlier the sequences that it was solved from, where the file has them
 * @param score the score that the file states
 * @param formerTotal the total that the file states by an earlier version's formulas, in place of a
 *     score; a bound by them is not told
 * @param bound the bound that the file states
 * @param solved how it was found, where the file says so
 * @param yarns the yarn totals that the file states
 * @param diary what has come about, as the file says
 * @param leftOut pieces whose lines leave a field out that follows from the rest, by the field's
 *     name
 */
public record StatedArrangement(
    Blanket blanket,
    Sequences sequences,
    Optional<Sequences> earlier,
    Optional<Score> score,
    Optional<Double> formerTotal,
    Optional<Arrangement.Bound> bound,
    Optional<Arrangement.Solved> solved,
    List<StatedYarn> yarns,
    Diary diary,
    Map<String, List<Integer>> leftOut) {

  /**
   * Copies the lists, and freezes the sequences.
   *
   * @param blanket the brief in the file made ready
   * @param sequences every piece's yarns, open where the file leaves them so
   * @param earlier the sequences that it was solved from, where the file has them
   * @param score the score that the file states
   * @param formerTotal the total that the file states by an earlier version's formulas, in place of
   *     a score; a bound by them is not told
   * @param bound the bound that the file states
   * @param solved how it was found, where the file says so
   * @param yarns the yarn totals that the file states
   * @param diary what has come about, as the file says
   * @param leftOut pieces whose lines leave a field out that follows from the rest, by the field's
   *     name
   */
  public StatedArrangement {
    sequences = sequences.frozen();
    earlier = earlier.map(Sequences::frozen);
    yarns = List.copyOf(yarns);
    leftOut = Collections.unmodifiableMap(new LinkedHashMap<>(leftOut));
  }

  /**
   * The totals that a file states of a yarn, in m.
   *
   * @param code the yarn's code
   * @param name its name
   * @param availableMetres at hand
   * @param usedMetres used, joining and edging included
   * @param leftMetres left over
   */
  public record StatedYarn(
      String code,
      Optional<String> name,
      Optional<Double> availableMetres,
      Optional<Double> usedMetres,
      Optional<Double> leftMetres) {}

  /**
   * {@return the arrangement with its score worked out again; a bound that its total exceeds is
   * left out, and so is a proof that does not follow from the bound}
   *
   * @throws IllegalArgumentException if a round is open
   */
  public Arrangement scored() {
    Score worked = Scorer.score(blanket, sequences, earlier);
    Optional<Arrangement.Bound> holding = bound.filter(each -> Contradictions.bounds(each, worked));
    boolean optimal = Contradictions.optimal(holding, worked);
    return new Arrangement(
        blanket,
        sequences,
        earlier,
        worked,
        holding,
        solved.map(each -> optimal ? each : each.unproved()),
        diary);
  }
}
