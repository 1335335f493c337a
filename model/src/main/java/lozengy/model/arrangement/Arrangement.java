package lozengy.model.arrangement;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.input.Nulls;
import lozengy.model.score.Score;

/**
 * An answer to a brief: every piece's sequence, with its score and how it was found. The states of
 * the pieces are the blanket's.
 *
 * @param blanket the brief that it answers, made ready
 * @param sequences every piece's yarns; complete
 * @param earlier the sequences of the arrangement that it was solved from, where there was one
 * @param score its score
 * @param bound a total that no valid arrangement of the brief can exceed, where one is proved
 * @param solved how it was found; empty for one made by hand
 * @param diary what has come about since it was planned first
 */
public record Arrangement(
    Blanket blanket,
    Sequences sequences,
    Optional<Sequences> earlier,
    Score score,
    Optional<Bound> bound,
    Optional<Solved> solved,
    Diary diary) {

  /** The value of an arrangement file's {@code format} field. */
  public static final String FORMAT = "lozengy-arrangement/1";

  /**
   * Takes frozen copies of the sequences.
   *
   * @param blanket the brief that it answers, made ready
   * @param sequences every piece's yarns; complete
   * @param earlier the sequences of the arrangement that it was solved from, where there was one
   * @param score its score
   * @param bound a total that no valid arrangement of the brief can exceed, where one is proved
   * @param solved how it was found; empty for one made by hand
   * @param diary what has come about since it was planned first
   * @throws IllegalArgumentException if sequences have not the blanket's shape, or a round is open
   */
  public Arrangement {
    Nulls.refuse(
        "blanket sequences earlier score bound solved diary",
        blanket,
        sequences,
        earlier,
        score,
        bound,
        solved,
        diary);
    sequences = sequences.frozen();
    earlier = earlier.map(Sequences::frozen);
    Shape.requireComplete(blanket, sequences);
    if (earlier.isPresent()) {
      Shape.require(blanket, earlier.get());
    }
  }

  /**
   * An arrangement that has just been planned, in which nothing was marked.
   *
   * @param blanket the brief that it answers, made ready
   * @param sequences every piece's yarns; complete
   * @param earlier the sequences of the arrangement that it was solved from, where there was one
   * @param score its score
   * @param bound a total that no valid arrangement of the brief can exceed, where one is proved
   * @param solved how it was found; empty for one made by hand
   */
  public Arrangement(
      Blanket blanket,
      Sequences sequences,
      Optional<Sequences> earlier,
      Score score,
      Optional<Bound> bound,
      Optional<Solved> solved) {
    this(blanket, sequences, earlier, score, bound, solved, Diary.begun(blanket, sequences));
  }

  /**
   * {@return the arrangement with another diary}
   *
   * @param other what has come about since it was planned first
   */
  public Arrangement withDiary(Diary other) {
    return new Arrangement(blanket, sequences, earlier, score, bound, solved, other);
  }

  /**
   * A total that no valid arrangement can exceed.
   *
   * @param total 0 to 100
   * @param proof name of the proof, in words
   * @param objective what planning again maximises, {@link Score#objective}, exceeds this in no
   *     valid arrangement either, 0 to 100; only of one that was planned again
   */
  public record Bound(double total, String proof, Optional<Double> objective) {

    /** To how many decimals files state scores. */
    static final int DECIMALS = 6;

    /**
     * Refuses null.
     *
     * @param total 0 to 100
     * @param proof name of the proof, in words
     * @param objective what planning again maximises exceeds this in no valid arrangement either
     */
    public Bound {
      Nulls.refuse("proof objective", proof, objective);
    }

    /**
     * A bound where nothing was planned before.
     *
     * @param total 0 to 100
     * @param proof name of the proof, in words
     */
    public Bound(double total, String proof) {
      this(total, proof, Optional.empty());
    }

    /**
     * {@return the bound as files state it: to six decimals, rounded up so that it stays a bound}
     */
    public Bound asStated() {
      return new Bound(asStated(total), proof, objective.map(Bound::asStated));
    }

    private static double asStated(double figure) {
      return BigDecimal.valueOf(figure).setScale(DECIMALS, RoundingMode.CEILING).doubleValue();
    }
  }

  /**
   * How an arrangement was found.
   *
   * @param seed seed of the random source
   * @param moves moves tried by the search; solving with this seed, this many moves and as many
   *     walkers gives the same arrangement. Of one of several: moves that each search could try, or
   *     those that this one tried where time was limited
   * @param walkers walkers that shared the moves, at least 1
   * @param seconds time limit given, in s; empty where moves were the only limit
   * @param version version of the program
   * @param proof what is proved of it: {@code optimal}, what it was searched for by being within
   *     2e-6 of its bound, or {@code none}
   * @param choice what else was asked for, where it is one of several that were searched for after
   *     a first; the same choice of the same brief, seed, moves and walkers has it again
   */
  public record Solved(
      long seed,
      long moves,
      int walkers,
      Optional<Double> seconds,
      String version,
      String proof,
      Optional<Choice> choice) {

    /**
     * Refuses null.
     *
     * @param seed seed of the random source
     * @param moves moves tried by the search
     * @param walkers walkers that shared the moves, at least 1
     * @param seconds time limit given, in s; empty where moves were the only limit
     * @param version version of the program
     * @param proof what is proved of it: {@code optimal}, or {@code none}
     * @param choice what else was asked for, where it is one of several
     */
    public Solved {
      Nulls.refuse("seconds version proof choice", seconds, version, proof, choice);
    }

    /** The proof's word where no arrangement has a higher total. */
    public static final String OPTIMAL = "optimal";

    /** The proof's word where nothing is proved. */
    public static final String UNPROVED = "none";

    /** Walkers where a file does not say how many. */
    public static final int USUAL_WALKERS = 2;

    /**
     * Of an arrangement that the usual walkers searched for, by itself.
     *
     * @param seed seed of the random source
     * @param moves moves tried by the search
     * @param seconds time limit given, in s; empty where moves were the only limit
     * @param version version of the program
     * @param proof what is proved of it: {@code optimal}, or {@code none}
     */
    public Solved(long seed, long moves, Optional<Double> seconds, String version, String proof) {
      this(seed, moves, USUAL_WALKERS, seconds, version, proof, Optional.empty());
    }

    /**
     * {@return the same of so many walkers}
     *
     * @param number walkers that shared the moves, at least 1
     */
    public Solved withWalkers(int number) {
      return new Solved(seed, moves, number, seconds, version, proof, choice);
    }

    /** {@return the same, with nothing proved} */
    public Solved unproved() {
      return new Solved(seed, moves, walkers, seconds, version, UNPROVED, choice);
    }
  }

  /**
   * Several arrangements that were searched for together.
   *
   * @param count how many were wanted, at least 2
   * @param withinPoints how far below the best each may be in what is maximised, in points
   */
  public record Choice(int count, double withinPoints) {}
}
