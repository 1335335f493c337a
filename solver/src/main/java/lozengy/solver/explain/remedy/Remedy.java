package lozengy.solver.explain.remedy;

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
 * @param proof what is proved of it beyond that it works
 * @param brief the brief with the change
 * @param witness a valid arrangement of the changed brief
 */
public record Remedy(List<Step> steps, int upset, Proved proof, Brief brief, Sequences witness) {

  /**
   * Copies the steps.
   *
   * @param steps what to change, at least one step; all of them are needed
   * @param upset how much it upsets, in points; less is better
   * @param proof what is proved of it beyond that it works
   * @param brief the brief with the change
   * @param witness a valid arrangement of the changed brief
   */
  public Remedy {
    steps = List.copyOf(steps);
  }

  /**
   * What is proved of a remedy beyond that it works.
   *
   * @param fewestBalls whether no fewer balls do
   * @param mildest whether less of the change does not do
   * @param instead other yarns of which as many balls would do, by the yarns that are bought
   */
  public record Proved(boolean fewestBalls, boolean mildest, List<Instead> instead) {

    /** Nothing. */
    static final Proved NOTHING = new Proved(false, false, List.of());

    /**
     * Copies the list.
     *
     * @param fewestBalls whether no fewer balls do
     * @param mildest whether less of the change does not do
     * @param instead other yarns of which as many balls would do, by the yarns that are bought
     */
    public Proved {
      instead = List.copyOf(instead);
    }
  }

  /**
   * Yarns of which as many balls would do as of one that is bought; each was tried.
   *
   * @param yarn index of the yarn that is bought
   * @param yarns indices of the others
   * @param mixed whether as many balls do in any mixture of all of them, the one that is bought
   *     included; not looked at where there are many mixtures
   */
  public record Instead(int yarn, List<Integer> yarns, boolean mixed) {

    /**
     * Copies the list.
     *
     * @param yarn index of the yarn that is bought
     * @param yarns indices of the others
     * @param mixed whether as many balls do in any mixture of all of them
     */
    public Instead {
      yarns = List.copyOf(yarns);
    }
  }

  /**
   * One change of a line.
   *
   * @param change what to do
   * @param path the field to change, such as {@code yarns[3].balls}
   * @param value its new value as a brief file writes it; empty where the field, or the part of it
   *     that the change names, is to be left out
   */
  public record Step(Relaxation change, BriefPath path, Optional<String> value) {}
}
