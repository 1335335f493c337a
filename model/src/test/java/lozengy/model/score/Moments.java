package lozengy.model.score;

/** Mean and variance of a whole population. */
final class Moments {

  private long count;
  private double sum;
  private double squares;

  void add(double value) {
    count++;
    sum += value;
    squares += value * value;
  }

  long count() {
    return count;
  }

  double mean() {
    return sum / count;
  }

  double variance() {
    return squares / count - mean() * mean();
  }
}
