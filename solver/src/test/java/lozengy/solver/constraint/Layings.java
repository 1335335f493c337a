package lozengy.solver.constraint;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.Place;

/**
 * Tries every way in which the pieces of a pile could lie in sequences without open rounds, and
 * reads from the brief itself what may be worked where.
 */
public final class Layings {

  private final Blanket blanket;
  private final Sequences sequences;
  private final List<Stack> stacks;

  private Layings(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.sequences = sequences;
    this.stacks = blanket.pile().stacks();
  }

  /** Yarns for all pieces, many of them those of the pile, whatever the rules say. */
  public static Sequences random(Blanket blanket, SplittableRandom random) {
    Sequences sequences = blanket.locks();
    List<Stack> stacks = blanket.pile().stacks();
    int[] left = stacks.stream().mapToInt(Stack::count).toArray();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int stack = random.nextInt(stacks.size());
      boolean lies =
          blanket.roundsWorked(piece) == 0
              && stacks.get(stack).kind() == blanket.kind(piece)
              && (left[stack]-- > 0 || random.nextInt(3) == 0);
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (lies) {
          sequences.set(piece, round, stacks.get(stack).yarns()[round]);
        } else if (sequences.yarn(piece, round) == Sequences.OPEN) {
          sequences.set(piece, round, random.nextInt(blanket.yarnCount()));
        }
      }
    }
    return sequences;
  }

  /** Whether the pile can lie so that what is still to be worked then may be worked. */
  public static boolean anyIsFine(Blanket blanket, Sequences sequences) {
    return new Layings(blanket, sequences).lay(0, 0, 0, new HashSet<>());
  }

  /** Whether all planned pieces may be worked as they are. */
  public static boolean allMayBeWorked(Blanket blanket, Sequences sequences) {
    return new Layings(blanket, sequences).othersMayBeWorked(Set.of());
  }

  private boolean lay(int stack, int laid, int from, Set<Integer> taken) {
    if (stack == stacks.size()) {
      return othersMayBeWorked(taken);
    }
    if (laid == stacks.get(stack).count()) {
      return lay(stack + 1, 0, 0, taken);
    }
    for (int piece = from; piece < sequences.pieces(); piece++) {
      boolean here =
          !taken.contains(piece)
              && blanket.roundsWorked(piece) == 0
              && blanket.kind(piece) == stacks.get(stack).kind()
              && Arrays.equals(sequences.of(piece), stacks.get(stack).yarns());
      if (here) {
        taken.add(piece);
        if (lay(stack, laid + 1, piece + 1, taken)) {
          return true;
        }
        taken.remove(piece);
      }
    }
    return false;
  }

  private boolean othersMayBeWorked(Set<Integer> taken) {
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = blanket.roundsWorked(piece); round < sequences.rounds(piece); round++) {
        if (!taken.contains(piece) && !mayBeWorked(piece, round)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean mayBeWorked(int piece, int round) {
    int yarn = sequences.yarn(piece, round);
    String code = blanket.yarn(yarn).code();
    Place place = blanket.place(piece);
    if (!blanket
        .motif(place.kind())
        .rounds()
        .get(round)
        .tones()
        .contains(blanket.yarn(yarn).statedTone().orElseThrow())) {
      return false;
    }
    for (PieceNote note : blanket.brief().pieces()) {
      if (note.not().contains(code) && blanket.layout().select(note.at()).contains(place)) {
        return false;
      }
    }
    for (Look.Zone zone : blanket.brief().look().zones()) {
      if (blanket.layout().select(zone.where().at()).contains(place)
          && zone.where().covers(round, sequences.rounds(piece))
          && !zone.only().contains(code)) {
        return false;
      }
    }
    WithinPiece differ = blanket.brief().rules().withinPiece();
    for (int other = 0; other < round; other++) {
      boolean mustDiffer =
          differ == WithinPiece.ALL_DIFFER
              || differ == WithinPiece.ADJACENT_DIFFER && other == round - 1;
      if (mustDiffer && sequences.yarn(piece, other) == yarn) {
        return false;
      }
    }
    return true;
  }
}
