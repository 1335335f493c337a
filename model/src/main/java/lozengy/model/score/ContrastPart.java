package lozengy.model.score;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.layout.Pairs;

/**
 * Contrast: how well borders stand apart on the seams, and rounds side by side within the pieces. A
 * pair of yarns counts {@link Scorer#contrast}, and the figure is 100 x the mean of the mean over
 * all seams and the mean over all adjacent rounds; where there are none of one, the other alone;
 * 100 where there are none at all. Between pieces alone it is the mean over seams, within them that
 * over adjacent rounds. Seams are left out where the look gives the borders. O(pieces x rounds +
 * seams).
 */
final class ContrastPart implements ScorePart {

  private final Part part;
  private final Blanket blanket;
  private final Sequences sequences;
  private final Pairs seams;
  private final int steps;
  private final int means;

  ContrastPart(Blanket blanket, Sequences sequences, Part part) {
    this.part = part;
    this.blanket = blanket;
    this.sequences = sequences;
    this.seams = part == Part.CONTRAST_WITHIN ? Scorer.NO_SEAMS : Scorer.countedSeams(blanket);
    this.steps = part == Part.CONTRAST_BETWEEN ? 0 : Scorer.steps(blanket);
    this.means = (seams.size() == 0 ? 0 : 1) + (steps == 0 ? 0 : 1);
  }

  @Override
  public Part part() {
    return part;
  }

  @Override
  public double score() {
    double overSeams = 0;
    for (int seam = 0; seam < seams.size(); seam++) {
      overSeams += contrast(true, border(seams.first()[seam]), border(seams.second()[seam]));
    }
    double overSteps = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 1; round < sequences.rounds(piece); round++) {
        overSteps += ofStep(piece, round);
      }
    }
    if (means == 0) {
      return 100;
    }
    return 100 * (mean(overSeams, seams.size()) + mean(overSteps, steps)) / means;
  }

  private static double mean(double sum, int count) {
    return count == 0 ? 0 : sum / count;
  }

  private int border(int piece) {
    return sequences.border(piece);
  }

  private double contrast(boolean onSeams, int yarn, int other) {
    return Scorer.contrast(blanket, onSeams, yarn, other);
  }

  private double ofStep(int piece, int round) {
    return contrast(false, sequences.yarn(piece, round - 1), sequences.yarn(piece, round));
  }

  @Override
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      double lost = 1 - contrast(true, border(first), border(second));
      if (lost > 0) {
        losses.add(seamLoss(100 * lost / seams.size() / means, first, second));
      }
    }
    for (int piece = 0; steps > 0 && piece < sequences.pieces(); piece++) {
      for (int round = 1; round < sequences.rounds(piece); round++) {
        double lost = 1 - ofStep(piece, round);
        if (lost > 0) {
          losses.add(stepLoss(100 * lost / steps / means, piece, round));
        }
      }
    }
    return losses;
  }

  private Loss seamLoss(double points, int first, int second) {
    return new Loss(
        points,
        List.of(first, second),
        () ->
            wrong(true)
                + " contrast on the seam of %s and %s: %s"
                    .formatted(
                        blanket.place(first).name(),
                        blanket.place(second).name(),
                        beside(border(first), border(second))));
  }

  private String wrong(boolean onSeams) {
    double asked = blanket.brief().look().contrast().wanted(onSeams);
    return asked == Look.LIVELY ? "Low" : asked == Look.CALM ? "High" : "Other";
  }

  private Loss stepLoss(double points, int piece, int round) {
    return new Loss(
        points,
        List.of(piece),
        () ->
            wrong(false)
                + " contrast within %s, %s: %s"
                    .formatted(
                        blanket.place(piece).name(),
                        Words.rounds(List.of(round - 1, round)),
                        beside(sequences.yarn(piece, round - 1), sequences.yarn(piece, round))));
  }

  private String beside(int yarn, int other) {
    return "%s beside %s, %s apart"
        .formatted(
            blanket.yarn(yarn).name(),
            blanket.yarn(other).name(),
            Words.difference(blanket.yarns().difference(yarn, other)));
  }
}
