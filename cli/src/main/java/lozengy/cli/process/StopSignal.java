package lozengy.cli.process;

import java.util.function.BooleanSupplier;

/** Tells when the user wants a long task to end with the best so far. */
@FunctionalInterface
public interface StopSignal {

  /**
   * Begins to listen: from now on an interrupt no longer ends the program, but makes the answer
   * true.
   */
  BooleanSupplier listen();
}
