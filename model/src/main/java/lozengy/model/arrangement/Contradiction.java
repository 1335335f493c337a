package lozengy.model.arrangement;

import java.util.List;
import java.util.Optional;

/**
 * Something that an arrangement's file states, or leaves out, though other things in the file say
 * otherwise.
 *
 * @param code what kind of thing it is
 * @param what the field, and whose
 * @param pieces names of the pieces concerned
 * @param yarns codes of the yarns concerned
 * @param stated what the file states; empty where it leaves it out
 * @param right what follows from the rest of the file
 */
public record Contradiction(
    Code code,
    String what,
    List<String> pieces,
    List<String> yarns,
    Optional<String> stated,
    String right) {

  /** What contradicts the rest. */
  public enum Code {
    /** Kind, state or coordinates of pieces. */
    PIECES("stated-pieces"),
    /** The score. */
    SCORE("stated-score"),
    /** The bound of the score. */
    BOUND("stated-bound"),
    /** What is said to be proved. */
    PROOF("stated-proof"),
    /** The rows of the yarns. */
    YARNS("stated-yarns");

    private final String word;

    Code(String word) {
      this.word = word;
    }

    /** {@return the word used in files and on the terminal} */
    public String word() {
      return word;
    }
  }

  /**
   * Copies the lists.
   *
   * @param code what kind of thing it is
   * @param what the field, and whose
   * @param pieces names of the pieces concerned
   * @param yarns codes of the yarns concerned
   * @param stated what the file states; empty where it leaves it out
   * @param right what follows from the rest of the file
   */
  public Contradiction {
    pieces = List.copyOf(pieces);
    yarns = List.copyOf(yarns);
  }
}
