package lozengy.report.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.making.WorkOrder;
import lozengy.report.Samples;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures and booklets where the folder for temporary files takes none: in a Java of its own. */
class TemporaryFolderTest {

  private static final String DONE = "both are made";

  @TempDir Path folder;

  /** What the other Java runs. */
  public static void main(String[] arguments) {
    Arrangement arrangement = Samples.saltmarshThrow();
    byte[] png = Picture.png(Chart.svg(arrangement, ChartOptions.PLAIN), 300);
    byte[] pdf = Booklet.pdf(arrangement, Paper.A4, WorkOrder.BALL, Optional.empty());
    System.out.println(png.length > 1000 && pdf.length > 1000 ? DONE : "too short");
  }

  @Test
  void picturesAndBookletsNeedNone() throws Exception {
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=" + folder.resolve("none"),
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                TemporaryFolderTest.class.getName())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String out = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    assertEquals(0, java.waitFor());
    assertEquals(DONE, out.lines().reduce((first, last) -> last).orElse(""));
  }
}
