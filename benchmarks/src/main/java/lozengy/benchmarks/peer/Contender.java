package lozengy.benchmarks.peer;

import java.util.List;
import java.util.OptionalDouble;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** A solver that is measured. */
public interface Contender {

  /** Its name in results. */
  String name();

  /**
   * Solves a blanket, with all the cores it was made to use.
   *
   * @param blanket the blanket
   * @param seed seed of its random choices
   * @param limitSeconds when it must end, counted from the call: stating its model counts too
   */
  Run run(Blanket blanket, long seed, double limitSeconds);

  /**
   * What a run brought.
   *
   * @param statedSeconds how long it took to state the model
   * @param seconds how long the run took
   * @param found what it found, in the order of finding; judged by nobody yet
   * @param proof what it proved
   * @param bound a total that no valid arrangement exceeds, by its own word, where it has one
   */
  record Run(
      double statedSeconds,
      double seconds,
      List<Incumbent> found,
      Proof proof,
      OptionalDouble bound) {

    /** Copies the list. */
    public Run {
      found = List.copyOf(found);
    }
  }

  /**
   * Sequences that a run found.
   *
   * @param seconds when, from the start of the run
   * @param sequences a copy
   */
  record Incumbent(double seconds, Sequences sequences) {}

  /** What a run proved. */
  enum Proof {
    /** Nothing. */
    NONE,
    /** The last sequences found are the best there are. */
    OPTIMAL,
    /** There are none. */
    IMPOSSIBLE;

    /** The word used in results. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
