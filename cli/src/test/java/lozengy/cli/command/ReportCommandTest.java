package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import lozengy.cli.Briefs;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {

  @TempDir Path folder;
  private String file;

  @BeforeEach
  void solve() {
    file = Briefs.solve(folder);
  }

  @Test
  void summaryIsPrintedOrWritten() {
    Result printed = Run.of("report", file);
    assertEquals(0, printed.code());
    assertTrue(printed.out().contains("Score "), printed.out());
    String summary = folder.resolve("summary.txt").toString();
    Result written = Run.of("report", file, "-o", summary);
    assertEquals("Wrote " + summary + "\n", written.out());
    assertEquals(printed.out(), Briefs.text(summary));
  }

  @Test
  void chartIsTheOneThatSolvingDrew() {
    Result chart = Run.of("report", file, "--as", "svg", "-o", "-");
    assertEquals(0, chart.code());
    assertEquals(Briefs.text(folder.resolve("small.svg").toString()), chart.out());
  }

  @Test
  void chartGoesBesideTheArrangementAndOverwritesNothing() throws Exception {
    assertEquals(2, Run.of("report", file, "--as", "svg").code());
    Path moved = folder.resolve("elsewhere");
    Files.createDirectory(moved);
    Files.copy(Path.of(file), moved.resolve("plan.arrangement.json"));
    Result result =
        Run.of("report", moved.resolve("plan.arrangement.json").toString(), "--as", "SVG");
    assertEquals(0, result.code(), result.err());
    assertEquals("Wrote " + moved.resolve("plan.svg") + "\n", result.out());
    assertTrue(Files.exists(moved.resolve("plan.svg")));
  }

  @Test
  void jsonAndAPageDoNotShareStandardOutput() {
    byte[] bytes = Briefs.text(file).getBytes(StandardCharsets.UTF_8);
    for (String form : List.of("svg", "png", "pdf", "html", "graphml", "tables")) {
      Result piped = new Run().input(bytes).run("report", "-", "--as", form, "--json");
      assertEquals(2, piped.code(), form);
      assertTrue(piped.out().startsWith("{"), form);
      assertTrue(piped.err().contains("--json: Standard output cannot take both"), piped.err());
      assertEquals(2, Run.of("report", file, "--as", form, "--json", "-o", "-").code(), form);
    }
    Result card = new Run().input(bytes).run("report", "-", "--as", "card", "--json");
    assertEquals(0, card.code(), card.err());
  }

  @Test
  void namesAndCodesAreDrawnOnRequest() {
    String plain = Run.of("report", file, "--as", "svg", "-o", "-").out();
    String names = Run.of("report", file, "--as", "svg", "-o", "-", "--names").out();
    String codes = Run.of("report", file, "--as", "svg", "-o", "-", "--codes").out();
    assertFalse(plain.contains(">r2c1<"));
    assertTrue(names.contains(">r2c1<"));
    assertNotEquals(names, codes);
    assertNotEquals(plain, codes);
  }

  @Test
  void standardInputGoesToStandardOutput() {
    byte[] bytes = Briefs.text(file).getBytes(StandardCharsets.UTF_8);
    Result result = new Run().input(bytes).run("report", "-", "--as", "svg");
    assertEquals(0, result.code());
    assertEquals(Briefs.text(folder.resolve("small.svg").toString()), result.out());
  }

  @Test
  void openRoundsAreRefused() {
    String open =
        Briefs.write(
            folder,
            "open.json",
            Briefs.text(file).replaceFirst("(\"rounds\": ?\\[)\"[A-Z]+\"", "$1null"));
    for (String command : new String[] {"report", "compare"}) {
      Result result = Run.of(command, open);
      assertEquals(2, result.code());
      assertTrue(result.err().contains("Some rounds have no yarn yet"), result.err());
      assertTrue(result.err().contains("'lozengy explain' tells why"), result.err());
    }
  }

  @Test
  void unknownFormNamesTheKnownOnes() {
    Result result = Run.of("report", file, "--as", "gif");
    assertEquals(2, result.code());
    assertTrue(result.err().contains("'gif' is none of svg, png, pdf, sheets, html"), result.err());
  }

  @Test
  void everyFormIsWrittenBesideTheArrangement() throws Exception {
    for (String form : List.of("png", "pdf", "html", "graphml")) {
      Result result = Run.of("report", file, "--as", form);
      assertEquals(0, result.code(), result.err());
      assertTrue(Files.size(folder.resolve("small." + form)) > 1000, form);
    }
    Result tables = Run.of("report", file, "--as", "tables");
    assertEquals("Wrote " + folder.resolve("small-tables") + "\n", tables.out());
    try (Stream<Path> files = Files.list(folder.resolve("small-tables"))) {
      assertEquals(10, files.count());
    }
    assertEquals(2, Run.of("report", file, "--as", "tables").code(), "nothing is overwritten");
    assertEquals(0, Run.of("report", file, "--as", "tables", "--overwrite").code());
  }

  @Test
  void tablesToStandardOutputAreOneArchive() throws Exception {
    Result result = Run.of("report", file, "--as", "tables", "-o", "-");
    List<String> names = new ArrayList<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(result.bytes()))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        names.add(entry.getName());
      }
    }
    assertEquals(
        List.of(
            "datapackage.json",
            "pieces.csv",
            "rounds.csv",
            "seams.csv",
            "yarns.csv",
            "make-list.csv",
            "strips.csv",
            "pile.csv",
            "pile-out.csv",
            "progress.csv"),
        names);
    assertArrayEquals(result.bytes(), Run.of("report", file, "--as", "tables", "-o", "-").bytes());
  }

  @Test
  void tablesNeedAFolder() {
    assertEquals(2, Run.of("report", file, "--as", "tables", "-o", file).code());
    Result missing = Run.of("report", file, "--as", "tables", "-o", folder + "/no/such");
    assertEquals(2, missing.code());
    assertTrue(missing.err().contains("There is no folder"), missing.err());
  }

  @Test
  void widthIsKept() throws Exception {
    byte[] png = Run.of("report", file, "--as", "png", "--width", "700px", "-o", "-").bytes();
    assertEquals(700, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
    byte[] inches = Run.of("report", file, "--as", "png", "--width", "2in", "-o", "-").bytes();
    assertEquals(600, ImageIO.read(new ByteArrayInputStream(inches)).getWidth());
    String svg = Run.of("report", file, "--as", "svg", "--width", "40 cm", "-o", "-").out();
    assertTrue(svg.contains(" width=\"400mm\""), svg.substring(0, 200));
  }

  @Test
  void wrongOptionsAreTold() {
    List.of(
            List.of("--width", "0px"),
            List.of("--width", "9km"),
            List.of("--width", "99999px"),
            List.of("--date", "yesterday"),
            List.of("--paper", "a0"))
        .forEach(
            option -> {
              Result result =
                  Run.of("report", file, "--as", "png", option.get(0), option.get(1), "-o", "-");
              assertEquals(2, result.code());
              assertTrue(result.err().contains(option.get(1)), result.err());
              assertEquals(0, result.bytes().length);
            });
  }
}
