package lozengy.model.yarn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Pairs;

/**
 * How much of one yarn is worked already, and how much is still to be worked; joining and edging
 * included. Rounds count as worked as far as their pieces have come, and in pieces from the pile;
 * seams between joined pieces, the outline as far as a count says so.
 *
 * @param workedMillimetres length in mm that is worked, before a count or since
 * @param toWorkMillimetres length in mm that is still to be worked
 * @param atHandMillimetres length in mm at hand now: the stock less what was worked since it was
 *     counted; below 0 where more was worked than there was
 */
public record YarnWork(long workedMillimetres, long toWorkMillimetres, long atHandMillimetres) {

  /**
   * The work in every yarn; O(rounds).
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds; open rounds take none
   * @return one for each yarn, in the brief's order
   */
  public static List<YarnWork> of(Blanket blanket, Sequences sequences) {
    long[] worked = new long[blanket.yarnCount()];
    long[] toWork = new long[worked.length];
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        if (yarn != Sequences.OPEN) {
          long[] sums = round < laid.roundsWorked(piece) ? worked : toWork;
          sums[yarn] += blanket.motifs().needMillimetres(blanket.kind(piece), round, yarn);
        }
      }
    }
    Arrays.setAll(worked, yarn -> worked[yarn] + blanket.fixedUse().pileOutMillimetres(yarn));
    int seams = blanket.layout().seams().size();
    long openSeams = blanket.fixedUse().joiningMillimetres(seams - joinedSeams(blanket));
    blanket
        .brief()
        .joiningInOneYarn()
        .ifPresent(
            use -> {
              int yarn = blanket.yarnIndex(use.yarn());
              toWork[yarn] += openSeams;
              worked[yarn] += blanket.fixedUse().joiningMillimetres(seams) - openSeams;
            });
    if (blanket.brief().joiningInBorders().isPresent()) {
      for (int seam = 0; seam < seams; seam++) {
        addBorderSeam(blanket, sequences, seam, joined(blanket, seam) ? worked : toWork);
      }
    }
    for (int yarn = 0; yarn < worked.length; yarn++) {
      long openEdge = blanket.fixedUse().edgingMillimetres(yarn);
      toWork[yarn] += openEdge;
      worked[yarn] += blanket.fixedUse().wholeEdgingMillimetres(yarn) - openEdge;
    }
    long[] used = blanket.usedMillimetres(sequences);
    List<YarnWork> work = new ArrayList<>();
    for (int yarn = 0; yarn < used.length; yarn++) {
      // what counts against the stock and is not to be worked was worked since the stock was told
      long atHand = blanket.yarn(yarn).stockMillimetres() - (used[yarn] - toWork[yarn]);
      work.add(new YarnWork(worked[yarn], toWork[yarn], atHand));
    }
    return work;
  }

  /**
   * {@return how many seams are worked: those between two joined pieces}
   *
   * @param blanket the blanket
   */
  public static int joinedSeams(Blanket blanket) {
    int joined = 0;
    for (int seam = 0; seam < blanket.layout().seams().size(); seam++) {
      joined += joined(blanket, seam) ? 1 : 0;
    }
    return joined;
  }

  /**
   * {@return whether a seam is worked}
   *
   * @param blanket the blanket
   * @param seam the seam's number in the layout
   */
  public static boolean joined(Blanket blanket, int seam) {
    Pairs seams = blanket.layout().seams();
    return blanket.state(seams.first()[seam]) == PieceState.JOINED
        && blanket.state(seams.second()[seam]) == PieceState.JOINED;
  }

  /**
   * Adds what a seam takes of each yarn, where pieces are joined in their borders' yarns.
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds; open borders take none
   * @param seam the seam's number in the layout
   * @param sums lengths in mm by yarn, to which it is added
   */
  public static void addBorderSeam(Blanket blanket, Sequences sequences, int seam, long[] sums) {
    Pairs seams = blanket.layout().seams();
    int ofFirst = blanket.borderSeams().halvesOfFirst(seam);
    addHalves(blanket, sequences.border(seams.first()[seam]), ofFirst, sums);
    addHalves(blanket, sequences.border(seams.second()[seam]), 2 - ofFirst, sums);
  }

  private static void addHalves(Blanket blanket, int yarn, int halves, long[] sums) {
    if (yarn != Sequences.OPEN) {
      sums[yarn] += halves * blanket.borderSeams().halfMillimetres(yarn);
    }
  }

  /** {@return what will be left over in mm; below 0 where the yarn runs out} */
  public long leftMillimetres() {
    return atHandMillimetres - toWorkMillimetres;
  }
}
