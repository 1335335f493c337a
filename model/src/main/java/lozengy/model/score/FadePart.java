package lozengy.model.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Part;

/**
 * Fade: how well yarns follow each other along the direction that the look asks for, 100 less what
 * {@link FadeMeasure} takes off, not below 0; 100 where the look has no fade. O(pieces x rounds).
 */
final class FadePart implements ScorePart {

  private final Blanket blanket;
  private final Sequences sequences;
  private final Optional<FadeMeasure> measure;
  private final double lost;

  FadePart(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.sequences = sequences;
    this.measure = FadeMeasure.of(blanket);
    double sum = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        sum += points(piece, round);
      }
    }
    this.lost = sum;
  }

  private double points(int piece, int round) {
    return measure.isEmpty() ? 0 : measure.get().points(piece, round, sequences.yarn(piece, round));
  }

  @Override
  public Part part() {
    return Part.FADE;
  }

  @Override
  public double score() {
    return Math.max(0, 100 - lost);
  }

  @Override
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    // where the part is cut off at 0, all places together cost no more than 100
    double scale = lost > 100 ? 100 / lost : 1;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        double points = points(piece, round) * scale;
        if (points > 0) {
          losses.add(loss(points, piece, round));
        }
      }
    }
    return losses;
  }

  private Loss loss(double points, int piece, int round) {
    return new Loss(
        points,
        List.of(piece),
        () ->
            "%s lies far from its place in the fade: %s of %s"
                .formatted(
                    blanket.yarn(sequences.yarn(piece, round)).name(),
                    Words.round(blanket, piece, round),
                    blanket.place(piece).name()));
  }
}
