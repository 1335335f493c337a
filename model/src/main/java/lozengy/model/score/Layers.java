package lozengy.model.score;

import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** Layers count the rounds from the border: layer 0 is the border, layer 1 the round inside it. */
public final class Layers {

  /** What a piece without a layer shows in it. */
  static final int NONE = -1;

  private Layers() {}

  /**
   * {@return the weight of a layer: the border 2, others 1}
   *
   * @param layer the layer, from 0 at the border
   */
  public static int weight(int layer) {
    return layer == 0 ? 2 : 1;
  }

  /**
   * {@return the weight of a layer in spread: 0 for borders that the look gives, else {@link
   * #weight}}
   *
   * @param blanket the blanket
   * @param layer the layer, from 0 at the border
   */
  public static int spreadWeight(Blanket blanket, int layer) {
    return layer == 0 && blanket.look().givesBorders() ? 0 : weight(layer);
  }

  /** The weights of all layers that pieces have, together. */
  static int weights(Targets targets) {
    int weights = 0;
    for (int layer = 0; layer < targets.pieces().length; layer++) {
      weights += targets.pieces()[layer] == 0 ? 0 : weight(layer);
    }
    return weights;
  }

  /** The yarn that a piece shows in a layer, or {@link #NONE} where it has no such layer. */
  static int yarn(Sequences sequences, int piece, int layer) {
    int round = sequences.rounds(piece) - 1 - layer;
    return round < 0 ? NONE : sequences.yarn(piece, round);
  }

  /** How many pieces show each yarn in a layer. */
  static int[] counts(Blanket blanket, Sequences sequences, int layer) {
    int[] counts = new int[blanket.yarnCount()];
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      int yarn = yarn(sequences, piece, layer);
      if (yarn != NONE) {
        counts[yarn]++;
      }
    }
    return counts;
  }

  /** A layer in words, such as {@code in the border}. */
  static String words(int layer) {
    return switch (layer) {
      case 0 -> "in the border";
      case 1 -> "one round in from the border";
      default -> layer + " rounds in from the border";
    };
  }
}
