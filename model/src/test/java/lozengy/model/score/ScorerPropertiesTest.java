package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Place;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class ScorerPropertiesTest {

  private static final double EXACT = 1e-9;

  @Property(seed = "11", tries = 300)
  void agreesWithTheDefinitionByPlainLoops(@ForAll long seed, @ForAll long colours) {
    Blanket blanket = Samples.blanket(seed);
    Sequences sequences = Samples.sequences(blanket, colours);
    Optional<Sequences> earlier = Optional.of(nearlySame(blanket, sequences, colours + 1));
    expectEqual(
        new NaiveScore(blanket, sequences).parts(earlier),
        Scorer.score(blanket, sequences, earlier).parts());
  }

  @Property(seed = "12", tries = 200)
  void isTheSameAfterAHalfTurn(@ForAll long seed, @ForAll long colours) {
    Blanket blanket = Samples.blanket(seed);
    Sequences sequences = Samples.sequences(blanket, colours);
    expectEqual(
        score(blanket, sequences).parts(), score(blanket, halfTurn(blanket, sequences)).parts());
  }

  @Property(seed = "13", tries = 200, edgeCases = EdgeCasesMode.NONE)
  void isTheSameInAnyOrderOfTheYarns(@ForAll long seed, @ForAll long colours, @ForAll long order) {
    Blanket blanket = Samples.blanket(seed);
    Blanket shuffled = Samples.blanket(seed, order);
    Score score = score(blanket, Samples.sequences(blanket, colours));
    Score other = score(shuffled, Samples.sequences(shuffled, colours));
    expectEqual(score.parts(), other.parts());
    assertEquals(score.total(), other.total(), EXACT);
  }

  @Property(seed = "14", tries = 200)
  void losesWhatItsLossesAddUpTo(@ForAll long seed, @ForAll long colours) {
    Blanket blanket = Samples.blanket(seed);
    Sequences sequences = Samples.sequences(blanket, colours);
    for (ScorePart part : Scorer.parts(blanket, sequences)) {
      double sum = part.losses().stream().mapToDouble(Loss::points).sum();
      assertEquals(100 - part.score(), sum, EXACT, part.part().word());
      part.losses().forEach(loss -> assertTrue(loss.points() > 0, loss.words()));
    }
    double all =
        WeakSpots.of(blanket, sequences, Integer.MAX_VALUE).stream()
            .mapToDouble(WeakSpot::points)
            .sum();
    assertEquals(100 - score(blanket, sequences).total(), all, EXACT);
  }

  @Property(seed = "15", tries = 200)
  void staysWithinItsRange(@ForAll long seed, @ForAll long colours) {
    Blanket blanket = Samples.blanket(seed);
    Score score = score(blanket, Samples.sequences(blanket, colours));
    assertTrue(score.total() >= 0 && score.total() <= 100, score::toString);
    assertEquals(8, score.parts().size());
    score.parts().values().forEach(part -> assertTrue(part >= 0 && part <= 100, score::toString));
  }

  private static Score score(Blanket blanket, Sequences sequences) {
    return Scorer.score(blanket, sequences, Optional.empty());
  }

  private static void expectEqual(Map<Part, Double> wanted, Map<Part, Double> found) {
    assertEquals(wanted.keySet(), found.keySet());
    wanted.forEach((part, value) -> assertEquals(value, found.get(part), EXACT, part.word()));
  }

  /** The sequences with every third round drawn anew or left open. */
  private static Sequences nearlySame(Blanket blanket, Sequences sequences, long seed) {
    Sequences drawn = Samples.sequences(blanket, seed);
    Sequences earlier = sequences.copy();
    for (int piece = 0; piece < earlier.pieces(); piece++) {
      for (int round = piece % 3; round < earlier.rounds(piece); round += 3) {
        int yarn = drawn.yarn(piece, round);
        earlier.set(piece, round, yarn == 0 ? Sequences.OPEN : yarn);
      }
    }
    return earlier;
  }

  private static Sequences halfTurn(Blanket blanket, Sequences sequences) {
    Layout layout = blanket.layout();
    Map<List<Integer>, Place> placesByPoint = new HashMap<>();
    layout.places().forEach(place -> placesByPoint.put(List.of(place.x(), place.y()), place));
    Sequences turned = blanket.open();
    for (Place place : layout.places()) {
      List<Integer> opposite =
          List.of(2 * layout.size().across() - place.x(), 2 * layout.size().down() - place.y());
      int to = placesByPoint.get(opposite).index();
      for (int round = 0; round < sequences.rounds(to); round++) {
        turned.set(to, round, sequences.yarn(place.index(), round));
      }
    }
    return turned;
  }
}
