package lozengy.model.brief;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;

/** A put-up whose weight and length do not go together. */
final class PutUpMistake {

  /** Widely: the thickest yarn for arms in place of needles, and the thinnest sewing thread. */
  private static final double LEAST_METRES_PER_GRAM = 0.01;

  private static final double MOST_METRES_PER_GRAM = 100;

  private PutUpMistake() {}

  /** What is wrong with the put-up at a path, without a line. */
  static Optional<Mistake> of(Ball ball, BriefPath path) {
    double grams = ball.grams().doubleValue();
    double metres = ball.millimetres().movePointLeft(3).doubleValue();
    double metresPerGram = metres / grams;
    if (metresPerGram >= LEAST_METRES_PER_GRAM && metresPerGram <= MOST_METRES_PER_GRAM) {
      return Optional.empty();
    }
    return Optional.of(
        new Mistake(
            path,
            0,
            MistakeCode.OUT_OF_RANGE.about(
                figure(metresPerGram), LEAST_METRES_PER_GRAM, MOST_METRES_PER_GRAM, "m/g"),
            "A ball of %s g with %s m has %s m to the gram"
                .formatted(figure(grams), figure(metres), figure(metresPerGram)),
            "Yarn has 0.01 to 100 m to the gram; look at the band for grams and metres of a full"
                + " ball"));
  }

  /** Three digits at least. */
  private static String figure(double number) {
    BigDecimal exact = BigDecimal.valueOf(number);
    int digits = Math.max(3, exact.precision() - exact.scale());
    return exact.round(new MathContext(digits)).stripTrailingZeros().toPlainString();
  }
}
