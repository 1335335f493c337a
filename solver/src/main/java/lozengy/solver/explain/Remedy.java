package lozengy.solver.explain;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.input.BriefPath;

/**
 * A change of the brief that makes it fit, tried out: with it a valid arrangement was found.
 *
 * @param steps what to change, at least one step; all of them are needed
 * @param upset how much it upsets, in points; less is better
 * @param proof what is proved of it beyond that it works, in words; empty where nothing is
 * @param brief the brief with the change
 * @param witness a valid arrangement of the changed brief
 */
public record Remedy(
    List<Step> steps, int upset, Optional<String> proof, Brief brief, Sequences witness) {

  /**
   * Copies the steps.
   *
   * @param steps what to change, at least one step; all of them are needed
   * @param upset how much it upsets, in points; less is better
   * @param proof what is proved of it beyond that it works, in words; empty where nothing is
   * @param brief the brief with the change
   * @param witness a valid arrangement of the changed brief
   */
  public Remedy {
    steps = List.copyOf(steps);
  }

  /**
   * One change of a line.
   *
   * @param words what to do, in words
   * @param path the field to change, such as {@code yarns[3].balls}
   * @param value its new value as a brief file writes it; empty where the field is to be left out
   * @param options options of {@code solve} that do the same to an arrangement, where there are any
   */
  public record Step(String words, BriefPath path, Optional<String> value, List<String> options) {

    /**
     * Copies the options.
     *
     * @param words what to do, in words
     * @param path the field to change, such as {@code yarns[3].balls}
     * @param value its new value as a brief file writes it; empty where the field is to be left out
     * @param options options of {@code solve} that do the same to an arrangement, where there are
     *     any
     */
    public Step {
      options = List.copyOf(options);
    }
  }
}
