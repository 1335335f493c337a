package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import lozengy.report.Colours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ColoursTest {

  @TempDir Path folder;

  @Test
  void surroundingsDecide() {
    Map<String, String> full = Map.of("COLORTERM", "truecolor", "TERM", "xterm-256color");
    assertEquals(Colours.ALL, Colours.of(true, full));
    assertEquals(Colours.NONE, Colours.of(false, full), "piped");
    assertEquals(Colours.PALETTE, Colours.of(true, Map.of("TERM", "screen-256color")));
    assertEquals(Colours.NONE, Colours.of(true, Map.of("TERM", "vt100")));
    assertEquals(Colours.NONE, Colours.of(true, Map.of()));
    assertEquals(Colours.NONE, Colours.of(true, Map.of("TERM", "dumb", "COLORTERM", "truecolor")));
    assertEquals(Colours.NONE, Colours.of(true, Map.of("NO_COLOR", "1", "COLORTERM", "truecolor")));
    assertEquals(
        Colours.ALL,
        Colours.of(true, Map.of("NO_COLOR", "", "COLORTERM", "truecolor")),
        "an empty NO_COLOR does not count");
  }

  @Test
  void reportShowsAPictureOnlyWhereColoursAreShown() {
    String file = Briefs.solve(folder);
    String plain = Run.of("report", file).out();
    assertFalse(plain.contains("\u001b"));
    String shown = new Run().withColours(Colours.ALL).run("report", file).out();
    assertTrue(shown.contains("\u001b[0;38;2;"));
    assertTrue(shown.contains("\u2588\u2588\u001b[0m "), "a swatch in the table of yarns");
    String end = plain.substring(plain.strip().lastIndexOf("\n\n"));
    assertTrue(shown.endsWith(end), "the summary is the same");
    String written = folder.resolve("summary.txt").toString();
    new Run().withColours(Colours.ALL).run("report", file, "-o", written);
    assertEquals(plain, Briefs.text(written));
    assertFalse(
        new Run()
            .withColours(Colours.ALL)
            .run("report", file, "--as", "svg", "-o", "-")
            .out()
            .contains("\u001b"));
  }

  @Test
  void aTerminalGetsNoBytesAndHelpThatFits() {
    String file = Briefs.solve(folder);
    for (String form : new String[] {"png", "pdf", "sheets", "tables"}) {
      Run.Result shown = new Run().withColumns(80).run("report", file, "--as", form, "-o", "-");
      assertEquals(2, shown.code());
      assertEquals("", shown.out());
      assertTrue(shown.err().contains("would be bytes on a terminal"), shown.err());
    }
    assertEquals(0, Run.of("report", file, "--as", "png", "-o", "-").code());
    assertEquals(0, new Run().withColumns(80).run("report", file, "--as", "svg", "-o", "-").code());
    String help = new Run().withColumns(60).run("pack", "--help").out();
    assertTrue(help.contains("50 % if not said"), help);
    int widest = help.lines().mapToInt(String::length).max().orElseThrow();
    assertTrue(widest <= 60, widest + " columns");
  }
}
