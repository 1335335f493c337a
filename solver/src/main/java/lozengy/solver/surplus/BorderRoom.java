package lozengy.solver.surplus;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.IndependentSets;

/**
 * How many finished pieces of one kind whose borders all look alike can lie so that no two share a
 * seam, nor one with a worked piece of such a border. An upper bound, by a maximum flow; locks are
 * left out of it, so that it holds whichever pieces are laid.
 */
final class BorderRoom {

  private final Blanket blanket;
  private final List<Stack> stacks;
  private final Pairs seams;
  private final int[] groupOf;
  private final List<Group> groups = new ArrayList<>();

  /** Borders that look alike to each other, of pieces of one kind. */
  private record Group(PieceKind kind, List<Integer> borders, int[] most) {}

  BorderRoom(Blanket blanket) {
    this.blanket = blanket;
    this.stacks = blanket.pile().stacks();
    this.seams = blanket.layout().seams().without(blanket::bordersMayMatch);
    this.groupOf = new int[stacks.size()];
    for (int stack = 0; stack < groupOf.length; stack++) {
      groupOf[stack] = group(stacks.get(stack));
    }
    groups.forEach(group -> group.most()[0] = (int) places(group));
  }

  private int group(Stack stack) {
    for (int i = 0; i < groups.size(); i++) {
      Group group = groups.get(i);
      boolean alike =
          group.borders().stream().allMatch(b -> blanket.yarns().sameBorder(b, stack.border()));
      if (group.kind() == stack.kind() && alike) {
        if (!group.borders().contains(stack.border())) {
          group.borders().add(stack.border());
        }
        return i;
      }
    }
    groups.add(new Group(stack.kind(), new ArrayList<>(List.of(stack.border())), new int[1]));
    return groups.size() - 1;
  }

  private long places(Group group) {
    long[] weights = new long[blanket.pieceCount()];
    for (int piece = 0; piece < weights.length; piece++) {
      weights[piece] =
          blanket.domains().takesPile(piece) && blanket.kind(piece) == group.kind() ? 1 : 0;
    }
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      if (shows(second, group)) {
        weights[first] = 0;
      }
      if (shows(first, group)) {
        weights[second] = 0;
      }
    }
    return IndependentSets.heaviest(seams, weights);
  }

  /** Whether a piece that is worked has a border that no piece of a group may lie beside. */
  private boolean shows(int piece, Group group) {
    int border = blanket.roundCount(piece) - 1;
    return blanket.worked(piece, border)
        && group.borders().stream()
            .allMatch(yarn -> blanket.yarns().sameBorder(yarn, blanket.locked(piece, border)));
  }

  /** The number of groups. */
  int groups() {
    return groups.size();
  }

  /** The group of a stack's border, from 0. */
  int group(int stack) {
    return groupOf[stack];
  }

  /** How many pieces of a group can lie at the most. */
  int mostOf(int group) {
    return groups.get(group).most()[0];
  }

  /** How many of the pieces of a kind can lie at the most. */
  int most(PieceKind kind) {
    int most = 0;
    for (int group = 0; group < groups.size(); group++) {
      int pieces = 0;
      for (int stack = 0; stack < groupOf.length; stack++) {
        pieces += groupOf[stack] == group ? stacks.get(stack).count() : 0;
      }
      most += groups.get(group).kind() == kind ? Math.min(pieces, mostOf(group)) : 0;
    }
    return most;
  }
}
