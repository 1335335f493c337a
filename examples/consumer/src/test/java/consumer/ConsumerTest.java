package consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.reading.BriefReader;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.page.Page;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import org.junit.jupiter.api.Test;

class ConsumerTest {

  @Test
  void theLibraryPlansWithoutTheCommandLine() {
    for (String commandLine : List.of("lozengy.cli.Main", "picocli.CommandLine")) {
      assertThrows(ClassNotFoundException.class, () -> Class.forName(commandLine));
    }
    Blanket blanket = Blanket.of(BriefReader.read(Path.of("..", "cushion.yaml")));
    SolveOptions options =
        SolveOptions.defaults().withMoves(20_000).withThreads(1);
    Arrangement arrangement =
        assertInstanceOf(SolveResult.Found.class, Solver.solve(blanket, Optional.empty(), options))
            .arrangement();
    assertEquals(List.of(), Check.faults(blanket, arrangement.sequences()));
    assertTrue(arrangement.score().total() > 50, "a random arrangement comes to less");
    String chart = Chart.svg(arrangement, ChartOptions.PLAIN);
    assertTrue(chart.startsWith("<svg") || chart.startsWith("<?xml"), chart.substring(0, 40));
    assertTrue(Page.html(arrangement, "cushion.json").contains(blanket.brief().title()));
  }
}
