package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** The number of walkers is part of the recipe; the number of threads is none. */
class WalkersTest {

  private static final Blanket DEMO =
      Blanket.of(BriefReader.read(Path.of("..", "examples", "saltmarsh-throw.yaml")));

  private static Arrangement solved(Optional<Sequences> earlier, int walkers, int threads) {
    SolveOptions options =
        SolveOptions.defaults().withMoves(60_000).withWalkers(walkers).withThreads(threads);
    return ((SolveResult.Found) Solver.solve(DEMO, earlier, options)).arrangement();
  }

  @Test
  void threadsChangeNothingAndWalkersDo() {
    Set<Sequences> all = new HashSet<>();
    for (int walkers : new int[] {1, 2, 3, 16}) {
      Arrangement one = solved(Optional.empty(), walkers, 1);
      assertEquals(walkers, one.solved().orElseThrow().walkers());
      assertEquals(one, solved(Optional.empty(), walkers, 2));
      assertEquals(one, solved(Optional.empty(), walkers, 3));
      assertTrue(all.add(one.sequences()), walkers + " walkers found what fewer did");
    }
  }

  @Test
  void planningAgainGoesWithAnyNumberOfWalkers() {
    Sequences before = solved(Optional.empty(), 2, 1).sequences();
    Arrangement alone = solved(Optional.of(before), 1, 1);
    assertEquals(alone, solved(Optional.of(before), 1, 3));
    assertEquals(solved(Optional.of(before), 3, 1), solved(Optional.of(before), 3, 3));
    assertNotEquals(Optional.empty(), alone.earlier());
  }

  @Test
  void twoAreTheUsual() {
    assertEquals(2, SolveOptions.defaults().walkers(DEMO));
    assertEquals(5, SolveOptions.defaults().withWalkers(5).walkers(DEMO));
  }
}
