package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import lozengy.model.Schemas;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.colour.ToneLimits;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.SourceText;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BriefReaderTest {

  private static String resource(String name) {
    try (InputStream in = BriefReaderTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Brief read(String text) {
    return BriefReader.read(SourceText.of("brief.yaml", text));
  }

  private static List<String> mistakes(String text) {
    InputException thrown = assertThrows(InputException.class, () -> read(text));
    return thrown.mistakes().stream().map(Mistake::words).toList();
  }

  /** The sound brief with some lines replaced. */
  private static String with(Object... linesAndTexts) {
    String[] lines = resource("sound.yaml").split("\n");
    for (int i = 0; i < linesAndTexts.length; i += 2) {
      lines[(Integer) linesAndTexts[i] - 1] = (String) linesAndTexts[i + 1];
    }
    return String.join("\n", lines) + "\n";
  }

  @Test
  void everyFieldIsRead() {
    Brief brief = read(resource("sound.yaml"));
    assertEquals("Saltmarsh cushion", brief.title());
    assertEquals(new LayoutSize(Setting.ON_POINT, 2, 3, true, true), brief.layout());
    Motif square = brief.motifs().get(PieceKind.SQUARE);
    assertEquals(OptionalDouble.of(10), square.edgeCm());
    assertEquals(
        List.of(
            new Round(Set.of(Tone.LIGHT), new YarnAmount.Length(1600)),
            new Round(Set.of(Tone.DARK), new YarnAmount.Length(6800))),
        square.rounds());
    Motif triangle = brief.motifs().get(PieceKind.SIDE_TRIANGLE);
    assertEquals(OptionalDouble.of(13.5), triangle.edgeCm());
    assertEquals(Set.of(Tone.values()), triangle.rounds().get(0).tones());
    Motif corner = brief.motifs().get(PieceKind.CORNER_TRIANGLE);
    assertEquals(Set.of(Tone.DARK, Tone.MID), corner.rounds().get(0).tones());
    Optional<Ball> ball = Optional.of(new Ball(50, 120_000));
    assertEquals(
        List.of(
            Yarn.of("MUD", new Srgb(0x2c, 0x2a, 0x29))
                .withName("Tidal mud")
                .withBall(ball)
                .withBalls(3),
            Yarn.of("REE", new Srgb(0xd9, 0xd5, 0x9a))
                .withName("Reed")
                .withBall(ball)
                .withLeft(Optional.of(new YarnAmount.Weight(85_000)))
                .withShare(2),
            Yarn.of("SLO", new Srgb(0x30, 0x30, 0x50))
                .withLeft(Optional.of(new YarnAmount.Length(100_000)))),
        brief.yarns());
    assertEquals(new ToneLimits(42, 68), brief.tones());
    assertEquals(Optional.of(new YarnUse("MUD", 3.5)), brief.joining());
    assertEquals(List.of(new YarnUse("MUD", 9)), brief.edging());
    assertEquals(Rules.DEFAULT.withMinContrast(5).withKeepBack(5), brief.rules());
    assertEquals(Preferences.DEFAULT, brief.prefer());
    assertEquals(
        List.of(
            new PieceNote(
                List.of("r3c2"),
                List.of(Optional.of("REE"), Optional.of("MUD")),
                PieceState.MADE,
                Set.of()),
            new PieceNote(List.of("top1", "bottom1"), List.of(), PieceState.PLANNED, Set.of("SLO")),
            new PieceNote(
                List.of("r1c1"),
                List.of(Optional.empty(), Optional.of("SLO")),
                PieceState.PLANNED,
                Set.of())),
        brief.pieces());
  }

  @Test
  void joinersMayStandInATitleAndOtherFormattingMayNot() {
    assertEquals("a\u200db\u200cc", read(with(2, "title: \"a\u200db\u200cc\"")).title());
    assertEquals(1, mistakes(with(2, "title: \"a\u202eb\"")).size());
  }

  @Test
  void whatIsNotSaidTakesItsDefault() {
    Brief brief =
        read(
            """
            format: lozengy-brief/1
            title: Strip
            layout: { setting: straight, across: 2, down: 1 }
            motifs: { square: { side: 4 in, rounds: [ { yards: 2 } ] } }
            yarns:
              - { code: A, colour: "#000000", left: 10 yd }
              - { code: B, colour: "#ffffff", left: 10 yd, tone: dark }
            """);
    assertEquals(new LayoutSize(Setting.STRAIGHT, 2, 1, false, false), brief.layout());
    assertEquals(Rules.DEFAULT, brief.rules());
    assertEquals(Preferences.DEFAULT, brief.prefer());
    assertEquals(3.0, brief.prefer().weight(Part.KEEP));
    assertEquals(ToneLimits.DEFAULT, brief.tones());
    assertTrue(brief.joining().isEmpty());
    assertTrue(brief.pieces().isEmpty());
    assertEquals(Optional.of(Tone.DARK), brief.yarns().get(1).statedTone());
  }

  @Test
  void weightsMayBeWords() {
    Brief brief =
        read(
            """
            format: lozengy-brief/1
            title: Strip
            layout: { setting: straight, across: 2, down: 1 }
            motifs: { square: { side: 4 in, rounds: [ { yards: 2 } ] } }
            yarns:
              - { code: A, colour: "#000000", left: 10 yd }
            prefer: { balance: off, spread: low, contrast: normal, variety: high, leeway: 2, colour-vision: normal }
            """);
    assertEquals(
        new Preferences(
            Map.of(
                Part.BALANCE, 0.0,
                Part.SPREAD, 1.0,
                Part.CONTRAST, 3.0,
                Part.VARIETY, 9.0,
                Part.LEEWAY, 2.0,
                Part.COLOUR_VISION, 3.0),
            Map.of(
                Part.BALANCE, Weight.OFF,
                Part.SPREAD, Weight.LOW,
                Part.CONTRAST, Weight.NORMAL,
                Part.VARIETY, Weight.HIGH,
                Part.COLOUR_VISION, Weight.NORMAL)),
        brief.prefer());
    assertEquals(brief, read(BriefWriter.text(brief)));
    assertTrue(BriefWriter.text(brief).contains("\"balance\": \"off\""));
  }

  @Test
  void weightsThatAreNoneAreToldOnceWithTheWordThatIsNear() {
    String brief =
        """
        format: lozengy-brief/1
        title: Strip
        layout: { setting: straight, across: 2, down: 1 }
        motifs: { square: { side: 4 in, rounds: [ { yards: 2 } ] } }
        yarns:
          - { code: A, colour: "#000000", left: 10 yd }
        prefer: %s
        """;
    List<String> words =
        assertThrows(InputException.class, () -> read(brief.formatted("{ balance: High }")))
            .mistakes()
            .stream()
            .map(Mistake::toString)
            .toList();
    assertEquals(1, words.size());
    assertTrue(words.get(0).contains("Maybe high is meant"), words.get(0));
    assertEquals(
        1, assertThrows(InputException.class, () -> read(brief.formatted("[]"))).mistakes().size());
  }

  @ParameterizedTest
  @CsvSource({
    "10 cm, 10",
    "10cm, 10",
    "9.5 cm, 9.5",
    "4 in, 10.16",
    "3 1/2 in, 8.89",
    "3-1/2 in, 8.89",
    "1/2 in, 1.27",
    "3.5 in, 8.89",
  })
  void lengthsTakeCentimetresOrInches(String side, double cm) {
    Brief brief = read(with(11, "    side: " + side));
    assertEquals(cm, brief.motifs().get(PieceKind.SQUARE).edgeCm().orElseThrow(), 1e-12);
  }

  /** Stock is rounded up: 3 oz are 204 116.57 mm. */
  @ParameterizedTest
  @CsvSource({"40 m, 40000", "30 yd, 27432", "85 g, 204000", "3 oz, 204117", "1 1/2 m, 1500"})
  void leftoversTakeEachUnit(String left, long millimetres) {
    Brief brief = read(with(31, "    left: " + left));
    assertEquals(millimetres, brief.yarns().get(1).stockMillimetres());
  }

  @ParameterizedTest
  @CsvSource({
    "'{ grams: 50, metres: 120 }', 50, 120000",
    "'{ ounces: 3.5, yards: 200 }', 99.2233309375, 182880",
    "'{ grams: 100, yards: 219 }', 100, 200253.6",
  })
  void putUpsTakeEachUnit(String ball, BigDecimal grams, BigDecimal millimetres) {
    Brief brief = read(with(27, "    ball: " + ball, 26, "    balls: 2.5"));
    assertEquals(Optional.of(new Ball(grams, millimetres)), brief.yarns().get(0).ball());
    assertEquals(2.5, brief.yarns().get(0).balls());
  }

  /** What is used is rounded down: 2 yd are 1828.8 mm. */
  @ParameterizedTest
  @CsvSource({"metres: 2, 2000", "yards: 2, 1828", "grams: 2, 4800", "ounces: 0.1, 6803"})
  void roundsTakeEachUnit(String amount, long millimetres) {
    Brief brief =
        read(
            with(
                13,
                "      - { tone: light, " + amount + " }",
                34,
                "  - { code: SLO, colour: \"#303050\", left: 1 m, ball: {grams: 50, metres: 100}"
                    + " }"));
    YarnAmount taken = RoundLengths.of(brief).amount(PieceKind.SQUARE, 0);
    assertEquals(
        millimetres, taken.millimetresIn(brief.yarns().get(0).ball().orElseThrow()).down());
  }

  /** Words that YAML may take for something else are codes all the same. */
  @ParameterizedTest
  @CsvSource({"NO", "101", "1e3", "0x1F", "true", "1_000", "12-24", "y", "'é1'"})
  void codesAreTaken(String code) {
    String yarn = "  - { code: " + code + ", colour: \"#303050\", left: 100 m }";
    String not = "  - { at: [top1, bottom1], not: " + code + " }";
    Brief brief = read(with(34, yarn, 47, not, 49, "    rounds: [~, " + code + "]"));
    assertEquals(code, brief.yarns().get(2).code());
    assertEquals(Set.of(code), brief.pieces().get(1).not());
    assertEquals(Optional.of(code), brief.pieces().get(2).rounds().get(1));
  }

  record Case(String name, String text, List<String> mistakes, boolean schemaHolds) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** See the head of the file. */
  static Stream<Case> cases() {
    String file = resource("mistakes.txt").replaceAll("(?m)^#.*\n", "");
    return Arrays.stream(file.strip().split("\n\n")).map(BriefReaderTest::readCase);
  }

  private static Case readCase(String block) {
    List<Object> edits = new ArrayList<>();
    List<String> told = new ArrayList<>();
    for (String line : block.split("\n")) {
      if (line.startsWith("> ") || line.startsWith("* ")) {
        told.add(line.substring(2));
      } else {
        int bar = line.indexOf('|');
        edits.add(Integer.valueOf(line.substring(0, bar)));
        edits.add(line.substring(bar + 1).replace("\\n", "\n"));
      }
    }
    return new Case(
        block.lines().findFirst().orElseThrow(),
        with(edits.toArray()),
        told,
        block.contains("\n* "));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void mistakesAreTold(Case each) {
    assertEquals(String.join("\n", each.mistakes()), String.join("\n", mistakes(each.text())));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void readerAndSchemaAgree(Case each) {
    List<String> faults;
    try {
      faults = Schemas.briefFaults(SourceText.of("brief.yaml", each.text()));
    } catch (InputException e) {
      return; // no tree, nothing to hold against the schema
    }
    assertEquals(each.schemaHolds(), faults.isEmpty(), each.mistakes() + " " + faults);
  }

  @Test
  void theSoundBriefHoldsAgainstTheSchema() {
    assertEquals(
        List.of(), Schemas.briefFaults(SourceText.of("brief.yaml", resource("sound.yaml"))));
  }

  @Test
  void allMistakesOfAFileAreToldTogether() {
    String text =
        with(
            5, "  across: -2",
            13, "      - { tone: lihgt, metres: NaN }",
            25, "    colour: brown",
            31, "    left: 85",
            36, "joining: { yarn: MUT, metres-per-metre: 3.5 }",
            44, "prefer: { ballance: 3 }",
            49, "    rounds: [~, SLOE]");
    List<String> told = mistakes(text);
    List<String> places =
        told.stream().map(words -> words.substring(0, words.indexOf(": "))).toList();
    assertEquals(
        List.of(
            "line 5, layout.across",
            "line 13, motifs.square.rounds[0].tone",
            "line 13, motifs.square.rounds[0].metres",
            "line 25, yarns[0].colour",
            "line 31, yarns[1].left",
            "line 36, joining.yarn",
            "line 44, prefer.ballance",
            "line 49, pieces[2].rounds[1]"),
        places);
  }

  @Test
  void manyMistakesAreCutShort() {
    StringBuilder text = new StringBuilder(resource("sound.yaml"));
    for (int i = 0; i < 1000; i++) {
      text.append("field").append(i).append(": 1\n");
    }
    List<String> told = mistakes(text.toString());
    assertEquals(101, told.size());
    assertEquals("900 further mistakes. Mend those above, then try again", told.get(100));
  }

  @Test
  void aFileThatIsNotThereIsTold() {
    InputException thrown =
        assertThrows(InputException.class, () -> BriefReader.read(Path.of("no", "such.yaml")));
    assertEquals(
        "There is no file " + Path.of("no", "such.yaml") + ". Check the name and the folder",
        thrown.getMessage());
  }
}
