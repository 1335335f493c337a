package lozengy.solver.substitute;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.progress.Substituted.Instead;
import lozengy.model.progress.Upset;
import lozengy.model.score.Score;
import lozengy.model.yarn.Substitute;
import lozengy.solver.SolveResult;

/**
 * What may stand in for shades that are gone.
 *
 * @param blanket the brief with all shades at hand and in the list, made ready; its yarns are
 *     indexed here
 * @param before the score with the shades that are gone, as planned, or else as solved; empty where
 *     nothing was found with them
 * @param again whether a plan stands that the trials stay close to
 * @param plenty whether nothing is said to be at hand of any yarn, so that all count as plenty
 * @param shades each shade that is gone, as asked
 * @param without the same with nothing in their place, where there is something to be worked in
 *     them
 */
public record Substitution(
    Blanket blanket,
    Optional<Score> before,
    boolean again,
    boolean plenty,
    List<Shade> shades,
    Optional<Trial> without) {

  /**
   * Copies the list.
   *
   * @param blanket the brief with all shades
   * @param before the score with the shades that are gone
   * @param again whether a plan stands that the trials stay close to
   * @param plenty whether nothing is said to be at hand of any yarn
   * @param shades each shade that is gone
   * @param without the same with nothing in their place
   */
  public Substitution {
    shades = List.copyOf(shades);
  }

  /**
   * A shade that is gone.
   *
   * @param yarn its index
   * @param needMillimetres length in mm of it that is still to be worked; 0 where nothing is
   * @param tried what was tried in its place: what has enough first, each by nearness
   * @param untried what was not, the nearest first
   * @param mixture where none has enough alone, the nearest that have it together, tried
   */
  public record Shade(
      int yarn,
      long needMillimetres,
      List<Tried> tried,
      List<Substitute> untried,
      Optional<Mixture> mixture) {
    /**
     * Copies the lists.
     *
     * @param yarn its index
     * @param needMillimetres length in mm of it that is still to be worked
     * @param tried what was tried in its place
     * @param untried what was not
     * @param mixture the nearest that have enough together
     */
    public Shade {
      tried = List.copyOf(tried);
      untried = List.copyOf(untried);
    }
  }

  /**
   * A shade in place of another, tried.
   *
   * @param substitute the shade
   * @param trial what came of it
   */
  public record Tried(Substitute substitute, Trial trial) {}

  /**
   * Several shades in place of one, tried.
   *
   * @param parts the shades, the one first that joins and edges
   * @param trial what came of it
   */
  public record Mixture(List<Substitute> parts, Trial trial) {
    /**
     * Copies the list.
     *
     * @param parts the shades
     * @param trial what came of it
     */
    public Mixture {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A trial.
   *
   * @param instead what stood in for what; where several shades are gone, the others have the
   *     nearest in their place that has enough
   * @param blanket what was solved
   * @param result how that ended
   * @param upset what it changes of the plan so far, where there is one and an arrangement was
   *     found
   * @param beyondPieces how many pieces change otherwise than by taking the new shade for the old
   */
  public record Trial(
      List<Instead> instead,
      Blanket blanket,
      SolveResult result,
      Optional<Upset> upset,
      int beyondPieces) {
    /**
     * Copies the list.
     *
     * @param instead what stood in for what
     * @param blanket what was solved
     * @param result how that ended
     * @param upset what it changes of the plan so far
     * @param beyondPieces how many pieces change otherwise
     */
    public Trial {
      instead = List.copyOf(instead);
    }

    /** {@return the score of what was found; empty where nothing was} */
    public Optional<Score> score() {
      return result instanceof SolveResult.Found found
          ? Optional.of(found.arrangement().score())
          : Optional.empty();
    }
  }

  /** {@return whether an arrangement was found with some shade in place of what is gone} */
  public boolean any() {
    return shades.stream()
        .anyMatch(
            shade ->
                shade.needMillimetres() == 0
                    || shade.tried().stream().anyMatch(each -> each.trial().score().isPresent())
                    || shade.mixture().flatMap(each -> each.trial().score()).isPresent());
  }
}
