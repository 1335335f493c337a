package lozengy.benchmarks.record;

import java.util.List;
import java.util.Locale;

/** Figures over several runs, as tables show them. */
final class Figures {

  /** What a table shows where there is no figure. */
  static final String NONE = "–";

  private Figures() {}

  /**
   * The median; of an even number, the mean of the two in the middle.
   *
   * @param values at least one
   */
  static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int middle = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(middle)
        : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
  }

  /**
   * The median of the runs that brought a figure, and how many did where not all.
   *
   * @param values of those that did
   * @param runs how many runs there were
   * @param decimals decimals to show
   */
  static String medianOf(List<Double> values, int runs, int decimals) {
    if (values.isEmpty()) {
      return NONE;
    }
    String median = number(median(values), decimals);
    return values.size() == runs ? median : "%s (%d of %d)".formatted(median, values.size(), runs);
  }

  /** A number with a fixed count of decimals. */
  static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  /** A number without decimals where it is whole. */
  static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
