package lozengy.solver;

import java.util.Locale;
import lozengy.model.blanket.Blanket;
import lozengy.solver.search.MemoryNeed;

/** A blanket needs more memory to be solved than Java may use; nothing has been done. */
public final class TooLargeException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final long rounds;
  private final int yarns;
  private final long neededBytes;
  private final long availableBytes;

  private TooLargeException(long rounds, int yarns, long neededBytes, long availableBytes) {
    super(
        String.format(
            Locale.ROOT,
            "%,d rounds in %,d yarns need %,d bytes of memory; there are %,d",
            rounds,
            yarns,
            neededBytes,
            availableBytes));
    this.rounds = rounds;
    this.yarns = yarns;
    this.neededBytes = neededBytes;
    this.availableBytes = availableBytes;
  }

  /**
   * Refuses a blanket that needs more memory than there is.
   *
   * @param blanket the blanket
   * @param walkers how many walkers are to solve it, at least 1
   * @param available bytes that Java may use
   * @throws TooLargeException if they are too few
   */
  public static void requireRoom(Blanket blanket, int walkers, long available) {
    long needed = MemoryNeed.bytes(blanket, walkers);
    if (needed > available) {
      throw new TooLargeException(blanket.index().count(), blanket.yarnCount(), needed, available);
    }
  }

  /** {@return rounds of all pieces} */
  public long rounds() {
    return rounds;
  }

  /** {@return how many yarns there are} */
  public int yarns() {
    return yarns;
  }

  /** {@return bytes that solving takes, by an estimate} */
  public long neededBytes() {
    return neededBytes;
  }

  /** {@return bytes that Java may use} */
  public long availableBytes() {
    return availableBytes;
  }
}
