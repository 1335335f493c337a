package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SizesCommandTest {

  @TempDir Path folder;

  /** A brief of which nothing is at hand; squares of 10 cm on point, so a step of 14.14 cm. */
  private String brief() {
    return Briefs.write(
        folder,
        "bare.yaml",
        Run.of("new", "--across", "2", "--down", "2").out().replaceAll("balls: [0-9.]+, ", ""));
  }

  @Test
  void sizeIsWhatANeedOfItsBriefIs() {
    String brief = brief();
    Parsed sizes = Parsed.of(Run.of("sizes", brief, "two=2x2", "far=about 30 x 55cm", "--json"));
    Parsed need = Parsed.of(Run.of("need", brief, "--json"));
    assertEquals(2, sizes.number("sizes[0].across"));
    // 5 squares, 4 side triangles, 4 corners
    assertEquals(13, sizes.number("sizes[0].pieces"));
    assertEquals(28.284, sizes.number("sizes[0].width_cm"));
    double sum = 0;
    for (int yarn = 0; yarn < need.size("shades"); yarn++) {
      String at = "[" + yarn + "].";
      assertEquals(
          need.number("shades" + at + "needed_m"),
          sizes.number("sizes[0].yarns" + at + "needed_m"));
      sum += sizes.number("sizes[0].yarns" + at + "balls");
    }
    assertEquals(sum, sizes.number("sizes[0].balls"));
    assertEquals(4, sizes.number("sizes[1].down"));
    assertEquals(56.569, sizes.number("sizes[1].height_cm"));
  }

  @Test
  void csvHasARowForEachSizeThatSaysWhatJsonSays() {
    String brief = brief();
    Parsed sizes = Parsed.of(Run.of("sizes", brief, "two=2x2", "three=3x2", "--json"));
    String[] rows = Run.of("sizes", brief, "two=2x2", "three=3x2", "--csv").out().split("\r\n");
    assertEquals(3, rows.length);
    assertEquals(
        "size,across,down,squares,pieces,width_cm,height_cm,needed_m,needed_g,balls,price,currency,"
            + "minutes",
        rows[0]);
    String[] three = rows[2].split(",", -1);
    assertEquals("three", three[0]);
    assertEquals(sizes.number("sizes[1].pieces"), Double.parseDouble(three[4]));
    assertEquals(sizes.number("sizes[1].needed_m"), Double.parseDouble(three[7]));
    assertEquals(sizes.number("sizes[1].balls"), Double.parseDouble(three[9]));
    assertEquals(2, Run.of("sizes", brief, "two=2x2", "--csv", "--json").code());
  }

  @Test
  void usualSizesAreToldWhereNoneIsNamed() {
    String told = Run.of("sizes", brief()).out();
    for (String name : new String[] {"cushion", "lap", "throw", "bed"}) {
      assertTrue(told.contains("\n" + name), told);
    }
    assertTrue(told.contains("14 x 16"), told);
  }

  @Test
  void briefsOfSizesCanBeSolved() {
    String to = folder.resolve("sizes").toString();
    Result written = Run.of("sizes", brief(), "small=2x2", "wide=3x2", "--briefs", to);
    assertEquals(0, written.code(), written.err());
    for (String name : new String[] {"small", "wide"}) {
      String answer = folder.resolve(name + ".arrangement.json").toString();
      Result solved =
          Run.of("solve", to + "/" + name + ".json", "-o", answer, "--moves", Briefs.MOVES);
      assertEquals(0, solved.code(), solved.out() + solved.err());
      assertEquals(0, Run.of("check", answer).code());
    }
    Result again = Run.of("sizes", brief(), "small=2x2", "--briefs", to);
    assertEquals(2, again.code());
    assertTrue(again.err().contains("--overwrite"), again.err());
  }

  @Test
  void whatIsNoSizeIsRefusedWhole() {
    String to = folder.resolve("none").toString();
    Result wrong =
        Run.of("sizes", brief(), "a=2x2", "a=3x3", "tiny=5x5cm", "b=2by3", "c=0x4", "--briefs", to);
    assertEquals(2, wrong.code());
    String[] lines = wrong.err().strip().split("\n");
    assertEquals(4, lines.length, wrong.err());
    assertTrue(lines[0].contains("Two sizes are called 'a'"), wrong.err());
    assertTrue(lines[1].contains("the nearest has 1 x 1 and measures 14.1 x 14.1 cm"), wrong.err());
    assertFalse(Files.exists(Path.of(to)));
  }
}
