package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * Proves how many rounds of an earlier plan must change at least: those that may not keep their
 * yarn by tones, bans, zones or what is fixed beside them; of two that would clash one; and what
 * the stock asks for beyond that. A linear program over counts keeps as many rounds as it can, and
 * any multipliers of its rows prove a bound ({@link DualBound}).
 */
public final class ChangeFloor {

  /** Rounds of steps for the multipliers. */
  private static final int EFFORT = 60;

  private final Problem problem;
  private final Slots slots;
  private final Clashes clashes;
  private final int[] before;
  private final int[] had;
  private final boolean[] differ;
  private final boolean[] alone;
  private final LinearProgram program = new LinearProgram();
  private final Map<Long, Group> groups = new LinkedHashMap<>();
  private final int[] keptOf;

  /** Rounds with the same needs and domain: how many, and how many had each yarn. */
  private static final class Group {
    private final int slot;
    private final int[] keep;
    private final int[] gain;
    private int count;

    Group(int slot, int yarns) {
      this.slot = slot;
      this.keep = new int[yarns];
      this.gain = new int[yarns];
    }
  }

  private ChangeFloor(Problem problem) {
    this.problem = problem;
    this.slots = problem.slots();
    this.clashes = problem.clashes();
    this.before = problem.assignment(problem.earlier().orElseThrow());
    this.had = new int[slots.count()];
    this.differ = new boolean[slots.count()];
    this.alone = new boolean[slots.count()];
    this.keptOf = new int[slots.count()];
    for (int slot : slots.free()) {
      int piece = slots.orbit()[slot];
      int round = slot - slots.orbitStart()[piece];
      for (int member : slots.members()[piece]) {
        int yarn = problem.earlier().get().yarn(member, round);
        had[slot] += yarn == Sequences.OPEN ? 0 : 1;
        differ[slot] |= yarn != before[slot];
      }
    }
  }

  /**
   * {@return how many of the rounds that are free to change and had a yarn in the earlier plan must
   * have another at least, in every valid arrangement; 0 or more}
   *
   * @param problem a problem with an earlier plan
   * @param stop asked now and then; once true, what is proved so far counts
   */
  public static int of(Problem problem, BooleanSupplier stop) {
    return new ChangeFloor(problem).floor(stop);
  }

  private int floor(BooleanSupplier stop) {
    int all = 0;
    for (int slot : slots.free()) {
      all += had[slot];
    }
    if (!problem.pile().isEmpty()) {
      return cannotShow();
    }
    List<int[]> pairs = clashing();
    program();
    for (int[] clash : pairs) {
      program.atMost(1);
      program.put(keptOf[clash[0]], 1);
      program.put(keptOf[clash[1]], 1);
    }
    program.scale();
    PrimalDual search = new PrimalDual(program, new double[0]);
    search.improve(EFFORT, stop);
    return Math.max(0, Math.min(all, (int) Math.ceil(all - search.best())));
  }

  /** With a pile, rounds that can neither be worked as they were nor show a piece of the pile. */
  private int cannotShow() {
    Blanket blanket = problem.blanket();
    Sequences earlier = problem.earlier().orElseThrow();
    int count = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = earlier.yarn(piece, round);
        boolean counts = blanket.free(piece, round) && yarn != Sequences.OPEN;
        count += counts && !blanket.domains().mayShow(piece, round, yarn) ? 1 : 0;
      }
    }
    return count;
  }

  /** Whether a slot may keep its yarn beside what is fixed. */
  private boolean mayKeep(int slot) {
    boolean had = before[slot] != Sequences.OPEN && !differ[slot];
    if (!had || !problem.domains().allows(slot, before[slot])) {
      return false;
    }
    for (int entry = clashes.start()[slot]; entry < clashes.start()[slot + 1]; entry++) {
      int fixed = slots.fixedYarn()[clashes.slot()[entry]];
      if (fixed != Sequences.OPEN && clashes.bars(entry, before[slot], fixed)) {
        return false;
      }
    }
    return true;
  }

  /** Pairs of rounds that could each keep their yarn, but not both. */
  private List<int[]> clashing() {
    boolean[] keeps = new boolean[slots.count()];
    for (int slot : slots.free()) {
      keeps[slot] = mayKeep(slot);
    }
    List<int[]> found = new ArrayList<>();
    for (int slot : slots.free()) {
      for (int entry = clashes.start()[slot]; entry < clashes.start()[slot + 1]; entry++) {
        int other = clashes.slot()[entry];
        boolean both = other > slot && keeps[slot] && keeps[other];
        if (both && clashes.bars(entry, before[slot], before[other])) {
          found.add(new int[] {slot, other});
        }
      }
    }
    for (int[] clash : found) {
      alone[clash[0]] = true;
      alone[clash[1]] = true;
    }
    for (int slot : slots.free()) {
      add(slot, keeps[slot]);
    }
    return found;
  }

  private void add(int slot, boolean keeps) {
    long like = (long) problem.supply().slotClass()[slot] << 32 | problem.domains().of()[slot];
    long key = alone[slot] || differ[slot] ? -1L - slot : like;
    Group group = groups.computeIfAbsent(key, k -> new Group(slot, problem.yarns()));
    group.count++;
    if (keeps) {
      group.keep[before[slot]]++;
    }
    if (differ[slot]) {
      // images that were not alike: whichever yarn they take, some of them may have had it
      int piece = slots.orbit()[slot];
      for (int member : slots.members()[piece]) {
        int yarn = problem.earlier().get().yarn(member, slot - slots.orbitStart()[piece]);
        if (yarn != Sequences.OPEN) {
          group.gain[yarn]++;
        }
      }
    }
  }

  private void program() {
    List<List<double[]>> use = new ArrayList<>();
    for (int yarn = 0; yarn < problem.yarns(); yarn++) {
      use.add(new ArrayList<>());
    }
    for (Group group : groups.values()) {
      List<Integer> variables = new ArrayList<>();
      int weight = slots.weight(slots.orbit()[group.slot]);
      for (int yarn : problem.domains().yarns(group.slot)) {
        long need = problem.supply().need(group.slot, yarn);
        int changed = program.variable(0, group.count, group.gain[yarn]);
        variables.add(changed);
        use.get(yarn).add(new double[] {changed, need});
        if (group.keep[yarn] > 0) {
          int kept = program.variable(0, group.keep[yarn], weight);
          variables.add(kept);
          use.get(yarn).add(new double[] {kept, need});
          keptOf[group.slot] = kept;
        }
      }
      program.equalTo(group.count);
      variables.forEach(variable -> program.put(variable, 1));
    }
    long[] left = problem.supply().usable().clone();
    for (int yarn = 0; yarn < left.length; yarn++) {
      left[yarn] -= problem.supply().fixedUse()[yarn];
    }
    for (int slot = 0; slot < slots.count(); slot++) {
      int fixed = slots.fixedYarn()[slot];
      if (fixed != Sequences.OPEN) {
        left[fixed] -= problem.supply().need(slot, fixed);
      }
    }
    for (int yarn = 0; yarn < left.length; yarn++) {
      program.atMost(left[yarn]);
      use.get(yarn).forEach(each -> program.put((int) each[0], each[1]));
    }
  }
}
