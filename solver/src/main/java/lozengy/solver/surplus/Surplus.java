package lozengy.solver.surplus;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PileEntry;
import lozengy.model.layout.PieceKind;

/**
 * A pile that holds more finished pieces of a kind than there are places for them, and the choices
 * of what stays out. A choice is an array with a number for each stack of {@link #free}: how many
 * of its pieces stay out. Of a kind just as many do as there are too many, so that finished pieces
 * fill all its places.
 */
public final class Surplus {

  private final Blanket free;
  private final List<Stack> stacks;
  private final int[] tooMany;
  private final BorderRoom borders;

  private Surplus(Blanket free) {
    this.free = free;
    this.stacks = free.pile().stacks();
    this.tooMany = new int[PieceKind.values().length];
    for (PieceKind kind : PieceKind.values()) {
      tooMany[kind.ordinal()] = Math.max(0, free.pile().count(kind) - room(kind));
    }
    this.borders = new BorderRoom(free);
  }

  /**
   * Looks at a blanket's pile afresh, whatever its brief says stays out.
   *
   * @param blanket the blanket
   * @return its surplus; empty where no piece stays out and none needs to
   */
  public static Optional<Surplus> of(Blanket blanket) {
    Brief brief = blanket.brief();
    boolean chosen = brief.pile().stream().anyMatch(entry -> entry.out() > 0);
    if (!chosen && !openIn(blanket)) {
      return Optional.empty();
    }
    List<PileEntry> all = brief.pile().stream().map(entry -> entry.withOut(0)).toList();
    return Optional.of(new Surplus(Blanket.ofUnjudged(brief.withPile(all))));
  }

  /**
   * {@return whether more finished pieces are to be laid than there are places, so that what stays
   * out is still to be chosen}
   *
   * @param blanket the blanket
   */
  public static boolean openIn(Blanket blanket) {
    return Arrays.stream(PieceKind.values())
        .anyMatch(kind -> blanket.pile().count(kind) > room(blanket, kind));
  }

  /**
   * {@return the blanket as it is, or where what stays out is still to be chosen, with the choice
   * to begin with}
   *
   * @param blanket the blanket
   */
  public static Blanket settled(Blanket blanket) {
    if (!openIn(blanket)) {
      return blanket;
    }
    Surplus surplus = of(blanket).orElseThrow();
    return surplus.with(surplus.start(Optional.empty()));
  }

  private int room(PieceKind kind) {
    return room(free, kind);
  }

  private static int room(Blanket blanket, PieceKind kind) {
    return (int)
        IntStream.range(0, blanket.pieceCount())
            .filter(piece -> blanket.domains().takesPile(piece) && blanket.kind(piece) == kind)
            .count();
  }

  /** {@return the blanket with nothing left out} */
  public Blanket free() {
    return free;
  }

  /** {@return whether some piece has to stay out} */
  public boolean any() {
    return IntStream.of(tooMany).anyMatch(many -> many > 0);
  }

  /**
   * {@return the blanket with a choice made}
   *
   * @param out by stack, how many of its pieces stay out
   */
  public Blanket with(int[] out) {
    int[] left = out.clone();
    List<PileEntry> pile = new ArrayList<>();
    for (PileEntry entry : free.brief().pile()) {
      int stack = stack(entry);
      int here = Math.min(left[stack], entry.count());
      left[stack] -= here;
      pile.add(entry.withOut(here));
    }
    return Blanket.ofUnjudged(free.brief().withPile(pile));
  }

  private int stack(PileEntry entry) {
    int[] yarns = entry.rounds().stream().mapToInt(free::yarnIndex).toArray();
    for (int stack = 0; stack < stacks.size(); stack++) {
      Stack each = stacks.get(stack);
      if (each.kind() == entry.kind() && Arrays.equals(each.yarns(), yarns)) {
        return stack;
      }
    }
    throw new IllegalStateException("an entry of the pile is in no stack");
  }

  /**
   * {@return a choice to begin with: what lay in an earlier plan stays in; else pieces stay out
   * whose borders are more than can lie apart, then those whose yarns have the most above their
   * shares} O(pieces too many x stacks x rounds).
   *
   * @param earlier the yarns of the earlier plan's pieces, where there is one
   */
  public int[] start(Optional<Sequences> earlier) {
    int[] out = new int[stacks.size()];
    if (earlier.isPresent()) {
      PilePlacement laid = PilePlacement.of(free, earlier.get());
      Arrays.setAll(out, laid::missing);
    }
    Shares shares = new Shares(free, borders, out);
    for (PieceKind kind : PieceKind.values()) {
      for (int more = tooMany[kind.ordinal()] - out(out, kind); more != 0; ) {
        int step = Integer.signum(more);
        int best = -1;
        for (int stack = 0; stack < out.length; stack++) {
          int left = out[stack] + step;
          boolean may = stacks.get(stack).kind() == kind && left >= 0;
          if (may
              && left <= stacks.get(stack).count()
              && (best < 0 || shares.change(stack, step) < shares.change(best, step))) {
            best = stack;
          }
        }
        shares.leaveOut(best, step);
        out[best] += step;
        more -= step;
      }
    }
    return out;
  }

  private int out(int[] out, PieceKind kind) {
    return IntStream.range(0, out.length)
        .filter(stack -> stacks.get(stack).kind() == kind)
        .map(stack -> out[stack])
        .sum();
  }

  /**
   * {@return whether borders alone keep the pieces of some kind from filling its places, whatever
   * stays out}
   */
  public boolean bordersNeverFit() {
    return Arrays.stream(PieceKind.values())
        .anyMatch(kind -> tooMany[kind.ordinal()] > 0 && borders.most(kind) < room(kind));
  }

  /**
   * {@return all choices, in a fixed order; empty where there are more than a limit}
   *
   * @param most the limit, at least 1
   */
  public Optional<List<int[]>> all(int most) {
    List<int[]> choices = List.of(new int[stacks.size()]);
    for (PieceKind kind : PieceKind.values()) {
      List<int[]> next = new ArrayList<>();
      for (int[] begun : choices) {
        extend(begun, kind, 0, tooMany[kind.ordinal()], next, most);
      }
      choices = next;
    }
    return choices.size() > most ? Optional.empty() : Optional.of(choices);
  }

  private void extend(
      int[] begun, PieceKind kind, int stack, int left, List<int[]> found, int most) {
    if (found.size() > most) {
      return;
    }
    if (stack == begun.length) {
      if (left == 0) {
        found.add(begun.clone());
      }
      return;
    }
    boolean ofKind = stacks.get(stack).kind() == kind;
    int highest = ofKind ? Math.min(left, stacks.get(stack).count()) : 0;
    int behind = 0;
    for (int i = stack + 1; i < begun.length; i++) {
      behind += stacks.get(i).kind() == kind ? stacks.get(i).count() : 0;
    }
    for (int here = highest; here >= Math.max(0, left - behind); here--) {
      int before = begun[stack];
      begun[stack] += here;
      extend(begun, kind, stack + 1, left - here, found, most);
      begun[stack] = before;
    }
  }

  /**
   * {@return the choices that exchange one piece that stays out for one that is laid, as pairs of
   * stacks: the one that comes in, and the one that goes out}
   *
   * @param out a choice
   */
  public List<Exchange> exchanges(int[] out) {
    List<Exchange> exchanges = new ArrayList<>();
    for (int in = 0; in < out.length; in++) {
      for (int goes = 0; goes < out.length; goes++) {
        if (in != goes
            && out[in] > 0
            && out[goes] < stacks.get(goes).count()
            && stacks.get(in).kind() == stacks.get(goes).kind()) {
          exchanges.add(new Exchange(in, goes));
        }
      }
    }
    return exchanges;
  }

  /**
   * A piece that stayed out for one that was laid.
   *
   * @param in stack of the piece that comes in
   * @param goes stack of the piece that goes out
   */
  public record Exchange(int in, int goes) {

    /**
     * {@return a choice after this exchange}
     *
     * @param out the choice before
     */
    public int[] of(int[] out) {
      int[] other = out.clone();
      other[in]--;
      other[goes]++;
      return other;
    }
  }

  /**
   * {@return yarns of the pieces of a stack, centre first; not to be changed}
   *
   * @param stack the stack's index in {@link #free}
   */
  public int[] yarns(int stack) {
    return stacks.get(stack).yarns();
  }

  /**
   * {@return the places at which pieces of a stack lie}
   *
   * @param stack the stack's index in {@link #free}
   * @param sequences all pieces' yarns
   */
  public int[] places(int stack, Sequences sequences) {
    Stack each = stacks.get(stack);
    return IntStream.range(0, free.pieceCount())
        .filter(piece -> free.domains().takesPile(piece) && free.kind(piece) == each.kind())
        .filter(piece -> Arrays.equals(sequences.of(piece), each.yarns()))
        .toArray();
  }
}
