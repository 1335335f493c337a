package lozengy.solver.explain.miss;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.BriefLine;
import lozengy.model.check.ClashGraph;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleBook;

/**
 * A plan that breaks no rule and may leave rounds open. Rounds are numbered piece by piece; what is
 * worked stays.
 */
final class PartialPlan {

  private final Blanket blanket;
  private final RoundYarns direct;
  private final int[] start;
  private final int[] pieceOf;
  private final int[] yarns;
  private final long[] left;
  private final ClashGraph clashes;
  private final PartialCounts counts;
  private final Map<List<Integer>, Integer> sequences = new HashMap<>();

  /** A plan with nothing but what is worked. */
  PartialPlan(Blanket blanket) {
    this.blanket = blanket;
    List<BriefLine> lines = RuleBook.lines(blanket);
    this.direct = RoundYarns.direct(blanket, lines);
    this.clashes = ClashGraph.of(blanket, lines);
    this.start = new int[blanket.pieceCount() + 1];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      start[piece + 1] = start[piece] + blanket.roundCount(piece);
    }
    this.pieceOf = new int[start[blanket.pieceCount()]];
    this.yarns = new int[pieceOf.length];
    this.counts = new PartialCounts(blanket);
    this.left = new long[blanket.yarnCount()];
    for (int yarn = 0; yarn < left.length; yarn++) {
      left[yarn] = blanket.yarns().usableMillimetres(yarn) - blanket.fixedUse().millimetres(yarn);
    }
    Arrays.fill(yarns, Sequences.OPEN);
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      Arrays.fill(pieceOf, start[piece], start[piece + 1], piece);
      for (int slot = start[piece]; slot < start[piece + 1] && !planned(slot); slot++) {
        set(slot, blanket.locked(piece, slot - start[piece]));
      }
    }
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
    int piece = pieceOf[slot];
    return !blanket.worked(piece, slot - start[piece]);
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
    return blanket.takenMillimetres(piece, slot - start[piece], yarn);
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
    for (int entry = clashes.from(slot); entry < clashes.to(slot); entry++) {
      int other = clashes.other(entry);
      if (yarns[other] != Sequences.OPEN && clashes.barred(entry).bars(yarn, yarns[other])) {
        if (!planned(other)) {
          return null;
        }
        against.add(other);
      }
    }
    if (!addImages(slot, yarn, against)) {
      return null;
    }
    // first the rounds of its own piece
    against.sort(Comparator.comparing(other -> pieceOf[other] != piece));
    boolean barred = counts.bar(piece, slot - start[piece], yarn) || tooManyCopies(slot, yarn);
    return barred ? null : against;
  }

  /** Adds the images of a round that have another yarn; false if one of them is worked. */
  private boolean addImages(int slot, int yarn, List<Integer> against) {
    int piece = pieceOf[slot];
    int lead = blanket.orbits().lead(piece);
    for (int image : blanket.orbits().members(lead)) {
      int other = start[image] + slot - start[piece];
      if (image != piece && yarns[other] != Sequences.OPEN && yarns[other] != yarn) {
        if (!planned(other)) {
          return false;
        }
        if (!against.contains(other)) {
          against.add(other);
        }
      }
    }
    return true;
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
