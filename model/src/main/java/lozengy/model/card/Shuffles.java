package lozengy.model.card;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;

/**
 * Random shuffles of an arrangement: the rounds of each layer are dealt over the pieces that have
 * it, each order as likely as any other, whatever the rules say. Same seed and number, same
 * shuffles.
 */
public final class Shuffles {

  /** Rounds that all shuffles together deal, about. */
  private static final int ROUNDS = 600_000;

  private static final int FEWEST = 20;
  private static final int MOST = 1000;

  /** Sums of figures and of their squares. */
  private static final class Sums {
    private double sum;
    private double squares;

    void add(double figure) {
      sum += figure;
      squares += figure * figure;
    }

    Chance chance(int count) {
      double mean = sum / count;
      double variance = Math.max(0, squares - count * mean * mean) / (count - 1);
      return new Chance(mean, Math.sqrt(variance / count), count);
    }
  }

  /**
   * What the drawn shuffles score.
   *
   * @param total the total
   * @param parts each part
   */
  public record Scores(Chance total, Map<Part, Chance> parts) {}

  private Shuffles() {}

  /**
   * {@return a number of shuffles that suits a blanket's size}
   *
   * @param blanket the blanket
   */
  public static int count(Blanket blanket) {
    int rounds = 1;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      rounds += blanket.roundCount(piece);
    }
    return Math.max(FEWEST, Math.min(MOST, ROUNDS / rounds));
  }

  /**
   * Scores shuffles.
   *
   * @param blanket the blanket
   * @param sequences complete sequences
   * @param earlier the sequences they were solved from, where there are such
   * @param seed seed of the shuffles
   * @param count how many, at least 2
   * @return their scores
   */
  public static Scores scores(
      Blanket blanket, Sequences sequences, Optional<Sequences> earlier, long seed, int count) {
    SplittableRandom random = new SplittableRandom(seed);
    Sums total = new Sums();
    Map<Part, Sums> parts = new EnumMap<>(Part.class);
    for (int i = 0; i < count; i++) {
      Score score = Scorer.score(blanket, shuffled(blanket, sequences, random), earlier);
      total.add(score.total());
      score.parts().forEach((part, each) -> parts.computeIfAbsent(part, p -> new Sums()).add(each));
    }
    Map<Part, Chance> chances = new EnumMap<>(Part.class);
    parts.forEach((part, sums) -> chances.put(part, sums.chance(count)));
    return new Scores(total.chance(count), chances);
  }

  /** One shuffle. */
  static Sequences shuffled(Blanket blanket, Sequences sequences, SplittableRandom random) {
    Sequences shuffled = sequences.copy();
    int[] pieces = new int[blanket.pieceCount()];
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      int count = 0;
      for (int piece = 0; piece < pieces.length; piece++) {
        if (layer < shuffled.rounds(piece)) {
          pieces[count++] = piece;
        }
      }
      for (int last = count - 1; last > 0; last--) {
        int drawn = random.nextInt(last + 1);
        swap(shuffled, pieces[last], pieces[drawn], layer);
      }
    }
    return shuffled;
  }

  private static void swap(Sequences sequences, int one, int other, int layer) {
    int roundOfOne = sequences.rounds(one) - 1 - layer;
    int roundOfOther = sequences.rounds(other) - 1 - layer;
    int yarn = sequences.yarn(one, roundOfOne);
    sequences.set(one, roundOfOne, sequences.yarn(other, roundOfOther));
    sequences.set(other, roundOfOther, yarn);
  }
}
