package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.Check;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.progress.Change;
import lozengy.model.progress.Changes;
import lozengy.model.progress.CurrentPlan;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Planning again is never worse than keeping what can be kept, nor than replacing by hand what
 * cannot, in the very total that it maximises; and changes nothing for nothing.
 */
class PlanningAgainTest {

  private static final String[] EXAMPLES = {
    "cushion",
    "locked-throw",
    "saltmarsh-throw",
    "stash-blanket",
    "winter-class",
    "looks/apart",
    "looks/borders",
    "looks/calm",
    "looks/chessboard",
    "looks/counts",
    "looks/fade",
    "looks/glow",
    "looks/half-turn",
    "looks/mirror",
    "looks/ordered",
    "looks/scattered",
    "looks/zones"
  };

  /** How often each comparison was made, so that the test can tell whether it tested anything. */
  private final Tally tally = new Tally();

  private static final class Tally {
    private int kept;
    private int replaced;
    private int forced;
  }

  /** The look gives every round, so that no move is left where the earlier plan cannot stand. */
  @Test
  void aBlanketWithoutAFreeRoundIsPlannedAgain() {
    Brief brief =
        BriefReader.read(
            SourceText.of(
                "given.yaml",
                """
                format: lozengy-brief/1
                title: Given
                layout: { setting: straight, across: 3, down: 2 }
                motifs: { square: { side: 9 cm, rounds: [ { metres: 1 } ] } }
                yarns:
                  - { code: A, colour: "#202020", left: 5 m }
                  - { code: B, colour: "#888888", left: 9 m }
                look: { borders: A }
                """));
    Blanket blanket = Blanket.of(brief);
    Sequences earlier = blanket.open();
    for (int piece = 0; piece < earlier.pieces(); piece++) {
      earlier.set(piece, 0, piece % 2);
    }
    SolveOptions options = SolveOptions.defaults().withMoves(1_000).withThreads(1);
    SolveResult result = Solver.solve(blanket, Optional.of(earlier), options);
    assertInstanceOf(SolveResult.Impossible.class, result);
  }

  /** Rounds that must change, and few moves to change them with: the limit is kept all the same. */
  @ParameterizedTest
  @ValueSource(longs = {1, 100, 7_777, 30_000})
  void noMoreMovesAreMadeThanAreAskedFor(long moves) {
    for (String name : List.of("cushion", "locked-throw")) {
      Brief brief = BriefReader.read(Path.of("..", "examples", name + ".yaml"));
      Arrangement plan = found(Blanket.of(brief), Optional.empty(), 100_000);
      assertEquals(100_000, made(plan), name);
      Arrangement few = found(Blanket.of(brief), Optional.empty(), moves);
      assertTrue(made(few) <= moves, name + ": " + made(few) + " of " + moves);
      CurrentPlan current = new CurrentPlan(brief, Optional.of(plan.sequences()));
      String gone = plan.blanket().yarn(used(plan, new SplittableRandom(1))).code();
      var changed = Changes.apply(current, List.of(new Change.Without("gone", gone)));
      Arrangement again = found(changed.blanket(), changed.earlier(), moves);
      assertTrue(made(again) <= moves, name + " again: " + made(again) + " of " + moves);
    }
  }

  private static Arrangement found(Blanket blanket, Optional<Sequences> earlier, long moves) {
    return assertInstanceOf(SolveResult.Found.class, solve(blanket, earlier, 1, moves))
        .arrangement();
  }

  private static long made(Arrangement arrangement) {
    return arrangement.solved().orElseThrow().moves();
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 100})
  void randomBriefsAreNeverWorseThanKeptOrReplaced(long first) {
    for (long seed = first + 1; seed <= first + 50; seed++) {
      Brief brief = RandomBriefs.of(seed, 4, 9);
      everyWay(brief, seed, 60_000);
    }
    assertTrue(tally.kept > 50, "kept " + tally.kept);
    assertTrue(tally.replaced > 50, "replaced " + tally.replaced);
    assertTrue(tally.forced > 8, "of which some had to change: " + tally.forced);
  }

  @Test
  void examplesAreNeverWorseThanKeptOrReplaced() {
    for (String name : EXAMPLES) {
      everyWay(BriefReader.read(Path.of("..", "examples", name + ".yaml")), 1, 300_000);
    }
    assertTrue(tally.kept > 3 * EXAMPLES.length, "kept " + tally.kept);
    assertTrue(tally.forced > EXAMPLES.length / 2, "had to change: " + tally.forced);
  }

  private void everyWay(Brief brief, long seed, long moves) {
    if (!(solve(Blanket.ofUnjudged(brief), Optional.empty(), seed, moves)
        instanceof SolveResult.Found found)) {
      return;
    }
    Arrangement plan = found.arrangement();
    Sequences sequences = plan.sequences();
    CurrentPlan current = new CurrentPlan(brief, Optional.of(sequences));
    again("nothing changed", current, List.of(), seed, moves);
    SplittableRandom random = new SplittableRandom(seed);
    int piece = random.nextInt(plan.blanket().pieceCount());
    List<String> at = List.of(plan.blanket().place(piece).name());
    try {
      Brief locked = Changes.apply(current, List.of(new Change.Lock("lock", at))).blanket().brief();
      again(
          "a lock freed",
          new CurrentPlan(locked, Optional.of(sequences)),
          List.of(new Change.Free("free", at)),
          seed,
          moves);
    } catch (InputException e) {
      // the piece is worked, or a symmetry or a pile does not go with the lock
    }
    again(
        "a rule loosened",
        new CurrentPlan(brief.withRules(loosened(brief.rules(), random)), Optional.of(sequences)),
        List.of(),
        seed,
        moves);
    String gone = plan.blanket().yarn(used(plan, random)).code();
    try {
      again("a shade gone", current, List.of(new Change.Without("gone", gone)), seed, moves);
    } catch (InputException e) {
      // joining, edging or a lock is in it
    }
  }

  private static Rules loosened(Rules rules, SplittableRandom random) {
    return switch (random.nextInt(4)) {
      case 0 -> rules.withMinContrast(0);
      case 1 -> rules.withWithinPiece(WithinPiece.FREE);
      case 2 -> rules.withCopies(OptionalInt.empty());
      default -> rules.withKeepBack(0);
    };
  }

  /** A yarn that some planned round has. */
  private static int used(Arrangement plan, SplittableRandom random) {
    for (int tries = 0; tries < 100; tries++) {
      int piece = random.nextInt(plan.blanket().pieceCount());
      if (plan.blanket().free(piece, 0)) {
        return plan.sequences().yarn(piece, random.nextInt(plan.blanket().roundCount(piece)));
      }
    }
    return 0;
  }

  private void again(
      String what, CurrentPlan current, List<Change> changes, long seed, long moves) {
    var changed = Changes.apply(current, changes);
    Blanket blanket = changed.blanket();
    Sequences earlier = changed.earlier().orElseThrow();
    String where = blanket.brief().title() + ", seed " + seed + ", " + what;
    boolean stands = Check.faults(blanket, earlier).isEmpty();
    Optional<Sequences> replaced =
        blanket.pile().isEmpty() ? PlainReplacement.of(blanket, earlier) : Optional.empty();
    if (!stands && replaced.isEmpty()) {
      return;
    }
    Arrangement now =
        assertInstanceOf(
                SolveResult.Found.class,
                solve(blanket, Optional.of(earlier), seed + 1, moves),
                where)
            .arrangement();
    assertEquals(List.of(), Check.faults(blanket, now.sequences()), where);
    double total = objective(now.sequences(), blanket, earlier);
    if (stands) {
      double kept = objective(earlier, blanket, earlier);
      boolean same = now.sequences().equals(earlier);
      assertTrue(same || total > kept, where + ": " + total + " against kept " + kept);
      tally.kept++;
    }
    if (replaced.isPresent()) {
      double byHand = objective(replaced.get(), blanket, earlier);
      assertTrue(total >= byHand - 1e-9, where + ": " + total + " against replaced " + byHand);
      tally.replaced++;
      tally.forced += PlainReplacement.count(blanket, earlier) > 0 ? 1 : 0;
    }
  }

  private static double objective(Sequences sequences, Blanket blanket, Sequences earlier) {
    return Scorer.score(blanket, sequences, Optional.of(earlier)).objective();
  }

  private static SolveResult solve(
      Blanket blanket, Optional<Sequences> earlier, long seed, long moves) {
    return Solver.solve(
        blanket, earlier, SolveOptions.defaults().withSeed(seed).withMoves(moves).withThreads(1));
  }
}
