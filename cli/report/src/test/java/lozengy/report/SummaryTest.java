package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Srgb;
import lozengy.model.layout.EdgeFit;
import lozengy.model.layout.Pairs;
import lozengy.model.score.Nearness;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.model.score.WeakSpot;
import lozengy.model.score.WeakSpots;
import org.junit.jupiter.api.Test;

class SummaryTest {

  private static final Arrangement THROW = Samples.saltmarshThrow();
  private static final List<String> LINES = lines(THROW);

  private static List<String> lines(Arrangement arrangement) {
    return Summary.text(arrangement, Optional.of("throw.yaml")).lines().toList();
  }

  private static String unwrapped(List<String> lines) {
    return String.join(" ", lines).replaceAll(" +", " ");
  }

  /** Millimetres of each yarn by code, from the sample's own numbers. */
  private static Map<String, Long> used(Arrangement arrangement) {
    Map<String, Long> used = new LinkedHashMap<>();
    Blanket blanket = arrangement.blanket();
    blanket.brief().yarns().forEach(yarn -> used.put(yarn.code(), 0L));
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        String code = blanket.yarn(arrangement.sequences().yarn(piece, round)).code();
        used.merge(code, 1600 + 1300L * round, Long::sum);
      }
    }
    // 192 seams of 10 cm at 3.5 m a metre; an outline of 28 diagonals of 14.142 cm at 9 m a metre.
    used.merge("MUD", 67_200L, Long::sum);
    used.merge("CRK", 35_638L, Long::sum);
    return used;
  }

  @Test
  void tellsSizeCountsAndLengths() {
    String all = unwrapped(LINES);
    assertEquals("Saltmarsh throw", LINES.get(0));
    assertTrue(
        all.contains(
            "84.9 x 113.1 cm (33 1/2 in x 44 1/2 in), edge drawn in to about 82 x 109 cm, on point,"
                + " 6 across and 8 down"),
        all);
    assertTrue(
        all.contains(
            "83 squares of 10 cm, 24 side triangles, 4 corner triangles;"
                + " 1 made, 2 joined, 108 planned"));
    assertTrue(all.contains("seams 19.20 m, outline 3.96 m"));
  }

  @Test
  void tellsHowTheEdgeFits() {
    Blanket blanket = THROW.blanket();
    EdgeFit fit = blanket.edgeFit().orElseThrow();
    assertTrue(unwrapped(LINES).contains(BlanketWords.edge(fit)));
    // 13.5 cm against 14.142 cm
    assertTrue(unwrapped(LINES).contains("draws in by 4.5 %"));
  }

  @Test
  void tellsTheScorePartByPart() {
    String all = unwrapped(LINES);
    String total = String.format(Locale.ROOT, "Score %.1f of 100", THROW.score().total());
    assertTrue(
        all.contains(
            total + ". It is proved that no arrangement of this brief has more than 95.5, so"),
        all);
    Map<Part, String> weights =
        Map.of(
            Part.BALANCE, "3",
            Part.SPREAD, "3",
            Part.CONTRAST, "1",
            Part.VARIETY, "1",
            Part.LEEWAY, "1");
    weights.forEach(
        (part, weight) -> {
          double figure = THROW.score().parts().get(part);
          String row =
              String.format(Locale.ROOT, " %s %.1f weight %s", part.word(), figure, weight);
          assertTrue(all.contains(row), row);
        });
    assertFalse(all.contains(" keep "));
  }

  @Test
  void tellsKeepAndABoundThatIsNeverRoundedDown() {
    Arrangement again =
        new Arrangement(
            THROW.blanket(),
            THROW.sequences(),
            Optional.of(THROW.sequences()),
            Scorer.score(THROW.blanket(), THROW.sequences(), Optional.of(THROW.sequences())),
            Optional.of(new Arrangement.Bound(91.23, "parts apart")),
            Optional.empty());
    String all = unwrapped(lines(again));
    assertTrue(
        all.contains("Keep 100.0 of 100: so much stands as planned before. It weighs 3 "), all);
    assertTrue(all.contains("has more than 91.3, so"), all);
    assertFalse(all.contains("Solved with"));
  }

  @Test
  void aBoundThatIsMetInItsLastPlaceLeavesNothingToWin() {
    double total = THROW.score().total();
    double rounded = Math.floor(total * 10) / 10 + 0.044444;
    Score score = new Score(rounded, rounded, THROW.score().parts());
    for (double above : new double[] {0.000_001, 0.000_1}) {
      Arrangement met =
          new Arrangement(
              THROW.blanket(),
              THROW.sequences(),
              Optional.empty(),
              score,
              Optional.of(new Arrangement.Bound(rounded + above, "all others ruled out")),
              Optional.empty());
      String all = unwrapped(lines(met));
      assertEquals(above < 0.000_01, all.contains("no arrangement of this brief has more."), all);
      assertEquals(above > 0.000_01, all.contains("could win 0.1 points at most"), all);
    }
  }

  @Test
  void speaksPlainly() {
    String all = unwrapped(LINES);
    Blanket blanket = THROW.blanket();
    long again = 0;
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int i = 0; i < pairs.size(); i++) {
        again +=
            THROW.sequences().border(pairs.first()[i])
                    == THROW.sequences().border(pairs.second()[i])
                ? 1
                : 0;
      }
    }
    assertTrue(again > 0);
    assertTrue(all.contains(" within two squares"), all);
    assertTrue(all.contains(" " + again + " places."), again + ": " + all);
    assertFalse(all.contains("(z "), all);
    assertFalse(all.contains("proof: "), all);
    // no size without what the edge draws in
    String size = BlanketWords.size(blanket);
    assertTrue(size.contains(", edge drawn in to about "), size);
    assertTrue(all.contains(size), all);
  }

  @Test
  void colourVisionIsToldWhereTheBriefAsksForIt() {
    assertFalse(unwrapped(LINES).contains("colour vision"));
    Map<Part, Double> weights = new EnumMap<>(THROW.blanket().brief().prefer().weights());
    weights.put(Part.COLOUR_VISION, 1.0);
    Blanket asks = Blanket.of(THROW.blanket().brief().withPrefer(new Preferences(weights)));
    assertFalse(ColourVisionWords.of(asks, THROW.sequences()).isEmpty());
    assertTrue(ColourVisionWords.of(THROW.blanket(), THROW.sequences()).isEmpty());
  }

  @Test
  void namesTheThreeWeakestSpots() {
    List<WeakSpot> spots = WeakSpots.of(THROW.blanket(), THROW.sequences(), 3);
    String all = unwrapped(LINES);
    assertEquals(3, spots.size());
    for (WeakSpot spot : spots) {
      assertTrue(all.contains(spot.words()), spot.words());
    }
  }

  @Test
  void theYarnTableAddsUp() {
    Map<String, Long> used = used(THROW);
    long[] workedByYarn = workedRounds(THROW);
    for (Yarn yarn : THROW.blanket().brief().yarns()) {
      long taken = used.get(yarn.code());
      long worked = workedByYarn[THROW.blanket().yarnIndex(yarn.code())];
      long left = 360_000 - taken;
      String row =
          String.format(
              Locale.ROOT,
              "%s %s %s %.1f %.1f %.1f %.2f %.1f %.0f",
              yarn.code(),
              yarn.name(),
              THROW.blanket().yarns().tone(THROW.blanket().yarnIndex(yarn.code())).word(),
              worked / 1000.0,
              (360_000 - worked) / 1000.0,
              (taken - worked) / 1000.0,
              (taken - worked) / 120_000.0,
              left / 1000.0,
              left / 120_000.0 * 50);
      assertTrue(unwrapped(LINES).contains(row), row);
    }
    assertTrue(
        unwrapped(LINES).contains("joining 67.2 m of MUD and edging 35.6 m of CRK included"));
  }

  @Test
  void tableColumnsAreAligned() {
    List<String> rows =
        LINES.stream().filter(line -> line.matches("  ([A-Z]{3}|yarn) .*")).toList();
    assertEquals(19, rows.size());
    assertEquals(1, rows.stream().map(String::length).distinct().count());
  }

  @Test
  void aYarnWithoutPutUpHasNoBallsOrGrams() {
    List<Yarn> yarns = new ArrayList<>(Samples.yarns());
    Yarn loose =
        Yarn.of("SHE", Srgb.parse("#e9c9b6"))
            .withName("Shell")
            .withLeft(Optional.of(new YarnAmount.Length(400_000)));
    yarns.set(15, loose);
    Arrangement arrangement =
        Samples.filled(Samples.brief("Loose", Samples.onPoint(2, 2), yarns, List.of()), 4);

    String all = unwrapped(lines(arrangement));
    Pattern row = Pattern.compile("SHE Shell light 400\\.0 [\\d.]+ - [\\d.]+ - -");
    assertTrue(row.matcher(all).find(), all);
    Map<?, ?> data = (Map<?, ?>) ((List<?>) Summary.data(arrangement).get("yarns")).get(15);
    assertFalse(data.containsKey("left_balls") || data.containsKey("used_g"));
  }

  @Test
  void saysHowToRepeatIt() {
    assertTrue(LINES.contains("  ./lozengy solve throw.yaml --seed 7 --moves 250000"));
    String spaced = Summary.text(THROW, Optional.of("my mother's throw.yaml"));
    assertTrue(spaced.contains("solve 'my mother'\\''s throw.yaml' --seed 7"), spaced);
    assertTrue(Summary.text(THROW, Optional.empty()).contains("solve FILE --seed 7"));
  }

  @Test
  void linesAreAsciiAndNoLongerThanATerminal() {
    for (String line : LINES) {
      assertTrue(line.length() <= 80 && line.matches("[ -~]*"), line);
    }
  }

  @Test
  void hostileTextsCannotSteerTheTerminal() {
    String nasty = "Ti\u001b]0;x\u0007tle\r\nScore 100.0 of 100\u202e\u0085";
    List<Yarn> yarns = new ArrayList<>(Samples.yarns());
    yarns.set(0, Samples.yarn("M\u001bD", nasty, "#2c2a29"));
    Arrangement arrangement =
        Samples.filled(Samples.brief(nasty, Samples.onPoint(2, 2), yarns, List.of()), 3);

    String text = Summary.text(arrangement, Optional.of("a\u001b.yaml"));
    assertTrue(text.chars().allMatch(c -> c == '\n' || c >= ' ' && c < 0x7f), text);
    assertEquals("Ti?]0;x?tle Score 100.0 of 100??", text.lines().findFirst().get());
  }

  @Test
  void warnsToWashOnlyWhereADarkLiesBesideALight() {
    assertTrue(unwrapped(LINES).contains("Darks lie beside lights ("));
    assertTrue(unwrapped(LINES).contains("infant under 12 months"));

    Arrangement arrangement = Samples.filled(Samples.withoutLights("No lights"), 2);
    assertFalse(unwrapped(lines(arrangement)).contains("Darks lie"));
  }

  @Test
  void dataHoldsTheSameFiguresForPrograms() {
    Map<String, Object> data = Summary.data(THROW);
    assertEquals(Map.of("square", 83L, "triangle", 24L, "corner", 4L), data.get("pieces"));
    assertEquals(Map.of("planned", 108L, "made", 1L, "joined", 2L), data.get("states"));
    assertEquals(new BigDecimal("84.853"), data.get("width_cm"));
    assertEquals(new BigDecimal("44.542"), data.get("height_in"));
    assertEquals(new BigDecimal("19.200"), data.get("seams_m"));
    Map<?, ?> score = (Map<?, ?>) data.get("score");
    BigDecimal total = BigDecimal.valueOf(THROW.score().total()).setScale(6, RoundingMode.HALF_UP);
    assertEquals(total, score.get("total"));
    assertEquals(new BigDecimal("95.500000"), score.get("bound"));

    Map<String, Long> used = used(THROW);
    for (Object each : (List<?>) data.get("yarns")) {
      Map<?, ?> yarn = (Map<?, ?>) each;
      long millimetres = used.get(yarn.get("code"));
      assertEquals(BigDecimal.valueOf(millimetres, 3), yarn.get("used_m"));
      assertEquals(BigDecimal.valueOf(360_000 - millimetres, 3), yarn.get("left_m"));
    }
    assertPlain(data);
  }

  /**
   * By yarn, millimetres in made and joined pieces; no seam of the throw is joined at both ends.
   */
  private static long[] workedRounds(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    long[] worked = new long[blanket.yarnCount()];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int[] yarns = arrangement.sequences().of(piece);
      for (int round = 0; round < yarns.length; round++) {
        if (blanket.state(piece) != PieceState.PLANNED) {
          worked[yarns[round]] +=
              blanket.motifs().needMillimetres(blanket.kind(piece), round, yarns[round]);
        }
      }
    }
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      boolean joined =
          blanket.state(seams.first()[seam]) == PieceState.JOINED
              && blanket.state(seams.second()[seam]) == PieceState.JOINED;
      // 67.2 m along 192 seams
      worked[blanket.yarnIndex("MUD")] += joined ? 350 : 0;
    }
    return worked;
  }

  private static void assertPlain(Object value) {
    if (value instanceof Map<?, ?> map) {
      map.keySet().forEach(key -> assertTrue(key instanceof String));
      map.values().forEach(SummaryTest::assertPlain);
    } else if (value instanceof List<?> list) {
      list.forEach(SummaryTest::assertPlain);
    } else {
      assertTrue(
          value instanceof String
              || value instanceof Integer
              || value instanceof Long
              || value instanceof BigDecimal,
          String.valueOf(value));
    }
  }
}
