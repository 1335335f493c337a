package lozengy.model.input;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import lozengy.model.arrangement.ArrangementArbitraries;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Documents;
import lozengy.model.brief.BriefArbitraries;
import lozengy.model.brief.BriefWriter;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Whatever is done to a file: it is read, or its mistakes are told, and nothing else happens. */
class DamagedInputTest {

  private static final String PIECES = "{}[]:,\"'#&*!|>%@~- \n\t\\0129eE.+xnul\u0000\u0007é✿\uFEFF";

  @Provide
  Arbitrary<String> damaged() {
    Arbitrary<String> briefs = BriefArbitraries.briefs().map(BriefWriter::text);
    Arbitrary<String> arrangements =
        ArrangementArbitraries.arrangements().map(ArrangementWriter::text);
    return Combinators.combine(Arbitraries.oneOf(briefs, arrangements), Arbitraries.randoms())
        .as(DamagedInputTest::damage)
        .withoutEdgeCases();
  }

  private static String damage(String text, Random random) {
    StringBuilder damaged = new StringBuilder(text);
    for (int i = random.nextInt(6); i >= 0; i--) {
      int at = random.nextInt(damaged.length());
      char piece = PIECES.charAt(random.nextInt(PIECES.length()));
      switch (random.nextInt(4)) {
        case 0 -> damaged.insert(at, piece);
        case 1 -> damaged.setCharAt(at, piece);
        case 2 -> damaged.delete(at, Math.min(damaged.length() - 1, at + 1 + random.nextInt(30)));
        default -> {
          int from = random.nextInt(damaged.length());
          int to = Math.min(damaged.length(), from + random.nextInt(60));
          damaged.insert(at, damaged.substring(from, to));
        }
      }
    }
    return damaged.toString();
  }

  @Test
  void namesOfFieldsCannotCommandATerminal() {
    for (String text : List.of("\"a\\u001b[2Jb\": 1", "{\"a\\u001b[2Jb\": 1}")) {
      InputException thrown =
          assertThrows(InputException.class, () -> Documents.read(SourceText.of("a", text)));
      assertTrue(thrown.getMessage().contains("a\\u001b[2Jb: The field \"a\\u001b[2Jb\" is not"));
      assertFalse(thrown.getMessage().contains("\u001b"));
    }
  }

  @Property(tries = 200, seed = "1")
  void damageIsTold(@ForAll("damaged") String text, @ForAll boolean json) {
    try {
      Documents.read(new SourceText("damaged", text, json));
    } catch (InputException e) {
      assertFalse(e.mistakes().isEmpty());
      for (Mistake mistake : e.mistakes()) {
        assertFalse(mistake.found().isBlank() || mistake.remedy().isBlank(), mistake.toString());
        assertTrue(mistake.words().chars().noneMatch(Character::isISOControl), mistake.words());
      }
    }
  }
}
