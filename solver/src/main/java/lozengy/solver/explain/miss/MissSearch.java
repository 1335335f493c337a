package lozengy.solver.explain.miss;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.check.RuleId;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;

/**
 * Looks for a plan that leaves few rounds open: an open round takes a yarn, and what stands against
 * that is opened in its place; what was opened may not come back for some turns (partial colouring
 * with a tabu list, in the manner of Bloechliger and Zufferey, "A graph coloring heuristic using
 * partial solutions and a reactive tabu scheme", Computers and Operations Research 35, 2008; here
 * with stocks beside the colours).
 */
public final class MissSearch {

  private static final long MOST_TURNS = 40_000;

  /** Turns times rounds. */
  private static final long MOST_WORK = 40_000_000;

  private static final int SAMPLED = 6;
  private static final int LEAST_TABU = 6;
  private static final int TABU_SPREAD = 12;

  private final PartialPlan plan;
  private final SplittableRandom random;
  private final List<Integer> open = new ArrayList<>();
  private final int[] placeInOpen;
  private final long[][] tabuUntil;

  private MissSearch(Blanket blanket, long seed) {
    this.plan = new PartialPlan(blanket);
    this.random = new SplittableRandom(seed);
    this.placeInOpen = new int[plan.slots()];
    this.tabuUntil = new long[plan.slots()][];
    IntStream.range(0, plan.slots()).filter(plan::planned).forEach(this::noteOpen);
  }

  /**
   * The nearest miss that is found.
   *
   * @param blanket the brief made ready
   * @param fewest rounds of which it is proved that they must be open
   * @param seed where the random source starts
   * @param stop asked now and then; once true, the search ends
   * @return empty where what is worked, joined and edged breaks a rule by itself
   */
  public static Optional<NearestMiss> of(
      Blanket blanket, int fewest, long seed, BooleanSupplier stop) {
    MissSearch search = new MissSearch(blanket, seed);
    Sequences best = search.run(fewest, stop);
    boolean onlyOpen =
        Check.faults(blanket, best).stream().allMatch(fault -> fault.rule() == RuleId.COMPLETE);
    return onlyOpen ? Optional.of(miss(blanket, best, fewest)) : Optional.empty();
  }

  private static NearestMiss miss(Blanket blanket, Sequences sequences, int fewest) {
    int rounds = 0;
    long millimetres = 0;
    Set<Integer> pieces = new HashSet<>();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (sequences.yarn(piece, round) == Sequences.OPEN) {
          rounds++;
          pieces.add(piece);
          int p = piece;
          int r = round;
          millimetres +=
              IntStream.range(0, blanket.yarnCount())
                  .mapToLong(yarn -> blanket.takenMillimetres(p, r, yarn))
                  .min()
                  .orElse(0);
        }
      }
    }
    return new NearestMiss(sequences, rounds, pieces.size(), millimetres, rounds <= fewest);
  }

  /**
   * {@return how many rounds must be open at the least, by the arguments against a brief that
   * nothing fits}
   *
   * @param blanket the brief made ready
   * @param findings what the arguments found
   */
  public static int fewest(Blanket blanket, Map<Argument, List<Finding>> findings) {
    Set<Finding.Slot> counted = new HashSet<>();
    int fewest = 0;
    for (Map.Entry<Argument, List<Finding>> entry : findings.entrySet()) {
      for (Finding finding : entry.getValue()) {
        if (finding.slots().stream().noneMatch(counted::contains)) {
          counted.addAll(finding.slots());
          fewest += entry.getKey().fewestOpen(blanket, finding);
        }
      }
    }
    return Math.max(1, fewest);
  }

  private Sequences run(int fewest, BooleanSupplier stop) {
    fillFreely();
    Sequences best = plan.sequences();
    int fewestOpen = open.size();
    long turns = Math.min(MOST_TURNS, MOST_WORK / Math.max(1, plan.slots()));
    for (long turn = 1; turn <= turns && fewestOpen > fewest && !stop.getAsBoolean(); turn++) {
      turn(turn);
      if (open.size() < fewestOpen) {
        fewestOpen = open.size();
        best = plan.sequences();
      }
    }
    return best;
  }

  private void noteOpen(int slot) {
    placeInOpen[slot] = open.size();
    open.add(slot);
  }

  private void noteFilled(int slot) {
    int place = placeInOpen[slot];
    int last = open.remove(open.size() - 1);
    if (last != slot) {
      open.set(place, last);
      placeInOpen[last] = place;
    }
  }

  /** Fills what can be filled without opening anything, those with the fewest yarns first. */
  private void fillFreely() {
    List<Integer> order = new ArrayList<>(open);
    order.sort((a, b) -> Integer.compare(plan.mayTake(a).length, plan.mayTake(b).length));
    order.forEach(slot -> fill(slot, 0));
  }

  /** Gives an open round the yarn of which most is left, if one fits as it is. */
  private void fill(int slot, long turn) {
    int best = -1;
    for (int yarn : plan.mayTake(slot)) {
      boolean fits = !tabu(slot, yarn, turn) && plan.need(slot, yarn) <= plan.left(yarn);
      if (fits && (best < 0 || plan.left(yarn) > plan.left(best))) {
        List<Integer> against = plan.against(slot, yarn);
        best = against != null && against.isEmpty() ? yarn : best;
      }
    }
    if (best >= 0) {
      plan.set(slot, best);
      noteFilled(slot);
    }
  }

  private boolean tabu(int slot, int yarn, long turn) {
    return tabuUntil[slot] != null && tabuUntil[slot][yarn] > turn;
  }

  private record Push(int slot, int yarn, List<Integer> out) {}

  private void turn(long turn) {
    Push best = null;
    int ties = 0;
    for (int i = 0; i < SAMPLED && !open.isEmpty(); i++) {
      int slot = open.get(random.nextInt(open.size()));
      for (int yarn : plan.mayTake(slot)) {
        if (tabu(slot, yarn, turn)) {
          continue;
        }
        List<Integer> out = pushedOut(slot, yarn);
        if (out == null || best != null && out.size() > best.out().size()) {
          continue;
        }
        ties = best == null || out.size() < best.out().size() ? 1 : ties + 1;
        best = random.nextInt(ties) == 0 ? new Push(slot, yarn, out) : best;
      }
    }
    if (best != null) {
      push(best, turn);
    }
  }

  private void push(Push push, long turn) {
    for (int slot : push.out()) {
      int yarn = plan.yarn(slot);
      plan.set(slot, Sequences.OPEN);
      noteOpen(slot);
      if (tabuUntil[slot] == null) {
        tabuUntil[slot] = new long[plan.yarnCount()];
      }
      tabuUntil[slot][yarn] = turn + LEAST_TABU + random.nextInt(TABU_SPREAD) + open.size() / 2;
    }
    plan.set(push.slot(), push.yarn());
    noteFilled(push.slot());
    for (int slot : push.out()) {
      fill(slot, turn);
    }
    if (!open.isEmpty()) {
      fill(open.get(random.nextInt(open.size())), turn);
    }
  }

  /** What must be opened for a round to take a yarn; null if that is not to be. */
  private List<Integer> pushedOut(int slot, int yarn) {
    List<Integer> out = plan.against(slot, yarn);
    if (out == null) {
      return null;
    }
    long missing = plan.need(slot, yarn) - plan.left(yarn);
    for (int other : out) {
      missing -= plan.yarn(other) == yarn ? plan.need(other, yarn) : 0;
    }
    if (missing <= 0) {
      return out;
    }
    int chosen = -1;
    int seen = 0;
    int from = random.nextInt(plan.slots());
    for (int i = 0; i < plan.slots(); i++) {
      int other = (from + i) % plan.slots();
      boolean gives =
          plan.yarn(other) == yarn
              && plan.planned(other)
              && other != slot
              && plan.need(other, yarn) >= missing
              && !out.contains(other);
      if (gives && random.nextInt(++seen) == 0) {
        chosen = other;
      }
    }
    if (chosen < 0) {
      return null;
    }
    List<Integer> all = new ArrayList<>(out);
    all.add(chosen);
    return all;
  }
}
