package lozengy.solver.explain.conflict;

import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.Limits;

/**
 * How much to look into.
 *
 * @param seed breaks ties
 * @param nodes most nodes of the search that settles the brief itself, at least 1
 * @param fails most dead ends of it, at least 1
 * @param stop asked now and then; once true, what is known so far is told
 */
public record ExplainOptions(long seed, long nodes, long fails, BooleanSupplier stop) {

  private static final long NODES = 200_000;
  private static final long FAILS = 50_000;

  /** Dead ends times rounds that each of the many smaller searches may spend. */
  private static final long EACH = 200_000;

  private static final long LEAST_FAILS = 30;
  private static final long MOST_FAILS = 2_000;

  /**
   * Seed 1, and limits that do not depend on the machine.
   *
   * @param seed where the random source starts
   * @param stop asked now and then; once true, the work ends
   * @return the options
   */
  public static ExplainOptions of(long seed, BooleanSupplier stop) {
    return new ExplainOptions(seed, NODES, FAILS, stop);
  }

  /**
   * {@return the limits of each of the smaller searches on a blanket}
   *
   * @param blanket the blanket
   */
  public Limits each(Blanket blanket) {
    long rounds = 1;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      rounds += blanket.roundCount(piece);
    }
    long each = Math.max(LEAST_FAILS, Math.min(MOST_FAILS, EACH / rounds));
    return new Limits(nodes, Math.min(fails, each), stop);
  }
}
