package lozengy.model.input;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {

  private static Optional<String> near(String word, String... candidates) {
    return Nearest.to(word, List.of(candidates));
  }

  @Test
  void slipsOfTheHandAreNear() {
    assertEquals(Optional.of("light"), near("lihgt", "dark", "mid", "light"));
    assertEquals(Optional.of("metres"), near("meters", "yards", "metres"));
    assertEquals(Optional.of("keep-back"), near("keepback", "copies", "keep-back"));
    assertEquals(Optional.of("keep-back"), near("keep_back", "copies", "keep-back"));
    assertEquals(Optional.of("MUD"), near("mud", "REE", "MUD"));
    assertEquals(Optional.of("MUD"), near("MUT", "REE", "MUD"));
  }

  @Test
  void otherWordsAreNot() {
    assertEquals(Optional.empty(), near("XYZ", "REE", "MUD"));
    assertEquals(Optional.empty(), near("A", "B"));
    assertEquals(Optional.empty(), near("", "B"));
    assertEquals(Optional.empty(), near("colour"));
  }

  @Test
  void tiesGoToTheEarlier() {
    assertEquals(Optional.of("MUD"), near("MUX", "MUD", "MUL"));
    assertEquals(Optional.of("MUL"), near("MUX", "MUL", "MUD"));
  }
}
