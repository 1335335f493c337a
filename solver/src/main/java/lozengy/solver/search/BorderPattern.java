package lozengy.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * A plan of all borders, made without the other rounds: the places of a layout lie on a lattice,
 * and borders whose yarns follow its sublattices repeat less, and lie better beside each other,
 * than what a search among all rounds comes to. From eight yarns on, some have no repeat at all.
 *
 * <p>Each sublattice of up to {@link #MOST_CELLS} cosets, by its Hermite normal form, is annealed
 * coset by coset, so that a yarn may take one of them or several; the best few again and longer;
 * and the best of these border by border, which mends what locks, bans and stock have against them.
 */
final class BorderPattern {

  private static final int LEAST_CELLS = 4;
  private static final int MOST_CELLS = 36;

  /** The yarn to spare, as a part of what is used. */
  private static final double LEAST_SPARE = 0.03;

  /** How many sublattices are annealed longer, and how many border by border. */
  private static final int LONGER = 12;

  private static final int FINE = 5;

  /** Steps for each coset or border. */
  private static final int SHORT_STEPS = 20;

  private static final int LONG_STEPS = 1000;
  private static final int FINE_STEPS = 500;

  /** Temperatures, in steps of the lightest repeat for a border. */
  private static final double HOT = 2;

  private static final double HOT_OF_FINE = 0.4;
  private static final double COLD = 0.1;
  private static final double COLD_OF_LONG = 0.05;

  /** Moves of a walk that take as long as a step. */
  private static final int MOVES_OF_STEP = 2;

  private final Problem problem;
  private final Draws draws;
  private final int[] across;
  private final int[] down;
  private final BorderCells borders;
  private long steps;

  BorderPattern(Problem problem, Draws draws) {
    this.problem = problem;
    this.draws = draws;
    this.borders = new BorderCells(problem);
    boolean onPoint = problem.blanket().layout().size().setting() == Setting.ON_POINT;
    Slots slots = problem.slots();
    this.across = new int[slots.orbits()];
    this.down = new int[slots.orbits()];
    for (int orbit = 0; orbit < across.length; orbit++) {
      Place place = problem.blanket().place(slots.lead()[orbit]);
      across[orbit] = Math.floorDiv(onPoint ? place.x() + place.y() : place.x(), 2);
      down[orbit] = Math.floorDiv(onPoint ? place.x() - place.y() : place.y(), 2);
    }
  }

  /**
   * Whether borders can be planned so: each lies in one place, none is a pile's piece, and there is
   * yarn enough that the other rounds find theirs beside borders that stay.
   *
   * @param assignment a valid one, which tells what yarn is to spare
   */
  static boolean suits(Problem problem, int[] assignment) {
    if (!problem.pile().isEmpty() || problem.slots().tied()) {
      return false;
    }
    StockUse stock = new StockUse(problem);
    stock.reset(assignment);
    long used = LongStream.of(stock.used()).sum();
    return LongStream.of(problem.supply().usable()).sum() - used >= LEAST_SPARE * used;
  }

  /** A sublattice with the yarns of its cosets. */
  private record Coloured(int[] cellOf, int cells, int[] yarn, long cost) {}

  /**
   * Plans.
   *
   * @param ends asked now and then; once true, what is planned so far must do
   * @return the yarn of every border that is planned, by slot; {@link Sequences#OPEN} for all
   *     others
   */
  int[] yarns(BooleanSupplier ends) {
    List<Coloured> all = new ArrayList<>();
    for (int cells = LEAST_CELLS; cells <= Math.min(MOST_CELLS, across.length); cells++) {
      for (int width = 1; width <= cells; width++) {
        for (int shift = 0; cells % width == 0 && shift < cells / width; shift++) {
          if (!ends.getAsBoolean()) {
            int[] cellOf = cosets(width, cells / width, shift);
            all.add(coloured(cellOf, cells, SHORT_STEPS, COLD));
          }
        }
      }
    }
    List<Coloured> longer = new ArrayList<>();
    for (Coloured each : best(all, LONGER)) {
      longer.add(each);
      if (ends.getAsBoolean()) {
        break;
      }
      longer.add(coloured(each.cellOf, each.cells, LONG_STEPS, COLD_OF_LONG));
    }
    int[] best = new int[0];
    long bestCost = Long.MAX_VALUE;
    for (Coloured each : best(longer, FINE)) {
      if (ends.getAsBoolean()) {
        break;
      }
      borders.begin(IntStream.of(each.cellOf).map(cell -> each.yarn[cell]).toArray());
      long cost = anneal(borders, HOT_OF_FINE, COLD_OF_LONG, FINE_STEPS);
      if (cost < bestCost) {
        bestCost = cost;
        best = borders.yarns();
      }
    }
    return bySlot(best);
  }

  /** What the plan took of the time, in moves of a walk. */
  long moves() {
    return MOVES_OF_STEP * steps;
  }

  /** The most that {@link #moves()} can come to. */
  static long mostMoves(Problem problem) {
    int borders = problem.slots().orbits();
    long most = (long) LONGER * LONG_STEPS * MOST_CELLS + (long) FINE * FINE_STEPS * borders;
    for (int cells = LEAST_CELLS; cells <= Math.min(MOST_CELLS, borders); cells++) {
      for (int width = 1; width <= cells; width++) {
        most += cells % width == 0 ? (long) cells / width * cells * SHORT_STEPS : 0;
      }
    }
    return MOVES_OF_STEP * most;
  }

  private static List<Coloured> best(List<Coloured> all, int most) {
    return all.stream().sorted(Comparator.comparingLong(Coloured::cost)).limit(most).toList();
  }

  /** The coset of each piece by the sublattice of (width, shift) and (0, height). */
  private int[] cosets(int width, int height, int shift) {
    int[] cellOf = new int[across.length];
    for (int orbit = 0; orbit < cellOf.length; orbit++) {
      int column = Math.floorDiv(across[orbit], width);
      int row = Math.floorMod(down[orbit] - column * shift, height);
      cellOf[orbit] = Math.floorMod(across[orbit], width) * height + row;
    }
    return cellOf;
  }

  private Coloured coloured(int[] cellOf, int cells, int stepsOfCell, double cold) {
    BorderCells joined = new BorderCells(borders, cellOf, cells);
    joined.beginAtRandom(draws);
    long cost = anneal(joined, HOT, cold, stepsOfCell);
    return new Coloured(cellOf, cells, joined.yarns(), cost);
  }

  private long anneal(BorderCells cells, double hot, double cold, int stepsOfCell) {
    long count = (long) stepsOfCell * cells.size();
    steps += count;
    return cells.anneal(hot, cold, count, draws);
  }

  /** Leaves open what a border may not take. */
  private int[] bySlot(int[] yarnOf) {
    Slots slots = problem.slots();
    int[] planned = new int[slots.count()];
    Arrays.fill(planned, Sequences.OPEN);
    for (int orbit = 0; orbit < yarnOf.length; orbit++) {
      int slot = slots.border(orbit);
      if (problem.domains().allows(slot, yarnOf[orbit])) {
        planned[slot] = yarnOf[orbit];
      }
    }
    return planned;
  }
}
