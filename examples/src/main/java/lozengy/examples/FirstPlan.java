package lozengy.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.reading.BriefReader;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;

/** The fewest lines that plan a blanket with the library: solver/README.md shows them. */
public final class FirstPlan {

  private FirstPlan() {}

  /**
   * Solves a brief and writes the answer.
   *
   * @param brief the brief's file
   * @param answer where the arrangement goes; replaced if it is there
   * @throws IOException if it cannot be written
   * @throws IllegalStateException if none was found
   */
  public static void plan(Path brief, Path answer) throws IOException {
    Blanket blanket = Blanket.of(BriefReader.read(brief)); // InputException: every mistake, by line
    SolveOptions options =
        new SolveOptions(
            1, // seed: with the moves it fixes the answer
            OptionalLong.of(500_000), // moves
            OptionalDouble.of(60), // seconds
            2, // threads
            () -> Thread.currentThread().isInterrupted(), // asked whether to stop
            progress -> System.err.println(progress.score()));
    SolveResult result = Solver.solve(blanket, Optional.empty(), options);
    if (result instanceof SolveResult.Found found) {
      Files.writeString(answer, ArrangementWriter.text(found.arrangement()));
    } else {
      throw new IllegalStateException("none fits, or none was found: " + result);
    }
  }
}
