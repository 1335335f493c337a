package lozengy.solver.search;

import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.PieceKind;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * The moves of the search. Each draws a neighbour of the state, tells its cost, and makes it if the
 * cost is within a threshold. No move allocates.
 */
final class Moves {

  /** Most pieces that are one by a symmetry. */
  private static final int MOST_IMAGES = 4;

  static final long NO_LIMIT = Long.MAX_VALUE / 2;

  private final Problem problem;
  private final State state;
  private final Draws draws;
  private final Audit audit;
  private final Slots slots;
  private final int[] free;
  private final int[][] freeOfLayer;
  private final int[][] freeAlike;
  private final int[] groupOf;
  private final int[][] freePieces;
  private final int[] kindOfPiece;
  private final boolean[] allFree;
  private final boolean[] among;
  private final int[] freeBorders;
  private final boolean pile;
  private final Chains chains;
  private double windowFrom;
  private double windowPart = 1;

  /**
   * Makes the moves of a state.
   *
   * @param audit told of every move; null for real work
   * @param anyChain whether chains of borders may have any length
   */
  Moves(State state, Draws draws, Audit audit, boolean anyChain) {
    this(state, draws, audit, anyChain, state.problem.slots().free());
  }

  /**
   * Makes moves that change only some of the slots.
   *
   * @param audit told of every move; null for real work
   * @param anyChain whether chains of borders may have any length
   * @param some slots that may change; all others stay, and no chains are made
   */
  Moves(State state, Draws draws, Audit audit, boolean anyChain, int[] some) {
    this.problem = state.problem;
    this.state = state;
    this.draws = draws;
    this.audit = audit;
    this.slots = problem.slots();
    this.free = some;
    this.among = new boolean[slots.count()];
    for (int slot : some) {
      among[slot] = true;
    }
    this.freeOfLayer = new int[problem.balanceCost().length][];
    for (int layer = 0; layer < freeOfLayer.length; layer++) {
      int wanted = layer;
      freeOfLayer[layer] =
          Arrays.stream(free).filter(slot -> slots.layer()[slot] == wanted).toArray();
    }
    List<int[]> groups = CountPlan.groups(problem, free);
    this.freeAlike = groups.toArray(int[][]::new);
    this.groupOf = new int[slots.count()];
    for (int group = 0; group < freeAlike.length; group++) {
      for (int slot : freeAlike[group]) {
        groupOf[slot] = group;
      }
    }
    this.freeBorders = Arrays.stream(free).filter(this::onSeam).toArray();
    this.pile = !problem.pile().isEmpty();
    this.kindOfPiece = new int[slots.pieces()];
    this.allFree = new boolean[slots.pieces()];
    this.freePieces = new int[PieceKind.values().length * MOST_IMAGES][];
    for (int piece = 0; piece < kindOfPiece.length; piece++) {
      int kind = problem.blanket().kind(slots.lead()[piece]).ordinal();
      allFree[piece] = allFree(piece);
      kindOfPiece[piece] = kind + PieceKind.values().length * (slots.weight(piece) - 1);
    }
    for (int kind = 0; kind < freePieces.length; kind++) {
      int wanted = kind;
      freePieces[kind] =
          java.util.stream.IntStream.range(0, slots.pieces())
              .filter(piece -> kindOfPiece[piece] == wanted && allFree[piece])
              .toArray();
    }
    this.chains = new Chains(state, draws, audit, anyChain);
  }

  /** Whether a slot is a border, or may clash with a round of another piece. */
  private boolean onSeam(int slot) {
    Clashes clashes = problem.clashes();
    int piece = slots.piece()[slot];
    boolean any = slots.layer()[slot] == 0;
    for (int i = clashes.start()[slot]; i < clashes.start()[slot + 1] && !any; i++) {
      any = slots.piece()[clashes.slot()[i]] != piece;
    }
    return any;
  }

  private boolean allFree(int piece) {
    for (int slot = slots.pieceStart()[piece]; slot < slots.pieceStart()[piece + 1]; slot++) {
      if (slots.fixedYarn()[slot] != Sequences.OPEN || !among[slot]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Keeps all moves to a window of the blanket until the next call: what a window touches stays in
   * the processor's cache. Windows run along the order of the slots, which is row by row.
   *
   * @param from where it begins, 0 to 1
   * @param part how large it is, above 0 to 1; beyond the end it goes on at the beginning
   */
  void keepTo(double from, double part) {
    windowFrom = from;
    windowPart = part;
  }

  /** Whether a slot belongs to a finished piece of the pile, which only moves as a whole. */
  private boolean held(int slot) {
    return state.laid.holds(slots.piece()[slot]);
  }

  private int pick(int[] list) {
    int length = list.length;
    if (windowPart >= 1) {
      return list[draws.below(length)];
    }
    int at = (int) (windowFrom * length) + draws.below(Math.max(2, (int) (windowPart * length)));
    return list[at % length];
  }

  /** Gives a random slot a random other yarn. */
  void change(double temperature) {
    change(pick(free), temperature);
  }

  /** Gives a slot a random other yarn. */
  void change(int slot, double temperature) {
    if (held(slot)) {
      return;
    }
    int[] domain = problem.domains().yarns(slot);
    int to = domain[draws.below(domain.length)];
    if (to == state.yarn[slot]) {
      return;
    }
    long most = ceiling(temperature);
    if (audit != null && audit.full()) {
      int from = state.yarn[slot];
      long told = state.change(slot, to, NO_LIMIT);
      audit.tried("change", told, () -> state.apply(slot, to), () -> state.apply(slot, from), slot);
    }
    long told = state.change(slot, to, most);
    if (told <= most && accepts(told, temperature)) {
      state.apply(slot, to);
      made("change", told, slot, slot);
    }
  }

  /** Exchanges the yarns of two slots of one layer. */
  void exchange(double temperature) {
    int slotA = pick(free);
    int[] like = freeOfLayer[slots.layer()[slotA]];
    exchange(slotA, pick(like), temperature);
  }

  /**
   * Exchanges the yarns of two slots with the same needs and domain: counts and stock stay as is.
   */
  void exchangeAlike(double temperature) {
    exchangeAlike(pick(free), temperature);
  }

  /** Exchanges the yarns of a slot and another one with the same needs and domain. */
  void exchangeAlike(int slotA, double temperature) {
    int slotB = pick(freeAlike[groupOf[slotA]]);
    if (state.yarn[slotA] == state.yarn[slotB] || !mayExchange(slotA, slotB)) {
      return;
    }
    if (audit != null && audit.full()) {
      tryOut(slotA, slotB, state.exchangeAlike(slotA, slotB, NO_LIMIT));
    }
    long most = ceiling(temperature);
    long told = state.exchangeAlike(slotA, slotB, most);
    if (told <= most && accepts(told, temperature)) {
      swap(slotA, slotB);
      made("exchange", told, slotA, slotB);
    }
  }

  /** No loss above this is ever accepted. */
  static long ceiling(double temperature) {
    return (long) (temperature * Draws.MOST);
  }

  private boolean accepts(long told, double temperature) {
    return draws.accept(told, temperature);
  }

  /** Whether neither slot is held by a finished piece, and both stand for as many places. */
  private boolean mayExchange(int slotA, int slotB) {
    if (pile && (held(slotA) || held(slotB))) {
      return false;
    }
    return !slots.tied()
        || slots.weight(slots.piece()[slotA]) == slots.weight(slots.piece()[slotB]);
  }

  private void tryOut(int slotA, int slotB, long told) {
    Runnable swap = () -> swap(slotA, slotB);
    audit.tried("exchange", told, swap, swap, slotA, slotB);
  }

  /** Exchanges the yarns of two slots of any layers: shifts counts and stock by little. */
  void exchangeAcross(double temperature) {
    exchange(pick(free), pick(free), temperature);
  }

  /** Exchanges the yarns of two rounds of one piece. */
  void exchangeWithin(double temperature) {
    int slotA = pick(free);
    int piece = slots.piece()[slotA];
    int start = slots.pieceStart()[piece];
    int slotB = start + draws.below(slots.rounds(piece));
    if (among[slotB] && state.free(slotB)) {
      exchange(slotA, slotB, temperature);
    }
  }

  private void exchange(int slotA, int slotB, double temperature) {
    int a = state.yarn[slotA];
    int b = state.yarn[slotB];
    if (a == b || !problem.domains().allows(slotA, b) || !problem.domains().allows(slotB, a)) {
      return;
    }
    if (!mayExchange(slotA, slotB)) {
      return;
    }
    if (audit != null && audit.full()) {
      tryOut(slotA, slotB, state.exchange(slotA, slotB, NO_LIMIT));
    }
    long most = ceiling(temperature);
    long told = state.exchange(slotA, slotB, most);
    if (told <= most && accepts(told, temperature)) {
      swap(slotA, slotB);
      made("exchange", told, slotA, slotB);
    }
  }

  private void swap(int slotA, int slotB) {
    int a = state.yarn[slotA];
    state.apply(slotA, state.yarn[slotB]);
    state.apply(slotB, a);
  }

  private void made(String move, long told, int slotA, int slotB) {
    state.addCost(told);
    if (audit != null) {
      audit.made(move, slotA, slotB);
    }
  }

  /** Exchanges the sequences of two pieces of one kind. */
  void exchangeSequences(double temperature) {
    int pieceA = slots.piece()[pick(free)];
    int[] like = freePieces[kindOfPiece[pieceA]];
    if (like.length < 2 || !allFree[pieceA]) {
      return;
    }
    int pieceB = pick(like);
    boolean held = state.laid.holds(pieceA) || state.laid.holds(pieceB);
    if (held || pieceA == pieceB || !domainsAllowExchange(pieceA, pieceB)) {
      return;
    }
    long told = state.exchangeSequences(pieceA, pieceB);
    if (audit != null && audit.full()) {
      Runnable swap = () -> swapSequences(pieceA, pieceB);
      audit.tried(
          "exchange of sequences", told, swap, swap, slots.border(pieceA), slots.border(pieceB));
    }
    if (told <= ceiling(temperature) && accepts(told, temperature)) {
      swapSequences(pieceA, pieceB);
      made("exchange of sequences", told, slots.border(pieceA), slots.border(pieceB));
    }
  }

  private void swapSequences(int pieceA, int pieceB) {
    int slotB = slots.pieceStart()[pieceB];
    int end = slots.pieceStart()[pieceA + 1];
    for (int slotA = slots.pieceStart()[pieceA]; slotA < end; slotA++, slotB++) {
      swap(slotA, slotB);
    }
  }

  private boolean domainsAllowExchange(int pieceA, int pieceB) {
    int slotB = slots.pieceStart()[pieceB];
    int end = slots.pieceStart()[pieceA + 1];
    for (int slotA = slots.pieceStart()[pieceA]; slotA < end; slotA++, slotB++) {
      if (!problem.domains().allows(slotA, state.yarn[slotB])
          || !problem.domains().allows(slotB, state.yarn[slotA])) {
        return false;
      }
    }
    return true;
  }

  /** Exchanges yarns along a chain of borders. */
  void chain(double temperature) {
    if (freeBorders.length > 0 && free == slots.free()) {
      chains.exchange(pick(freeBorders), temperature);
    }
  }

  /** Gives a random border another yarn, or exchanges it with another of its needs and domain. */
  void border(double temperature) {
    if (freeBorders.length == 0) {
      return;
    }
    int slot = pick(freeBorders);
    if (draws.below(2) == 0) {
      change(slot, temperature);
    } else {
      exchangeAlike(slot, temperature);
    }
  }
}
