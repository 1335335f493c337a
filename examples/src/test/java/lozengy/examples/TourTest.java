package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** What the README shows is what the program makes. */
class TourTest {

  private static final String REMEDY =
      "the program makes another tour than is kept; make it anew as DEVELOPERS.md says";

  private static final Blanket DEMO = ExampleBriefs.blanket("saltmarsh-throw");

  private static Tour tour;

  @BeforeAll
  static void take(@TempDir Path folder) throws IOException {
    tour = Tour.take(folder);
  }

  @Test
  void commandsEndAsTheReadmeSays() {
    Map<String, Integer> expected = new HashMap<>();
    Tour.commands().forEach(command -> expected.put(command, 0));
    expected.put(Tour.IMPOSSIBLE, 3);
    assertEquals(expected, tour.codes());
  }

  @ParameterizedTest
  @MethodSource("lozengy.examples.Tour#commands")
  void screensAreThoseInTheReadme(String command) throws IOException {
    String readme = Files.readString(Tour.readme());

    assertEquals(Tour.screenIn(readme, command), tour.screens().get(command), REMEDY);
  }

  @Test
  void theArrangementIsTheOneKept() throws IOException {
    assertEquals(Files.readString(Tour.arrangementFile()), tour.arrangement(), REMEDY);
  }

  @Test
  void theChartIsTheOneKept() throws IOException {
    assertEquals(Files.readString(Tour.chartFile()), tour.chart(), REMEDY);
  }

  @Test
  void theArrangementThatIsKeptAnswersTheBriefAndPassesTheCheck() {
    StatedArrangement kept = ArrangementReader.read(Tour.arrangementFile());

    assertAll(
        () -> assertEquals(DEMO.brief(), kept.blanket().brief()),
        () -> assertEquals(List.of(), Check.faults(DEMO, kept.sequences())),
        () ->
            assertEquals(kept.scored().score().total(), kept.score().orElseThrow().total(), 1e-6));
  }

  @Test
  void theChartIsWellFormedAndNamesEveryPieceAndYarn() throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    StringReader kept = new StringReader(Files.readString(Tour.chartFile()));
    Document chart = factory.newDocumentBuilder().parse(new InputSource(kept));
    String words = chart.getDocumentElement().getTextContent();

    assertEquals("svg", chart.getDocumentElement().getTagName());
    DEMO.layout().places().forEach(place -> assertTrue(words.contains(place.name()), place.name()));
    DEMO.brief().yarns().forEach(yarn -> assertTrue(words.contains(yarn.name()), yarn.name()));
  }
}
