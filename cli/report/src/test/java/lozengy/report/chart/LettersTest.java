package lozengy.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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
  void comeFromTheCodeThenTheNameThenTheRest() {
    YarnLetters letters =
        YarnLetters.of(
            blanket(
                List.of(
                    Samples.yarn("mud", "Tidal mud", "#2c2a29"),
                    Samples.yarn("MUS", "Mussel shell", "#4a4060"),
                    Samples.yarn("SUM", "Foam", "#f2efe6"),
                    Samples.yarn("MUM", "\u6d77", "#abcdef"),
                    Samples.yarn("\u6d77", "MUSF", "#012345"))));
    assertEquals(
        List.of("M", "U", "S", "A", "F"),
        List.of(0, 1, 2, 3, 4).stream().map(letters::of).toList());
    assertEquals(1, letters.longest());
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
    assertEquals(2, letters.longest());
  }

  @ParameterizedTest
  @MethodSource("lozengy.report.chart.DrawingTest#sizes")
  void standWithinTheirRoundsAndClearOfNames(LayoutSize size) {
    Arrangement arrangement =
        Samples.filled(Samples.brief("Letters", size, Samples.yarns(), List.of()), 5);
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    LetterPlaces places = new LetterPlaces(100, 1);
    Labels labels = new Labels(2, 2);
    for (PieceDrawing piece : drawing.pieces()) {
      List<Box> boxes = places.boxes(piece);
      for (int round = 0; round < boxes.size(); round++) {
        Label letter = places.letter(piece, round, "A");
        assertEquals(letter.centre(), boxes.get(round).centre());
        assertTrue(letter.sizeCm() * Label.CAP_HEIGHT > 0.5 * piece.bandCm(), "large enough");
        assertTrue(boxes.get(round).within(piece.rounds().get(round)), piece.place().name());
        for (int inner = 0; inner < round; inner++) {
          assertTrue(boxes.get(round).clearOf(piece.rounds().get(inner)), piece.place().name());
        }
      }
      for (Label line : labels.name(piece, boxes)) {
        double width = TextWidth.ems(line.text()) * line.sizeCm();
        Box box = new Box(line.centre(), width, Label.CAP_HEIGHT * line.sizeCm());
        assertTrue(box.within(piece.outline()), line.text());
        assertTrue(boxes.stream().allMatch(box::clearOf), line.text());
      }
    }
  }
}
