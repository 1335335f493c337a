package lozengy.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Domains;
import lozengy.solver.problem.Problem;

/**
 * Decides how often each yarn serves each group of like slots, places left out: by annealing of
 * what counts alone cost, which are balance, leeway and overdrawn yarns, and then by exchanges. At
 * tight stock this settles in thousands of steps what the search among places would hardly find.
 */
final class CountPlan {

  private static final int STEPS_PER_CELL = 400;
  private static final int MOST_STEPS = 400_000;
  private static final int SETTLING_EXCHANGES = 10_000;
  private static final int ATTEMPTS = 8;

  /** Exchanges at random before known counts are bettered again, so that others come of it. */
  private static final int SHAKES = 4;

  /** Exchanges between two such shakes. */
  private static final int ROUND = 1000;

  /** Exchanges within a plan of borders after which it is seen whether they still help. */
  private static final int PLANNED_EXCHANGES = 400;

  private final Problem problem;
  private final Domains domains;
  private final Draws draws;
  private final int yarns;
  private final List<int[]> groups;
  private final int[][] counts;
  private final int[] surplus;
  private final StockUse stock;
  private final int[] assignment;
  private final int[] laid;
  private final EarlierCounts earlier;
  private CountExchange exchange;
  private CountExchange.Standing best;

  CountPlan(Problem problem, Draws draws) {
    this(problem, problem.domains(), draws);
  }

  /**
   * Plans within narrower domains.
   *
   * @param domains what slots are to take: some of what they may take, at least one yarn each
   */
  CountPlan(Problem problem, Domains domains, Draws draws) {
    this(problem, domains, draws, laid(problem, domains, draws), null, 0);
  }

  private CountPlan(
      Problem problem, Domains domains, Draws draws, int[] laid, int[] kept, long changeCost) {
    this.problem = problem;
    this.domains = domains;
    this.draws = draws;
    this.yarns = problem.yarns();
    this.laid = laid;
    this.groups = groups(problem, domains, problem.slots().free(), laid);
    this.counts = new int[groups.size()][yarns];
    this.earlier = EarlierCounts.of(problem, groups, kept, changeCost);
    this.surplus = new int[problem.balance().targets().length];
    this.stock = new StockUse(problem);
    this.assignment = new int[problem.slots().count()];
  }

  private static int[] laid(Problem problem, Domains domains, Draws draws) {
    int[] laid = problem.pile().deal(problem.slots(), problem.domains(), draws::below);
    if (domains != problem.domains()) {
      new PileSides(problem, domains).settle(laid);
    }
    return laid;
  }

  /**
   * A plan of counts close to an earlier plan.
   *
   * @param plan what stands
   * @param changeCost cost of a round's change, beside what counts cost
   */
  static CountPlan near(Problem problem, Draws draws, EarlierPlan plan, long changeCost) {
    return new CountPlan(problem, problem.domains(), draws, plan.laid(), plan.yarn(), changeCost);
  }

  private boolean planned() {
    return domains != problem.domains();
  }

  /** Groups of slots with the same needs, layer and domain. */
  static List<int[]> groups(Problem problem, int[] slots) {
    int[] nothing = new int[problem.slots().orbits()];
    Arrays.fill(nothing, -1);
    return groups(problem, problem.domains(), slots, nothing);
  }

  private static List<int[]> groups(Problem problem, Domains domains, int[] among, int[] laid) {
    Map<Long, List<Integer>> groups = new LinkedHashMap<>();
    for (int slot : among) {
      if (laid[problem.slots().orbit()[slot]] >= 0) {
        continue;
      }
      long key = (long) problem.supply().slotClass()[slot] << 32 | domains.of()[slot];
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(slot);
    }
    return groups.values().stream()
        .map(slots -> slots.stream().mapToInt(Integer::intValue).toArray())
        .toList();
  }

  /**
   * Plans the counts and deals them at random to the slots of each group.
   *
   * @param exchanges exchanges that better the plan once it is within stock
   * @return an assignment of all slots
   */
  int[] deal(int exchanges) {
    boolean withinStock = false;
    for (int attempt = 0; attempt < (planned() ? 1 : ATTEMPTS) && !withinStock; attempt++) {
      dealByTarget();
      recount();
      anneal();
      withinStock = groups.isEmpty() || settle(exchanges);
    }
    best = withinStock && exchange != null ? exchange.standing() : null;
    dealGroups();
    return assignment;
  }

  /** Whether counts within stock are known, from which to go on. */
  boolean settled() {
    return best != null;
  }

  /**
   * Goes on from the best counts so far: shakes them, betters them and deals them at random. That
   * takes a tenth of the time of new ones, and they are better.
   *
   * @param exchanges exchanges that better the counts
   * @return an assignment of all slots
   */
  int[] dealAgain(int exchanges) {
    for (int left = exchanges; left > 0; left -= ROUND) {
      exchange.restore(best);
      exchange.shake(SHAKES);
      exchange.improve(Math.min(left, ROUND));
      best = exchange.cost() <= best.cost() ? exchange.standing() : best;
    }
    dealGroups();
    return assignment;
  }

  private void dealGroups() {
    for (int group = 0; group < groups.size(); group++) {
      dealGroup(groups.get(group), counts[group].clone());
    }
    stock.reset(assignment);
  }

  /** An assignment in which what stands stays, and other slots take what their layer lacks. */
  int[] fill() {
    dealByTarget();
    return assignment;
  }

  /** What the planned counts cost: balance, leeway, overdrawn yarns. */
  long cost() {
    long cost = stock.overdrawLoss() + stock.leewayLoss();
    for (int i = 0; i < surplus.length; i++) {
      cost += problem.balance().cost()[i / yarns] * Math.abs(surplus[i]);
    }
    return cost;
  }

  /**
   * A first deal: each slot that has no yarn yet takes the yarn of its domain that its layer lacks
   * most.
   */
  private void dealByTarget() {
    int[] known = earlier.any() ? earlier.kept() : problem.slots().fixedYarn();
    System.arraycopy(known, 0, assignment, 0, assignment.length);
    for (int place = 0; place < laid.length; place++) {
      if (laid[place] >= 0) {
        int[] yarnsLaid = problem.pile().yarns()[laid[place]];
        int start = problem.slots().orbitStart()[place];
        System.arraycopy(yarnsLaid, 0, assignment, start, yarnsLaid.length);
      }
    }
    for (int i = 0; i < surplus.length; i++) {
      surplus[i] = -problem.balance().targets()[i];
    }
    int[] layer = problem.slots().layer();
    for (int slot = 0; slot < assignment.length; slot++) {
      if (assignment[slot] != Sequences.OPEN) {
        surplus[layer[slot] * yarns + assignment[slot]] += weight(slot);
      }
    }
    for (int[] group : groups) {
      for (int slot : group) {
        if (assignment[slot] != Sequences.OPEN) {
          continue;
        }
        int row = layer[slot] * yarns;
        int[] domain = domains.yarns(slot);
        int best = domain[draws.below(domain.length)];
        for (int yarn : domain) {
          if (surplus[row + yarn] < surplus[row + best]) {
            best = yarn;
          }
        }
        assignment[slot] = best;
        surplus[row + best] += weight(slot);
      }
    }
  }

  private void recount() {
    for (int group = 0; group < groups.size(); group++) {
      Arrays.fill(counts[group], 0);
      for (int slot : groups.get(group)) {
        counts[group][assignment[slot]]++;
      }
    }
    stock.reset(assignment);
  }

  private boolean settle(int exchanges) {
    int[] slotOfGroup = groups.stream().mapToInt(group -> group[0]).toArray();
    ExpectedRepeats repeats = new ExpectedRepeats(problem, groups, assignment);
    exchange =
        new CountExchange(
            problem, domains, draws, slotOfGroup, counts, surplus, stock.used(), earlier, repeats);
    boolean withinStock = planned() ? settleAsFar(exchange) : exchange.settle(SETTLING_EXCHANGES);
    if (withinStock || planned()) {
      exchange.improve(exchanges);
    }
    return withinStock;
  }

  /** Within a plan of borders the stock need not suffice: ends where no less is overdrawn. */
  private static boolean settleAsFar(CountExchange exchange) {
    long before = Long.MAX_VALUE;
    for (int done = 0; done < SETTLING_EXCHANGES; done += PLANNED_EXCHANGES) {
      if (exchange.settle(PLANNED_EXCHANGES)) {
        return true;
      }
      if (exchange.overdrawnLength() >= before) {
        return false;
      }
      before = exchange.overdrawnLength();
    }
    return false;
  }

  private void anneal() {
    int cells = 0;
    for (int[] group : groups) {
      cells += domains.yarns(group[0]).length;
    }
    int steps = Math.min(MOST_STEPS, cells * STEPS_PER_CELL);
    double hot = problem.prices().hard();
    double cold = problem.prices().step() / 50.0;
    double ratio = StrictMath.pow(cold / hot, 1.0 / Math.max(1, steps));
    double temperature = hot;
    for (int step = 0; step < steps; step++) {
      temperature = Math.max(cold, temperature * ratio);
      if (draws.below(2) == 0) {
        shift(temperature);
      } else {
        trade(temperature);
      }
    }
  }

  /** Moves one slot of a group from one yarn to another. */
  private void shift(double temperature) {
    int group = draws.below(groups.size());
    int slot = groups.get(group)[0];
    int[] domain = domains.yarns(slot);
    int from = domain[draws.below(domain.length)];
    int to = domain[draws.below(domain.length)];
    if (from == to || counts[group][from] == 0) {
      return;
    }
    long delta = balance(slot, from, to) + earlier.shift(group, counts[group], from, to);
    long less = problem.supply().need(slot, from);
    long more = problem.supply().need(slot, to);
    delta += stock.change(from, less, to, more);
    if (delta <= temperature * draws.exponential()) {
      stock.apply(from, less, to, more);
      move(group, slot, from, to);
    }
  }

  /** Moves a slot of one group from one yarn to another, and a slot of another group back. */
  private void trade(double temperature) {
    int groupA = draws.below(groups.size());
    int groupB = draws.below(groups.size());
    int slotA = groups.get(groupA)[0];
    int slotB = groups.get(groupB)[0];
    int[] domain = domains.yarns(slotA);
    int a = domain[draws.below(domain.length)];
    int b = domain[draws.below(domain.length)];
    boolean possible =
        groupA != groupB
            && a != b
            && counts[groupA][a] > 0
            && counts[groupB][b] > 0
            && domains.allows(slotB, a);
    if (!possible) {
      return;
    }
    long delta = 0;
    boolean sameLayer = problem.slots().layer()[slotA] == problem.slots().layer()[slotB];
    if (sameLayer && weight(slotA) != weight(slotB)) {
      return;
    }
    if (!sameLayer) {
      delta = balance(slotA, a, b) + balance(slotB, b, a);
    }
    delta += earlier.shift(groupA, counts[groupA], a, b);
    delta += earlier.shift(groupB, counts[groupB], b, a);
    long less = problem.supply().need(slotA, a) - problem.supply().need(slotB, a);
    long more = problem.supply().need(slotA, b) - problem.supply().need(slotB, b);
    delta += stock.change(a, less, b, more);
    if (delta <= temperature * draws.exponential()) {
      stock.apply(a, less, b, more);
      move(groupA, slotA, a, b);
      move(groupB, slotB, b, a);
    }
  }

  private void move(int group, int slot, int from, int to) {
    counts[group][from]--;
    counts[group][to]++;
    int row = problem.slots().layer()[slot] * yarns;
    surplus[row + from] -= weight(slot);
    surplus[row + to] += weight(slot);
  }

  private int weight(int slot) {
    return problem.slots().weight(problem.slots().orbit()[slot]);
  }

  private long balance(int slot, int from, int to) {
    int layer = problem.slots().layer()[slot];
    int row = layer * yarns;
    int weight = weight(slot);
    int steps = Math.abs(surplus[row + from] - weight) - Math.abs(surplus[row + from]);
    steps += Math.abs(surplus[row + to] + weight) - Math.abs(surplus[row + to]);
    return steps * problem.balance().cost()[layer];
  }

  private void dealGroup(int[] group, int[] count) {
    int[] slots = group.clone();
    shuffle(slots);
    slots = earlier.deal(slots, count, assignment);
    int next = 0;
    for (int yarn = 0; yarn < yarns; yarn++) {
      for (int i = 0; i < count[yarn]; i++) {
        assignment[slots[next++]] = yarn;
      }
    }
  }

  private void shuffle(int[] slots) {
    for (int i = slots.length - 1; i > 0; i--) {
      int j = draws.below(i + 1);
      int swap = slots[i];
      slots[i] = slots[j];
      slots[j] = swap;
    }
  }
}
