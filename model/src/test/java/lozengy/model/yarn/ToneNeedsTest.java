package lozengy.model.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Round;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.jgrapht.alg.flow.EdmondsKarpMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;

class ToneNeedsTest {

  private static final List<Set<Tone>> TONE_SETS =
      List.of(
          EnumSet.of(Tone.DARK),
          EnumSet.of(Tone.MID),
          EnumSet.of(Tone.LIGHT),
          EnumSet.of(Tone.DARK, Tone.MID),
          EnumSet.of(Tone.DARK, Tone.LIGHT),
          EnumSet.of(Tone.MID, Tone.LIGHT),
          EnumSet.allOf(Tone.class));

  /** Yarn that can be divided at will suffices exactly where a flow carries all of it. */
  @Property(tries = 500)
  void enoughAndWhatIsMissingInAllAreWhatAMaximumFlowSays(
      @ForAll @Size(7) List<@IntRange(max = 9) Integer> metresByToneSet,
      @ForAll @Size(3) List<@IntRange(max = 40) Integer> metresByTone) {
    Blanket blanket = blanket(metresByToneSet, metresByTone);
    ToneNeeds needs = ToneNeeds.of(blanket);
    int all = metresByToneSet.stream().mapToInt(metres -> metres).sum();
    double missing = all - flow(metresByToneSet, metresByTone);
    assertEquals(missing < 1e-6, needs.enough(), () -> needs.shortages().toString());
    assertEquals(
        missing, needs.missingMillimetres() / 1000.0, 1e-6, () -> needs.shortages().toString());
  }

  /** Buying what is said makes it enough, where a single set of tones is short. */
  @Property(tries = 200)
  void purchaseMakesUpForASingleShortage(
      @ForAll @Size(7) List<@IntRange(max = 9) Integer> metresByToneSet,
      @ForAll @Size(3) List<@IntRange(max = 40) Integer> metresByTone) {
    List<ToneShortage> shortages = ToneNeeds.of(blanket(metresByToneSet, metresByTone)).shortages();
    if (shortages.size() == 1) {
      int bought = (int) (shortages.get(0).purchase().missingMillimetres() / 1000);
      boolean helped = false;
      for (Tone tone : shortages.get(0).tones()) {
        List<Integer> more = new ArrayList<>(metresByTone);
        more.set(tone.ordinal(), more.get(tone.ordinal()) + bought);
        helped |= ToneNeeds.of(blanket(metresByToneSet, more)).enough();
      }
      assertTrue(helped, shortages.toString());
    }
  }

  @Test
  void shortageWithinAShortageIsToldOnce() {
    // Dark rounds need 9 m of 5; all rounds need 10 m of 6: the same 4 m.
    ToneNeeds needs = ToneNeeds.of(blanket(List.of(9, 1, 0, 0, 0, 0, 0), List.of(5, 1, 0)));
    assertEquals(1, needs.shortages().size());
    ToneShortage shortage = needs.shortages().get(0);
    assertEquals(Set.of(Tone.DARK), shortage.tones());
    assertEquals(9000, shortage.neededMillimetres());
    assertEquals(5000, shortage.usableMillimetres());
    assertEquals(4000, shortage.purchase().missingMillimetres());
    assertEquals(1, shortage.purchase().balls().getAsLong());
  }

  private static double flow(List<Integer> needed, List<Integer> atHand) {
    SimpleDirectedWeightedGraph<String, DefaultWeightedEdge> graph =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    graph.addVertex("source");
    graph.addVertex("sink");
    for (Tone tone : Tone.values()) {
      graph.addVertex(tone.word());
      edge(graph, "source", tone.word(), atHand.get(tone.ordinal()));
    }
    for (int set = 0; set < TONE_SETS.size(); set++) {
      graph.addVertex("rounds" + set);
      edge(graph, "rounds" + set, "sink", needed.get(set));
      for (Tone tone : TONE_SETS.get(set)) {
        edge(graph, tone.word(), "rounds" + set, needed.get(set));
      }
    }
    return new EdmondsKarpMFImpl<>(graph).calculateMaximumFlow("source", "sink");
  }

  private static void edge(
      SimpleDirectedWeightedGraph<String, DefaultWeightedEdge> graph,
      String from,
      String to,
      int metres) {
    graph.setEdgeWeight(graph.addEdge(from, to), metres);
  }

  /** One square with a round for each set of tones, and one yarn for each tone. */
  private static Blanket blanket(List<Integer> metresByToneSet, List<Integer> metresByTone) {
    List<Round> rounds = new ArrayList<>();
    for (int set = 0; set < TONE_SETS.size(); set++) {
      YarnAmount amount = new YarnAmount.Length(metresByToneSet.get(set) * 1000L);
      rounds.add(new Round(TONE_SETS.get(set), amount));
    }
    List<Yarn> yarns = new ArrayList<>();
    for (Tone tone : Tone.values()) {
      yarns.add(
          Yarn.of(tone.name(), new Srgb(0, 0, 0))
              .withName(tone.word())
              .withBall(Optional.of(new Ball(50, 100_000)))
              .withLeft(
                  Optional.of(new YarnAmount.Length(metresByTone.get(tone.ordinal()) * 1000L)))
              .withTone(Optional.of(tone)));
    }
    return Blanket.ofUnjudged(
        Brief.of(
            "One square",
            new LayoutSize(Setting.STRAIGHT, 1, 1, false, false),
            Map.of(PieceKind.SQUARE, new Motif(OptionalDouble.of(10), rounds)),
            yarns));
  }
}
