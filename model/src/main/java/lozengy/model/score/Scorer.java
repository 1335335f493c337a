package lozengy.model.score;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** Scores complete sequences, exactly and from scratch. */
public final class Scorer {

  private Scorer() {}

  /**
   * Scores sequences.
   *
   * @param blanket the blanket
   * @param sequences complete sequences
   * @param earlier the sequences they were solved from, for the part keep
   * @throws IllegalArgumentException if a round is open
   */
  public static Score score(Blanket blanket, Sequences sequences, Optional<Sequences> earlier) {
    throw new UnsupportedOperationException("not written yet");
  }
}
