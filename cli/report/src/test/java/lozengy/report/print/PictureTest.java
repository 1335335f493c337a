package lozengy.report.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import lozengy.model.arrangement.Arrangement;
import lozengy.report.Samples;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.chart.ChartPage;
import lozengy.report.chart.Drawing;
import lozengy.report.chart.PieceDrawing;
import lozengy.report.chart.Point;
import org.junit.jupiter.api.Test;

class PictureTest {

  private static final ChartOptions BARE =
      new ChartOptions(false, ChartOptions.Signs.NONE, OptionalInt.empty())
          .withLook(ChartOptions.Look.FLAT);

  private static final int WIDTH = 1500;

  /** Fresh: what is planned while other pieces are worked lies under a veil. */
  private final Arrangement arrangement =
      Samples.filled(Samples.brief("Fresh", Samples.onPoint(6, 8), Samples.yarns(), List.of()), 1);

  private static BufferedImage read(byte[] png) throws Exception {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  @Test
  void everyRoundHasItsYarnsColour() throws Exception {
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    ChartPage page = ChartPage.bare(drawing, 180, 240);
    BufferedImage image = read(Picture.png(Chart.bare(arrangement, BARE, page), WIDTH));
    double dotsPerMm = WIDTH / page.width();
    int seen = 0;
    for (PieceDrawing piece : drawing.pieces()) {
      for (int round = 0; round < piece.rounds().size(); round++) {
        // The middle of the band along a side, clear of lines and marks.
        Point from = piece.rounds().get(round).corners().get(0);
        Point to = piece.rounds().get(round).corners().get(1);
        double part = (round + 0.45) / (round + 1);
        double x = piece.centre().x() + ((from.x() + to.x()) / 2 - piece.centre().x()) * part;
        double y = piece.centre().y() + ((from.y() + to.y()) / 2 - piece.centre().y()) * part;
        int atX = (int) ((page.left() + x * 10 / page.scale()) * dotsPerMm);
        int atY = (int) ((page.top() + y * 10 / page.scale()) * dotsPerMm);
        String colour = String.format(Locale.ROOT, "#%06x", image.getRGB(atX, atY) & 0xffffff);
        assertEquals(
            arrangement.blanket().yarn(piece.yarns().get(round)).colour().hex(),
            colour,
            piece.place().name() + " round " + round);
        seen++;
      }
    }
    assertEquals(83 * 5 + 24 * 4 + 4 * 3, seen);
  }

  @Test
  void thousandsOfRoundsAreDrawn() throws Exception {
    Arrangement large =
        Samples.filled(
            Samples.brief("Large", Samples.straight(30, 20), Samples.yarns(), List.of()), 3);
    BufferedImage image = read(Picture.png(Chart.svg(large, ChartOptions.PLAIN), 300));
    assertEquals(300, image.getWidth());
  }

  @Test
  void chartHasTheWidthThatWasAskedFor() throws Exception {
    BufferedImage image = read(Picture.png(Chart.svg(arrangement, ChartOptions.PLAIN), 640));
    assertEquals(640, image.getWidth());
    assertEquals(0xffffff, image.getRGB(1, 1) & 0xffffff);
  }
}
