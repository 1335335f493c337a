package lozengy.solver.search;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.PieceKind;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/** What moves may change, sorted by what can be exchanged with what, to draw from. */
final class Neighbourhood {

  /** Most pieces that are one by a symmetry. */
  private static final int MOST_IMAGES = 4;

  private final Problem problem;
  private final Slots slots;
  private final Draws draws;
  private final int[] free;
  private final boolean[] among;
  private final int[][] freeOfLayer;
  private final int[][] freeAlike;
  private final int[] groupOf;
  private final int[] freeBorders;
  private final int[][] freePieces;
  private final int[] kindOfPiece;
  private final boolean[] allFree;
  private double windowFrom;
  private double windowPart = 1;

  /**
   * Sorts slots.
   *
   * @param some slots that may change; all others stay
   */
  Neighbourhood(Problem problem, Draws draws, int[] some) {
    this.problem = problem;
    this.slots = problem.slots();
    this.draws = draws;
    this.free = some;
    this.among = new boolean[slots.count()];
    for (int slot : some) {
      among[slot] = true;
    }
    this.freeOfLayer = split(free, slot -> slots.layer()[slot], problem.balance().cost().length);
    List<int[]> groups = CountPlan.groups(problem, free);
    this.freeAlike = groups.toArray(int[][]::new);
    this.groupOf = new int[slots.count()];
    for (int group = 0; group < freeAlike.length; group++) {
      for (int slot : freeAlike[group]) {
        groupOf[slot] = group;
      }
    }
    this.freeBorders = Arrays.stream(free).filter(this::onSeam).toArray();
    this.kindOfPiece = new int[slots.orbits()];
    this.allFree = new boolean[slots.orbits()];
    for (int orbit = 0; orbit < kindOfPiece.length; orbit++) {
      int kind = problem.blanket().kind(slots.lead()[orbit]).ordinal();
      allFree[orbit] = everyRoundFree(orbit);
      kindOfPiece[orbit] = kind + PieceKind.values().length * (slots.weight(orbit) - 1);
    }
    int[] pieces = IntStream.range(0, slots.orbits()).filter(orbit -> allFree[orbit]).toArray();
    this.freePieces =
        split(pieces, orbit -> kindOfPiece[orbit], PieceKind.values().length * MOST_IMAGES);
  }

  /**
   * What lies within some pieces, for exchanges of like rounds alone. O(rounds of the pieces +
   * groups).
   *
   * @param whole the neighbourhood of the whole board
   * @param orbits the pieces
   * @param draws the random source of its own
   */
  Neighbourhood(Neighbourhood whole, int[] orbits, Draws draws) {
    this.problem = whole.problem;
    this.slots = whole.slots;
    this.draws = draws;
    this.among = whole.among;
    this.groupOf = whole.groupOf;
    this.kindOfPiece = null;
    this.allFree = null;
    this.freeOfLayer = null;
    this.freePieces = null;
    this.free =
        Arrays.stream(orbits)
            .flatMap(o -> IntStream.range(slots.orbitStart()[o], slots.orbitStart()[o + 1]))
            .filter(slot -> among[slot])
            .toArray();
    this.freeAlike = split(free, slot -> groupOf[slot], whole.freeAlike.length);
    this.freeBorders = Arrays.stream(free).filter(this::onSeam).toArray();
  }

  /** Splits a list by what a function says of each, keeping the order. */
  private static int[][] split(int[] list, IntUnaryOperator of, int ways) {
    int[] sizes = new int[ways];
    for (int each : list) {
      sizes[of.applyAsInt(each)]++;
    }
    int[][] split = new int[ways][];
    for (int way = 0; way < ways; way++) {
      split[way] = new int[sizes[way]];
    }
    Arrays.fill(sizes, 0);
    for (int each : list) {
      int way = of.applyAsInt(each);
      split[way][sizes[way]++] = each;
    }
    return split;
  }

  /** Whether a slot is a border, or may clash with a round of another piece. */
  private boolean onSeam(int slot) {
    Clashes clashes = problem.clashes();
    int orbit = slots.orbit()[slot];
    boolean any = slots.layer()[slot] == 0;
    for (int i = clashes.start()[slot]; i < clashes.start()[slot + 1] && !any; i++) {
      any = slots.orbit()[clashes.slot()[i]] != orbit;
    }
    return any;
  }

  private boolean everyRoundFree(int orbit) {
    for (int slot = slots.orbitStart()[orbit]; slot < slots.orbitStart()[orbit + 1]; slot++) {
      if (slots.fixedYarn()[slot] != Sequences.OPEN || !among[slot]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Keeps all draws to a window of the blanket until the next call: what a window touches stays in
   * the processor's cache. Windows run along the order of the slots, which is row by row.
   *
   * @param from where it begins, 0 to 1
   * @param part how large it is, above 0 to 1; beyond the end it goes on at the beginning
   */
  void keepTo(double from, double part) {
    windowFrom = from;
    windowPart = part;
  }

  private int pick(int[] list) {
    int length = list.length;
    if (windowPart >= 1) {
      return list[draws.below(length)];
    }
    int at = (int) (windowFrom * length) + draws.below(Math.max(2, (int) (windowPart * length)));
    return list[at % length];
  }

  /** How many slots may change. */
  int size() {
    return free.length;
  }

  /** Whether a slot may change. */
  boolean has(int slot) {
    return among[slot];
  }

  /** Any slot. */
  int slot() {
    return pick(free);
  }

  /** A slot of the same layer. */
  int ofLayer(int slot) {
    return pick(freeOfLayer[slots.layer()[slot]]);
  }

  /** A slot with the same needs and domain. */
  int alike(int slot) {
    return pick(freeAlike[groupOf[slot]]);
  }

  /** Whether there is any slot at a seam. */
  boolean hasBorders() {
    return freeBorders.length > 0;
  }

  /** A slot at a seam. */
  int border() {
    return pick(freeBorders);
  }

  /** A piece of the same kind, all of it free; -1 where there is no other. */
  int pieceLike(int orbit) {
    int[] like = freePieces[kindOfPiece[orbit]];
    return like.length < 2 || !allFree[orbit] ? -1 : pick(like);
  }
}
