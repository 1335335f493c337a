package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.alternatives.AlternativeSearch;
import lozengy.solver.alternatives.Alternatives;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.pack.PackOptions;
import lozengy.solver.pack.Packer;
import lozengy.solver.pack.Packing;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Interrupted threads get the best so far, and stay interrupted. */
@Timeout(300)
class InterruptTest {

  private static final SolveOptions LONG = SolveOptions.defaults().withMoves(1L << 45);

  @AfterEach
  void clear() {
    Thread.interrupted();
  }

  private static Blanket blanket(int across, int down) {
    return BlanketBuilder.straight(across, down)
        .motif(
            PieceKind.SQUARE,
            BlanketBuilder.round(1000),
            BlanketBuilder.round(1000),
            BlanketBuilder.round(1000))
        .yarns(7, Tone.MID, 1_000_000)
        .build();
  }

  /** Interrupts the thread that solves when it is told of progress for the n-th time. */
  private static ProgressListener atTime(int time) {
    int[] told = {0};
    return progress -> {
      if (++told[0] == time) {
        Thread.currentThread().interrupt();
      }
    };
  }

  private static void getsTheBest(Blanket blanket, SolveOptions options) {
    SolveResult result = Solver.solve(blanket, Optional.empty(), options);
    assertTrue(Thread.interrupted(), "the thread is interrupted no more");
    Arrangement best = assertInstanceOf(SolveResult.Found.class, result).arrangement();
    assertEquals(List.of(), Check.faults(blanket, best.sequences()));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void solvingHandsOutTheBestSoFar(int threads) {
    getsTheBest(blanket(6, 7), LONG.withThreads(threads).withListener(atTime(5)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void soItDoesWithTheStopThatAsksTheThreadItself(int threads) {
    getsTheBest(
        blanket(6, 7),
        LONG.withThreads(threads)
            .withStop(() -> Thread.currentThread().isInterrupted())
            .withListener(atTime(5)));
  }

  @Test
  void soItDoesUnderATimeLimit() {
    getsTheBest(blanket(6, 7), SolveOptions.defaults().withSeconds(3600).withListener(atTime(5)));
  }

  @Test
  void soItDoesWhereASmallBriefIsSettledExactly() {
    getsTheBest(blanket(2, 2), LONG.withThreads(1).withListener(atTime(1)));
  }

  @Test
  void interruptedBeforehandItEndsWithoutAFailure() {
    Thread.currentThread().interrupt();
    SolveResult result = Solver.solve(blanket(6, 7), Optional.empty(), LONG);
    assertTrue(Thread.interrupted());
    assertFalse(result instanceof SolveResult.Impossible);
  }

  /** Wherever the interrupt falls, what is called impossible is. */
  @Test
  void anInterruptProvesNothing() {
    int impossible = 0;
    int other = 0;
    for (long seed = 1; seed <= 30; seed++) {
      Brief brief = RandomBriefs.of(seed, 4, 6);
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      SolveOptions options = SolveOptions.defaults().withMoves(100_000).withThreads(1);
      SolveResult whole = Solver.solve(blanket, Optional.empty(), options);
      for (int time = 1; time <= 3; time++) {
        SolveResult cut =
            Solver.solve(blanket, Optional.empty(), options.withListener(atTime(time)));
        Thread.interrupted();
        if (cut instanceof SolveResult.Impossible) {
          assertInstanceOf(SolveResult.Impossible.class, whole, "seed " + seed);
          impossible++;
        } else {
          other++;
        }
      }
    }
    assertTrue(impossible > 2 && other > 20, impossible + " " + other);
  }

  @Test
  void alternativesComeOneByOneUntilTheThreadIsInterrupted() {
    Blanket blanket = blanket(6, 7);
    SolveOptions options = SolveOptions.defaults().withMoves(60_000).withThreads(1);
    Arrangement first =
        assertInstanceOf(SolveResult.Found.class, Solver.solve(blanket, Optional.empty(), options))
            .arrangement();
    List<Arrangement> came = new ArrayList<>();
    Alternatives all = AlternativeSearch.find(first, Optional.empty(), options, 4, 100, came::add);
    assertEquals(3, came.size());
    assertTrue(all.found().containsAll(came) && all.found().size() == 4);

    came.clear();
    Alternatives cut =
        AlternativeSearch.find(
            first,
            Optional.empty(),
            options,
            4,
            100,
            each -> {
              came.add(each);
              Thread.currentThread().interrupt();
            });
    assertTrue(Thread.interrupted());
    assertEquals(1, came.size());
    assertEquals(2, cut.found().size());
    assertEquals(all.found().get(all.found().indexOf(came.get(0))), came.get(0));

    double before = all.distances()[0][1];
    all.distances()[0][1] = -1;
    assertEquals(before, all.distances()[0][1]);
  }

  @Test
  void anAlternativeCutShortTellsTheMovesThatWereMade() {
    Blanket blanket = blanket(6, 7);
    SolveOptions options = SolveOptions.defaults().withMoves(60_000).withThreads(1);
    Arrangement first =
        assertInstanceOf(SolveResult.Found.class, Solver.solve(blanket, Optional.empty(), options))
            .arrangement();
    Alternatives cut =
        AlternativeSearch.find(
            first, Optional.empty(), LONG.withThreads(1).withListener(atTime(5)), 3, 100);
    assertTrue(Thread.interrupted());
    assertEquals(2, cut.found().size());
    for (Arrangement each : cut.found()) {
      long moves = each.solved().orElseThrow().moves();
      assertTrue(moves > 0 && moves < LONG.moves().orElseThrow(), moves + " moves");
    }
  }

  @Test
  void aPackIsSoughtNoFurther() {
    Thread.currentThread().interrupt();
    Packing packing =
        Packer.find(blanket(4, 4), PackOptions.defaults().withMoves(1L << 45).withThreads(1));
    assertTrue(Thread.interrupted());
    assertInstanceOf(Packing.Unfinished.class, packing);
  }
}
