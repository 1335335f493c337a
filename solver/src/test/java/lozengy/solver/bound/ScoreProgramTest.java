package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.score.Scorer;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/**
 * The program against every arrangement of tiny blankets: with the counts of an arrangement put in
 * as rows, its most is never below the best score of these counts, and no further above all of them
 * than it was; counts that take too much of a yarn are no point of it.
 */
class ScoreProgramTest {

  private static final long PLENTY = 1_000_000;

  private static Blanket weighing(BlanketBuilder builder, Part... parts) {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      weights.put(part, (double) Arrays.asList(parts).indexOf(part) + 1);
    }
    return Blanket.ofUnjudged(builder.build().brief().withPrefer(new Preferences(weights)));
  }

  private static BlanketBuilder colours(BlanketBuilder builder, long ofA) {
    return builder
        .yarn(Tone.MID, new Srgb(20, 20, 160), ofA)
        .yarn(Tone.MID, new Srgb(220, 200, 40), PLENTY)
        .yarn(Tone.MID, new Srgb(200, 40, 90), PLENTY);
  }

  /** Squares of two rounds, 1,000 and 500 mm, in a row. */
  private static BlanketBuilder row(int pieces, long ofA) {
    return colours(
        BlanketBuilder.straight(1, pieces).motif(PieceKind.SQUARE, round(1000), round(500)), ofA);
  }

  private static BlanketBuilder borders(int across, int down, long ofA) {
    return colours(BlanketBuilder.straight(across, down).motif(PieceKind.SQUARE, round(1000)), ofA);
  }

  private static BlanketBuilder corners(long ofA) {
    return colours(
        BlanketBuilder.filled(1, 1)
            .motif(PieceKind.SQUARE, round(1000))
            .motif(PieceKind.CORNER_TRIANGLE, round(600)),
        ofA);
  }

  private static double gap(BlanketBuilder builder, Part... parts) {
    return new PinnedProgram(weighing(builder, parts)).gap();
  }

  @Test
  void balanceIsExact() {
    BlanketBuilder squares = borders(2, 2, 2000).within(WithinPiece.FREE);
    assertEquals(0, gap(squares, Part.BALANCE), 1e-7);
    assertEquals(0, gap(row(2, 2100), Part.BALANCE), 1e-7);
    assertEquals(0, gap(corners(1700), Part.BALANCE), 1e-7);
    BlanketBuilder made = row(3, 2600).note("r2c1", PieceState.MADE, "A", "A").ban("r1c1", "C");
    assertEquals(0, gap(made, Part.BALANCE), 1e-7);
    // a made square of a yarn that no planned piece may have, where no yarn's tone fits a square
    BlanketBuilder worked =
        BlanketBuilder.filled(1, 1)
            .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT))
            .motif(PieceKind.CORNER_TRIANGLE, round(600, Tone.MID));
    worked = colours(worked, PLENTY).yarn(Tone.DARK, PLENTY);
    assertEquals(0, gap(worked.note("r1c1", PieceState.MADE, "D"), Part.BALANCE), 1e-7);
  }

  @Test
  void contrastWithinPiecesIsTheBestOfAllWaysToPutRoundsTogether() {
    assertEquals(0, gap(row(1, PLENTY), Part.CONTRAST_WITHIN), 1e-7);
    assertEquals(0, gap(row(2, 1600), Part.CONTRAST_WITHIN), 1e-7);
    assertEquals(0, gap(row(2, 1600).within(WithinPiece.FREE), Part.CONTRAST_WITHIN), 1e-7);
    BlanketBuilder made = row(3, PLENTY).note("r2c1", PieceState.MADE, "A", "B").ban("r1c1", "C");
    assertEquals(0, gap(made, Part.CONTRAST_WITHIN), 1e-7);
  }

  @Test
  void contrastOnSeams() {
    assertEquals(0, gap(borders(1, 2, PLENTY), Part.CONTRAST_BETWEEN), 1e-7);
    assertEquals(0, gap(borders(2, 2, 2000), Part.CONTRAST_BETWEEN), 1e-7);
    assertEquals(0, gap(borders(1, 4, PLENTY), Part.CONTRAST_BETWEEN), 1e-7);
    assertEquals(0, gap(corners(PLENTY), Part.CONTRAST_BETWEEN), 1e-7);
    BlanketBuilder joined =
        borders(1, 5, PLENTY)
            .note("r1c1", PieceState.JOINED, "A")
            .note("r2c1", PieceState.JOINED, "A")
            .note("r4c1", PieceState.MADE, "B");
    assertEquals(0, gap(joined, Part.CONTRAST_BETWEEN), 1e-7);
    Blanket alike =
        Blanket.ofUnjudged(
            weighing(joined, Part.CONTRAST_BETWEEN)
                .brief()
                .withLook(Look.NONE.withContrast(10, 10)));
    assertEquals(0, new PinnedProgram(alike).gap(), 1e-7);
    // two joined borders that are too like each other for any further seam
    BlanketBuilder like =
        BlanketBuilder.straight(1, 4)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.MID, new Srgb(20, 20, 160), PLENTY)
            .yarn(Tone.MID, new Srgb(24, 26, 165), PLENTY)
            .yarn(Tone.MID, new Srgb(220, 200, 40), PLENTY)
            .yarn(Tone.MID, new Srgb(200, 40, 90), PLENTY)
            .minContrast(10)
            .note("r1c1", PieceState.JOINED, "A")
            .note("r2c1", PieceState.JOINED, "B");
    double looser = gap(like, Part.CONTRAST_BETWEEN);
    assertTrue(looser <= 29.964, "looser than it was: " + looser);
  }

  @Test
  void partsTogether() {
    Part[] all = {Part.SPREAD, Part.CONTRAST, Part.BALANCE, Part.CONTRAST_BETWEEN};
    assertEquals(0, gap(row(2, 1600).joining("A", 1), all), 1e-7);
    double looser = gap(corners(1700), all);
    assertTrue(looser <= 40.001, "looser than it was: " + looser);
    assertEquals(0, gap(borders(3, 1, 1700).keepBack(5), all), 1e-7);
  }

  /** With all counts given, the tightness of each yarn is given as well. */
  @Test
  void leewayIsThatOfTheCounts() {
    for (BlanketBuilder builder :
        List.of(borders(1, 3, 2100), row(2, 2050).note("r1c1", PieceState.MADE, "A", "B"))) {
      PinnedProgram test = new PinnedProgram(weighing(builder, Part.LEEWAY));
      int[] tried = new int[1];
      test.each(
          0,
          0,
          test.blanket.locks(),
          (sequences, valid) -> {
            if (valid && tried[0]++ % 3 == 0) {
              ScoreProgram score = test.program(test.noFloors());
              LinearProgram program = test.pinned(score, test.nodes(sequences));
              PrimalDual search = new PrimalDual(program, new double[0]);
              search.improve(60, () -> false);
              double total = Scorer.score(test.blanket, sequences, Optional.empty()).total();
              assertTrue(search.best() >= total, search.best() + " below " + total);
              assertEquals(total, search.best(), 0.01);
            }
          });
      assertTrue(tried[0] > 3, tried[0] + " tried");
    }
  }

  /** Repeats weigh what the highest of each yarn's lines say together, or the least if more. */
  @Test
  void repeatsWeighWhatTheFloorsSay() {
    PinnedProgram test = new PinnedProgram(weighing(corners(PLENTY), Part.SPREAD));
    int corner = PieceKind.CORNER_TRIANGLE.ordinal();
    double total = test.noFloors().get(0).get(0).total();
    double[][][] toll = {{{1, 0, 0}, {0, 0, 0}}, {{0, 0, 0}, {0, 0, 0}}, {}};
    toll[0][0][corner] = -0.5;
    toll[0][1][corner] = 0.25;
    toll[1][0][corner] = -1;
    toll[1][1][0] = -2;
    RepeatFloor floor =
        new RepeatFloor(total, 1, 0.5, toll, new double[][] {{0.5, 1}, {-1, 0.25}, {}});
    RepeatFloor other = floor.atLeast(2.25);
    RepeatFloor third =
        new RepeatFloor(total, 0, -1, toll, new double[][] {{2.5, 1}, {1, 1.5}, {}});
    int[] tried = new int[1];
    test.each(
        0,
        0,
        test.blanket.locks(),
        (sequences, valid) -> {
          if (valid) {
            int[][] counts = new int[PieceKind.values().length][3];
            for (int piece = 0; piece < test.blanket.pieceCount(); piece++) {
              counts[test.blanket.kind(piece).ordinal()][sequences.yarn(piece, 0)]++;
            }
            double repeats = 0;
            for (RepeatFloor each : List.of(floor, other, third)) {
              repeats = Math.max(repeats, RepeatFloorTest.floor(each, counts));
            }
            ScoreProgram score = test.program(List.of(List.of(floor, other, third)));
            double most = ExactProgram.most(test.pinned(score, test.nodes(sequences)));
            assertEquals(100 - test.points.repeat(0) * repeats, most, 1e-7);
            tried[0]++;
          }
        });
    assertTrue(tried[0] > 20, tried[0] + " tried");
  }
}
