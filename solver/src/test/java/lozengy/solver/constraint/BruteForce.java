package lozengy.solver.constraint;

import java.util.function.Consumer;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.check.RuleId;

/** Tries every arrangement of a blanket and lets the model's check be the judge. */
public final class BruteForce {

  private final Blanket blanket;
  private final Sequences sequences;
  private final long atMost;
  private final Consumer<Sequences> valid;
  private long count;

  private BruteForce(Blanket blanket, long atMost, Consumer<Sequences> valid) {
    this.blanket = blanket;
    this.atMost = atMost;
    this.sequences = blanket.open();
    this.valid = valid;
  }

  /**
   * Counts the valid arrangements, up to a number, and shows each; what is shown changes
   * afterwards.
   */
  public static long count(Blanket blanket, long atMost, Consumer<Sequences> valid) {
    BruteForce force = new BruteForce(blanket, atMost, valid);
    force.fill(0, 0);
    return force.count;
  }

  private void fill(int piece, int round) {
    if (piece == sequences.pieces()) {
      count++;
      valid.accept(sequences);
      return;
    }
    boolean last = round == sequences.rounds(piece) - 1;
    for (int yarn = 0; yarn < blanket.yarnCount() && count < atMost; yarn++) {
      sequences.set(piece, round, yarn);
      // what is certain of an unfinished arrangement already is certain of all that go on from it
      if (Check.faults(blanket, sequences).stream()
          .allMatch(fault -> fault.rule() == RuleId.COMPLETE)) {
        fill(last ? piece + 1 : piece, last ? 0 : round + 1);
      }
    }
    sequences.set(piece, round, Sequences.OPEN);
  }
}
