package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/** The runs that a results file of whole solves holds. */
final class WholeRuns {

  /** One run: its rows, in order. */
  record Run(
      String brief, String solver, String seed, double limit, List<Map<String, String>> rows) {

    private DoubleStream found(String column, double seconds) {
      return rows.stream()
          .filter(row -> row.get("event").equals("found") && row.get("valid").equals("yes"))
          .filter(row -> Double.parseDouble(row.get("seconds")) <= seconds)
          .mapToDouble(row -> Double.parseDouble(row.get(column)));
    }

    /** The best valid score by a time. */
    OptionalDouble scoreBy(double seconds) {
      return found("score", seconds).max();
    }

    /** The best valid score. */
    OptionalDouble score() {
      return scoreBy(Double.POSITIVE_INFINITY);
    }

    /** When the first valid arrangement was there, in seconds. */
    OptionalDouble firstValid() {
      return found("seconds", Double.POSITIVE_INFINITY).min();
    }

    /** The bound it ended with. */
    OptionalDouble bound() {
      String bound = end().get("bound");
      return bound.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(Double.parseDouble(bound));
    }

    /** What it proved. */
    String proof() {
      return end().get("proof");
    }

    private Map<String, String> end() {
      return rows.get(rows.size() - 1);
    }
  }

  private final List<Run> runs;
  private final Map<String, Map<String, String>> briefs = new LinkedHashMap<>();

  /** Takes the rows; a run that was begun once more, after it was cut short, counts once. */
  WholeRuns(Results results) {
    Map<List<String>, Run> byKey = new LinkedHashMap<>();
    for (Map<String, String> row : results.rows()) {
      briefs.putIfAbsent(row.get("brief"), row);
      List<String> key =
          List.of(row.get("brief"), row.get("solver"), row.get("seed"), row.get("limit_s"));
      Run run =
          byKey.computeIfAbsent(
              key,
              k ->
                  new Run(
                      k.get(0),
                      k.get(1),
                      k.get(2),
                      Double.parseDouble(k.get(3)),
                      new ArrayList<>()));
      if (row.get("event").equals("stated")) {
        run.rows().clear();
      }
      run.rows().add(row);
    }
    runs = List.copyOf(byKey.values());
  }

  /** A row of each brief, by its name. */
  Map<String, Map<String, String>> briefs() {
    return briefs;
  }

  /** The runs of a solver on a brief. */
  List<Run> of(String brief, String solver) {
    return runs.stream()
        .filter(run -> run.brief().equals(brief) && run.solver().equals(solver))
        .toList();
  }

  /** The same with one limit. */
  List<Run> of(String brief, String solver, double limit) {
    return of(brief, solver).stream().filter(run -> run.limit() == limit).toList();
  }

  /** All solvers, in the order of the file. */
  Set<String> solvers() {
    Set<String> solvers = new LinkedHashSet<>();
    runs.forEach(run -> solvers.add(run.solver()));
    return solvers;
  }

  /** All solvers but Lozengy. */
  List<String> peers() {
    return solvers().stream().filter(solver -> !solver.startsWith("lozengy")).toList();
  }

  /** The limits that a solver ran with, ascending. */
  Set<Double> limits(String solver) {
    Set<Double> limits = new TreeSet<>();
    runs.stream().filter(run -> run.solver().equals(solver)).forEach(r -> limits.add(r.limit()));
    return limits;
  }

  /** The longest of them, or 0. */
  double longest(String solver) {
    return limits(solver).stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /** The figures that there are. */
  static List<Double> present(List<OptionalDouble> values) {
    return values.stream()
        .filter(OptionalDouble::isPresent)
        .map(OptionalDouble::getAsDouble)
        .toList();
  }
}
