package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.blanket.Words;
import lozengy.model.brief.PieceState;

/**
 * Rounds hold what is locked or worked; borders that the look gives are {@link BordersRule}'s.
 * O(pieces x rounds).
 */
public final class LocksRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.LOCKS;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        int locked = blanket.locked(piece, round);
        boolean byLook =
            round == sequences.rounds(piece) - 1
                && locked == blanket.look().border(piece)
                && blanket.state(piece) == PieceState.PLANNED;
        if (!byLook && yarn != Sequences.OPEN && locked != Sequences.OPEN && yarn != locked) {
          faults.add(fault(blanket, piece, round, yarn, locked));
        }
      }
    }
    return faults;
  }

  private Fault fault(Blanket blanket, int piece, int round, int yarn, int locked) {
    boolean worked = blanket.state(piece) != PieceState.PLANNED;
    String words =
        "%s: %s has %s, but is %s %s"
            .formatted(
                Words.piece(blanket, piece),
                Words.round(blanket, piece, round),
                Words.yarn(blanket, yarn),
                worked ? "already worked in" : "locked to",
                Words.yarn(blanket, locked));
    return new Fault(id(), List.of(piece), List.of(yarn, locked), words);
  }
}
