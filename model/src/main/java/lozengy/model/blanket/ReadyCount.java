package lozengy.model.blanket;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.brief.Look;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Place;

/**
 * A count of a brief's look made ready: how many pieces are to show a yarn. Worked rounds count as
 * they are: the largest number is never below what they show, and where none of the rounds is still
 * to be worked, nothing is asked.
 *
 * @param path where it stands in the brief
 * @param asked the count as asked for
 * @param yarn index of the yarn
 * @param pieces indices of the pieces it speaks of, each of which has such a round
 * @param atLeast the least number of them to show the yarn
 * @param atMost the largest number of them to show it; all of them where any number will do
 */
public record ReadyCount(
    BriefPath path, Look.Count asked, int yarn, int[] pieces, int atLeast, int atMost) {

  /**
   * The counts of a blanket's look; O(pieces that they speak of).
   *
   * @param blanket the blanket
   * @return the counts in the brief's order
   */
  public static List<ReadyCount> of(Blanket blanket) {
    List<Look.Count> counts = blanket.brief().look().counts();
    List<ReadyCount> ready = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      ready.add(of(blanket, counts.get(i), BriefPath.of("look", "counts").item(i)));
    }
    return ready;
  }

  private static ReadyCount of(Blanket blanket, Look.Count count, BriefPath path) {
    int yarn = blanket.yarnIndex(count.yarn());
    int[] pieces =
        blanket.layout().select(count.where().at()).stream()
            .mapToInt(Place::index)
            .filter(piece -> anyRound(blanket, count, piece))
            .toArray();
    int worked = 0;
    boolean planned = false;
    for (int piece : pieces) {
      int rounds = blanket.roundCount(piece);
      int done = blanket.roundsWorked(piece);
      planned |= covered(count, rounds).anyMatch(round -> round >= done);
      boolean shows =
          covered(count, rounds)
              .anyMatch(round -> round < done && blanket.locked(piece, round) == yarn);
      worked += shows ? 1 : 0;
    }
    int atMost = Math.max(worked, count.atMost().orElse(pieces.length));
    return new ReadyCount(
        path, count, yarn, pieces, planned ? count.atLeast() : 0, Math.min(atMost, pieces.length));
  }

  private static boolean anyRound(Blanket blanket, Look.Count count, int piece) {
    return covered(count, blanket.roundCount(piece)).findAny().isPresent();
  }

  private static IntStream covered(Look.Count count, int rounds) {
    return IntStream.range(0, rounds).filter(round -> count.where().covers(round, rounds));
  }

  /**
   * Whether it looks at a round of its pieces.
   *
   * @param round from 0 at the centre
   * @param roundCount rounds of the piece
   * @return whether it does
   */
  public boolean covers(int round, int roundCount) {
    return asked.where().covers(round, roundCount);
  }

  /**
   * {@return by piece, the numbers of the rounds that it looks at, from the centre}
   *
   * @param blanket the blanket that it speaks of
   */
  public int[][] rounds(Blanket blanket) {
    int[][] rounds = new int[pieces.length][];
    for (int i = 0; i < rounds.length; i++) {
      int piece = pieces[i];
      int count = blanket.roundCount(piece);
      rounds[i] =
          IntStream.range(0, count)
              .filter(round -> covers(round, count))
              .map(round -> blanket.index().number(piece, round))
              .toArray();
    }
    return rounds;
  }

  /**
   * Whether a piece shows the yarn in one of the rounds.
   *
   * @param sequences yarns of the pieces
   * @param piece index of a piece it speaks of
   * @return whether it does
   */
  public boolean shown(Sequences sequences, int piece) {
    return any(sequences, piece, yarn);
  }

  /**
   * Whether one of the rounds of a piece has no yarn yet.
   *
   * @param sequences yarns of the pieces
   * @param piece index of a piece it speaks of
   * @return whether it has none
   */
  public boolean open(Sequences sequences, int piece) {
    return any(sequences, piece, Sequences.OPEN);
  }

  private boolean any(Sequences sequences, int piece, int wanted) {
    int rounds = sequences.rounds(piece);
    for (int round = 0; round < rounds; round++) {
      if (sequences.yarn(piece, round) == wanted && covers(round, rounds)) {
        return true;
      }
    }
    return false;
  }

  /** {@return where the least number stands in the brief} */
  public BriefPath atLeastPath() {
    return path.field("at-least");
  }

  /** {@return where the largest number stands in the brief} */
  public BriefPath atMostPath() {
    return path.field("at-most");
  }

  /** {@return whether some of the pieces must show the yarn} */
  public boolean asksAtLeast() {
    return atLeast > 0;
  }

  /** {@return whether not all of the pieces may show it} */
  public boolean asksAtMost() {
    return atMost < pieces.length;
  }
}
