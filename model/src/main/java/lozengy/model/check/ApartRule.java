package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Laid;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.Look;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Pairs;

/**
 * Yarns that are kept apart do not meet: as borders on a seam, as rounds side by side in a piece,
 * or both, as the brief says. Finds no fault between two joined pieces, nor within a finished one.
 * O(pieces x rounds + seams), for each pair of yarns.
 */
public final class ApartRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.APART;
  }

  /** One line for each pair of yarns. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<Look.Pair> asked = blanket.brief().look().apart();
    if (asked.isEmpty()) {
      return lines;
    }
    RoundPairs seams =
        RoundPairs.borders(
            blanket, (first, second) -> RoundPairs.bothJoined(blanket, first, second));
    RoundPairs rounds = RoundPairs.within(blanket, 1);
    for (int i = 0; i < asked.size(); i++) {
      Look.Pair pair = asked.get(i);
      int first = blanket.yarnIndex(pair.first());
      int second = blanket.yarnIndex(pair.second());
      YarnPairs barred =
          YarnPairs.of(blanket.yarnCount(), (yarn, other) -> yarn == first && other == second);
      List<Ground> clashes = new ArrayList<>();
      if (pair.on().seams()) {
        clashes.add(new Ground.Clash(seams, barred));
      }
      if (pair.on().rounds()) {
        clashes.add(new Ground.Clash(rounds, barred));
      }
      Subject subject = new Subject.Apart(pair.first(), pair.second(), pair.on());
      lines.add(new BriefLine(id(), BriefPath.of("look", "apart").item(i), subject, clashes));
    }
    return lines;
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or change look.apart";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    for (Look.Pair pair : blanket.brief().look().apart()) {
      int first = blanket.yarnIndex(pair.first());
      int second = blanket.yarnIndex(pair.second());
      if (pair.on().seams()) {
        onSeams(blanket, sequences, first, second, faults);
      }
      if (pair.on().rounds()) {
        withinPieces(blanket, sequences, first, second, faults);
      }
    }
    return faults;
  }

  private static boolean meet(int yarn, int other, int first, int second) {
    return yarn == first && other == second || yarn == second && other == first;
  }

  private void onSeams(
      Blanket blanket, Sequences sequences, int yarnA, int yarnB, List<Fault> faults) {
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int yarn = sequences.border(first);
      int other = sequences.border(second);
      if (meet(yarn, other, yarnA, yarnB) && !RoundPairs.bothJoined(blanket, first, second)) {
        faults.add(new Fault(id(), List.of(first, second), List.of(), List.of(yarn, other)));
      }
    }
  }

  private void withinPieces(
      Blanket blanket, Sequences sequences, int yarnA, int yarnB, List<Fault> faults) {
    Laid laid = Laid.of(blanket, sequences);
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 1; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round - 1);
        int other = sequences.yarn(piece, round);
        if (meet(yarn, other, yarnA, yarnB) && laid.toWork(piece, round)) {
          List<Integer> rounds = List.of(round - 1, round);
          faults.add(new Fault(id(), List.of(piece), rounds, List.of(yarn, other)));
        }
      }
    }
  }
}
