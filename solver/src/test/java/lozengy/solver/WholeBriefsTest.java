package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Part;
import lozengy.model.brief.Stitching;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;
import lozengy.solver.bound.BoundLimits;
import lozengy.solver.bound.Bounds;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Optimum;
import lozengy.solver.constraint.Proof;
import lozengy.solver.explain.conflict.Root;
import org.junit.jupiter.api.Test;

/**
 * All that a brief can ask at once, on blankets of which every arrangement is tried: check and
 * score against the same written down plainly, constraint model, arguments, search, bound and
 * proofs against the best there is. {@code -Dlozengy.wholes=3000} tries that many briefs, {@code
 * -Dlozengy.wholes.from=1000} others.
 */
class WholeBriefsTest {

  private static final int BRIEFS = Integer.getInteger("lozengy.wholes", 40);
  private static final long FROM = Long.getLong("lozengy.wholes.from", 1);
  private static final long MOST_TRIED = 2_000;
  private static final long MOST_SCORED = 50;
  private static final Limits AMPLE = Limits.of(10_000_000, 10_000_000);
  private static final SolveOptions OPTIONS =
      SolveOptions.defaults().withMoves(4_000).withThreads(1);

  private int judged;
  private int unsettled;
  private int possible;
  private int impossible;
  private int replanned;
  private int piled;
  private int optimal;
  private int faded;
  private int ordered;
  private int stitched;
  private int counted;
  private int borderJoined;

  @Test
  void allWaysAgree() {
    for (long seed = FROM; seed < FROM + BRIEFS; seed++) {
      try {
        agree(seed);
      } catch (AssertionError | RuntimeException failure) {
        throw new AssertionError("seed " + seed + ": " + WholeBriefs.of(seed), failure);
      }
    }
    String told =
        ("%d judged, %d unsettled, %d possible, %d impossible, %d planned again, %d with a pile,"
                + " %d optimal, %d faded, %d ordered, %d in stitches, %d counted, %d joined in"
                + " borders")
            .formatted(
                judged,
                unsettled,
                possible,
                impossible,
                replanned,
                piled,
                optimal,
                faded,
                ordered,
                stitched,
                counted,
                borderJoined);
    if (System.getProperty("lozengy.wholes") != null) {
      System.out.println(told);
    }
    int few = BRIEFS / 40;
    assertTrue(unsettled <= few, told);
    assertTrue(
        // few piles can be laid, few counts leave enough: a short run may meet none
        piled >= BRIEFS / 400
            && Math.min(stitched, Math.min(counted, borderJoined)) >= BRIEFS / 100
            && List.of(possible, impossible, replanned, optimal, faded, ordered).stream()
                .allMatch(count -> count >= few),
        told);
  }

  private void agree(long seed) {
    Brief brief = WholeBriefs.of(seed);
    Blanket blanket = Blanket.of(brief);
    SplittableRandom random = new SplittableRandom(seed);
    Optional<Sequences> earlier =
        random.nextInt(3) == 0 ? Optional.of(random(blanket, random)) : Optional.empty();
    boolean plain = brief.pile().isEmpty();
    double[] best = {Double.NEGATIVE_INFINITY};
    long[] scored = {0};
    long count =
        BruteForce.count(
            blanket,
            MOST_TRIED,
            each -> {
              double objective = Scorer.score(blanket, each, earlier).objective();
              best[0] = Math.max(best[0], objective);
              if (scored[0]++ < MOST_SCORED) {
                assertEquals(PlainScore.objective(blanket, each, earlier), objective, 1e-6);
                if (plain) {
                  assertTrue(PlainJudge.valid(blanket, each), "check alone calls it valid");
                }
              }
            });
    if (plain) {
      judge(blanket, random);
    }
    if (count == MOST_TRIED) {
      assertEquals(List.of(), Root.arguments(blanket));
      return;
    }
    Proof.Count counted = Proof.count(ConstraintModel.of(blanket), plain ? MOST_TRIED : 1, AMPLE);
    assertEquals(plain ? count : Math.min(1, count), counted.arrangements());
    SolveResult result = Solver.solve(blanket, earlier, OPTIONS.withSeed(seed));
    if (result instanceof SolveResult.Unfinished) {
      unsettled++;
      return;
    }
    if (count == 0) {
      impossible++;
      assertTrue(result instanceof SolveResult.Impossible, result.toString());
      return;
    }
    possible++;
    replanned += earlier.isPresent() ? 1 : 0;
    piled += plain ? 0 : 1;
    faded += brief.prefer().weight(Part.FADE) > 0 && brief.look().fade().isPresent() ? 1 : 0;
    stitched += brief.stitching().equals(Stitching.NONE) ? 0 : 1;
    this.counted += brief.yarns().stream().anyMatch(yarn -> yarn.counted().isPresent()) ? 1 : 0;
    borderJoined += brief.joiningInBorders().isPresent() ? 1 : 0;
    ordered += brief.prefer().weight(Part.ORDER) > 0 ? 1 : 0;
    assertEquals(List.of(), Root.arguments(blanket));
    found(result, blanket, earlier, best[0], plain);
    bound(blanket, earlier, best[0], seed);
  }

  /** Random arrangements and those a round away from valid ones: valid by both or by none. */
  private void judge(Blanket blanket, SplittableRandom random) {
    for (int i = 0; i < 20; i++) {
      Sequences sequences = complete(blanket, random);
      assertEquals(
          Check.faults(blanket, sequences).isEmpty(), PlainJudge.valid(blanket, sequences));
    }
    BruteForce.count(
        blanket,
        5,
        valid -> {
          for (int i = 0; i < 10; i++) {
            Sequences near = valid.copy();
            int piece = random.nextInt(near.pieces());
            int round = random.nextInt(near.rounds(piece));
            near.set(piece, round, random.nextInt(blanket.yarnCount()));
            boolean fits = Check.faults(blanket, near).isEmpty();
            assertEquals(fits, PlainJudge.valid(blanket, near), () -> "valid by one: " + near);
            judged++;
          }
        });
  }

  private void found(
      SolveResult result,
      Blanket blanket,
      Optional<Sequences> earlier,
      double best,
      boolean plain) {
    assertTrue(result instanceof SolveResult.Found, result.toString());
    Arrangement arrangement = ((SolveResult.Found) result).arrangement();
    assertEquals(List.of(), Check.faults(blanket, arrangement.sequences()));
    double objective = arrangement.score().objective();
    assertEquals(PlainScore.objective(blanket, arrangement.sequences(), earlier), objective, 1e-6);
    assertTrue(!plain || PlainJudge.valid(blanket, arrangement.sequences()));
    assertTrue(objective <= best + 1e-9, objective + " is found, " + best + " is the best");
    Arrangement.Bound bound = arrangement.bound().orElseThrow();
    double of = bound.objective().orElse(bound.total());
    assertTrue(of >= best - 1e-6, "bound " + of + " below " + best);
    if (arrangement.solved().orElseThrow().proof().equals(Arrangement.Solved.OPTIMAL)) {
      optimal++;
      assertEquals(best, objective, 3e-6, "not the optimum");
    }
  }

  private static void bound(Blanket blanket, Optional<Sequences> earlier, double best, long seed) {
    if (earlier.isEmpty()) {
      double bound = Bounds.of(blanket, new BoundLimits(1), () -> false).total();
      assertTrue(bound >= best - 1e-9, "bound " + bound + " below " + best);
    }
    Optimum.Result optimum =
        Optimum.maximise(blanket, earlier, Optional.empty(), seed, Limits.of(20_000, 20_000));
    assertTrue(optimum.bound() >= best - 1e-9, "bound " + optimum.bound() + " below " + best);
    assertTrue(optimum.best().isEmpty() || optimum.objective() <= best + 1e-9, "beyond the best");
  }

  private static Sequences complete(Blanket blanket, SplittableRandom random) {
    Sequences sequences = blanket.locks();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (sequences.yarn(piece, round) == Sequences.OPEN) {
          sequences.set(piece, round, random.nextInt(blanket.yarnCount()));
        }
      }
    }
    return sequences;
  }

  private static Sequences random(Blanket blanket, SplittableRandom random) {
    Sequences sequences = complete(blanket, random);
    for (int i = random.nextInt(3); i > 0; i--) {
      int piece = random.nextInt(sequences.pieces());
      sequences.set(piece, random.nextInt(sequences.rounds(piece)), Sequences.OPEN);
    }
    return sequences;
  }
}
