package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Round;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A solve under way: looked at, cancelled, and as good as one that is waited for. */
@Timeout(300)
class RunningSolveTest {

  /** So many that it ends by nothing else within the test. */
  private static final SolveOptions LONG =
      SolveOptions.defaults().withMoves(1L << 45).withThreads(1);

  private static Blanket blanket() {
    return blanket(6, 7);
  }

  private static Blanket blanket(int across, int down) {
    return BlanketBuilder.straight(across, down)
        .motif(PieceKind.SQUARE, round(), round(), round())
        .yarns(7, Tone.MID, 1_000_000)
        .build();
  }

  private static Round round() {
    return BlanketBuilder.round(1000);
  }

  /** Counts down at the n-th progress from when there is something to hand out. */
  private static ProgressListener after(int times, CountDownLatch latch) {
    int[] left = {times};
    return progress -> {
      if (progress.incumbent().get().isPresent() && --left[0] == 0) {
        latch.countDown();
      }
    };
  }

  @Test
  void whenCancelledItHandsOutTheBestSoFar() throws InterruptedException {
    Blanket blanket = blanket();
    CountDownLatch under = new CountDownLatch(1);
    RunningSolve solve =
        Solver.start(blanket, Optional.empty(), LONG.withListener(after(3, under)));
    under.await();
    Arrangement best = solve.best().orElseThrow();
    assertFalse(solve.result().isDone(), "it ended by itself");
    solve.cancel();
    SolveResult.Found found = assertInstanceOf(SolveResult.Found.class, solve.result().join());

    assertEquals(List.of(), Check.faults(blanket, best.sequences()));
    // the search goes by whole cost units
    assertTrue(found.arrangement().score().total() >= best.score().total() - 1e-3);
    assertTrue(solve.progress().orElseThrow().moves() > 0);
    assertTrue(best.solved().orElseThrow().moves() <= found.arrangement().solved().get().moves());
  }

  @Test
  void leftAloneItComesToWhatSolvingComesTo() {
    SolveOptions options = SolveOptions.defaults().withMoves(200_000).withThreads(1);
    RunningSolve solve = Solver.start(blanket(), Optional.empty(), options);

    assertEquals(Solver.solve(blanket(), Optional.empty(), options), solve.result().join());
    assertEquals(
        assertInstanceOf(SolveResult.Found.class, solve.result().join()).arrangement().score(),
        solve.best().orElseThrow().score());
  }

  /** A small one is settled by a proof, which tells no progress. */
  @ParameterizedTest
  @CsvSource({"2, 2", "6, 7"})
  void onceItIsOverTheBestIsThatOfTheResult(int across, int down) {
    SolveOptions options = SolveOptions.defaults().withMoves(20_000).withThreads(1);
    RunningSolve solve = Solver.start(blanket(across, down), Optional.empty(), options);
    SolveResult.Found found = assertInstanceOf(SolveResult.Found.class, solve.result().join());

    assertEquals(Optional.of(found.arrangement()), solve.best());
  }

  @Test
  void cancelledAtOnceItEndsWithoutAFailure() {
    RunningSolve solve = Solver.start(blanket(), Optional.empty(), LONG);
    solve.cancel();

    assertFalse(solve.result().join() instanceof SolveResult.Impossible);
  }

  @Test
  void cancellingTheFutureEndsTheThread() throws InterruptedException {
    AtomicReference<Thread> thread = new AtomicReference<>();
    CountDownLatch under = new CountDownLatch(1);
    ProgressListener listener =
        progress -> {
          thread.set(Thread.currentThread());
          under.countDown();
        };
    RunningSolve solve = Solver.start(blanket(), Optional.empty(), LONG.withListener(listener));
    under.await();
    solve.result().cancel(false);
    thread.get().join(TimeUnit.MINUTES.toMillis(2));

    assertFalse(thread.get().isAlive());
  }

  @Test
  void whatAListenerThrowsIsToldToWhoWaits() {
    ProgressListener failing =
        progress -> {
          throw new UnsupportedOperationException("not now");
        };
    RunningSolve solve = Solver.start(blanket(), Optional.empty(), LONG.withListener(failing));

    Throwable thrown = assertThrows(CompletionException.class, solve.result()::join);
    assertEquals("not now", thrown.getCause().getMessage());
  }

  @Test
  void earlierSequencesOfAnotherLayoutAreRefusedAtOnce() {
    Optional<Sequences> other = Optional.of(new Sequences(new int[] {3, 3}));
    Sequences foreign = blanket().open();
    foreign.set(0, 0, 7);

    assertThrows(
        IllegalArgumentException.class,
        () -> Solver.start(blanket(), other, SolveOptions.defaults()));
    assertThrows(
        IllegalArgumentException.class,
        () -> Solver.solve(blanket(), other, SolveOptions.defaults()));
    assertThrows(
        IllegalArgumentException.class,
        () -> Solver.solve(blanket(), Optional.of(foreign), SolveOptions.defaults()));
    assertEquals(
        "options is null",
        assertThrows(
                NullPointerException.class, () -> Solver.solve(blanket(), Optional.empty(), null))
            .getMessage());
  }

  @Test
  void ofChoicesOfAPileTheBestSoFarOnlyGetsBetter() {
    Blanket plain = blanket();
    List<PileEntry> pile = new ArrayList<>();
    for (int i = 0; i < 45; i++) {
      pile.add(
          new PileEntry(
              PieceKind.SQUARE,
              List.of(code(plain, i), code(plain, i + 1 + i % 3), code(plain, i * 5 + 2)),
              1,
              Set.of()));
    }
    Blanket crowded = Blanket.of(plain.brief().withPile(pile));
    double[] last = {Double.NEGATIVE_INFINITY};
    int[] told = {0};
    SolveOptions options =
        SolveOptions.defaults()
            .withMoves(600_000)
            .withThreads(1)
            .withListener(
                progress ->
                    progress
                        .incumbent()
                        .get()
                        .map(Incumbent::arrangement)
                        .ifPresent(
                            best -> {
                              assertTrue(best.score().total() >= last[0] - 1e-3);
                              last[0] = best.score().total();
                              told[0]++;
                            }));
    SolveResult result = Solver.solve(crowded, Optional.empty(), options);

    double total = assertInstanceOf(SolveResult.Found.class, result).arrangement().score().total();
    assertTrue(told[0] > 5, "told " + told[0] + " times");
    assertEquals(total, last[0], 1e-3);
  }

  private static String code(Blanket blanket, int yarn) {
    return blanket.yarn(yarn % blanket.yarnCount()).code();
  }
}
