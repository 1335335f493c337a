package lozengy.model.score;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Part;
import lozengy.model.colour.Deficiency;
import lozengy.model.layout.Pairs;

/**
 * Colour vision: whether borders on a seam can be told apart by a person who lacks one kind of
 * cone. A seam counts min(1, d / 5), where d is the smallest of the CIEDE2000 differences of its
 * borders' colours as seen with a red-, a green- and a blue-type deficiency; the figure is 100 x
 * the mean over all seams, 100 where there are none. O(seams + yarns squared).
 */
final class ColourVisionPart implements ScorePart {

  private final Blanket blanket;
  private final Sequences sequences;
  private final Pairs seams;

  ColourVisionPart(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.sequences = sequences;
    this.seams = Scorer.countedSeams(blanket);
  }

  @Override
  public Part part() {
    return Part.COLOUR_VISION;
  }

  @Override
  public double score() {
    double sum = 0;
    for (int seam = 0; seam < seams.size(); seam++) {
      sum += toldApart(seam);
    }
    return seams.size() == 0 ? 100 : 100 * sum / seams.size();
  }

  private double toldApart(int seam) {
    return ColourVisionSeams.toldApart(
        blanket, sequences.border(seams.first()[seam]), sequences.border(seams.second()[seam]));
  }

  @Override
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    for (int seam = 0; seam < seams.size(); seam++) {
      double lost = 1 - toldApart(seam);
      if (lost > 0) {
        losses.add(loss(100 * lost / seams.size(), seams.first()[seam], seams.second()[seam]));
      }
    }
    return losses;
  }

  private Loss loss(double points, int first, int second) {
    int yarn = sequences.border(first);
    int other = sequences.border(second);
    Deficiency worst = blanket.yarns().seen().worst(yarn, other);
    return new Loss(
        points,
        List.of(first, second),
        () ->
            "hard to tell apart with a %s deficiency: %s beside %s on the seam of %s and %s, %s apart"
                .formatted(
                    worst.word(),
                    blanket.yarn(yarn).name(),
                    blanket.yarn(other).name(),
                    blanket.place(first).name(),
                    blanket.place(second).name(),
                    Words.difference(blanket.yarns().seen().least(yarn, other))));
  }
}
