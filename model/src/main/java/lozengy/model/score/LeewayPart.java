package lozengy.model.score;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Part;

/**
 * Leeway: how far the scarcest yarn is from running out. With what a yarn has left of its stock
 * (before anything is kept back), the figure is 100 x the least of min(1, left / 10 % of used) over
 * the yarns that are used, joining and edging included; not below 0; 100 where none is used.
 * O(pieces x rounds + yarns).
 */
final class LeewayPart implements ScorePart {

  private static final int NONE = -1;

  private final Blanket blanket;
  private final double score;
  private final int scarcest;
  private final long left;

  LeewayPart(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    long[] used = blanket.usedMillimetres(sequences);
    double least = 1;
    int yarnOfLeast = NONE;
    for (int yarn = 0; yarn < used.length; yarn++) {
      if (used[yarn] > 0) {
        double over = blanket.stockMillimetres(yarn) - used[yarn];
        double leeway = over / (Scorer.AMPLE_LEEWAY * used[yarn]);
        if (leeway < least) {
          least = leeway;
          yarnOfLeast = yarn;
        }
      }
    }
    this.score = 100 * Math.max(0, least);
    this.scarcest = yarnOfLeast;
    this.left = yarnOfLeast == NONE ? 0 : blanket.stockMillimetres(scarcest) - used[scarcest];
  }

  @Override
  public Part part() {
    return Part.LEEWAY;
  }

  @Override
  public double score() {
    return score;
  }

  @Override
  public List<Loss> losses() {
    return scarcest == NONE ? List.of() : List.of(new Loss(100 - score, List.of(), this::words));
  }

  private String words() {
    String name = blanket.yarn(scarcest).name();
    return left < 0
        ? "%s is %s short".formatted(name, Words.metres(-left))
        : "%s has only %s left over".formatted(name, Words.metres(left));
  }
}
