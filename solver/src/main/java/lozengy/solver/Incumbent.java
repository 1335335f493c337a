package lozengy.solver;

import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;

/**
 * The best that a solve has found so far. Cheap to make in the middle of a search; only {@link
 * #arrangement} checks and scores it.
 *
 * @param blanket the blanket
 * @param sequences every piece's yarns; breaks no rule
 * @param earlier what it is solved from, for the part keep
 * @param bound what is proved so far
 * @param seed seed of the random source
 * @param moves tried so far
 * @param walkers walkers that share them
 * @param seconds time limit, where there is one
 */
public record Incumbent(
    Blanket blanket,
    Sequences sequences,
    Optional<Sequences> earlier,
    Optional<Bound> bound,
    long seed,
    long moves,
    int walkers,
    Optional<Double> seconds) {

  /** Points that a bound may lie above the best objective for rounding's sake alone. */
  private static final double ROUNDING = 2e-6;

  /**
   * {@return it as an arrangement, checked and scored from scratch}
   *
   * @throws IllegalStateException if it breaks a rule, which would be a fault of the search
   */
  public Arrangement arrangement() {
    List<Fault> faults = Check.faults(blanket, sequences);
    if (!faults.isEmpty()) {
      throw new IllegalStateException(
          "The search took an arrangement for valid that breaks a rule: " + faults.get(0));
    }
    Score score = Scorer.score(blanket, sequences, earlier);
    Optional<Bound> stated = bound.map(Bound::asStated);
    double proved = stated.map(each -> each.objective().orElse(each.total())).orElse(100.0);
    String proof =
        score.objective() >= proved - ROUNDING
            ? Arrangement.Solved.OPTIMAL
            : Arrangement.Solved.UNPROVED;
    return new Arrangement(
        blanket,
        sequences,
        earlier,
        score,
        stated,
        Optional.of(
            new Arrangement.Solved(seed, moves, seconds, Version.text(), proof)
                .withWalkers(walkers)));
  }
}
