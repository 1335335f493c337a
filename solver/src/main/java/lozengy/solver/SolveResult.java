package lozengy.solver;

import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Fault;
import lozengy.solver.explain.argument.Refutation;
import lozengy.solver.explain.conflict.Conflict;

/** How a solve ended. */
public sealed interface SolveResult {

  /**
   * A valid arrangement was found.
   *
   * @param arrangement the best found, verified
   * @param unsettled why more moves may well find better; empty where nothing speaks for that
   */
  record Found(Arrangement arrangement, Optional<Unsettled> unsettled) implements SolveResult {}

  /**
   * That searches of one brief ended apart from each other, the best of them far below what is
   * proved.
   *
   * @param pointsApart points of the total between two searches that went on by themselves
   * @param pointsBelowBound points of the total that the best lies below the bound
   * @param movesToTry moves of a search that may find better
   */
  record Unsettled(double pointsApart, double pointsBelowBound, long movesToTry) {

    /** Points from which on the best lies far below the bound. */
    private static final double FAR_BELOW = 2;

    /** Points from which on two searches are apart: seeds that agree end within less. */
    private static final double APART = 0.5;

    private static final int TIMES_THE_MOVES = 4;

    static Optional<Unsettled> of(double apart, double belowBound, long moves) {
      return apart >= APART && belowBound >= FAR_BELOW
          ? Optional.of(new Unsettled(apart, belowBound, TIMES_THE_MOVES * moves))
          : Optional.empty();
    }
  }

  /**
   * It is proved that no arrangement fits.
   *
   * @param refutations why: direct arguments, each of which alone is a proof; none where a conflict
   *     is told
   * @param conflict lines of the brief that cannot hold together, where no direct argument is known
   * @param choice where more finished pieces are there than places, the blanket with one choice of
   *     what stays out, which the proof is told for; every other choice is refuted as well
   */
  record Impossible(
      List<Refutation> refutations, Optional<Conflict> conflict, Optional<Blanket> choice)
      implements SolveResult {
    /**
     * Copies the refutations.
     *
     * @param refutations why: direct arguments, each of which alone is a proof
     * @param conflict lines of the brief that cannot hold together
     * @param choice the blanket that the proof is told for, where what stays out was to be chosen
     */
    public Impossible {
      refutations = List.copyOf(refutations);
    }

    /**
     * That no arrangement fits a brief as it is.
     *
     * @param refutations why: direct arguments, each of which alone is a proof
     * @param conflict lines of the brief that cannot hold together
     */
    public Impossible(List<Refutation> refutations, Optional<Conflict> conflict) {
      this(refutations, conflict, Optional.empty());
    }
  }

  /**
   * The budget ended before a valid arrangement was found, and nothing is proved.
   *
   * @param inTheWay what the nearest attempt breaks
   */
  record Unfinished(List<Fault> inTheWay) implements SolveResult {
    /**
     * Copies the faults.
     *
     * @param inTheWay what the nearest attempt breaks
     */
    public Unfinished {
      inTheWay = List.copyOf(inTheWay);
    }
  }
}
