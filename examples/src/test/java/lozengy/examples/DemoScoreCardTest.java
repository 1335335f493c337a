package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.card.LayerCard;
import lozengy.model.card.ScoreCard;
import lozengy.model.card.Statistic;
import lozengy.model.colour.ColourDifference;
import lozengy.model.colour.LabColours;
import lozengy.model.layout.Place;
import lozengy.model.score.Nearness;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The score card of the demo's kept arrangement, worked out a second time: matrices of weights in
 * place of lists of pairs, Cliff and Ord's form with S0, S1 and S2 colour by colour in place of
 * counted joins.
 */
class DemoScoreCardTest {

  private static final double EXACT = 1e-6;

  private static Blanket blanket;
  private static StatedArrangement demo;
  private static ScoreCard card;

  @BeforeAll
  static void read() {
    demo = ArrangementReader.read(ExampleBriefs.file("tour/saltmarsh-throw.arrangement.json"));
    blanket = demo.blanket();
    card = ScoreCard.of(blanket, demo.sequences(), Optional.empty());
  }

  /**
   * Weights of pairs by the distance of their lattice points: 1 a seam, 2 a touch, up to 5 near.
   */
  private static double[][] weights(int[] pieces, double seam, double touch, double near) {
    double[][] weights = new double[pieces.length][pieces.length];
    for (int i = 0; i < pieces.length; i++) {
      for (int j = 0; j < pieces.length; j++) {
        Place a = blanket.place(pieces[i]);
        Place b = blanket.place(pieces[j]);
        double x = a.x() - b.x();
        double y = a.y() - b.y();
        double sides = (x * x + y * y) / 2;
        weights[i][j] = sides == 1 ? seam : sides == 2 ? touch : sides > 0 && sides <= 5 ? near : 0;
      }
    }
    return weights;
  }

  private static int[] pieces(int layer) {
    return IntStream.range(0, blanket.pieceCount())
        .filter(piece -> blanket.roundCount(piece) > layer)
        .toArray();
  }

  private static int[] yarns(int layer) {
    return IntStream.of(pieces(layer))
        .map(piece -> demo.sequences().yarn(piece, blanket.roundCount(piece) - 1 - layer))
        .toArray();
  }

  private static double falling(double x, int factors) {
    return factors == 0 ? 1 : x * falling(x - 1, factors - 1);
  }

  /** S0, S1 and S2 of a matrix of weights. */
  private static double[] sums(double[][] w) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    for (int i = 0; i < w.length; i++) {
      double row = 0;
      double column = 0;
      for (int j = 0; j < w.length; j++) {
        s0 += w[i][j];
        s1 += (w[i][j] + w[j][i]) * (w[i][j] + w[j][i]) / 2;
        row += w[i][j];
        column += w[j][i];
      }
      s2 += (row + column) * (row + column);
    }
    return new double[] {s0, s1, s2};
  }

  private static void compare(double[][] w, int[] yarns, Statistic stated) {
    double[] s = sums(w);
    double n = yarns.length;
    double observed = 0;
    for (int i = 0; i < yarns.length; i++) {
      for (int j = 0; j < yarns.length; j++) {
        observed += yarns[i] == yarns[j] ? w[i][j] / 2 : 0;
      }
    }
    double[] count = new double[blanket.yarnCount()];
    IntStream.of(yarns).forEach(yarn -> count[yarn]++);
    double apart = s[0] * s[0] + s[1] - s[2];
    double expected = 0;
    double variance = 0;
    for (int r = 0; r < count.length; r++) {
      double ofR = s[0] * falling(count[r], 2) / (2 * falling(n, 2));
      expected += ofR;
      variance +=
          (s[1] * falling(count[r], 2) / falling(n, 2)
                      + (s[2] - 2 * s[1]) * falling(count[r], 3) / falling(n, 3)
                      + apart * falling(count[r], 4) / falling(n, 4))
                  / 4
              - ofR * ofR;
      for (int t = 0; t < count.length; t++) {
        if (t != r) {
          double ofT = s[0] * falling(count[t], 2) / (2 * falling(n, 2));
          variance +=
              apart * falling(count[r], 2) * falling(count[t], 2) / (4 * falling(n, 4)) - ofR * ofT;
        }
      }
    }
    assertEquals(observed, stated.observed(), EXACT);
    assertEquals(expected, stated.expected(), EXACT);
    assertEquals(variance, stated.variance(), EXACT);
    assertEquals((observed - expected) / Math.sqrt(variance), stated.z(), EXACT);
  }

  @Test
  void joinCountsAgree() {
    assertEquals(5, card.layers().size());
    for (LayerCard layer : card.layers()) {
      int[] pieces = pieces(layer.layer());
      int[] yarns = yarns(layer.layer());
      compare(weights(pieces, 1, 0, 0), yarns, layer.joins().get(Nearness.SEAM));
      compare(weights(pieces, 0, 1, 0), yarns, layer.joins().get(Nearness.TOUCH));
      compare(weights(pieces, 0, 0, 1), yarns, layer.joins().get(Nearness.NEAR));
      compare(weights(pieces, 4, 2, 1), yarns, layer.repeats());
    }
  }

  @Test
  void moransIAgrees() {
    for (LayerCard layer : card.layers()) {
      double[][] w = weights(pieces(layer.layer()), 1, 0, 0);
      int[] yarns = yarns(layer.layer());
      double[] x = new double[yarns.length];
      double mean = 0;
      for (int i = 0; i < x.length; i++) {
        x[i] = LabColours.of(blanket.brief().yarns().get(yarns[i]).colour()).lightness();
        mean += x[i] / x.length;
      }
      double cross = 0;
      double m2 = 0;
      double m4 = 0;
      for (int i = 0; i < x.length; i++) {
        for (int j = 0; j < x.length; j++) {
          cross += w[i][j] * (x[i] - mean) * (x[j] - mean);
        }
        m2 += Math.pow(x[i] - mean, 2) / x.length;
        m4 += Math.pow(x[i] - mean, 4) / x.length;
      }
      double n = x.length;
      double[] s = sums(w);
      double kurtosis = m4 / (m2 * m2);
      double second =
          (n * ((n * n - 3 * n + 3) * s[1] - n * s[2] + 3 * s[0] * s[0])
                  - kurtosis * ((n * n - n) * s[1] - 2 * n * s[2] + 6 * s[0] * s[0]))
              / (falling(n - 1, 3) * s[0] * s[0]);
      assertEquals(cross / (s[0] * m2), layer.lightness().observed(), EXACT);
      assertEquals(-1 / (n - 1), layer.lightness().expected(), EXACT);
      assertEquals(second - 1 / ((n - 1) * (n - 1)), layer.lightness().variance(), EXACT);
    }
  }

  @Test
  void closestSeamAgrees() {
    double[][] w = weights(pieces(0), 1, 0, 0);
    int[] yarns = yarns(0);
    double least = Double.MAX_VALUE;
    for (int i = 0; i < w.length; i++) {
      for (int j = 0; j < w.length; j++) {
        if (w[i][j] == 1) {
          least =
              Math.min(
                  least,
                  ColourDifference.ciede2000(
                      LabColours.of(blanket.yarn(yarns[i]).colour()),
                      LabColours.of(blanket.yarn(yarns[j]).colour())));
        }
      }
    }
    assertEquals(least, card.closest().orElseThrow().difference(), EXACT);
    assertTrue(least >= blanket.brief().rules().minContrast());
  }

  /** A shuffle's border seams by hand: every ordered pair of pieces, as likely as any other. */
  @Test
  void shuffledContrastAgrees() {
    double seams = 0;
    int[] borders = yarns(0);
    for (int i = 0; i < borders.length; i++) {
      for (int j = 0; j < borders.length; j++) {
        seams += i == j ? 0 : Math.min(1, blanket.yarns().difference(borders[i], borders[j]) / 40);
      }
    }
    seams /= (double) borders.length * (borders.length - 1);
    double steps = 0;
    double count = 0;
    for (int layer = 0; layer + 1 < card.layers().size(); layer++) {
      int[] outer = yarns(layer);
      int[] inner = yarns(layer + 1);
      double sum = 0;
      for (int a : outer) {
        for (int b : inner) {
          sum += Math.min(1, blanket.yarns().difference(a, b) / 40);
        }
      }
      steps += sum / outer.length;
      count += inner.length;
    }
    double wanted = 100 * (seams + steps / count) / 2;
    assertEquals(wanted, card.chance().get(Part.CONTRAST).mean(), EXACT);
  }
}
