package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.ToIntBiFunction;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.input.SourceText;
import lozengy.model.layout.Offset;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** The order of borders, held against its definition worked out a second time. */
class OrderPartTest {

  private static final String STRAIGHT = "setting: straight, across: 12, down: 16";
  private static final String ON_POINT =
      "setting: on-point, across: 6, down: 8, sides: triangles, corners: triangles";

  private static Blanket blanket(String layout, int yarns, String look) {
    StringBuilder text =
        new StringBuilder(
            """
            format: lozengy-brief/1
            title: Order
            layout: { %s }
            motifs:
              square: { side: 9 cm, rounds: [ { metres: 1 }, { metres: 2 } ] }
              triangle: { rounds: [ { metres: 1 } ] }
              corner: { rounds: [ { metres: 1 } ] }
            look: { %s }
            yarns:
            """
                .formatted(layout, look));
    for (int yarn = 0; yarn < yarns; yarn++) {
      text.append("  - { code: Y%d, colour: \"#%02x4060\", left: 900 m }\n".formatted(yarn, yarn));
    }
    String motifs = layout.contains("straight") ? "(?m)^  (triangle|corner):.*\\R" : "$^";
    return Blanket.of(
        BriefReader.read(SourceText.of("b.yaml", text.toString().replaceAll(motifs, ""))));
  }

  /** Borders by the lattice coordinates of places in sides; other rounds take yarn 0. */
  private static Sequences coloured(Blanket blanket, ToIntBiFunction<Integer, Integer> yarn) {
    boolean onPoint = blanket.layout().size().setting() == Setting.ON_POINT;
    Sequences sequences = blanket.open();
    for (Place at : blanket.layout().places()) {
      int u = onPoint ? (at.x() + at.y()) / 2 : at.x() / 2;
      int v = onPoint ? Math.floorDiv(at.y() - at.x(), 2) : at.y() / 2;
      for (int round = 0; round < blanket.roundCount(at.index()); round++) {
        sequences.set(at.index(), round, 0);
      }
      int border = blanket.roundCount(at.index()) - 1;
      sequences.set(at.index(), border, Math.floorMod(yarn.applyAsInt(u, v), blanket.yarnCount()));
    }
    return sequences;
  }

  private static double figure(Blanket blanket, Sequences sequences) {
    return Scorer.score(blanket, sequences, Optional.empty()).parts().get(Part.ORDER);
  }

  /** 100 R by its definition: every pair of places, put together by the way between them. */
  private static double regularity(Blanket blanket, Sequences sequences) {
    List<Place> places = blanket.layout().places();
    int square = blanket.layout().size().setting() == Setting.ON_POINT ? 2 : 4;
    Map<List<Integer>, int[]> byWay = new HashMap<>();
    for (Place from : places) {
      for (Place to : places) {
        int x = to.x() - from.x();
        int y = to.y() - from.y();
        int length = x * x + y * y;
        if ((y > 0 || y == 0 && x > 0) && length > 5 * square && length <= 25 * square) {
          int[] found = byWay.computeIfAbsent(List.of(x, y), way -> new int[2]);
          found[0]++;
          found[1] += sequences.border(from.index()) == sequences.border(to.index()) ? 1 : 0;
        }
      }
    }
    byWay.values().removeIf(found -> found[0] < 8);
    double pieces = places.size();
    double e = 0;
    for (int wanted : Targets.of(blanket).counts()[0]) {
      e += wanted * (wanted - 1) / (pieces * (pieces - 1));
    }
    double sum = 0;
    double pairs = 0;
    for (int[] found : byWay.values()) {
      double share = (double) found[1] / found[0];
      pairs += found[0];
      sum += share > e ? found[0] * Math.pow((share - e) / (1 - e), 2) : 0;
    }
    return 100 * sum / (e * pairs);
  }

  @Test
  void figuresAreTheDefinitions() {
    Random random = new Random(7);
    for (String layout : List.of(STRAIGHT, ON_POINT, ON_POINT.replace("6", "3"))) {
      Blanket ordered = blanket(layout, 8, "order: ordered");
      Blanket scattered = blanket(layout, 8, "order: scattered");
      Sequences lattice = coloured(ordered, (u, v) -> u + 3 * v);
      Sequences chance = coloured(ordered, (u, v) -> random.nextInt(8));
      Sequences mixed = coloured(ordered, (u, v) -> u < 9 ? u + 3 * v : random.nextInt(8));
      for (Sequences each : List.of(lattice, chance, mixed)) {
        double expected = Math.min(100, regularity(ordered, each));
        assertEquals(expected, figure(ordered, each), 1e-9);
        assertEquals(100 - expected, figure(scattered, each), 1e-9);
      }
      assertTrue(figure(ordered, lattice) > 80, "lattice " + figure(ordered, lattice));
      assertTrue(figure(ordered, mixed) < figure(ordered, lattice));
      assertTrue(figure(ordered, mixed) > figure(ordered, chance));
    }
    Blanket large = blanket(STRAIGHT, 8, "order: scattered");
    assertTrue(figure(large, coloured(large, (u, v) -> random.nextInt(8))) > 98);
  }

  /** All lattice colourings of 8 to 12 yarns without a repeat that spread would mind. */
  @Test
  void latticeColouringsAreAboutFullOrderAndTheirPeriodsWithinReach() {
    int tried = 0;
    double least = 1000;
    double most = 0;
    for (int yarns = 8; yarns <= 12; yarns++) {
      Blanket blanket = blanket(STRAIGHT, yarns, "order: ordered");
      for (int a = 1; a < yarns; a++) {
        for (int b = 1; b < yarns; b++) {
          int across = a;
          int down = b;
          Sequences lattice = coloured(blanket, (u, v) -> across * u + down * v);
          Set<Integer> shown = new HashSet<>();
          for (int piece = 0; piece < lattice.pieces(); piece++) {
            shown.add(lattice.border(piece));
          }
          if (shown.size() < yarns || SpreadPart.repeats(blanket, lattice, 0) > 0) {
            continue;
          }
          tried++;
          double order = regularity(blanket, lattice);
          least = Math.min(least, order);
          most = Math.max(most, order);
          OrderMeasure measure = OrderMeasure.of(blanket).orElseThrow();
          assertTrue(spanned(measure, lattice, yarns), a + ", " + b + " of " + yarns);
        }
      }
    }
    assertTrue(tried > 50, tried + " colourings");
    // as model/README.md says
    assertEquals(86, Math.round(least));
    assertEquals(169, Math.round(most));
  }

  /** Whether two of the offsets at which all pairs are equal span a cell of so many places. */
  private static boolean spanned(OrderMeasure measure, Sequences sequences, int cell) {
    List<Offset> offsets = measure.offsets();
    for (int i = 0; i < offsets.size(); i++) {
      for (int j = 0; j < i; j++) {
        Offset one = offsets.get(i);
        Offset other = offsets.get(j);
        boolean periods =
            measure.equal(i, sequences) == one.size()
                && measure.equal(j, sequences) == other.size();
        // straight: two lattice units to a side
        if (periods && Math.abs(one.x() * other.y() - one.y() * other.x()) == 4 * cell) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void lossesAddUpAndAreTold() {
    Blanket scattered = blanket(STRAIGHT, 8, "order: scattered");
    Sequences lattice = coloured(scattered, (u, v) -> u + 3 * v);
    Sequences mixed = coloured(scattered, (u, v) -> u < 6 ? u + 3 * v : (u * u + 5 * v * v) % 7);
    for (Sequences each : List.of(lattice, mixed)) {
      OrderPart part = new OrderPart(scattered, each);
      double lost = part.losses().stream().mapToDouble(Loss::points).sum();
      assertEquals(100 - part.score(), lost, 1e-9);
    }
    List<String> words =
        new OrderPart(scattered, lattice)
            .losses().stream().map(loss -> loss.words().get()).toList();
    assertEquals(
        List.of(
            "The same border comes again 3 places to the left and 1 row down at 100 % of the"
                + " places, such as r1c4 and r2c1",
            "The same border comes again 2 places to the right and 2 rows down at 100 % of the"
                + " places, such as r1c1 and r3c3",
            "The same border comes again 1 place to the left and 3 rows down at 100 % of the"
                + " places, such as r1c2 and r4c1"),
        words);
    Blanket ordered = blanket(STRAIGHT, 8, "order: ordered");
    Loss missing = new OrderPart(ordered, mixed).losses().get(0);
    assertEquals(100 - figure(ordered, mixed), missing.points(), 1e-9);
    assertTrue(
        missing.words().get().startsWith("The same border comes again most often "),
        missing.words().get());
  }

  @Test
  void offsetsOnPointAreToldInPlacesOfARowAndInRows() {
    int[] none = {};
    assertEquals(
        "1 1/2 places to the right and 3 rows down",
        new Offset(3, 3, none, none).words(Setting.ON_POINT));
    assertEquals(
        "1/2 place to the left and 5 rows down",
        new Offset(-1, 5, none, none).words(Setting.ON_POINT));
    assertEquals("4 rows down", new Offset(0, 4, none, none).words(Setting.ON_POINT));
    assertEquals("3 places to the right", new Offset(6, 0, none, none).words(Setting.STRAIGHT));
  }

  @Test
  void whereThereIsNothingToMeasureThePartIsFull() {
    for (String order : List.of("scattered", "ordered")) {
      Blanket small = blanket("setting: straight, across: 3, down: 3", 3, "order: " + order);
      assertEquals(100, figure(small, coloured(small, (u, v) -> u + v)));
      Blanket given = blanket(STRAIGHT, 8, "borders: [Y0, Y1], order: " + order);
      assertEquals(100, figure(given, coloured(given, (u, v) -> u + v)));
    }
    Blanket silent = blanket(STRAIGHT, 8, "contrast: calm");
    assertEquals(Optional.empty(), OrderMeasure.of(silent));
    assertTrue(
        !Scorer.score(silent, coloured(silent, (u, v) -> u), Optional.empty())
            .parts()
            .containsKey(Part.ORDER));
  }

  @Test
  void aLossNamesTwoPlacesThatHaveTheSameBorder() {
    Blanket scattered = blanket(STRAIGHT, 8, "order: scattered");
    Sequences mixed = coloured(scattered, (u, v) -> u < 6 ? 1 + u * v : u + 3 * v);
    List<Loss> losses = new OrderPart(scattered, mixed).losses();
    assertTrue(losses.size() > 3);
    for (Loss loss : losses) {
      assertEquals(mixed.border(loss.pieces().get(0)), mixed.border(loss.pieces().get(1)));
    }
  }

  /** By the largest share of pairs, not by the most pairs. */
  @Test
  void theOffsetThatRepeatsMostIsTold() {
    Blanket ordered = blanket(STRAIGHT, 8, "order: ordered");
    Random random = new Random(3);
    Sequences part = coloured(ordered, (u, v) -> u < 5 ? 2 * u + 3 * v : random.nextInt(8));
    OrderMeasure measure = OrderMeasure.of(ordered).orElseThrow();
    Map<String, Double> shares = new HashMap<>();
    for (int offset = 0; offset < measure.offsets().size(); offset++) {
      Offset at = measure.offsets().get(offset);
      shares.put(at.words(Setting.STRAIGHT), 100.0 * measure.equal(offset, part) / at.size());
    }
    Map.Entry<String, Double> most =
        shares.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow();
    assertEquals(
        "The same border comes again most often %s at %d %% of the places"
            .formatted(most.getKey(), Math.round(most.getValue())),
        best(ordered, part));
  }

  @Test
  void ofOffsetsThatRepeatAsOftenTheFirstIsTold() {
    Blanket ordered = blanket("setting: straight, across: 6, down: 6", 35, "order: ordered");
    // the last two places alone have one border, and lie too near to count
    Sequences none = coloured(ordered, (u, v) -> Math.min(34, u + 6 * v));
    Offset first = OrderMeasure.of(ordered).orElseThrow().offsets().get(0);
    assertEquals(
        "The same border comes again most often %s at 0 %% of the places"
            .formatted(first.words(Setting.STRAIGHT)),
        best(ordered, none));
  }

  private static String best(Blanket blanket, Sequences sequences) {
    return new OrderPart(blanket, sequences).losses().get(0).words().get();
  }

  @Test
  void aStepIsWhatOnePairMoreGivesAQuarterOfTheWayToAFullRepeat() {
    Blanket blanket = blanket(STRAIGHT, 8, "order: ordered");
    OrderMeasure measure = OrderMeasure.of(blanket).orElseThrow();
    // 24 borders of each of 8 yarns on 192 places; points are a square, their growth a line
    double expected = 8 * 24 * 23 / (192.0 * 191);
    double quarter = measure.offsets().get(0).size() * (expected + (1 - expected) / 4);
    int below = (int) quarter;
    double growth = growth(measure, below);
    double between = (quarter - below) * (growth(measure, below + 1) - growth);
    assertEquals(growth + between, measure.stepPoints(), 1e-12);
  }

  private static double growth(OrderMeasure measure, int equal) {
    return (measure.points(0, equal + 1) - measure.points(0, equal - 1)) / 2;
  }

  @Test
  void noTwoBordersOrAllToBeEqualLeaveNothingToMeasure() {
    String small = "setting: straight, across: 6, down: 6";
    assertEquals(Optional.empty(), OrderMeasure.of(blanket(small, 36, "order: ordered")));
    assertEquals(Optional.empty(), OrderMeasure.of(blanket(small, 1, "order: ordered")));
    assertTrue(OrderMeasure.of(blanket(small, 35, "order: ordered")).isPresent());
  }

  @Test
  void theMeasureIsAmongThePointsWhereItWeighs() {
    Blanket ordered = blanket(STRAIGHT, 8, "order: ordered");
    assertTrue(Points.of(ordered).order().isPresent());
    Blanket weightless =
        Blanket.ofUnjudged(ordered.brief().withPrefer(new Preferences(Map.of(Part.ORDER, 0.0))));
    assertEquals(Optional.empty(), Points.of(weightless).order());
  }
}
