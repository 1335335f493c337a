package consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.lang.module.Configuration;
import java.lang.module.ModuleFinder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementFile;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefReader;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.page.Page;
import lozengy.report.wording.Wording;
import lozengy.solver.RunningSolve;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.alternatives.AlternativeSearch;
import lozengy.solver.alternatives.Alternatives;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a program does that is built on the library alone. */
@Timeout(300)
class ConsumerTest {

  private static final SolveOptions OPTIONS =
      SolveOptions.defaults().withMoves(20_000).withThreads(1);

  @TempDir Path folder;

  private static Arrangement found(SolveResult result) {
    return assertInstanceOf(SolveResult.Found.class, result).arrangement();
  }

  /** A blanket built in code: 5 by 6 squares of three rounds in four shades. */
  private static Brief brief() {
    List<Yarn> yarns = new ArrayList<>();
    int[] colours = {0x2c2a29, 0xd9d59a, 0x7a8f6a, 0xb3573f};
    for (int colour : colours) {
      yarns.add(
          Yarn.of("Y" + yarns.size(), new Srgb(colour >> 16, colour >> 8 & 0xff, colour & 0xff))
              .withBall(Optional.of(new Ball(50, 120_000)))
              .withBalls(4));
    }
    Set<Tone> any = EnumSet.allOf(Tone.class);
    List<Round> rounds =
        Stream.of(1_500, 2_500, 3_500)
            .map(millimetres -> new Round(any, new YarnAmount.Length(millimetres)))
            .toList();
    return Brief.of(
            "Windowsill throw",
            new LayoutSize(Setting.STRAIGHT, 5, 6, false, false),
            Map.of(PieceKind.SQUARE, new Motif(OptionalDouble.of(9), rounds)),
            yarns)
        .withRules(Rules.DEFAULT.withCentresDiffer(true));
  }

  @Test
  void theLibraryPlansWithoutTheCommandLine() {
    for (String commandLine : List.of("lozengy.cli.Main", "picocli.CommandLine")) {
      assertThrows(ClassNotFoundException.class, () -> Class.forName(commandLine));
    }
    Blanket blanket = Blanket.of(BriefReader.read(Path.of("..", "cushion.yaml")));
    Arrangement arrangement = found(Solver.solve(blanket, Optional.empty(), OPTIONS));
    assertEquals(List.of(), Check.faults(blanket, arrangement.sequences()));
    assertTrue(arrangement.score().total() > 50, "a random arrangement comes to less");
    String chart = Chart.svg(arrangement, ChartOptions.PLAIN);
    assertTrue(chart.startsWith("<svg") || chart.startsWith("<?xml"), chart.substring(0, 40));
    assertTrue(Page.html(arrangement, "cushion.json").contains(blanket.brief().title()));
  }

  @Test
  void whatIsPlannedInCodeIsReadBackEqual() throws IOException {
    Arrangement planned = found(Solver.solve(Blanket.of(brief()), Optional.empty(), OPTIONS));
    Path file = folder.resolve("throw.arrangement.json");
    ArrangementFile.write(file, planned, false);
    assertEquals(planned, ArrangementFile.read(file));
  }

  @Test
  void aSolveUnderWayIsLookedAtAndCancelled() throws InterruptedException {
    Blanket blanket = Blanket.of(brief());
    CountDownLatch under = new CountDownLatch(2);
    RunningSolve solve =
        Solver.start(
            blanket,
            Optional.empty(),
            OPTIONS
                .withMoves(1L << 45)
                .withListener(progress -> progress.incumbent().get().ifPresent(i -> under.countDown())));
    under.await();
    Arrangement sofar = solve.best().orElseThrow();
    assertTrue(Chart.svg(sofar, ChartOptions.PLAIN).contains("<svg"));
    solve.cancel();
    assertTrue(found(solve.result().join()).score().total() >= sofar.score().total() - 1e-3);
  }

  @Test
  void alternativesComeOneByOne() {
    Arrangement first = found(Solver.solve(Blanket.of(brief()), Optional.empty(), OPTIONS));
    List<String> charts = new ArrayList<>();
    Alternatives all =
        AlternativeSearch.find(
            first,
            Optional.empty(),
            OPTIONS,
            3,
            50,
            each -> charts.add(Chart.svg(each, ChartOptions.PLAIN)));
    assertEquals(2, charts.size());
    assertEquals(3, all.found().size());
    assertTrue(all.leastDistance() >= AlternativeSearch.LEAST_APART);
  }

  @Test
  void whyNothingFitsIsToldInWords() {
    Brief brief = brief();
    Blanket scarce =
        Blanket.of(brief.withYarns(brief.yarns().stream().map(y -> y.withBalls(0.1)).toList()));
    SolveResult.Impossible impossible =
        assertInstanceOf(
            SolveResult.Impossible.class, Solver.solve(scarce, Optional.empty(), OPTIONS));
    assertTrue(!new Wording(scarce).of(impossible).isEmpty());
  }

  /** Where logging goes, the program says. */
  @Test
  void noBindingOfLoggingComesAlong() {
    assertThrows(
        ClassNotFoundException.class, () -> Class.forName("org.slf4j.impl.StaticLoggerBinder"));
  }

  /** All that the library needs goes onto a module path: each jar a module, no package in two. */
  @Test
  void theJarsAreModules() {
    Path[] jars =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> entry.endsWith(".jar"))
            .map(Path::of)
            .toArray(Path[]::new);
    Set<String> roots = Set.of("lozengy.model", "lozengy.solver", "lozengy.report");
    Configuration resolved =
        ModuleLayer.boot()
            .configuration()
            .resolve(ModuleFinder.of(jars), ModuleFinder.of(), roots);
    ModuleLayer layer =
        ModuleLayer.boot().defineModulesWithOneLoader(resolved, getClass().getClassLoader());
    for (String root : roots) {
      assertTrue(layer.findModule(root).isPresent(), root);
    }
  }
}
