package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import lozengy.model.blanket.Blanket;
import lozengy.model.reading.BriefReader;
import lozengy.solver.search.MemoryNeed;
import org.junit.jupiter.api.Test;

/** That a blanket which Java has no room for is refused before anything is done. */
class TooLargeExceptionTest {

  private static Blanket demo() {
    return Blanket.of(BriefReader.read(Path.of("..", "examples", "saltmarsh-throw.yaml")));
  }

  @Test
  void aByteTooFewIsRefusedAndToldOf() {
    Blanket blanket = demo();
    long needed = MemoryNeed.bytes(blanket, 2);
    assertDoesNotThrow(() -> TooLargeException.requireRoom(blanket, 2, needed));
    TooLargeException refusal =
        assertThrows(
            TooLargeException.class, () -> TooLargeException.requireRoom(blanket, 2, needed - 1));
    assertEquals(needed, refusal.neededBytes());
    assertEquals(needed - 1, refusal.availableBytes());
    assertEquals(blanket.index().count(), refusal.rounds());
    assertEquals(blanket.yarnCount(), refusal.yarns());
  }

  @Test
  void aThrowNeedsLittle() {
    assertTrue(MemoryNeed.bytes(demo(), 2) < 2_000_000);
  }
}
