package lozengy.model.stitch;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class StitchTest {

  @ParameterizedTest
  @CsvFileSource(
      resources = "/lozengy/model/stitch/us_uk_names.csv",
      useHeadersInDisplayName = true,
      numLinesToSkip = 0)
  void namesAreTheStandards(String us, String usShort, String uk, String ukShort) {
    Stitch meant = Stitch.meanings(us).get(Terms.US);

    assertAll(
        () -> assertEquals(meant, Stitch.meanings(usShort).get(Terms.US)),
        () -> assertEquals(meant, Stitch.meanings(uk).get(Terms.UK)),
        () -> assertEquals(meant, Stitch.meanings(ukShort).get(Terms.UK)),
        () -> assertTrue(us.startsWith(meant.fullName(Terms.US).split(" ")[0])),
        () -> assertEquals(usShort, meant.abbreviation(Terms.US)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"dc", "tr", "dtr", "trtr", "double crochet", "treble", "double treble"})
  void namesOfBothTermsMeanTwoThings(String name) {
    assertEquals(2, Set.copyOf(Stitch.meanings(name).values()).size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"sc", "single", "hdc", "half double"})
  void singleCrochetIsOfUsTermsAlone(String name) {
    assertEquals(Set.of(Terms.US), Stitch.meanings(name).keySet());
  }

  @Test
  void writingMakesNoDifference() {
    assertAll(
        () -> assertEquals(Stitch.meanings("half double"), Stitch.meanings(" Half-Double ")),
        () -> assertEquals(Stitch.SLIP_STITCH, Stitch.meanings("SL ST").get(Terms.UK)),
        () -> assertEquals(Map.of(), Stitch.meanings("shell")));
  }

  /** In either terms no two stitches share a name, or one could not be written. */
  @Test
  void namesOfOneTermsAreEachOneStitch() {
    for (Terms terms : Terms.values()) {
      Set<String> abbreviations = new HashSet<>();
      for (Stitch stitch : Stitch.values()) {
        assertTrue(abbreviations.add(stitch.abbreviation(terms)), stitch + " " + terms);
        assertEquals(stitch, Stitch.meanings(stitch.abbreviation(terms)).get(terms));
        assertEquals(stitch, Stitch.meanings(stitch.fullName(terms)).get(terms));
      }
    }
  }
}
