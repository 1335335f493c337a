package lozengy.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.LayoutSize;
import lozengy.report.Samples;
import lozengy.report.TextWidth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LettersTest {

  private static Blanket blanket(List<Yarn> yarns) {
    return Blanket.ofUnjudged(Samples.brief("Letters", Samples.onPoint(2, 2), yarns, List.of()));
  }

  @Test
  void rememberTheirYarnsAndGiveUpTogetherAsLittleAsCanBe() {
    YarnLetters letters =
        YarnLetters.of(
            blanket(
                List.of(
                    Samples.yarn("mud", "Tidal mud", "#2c2a29"),
                    Samples.yarn("MNT", "Mint", "#a5d6b8"),
                    Samples.yarn("SEA", "Sea mist", "#f2efe6"),
                    Samples.yarn("SAN", "Sand", "#abcdef"),
                    Samples.yarn("Y5", "\u6d77", "#012345"),
                    Samples.yarn("TEA", "Tea rose", "#d77f92"))));
    // Mint has the M though mud comes first: mud is also tidal. Of two that want T, the first has
    // it, and tea is also a rose.
    assertEquals(List.of("T", "M", "S", "A", "Y", "R"), letters.all());
  }

  /** The assignment against all ways to give out letters, on few yarns that want the same. */
  @Test
  void noOtherAssignmentOfTheirOwnLettersIsBetter() {
    List<Yarn> yarns =
        List.of(
            Samples.yarn("AB", "Ba", "#2c2a29"),
            Samples.yarn("BA", "Ab", "#a5d6b8"),
            Samples.yarn("AC", "A c", "#f2efe6"));
    // B and A begin the names of the first two; what begins another word is left for the third
    assertEquals(List.of("B", "A", "C"), YarnLetters.of(blanket(yarns)).all());
  }

  @Test
  void areAllDifferentForAsManyYarnsAsABriefMayHave() {
    List<Yarn> yarns = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      yarns.add(Samples.yarn("Y" + i, "Yarn", "#808080"));
    }
    YarnLetters letters = YarnLetters.of(blanket(yarns));
    Set<String> all = new HashSet<>();
    for (int yarn = 0; yarn < yarns.size(); yarn++) {
      assertEquals(yarn < 34 ? 1 : 2, letters.of(yarn).length(), letters.of(yarn));
      assertTrue(all.add(letters.of(yarn)), letters.of(yarn));
    }
  }

  @ParameterizedTest
  @MethodSource("lozengy.report.chart.DrawingTest#sizes")
  void standWithinTheirRoundsAndClearOfNames(LayoutSize size) {
    Arrangement arrangement =
        Samples.filled(Samples.brief("Letters", size, Samples.yarns(), List.of()), 5);
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    double seam = drawing.trim().seamCm();
    LetterPlaces places = new LetterPlaces(100, List.of("M", "W"), seam);
    Labels labels = new Labels(2, 2);
    for (PieceDrawing piece : drawing.pieces()) {
      List<Box> boxes = places.boxes(piece);
      for (int round = 0; round < boxes.size(); round++) {
        Label letter = places.letter(piece, round, "A");
        assertEquals(letter.centre(), boxes.get(round).centre());
        assertTrue(letter.sizeCm() * Label.CAP_HEIGHT > 0.4 * piece.bandCm(), "large enough");
        assertTrue(boxes.get(round).within(piece.rounds().get(round)), piece.place().name());
        // the widest letter lies clear of the seam, which is half on the border
        Polygon free = piece.outline().scaled(piece.centre(), 1 - seam / 2 / inradius(piece));
        assertTrue(boxes.get(round).within(free), piece.place().name());
        assertTrue(boxes.get(round).width() >= 0.95 * letter.sizeCm(), "room for the widest");
        for (int inner = 0; inner < round; inner++) {
          assertTrue(boxes.get(round).clearOf(piece.rounds().get(inner)), piece.place().name());
        }
      }
      labels
          .nameOnBorder(piece, boxes, seam, 0.1)
          .ifPresent(name -> assertWithinBorder(piece, name, boxes, seam));
      for (Label line : labels.name(piece, boxes)) {
        double width = TextWidth.ems(line.text()) * line.sizeCm();
        Box box = new Box(line.centre(), width, Label.CAP_HEIGHT * line.sizeCm());
        assertTrue(box.within(piece.outline()), line.text());
        assertTrue(boxes.stream().allMatch(box::clearOf), line.text());
      }
    }
  }

  @Test
  void findRoomAlsoWhereBandsAreNarrowerThanSeams() {
    Arrangement thick =
        Samples.filled(
            Samples.brief("Thick", Samples.straight(2, 3), 50, Samples.yarns(), List.of()), 4);
    Drawing drawing = Drawing.of(thick.blanket(), thick.sequences());
    PieceDrawing piece = drawing.pieces().get(0);
    assertTrue(drawing.trim().seamCm() > 2 * piece.bandCm());
    LetterPlaces places = new LetterPlaces(100, List.of("M"), drawing.trim().seamCm());
    List<Box> boxes = places.boxes(piece);
    assertEquals(50, boxes.size());
    assertTrue(boxes.get(49).within(piece.rounds().get(49)));
    assertTrue(boxes.get(49).clearOf(piece.rounds().get(48)));
    assertTrue(places.sizeCm(piece) > 0.1 * piece.bandCm());
  }

  private static double inradius(PieceDrawing piece) {
    return piece.outline().inradiusCm();
  }

  /** By points along the text: all in the border's band, off the seam, and off the letters. */
  private static void assertWithinBorder(
      PieceDrawing piece, Label name, List<Box> boxes, double seam) {
    Polygon free = piece.outline().scaled(piece.centre(), 1 - seam / 2 / inradius(piece));
    Polygon inner = piece.rounds().get(piece.rounds().size() - 2);
    double turn = Math.toRadians(name.degrees());
    double width = TextWidth.ems(name.text()) * name.sizeCm();
    double high = Label.CAP_HEIGHT * name.sizeCm();
    for (int i = 0; i <= 40; i++) {
      for (double up : new double[] {-0.5, 0, 0.5}) {
        double along = (i / 40.0 - 0.5) * width;
        Point at =
            new Point(
                name.centre().x() + along * Math.cos(turn) - up * high * Math.sin(turn),
                name.centre().y() + along * Math.sin(turn) + up * high * Math.cos(turn));
        assertTrue(free.contains(at), name + " lies on a seam");
        assertTrue(!inner.contains(at), name + " covers an inner round");
        Box speck = new Box(at, 1e-6, 1e-6);
        assertTrue(boxes.stream().allMatch(speck::clearOf), name + " covers a letter");
      }
    }
  }

  /** Any number of rounds, any size, any letters: each in its band and off the seam. */
  @Test
  void standWithinTheirRoundsOnRandomLayouts() {
    Random random = new Random(11);
    for (int run = 0; run < 25; run++) {
      boolean onPoint = random.nextBoolean();
      int across = 1 + random.nextInt(4);
      int down = 1 + random.nextInt(4);
      LayoutSize size = onPoint ? Samples.onPoint(across, down) : Samples.straight(across, down);
      int rounds = 2 + random.nextInt(7);
      Arrangement arrangement =
          Samples.filled(Samples.brief("Random", size, rounds, Samples.yarns(), List.of()), run);
      Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
      double seam = drawing.trim().seamCm();
      LetterPlaces places =
          new LetterPlaces(0.2 + random.nextDouble() * 3, List.of("A", "W"), seam);
      for (PieceDrawing piece : drawing.pieces()) {
        List<Box> boxes = places.boxes(piece);
        for (int round = 0; round < boxes.size(); round++) {
          String where = "run " + run + ", " + piece.place().name() + ", round " + (round + 1);
          assertTrue(boxes.get(round).within(piece.withoutSeam(round, seam)), where);
          if (round > 0) {
            assertTrue(boxes.get(round).clearOf(piece.rounds().get(round - 1)), where);
          }
        }
      }
    }
  }
}
