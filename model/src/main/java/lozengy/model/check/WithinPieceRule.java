package lozengy.model.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.input.BriefPath;

/**
 * Rounds of a piece differ: all of them, or those side by side, as the brief asks. Finds no fault
 * between rounds that are all worked, nor with a piece from the pile. O(pieces x rounds), with
 * hashing.
 */
public final class WithinPieceRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.WITHIN_PIECE;
  }

  /** One line. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    WithinPiece asked = blanket.brief().rules().withinPiece();
    if (asked == WithinPiece.FREE) {
      return List.of();
    }
    boolean all = asked == WithinPiece.ALL_DIFFER;
    RoundPairs pairs = RoundPairs.within(blanket, all ? blanket.layerCount() : 1);
    Ground clash = new Ground.Clash(pairs, YarnPairs.same(blanket.yarnCount()));
    return List.of(
        new BriefLine(
            id(),
            BriefPath.of("rules", "within-piece"),
            new Subject.Within(asked),
            List.of(clash)));
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or change within-piece";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    WithinPiece asked = blanket.brief().rules().withinPiece();
    if (asked == WithinPiece.FREE) {
      return List.of();
    }
    List<Fault> faults = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      if (laid.toWork(piece)) {
        if (asked == WithinPiece.ALL_DIFFER) {
          addRepeats(faults, sequences, piece, blanket.roundsWorked(piece));
        } else {
          addRuns(faults, sequences, piece, blanket.roundsWorked(piece));
        }
      }
    }
    return faults;
  }

  private void addRepeats(List<Fault> faults, Sequences sequences, int piece, int worked) {
    Map<Integer, List<Integer>> roundsByYarn = new LinkedHashMap<>();
    for (int round = 0; round < sequences.rounds(piece); round++) {
      roundsByYarn
          .computeIfAbsent(sequences.yarn(piece, round), yarn -> new ArrayList<>())
          .add(round);
    }
    roundsByYarn.remove(Sequences.OPEN);
    roundsByYarn.forEach(
        (yarn, rounds) -> {
          if (rounds.size() > 1 && last(rounds) >= worked) {
            faults.add(fault(piece, yarn, rounds, WithinPiece.ALL_DIFFER));
          }
        });
  }

  private void addRuns(List<Fault> faults, Sequences sequences, int piece, int worked) {
    List<Integer> run = new ArrayList<>();
    int runYarn = Sequences.OPEN;
    for (int round = 0; round <= sequences.rounds(piece); round++) {
      boolean past = round == sequences.rounds(piece);
      int yarn = past ? Sequences.OPEN : sequences.yarn(piece, round);
      if (past || yarn != runYarn) {
        if (runYarn != Sequences.OPEN && run.size() > 1 && last(run) >= worked) {
          faults.add(fault(piece, runYarn, run, WithinPiece.ADJACENT_DIFFER));
        }
        run = new ArrayList<>();
        runYarn = yarn;
      }
      run.add(round);
    }
  }

  private static int last(List<Integer> rounds) {
    return rounds.get(rounds.size() - 1);
  }

  private Fault fault(int piece, int yarn, List<Integer> rounds, WithinPiece asked) {
    return new Fault(id(), List.of(piece), rounds, List.of(yarn), new Fault.Alike(asked));
  }
}
