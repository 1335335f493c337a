package lozengy.model.card;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.Part;
import lozengy.model.score.Layers;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.model.score.Targets;
import lozengy.model.score.WeakSpot;
import lozengy.model.score.WeakSpots;

/**
 * All that can be told of an arrangement in figures, from scratch.
 *
 * @param score its score
 * @param chanceTotal the total as a random shuffle would have it
 * @param chance every part of the score as a random shuffle would have it
 * @param repeats weight of all pairs that show the same yarn in the same layer, by the weights of
 *     pair and layer
 * @param layers the layers, the border first
 * @param closest the seam whose borders are closest in colour, if there is a seam
 * @param alike what people who lack one kind of cone can hardly tell apart
 * @param weakSpots the places that cost most
 */
public record ScoreCard(
    Score score,
    Chance chanceTotal,
    Map<Part, Chance> chance,
    Statistic repeats,
    List<LayerCard> layers,
    Optional<ClosestSeam> closest,
    List<AlikeSeams> alike,
    List<WeakSpot> weakSpots) {

  /** Weak spots that a card tells, and a chart marks. */
  public static final int WEAK_SPOTS = 10;

  private static final long SEED = 1;

  /**
   * Makes the card.
   *
   * @param blanket the blanket
   * @param sequences complete sequences
   * @param earlier the sequences they were solved from, where there are such
   * @return the card
   * @throws IllegalArgumentException if a round is open, or sequences have not the blanket's shape
   */
  public static ScoreCard of(Blanket blanket, Sequences sequences, Optional<Sequences> earlier) {
    Score score = Scorer.score(blanket, sequences, earlier);
    List<LayerCard> layers = layers(blanket, sequences);
    Shuffles.Scores shuffles =
        Shuffles.scores(blanket, sequences, earlier, SEED, Shuffles.count(blanket));
    Map<Part, Chance> chance = new EnumMap<>(shuffles.parts());
    chance.putAll(Expectations.of(blanket, layers, score.parts(), earlier));
    return new ScoreCard(
        score,
        shuffles.total(),
        chance,
        repeats(blanket, layers),
        layers,
        Seams.closest(blanket, sequences),
        Seams.alike(blanket, sequences),
        WeakSpots.of(blanket, sequences, WEAK_SPOTS));
  }

  /**
   * The statistics of all layers, the border first.
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   * @return the statistics
   * @throws IllegalArgumentException if a round is open, or sequences have not the blanket's shape
   */
  public static List<LayerCard> layers(Blanket blanket, Sequences sequences) {
    Shape.requireComplete(blanket, sequences);
    Targets targets = Targets.of(blanket);
    List<LayerCard> layers = new ArrayList<>();
    IntStream.range(0, blanket.layerCount())
        .forEach(layer -> layers.add(LayerCard.of(blanket, sequences, targets, layer)));
    return List.copyOf(layers);
  }

  /**
   * Repeats of all layers: layers are shuffled apart from each other, so variances add up.
   *
   * @param blanket the blanket
   * @param layers the statistics of all layers, the border first
   * @return the weight of repeats, beside its expectation and its variance
   */
  public static Statistic repeats(Blanket blanket, List<LayerCard> layers) {
    double observed = 0;
    double expected = 0;
    double variance = 0;
    for (LayerCard layer : layers) {
      double weight = Layers.spreadWeight(blanket, layer.layer());
      observed += weight * layer.repeats().observed();
      expected += weight * layer.repeats().expected();
      variance += weight * weight * layer.repeats().variance();
    }
    return new Statistic(observed, expected, variance);
  }
}
