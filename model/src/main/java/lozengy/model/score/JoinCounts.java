package lozengy.model.score;

/**
 * What chance makes of joins between places of the same colour: expectation and variance of their
 * weight when given counts of colours are shuffled over the places, each order as likely as any
 * other (sampling without replacement).
 *
 * <p>A. D. Cliff and J. K. Ord, Spatial Processes: Models and Applications (Pion, London 1981),
 * chapter 1; here with a symmetric weight for each join. With x(k) = x (x-1) ... (x-k+1), W the
 * weight of all joins, A the sum of squared weights, D the sum of products over ordered pairs of
 * joins that share one place, and R = W^2 - A - D the same over pairs that share none, the joins
 * within a colour that n of N places have weigh on average W n(2)/N(2), and their weight squared is
 * on average A n(2)/N(2) + D n(3)/N(3) + R n(4)/N(4).
 *
 * <p>Building takes O(places + joins), each figure O(colours).
 */
public final class JoinCounts {

  private final double[] weightAt;
  private double total;
  private double squares;

  /**
   * Starts without joins.
   *
   * @param places how many places the colours are shuffled over, 0 or more
   */
  public JoinCounts(int places) {
    weightAt = new double[places];
  }

  /**
   * Adds a join; each pair of places at most once.
   *
   * @param first index of a place, from 0
   * @param second index of another place
   * @param weight its weight, above 0; 1 counts the joins
   * @throws IllegalArgumentException if the places are the same
   */
  public void join(int first, int second, double weight) {
    if (first == second) {
      throw new IllegalArgumentException("place " + first + " joined to itself");
    }
    weightAt[first] += weight;
    weightAt[second] += weight;
    total += weight;
    squares += weight * weight;
  }

  /** {@return the weight of all joins} */
  public double total() {
    return total;
  }

  /**
   * {@return the expected weight of joins within a colour that {@code count} places have}
   *
   * @param count how many places have the colour, 0 or more
   */
  public double expected(int count) {
    return total * chance(falling(count, 2), 2);
  }

  /**
   * {@return the variance of that weight}
   *
   * @param count how many places have the colour, 0 or more
   */
  public double variance(int count) {
    double expected = expected(count);
    return moment(falling(count, 2), falling(count, 3), falling(count, 4)) - expected * expected;
  }

  /**
   * {@return the expected weight of all joins between places of the same colour}
   *
   * @param counts places of each colour; places beyond their sum are of no colour
   */
  public double expected(int[] counts) {
    return total * chance(sumFalling(counts, 2), 2);
  }

  /**
   * {@return the variance of that weight}
   *
   * @param counts places of each colour; places beyond their sum are of no colour
   */
  public double variance(int[] counts) {
    double expected = expected(counts);
    double twoPairs = sumFalling(counts, 2);
    twoPairs *= twoPairs;
    for (int count : counts) {
      double pairs = falling(count, 2);
      twoPairs += falling(count, 4) - pairs * pairs;
    }
    return moment(sumFalling(counts, 2), sumFalling(counts, 3), twoPairs) - expected * expected;
  }

  /** The mean square, from ordered choices of places for a join with itself and with another. */
  private double moment(double sameJoin, double sharedPlace, double apart) {
    double sharing = -2 * squares;
    for (double weight : weightAt) {
      sharing += weight * weight;
    }
    double disjoint = total * total - squares - sharing;
    return squares * chance(sameJoin, 2)
        + sharing * chance(sharedPlace, 3)
        + disjoint * chance(apart, 4);
  }

  private double chance(double favourable, int drawn) {
    double all = falling(weightAt.length, drawn);
    return all == 0 ? 0 : favourable / all;
  }

  private static double sumFalling(int[] counts, int factors) {
    double sum = 0;
    for (int count : counts) {
      sum += falling(count, factors);
    }
    return sum;
  }

  /** x (x-1) ..., so many factors; 0 where x is smaller than their number. */
  private static double falling(int x, int factors) {
    double product = 1;
    for (int i = 0; i < factors; i++) {
      product *= Math.max(0, x - i);
    }
    return product;
  }
}
