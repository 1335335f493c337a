package lozengy.model.score;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.Part;
import lozengy.model.layout.Pairs;

/**
 * Scores complete sequences, exactly and from scratch: O(pieces x rounds + layers x pairs) and
 * hashing.
 */
public final class Scorer {

  /** A CIEDE2000 difference from which on contrast is full; our own choice. */
  public static final double FULL_CONTRAST = 40;

  /** The part of what is used of a yarn that, left over, is ample leeway; our own choice. */
  public static final double AMPLE_LEEWAY = 0.10;

  /**
   * A CIEDE2000 difference from which on two colours can be told apart with ease, across a seam and
   * in worked yarn; our own choice, near grade 2 to 3 of the grey scale of ISO 105-A02:1993, which
   * is 4.8 in CIELAB.
   */
  public static final double TOLD_APART = 5;

  static final Pairs NO_SEAMS = new Pairs(new int[0], new int[0]);

  private Scorer() {}

  /**
   * Scores sequences.
   *
   * @param blanket the blanket
   * @param sequences complete sequences
   * @param earlier the sequences they were solved from, for the part keep
   * @return its score
   * @throws IllegalArgumentException if a round is open, or sequences have not the blanket's shape
   */
  public static Score score(Blanket blanket, Sequences sequences, Optional<Sequences> earlier) {
    Map<Part, Double> parts = new EnumMap<>(Part.class);
    parts(blanket, sequences).forEach(part -> parts.put(part.part(), part.score()));
    earlier.ifPresent(before -> parts.put(Part.KEEP, keep(blanket, sequences, before)));
    return Score.of(parts, blanket.brief().prefer());
  }

  /**
   * {@return how well two yarns side by side have the contrast that the look wants, 0 to 1: their
   * CIEDE2000 difference by {@link #FULL_CONTRAST}, at most 1, where it wants a lively blanket}
   *
   * @param blanket the blanket
   * @param onSeams whether they are borders on a seam, rather than rounds of one piece
   * @param yarn the yarn's index, from 0
   * @param other the other yarn's index, from 0
   */
  public static double contrast(Blanket blanket, boolean onSeams, int yarn, int other) {
    return blanket
        .look()
        .wanted(onSeams, Math.min(1, blanket.yarns().difference(yarn, other) / FULL_CONTRAST));
  }

  /**
   * {@return the seams that the score looks at: all, or none where the look gives the borders}
   *
   * @param blanket the blanket
   */
  public static Pairs countedSeams(Blanket blanket) {
    return blanket.look().givesBorders() ? NO_SEAMS : blanket.layout().seams();
  }

  /**
   * {@return how many pairs of rounds lie side by side within the pieces}
   *
   * @param blanket the blanket
   */
  static int steps(Blanket blanket) {
    int steps = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      steps += blanket.roundCount(piece) - 1;
    }
    return steps;
  }

  /**
   * {@return what balance and spread find in each layer, the border first}
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   * @throws IllegalArgumentException if a round is open, or sequences have not the blanket's shape
   */
  public static List<LayerDetail> layers(Blanket blanket, Sequences sequences) {
    Shape.requireComplete(blanket, sequences);
    Targets targets = Targets.of(blanket);
    List<LayerDetail> layers = new ArrayList<>();
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      JoinCounts joins = SpreadPart.joins(blanket, layer);
      int[] wanted = targets.counts()[layer];
      layers.add(
          new LayerDetail(
              layer,
              Layers.weight(layer),
              targets.pieces()[layer],
              SpreadPart.repeats(blanket, sequences, layer),
              joins.expected(wanted),
              Math.sqrt(Math.max(0, joins.variance(wanted))),
              Layers.counts(blanket, sequences, layer),
              wanted));
    }
    return layers;
  }

  /**
   * {@return what the weight of repeats would be on average, over all layers by their weights, if
   * the target counts were shuffled: the E0 that spread is measured by}
   *
   * @param blanket the blanket
   */
  public static double expectedRepeats(Blanket blanket) {
    return SpreadPart.expected(blanket, Targets.of(blanket));
  }

  private static double keep(Blanket blanket, Sequences sequences, Sequences earlier) {
    Shape.require(blanket, earlier);
    return Keep.figure(blanket, sequences, earlier);
  }

  /** The parts of the total. */
  static List<ScorePart> parts(Blanket blanket, Sequences sequences) {
    Shape.requireComplete(blanket, sequences);
    Targets targets = Targets.of(blanket);
    List<ScorePart> parts = new ArrayList<>();
    parts.add(new BalancePart(blanket, sequences, targets));
    parts.add(new SpreadPart(blanket, sequences, targets));
    parts.add(new ContrastPart(blanket, sequences, Part.CONTRAST));
    parts.add(new VarietyPart(blanket, sequences));
    parts.add(new LeewayPart(blanket, sequences));
    if (asked(blanket, Part.COLOUR_VISION)) {
      parts.add(new ColourVisionPart(blanket, sequences));
    }
    if (asked(blanket, Part.FADE)) {
      parts.add(new FadePart(blanket, sequences));
    }
    if (asked(blanket, Part.ORDER)) {
      parts.add(new OrderPart(blanket, sequences));
    }
    for (Part part : List.of(Part.CONTRAST_BETWEEN, Part.CONTRAST_WITHIN)) {
      if (asked(blanket, part)) {
        parts.add(new ContrastPart(blanket, sequences, part));
      }
    }
    return parts;
  }

  private static boolean asked(Blanket blanket, Part part) {
    return blanket.brief().prefer().weight(part) > 0;
  }
}
