package lozengy.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.problem.Slots;

/** Random assignments of problems. */
final class RandomDraws {

  private RandomDraws() {}

  /** The problem of a brief; empty where the brief has mistakes, or nothing of it is open. */
  static Optional<Problem> problem(Brief brief) {
    if (!BriefJudge.mistakes(brief).isEmpty()) {
      return Optional.empty();
    }
    Problem problem = ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
    boolean open = !problem.domains().anyEmpty() && problem.slots().free().length > 0;
    return open ? Optional.of(problem) : Optional.empty();
  }

  /** The brief with so much of each yarn that few draws overdraw any. */
  static Brief ample(Brief brief, SplittableRandom random) {
    List<Yarn> yarns = new ArrayList<>();
    for (Yarn yarn : brief.yarns()) {
      long metres = 60 + random.nextInt(600);
      yarns.add(yarn.withLeft(Optional.of(new YarnAmount.Length(1000 * metres))));
    }
    return brief.withYarns(yarns);
  }

  /**
   * Draws yarns at random; with care, such as go with what is drawn before and repeat none of it.
   */
  static int[] of(Problem problem, SplittableRandom random, boolean care) {
    Slots slots = problem.slots();
    Clashes clashes = problem.clashes();
    PairCosts pairs = problem.costs().pairs();
    int[] yarn = new int[slots.count()];
    Arrays.fill(yarn, Sequences.OPEN);
    int[] dealt = problem.pile().deal(slots, problem.domains(), random::nextInt);
    for (int slot = 0; slot < yarn.length; slot++) {
      int piece = slots.orbit()[slot];
      if (dealt[piece] >= 0) {
        yarn[slot] = problem.pile().yarns()[dealt[piece]][slot - slots.orbitStart()[piece]];
      }
    }
    for (int slot = 0; slot < yarn.length; slot++) {
      int[] allowed = problem.domains().yarns(slot);
      for (int tries = 0; dealt[slots.orbit()[slot]] < 0 && tries < 12; tries++) {
        int drawn = allowed[random.nextInt(allowed.length)];
        boolean goes = true;
        for (int i = clashes.start()[slot]; i < clashes.start()[slot + 1]; i++) {
          int other = yarn[clashes.slot()[i]];
          goes &= other == Sequences.OPEN || !clashes.bars(i, drawn, other);
        }
        for (int i = pairs.lightStart()[slot]; i < pairs.lightStart()[slot + 1]; i++) {
          goes &= tries > 6 || yarn[pairs.lightSlot()[i]] != drawn;
        }
        yarn[slot] = drawn;
        if (goes || !care) {
          break;
        }
      }
    }
    return yarn;
  }
}
