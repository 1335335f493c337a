package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.Pairs;
import lozengy.solver.constraint.Domains;

/**
 * A plan that breaks no rule and may leave rounds open. Rounds are numbered piece by piece; what is
 * worked stays.
 */
final class PartialPlan {

  private final Blanket blanket;
  private final Domains direct;
  private final int[] start;
  private final int[] pieceOf;
  private final int[] yarns;
  private final long[] left;
  private final int[][] neighbours;
  private final PartialCounts counts;
  private final Map<List<Integer>, Integer> sequences = new HashMap<>();

  /** A plan with nothing but what is worked. */
  PartialPlan(Blanket blanket) {
    this.blanket = blanket;
    this.direct = Domains.direct(blanket);
    this.start = new int[blanket.pieceCount() + 1];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      start[piece + 1] = start[piece] + blanket.roundCount(piece);
    }
    this.pieceOf = new int[start[blanket.pieceCount()]];
    this.yarns = new int[pieceOf.length];
    this.neighbours = neighbours(blanket);
    this.counts = new PartialCounts(blanket);
    this.left = new long[blanket.yarnCount()];
    for (int yarn = 0; yarn < left.length; yarn++) {
      left[yarn] = blanket.usableMillimetres(yarn) - blanket.fixedUseMillimetres(yarn);
    }
    Arrays.fill(yarns, Sequences.OPEN);
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      Arrays.fill(pieceOf, start[piece], start[piece + 1], piece);
      for (int slot = start[piece]; slot < start[piece + 1] && !planned(slot); slot++) {
        set(slot, blanket.locked(piece, slot - start[piece]));
      }
    }
  }

  private static int[][] neighbours(Blanket blanket) {
    List<List<Integer>> lists = new ArrayList<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      lists.add(new ArrayList<>());
    }
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      lists.get(seams.first()[seam]).add(seams.second()[seam]);
      lists.get(seams.second()[seam]).add(seams.first()[seam]);
    }
    return lists.stream()
        .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  /** How many rounds there are. */
  int slots() {
    return yarns.length;
  }

  /** How many yarns there are. */
  int yarnCount() {
    return left.length;
  }

  /** Whether a round is still to be worked. */
  boolean planned(int slot) {
    return blanket.state(pieceOf[slot]) == PieceState.PLANNED;
  }

  /** The yarn of a round, or {@link Sequences#OPEN}. */
  int yarn(int slot) {
    return yarns[slot];
  }

  /** The yarns that the brief's lines leave a round. */
  int[] mayTake(int slot) {
    return direct.yarnsOf(pieceOf[slot], slot - start[pieceOf[slot]]);
  }

  /** What a round takes in a yarn, in mm. */
  long need(int slot, int yarn) {
    int piece = pieceOf[slot];
    return blanket.needMillimetres(blanket.kind(piece), slot - start[piece], yarn);
  }

  /** What is left of a yarn to use, in mm. */
  long left(int yarn) {
    return left[yarn];
  }

  /** Gives an open round a yarn, or takes a round's yarn. */
  void set(int slot, int yarn) {
    int piece = pieceOf[slot];
    count(piece, -1);
    if (yarns[slot] != Sequences.OPEN) {
      left[yarns[slot]] += need(slot, yarns[slot]);
    }
    counts.set(piece, slot - start[piece], yarns[slot], yarn);
    yarns[slot] = yarn;
    if (yarn != Sequences.OPEN) {
      left[yarn] -= need(slot, yarn);
    }
    count(piece, 1);
  }

  private void count(int piece, int change) {
    if (blanket.brief().rules().copies().isPresent() && blanket.orbits().leads(piece)) {
      List<Integer> sequence = sequence(piece);
      if (!sequence.contains(Sequences.OPEN)) {
        sequences.merge(sequence, change, Integer::sum);
      }
    }
  }

  private List<Integer> sequence(int piece) {
    List<Integer> sequence = new ArrayList<>();
    for (int slot = start[piece]; slot < start[piece + 1]; slot++) {
      sequence.add(yarns[slot]);
    }
    return sequence;
  }

  /**
   * The rounds that must be open for a round to take a yarn, stock aside.
   *
   * @return the rounds; null if what is worked, the number of copies, or a count of the look is
   *     against it
   */
  List<Integer> against(int slot, int yarn) {
    int piece = pieceOf[slot];
    List<Integer> against = new ArrayList<>();
    WithinPiece within = blanket.brief().rules().withinPiece();
    for (int other = start[piece]; other < start[piece + 1]; other++) {
      boolean beside = Math.abs(other - slot) == 1;
      boolean differ =
          within == WithinPiece.ALL_DIFFER || within == WithinPiece.ADJACENT_DIFFER && beside;
      if (other != slot && differ && yarns[other] == yarn) {
        against.add(other);
      }
    }
    if (slot == start[piece + 1] - 1) {
      for (int neighbour : neighbours[piece]) {
        int border = start[neighbour + 1] - 1;
        if (yarns[border] != Sequences.OPEN
            && blanket.bordersClash(yarns[border], yarn)
            && !blanket.bordersMayMatch(piece, neighbour)) {
          if (!planned(border)) {
            return null;
          }
          against.add(border);
        }
      }
    }
    boolean barred =
        counts.bar(piece, slot - start[piece], yarn)
            || against.isEmpty() && tooManyCopies(slot, yarn);
    return barred ? null : against;
  }

  private boolean tooManyCopies(int slot, int yarn) {
    OptionalInt copies = blanket.brief().rules().copies();
    if (copies.isEmpty() || !blanket.orbits().leads(pieceOf[slot])) {
      return false;
    }
    List<Integer> sequence = sequence(pieceOf[slot]);
    sequence.set(slot - start[pieceOf[slot]], yarn);
    return sequences.getOrDefault(sequence, 0) >= copies.getAsInt();
  }

  /** The plan as sequences. */
  Sequences sequences() {
    Sequences all = blanket.open();
    for (int slot = 0; slot < yarns.length; slot++) {
      all.set(pieceOf[slot], slot - start[pieceOf[slot]], yarns[slot]);
    }
    return all;
  }
}
