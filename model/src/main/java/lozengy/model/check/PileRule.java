package lozengy.model.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;

/**
 * Every finished piece of the pile has a place: as many planned places of its kind show its yarns
 * as there are such pieces. A place with open rounds counts where it can still come to show them.
 * O(pieces x rounds), with hashing, and O(stacks x pieces x rounds) where some are missing.
 */
public final class PileRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.PILE;
  }

  /** One line for each stack of finished pieces. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<Stack> stacks = blanket.pile().stacks();
    for (int i = 0; i < stacks.size(); i++) {
      Stack stack = stacks.get(i);
      Subject subject =
          new Subject.OnPile(
              stack.kind(),
              stack.count(),
              Arrays.stream(stack.yarns()).boxed().toList(),
              stack.also());
      lines.add(new BriefLine(id(), stack.path(), subject, List.of(new Ground.Lay(i))));
    }
    return lines;
  }

  @Override
  public String insteadOfLock() {
    return "Leave these places open, or take pieces off the pile";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    List<Stack> stacks = blanket.pile().stacks();
    for (int i = 0; i < stacks.size(); i++) {
      int missing = laid.missing(i);
      if (missing > 0 && missing > open(blanket, sequences, stacks.get(i))) {
        faults.add(fault(stacks.get(i), missing));
      }
    }
    return faults;
  }

  /** Places with an open round that could still show a stack's yarns. */
  private static int open(Blanket blanket, Sequences sequences, Stack stack) {
    int open = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      if (blanket.domains().takesPile(piece) && blanket.kind(piece) == stack.kind()) {
        boolean fits = true;
        boolean complete = true;
        for (int round = 0; round < sequences.rounds(piece); round++) {
          int yarn = sequences.yarn(piece, round);
          complete &= yarn != Sequences.OPEN;
          fits &= yarn == Sequences.OPEN || yarn == stack.yarns()[round];
        }
        open += fits && !complete ? 1 : 0;
      }
    }
    return open;
  }

  private Fault fault(Stack stack, int missing) {
    List<Integer> sequence = Arrays.stream(stack.yarns()).boxed().toList();
    return new Fault(
        id(),
        List.of(),
        List.of(),
        sequence.stream().distinct().toList(),
        new Fault.Unplaced(stack.kind(), sequence, missing));
  }
}
