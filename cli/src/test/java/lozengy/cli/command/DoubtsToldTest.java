package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values that are hardly meant are asked about, with place, value and question; never refused. */
class DoubtsToldTest {

  @TempDir Path folder;

  @Test
  void aSlippedDecimalPointIsAskedAboutWhereverTheBriefIsRead() {
    String text = Briefs.text(Briefs.write(folder));
    String amount = text.replaceFirst("(?s).*?metres: ([0-9.]+).*", "$1");
    String brief =
        Briefs.write(folder, "b.yaml", text.replaceFirst("metres: " + amount, "metres: 93"));
    String asked = "Round 1 of each square takes 93.00 m, ";
    String to = folder.resolve("b.json").toString();
    Result solved = Run.of("solve", brief, "--moves", Briefs.MOVES, "-o", to, "--json");
    assertTrue(solved.err().contains("b.yaml, line "), solved.err());
    assertTrue(solved.err().contains(", motifs.square.rounds[0]: " + asked), solved.err());
    for (String command : new String[] {"need", "explain"}) {
      Result result = Run.of(command, brief, "--json");
      assertTrue(result.err().contains(asked), result.err());
      assertDoubt(Parsed.of(result), "amount-far-off", asked);
    }
    assertDoubt(Parsed.of(solved), "amount-far-off", asked);
  }

  @Test
  void aCheckWarnsAndAMarkAsksOfACountAboveWhatWasBought() {
    String file = Briefs.solved(folder);
    assertEquals("", Run.of("check", file).err());
    Result mark = Run.of("mark", file, "--left", "NAV=400g", "--edged", "40 %");
    assertEquals(0, mark.code(), mark.err());
    String asked =
        "Navy (NAV): 960.00 m were counted, and 120.00 m were bought. Is the count right";
    assertTrue(mark.out().contains("yarns[0].counted.left: " + asked), mark.out());
    Result check = Run.of("check", file);
    assertTrue(check.out().contains("warning: yarns[0].counted.left: " + asked), check.out());
    assertDoubt(Parsed.of(Run.of("check", file, "--json")), "count-above-bought", asked);
    assertDoubt(
        Parsed.of(Run.of("mark", file, "--left", "NAV=401g", "--json")),
        "count-above-bought",
        "Navy (NAV): ");
    Result right = Run.of("mark", file, "--left", "NAV=50g");
    assertTrue(!right.out().contains("Is the count right"), right.out());
  }

  private static void assertDoubt(Parsed told, String code, String words) {
    assertEquals(1, told.size("doubts"));
    assertEquals(code, told.at("doubts[0].code"));
    assertTrue(told.at("doubts[0].words").startsWith(words), told.at("doubts[0].words"));
  }
}
