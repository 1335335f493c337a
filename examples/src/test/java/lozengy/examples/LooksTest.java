package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.check.Check;
import lozengy.model.layout.Place;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The example looks, solved; each with the figure that shows it, worked out here again. */
class LooksTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mirror",
        "half-turn",
        "fade",
        "glow",
        "zones",
        "borders",
        "chessboard",
        "calm",
        "flowing",
        "apart",
        "counts",
        "scattered",
        "ordered"
      })
  void isSolvedAndPassesTheCheckFromScratch(String look) {
    Arrangement arrangement = solved(look);
    assertEquals(List.of(), Check.faults(arrangement.blanket(), arrangement.sequences()));
  }

  @Test
  void symmetricBlanketsHaveNoDifferingPair() {
    assertAll(
        () -> assertEquals(0, differing(solved("mirror"), true, false)),
        () -> assertEquals(0, differing(solved("mirror"), false, true)),
        () -> assertEquals(0, differing(solved("half-turn"), true, true)),
        () -> assertTrue(differing(solved("half-turn"), true, false) > 30),
        () -> assertTrue(differing(solved("apart"), true, false) > 30),
        () -> assertEquals("MUD", border(solved("half-turn"), at(solved("half-turn"), "r8c3"))));
  }

  /** Pieces that differ from the piece at their mirrored place. */
  private static int differing(Arrangement arrangement, boolean leftRight, boolean topBottom) {
    int differing = 0;
    List<Place> places = arrangement.blanket().layout().places();
    for (Place place : places) {
      // 4 across and 5 down: the outline is 8 by 10 half diagonals
      int x = leftRight ? 8 - place.x() : place.x();
      int y = topBottom ? 10 - place.y() : place.y();
      Place image = places.stream().filter(p -> p.x() == x && p.y() == y).findFirst().orElseThrow();
      int[] yarns = arrangement.sequences().of(place.index());
      differing += Arrays.equals(yarns, arrangement.sequences().of(image.index())) ? 0 : 1;
    }
    return differing;
  }

  private static int at(Arrangement arrangement, String name) {
    return arrangement.blanket().layout().find(name).orElseThrow().index();
  }

  @Test
  void aFadeRanksLightnessByPlace() {
    Arrangement fade = solved("fade");
    Arrangement plain = solved("apart");
    assertTrue(correlation(fade) > 0.9, "fade: " + correlation(fade));
    assertTrue(Math.abs(correlation(plain)) < 0.3, "no fade: " + correlation(plain));
  }

  /** Spearman's rank correlation between a border's lightness and its place on the diagonal. */
  private static double correlation(Arrangement arrangement) {
    List<Place> places = arrangement.blanket().layout().places();
    double[] along = places.stream().mapToDouble(p -> p.x() / 8.0 + p.y() / 10.0).toArray();
    double[] light =
        places.stream()
            .mapToInt(p -> arrangement.sequences().border(p.index()))
            .mapToDouble(yarn -> arrangement.blanket().yarns().lab(yarn).lightness())
            .toArray();
    double[] x = ranks(along);
    double[] y = ranks(light);
    double mean = (x.length + 1) / 2.0;
    double both = 0;
    double xOnly = 0;
    double yOnly = 0;
    for (int i = 0; i < x.length; i++) {
      both += (x[i] - mean) * (y[i] - mean);
      xOnly += (x[i] - mean) * (x[i] - mean);
      yOnly += (y[i] - mean) * (y[i] - mean);
    }
    return both / Math.sqrt(xOnly * yOnly);
  }

  /** Ranks from 1, equal values sharing their mean rank. */
  private static double[] ranks(double[] values) {
    double[] ranks = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      for (double other : values) {
        ranks[i] += other < values[i] - 1e-9 ? 1 : Math.abs(other - values[i]) < 1e-9 ? 0.5 : 0;
      }
      ranks[i] += 0.5;
    }
    return ranks;
  }

  @Test
  void zonesHoldTheirYarnsAlone() {
    Arrangement zones = solved("zones");
    assertAll(
        () -> assertEquals(Set.of("MAR", "FOA", "REE"), shown(zones, "triangles", false)),
        () -> assertTrue(Set.of("MAR", "FOA", "REE").containsAll(shown(zones, "corners", false))),
        () -> assertEquals(Set.of("MUD", "PEA"), shown(zones, "row5", true)),
        () -> assertTrue(shown(zones, "squares", true).size() > 4));
  }

  @Test
  void allBordersAreOneOrAlternate() {
    Arrangement chessboard = solved("chessboard");
    int[] first = chessboard.blanket().layout().seams().first();
    int[] second = chessboard.blanket().layout().seams().second();
    int meetings = 0;
    for (int seam = 0; seam < first.length; seam++) {
      meetings += border(chessboard, first[seam]).equals(border(chessboard, second[seam])) ? 1 : 0;
    }
    assertEquals(Set.of("MUD"), shown(solved("borders"), "all", true));
    assertEquals(Set.of("MUD", "FOA"), shown(chessboard, "all", true));
    assertEquals("MUD", border(chessboard, 0));
    assertEquals(0, meetings, "no two alike on " + first.length + " seams");
  }

  @Test
  void aCalmBlanketHasFarLessContrastThanALivelyOne() {
    double calm = meanSeamDifference(solved("calm"));
    double lively = meanSeamDifference(solved("apart"));
    assertTrue(calm < 0.7 * lively, calm + " against " + lively);
  }

  @Test
  void aFlowingBlanketIsCalmBetweenPiecesAndLivelyWithinThem() {
    double between = meanSeamDifference(solved("flowing"));
    double within = meanStepDifference(solved("flowing"));
    assertTrue(between < 0.7 * meanSeamDifference(solved("apart")), "between " + between);
    assertTrue(within > meanStepDifference(solved("apart")), "within " + within);
  }

  @Test
  void yarnsKeptApartNeverMeet() {
    Arrangement apart = solved("apart");
    Set<Set<String>> meetings = new HashSet<>();
    for (int seam = 0; seam < apart.blanket().layout().seams().size(); seam++) {
      meetings.add(
          Set.of(
              border(apart, apart.blanket().layout().seams().first()[seam]),
              border(apart, apart.blanket().layout().seams().second()[seam])));
    }
    assertAll(
        () -> assertTrue(!meetings.contains(Set.of("HEA", "SAM"))),
        () -> assertTrue(!meetings.contains(Set.of("HEA", "REE"))),
        () -> assertTrue(shown(apart, "all", true).containsAll(Set.of("HEA", "SAM", "REE"))));
  }

  @Test
  void countsAreWithinWhatIsAskedAndBalanceDoesNotFightThem() {
    Arrangement counts = solved("counts");
    long heather = showing(counts, "squares", "HEA", true);
    long mud = showing(counts, "all", "MUD", false);
    assertAll(
        () -> assertTrue(heather >= 4 && heather <= 6, "heather " + heather),
        () -> assertTrue(showing(counts, "outline", "FOA", true) >= 7),
        () -> assertTrue(mud <= 5, "mud " + mud),
        () -> assertTrue(showing(solved("apart"), "all", "MUD", false) > 5),
        () ->
            assertTrue(
                counts.blanket().layout().select("squares").stream()
                    .noneMatch(p -> code(counts, p.index(), 0).equals("SED"))),
        () -> assertTrue(counts.score().parts().get(Part.BALANCE) > 95));
  }

  @Test
  void bordersComeAgainRegularlyWhereAskedAndLeastWhereScattered() {
    Arrangement scattered = solved("scattered");
    Arrangement ordered = solved("ordered");
    Arrangement plain = SolvedExamples.plain("looks/ordered");
    double[] shares = {largestShare(scattered), largestShare(plain), largestShare(ordered)};
    double[] orders = {order(scattered), order(plain), order(ordered)};
    String found = Arrays.toString(shares) + ", order " + Arrays.toString(orders);
    assertAll(
        () -> assertTrue(shares[0] < 0.25, found),
        () -> assertTrue(shares[0] < shares[1] && shares[1] < shares[2], found),
        () -> assertTrue(shares[2] > 0.5, found),
        () -> assertTrue(orders[0] < orders[1] && orders[1] < orders[2], found),
        () -> assertEquals(100 - orders[0], scattered.score().parts().get(Part.ORDER), 1e-9));
    for (Arrangement each : List.of(scattered, ordered)) {
      assertTrue(each.score().total() <= each.bound().orElseThrow().total(), "within the bound");
    }
  }

  /** What the part order of an ordered look says of any arrangement of the same pieces. */
  private static double order(Arrangement arrangement) {
    Blanket asked = solved("ordered").blanket();
    return Scorer.score(asked, arrangement.sequences(), Optional.empty()).parts().get(Part.ORDER);
  }

  /** Of all ways of more than sqrt(5) and up to 5 sides, how often one leads to the same border. */
  private static double largestShare(Arrangement arrangement) {
    List<Place> places = arrangement.blanket().layout().places();
    Map<List<Integer>, int[]> byWay = new HashMap<>();
    for (Place from : places) {
      for (Place to : places) {
        int x = to.x() - from.x();
        int y = to.y() - from.y();
        int[] found = byWay.computeIfAbsent(List.of(x, y), way -> new int[2]);
        found[0] += x * x + y * y > 10 && x * x + y * y <= 50 ? 1 : 0;
        found[1] +=
            border(arrangement, from.index()).equals(border(arrangement, to.index())) ? 1 : 0;
      }
    }
    return byWay.values().stream()
        .filter(found -> found[0] >= 8)
        .mapToDouble(found -> (double) found[1] / found[0])
        .max()
        .orElseThrow();
  }

  /** Pieces that show a yarn in their border, or in any round. */
  private static long showing(Arrangement arrangement, String at, String code, boolean border) {
    return arrangement.blanket().layout().select(at).stream()
        .mapToInt(Place::index)
        .filter(
            piece -> {
              int rounds = arrangement.sequences().rounds(piece);
              return IntStream.range(border ? rounds - 1 : 0, rounds)
                  .anyMatch(round -> code(arrangement, piece, round).equals(code));
            })
        .count();
  }

  private static String code(Arrangement arrangement, int piece, int round) {
    return arrangement.blanket().yarn(arrangement.sequences().yarn(piece, round)).code();
  }

  private static Arrangement solved(String look) {
    return SolvedExamples.of("looks/" + look);
  }

  /** Codes of the yarns that pieces show, in their borders or in all rounds. */
  private static Set<String> shown(Arrangement arrangement, String selector, boolean borders) {
    Blanket blanket = arrangement.blanket();
    Set<String> codes = new HashSet<>();
    for (Place place : blanket.layout().select(selector)) {
      codes.add(border(arrangement, place.index()));
      for (int yarn : borders ? new int[0] : arrangement.sequences().of(place.index())) {
        codes.add(blanket.yarn(yarn).code());
      }
    }
    return codes;
  }

  private static String border(Arrangement arrangement, int piece) {
    return arrangement.blanket().yarn(arrangement.sequences().border(piece)).code();
  }

  private static double meanStepDifference(Arrangement arrangement) {
    double sum = 0;
    int steps = 0;
    for (int piece = 0; piece < arrangement.sequences().pieces(); piece++) {
      int[] yarns = arrangement.sequences().of(piece);
      for (int round = 1; round < yarns.length; round++) {
        sum += arrangement.blanket().yarns().difference(yarns[round - 1], yarns[round]);
        steps++;
      }
    }
    return sum / steps;
  }

  private static double meanSeamDifference(Arrangement arrangement) {
    int[] first = arrangement.blanket().layout().seams().first();
    int[] second = arrangement.blanket().layout().seams().second();
    double sum = 0;
    for (int seam = 0; seam < first.length; seam++) {
      sum +=
          arrangement
              .blanket()
              .yarns()
              .difference(
                  arrangement.sequences().border(first[seam]),
                  arrangement.sequences().border(second[seam]));
    }
    return sum / first.length;
  }
}
