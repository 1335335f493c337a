package lozengy.model.score;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Part;

/**
 * Leeway: how far yarns are from running out. A yarn whose left-over is ample loses nothing, one
 * with nothing left the whole, and between the two it loses the square of what it lacks ({@link
 * LeewayMeasure}); the figure is 100 less 100 x the mean over all yarns, joining and edging
 * included. O(pieces x rounds + yarns).
 */
final class LeewayPart implements ScorePart {

  private final Blanket blanket;
  private final long[] used;
  private final List<Loss> losses = new ArrayList<>();

  LeewayPart(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.used = blanket.usedMillimetres(sequences);
    for (int yarn = 0; yarn < used.length; yarn++) {
      double lost =
          100 * LeewayMeasure.loss(blanket.yarn(yarn).stockMillimetres(), used[yarn]) / used.length;
      if (lost > 0) {
        int scarce = yarn;
        losses.add(new Loss(lost, List.of(), () -> words(scarce)));
      }
    }
  }

  @Override
  public Part part() {
    return Part.LEEWAY;
  }

  @Override
  public double score() {
    return Math.max(0, 100 - losses.stream().mapToDouble(Loss::points).sum());
  }

  @Override
  public List<Loss> losses() {
    return losses;
  }

  private String words(int yarn) {
    String name = blanket.yarn(yarn).name();
    long left = blanket.yarn(yarn).stockMillimetres() - used[yarn];
    return left < 0
        ? "%s is %s short".formatted(name, Words.metres(-left))
        : "%s has only %s left over".formatted(name, Words.metres(left));
  }
}
