package lozengy.model.score;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.input.Words;

/**
 * Keep: how much of an earlier arrangement stands, 100 x unchanged rounds / rounds free to change
 * that had a yarn before; 100 where there is none. O(pieces x rounds).
 */
final class KeepPart implements ScorePart {

  private final Blanket blanket;
  private final int[] changed;
  private final int allChanged;
  private final int free;

  KeepPart(Blanket blanket, Sequences sequences, Sequences earlier) {
    this.blanket = blanket;
    this.changed = new int[blanket.pieceCount()];
    int freeRounds = 0;
    int changedRounds = 0;
    for (int piece = 0; piece < changed.length; piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (blanket.free(piece, round) && earlier.yarn(piece, round) != Sequences.OPEN) {
          freeRounds++;
          if (sequences.yarn(piece, round) != earlier.yarn(piece, round)) {
            changed[piece]++;
            changedRounds++;
          }
        }
      }
    }
    this.free = freeRounds;
    this.allChanged = changedRounds;
  }

  @Override
  public Part part() {
    return Part.KEEP;
  }

  @Override
  public double score() {
    return free == 0 ? 100 : 100.0 * (free - allChanged) / free;
  }

  @Override
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    for (int piece = 0; piece < changed.length; piece++) {
      if (changed[piece] > 0) {
        String name = blanket.place(piece).name();
        int rounds = changed[piece];
        losses.add(
            new Loss(
                100.0 * rounds / free,
                List.of(piece),
                () -> name + " is changed in " + Words.count(rounds, "round")));
      }
    }
    return losses;
  }
}
