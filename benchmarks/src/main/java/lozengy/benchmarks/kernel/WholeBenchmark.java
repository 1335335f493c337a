package lozengy.benchmarks.kernel;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What goes around a search, each once over a whole blanket: read, make ready, compile, check,
 * score.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WholeBenchmark {

  /** A brief as a file's text. */
  @State(Scope.Benchmark)
  public static class File {

    private SourceText text;

    /** Writes the brief. */
    @Setup(Level.Trial)
    public void write(Briefs briefs) {
      text = SourceText.of("brief.json", BriefWriter.text(briefs.planted.blanket().brief()));
    }
  }

  /** Reads a brief from its text. */
  @Benchmark
  public Brief read(File file) {
    return BriefReader.read(file.text);
  }

  /** Makes a brief ready. */
  @Benchmark
  public Blanket makeReady(Briefs briefs) {
    return Blanket.of(briefs.planted.blanket().brief());
  }

  /** Compiles a blanket to ints. */
  @Benchmark
  public Problem compile(Briefs briefs) {
    return ProblemCompiler.compile(briefs.planted.blanket(), Optional.empty());
  }

  /** Holds a valid arrangement against all rules. */
  @Benchmark
  public List<Fault> check(Briefs briefs) {
    return Check.faults(briefs.planted.blanket(), briefs.planted.planted());
  }

  /** Scores an arrangement. */
  @Benchmark
  public Score score(Briefs briefs) {
    return Scorer.score(briefs.planted.blanket(), briefs.planted.planted(), Optional.empty());
  }
}
