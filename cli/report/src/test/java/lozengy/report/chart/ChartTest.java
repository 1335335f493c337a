package lozengy.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Place;
import lozengy.model.score.WeakSpot;
import lozengy.model.score.WeakSpots;
import lozengy.report.Markup;
import lozengy.report.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ChartTest {

  private static final ChartOptions NAMES =
      new ChartOptions(true, ChartOptions.Signs.NONE, OptionalInt.empty());
  private static final ChartOptions ALL =
      new ChartOptions(true, ChartOptions.Signs.CODES, OptionalInt.empty());

  static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static List<Element> elements(Element within, String name) {
    NodeList found = within.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  private static Element byId(Document document, String id) {
    return elements(document.getDocumentElement(), "*").stream()
        .filter(element -> element.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no element " + id));
  }

  private static List<String> texts(Element within) {
    return elements(within, "text").stream().map(Element::getTextContent).toList();
  }

  private static double area(Element polygon) {
    String[] points = polygon.getAttribute("points").split("[ ,]");
    double twice = 0;
    int count = points.length;
    for (int i = 0; i < count; i += 2) {
      double x = Double.parseDouble(points[i]);
      double y = Double.parseDouble(points[i + 1]);
      double nextX = Double.parseDouble(points[(i + 2) % count]);
      double nextY = Double.parseDouble(points[(i + 3) % count]);
      twice += x * nextY - nextX * y;
    }
    return twice / 2;
  }

  @ParameterizedTest
  @MethodSource("lozengy.report.chart.DrawingTest#sizes")
  void everyRoundIsDrawnInItsYarnAndThePiecesFillTheBlanket(LayoutSize size) throws Exception {
    Arrangement arrangement =
        Samples.filled(Samples.brief("Sample", size, Samples.yarns(), List.of()), 11);
    Blanket blanket = arrangement.blanket();
    ChartOptions scaled = new ChartOptions(false, ChartOptions.Signs.NONE, OptionalInt.of(4));
    Document document = parse(Chart.svg(arrangement, scaled));

    double area = 0;
    for (Place place : blanket.layout().places()) {
      List<Element> rounds = elements(byId(document, "piece-" + place.name()), "polygon");
      int count = blanket.roundCount(place.index());
      assertEquals(count, rounds.size(), place.name());
      for (int i = 0; i < count; i++) {
        int yarn = arrangement.sequences().yarn(place.index(), count - 1 - i);
        assertEquals(blanket.yarn(yarn).colour().hex(), rounds.get(i).getAttribute("fill"));
      }
      area += area(rounds.get(0));
    }
    // A square of 10 cm at 1:4 is 25 mm; a side triangle is half and a corner a quarter of that.
    double squares =
        blanket.layout().places().stream()
            .mapToDouble(
                place ->
                    switch (place.kind()) {
                      case SQUARE -> 1;
                      case SIDE_TRIANGLE -> 0.5;
                      case CORNER_TRIANGLE -> 0.25;
                    })
            .sum();
    assertEquals(squares * 25 * 25, area, 0.1 * squares);
  }

  @Test
  void theLegendListsEveryYarnInWords() throws Exception {
    Arrangement arrangement = Samples.saltmarshThrow();
    Blanket blanket = arrangement.blanket();
    long[] used = new long[blanket.yarnCount()];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = arrangement.sequences().yarn(piece, round);
        used[yarn] += 1600 + 1300L * round;
      }
    }
    // 192 seams of 10 cm at 3.5 m a metre; an outline of 2 x (84.853 + 113.137) cm at 9 m a metre.
    used[0] += 192 * 350;
    used[1] += Math.round(2 * (6 + 8) * 10 * Math.sqrt(2) * 9 * 10);

    List<Element> entries = elements(byId(parse(plain(arrangement)), "legend"), "g");
    assertEquals(blanket.yarnCount(), entries.size());
    YarnLetters letters = YarnLetters.of(blanket);
    List<Integer> byTone =
        IntStream.range(0, used.length)
            .boxed()
            .sorted(Comparator.comparing(blanket.yarns()::tone))
            .toList();
    for (int entry = 0; entry < used.length; entry++) {
      int yarn = byTone.get(entry);
      Yarn expected = blanket.yarn(yarn);
      String metres = String.format(Locale.ROOT, "%.1f m", used[yarn] / 1000.0);
      assertEquals(
          List.of(
              letters.of(yarn),
              expected.code(),
              expected.name(),
              blanket.yarns().tone(yarn).word(),
              metres),
          texts(entries.get(entry)));
      Element swatch = elements(entries.get(entry), "rect").get(0);
      assertEquals(expected.colour().hex(), swatch.getAttribute("fill"));
    }
  }

  @Test
  void legendEntriesStayApartAndWithinThePage() {
    for (int count = 2; count <= 40; count++) {
      List<Yarn> yarns = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        String name = "Sand".repeat(1 + i * 7 % 6);
        yarns.add(Samples.yarn("Y" + i, name, Samples.yarns().get(i % 18).colour().hex()));
      }
      Blanket blanket =
          Blanket.ofUnjudged(Samples.brief("Many", Samples.onPoint(2, 2), yarns, List.of()));
      Arrangement sample = Samples.saltmarshThrow();
      Legend legend =
          new Legend(
              new Arrangement(
                  blanket,
                  everyYarnInTurn(blanket),
                  Optional.empty(),
                  sample.score(),
                  Optional.empty(),
                  Optional.empty()),
              ChartPage.CONTENT_WIDTH);
      Set<String> places = new HashSet<>();
      for (int i = 0; i < count; i++) {
        Legend.Column column = legend.column(i);
        assertTrue(places.add(column.swatchLeft() + " " + legend.top(i)));
        assertTrue(legend.top(i) + Legend.ROW <= legend.height());
        assertTrue(column.metresRight() <= ChartPage.CONTENT_WIDTH);
        assertTrue(column.swatchLeft() < column.codeLeft());
        assertTrue(column.codeLeft() < column.nameLeft());
        assertTrue(column.nameLeft() < column.toneLeft());
        assertTrue(column.toneLeft() < column.metresRight());
      }
    }
  }

  private static Sequences everyYarnInTurn(Blanket blanket) {
    Sequences sequences = blanket.open();
    int next = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        sequences.set(piece, round, next++ % blanket.yarnCount());
      }
    }
    return sequences;
  }

  @Test
  void theLegendLeavesOutWhatIsNotUsed() throws Exception {
    List<Yarn> yarns = new ArrayList<>(Samples.yarns());
    yarns.add(Samples.yarn("SPA", "Spare", "#123456"));
    Blanket blanket =
        Blanket.ofUnjudged(Samples.brief("Some", Samples.onPoint(2, 2), yarns, List.of()));
    Sequences sequences = blanket.open();
    int next = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        sequences.set(piece, round, next++ % (blanket.yarnCount() - 1));
      }
    }
    Arrangement sample = Samples.saltmarshThrow();
    Document document =
        parse(
            plain(
                new Arrangement(
                    blanket,
                    sequences,
                    Optional.empty(),
                    sample.score(),
                    Optional.empty(),
                    Optional.empty())));
    Element legend = byId(document, "legend");
    assertEquals(blanket.yarnCount() - 1, elements(legend, "g").size());
    assertFalse(texts(legend).contains("SPA"), texts(legend).toString());
    List<String> all = texts(document.getDocumentElement());
    assertTrue(all.get(all.size() - 1).endsWith(" Not used: Spare."), all.toString());
  }

  private static String plain(Arrangement arrangement) {
    return Chart.svg(arrangement, ChartOptions.PLAIN);
  }

  @Test
  void isNamedAndDescribedForThoseWhoDoNotSeeIt() throws Exception {
    Document document = parse(plain(Samples.saltmarshThrow()));
    Element root = document.getDocumentElement();

    assertEquals("img", root.getAttribute("role"));
    assertEquals("title description", root.getAttribute("aria-labelledby"));
    assertEquals("Saltmarsh throw", byId(document, "title").getTextContent());
    String description = byId(document, "description").getTextContent();
    assertTrue(description.contains("on point, 6 across and 8 down"), description);
    assertTrue(
        description.contains("83 squares of 10 cm, 24 side triangles, 4 corner triangles"),
        description);
    assertTrue(description.contains("84.9 x 113.1 cm (33 1/2 in x 44 1/2 in)"), description);
    Element piece = byId(document, "piece-r4c3");
    assertEquals(
        "r4c3: SND HEA MIS RUS CRK, made", elements(piece, "title").get(0).getTextContent());
  }

  @Test
  void lettersStandOnEveryRoundAndNamesAndCodesOnRequest() throws Exception {
    Arrangement arrangement = Samples.saltmarshThrow();
    List<String> names =
        arrangement.blanket().layout().places().stream().map(Place::name).sorted().toList();

    int rounds = 83 * 5 + 24 * 4 + 4 * 3;
    Document plain = parse(plain(arrangement));
    int letters = texts(byId(plain, "letters")).size();
    List<String> words = texts(plain.getDocumentElement());
    Matcher left =
        Pattern.compile("No letters on (\\d+) pieces: too small to read here")
            .matcher(String.join(" ", words));
    assertTrue(left.find(), words.toString());
    int without = Integer.parseInt(left.group(1));
    // four corners, and of the side triangles those whose level bands are short
    assertTrue(without >= 4 && without <= 4 + 14, left.group());
    assertEquals(rounds - 4 * 3 - 4 * (without - 4), letters);
    Document named = parse(Chart.svg(arrangement, NAMES));
    // Names of corners are broken after their hyphen.
    List<String> shown =
        List.of(String.join(" ", texts(byId(named, "names"))).replace("- ", "-").split(" "));
    assertEquals(names, shown.stream().sorted().toList());
    assertEquals(rounds, texts(byId(parse(Chart.svg(arrangement, ALL)), "codes")).size());
  }

  private static List<Element> ofClass(Document document, String name) {
    return elements(document.getDocumentElement(), "*").stream()
        .filter(element -> List.of(element.getAttribute("class").split(" ")).contains(name))
        .toList();
  }

  private static long moves(Element path) {
    return path.getAttribute("d").chars().filter(each -> each == 'M').count();
  }

  @Test
  void statesDifferInVeilReliefAndSeams() throws Exception {
    Document document = parse(plain(Samples.saltmarshThrow()));

    // 108 of 111 pieces are planned; one is made and lies apart; two are joined by one seam
    assertEquals(108, moves(ofClass(document, "veil").get(0)));
    assertEquals(3, elements(ofClass(document, "relief").get(0), "use").size());
    assertEquals(1, moves(elements(ofClass(document, "apart").get(0), "path").get(0)));
    assertEquals(1, moves(elements(ofClass(document, "joined-seams").get(0), "path").get(0)));
    List<String> all = texts(document.getDocumentElement());
    assertTrue(all.containsAll(List.of("made (1)", "joined (2)", "planned (108)")), all.toString());
  }

  @Test
  void aFreshPlanLooksWorkedAllOver() throws Exception {
    Arrangement fresh = fresh(Samples.onPoint(3, 3));
    Document document = parse(plain(fresh));

    assertEquals(List.of(), ofClass(document, "veil"));
    assertEquals(25, elements(ofClass(document, "relief").get(0), "use").size());
    // one relief for squares, one for side triangles, one for corners, each turned as it lies
    assertEquals(3, elements(document.getDocumentElement(), "defs").size());
    // 36 seams of 10 cm lie in the diagonals of the layout, 3 + 3 each way
    Element seams = elements(ofClass(document, "seams").get(0), "path").get(1);
    assertEquals(12, moves(seams));
    String joining = fresh.blanket().brief().joiningInOneYarn().orElseThrow().yarn();
    Yarn yarn = fresh.blanket().yarn(fresh.blanket().yarnIndex(joining));
    assertEquals(yarn.colour().hex(), seams.getAttribute("stroke"));
    assertEquals(1, ofClass(document, "edging").size());
  }

  private static Arrangement fresh(LayoutSize size) {
    return Samples.filled(Samples.brief("Fresh", size, Samples.yarns(), List.of()), 3);
  }

  @Test
  void theFlatDiagramHasNoStitchesAndTheBarePictureNoWord() throws Exception {
    Arrangement fresh = fresh(Samples.onPoint(3, 3));
    Document flat = parse(Chart.svg(fresh, ChartOptions.PLAIN.withLook(ChartOptions.Look.FLAT)));
    assertEquals(0, elements(flat.getDocumentElement(), "use").size());
    assertEquals(List.of(), ofClass(flat, "edging"));

    Document bare = parse(Chart.svg(fresh, ChartOptions.PLAIN.withBare(true)));
    assertEquals(List.of(), texts(bare.getDocumentElement()));
    assertEquals(0, elements(bare.getDocumentElement(), "rect").size());
    assertEquals(25, elements(bare.getDocumentElement(), "use").size());
  }

  @ParameterizedTest
  @MethodSource("lozengy.report.chart.DrawingTest#sizes")
  void edgingAndSeamsGoAroundAndBetweenAllPieces(LayoutSize size) {
    Arrangement arrangement = fresh(size);
    Blanket blanket = arrangement.blanket();
    Drawing drawing = Drawing.of(blanket, arrangement.sequences());
    SideLines sides = SideLines.of(drawing.pieces());
    double seams =
        sides.seams((one, other) -> true).stream()
            .mapToDouble(line -> line.get(0).distance(line.get(1)))
            .sum();
    double around = 0;
    for (Polyline ring : sides.outline()) {
      for (int i = 0; i < ring.corners().size(); i++) {
        around += ring.corner(i).distance(ring.corner(i + 1));
      }
    }
    assertEquals(10 * blanket.layout().seams().size(), seams, 1e-6);
    assertEquals(blanket.measures().outlineLengthCm(), around, 1e-6);
  }

  @Test
  void whatAReplanHasChangedIsOutlined() throws Exception {
    Arrangement before = fresh(Samples.onPoint(3, 3));
    Sequences now = before.sequences().copy();
    int square = before.blanket().layout().find("r2c1").orElseThrow().index();
    now.set(square, 0, (now.yarn(square, 0) + 1) % before.blanket().yarnCount());
    Arrangement after =
        new Arrangement(
            before.blanket(),
            now,
            Optional.of(before.sequences()),
            before.score(),
            before.bound(),
            before.solved());
    Document document = parse(plain(after));

    // a dark outline and a bright one on it
    assertEquals(2, elements(ofClass(document, "changed-pieces").get(0), "polygon").size());
    assertTrue(texts(document.getDocumentElement()).contains("changed (1)"));
    assertEquals(List.of(), ofClass(parse(plain(before)), "changed"));

    Document beside =
        parse(ChartsSideBySide.svg(List.of(before, after), List.of("/far/away/a.json", "b.json")));
    assertEquals(2, elements(ofClass(beside, "changed-pieces").get(0), "polygon").size());
    String words = String.join("|", texts(beside.getDocumentElement()));
    assertTrue(words.contains("1  Fresh|") && words.contains("2  Fresh|"), words);
    assertTrue(words.contains("1 piece unlike 1") && !words.contains("far"), words);
    assertEquals(before.blanket().yarnCount(), elements(byId(beside, "legend"), "rect").size());
  }

  @Test
  void otherYarnsAreNotComparedCodeByCode() throws Exception {
    List<Yarn> others =
        Samples.yarns().stream()
            .map(yarn -> Samples.yarn(yarn.code(), yarn.name(), "#808080"))
            .toList();
    Arrangement one = fresh(Samples.straight(2, 2));
    Blanket grey =
        Blanket.ofUnjudged(Samples.brief("Grey", Samples.straight(2, 2), others, List.of()));
    Arrangement other =
        new Arrangement(
            grey, one.sequences(), Optional.empty(), one.score(), one.bound(), one.solved());
    Document document =
        parse(ChartsSideBySide.svg(List.of(one, other), List.of("a.json", "b.json")));

    assertEquals(List.of(), ofClass(document, "changed-pieces"));
    String words = String.join("|", texts(document.getDocumentElement()));
    assertTrue(words.contains("not compared with 1"), words);
    assertTrue(words.contains("Yarns of 1|") && words.contains("Yarns of 2|"), words);
  }

  @Test
  void rowsAndSquaresAreNumberedAtTheMargins() throws Exception {
    List<String> numbers = texts(byId(parse(plain(fresh(Samples.onPoint(3, 2)))), "numbers"));
    // rows 1 to 3 at both sides, 3 squares in odd rows above, 2 in even rows below
    assertEquals(List.of("1", "2", "3", "1", "2", "3", "1", "2", "3", "1", "2"), numbers);
  }

  @Test
  void theFiguresAboveStandClearOfTheNumbers() throws Exception {
    Document document = parse(plain(fresh(Samples.onPoint(3, 2))));
    NodeList all = document.getElementsByTagName("text");
    double figures = 0;
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i).getTextContent().contains("Scale 1:")) {
        figures = Double.parseDouble(((Element) all.item(i)).getAttribute("y"));
      }
    }
    NodeList numbers = byId(document, "numbers").getElementsByTagName("text");
    double highest = Double.MAX_VALUE;
    for (int i = 0; i < numbers.getLength(); i++) {
      Element number = (Element) numbers.item(i);
      highest = Math.min(highest, Double.parseDouble(number.getAttribute("y")));
    }
    // A digit is 1.7 mm high, a descender of the figures 0.7 mm deep.
    assertTrue(figures > 0 && highest - 1.7 > figures + 0.7 + 1, figures + " and " + highest);
  }

  @Test
  void hostileTextsStayTexts() throws Exception {
    String nasty = "<script>x</script>&amp; \"quoted\" ]]> \u0000\u001b[31m\u202e \ud800 \n\tend";
    List<Yarn> yarns = new ArrayList<>(Samples.yarns());
    yarns.set(0, Samples.yarn("\"><b>", nasty, "#2c2a29"));
    Arrangement arrangement =
        Samples.filled(Samples.brief(nasty, Samples.onPoint(2, 2), yarns, List.of()), 3);

    String svg = Chart.svg(arrangement, ALL);
    Document document = parse(svg);
    assertEquals(0, elements(document.getDocumentElement(), "script").size());
    assertEquals(0, elements(document.getDocumentElement(), "b").size());
    String title = byId(document, "title").getTextContent();
    assertEquals("<script>x</script>&amp; \"quoted\" ]]> ??[31m? ?   end", title);
    assertTrue(texts(byId(document, "legend")).contains("\"><b>"));
    assertFalse(svg.contains("\u202e") || svg.contains("\u001b"));
  }

  @Test
  void isTheSameTextInEveryLocale() {
    Arrangement arrangement = Samples.saltmarshThrow();
    String expected = Chart.svg(arrangement, ALL);
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals(expected, Chart.svg(arrangement, ALL), tag);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void twoThousandPiecesStaySmall() {
    Blanket blanket =
        Blanket.ofUnjudged(
            Samples.brief("Large", Samples.onPoint(25, 40), Samples.yarns(), List.of()));
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        sequences.set(piece, round, (piece + round) % blanket.yarnCount());
      }
    }
    Arrangement sample = Samples.saltmarshThrow();
    Arrangement large =
        new Arrangement(
            blanket, sequences, sample.earlier(), sample.score(), sample.bound(), sample.solved());
    String svg = Chart.svg(large, NAMES);

    assertEquals(2066, blanket.pieceCount());
    assertTrue(svg.length() < 2_500_000, svg.length() + " characters");
    int rounds = 1936 * 5 + 126 * 4 + 4 * 3;
    assertEquals(rounds, svg.split("<polygon ").length - 1);
  }

  /** Five pieces of one sequence are joined by four lines, each drawn light and then dark. */
  @Test
  void aWeakSpotOfManyPiecesIsMarkedOnEach() throws Exception {
    Brief brief = Samples.brief("Sample", Samples.straight(5, 1), Samples.yarns(), List.of());
    Arrangement sample = Samples.filled(brief, 1);
    Sequences alike = sample.sequences().copy();
    for (int piece = 1; piece < 5; piece++) {
      for (int round = 0; round < alike.rounds(piece); round++) {
        alike.set(piece, round, alike.yarn(0, round));
      }
    }
    Blanket blanket = sample.blanket();
    WeakSpot spot =
        WeakSpots.of(blanket, alike, 10).stream()
            .filter(each -> each.pieces().size() == 5)
            .findFirst()
            .orElseThrow();
    Markup svg = Markup.svg();
    new WeakMarks(svg, new ChartPage(5, 210, 279, 10, 10, 279), List.of(spot))
        .onBlanket(Drawing.of(blanket, alike));
    assertEquals(2 * 4, svg.finish().split("<line ").length - 1);
  }

  @Test
  void fitsASheetOfA4AndOfLetterPaper() throws Exception {
    for (LayoutSize size : DrawingTest.sizes().toList()) {
      Arrangement arrangement =
          Samples.filled(Samples.brief("Sample", size, Samples.yarns(), List.of()), 2);
      Element root = parse(plain(arrangement)).getDocumentElement();
      String[] box = root.getAttribute("viewBox").split(" ");
      assertTrue(Double.parseDouble(box[2]) <= 210 && Double.parseDouble(box[3]) <= 279);
      assertEquals(box[2] + "mm", root.getAttribute("width"));
      assertEquals(box[3] + "mm", root.getAttribute("height"));
    }
  }
}
