package lozengy.model.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.layout.Offset;

/**
 * Order: how regularly, or how little so, borders come again, as {@link OrderMeasure} has it; 100
 * where there is nothing to measure. O(pieces x offsets).
 */
final class OrderPart implements ScorePart {

  private final Blanket blanket;
  private final Sequences sequences;
  private final Optional<OrderMeasure> measure;
  private final int[] equal;
  private final double points;

  OrderPart(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.sequences = sequences;
    this.measure = OrderMeasure.of(blanket);
    int offsets = measure.map(m -> m.offsets().size()).orElse(0);
    this.equal = new int[offsets];
    double sum = 0;
    for (int offset = 0; offset < offsets; offset++) {
      equal[offset] = measure.get().equal(offset, sequences);
      sum += measure.get().points(offset, equal[offset]);
    }
    this.points = sum;
  }

  @Override
  public Part part() {
    return Part.ORDER;
  }

  @Override
  public double score() {
    return 100 - lost();
  }

  private double lost() {
    return measure.map(m -> m.lost(points)).orElse(0.0);
  }

  @Override
  public List<Loss> losses() {
    double lost = lost();
    if (lost == 0) {
      return List.of();
    }
    OrderMeasure of = measure.orElseThrow();
    if (of.asked() == Order.ORDERED) {
      return List.of(new Loss(lost, List.of(), this::bestWords));
    }
    List<Loss> losses = new ArrayList<>();
    for (int offset = 0; offset < equal.length; offset++) {
      // where the part is cut off at 0, all offsets together cost no more than 100
      double ofOffset = of.points(offset, equal[offset]) * lost / points;
      if (ofOffset > 0) {
        losses.add(loss(ofOffset, offset));
      }
    }
    return losses;
  }

  private Loss loss(double lost, int offset) {
    Offset pairs = measure.orElseThrow().offsets().get(offset);
    int first =
        IntStream.range(0, pairs.size())
            .filter(pair -> OrderMeasure.equal(sequences, pairs, pair))
            .findFirst()
            .orElseThrow();
    int from = pairs.from()[first];
    int to = pairs.to()[first];
    return new Loss(
        lost,
        List.of(from, to),
        () ->
            "The same border comes again %s, such as %s and %s"
                .formatted(words(offset), blanket.place(from).name(), blanket.place(to).name()));
  }

  private String bestWords() {
    List<Offset> offsets = measure.orElseThrow().offsets();
    int best = 0;
    for (int offset = 1; offset < equal.length; offset++) {
      double share = (double) equal[offset] / offsets.get(offset).size();
      best = share > (double) equal[best] / offsets.get(best).size() ? offset : best;
    }
    return "The same border comes again most often %s".formatted(words(best));
  }

  /** Where an offset leads and how often, such as {@code 3 places to the right at 61 %}. */
  private String words(int offset) {
    Offset pairs = measure.orElseThrow().offsets().get(offset);
    return "%s at %d %% of the places"
        .formatted(
            pairs.words(blanket.layout().size().setting()),
            Math.round(100.0 * equal[offset] / pairs.size()));
  }
}
