package lozengy.solver.search;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Domains;
import lozengy.solver.problem.Problem;

/**
 * One annealing walk: a state, its own random source, and the best valid assignment that it has
 * met. A walk is made of legs; each cools from one temperature to another over a given number of
 * moves.
 */
final class Walker {

  /** Moves between two changes of temperature. */
  private static final int STRIDE = 256;

  /** Slots of a window: with their tables they fit a core's cache. */
  private static final int WINDOW = 4096;

  private static final int MOVES_PER_WINDOW_SLOT = 4;
  private static final int DRAWS = 64;

  /** For each move of parts of the state, how many may go anywhere. */
  private static final double ANYWHERE = 0.08;

  private static final int LEAST_SHARE = 8;
  private static final int MOST_SHARE = 48;
  private static final int LOOKS_TO_ADAPT = 4;
  private static final double LEAST_PRESSURE = 0.1;
  private static final double MOST_PRESSURE = 30;

  private final Problem problem;
  private final State state;
  private final Acceptance acceptance;
  private Neighbourhood neighbourhood;
  private Moves moves;
  private final PileMoves pileMoves;
  private final int pileShare;
  private final Draws draws;
  private final int lookEvery;
  private final int[] best;
  private long bestCost = Long.MAX_VALUE;
  private long untilLook;
  private double hot;
  private double cold;
  private long legMoves;
  private long legDone;
  private final double windowPart;
  private long untilWindow;
  private boolean barred;
  private boolean wasOver;
  private int looksAlike;
  private final BorderPlans plans;
  private final int planStep;
  private int nextPlan;
  private boolean bordersOnly;
  private CountPlan counts;
  private boolean parted;

  Walker(Problem problem, long seed, Assertions assertions) {
    this(problem, new BorderPlans(problem), seed, 1, assertions);
  }

  /**
   * Makes a walker that shares plans of borders with others.
   *
   * @param count how many share them; their seeds leave different remainders by it
   */
  Walker(Problem problem, BorderPlans plans, long seed, int count, Assertions assertions) {
    this.problem = problem;
    this.plans = plans;
    this.nextPlan = Math.floorMod(seed, count);
    this.planStep = count;
    this.draws = new Draws(seed);
    this.state = new State(problem);
    Audit audit = assertions == Assertions.OFF ? null : new Audit(assertions, state, seed);
    this.acceptance = new Acceptance(state, draws, audit);
    changeAll();
    this.pileMoves = new PileMoves(state, draws, acceptance);
    this.pileShare = pileShare(problem);
    this.best = new int[problem.slots().count()];
    this.windowPart = Math.min(1, (double) WINDOW / Math.max(1, problem.slots().free().length));
    this.lookEvery = Math.max(STRIDE, problem.slots().count() / 2);
  }

  /** Of 64 moves, how many go to the pile: by its rounds among all that may move. */
  private static int pileShare(Problem problem) {
    if (problem.pile().isEmpty()) {
      return 0;
    }
    int free = problem.slots().free().length;
    int[] counts = problem.pile().counts();
    int rounds = 0;
    for (int stack = 0; stack < counts.length; stack++) {
      rounds += counts[stack] * problem.pile().yarns()[stack].length;
    }
    return free == 0 ? DRAWS : Math.max(LEAST_SHARE, Math.min(MOST_SHARE, DRAWS * rounds / free));
  }

  /**
   * Starts from a fresh deal of counts.
   *
   * @param exchanges exchanges that better the plan of counts
   * @param planned whether to keep to the next plan of borders
   */
  void deal(int exchanges, boolean planned) {
    Domains domains = planned ? nextPlan() : problem.domains();
    start(new CountPlan(problem, domains, draws).deal(exchanges));
  }

  /**
   * Starts from a fresh deal within a plan of some slots, which keep to it until all are freed.
   *
   * @param exchanges exchanges that better the plan of counts
   * @param yarnOf by slot the planned yarn, or {@link Sequences#OPEN}
   */
  void deal(int exchanges, int[] yarnOf) {
    start(new CountPlan(problem, problem.domains().narrowed(yarnOf), draws).deal(exchanges));
    int[] free = problem.slots().free();
    changeOnly(Arrays.stream(free).filter(slot -> yarnOf[slot] == Sequences.OPEN).toArray());
  }

  /**
   * Starts from a fresh deal whose counts go on from those of the deals before.
   *
   * @param exchanges exchanges that better the plan of counts
   */
  void dealOn(int exchanges) {
    if (counts != null) {
      start(counts.dealAgain(exchanges));
      return;
    }
    CountPlan plan = new CountPlan(problem, draws);
    start(plan.deal(exchanges));
    // what lies where of a pile is drawn anew for each deal, and with it the groups
    counts = plan.settled() && problem.pile().isEmpty() ? plan : null;
  }

  /**
   * Starts from a deal of counts close to an earlier plan, in which each round keeps its yarn as
   * long as the counts allow.
   *
   * @param plan what stands of the earlier plan
   * @param changeCost cost of a round's change
   * @param exchanges exchanges that better the plan of counts
   */
  void dealNear(EarlierPlan plan, long changeCost, int exchanges) {
    start(CountPlan.near(problem, draws, plan, changeCost).deal(exchanges));
  }

  /** Starts from an earlier plan, whose open rounds take any yarn that its layer lacks. */
  void fill(EarlierPlan plan, long changeCost) {
    restart(CountPlan.near(problem, draws, plan, changeCost).fill());
  }

  private void start(int[] assignment) {
    state.reset(assignment);
    neighbourhood.keepTo(0, 1);
    untilWindow = 0;
    new Mending(state, moves).mend();
    look();
  }

  /** The domains of the next plan of borders. */
  private Domains nextPlan() {
    List<Domains> all = plans.all();
    Domains domains = all.get(nextPlan % all.size());
    nextPlan += planStep;
    return domains;
  }

  /** Sets whether only borders move, until this is said again. */
  void bordersOnly(boolean only) {
    bordersOnly = only;
  }

  /** Sets whether, once no yarn is overdrawn, overdrawing is out of the question. */
  void barOverdrawing(boolean bar) {
    barred = bar;
    state.stock.bar(bar);
  }

  /** Changes only some of the free slots from now on, one or two at a time. */
  void changeOnly(int[] some) {
    change(some, null);
  }

  /** Changes all free slots from now on. */
  void changeAll() {
    change(problem.slots().free(), new Chains(state, draws, acceptance, plans.few()));
  }

  private void change(int[] some, Chains chains) {
    neighbourhood = new Neighbourhood(problem, draws, some);
    moves = new Moves(state, draws, acceptance, neighbourhood, chains);
  }

  /** Goes on from an assignment. */
  void restart(int[] assignment) {
    state.reset(assignment);
    look();
  }

  /** Begins a leg; temperatures in cost units. */
  void beginLeg(double fromTemperature, double toTemperature, long movesOfLeg) {
    hot = fromTemperature;
    cold = toTemperature;
    legMoves = movesOfLeg;
    legDone = 0;
  }

  /** Tells that the leg has another length than was thought. */
  void stretchLeg(long movesOfLeg) {
    legMoves = movesOfLeg;
  }

  /** Makes so many moves of the leg, where anything may change. */
  void walk(long count) {
    // where the pile fills every place there is no free round, and yet much to move
    boolean movable = neighbourhood.size() > 0 || !problem.pile().isEmpty();
    for (long done = 0; done < count; done += STRIDE) {
      double temperature = temperatureAfter(0);
      int stride = (int) Math.min(STRIDE, count - done);
      if (windowPart < 1 && (untilWindow -= stride) <= 0) {
        untilWindow = WINDOW * MOVES_PER_WINDOW_SLOT;
        neighbourhood.keepTo(draws.unit(), windowPart);
      }
      for (int i = movable ? 0 : stride; i < stride; i++) {
        move(temperature);
      }
      legDone += stride;
      untilLook -= stride;
      if (untilLook <= 0) {
        look();
      }
    }
  }

  /** The temperature after so many moves more. */
  double temperatureAfter(double ahead) {
    double part = Math.min(1, (legDone + ahead) / legMoves);
    return hot * StrictMath.exp(part * StrictMath.log(cold / hot));
  }

  /** Whether parts of the state may change by themselves for a while: counts are as they should. */
  boolean canPart() {
    return mix() != Mix.ANY;
  }

  /** Leaves the exchanges of like rounds to parts of the state, as far as it can part. */
  void leaveToParts() {
    parted = true;
  }

  /** For each move of parts, how many are to be made anywhere. */
  double anywhere() {
    return ANYWHERE + (double) pileShare / DRAWS;
  }

  /** Tries a move within a part of the state. */
  void attemptWithin(Neighbourhood part, Moves within, double temperature) {
    if (!bordersOnly) {
      within.exchangeAlike(part.slot(), temperature);
    } else if (part.hasBorders()) {
      within.exchangeAlike(part.border(), temperature);
    }
  }

  /** Goes on after parts of the state have made so many moves of the leg. */
  void settle(List<State> parts, long moves) {
    state.settle(parts);
    legDone += moves;
    acceptance.made("moves of parts", 0, 0, 0);
  }

  /** Mends what is broken at the end of a leg. */
  void mend() {
    if (state.hard() > 0) {
      neighbourhood.keepTo(0, 1);
      untilWindow = 0;
      new Mending(state, moves).mend();
    }
  }

  /**
   * Betters an assignment by exchanges of many rounds at once.
   *
   * @param assignment a valid one
   * @param most what to spend, in moves
   * @return what was spent
   */
  long reassign(int[] assignment, long most, BooleanSupplier ends) {
    restart(assignment);
    int[] free = problem.slots().free();
    long spent = new Reassignment(state, draws, acceptance, free).improve(most, ends);
    look();
    return spent;
  }

  /** What may change. */
  Neighbourhood neighbourhood() {
    return neighbourhood;
  }

  private void move(double temperature) {
    if (pileShare > 0 && (pileShare == DRAWS || draws.below(DRAWS) < pileShare)) {
      pileMoves.exchange(temperature);
    } else {
      moves.attempt(mix().draw(draws), temperature);
    }
  }

  private Mix mix() {
    if (bordersOnly) {
      return Mix.BORDERS;
    }
    if (!barred || state.stock.overdrawn() > 0) {
      return Mix.ANY;
    }
    return parted ? Mix.BESIDE_PARTS : Mix.COUNTS_KEPT;
  }

  /** Presses harder while a yarn stays overdrawn, more gently while none is. */
  private void adaptPressure() {
    boolean over = state.stock.overdrawn() > 0;
    looksAlike = over == wasOver ? looksAlike + 1 : 1;
    wasOver = over;
    if (looksAlike < LOOKS_TO_ADAPT) {
      return;
    }
    looksAlike = 0;
    double pressure = state.stock.pressure();
    state.setPressure(
        over ? Math.min(MOST_PRESSURE, pressure * 1.5) : Math.max(LEAST_PRESSURE, pressure / 1.3));
  }

  /** Keeps the state if it is valid and better than the best so far. */
  void look() {
    untilLook = lookEvery;
    adaptPressure();
    if (state.cost() < bestCost && state.hard() == 0) {
      bestCost = state.cost();
      System.arraycopy(state.yarn, 0, best, 0, best.length);
    }
  }

  /** Cost of the best valid assignment; {@link Long#MAX_VALUE} while there is none. */
  long bestCost() {
    return bestCost;
  }

  /** The best valid assignment; not to be changed. */
  int[] best() {
    return best;
  }

  /** The state. */
  State state() {
    return state;
  }
}
