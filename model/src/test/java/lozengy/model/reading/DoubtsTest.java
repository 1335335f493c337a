package lozengy.model.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.input.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DoubtsTest {

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Doubts
      layout: { setting: on-point, across: 2, down: 2, corners: open }
      motifs:
        square: { side: 10 cm, rounds: [ { metres: 1.4 }, { metres: 2.7 }, { metres: 3.9 } ] }
        triangle: { base: 13.5 cm, rounds: [ { metres: 2 } ] }
      yarns:
        - { code: A, colour: "#202020", balls: 2 1/2, ball: { grams: 50, metres: 100 } }
        - { code: B, colour: "#f0f0f0", left: 50 m }
      """;

  @Test
  void aSoundBriefHasNoneAndNoExampleHas() throws IOException {
    assertEquals(List.of(), of(BRIEF));
    int examples = 0;
    try (Stream<Path> files = Files.walk(Path.of("../examples"), 2)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).toList()) {
        Blanket blanket = Blanket.of(BriefReader.read(file));
        assertEquals(List.of(), Doubts.of(blanket), file.toString());
        examples++;
      }
    }
    assertTrue(examples > 4, examples + " examples");
  }

  @Test
  void ballsAreReadAsPeopleTypeThem() {
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("b.yaml", BRIEF)));
    assertEquals(250_000, blanket.yarn(0).stockMillimetres());
  }

  private static final String COUNTED =
      BRIEF
          .replace("motifs:", "stitches: { samples: [ SAMPLES ] }\nmotifs:")
          .replace("metres: 3.9", "stitches: { sc: 40 }")
          .replace("metres: 2 }", "stitches: { sc: 20 } }");

  @Test
  void samplesThatAgreeAreNotDoubted() {
    String agree = "{ of: square, takes: [8 m, 8.9 m] }, { of: triangle, takes: 3 m }";
    assertEquals(List.of(), of(COUNTED.replace("SAMPLES", agree)));
  }

  /** Told, not averaged away: the middle of 5 m and 8 m is 6.5 m. */
  @Test
  void samplesThatContradictEachOtherAreAskedAbout() {
    List<Doubt> doubts = of(COUNTED.replace("SAMPLES", "{ of: square, takes: [5 m, 8 m] }"));
    assertEquals(2, doubts.size());
    Doubt.Apart first = (Doubt.Apart) doubts.get(0);
    assertEquals("samples-apart", first.code());
    assertEquals("stitches.samples[0].takes[0]", first.path().toString());
    assertEquals(100 * (5 / 6.5 - 1), first.percent(), 1e-9);
  }

  /** A round by itself takes 3.9 m, and the whole piece 6 m, of which 4.1 m are the others'. */
  @Test
  void aRoundAndItsPieceThatContradictEachOtherAreAskedAbout() {
    String contradict = "{ of: square, rounds: 3, takes: 3.9 m }, { of: square, takes: 6 m }";
    Doubt.Apart doubt = (Doubt.Apart) only(COUNTED.replace("SAMPLES", contradict));
    assertEquals("stitches.samples[1].takes", doubt.path().toString());
    assertEquals(100 * (6 / 8.0 - 1), doubt.percent(), 1e-9);
  }

  @Test
  void aTriangleHeavierThanItsSquareIsAskedAbout() {
    String heavy = "{ of: square, takes: 8 m }, { of: triangle, takes: 9 m }";
    Doubt.Heavier doubt = (Doubt.Heavier) only(COUNTED.replace("SAMPLES", heavy));
    assertEquals("sample-heavier", doubt.code());
    assertEquals(9000, doubt.smallerMillimetres());
    assertEquals(8000, doubt.largerMillimetres());
  }

  @ParameterizedTest
  @CsvSource({"12 in, cm", "13 in, cm", "5.5 cm, in", "60 cm, none", "1 cm, none"})
  void anEdgeThatIsFarOffIsAskedAbout(String base, String meant) {
    Doubt.Edge doubt = (Doubt.Edge) only(BRIEF.replace("13.5 cm", base));
    assertEquals("edge-far-off", doubt.code());
    assertEquals("motifs.triangle.base", doubt.path().toString());
    assertEquals(meant, doubt.meant().orElse("none"));
  }

  @ParameterizedTest
  @CsvSource({
    "metres: 2.7, metres: 27, 1, 27000, 3900",
    "metres: 2.7, metres: 0.2, 1, 200, 1400",
    "metres: 3.9, metres: 39, 2, 39000, 2700",
    "metres: 3.9, metres: 0.39, 2, 390, 2700",
    "metres: 1.4, metres: 170, 0, 170000, 2700"
  })
  void aRoundFarFromThoseBesideItIsAskedAboutOnce(
      String old, String now, int round, long own, long beside) {
    Doubt.Amount doubt = (Doubt.Amount) only(BRIEF.replace(old, now));
    assertEquals("amount-far-off", doubt.code());
    assertEquals("motifs.square.rounds[" + round + "]", doubt.path().toString());
    assertEquals(List.of(own, beside), List.of(doubt.millimetres(), doubt.besideMillimetres()));
  }

  @Test
  void aCountAboveWhatWasBoughtIsAskedAbout() {
    String counted = BRIEF.replace("balls: 2 1/2", "balls: 2, counted: { left: 100.1 g }");
    Doubt.Count doubt = (Doubt.Count) only(counted);
    assertEquals("count-above-bought", doubt.code());
    assertEquals("yarns[0].counted.left", doubt.path().toString());
    assertEquals(200_200, doubt.countedMillimetres());
    assertEquals(200_000, doubt.boughtMillimetres());
    assertEquals(List.of(), of(counted.replace("100.1 g", "100 g")));
    // what was bought is not told
    assertEquals(List.of(), of(counted.replace("balls: 2, counted", "counted")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"NA", "Null", "nan", "-NaN", "None"})
  void aCodeThatMeansNothingToProgramsIsAskedAbout(String code) {
    Doubt.Missing doubt = (Doubt.Missing) only(BRIEF.replace("code: A", "code: '" + code + "'"));
    assertEquals("code-means-missing", doubt.code());
    assertEquals("yarns[0].code", doubt.path().toString());
    assertEquals(code, doubt.codeOfYarn());
    assertEquals(List.of(), of(BRIEF.replace("code: A", "code: NAN2")));
  }

  private static Doubt only(String text) {
    List<Doubt> doubts = of(text);
    assertEquals(1, doubts.size(), doubts.toString());
    return doubts.get(0);
  }

  private static List<Doubt> of(String text) {
    return Doubts.of(Blanket.of(BriefReader.read(SourceText.of("b.yaml", text))));
  }
}
