package lozengy.benchmarks.kernel;

import java.util.Optional;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The briefs that kernels run on. */
@State(Scope.Benchmark)
public class Briefs {

  /** Name of the brief. */
  @Param({"reference", "growth-10000"})
  public String brief;

  PlantedBrief planted;
  Problem problem;

  /** Generates the brief. */
  @Setup(Level.Trial)
  public void generate() {
    planted = PlantedBrief.of(BriefSet.named(brief));
    problem = ProblemCompiler.compile(planted.blanket(), Optional.empty());
  }
}
