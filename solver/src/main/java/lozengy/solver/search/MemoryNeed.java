package lozengy.solver.search;

import lozengy.model.blanket.Blanket;

/**
 * The memory that solving takes, told before it begins: a blanket that Java has no room for would
 * otherwise end in the middle, or in a crawl. Each walker keeps a cost for every yarn of every
 * round; the rest was measured with 250,000 pieces of four and of six rounds and 12 to 500 yarns.
 */
public final class MemoryNeed {

  private static final long BYTES_PER_PIECE = 1000;
  private static final long BYTES_PER_ROUND = 300;
  private static final long BYTES_PER_COST = Integer.BYTES;

  /** Java's collectors keep what lasts in two thirds of the memory. */
  private static final double ROOM = 0.5;

  private MemoryNeed() {}

  /**
   * {@return bytes that solving a blanket takes, rather too many than too few}
   *
   * @param blanket the blanket
   * @param walkers how many walkers, at least 1
   */
  public static long bytes(Blanket blanket, int walkers) {
    long rounds = blanket.index().count();
    double bytes =
        blanket.pieceCount() * BYTES_PER_PIECE
            + rounds * BYTES_PER_ROUND
            + rounds * blanket.yarnCount() * BYTES_PER_COST * walkers;
    return (long) (bytes * (1 + ROOM));
  }
}
