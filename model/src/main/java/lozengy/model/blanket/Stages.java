package lozengy.model.blanket;

import java.util.Arrays;
import java.util.stream.IntStream;
import lozengy.model.brief.PieceState;

/**
 * How far each piece has come, on one scale: rounds worked from the centre, from none to all, and
 * then joined. Mutable; pieces are the indices of a {@link Blanket}.
 */
public final class Stages {

  private final int[] rounds;
  private final int[] stages;

  private Stages(int[] rounds, int[] stages) {
    this.rounds = rounds;
    this.stages = stages;
  }

  /**
   * {@return how far the pieces of a blanket have come}
   *
   * @param blanket the blanket
   */
  public static Stages of(Blanket blanket) {
    int pieces = blanket.pieceCount();
    int[] rounds = new int[pieces];
    Arrays.setAll(rounds, blanket::roundCount);
    Stages stages = new Stages(rounds, new int[pieces]);
    for (int piece = 0; piece < pieces; piece++) {
      stages.set(piece, blanket.state(piece));
      if (blanket.partWorked(piece)) {
        stages.setRounds(piece, blanket.roundsWorked(piece));
      }
    }
    return stages;
  }

  /** {@return a copy that changes on its own} */
  public Stages copy() {
    return new Stages(rounds, stages.clone());
  }

  /**
   * Sets how far a piece has come.
   *
   * @param piece the piece's index, from 0
   * @param state the state; a planned piece has no round worked
   */
  public void set(int piece, PieceState state) {
    stages[piece] = stage(piece, state);
  }

  /**
   * Sets how many rounds of a piece are worked; one with all of them is made.
   *
   * @param piece the piece's index, from 0
   * @param worked how many, from the centre, 0 to all
   * @throws IllegalArgumentException if the piece has fewer
   */
  public void setRounds(int piece, int worked) {
    if (worked < 0 || worked > rounds[piece]) {
      throw new IllegalArgumentException(worked + " of " + rounds[piece] + " rounds");
    }
    stages[piece] = worked;
  }

  /**
   * {@return where a state stands on the scale of a piece, from 0}
   *
   * @param piece the piece's index, from 0
   * @param state the state
   */
  public int stage(int piece, PieceState state) {
    return switch (state) {
      case PLANNED -> 0;
      case MADE -> rounds[piece];
      case JOINED -> rounds[piece] + 1;
    };
  }

  /**
   * {@return how far a piece has come: rounds worked, or one more than it has where it is joined}
   *
   * @param piece the piece's index, from 0
   */
  public int stage(int piece) {
    return stages[piece];
  }

  /**
   * Sets how far a piece has come.
   *
   * @param piece the piece's index, from 0
   * @param stage rounds worked, or one more than it has where it is joined
   */
  public void set(int piece, int stage) {
    stages[piece] = stage;
  }

  /**
   * {@return a piece's state}
   *
   * @param piece the piece's index, from 0
   */
  public PieceState state(int piece) {
    if (stages[piece] > rounds[piece]) {
      return PieceState.JOINED;
    }
    return stages[piece] == rounds[piece] ? PieceState.MADE : PieceState.PLANNED;
  }

  /**
   * {@return how many rounds of a piece are worked, from the centre}
   *
   * @param piece the piece's index, from 0
   */
  public int roundsWorked(int piece) {
    return Math.min(stages[piece], rounds[piece]);
  }

  /** {@return whether any piece is joined} */
  public boolean anyJoined() {
    return IntStream.range(0, stages.length).anyMatch(piece -> state(piece) == PieceState.JOINED);
  }

  /** {@return how many pieces} */
  public int pieces() {
    return stages.length;
  }
}
