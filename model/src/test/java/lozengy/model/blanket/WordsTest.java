package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

class WordsTest {

  private final Blanket blanket =
      BlanketBuilder.straight(3, 1)
          .yarn("REE", "Reed", "#b9b57a")
          .yarn("MUD", "MUD", "#2c2a29")
          .motif(PieceKind.SQUARE, 3)
          .build();

  @Test
  void yarnsPiecesAndRounds() {
    assertEquals("Reed (REE)", Words.yarn(blanket, 0));
    assertEquals("MUD", Words.yarn(blanket, 1));
    assertEquals("r1c2", Words.piece(blanket, 1));
    assertEquals("r1c1 and r1c3", Words.pieces(blanket, List.of(0, 2)));
    assertEquals("round 1", Words.round(blanket, 0, 0));
    assertEquals("round 2", Words.round(blanket, 0, 1));
    assertEquals("the border", Words.round(blanket, 0, 2));
    assertEquals("round 2", Words.rounds(List.of(1)));
    assertEquals("rounds 2, 3 and 5", Words.rounds(List.of(1, 2, 4)));
  }

  @Test
  void aLongListEndsInACount() {
    assertEquals("0", Words.list(items(1)));
    assertEquals("0 and 1", Words.list(items(2)));
    assertEquals("0, 1, 2, 3, 4, 5, 6 and 7", Words.list(items(8)));
    assertEquals("0, 1, 2, 3, 4, 5, 6, 7 and 1 more", Words.list(items(9)));
    assertEquals("0, 1, 2, 3, 4, 5, 6, 7 and 12 more", Words.list(items(20)));
  }

  private static List<String> items(int count) {
    return IntStream.range(0, count).mapToObj(Integer::toString).toList();
  }

  @Test
  void lengthsAndNumbers() {
    assertEquals("1.20 m", Words.metres(1200));
    assertEquals("1.234 m", Words.metres(1234));
    assertEquals("-0.05 m", Words.metres(-50));
    assertEquals("5", Words.number(5));
    assertEquals("2.5", Words.number(2.5));
    assertEquals("100", Words.number(100));
    assertEquals("4.9 (CIEDE2000)", Words.difference(4.99));
    assertEquals("0.0 (CIEDE2000)", Words.difference(0));
  }
}
