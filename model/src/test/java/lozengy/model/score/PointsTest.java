package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** What steps are worth, held against what the score loses by them. */
class PointsTest {

  private static final double EXACT = 1e-9;

  private static final List<Part> OF_PAIRS =
      List.of(Part.CONTRAST, Part.COLOUR_VISION, Part.CONTRAST_BETWEEN, Part.CONTRAST_WITHIN);

  @Test
  void stepsAddUpToWhatTheScoreLoses() {
    for (long seed = 0; seed < 60; seed++) {
      Blanket blanket = Samples.blanket(seed);
      Sequences sequences = Samples.sequences(blanket, seed + 1);
      Sequences earlier = Samples.sequences(blanket, seed + 2);
      Optional<Sequences> before = seed % 2 == 0 ? Optional.empty() : Optional.of(earlier);
      Score score = Scorer.score(blanket, sequences, before);
      Points points = Points.of(blanket, before);
      double shares = 0;
      for (Part part : Part.values()) {
        assertEquals(100 * points.share(part), points.whole(part), EXACT);
        shares += points.share(part);
      }
      assertEquals(1, shares, EXACT);
      assertEquals(before.isPresent(), points.share(Part.KEEP) > 0);
      assertEquals(lost(points, score, Part.BALANCE), balance(blanket, sequences, points), EXACT);
      double spread = spread(blanket, sequences, points);
      assertEquals(
          lost(points, score, Part.SPREAD), Math.min(points.whole(Part.SPREAD), spread), EXACT);
      assertEquals(lost(points, score, Part.VARIETY), copies(sequences) * points.copy(), EXACT);
      assertEquals(lost(points, score, Part.LEEWAY), leeway(blanket, sequences, points), EXACT);
      pairs(blanket, sequences, points, score);
      if (before.isPresent()) {
        assertEquals(
            lost(points, score, Part.KEEP),
            changed(blanket, sequences, earlier) * points.changed(),
            EXACT);
        double lost = 0;
        for (Part part : score.parts().keySet()) {
          lost += lost(points, score, part);
        }
        assertEquals(100 - score.objective(), lost, EXACT);
      } else {
        assertEquals(0, points.changed());
      }
    }
  }

  private static double lost(Points points, Score score, Part part) {
    return points.share(part) * (100 - score.parts().get(part));
  }

  private static double balance(Blanket blanket, Sequences sequences, Points points) {
    double lost = 0;
    for (LayerDetail layer : Scorer.layers(blanket, sequences)) {
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        int off = Math.abs(layer.counts()[yarn] - layer.targets()[yarn]);
        lost += off * points.balance(layer.layer());
      }
    }
    return lost;
  }

  private static double spread(Blanket blanket, Sequences sequences, Points points) {
    double lost = 0;
    for (LayerDetail layer : Scorer.layers(blanket, sequences)) {
      lost += layer.repeats() * points.repeat(layer.layer());
      assertEquals(
          points.repeat(layer.layer()), (layer.layer() == 0 ? 2 : 1) * points.repeat(), EXACT);
    }
    return lost;
  }

  private static long copies(Sequences sequences) {
    List<List<Integer>> all = new ArrayList<>();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      all.add(Arrays.stream(sequences.of(piece)).boxed().toList());
    }
    return all.size() - all.stream().distinct().count();
  }

  private static double leeway(Blanket blanket, Sequences sequences, Points points) {
    long[] used = blanket.usedMillimetres(sequences);
    double lost = 0;
    for (int yarn = 0; yarn < used.length; yarn++) {
      double ample = blanket.yarn(yarn).stockMillimetres() / 11.0;
      double lacks =
          Math.max(0, ample - (blanket.yarn(yarn).stockMillimetres() - used[yarn])) / ample;
      lost += used[yarn] > 0 ? Math.pow(Math.min(1, lacks), 2) * points.leeway() : 0;
    }
    return lost;
  }

  private static int changed(Blanket blanket, Sequences sequences, Sequences earlier) {
    int changed = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        boolean differs = sequences.yarn(piece, round) != earlier.yarn(piece, round);
        changed += blanket.free(piece, round) && differs ? 1 : 0;
      }
    }
    return changed;
  }

  private static void pairs(Blanket blanket, Sequences sequences, Points points, Score score) {
    Pairs seams = blanket.layout().seams();
    double gained = 0;
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = sequences.border(seams.first()[seam]);
      gained += points.gained(true, first, sequences.border(seams.second()[seam]));
    }
    int steps = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 1; round < sequences.rounds(piece); round++) {
        int before = sequences.yarn(piece, round - 1);
        gained += points.gained(false, before, sequences.yarn(piece, round));
        steps++;
      }
    }
    double scored = 0;
    double full = 0;
    for (Part part : OF_PAIRS) {
      boolean ofSeams = part != Part.CONTRAST_WITHIN && seams.size() > 0;
      boolean any = ofSeams || steps > 0 && part != Part.CONTRAST_BETWEEN && steps(part);
      scored += any ? points.share(part) * score.parts().get(part) : 0;
      full += any ? points.whole(part) : 0;
    }
    assertEquals(scored, gained, EXACT);
    assertEquals(full, points.ofPairs(), EXACT);
    for (Points.Pair pair : points.pairs()) {
      assertEquals(pair.points(), pair.gained(0, 1) + pair.lost(0, 1), EXACT);
      assertEquals(pair.points() * pair.value().of(0, 1), pair.gained(0, 1), EXACT);
      assertTrue(pair.points() > 0);
    }
  }

  /** Whether a part looks at rounds side by side in a piece. */
  private static boolean steps(Part part) {
    return part == Part.CONTRAST || part == Part.CONTRAST_WITHIN;
  }

  private static Blanket weighing(Blanket blanket, Part... parts) {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      weights.put(part, Arrays.asList(parts).contains(part) ? 1.0 : 0.0);
    }
    return Blanket.ofUnjudged(blanket.brief().withPrefer(new Preferences(weights)));
  }

  private static Blanket row(int squares, int rounds) {
    return BlanketBuilder.straight(squares, 1).saltmarsh().motif(PieceKind.SQUARE, rounds).build();
  }

  @Test
  void nothingIsWorthAnythingWhereNoPartWeighs() {
    Points points = Points.of(weighing(row(2, 2)));
    for (Part part : Part.values()) {
      assertEquals(0, points.share(part));
      assertEquals(0, points.whole(part));
    }
    assertEquals(0, points.balance(0) + points.repeat() + points.repeat(0) + points.copy());
    assertEquals(0, points.leeway() + points.changed() + points.ofPairs());
    assertEquals(List.of(), points.pairs());
    assertTrue(points.fade().isEmpty() && points.order().isEmpty());
  }

  @Test
  void contrastIsWorthAsMuchWhereThereIsOnlyOneKindOfPairs() {
    // 100 over the three seams; over the three steps; over two means of one pair each
    assertEquals(100 / 3.0, Points.of(weighing(row(4, 1), Part.CONTRAST)).pairs().get(0).points());
    assertEquals(100 / 3.0, Points.of(weighing(row(1, 4), Part.CONTRAST)).pairs().get(0).points());
    List<Points.Pair> both = Points.of(weighing(row(2, 2), Part.CONTRAST)).pairs();
    assertEquals(
        List.of(50.0, 25.0),
        both.stream().map(Points.Pair::points).toList(),
        "one seam, and a step in each of two squares");
    assertEquals(List.of(true, false), both.stream().map(Points.Pair::onSeams).toList());
  }

  @Test
  void givenBordersAreWorthNothingOnSeamsNorInSpread() {
    Blanket plain = weighing(row(7, 2), Part.CONTRAST, Part.SPREAD);
    Blanket given = Blanket.ofUnjudged(plain.brief().withLook(Look.NONE.withBorders("MUD")));
    Points points = Points.of(given);
    assertEquals(0, points.repeat(0));
    assertTrue(points.repeat(1) > 0);
    assertEquals(1, points.pairs().size());
    assertEquals(50.0 / 7, points.pairs().get(0).points(), EXACT);
  }

  @Test
  void fadeAndOrderAreMeasuredWhereTheyWeighAndImagesCountOnce() {
    Blanket plain = row(4, 1);
    Look look =
        Look.NONE
            .withSymmetry(Symmetry.LEFT_RIGHT)
            .withFade(
                new Fade(
                    Fade.Towards.RIGHT, Fade.Order.DARK_TO_LIGHT, List.of(), Where.EVERYWHERE));
    Blanket fading = Blanket.ofUnjudged(plain.brief().withLook(look));
    assertTrue(Points.of(weighing(fading, Part.FADE)).fade().isPresent());
    assertTrue(Points.of(weighing(fading, Part.BALANCE)).fade().isEmpty());
    // two orbits of two
    assertEquals(50, Points.of(weighing(fading, Part.VARIETY)).copy());
  }

  @Test
  void tellTheTargetsThatBalanceIsMeasuredBy() {
    Blanket blanket = Samples.blanket(1);
    assertArrayEquals(Targets.of(blanket).counts(), Points.of(blanket).targets().counts());
  }
}
