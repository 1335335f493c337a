package lozengy.examples;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import lozengy.model.arrangement.ArrangementFile;
import lozengy.model.blanket.Blanket;
import lozengy.model.reading.BriefReader;
import lozengy.report.wording.Wording;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;

/** The fewest lines that plan a blanket with the library: solver/README.md shows them. */
public final class FirstPlan {

  private FirstPlan() {}

  /**
   * Solves a brief and writes the answer; the best so far, if the thread is interrupted.
   *
   * @param brief the brief's file
   * @param answer where the arrangement goes; a file that is there is kept
   * @throws IOException if it cannot be written
   * @throws IllegalStateException if none was found
   */
  public static void plan(Path brief, Path answer) throws IOException {
    Blanket blanket = Blanket.of(BriefReader.read(brief)); // InputException: every mistake, by line
    SolveOptions options =
        SolveOptions.defaults()
            .withSeed(1) // with moves and walkers it fixes the answer
            .withMoves(500_000)
            .withSeconds(60)
            .withThreads(2)
            .withListener(progress -> System.err.println(progress.score()));
    SolveResult result = Solver.solve(blanket, Optional.empty(), options);
    if (result instanceof SolveResult.Found found) {
      ArrangementFile.write(answer, found.arrangement(), false); // whole or not at all
    } else if (result instanceof SolveResult.Impossible impossible) {
      // values: impossible.refutations().get(0).reason().code(); words, from lozengy-report:
      new Wording(blanket).of(impossible).forEach(System.err::println);
    } else {
      throw new IllegalStateException("none was found, and nothing is proved: " + result);
    }
  }
}
