package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.brief.Symmetry;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class WeakSpotsTest {

  private static BlanketBuilder only(Part part, BlanketBuilder builder) {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part each : Part.values()) {
      weights.put(each, each == part ? 1.0 : 0.0);
    }
    return builder.prefer(weights);
  }

  private static List<WeakSpot> spots(BlanketBuilder builder, String sequences) {
    Blanket blanket = builder.build();
    return WeakSpots.of(blanket, BlanketBuilder.sequences(blanket, sequences), 100);
  }

  private static List<String> words(List<WeakSpot> spots) {
    return spots.stream().map(WeakSpot::words).toList();
  }

  @Test
  void tellsRepeatsByNearnessAndLayer() {
    // with a target above 1, so that repeats are expected at all
    BlanketBuilder builder =
        BlanketBuilder.onPoint(2, 2)
            .yarn("MUD", "Tidal mud", "#2c2a29", 9_000, 5)
            .yarn("SAM", "Samphire", "#5f7f4a")
            .yarn("HEA", "Heather", "#8d6a9f")
            .yarn("REE", "Reed", "#b9b57a")
            .yarn("SND", "Sand", "#d9c9a3")
            .yarn("BAR", "Barley", "#dccca0")
            .motif(PieceKind.SQUARE, 3);
    List<WeakSpot> found =
        spots(
            only(Part.SPREAD, builder),
            "MUD,SAM,REE BAR,HEA,REE SND,SAM,MUD BAR,BAR,HEA SAM,SND,HEA");
    assertEquals(
        List.of(
            "Reed meets Reed at a corner: r1c1, r1c2",
            "Heather meets Heather at a corner: r3c1, r3c2",
            "Samphire meets Samphire along a side, one round in from the border: r1c1, r2c1",
            "Barley comes again two sides away, 2 rounds in from the border: r1c2, r3c1"),
        words(found));
    assertEquals(List.of(0, 1), found.get(0).pieces());
    // border x touch, the same again, round x seam, round x near
    double point = found.get(3).points();
    assertEquals(
        List.of(4L, 4L, 4L, 1L),
        found.stream().map(spot -> Math.round(spot.points() / point)).toList());
  }

  @Test
  void tellsSharesThatAreMissed() {
    BlanketBuilder builder =
        BlanketBuilder.straight(6, 1)
            .yarn("MUD", "Tidal mud", "#2c2a29")
            .yarn("HEA", "Heather", "#8d6a9f")
            .motif(PieceKind.SQUARE, 2);
    List<WeakSpot> found =
        spots(only(Part.BALANCE, builder), "HEA,MUD HEA,MUD HEA,MUD HEA,MUD MUD,MUD MUD,HEA");
    assertEquals(
        List.of(
            "Tidal mud is 2 over its share in the border",
            "Heather is 2 short of its share in the border",
            "Tidal mud is 1 short of its share one round in from the border",
            "Heather is 1 over its share one round in from the border"),
        words(found));
    assertEquals(100 * (2.0 / 3) * 2 / 12, found.get(0).points(), 1e-9);
    assertEquals(List.of(), found.get(0).pieces());
  }

  @Test
  void tellsLowContrast() {
    BlanketBuilder builder =
        BlanketBuilder.straight(2, 1)
            .yarn("BLA", "Coal", "#000000")
            .yarn("SND", "Sand", "#d9c9a3")
            .yarn("BAR", "Barley", "#dccca0")
            .motif(PieceKind.SQUARE, 2);
    assertEquals(
        List.of(
            "Low contrast on the seam of r1c1 and r1c2: Sand beside Barley, 1.7 (CIEDE2000) apart"),
        words(spots(only(Part.CONTRAST, builder), "BLA,SND BLA,BAR")));
    List<WeakSpot> within = spots(only(Part.CONTRAST, builder), "BLA,SND BLA,BLA");
    assertEquals(
        List.of(
            "Low contrast within r1c2, rounds 1 and 2: Coal beside Coal, 0.0 (CIEDE2000) apart"),
        words(within));
    assertEquals(List.of(1), within.get(0).pieces());
    assertEquals(25, within.get(0).points(), 1e-9);
  }

  @Test
  void tellsContrastBetweenAndWithinPiecesApart() {
    BlanketBuilder builder =
        BlanketBuilder.straight(2, 1)
            .yarn("BLA", "Coal", "#000000")
            .yarn("SND", "Sand", "#d9c9a3")
            .motif(PieceKind.SQUARE, 2);
    Blanket plain =
        builder.prefer(Map.of(Part.CONTRAST_BETWEEN, 3.0, Part.CONTRAST_WITHIN, 1.0)).build();
    Blanket blanket =
        Blanket.of(plain.brief().withLook(Look.NONE.withContrast(Look.CALM, Look.LIVELY)));
    Sequences sequences = BlanketBuilder.sequences(blanket, "BLA,BLA BLA,SND");
    List<WeakSpot> found =
        WeakSpots.of(blanket, sequences, 100).stream()
            .filter(spot -> spot.words().contains("contrast"))
            .toList();
    assertEquals(
        List.of(
            "High contrast on the seam of r1c1 and r1c2: Coal beside Sand, 73.6 (CIEDE2000) apart",
            "Low contrast within r1c1, rounds 1 and 2: Coal beside Coal, 0.0 (CIEDE2000) apart"),
        words(found));
    // of weights 3 + 3 + 1 + 1 + 3 + 1: the whole of the one, half of the other
    assertEquals(100.0 * 3 / 12, found.get(0).points(), 1e-9);
    assertEquals(50.0 / 12, found.get(1).points(), 1e-9);
  }

  @Test
  void tellsYarnsThatRunShort() {
    BlanketBuilder builder =
        BlanketBuilder.straight(3, 1)
            .yarn("MUD", "Tidal mud", "#2c2a29", 2_150, 1)
            .yarn("REE", "Reed", "#b9b57a", 1_090, 1)
            .motif(PieceKind.SQUARE, 1);
    List<WeakSpot> found = spots(only(Part.LEEWAY, builder), "MUD REE MUD");
    assertEquals(
        List.of("Tidal mud has only 0.15 m left over", "Reed has only 0.09 m left over"),
        words(found));
    assertEquals(50 * Math.pow(1 - 11 * 150 / 2150.0, 2), found.get(0).points(), 1e-9);
    assertEquals(
        List.of("Reed is 0.91 m short"), words(spots(only(Part.LEEWAY, builder), "REE REE MUD")));
  }

  @Test
  void tellsCopies() {
    BlanketBuilder builder = BlanketBuilder.straight(4, 1).saltmarsh().motif(PieceKind.SQUARE, 1);
    List<WeakSpot> found = spots(only(Part.VARIETY, builder), "MUD REE MUD MUD");
    assertEquals(List.of("r1c1, r1c3 and r1c4 have the same sequence"), words(found));
    assertEquals(50, found.get(0).points(), 1e-9);
  }

  @Test
  void choosesTheWorstOfEachPartBeforeASecondOfAny() {
    BlanketBuilder builder =
        BlanketBuilder.straight(4, 4)
            .yarn("MUD", "Tidal mud", "#2c2a29", 8_700, 1)
            .yarn("REE", "Reed", "#b9b57a")
            .motif(PieceKind.SQUARE, 1);
    String halves = "MUD MUD MUD MUD MUD MUD MUD MUD REE REE REE REE REE REE REE REE";
    List<WeakSpot> all = spots(builder, halves);
    Blanket blanket = builder.build();
    Sequences sequences = BlanketBuilder.sequences(blanket, halves);
    // balance alone is full
    List<WeakSpot> four = WeakSpots.of(blanket, sequences, 4);
    assertEquals(4, four.size());
    assertTrue(any(four, "have the same sequence"));
    assertTrue(any(four, "Tidal mud has only 0.70 m left over"));
    assertTrue(any(four, "meets"));
    assertTrue(any(four, "Low contrast"));
    assertEquals(costliestFirst(four), four);
    assertEquals(costliestFirst(all), all);
    // the fourth costs less than some that are left out for it
    assertTrue(four.get(3).points() < all.get(3).points());
    assertEquals(List.of(), WeakSpots.of(blanket, sequences, 0));
  }

  private static List<WeakSpot> costliestFirst(List<WeakSpot> spots) {
    return spots.stream().sorted(Comparator.comparingDouble(WeakSpot::points).reversed()).toList();
  }

  private static boolean any(List<WeakSpot> spots, String words) {
    return spots.stream().anyMatch(spot -> spot.words().contains(words));
  }

  /** A mirror makes r1c2 and r1c3 images of each other, r1c1 and r1c4 too. */
  @Test
  void whatASymmetryAsksForIsNoWeakSpot() {
    BlanketBuilder builder =
        BlanketBuilder.straight(4, 1)
            .yarn("A", "Yarn A", "#404040")
            .yarn("B", "Yarn B", "#505050")
            .yarn("C", "Yarn C", "#ffffff")
            .motif(PieceKind.SQUARE, 2);
    Blanket plain = only(Part.CONTRAST, builder).build();
    Blanket mirrored =
        Blanket.ofUnjudged(plain.brief().withLook(Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT)));
    String sequences = "A,C A,B A,B A,C";
    assertTrue(pieces(plain, sequences).contains(List.of(1, 2)));
    List<List<Integer>> found = pieces(mirrored, sequences);
    assertFalse(found.contains(List.of(1, 2)), found.toString());
    assertEquals(
        pieces(plain, sequences).stream().filter(pair -> !pair.equals(List.of(1, 2))).toList(),
        found);
    assertTrue(found.stream().anyMatch(each -> each.get(0).equals(each.get(each.size() - 1))));
  }

  private static List<List<Integer>> pieces(Blanket blanket, String sequences) {
    return WeakSpots.of(blanket, BlanketBuilder.sequences(blanket, sequences), 100).stream()
        .map(WeakSpot::pieces)
        .toList();
  }
}
