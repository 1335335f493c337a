package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.layout.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The example looks, solved; each with the figure that shows it, worked out here again. */
class LooksTest {

  @ParameterizedTest
  @ValueSource(strings = {"zones", "borders", "chessboard", "calm", "apart"})
  void isSolvedAndPassesTheCheckFromScratch(String look) {
    Arrangement arrangement = solved(look);
    assertEquals(List.of(), Check.faults(arrangement.blanket(), arrangement.sequences()));
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

  private static double meanSeamDifference(Arrangement arrangement) {
    int[] first = arrangement.blanket().layout().seams().first();
    int[] second = arrangement.blanket().layout().seams().second();
    double sum = 0;
    for (int seam = 0; seam < first.length; seam++) {
      sum +=
          arrangement
              .blanket()
              .difference(
                  arrangement.sequences().border(first[seam]),
                  arrangement.sequences().border(second[seam]));
    }
    return sum / first.length;
  }
}
